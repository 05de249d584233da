import type { DeskWords } from '../../../types.ts';

export const ask: DeskWords['ask'] = {
  pain: (tester, score, pair, date) =>
    `${tester}:${date} 穿 ${pair} 疼痛 ${score}/10。请关心对方；在医生同意之前不要再跑本试穿。`,
  damage: (tester, pair, what, date) => `${tester}:${date} ${pair} 损坏（${what}）。`,
  answer: {
    give: (tester) => `答复 ${tester}`,
    change: (tester) => `更改给 ${tester} 的答复`,
    advice: '可以穿这双鞋跑吗？',
    advices: { 'go-on': '可以继续穿着跑', 'stay-out': '先别穿这双鞋' },
    words: '给试穿员的话',
    missing: '请选择可否穿这双鞋跑。',
    given: (advice, when) => `${when} 已答复：${advice}。`,
    quoted: (words) => `“${words}”`,
    over: (tester, when) => `${tester} 于 ${when} 表示已经不疼了。`,
    pain: (tester, score, pair, date) => `${tester}：${date} 穿 ${pair} 疼痛 ${score}/10。`,
    settled: (count) => `已处理：${count} 条`,
  },
  oddity: {
    'logged-twice': '重复记录，只计一次',
    'tester-overlap': '与同一试穿员的另一次跑步时间重叠',
    'pair-overlap': '同一双鞋同时被两人穿着',
    pace: '配速不合理',
    distance: '距离不合理',
    'not-handed-out': '当时该鞋未发给此试穿员',
    'in-the-future': '时间在未来',
    'unknown-pair': '日志中没有该鞋',
  },
  run: (tester, pair, distance, date) => `${tester}，${pair}，${distance}，${date}`,
  notedLate: '发鞋登记晚了？在这双样鞋的页面上用“更正日期”改正。',
  leftOut: {
    'unknown-kind': (count) => `${count} 条记录的类型需要新版应用；已保留，不计入任何数字。`,
    'newer-schema': (count) => `${count} 条记录由新版应用写入；已保留，不计入任何数字。`,
  },
};
