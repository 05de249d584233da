import type { DeskWords } from '../../../types.ts';

export const tabs: DeskWords['tabs'] = {
  overview: '概况',
  pairs: '样鞋',
  comfort: '舒适度',
  complaints: '不适反馈',
  bench: '测量',
  rounds: '轮次',
  verdict: '结论',
  changes: '改动成效',
  findings: '问题项',
  report: '报告',
  testers: '试穿员',
};
