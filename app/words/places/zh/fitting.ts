import type { FitPlace } from '../../../../core/foot/index.ts';
import type { PlaceWords } from '../../types.ts';

type Sides = Readonly<Record<'little' | 'much', string>>;

const clauses: Readonly<Record<FitPlace, Sides>> = {
  length: { little: '鞋太短', much: '鞋太长' },
  'toe-height': { little: '鞋头太低', much: '鞋头太高' },
  'toe-width': { little: '鞋头太挤', much: '鞋头太空' },
  ball: { little: '跖围太紧', much: '跖围太松' },
  instep: { little: '脚背太紧', much: '脚背太松' },
  heel: { little: '后跟太卡', much: '后跟太松' },
  collar: { little: '领口太低', much: '领口太高' },
};
const places: Readonly<Record<FitPlace, string>> = {
  length: '长度',
  'toe-height': '鞋头高度',
  'toe-width': '鞋头宽度',
  ball: '跖围',
  instep: '脚背',
  heel: '后跟',
  collar: '领口高度',
};

export const fitting: PlaceWords['fitting'] = {
  headline: (h, number) => {
    switch (h.case) {
      case 'nobody':
        return '还没有人试穿。';
      case 'few':
        return `目前 ${h.people} 人，还说不准。`;
      case 'off': {
        const says = `${h.of} 人中 ${h.people} 人说${clauses[h.place][h.side]}`;
        if (h.mm === null) return `${says}。`;
        return `${says}，希望${h.side === 'little' ? '增加' : '减少'}约 ${number(h.mm)} mm。`;
      }
      case 'divided':
        return `对${places[h.place]}意见不一。`;
      case 'fits':
        return `合脚：${h.people} 人中多数不用改。`;
    }
  },
  title: '合脚试穿',
  nothingYet: '先让大家穿上试一试，再开始跑。',
  how: '几个人，几分钟，站着和走动。不计里程。',
  homeSub: (n, latest) =>
    n === 1 ? `来自${latest}。` : `来自 ${n} 场试穿会中最近的一场：${latest}。`,
  sub: (n, pairs, round, day) => `${round}，${day}：${n} 人，${pairs} 双。没有人跑，不计里程。`,
  also: (n) => `另有 ${n} 处多数人觉得不合适。`,

  add: '添加试穿会',
  name: '地点或名称',
  at: '时间',
  round: '轮次',
  pairs: '试穿哪些鞋',
  noPairs: '这一轮还没有鞋，请先添加。',
  noRound: '这款鞋还没有轮次。',
  addRound: '添加轮次',
  addPairs: '添加鞋',
  errors: {
    name: '请填名称，例如地点。',
    at: '请选择日期和时间。',
    pairs: '请至少选一双。',
  },
  edit: '修改试穿会',
  onPhones: '小组的手机同步一次后就能记录，之后不需要网络。',

  addPerson: '添加一个人',
  print: '打印这一页',
  end: '结束试穿会',
  reopen: '重新开放',
  ended: (day) => `${day} 结束`,
  endedNow: '已结束，手机不再显示。',
  reopened: '已重新开放，手机会显示。',

  feet: '哪只脚？',
  foot: { both: '两脚', left: '左脚', right: '右脚' },
  bothMeans: '取两脚中更不合适的一只。',
  tableTitle: '各部位、各人的合脚情况',
  place: '部位',
  most: '多数人说',
  size: (size) => `${size} 码`,
  footLength: (mm) => `脚长 ${mm}`,
  legend: { little: '太短、太紧或太低，mm', right: '正好', much: '太长、太松或太高，mm' },
  says: {
    none: '没有回答',
    right: (n, of) => `正好，${of} 人中 ${n} 人`,
    side: (what, n, of) => `${what}，${of} 人中 ${n} 人`,
    divided: (of) => `${of} 人意见不一`,
    few: (of) => `${of} 人回答，太少`,
  },
  cell: (fit, mm) => (mm === null ? fit : `${fit}，${mm} mm`),
  picture: '哪里不合适',

  walking: '走动时',
  heel: (lifts, out, of) =>
    of === 0 ? '还没有人说后跟跟不跟脚。' : `${of} 人中，略有掉跟 ${lifts} 人，脱出 ${out} 人。`,
  noSpots: '没有压脚、磨脚或张口。',
  spotsOpen: '还没有人回答哪里压脚。',
  spot: (foot, zone, what, who) => `${zone}（${foot}）：${what}（${who}）`,
  pain: (who, what) => `${who}：穿着时${what}。再次穿上前请先询问。`,
  disclaimer: '本提示不是医疗建议。如果不缓解，请本人就诊或咨询物理治疗师。',

  wanted: '大家想改哪里',
  wantedHint: '0 是现在的位置。一点代表一人，三角是中间值，粗线是范围。',
  noWanted: '还没有人说哪里要改。',
  agree: (n, of) => `${of} 人中 ${n} 人`,
  against: (n) => `${n} 人相反`,
  middle: (figure) => `中间值 ${figure}`,
  noAmount: '没有人说改多少',
  split: '两个方向人数相同',
  ask: (figure) => (figure === null ? '提出这项改动' : `提出改 ${figure}`),
  asked: '已提出',
  tooFew: (n) => `只有 ${n} 人，先不提`,

  sizes: '谁穿哪个码合脚',
  noSizes: '还没有人说长度是否正好。',
  sizesHint: '发鞋时会优先推荐在这里正好的码。',
  short: '太短',
  fitsThem: '正好',
  long: '太长',
  nobody: '无',

  people: '谁试了哪双',
  said: (pair, size) => `${pair}，${size} 码`,
  latest: '以此为准',
  takeBack: (who) => `移除 ${who}`,
  takenBack: (who) => `已将 ${who} 移出这场试穿会。`,
  words: (who, said) => `${who}：“${said}”`,

  finding: {
    title: '写成问题项提出',
    named: (what) => `${what}（合脚试穿）`,
    line: (name, day, n, of, what, spread) =>
      `${day} 试穿会 ${name}：${of} 人中 ${n} 人希望这样改：${what}${spread}。`,
    spread: (least, most) => `，从 ${least} 到 ${most}`,
    gone: '已经没有人想改这里。',
  },
  fromTrial: '来自试穿会',
  link: (n) => (n === 0 ? '合脚试穿' : `合脚试穿：${n}`),
};
