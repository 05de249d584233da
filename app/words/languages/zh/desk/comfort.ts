import type { DeskWords } from '../../../types.ts';

export const comfort: DeskWords['comfort'] = {
  nobody: '还没有人评过舒适度。',
  wear: '穿着后',
  firstImpressions: '第一印象',
  attribute: '项目',
  of: (t, scores) => `${t} 名试穿员，${scores} 次评分`,
  how: '0 到 100，100 为好。为各试穿员自身均值的平均（每人一票），附 95 % 区间（Student）。首次试穿单独列出，因为许多人一天之内会改变看法（Anderson 2020）。每 100 km 的变化为每位试穿员各设起点与斜率（混合模型，REML），各处页面与文件一致。轮次之间相差达到 10（Mills 2010；Bishop 2020）且区间不含零才算差别。',
  scored: (attribute, mean, of) => `${attribute}：满分 100 分中 ${mean}；${of}。`,
  between: (mean, lower, upper) => `${mean}（95 % 区间 ${lower} 至 ${upper}）`,
  changed: (rounds, points, word) => `${rounds}，分：${points}：${word}。`,
  changes: (earlier, later) => `${later} 对比 ${earlier}`,
  change: '变化',
  by: { 'same-testers': '相同试穿员', 'different-testers': '不同试穿员' },
  drift: '每 100 km 变化（95 %）',
  driftOf: (t) => `${t} 名试穿员`,
  preferred: '更喜欢哪双',
  noOrder: '还没有人给两轮的鞋排过顺序。同时持有两双的人会不时被问到。',
  prefer: (first, second, equal) =>
    `${first.testers} 名试穿员更喜欢${first.name}，${second.testers} 名更喜欢${second.name}，${equal} 名认为一样。`,
  unblinded: (count) => `其中 ${count} 人知道改动内容：仅凭描述就曾使评分变化 15 分（满分 100）。`,
};
