import type { Say } from '../../say-names.ts';
import type { Metres } from '../../../../core/units/index.ts';
import type { PlaceWords } from '../../types.ts';
import { apart } from './apart.ts';

/** A figure stands apart from the words before it; words do not. */
const spaced = (value: string) => (/^\d/.test(value) ? ` ${value}` : value);

/** How far a shoe was measured: 0 km is no distance that anybody came to. */
const until = (how: '已' | '只', farthestM: Metres, say: Say): string =>
  farthestM === 0 ? '只在全新时测过' : `${how}测到 ${say.distance(farthestM)}`;

export const wear: PlaceWords['wear'] = {
  headline: (h, say, measure) => {
    switch (h.case) {
      case 'no-check':
        return '还没有任何测量。';
      case 'no-limit':
        return `${until('已', h.farthestM, say)}，任务书还没有设限值。`;
      case 'fails':
        return h.atM === null || h.atM >= h.briefM
          ? `${measure(h.limit)}撑不到 ${say.distance(h.briefM)}。`
          : `${measure(h.limit)}最先不合格，约在 ${say.distance(h.atM)}，要求 ${say.distance(h.briefM)}。`;
      case 'weak-point':
        return `${measure(h.limit)}很可能最先到限值，约在 ${say.distance(h.atM)}，要求 ${say.distance(h.briefM)}。`;
      case 'holds':
        return `${apart(say.round(h.round)).trimStart()}的各项磨损限值都能保持到 ${say.distance(h.briefM)}。`;
      case 'open':
        return `各项限值都未定：${until('已', h.farthestM, say)}，要求 ${say.distance(h.briefM)}。`;
      case 'too-early':
        return `为时尚早：${until('只', h.farthestM, say)}，要求 ${say.distance(h.briefM)}。`;
    }
  },
  thatIs: (round) => `这是${apart(round)}的情况。`,
  roundSays: (one, say) => {
    switch (one.case) {
      case 'holds':
        return `能保持到 ${say.distance(one.briefM)}`;
      case 'fails':
        return one.atM === null ? '不合格' : `约 ${say.distance(one.atM)} 时不合格`;
      case 'reached':
        return `很可能约 ${say.distance(one.atM)} 时到限值`;
      case 'open':
        return `10 双中约 ${one.inTen} 双能撑到 ${say.distance(one.briefM)}`;
      case 'too-early':
        return `${until('只', one.farthestM, say)}，为时尚早`;
      case 'measured-once':
        return '还没有一双测过两次';
    }
  },
  roundLine: (round, says) => `${round}：${says}`,
  measured: (rounds, list) => `已测：${list(rounds)}。`,
  to: (round, farthestM, say) =>
    farthestM === 0
      ? `${apart(round).trimStart()}仅全新时`
      : `${apart(round).trimStart()}到 ${say.distance(farthestM)}`,
  measuredTo: (farthestM, say) => until('已', farthestM, say),
  atBound: {
    'at-least': (value) => `至少${spaced(value)}`,
    'at-most': (value) => `至多${spaced(value)}`,
  },
  notMeasured: '这一项限值还没有测量。',
  noLimit: '没有限值',
  cards: '任务书的限值',
  rest: (n) => `另有 ${n} 项没有限值的指标`,
  says: (title, lines) => `${title}。${lines}`,
  shaded: (round) => `阴影：${apart(round).trimStart()}十双中九双的范围。点线：超出已测里程。`,
  bar: '下方横条：达到限值的里程。',
  nextCheck: '要定论：',
  narrow: { round: '轮次', place: '指标与部位', allRounds: '全部轮次', allPlaces: '全部限值' },
  table: { round: '轮次', pair: '样鞋', distance: '里程', value: '数值' },
  point: (round, pair, value, distance) => `${round}，样鞋 ${pair}：${distance} 时 ${value}`,
  allChecks: (n) => `全部 ${n} 次测量`,
  gauges: '量具',
  write: '记录一次测量',
  setLimits: '在任务书中设定限值',

  checks: {
    title: '测量记录',
    headline: (h, say) => {
      switch (h.case) {
        case 'none':
          return '还没有任何测量。';
        case 'waiting':
          return `有 ${h.readings} 个读数等你决定是否计入。`;
        case 'all':
          return h.farthestM === 0
            ? `${h.pairs} 双样鞋共 ${h.checks} 次测量，都在全新时。`
            : `${h.pairs} 双样鞋共 ${h.checks} 次测量，最远 ${say.distance(h.farthestM)}。`;
      }
    },
    sub: (n, aside) =>
      aside === 0
        ? `${n} 个读数，全部计入。`
        : `${n} 个读数，其中 ${aside} 个已搁置，不计入任何数字。`,
    decide: '去决定',
    pair: '样鞋',
    measure: '指标',
    everyPair: '全部样鞋',
    everyMeasure: '全部指标',
    find: '样鞋、量具或测量人',
    select: (pair, date) => `选择样鞋 ${pair} ${date} 的测量`,
    asideSelected: (n, all) => `搁置 ${n} 次测量（${all} 个读数）`,
    asideHint: '读数保留在案并加标记，不计入任何数字。',
    asideNow: (n) => `已搁置 ${n} 个读数`,
    countSelected: (n) => `计入 ${n} 个读数`,
    countedNow: (n) => `已计入 ${n} 个读数`,
    date: '日期',
    distance: '里程',
    reading: '读数',
    foot: '脚',
    gauge: '量具',
    by: '测量人',
    more: (n) => `另有 ${n} 个`,
    shown: (n, of) => (n === of ? `${n} 次测量` : `${of} 次测量中的 ${n} 次`),
    none: '没有符合条件的测量。',
    arrival: '新鞋',
  },

  check: {
    of: (pair, date) => `样鞋 ${pair}，${date}`,
    headline: (h, say) => {
      switch (h.case) {
        case 'waiting':
          return `样鞋 ${say.pair(h.pair)}：${h.of} 个读数中有 ${h.count} 个等你决定。`;
        case 'aside':
          return `样鞋 ${say.pair(h.pair)}：${h.of} 个读数中有 ${h.count} 个已搁置。`;
        case 'plain':
          return h.distanceM === 0
            ? `样鞋 ${say.pair(h.pair)}，新鞋：${h.of} 个读数。`
            : `样鞋 ${say.pair(h.pair)}，${say.distance(h.distanceM)}：${h.of} 个读数。`;
      }
    },
    sub: (date, from) => `测量于 ${date}；里程${from}。`,
    from: { shop: '由车间给出', runs: '来自跑步记录' },
    reading: '读数',
    value: '数值',
    before: '上一次',
    change: '与新鞋相比',
    gauge: '量具',
    course: '走势',
    courseSays: (place, values) => `${place}：${values}`,
    firstTime: '第一次测量',
    notKnown: '未知',
    uncertainty: (value) => `± ${value}（一倍标准不确定度）`,
    circumstances: '测量条件',
    room: (celsius) => `室温 ${celsius} °C`,
    rested: (hours) => `距上次跑步 ${hours} 小时`,
    by: (who) => `测量人：${who}`,
    notes: '备注',
    photos: '照片',
    noPhotos: '没有照片，也没有备注。',
    standing: { counts: '计入', waits: '待定', 'set-aside': '已搁置' },
    edit: '更正这次测量',
    erase: '删除这次测量',
    setAside: '搁置',
    setAsideNamed: (what) => `搁置：${what}`,
    countAgain: '重新计入',
    countAgainNamed: (what) => `重新计入：${what}`,
    reason: '原因',
    reasonMissing: '请用几个字写明原因。',
    reasonHint: '原因会与这次测量一起保存，负责人都能看到。',
    usualReason: '测量有误',
    setAsideNow: '已搁置，不再计入任何数字。',
    countedNow: '已重新计入。',
    corrected: '已更正。',
    erased: '测量已删除。',
    restored: '测量已恢复。',
    takenBack: '已撤销更正。',
    correctedBy: (who, date, why) => `${who}于 ${date} 更正：${why}`,
    you: '你',
    otherLead: '另一位负责人',
    takeBack: '撤销更正',
    gone: '这次测量已删除。',
    goneSub: (pair, date) => `样鞋 ${pair}，测量于 ${date}。不计入任何数字。`,
    bringBack: '恢复',
    none: '没有这次测量。',
    save: '保存更正',
    same: '还没有改动。',
    wait: '去决定',
  },

  newCheck: { headline: '记录一次测量', noPair: '还没有样鞋可测量。', crumb: '新建' },

  checkTable: {
    crumb: '整表录入',
    open: '整表录入测量',
    headline: '录入读数，或粘贴进来。',
    sub: '每行一个部位，每列一双样鞋，回车向下。电子表格中的一块可以粘贴到任一单元格。每双样鞋记为一次测量。',
    nothing: '还没有要测的项目。请先给轮次填尺寸，或给任务书填限值。',
    round: '轮次',
    pairs: '样鞋',
    span: (first, last) => `${first} 至 ${last}`,
    name: (round) => `${round}的读数`,
    place: '部位',
    foot: '脚',
    cell: (place, pair) => `${place}，样鞋 ${pair}`,
    arrival: '到货时（第一次跑步之前）',
    ofPair: (pair, said) => `样鞋 ${pair}：${said}`,
    beyond: (n) => `${n} 个单元格超出表格，未填入。`,
    save: (n) => (n === 0 ? '保存测量' : `保存 ${n} 次测量`),
    empty: '请至少填一个读数。',
    asks: (n) => `${n} 个读数看起来不对。请在上面更正；如果没有错，就勾选它，再保存一次。`,
  },

  shop: {
    crumb: '给车间的表格',
    headline: (round, lines, pairs) => `${round}：${pairs} 双样鞋，每双测 ${lines} 处。`,
    noPairs: (round) => `${round}还没有样鞋，没有可测量的。`,
    noLines: (round) => `${round}还没有尺寸，没有可测量的。`,
    sub: '每八双一页 A4 横向。车间写在纸上，由你录入，或把表格以 CSV 读入。',
    print: '打印表格',
    title: (shoe, round, pairs) => `${shoe}，${round}：样鞋 ${pairs}`,
    by: '测量人',
    room: '室温，°C',
    rested: '距上次跑步的小时数',
    place: '项目与部位',
    allowed: '允许范围',
    day: '日期与已跑公里数',
    notes: '备注',
  },

  gaugesPlace: {
    headline: (h, list) => {
      switch (h.case) {
        case 'none':
          return '还没有做过量具分析。';
        case 'not-good-enough':
          return `${list(h.gauges)} 的精度不够。`;
        case 'conditional':
          return `${list(h.gauges)} 的精度勉强够用。`;
        case 'good':
          return h.studies === 1 ? '量具的精度够用。' : `${h.studies} 项量具分析都表明精度够用。`;
        case 'too-little':
          return '有一项研究数据太少，还不能评判量具。';
      }
    },
    sub: '量具分析说明读数本身有多大分散。',
    line: '占公差的份额。阴影：良好；虚线：可用的上限。',
  },
};
