import type { TwoSidedId } from '../../../../core/foot/index.ts';
import type { tooMuch as english } from '../en/too-much.ts';

const subjects: Readonly<Record<TwoSidedId, string>> = {
  'heel-cushioning': '后跟缓震',
  'forefoot-cushioning': '前掌缓震',
  'fit-length': '鞋',
  'toe-room': '鞋头',
  'ball-width': '跖围处',
  arch: '足弓处',
  'midfoot-hold': '中足',
  'heel-hold': '后跟',
  flexibility: '前掌',
  stability: '鞋',
  ventilation: '鞋里',
};

export const tooMuch: typeof english = {
  headline: (h, say, end) => {
    if (h.case === 'none-off') return `${say.round(h.round)}没有明显过头或不够的地方。`;
    const subject = subjects[h.attribute];
    if (h.case === 'further') return `${subject}比之前离正好更远了。`;
    const off = `${subject}${end(h.attribute, h.side)}`;
    return h.claims === 'clear'
      ? `${h.asked} 名试穿员中有 ${h.testers} 名觉得${off}。`
      : `${off}的可能性较大：${h.asked} 名试穿员中有 ${h.testers} 名这么说。`;
  },
  title: '过了，还是不够？',
  note: '每名试穿员只算一次，中间就是正好。',
  question: '问题',
  sides: '试穿员的偏向',
  known: '已知结论',
  cost: '整体舒适度的损失',
  costOf: (points, least, most) => `${points} 分（${least} … ${most}）`,
  costNone: '人数太少，看不出损失',
  move: '与上一轮相比',
  moves: {
    better: '更接近正好',
    worse: '离正好更远',
    'no-relevant': '几乎没变',
    open: '为时尚早',
  },
  bySame: (n) => `（两轮都答的 ${n} 人）`,
  scores: '0 至 100 的评分',
  oldLine: (rounds, questions) =>
    `${rounds}曾在以前的线上作答，一端为差，一端为正好（${questions}）。那些分数列在下面，不与这里混算。`,
  pictureSays: (round) => `${round}：每一项分别有多少试穿员觉得不够、正好或过头`,
  rowSays: (name, round, sides) => `${name}，${round}：${sides}`,
};
