import type { DeskWords } from '../../../types.ts';

export const finding: DeskWords['finding'] = {
  make: '立为问题项',
  saved: (title, trade) => `已保存“${title}”，见${trade}工种单。`,
  openSheet: (trade) => `打开${trade}工种单`,
  title: '问题项',
  part: '可改动的部件',
  priority: '优先级',
  priorities: { high: '高', medium: '中', low: '低' },
  wanted: '期望改动',
  wantedMm: '毫米（如有尺寸）',
  carriedBy: '由哪一轮落实',
  undecided: '未定',
  frozen: (date) => `截至 ${date} 的证据，已冻结`,
  states: { open: '待处理', 'asked-for': '已提出', 'carried-out': '已落实', closed: '已关闭' },
};
