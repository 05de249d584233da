import type { HeadlineCount } from '../../../../core/headlines/index.ts';
import type { Say } from '../../say-names.ts';
import type { PlaceWords } from '../../types.ts';

const of = ({ testers, askedTesters }: HeadlineCount) => `${askedTesters} 人中 ${testers} 人`;

const course = (counts: readonly HeadlineCount[], say: Say): string => {
  const last = counts.at(-1);
  if (!last) return '';
  return counts.length === 1
    ? `${say.round(last.round)}，${of(last)}`
    : `先前 ${counts
        .slice(0, -1)
        .map((one) => one.testers)
        .join('、')} 人，现在 ${of(last)}`;
};

export const shoe: PlaceWords['shoe'] = {
  parts: '这款鞋',
  between: '',
  part: { complaints: '不适', comfort: '舒适度', arrival: '来样尺寸' },
  headline: (h, say) => {
    switch (h.case) {
      case 'no-round':
        return '还没有轮次，请先添加第一轮。';
      case 'not-asked':
        return '还没有人回答脚部感受。';
      case 'pain':
        return h.testers.length === 1
          ? `${say.testers(h.testers)} 反映疼痛，请先答复。`
          : `${h.testers.length} 名试穿员反映疼痛，请先答复。`;
      case 'recurs':
        return `${say.felt(h.felt)}反复出现：${of(h)}。`;
      case 'one-tester':
        return h.testers.length === 1
          ? `只有 ${say.testers(h.testers)} 反复出现${say.felt(h.felt)}。`
          : `${say.felt(h.felt)}：只在个别试穿员身上证实。`;
      case 'watch':
        return `请留意${say.felt(h.felt)}：${course(h.counts, say)}。`;
      case 'single-reports':
        return `${say.round(h.round)}反映了 ${h.complaints} 种不适，均未证实，为时尚早。`;
      case 'nothing':
        return `${say.round(h.round)}的 ${h.runs} 次跑步没有不适。`;
    }
  },
  sub: (round, r, t) => `${round}：${t} 名试穿员在 ${r} 次跑步后回答了脚部感受。`,
  nothingClear: '目前没有已证实反复出现的问题。',
  moreClear: (n) => `另有 ${n} 项反复出现。`,
  clearBefore: (list) => `之前轮次已证实：${list}。`,
  inRound: (felt, round) => `${felt}（${round}）`,
  pains: '跑后疼痛',
  pain: (score) => `${score} 分（满分 10）`,
  painSign: (signs) => `，${signs}`,
  answered: '已答复',
  notAnswered: '未答复',
  over: '已消退',
  maps: (rounds) => `哪里有感觉，${rounds} 轮并排`,
  asked: (r, t) => `${t} 人、${r} 次跑步已回答`,
  nobodyAsked: '还没有人回答',
  view: {
    left: { sole: '左鞋底', upper: '左鞋面' },
    right: { sole: '右鞋底', upper: '右鞋面' },
  },
  zoneSays: (place, some, asked) => `${place}：${asked} 名试穿员中 ${some} 名`,
  legend: '试穿员占比',
  levels: ['无', '10 % 以内', '25 % 以内', '50 % 以内', '更多'],
  numbers: '数字为有感觉的人数，点按区域查看。',
  felt: '感觉',
  anything: '任何不适',
  times: '反映次数',
  once: '一次以上',
  twice: '两次以上',
  complaint: '问题',
  since: '始于',
  sure: '有多确定',
  complaints: '各项问题，最要紧的在前',
  side: { left: '只在左鞋', right: '只在右鞋', both: '双脚' },
  mostly: (tester, n, all) => `${all} 次反映中 ${n} 次来自 ${tester}`,
  counts: (t, asked, r) => `${asked} 人中 ${t} 人，${r} 次`,
  nobody: '无人反映',
  intervalSays: (round, counts) => `${round}：${counts}`,
  sinceKm: (distance) => `${distance} 时`,
  sinceNew: '新鞋时',
  all: (n) => `全部 ${n} 项问题`,
  allRounds: (n) => `全部 ${n} 轮`,
  none: '没有人指出不适的部位。',
  print: '打印本页',
  saveMap: '保存图',
  zoneTitle: (side, zone) => `${side}，${zone}`,
  zone: {
    headline: (h, say, zone) => {
      switch (h.case) {
        case 'not-asked':
          return `还没有人回答${zone}的感觉。`;
        case 'nothing':
          return `${h.runs} 次跑步中，无人在${zone}感到不适。`;
        case 'recurs':
          return `${say.felt(h.felt)}反复出现：${of(h)}。`;
        case 'recurred':
          return `${say.felt(h.felt)}：${say.round(h.before.round)}，${of(h.before)}；${say.round(h.now.round)}，${h.now.testers === 0 ? '无人反映' : of(h.now)}。`;
        case 'one-tester':
          return h.testers.length === 1
            ? `只有 ${say.testers(h.testers)} 反复出现${say.felt(h.felt)}。`
            : `${say.felt(h.felt)}：只在个别试穿员身上证实。`;
        case 'mostly-one':
          return `${say.felt(h.felt)}：${h.of} 次反映中有 ${h.runs} 次来自 ${say.tester(h.tester)}。`;
        case 'likely':
          return `${say.felt(h.felt)}：${say.round(h.round)}，${of(h)}。`;
        case 'few':
          return `${say.felt(h.felt)}：目前只有 ${h.reports} 次反映，为时尚早。`;
        case 'any':
          return `${zone}：${say.round(h.round)}，${of(h)}有感觉。`;
      }
    },
    sub: (felt, reports, t) => `${felt}：${t} 名试穿员共反映 ${reports} 次。`,
    feet: (left, right) => `左脚 ${left} 次，右脚 ${right} 次。`,
    other: { left: '查看左脚', right: '查看右脚' },
    who: '谁有感觉，在什么时候',
    says: (felt, zone) => `${zone}${felt}：每名试穿员的跑步，按样鞋里程排列`,
    counts: (r, askedR, t, askedT) => `${askedR} 次中 ${r} 次，${askedT} 人中 ${t} 人`,
    layers: (n) => `${n} 层`,
    notWorn: '未穿',
    row: (tester, felt, asked) => `${tester}：${asked} 次跑步中 ${felt} 次`,
    dot: (tester, date, distance, severity) =>
      `${tester}，${date}，样鞋里程 ${distance}${severity}`,
    severity: (value) => `，${value} 分`,
    legend: { silent: '已回答，无不适', here: '有感觉，越大越强', other: '只在另一只脚' },
    allTesters: (n) => `全部 ${n} 名试穿员`,
    onset: (distance) => `约在一次跑步的 ${distance} 处开始。`,
    trend: { grows: '随样鞋里程加重。', fades: '随样鞋里程减轻。' },
    pairShare: (pair, some, all, round) => `${round} ${all} 次反映中 ${some} 次来自样鞋 ${pair}。`,
    sizeAndFoot: (tester, size, foot) => `它对应脚长 ${size}；${tester} 较长的脚为 ${foot}。`,
    words: '他们怎么说，最新的在前',
    run: '跑步',
    tester: '试穿员',
    pair: '样鞋',
    onPair: '跑前里程',
    from: '开始于',
    strength: '程度',
    inWords: '原话',
    noWords: '没有文字',
    comma: '，',
    photos: (tester) => `${tester} 的照片`,
    skin: { blister: '水泡', broken: '破皮' },
    allReports: (n) => `全部 ${n} 次反映`,
    behind: '通常的原因',
    then: '其次',
    practice: '来自经验，并非测量结果。',
    kinds: '此处的感觉',
    anything: '任何不适',
    findings: '问题项',
    round: '轮次',
    unknown: '没有这个部位。',
  },
  comfort: {
    headline: (h, say, attribute) => {
      const n = (value: number) => say.number(value, 0);
      switch (h.case) {
        case 'not-scored':
          return '还没有人给舒适度打分。';
        case 'score':
          return `${say.round(h.round)}舒适度为 ${n(h.mean)} 分（满分 100）。`;
        case 'better':
          return `舒适度提高：从 ${n(h.before)} 分到 ${n(h.mean)} 分。`;
        case 'worse':
          return `舒适度下降：从 ${n(h.before)} 分到 ${n(h.mean)} 分。`;
        case 'same':
          return `舒适度 ${n(h.mean)} 分，之前 ${n(h.before)} 分，没有实际差别。`;
        case 'open':
          return `舒适度 ${n(h.mean)} 分，之前 ${n(h.before)} 分，尚难比较。`;
        case 'attribute-worse':
          return `${attribute(h.attribute)}下降了 ${n(h.by)} 分。`;
      }
    },
    sub: (round, scores, t) => `${round}：${t} 名试穿员共打分 ${scores} 次。首次试穿单独列出。`,
    same: (by, t) => `只比同样的试穿员：${by}（${t} 名两轮都穿过）。`,
    different: (by) => `试穿员不同：${by}。`,
    tester: '一名试穿员',
    score: '得分',
    course: '随里程变化',
    change: '与上一轮相比',
    attribute: '项目',
    drift: {
      fades: (points) => `下降：每 100 km ${points} 分`,
      rises: (points) => `上升：每 100 km +${points} 分`,
      steady: '没有明显变化',
    },
    changes: {
      better: '更好',
      worse: '更差',
      'no-relevant': '差别很小',
      open: '为时尚早',
    },
    says: (attribute, round, mean, t) => `${attribute}，${round}：${mean} 分，${t} 名试穿员`,
    pictureSays: '各项目、各轮次的舒适度（0 至 100）：均值、区间，每名试穿员一个小点',
    courseSays: (attribute) => `${attribute}随样鞋里程的变化`,
    prefer: '更喜欢哪一双',
    preferLine: (first, n, second, m, equal) =>
      `${n} 人选${first}，${m} 人选${second}${equal > 0 ? `，${equal} 人认为一样` : ''}`,
    agreement: '试穿组的一致程度',
  },
  arrival: {
    headline: (h, say, place) => {
      switch (h.case) {
        case 'not-measured':
          return '还没有样鞋对照图纸测量。';
        case 'all-in':
          return `${h.pairs} 双已测样鞋没有超差尺寸。`;
        case 'one-out':
          return `样鞋 ${say.pair(h.pair)} 超差：${place(h)}。`;
        case 'out':
          return `${h.measured} 双已测样鞋中有 ${h.pairs.length} 双超差。`;
        case 'undecided':
          return `${h.pairs} 双样鞋太接近限值，无法判定。`;
      }
    },
    sub: (measured, all, dimensions) =>
      `${all} 双样鞋中 ${measured} 双在来样时测量，共 ${dimensions} 项尺寸。`,
    says: (place, out, readings) => `${place}：${readings} 个读数中 ${out} 个超差`,
    pictureSays: '各尺寸与图纸的偏差，每双样鞋一个点，色带为公差',
    dimension: '尺寸',
    band: '允许范围',
    dot: '一只样鞋',
    outDot: '超差',
    point: (pair, foot, by) => `样鞋 ${pair}，${foot}：${by}`,
    nominal: (value) => `图纸：${value}`,
    allIn: '全部在公差内',
    undecidedMark: '未定',
    undecided: (n) => `${n} 个无法判定`,
    notMeasured: '未测量',
    all: (n) => `全部 ${n} 项尺寸`,
    gap: '每条线按各自的偏差取比例。',
  },
};
