import type { PairHeadline } from '../../../../core/headlines/index.ts';
import type { PlaceWords } from '../../types.ts';
import type { Say } from '../../say-names.ts';

/** “样鞋 963”、“样鞋 963 和 417”、“4 双样鞋”。 */
const named = (ids: readonly Parameters<Say['pair']>[0][], say: Say): string =>
  ids.length > 3 ? `${ids.length} 双样鞋` : `样鞋 ${say.list(ids.map(say.pair))}`;

export const pairs: PlaceWords['pairs'] = {
  headline: (h, say) => {
    switch (h.case) {
      case 'no-round':
        return '还没有轮次，也就没有样鞋。请先添加第一轮。';
      case 'none':
        return '还没有样鞋，请先添加。';
      case 'stop-held':
        return `请收回${named(h.pairs, say)}：已停穿。`;
      case 'stopped':
        return `${h.of} 双中有 ${h.out} 双在外。停穿：${named(h.pairs, say)}。`;
      case 'all-in':
        return h.worn
          ? `${h.of} 双样鞋都在库，可以继续发放。`
          : `${h.of} 双样鞋都在库，还没有人跑过。`;
      case 'not-run':
        return `${h.of} 双中有 ${h.out} 双在外，还没有人跑过。`;
      case 'farthest':
        return `${h.of} 双中有 ${h.out} 双在外。最远的是 ${say.pair(h.pair)}：${say.distance(h.totalM)}，要求 ${say.distance(h.briefM)}。`;
    }
  },
  sub: (testers, rounds, runs, distance) =>
    `${rounds} 轮，在 ${testers} 名试穿员手中。目前 ${runs} 次跑步，共 ${distance}。`,
  columns: {
    pair: '样鞋',
    round: '轮次',
    size: '尺码',
    holder: '在谁手中',
    distance: '里程',
    runs: '跑步次数',
    lastRun: '最近一次',
    complaints: '有不适的次数',
    checks: '检测',
    state: '状态',
  },
  states: {
    all: '全部样鞋',
    out: '在外',
    in: '在库',
    'do-not-run': '停穿',
    silent: '试穿员久无消息',
    'out-of-tolerance': '超差',
    'never-run': '从未跑过',
  },
  stateFilter: '状态',
  roundFilter: '轮次',
  allRounds: '全部轮次',
  find: '样鞋或试穿员',
  nothingFound: '没有符合的样鞋，请调整筛选条件。',
  counted: (n, of) => (n === of ? `${n} 双样鞋` : `${of} 双样鞋中的 ${n} 双`),
  select: (pair) => `选择样鞋 ${pair}`,
  since: (date) => `自 ${date}`,
  nobody: '无人',
  silent: (days) => `${days} 天没有消息`,
  ofAsked: (some, asked) => `${asked} 次中 ${some} 次`,
  ofBrief: (distance, brief) => `${distance}，要求 ${brief}`,
  damaged: '已损坏',
  narrow: (run, last) => `${run}，最近 ${last}`,
  runs: (n) => `${n} 次跑步`,
  takeBack: (n) => `收回 ${n} 双样鞋`,
  handOutSelected: (n) => `发放 ${n} 双样鞋`,
  stopSelected: (n) => `停用 ${n} 双样鞋`,
  stoppedNow: (n) => `已停用 ${n} 双样鞋`,
  takeBackOne: (pair) => `收回 ${pair}`,
  back: '归还时间',
  backHint: '样鞋是何时归还的；选中的每一双都用这个时间。',
  backMissing: '请填写归还时间。',
  inFuture: '这个时间还没有到。',
  beforeOut: (list) => `这些样鞋在那之后才发放：${list}。`,
  tookBack: (n) => `已收回 ${n} 双样鞋`,
  handedOutTo: (pair, tester) => `样鞋 ${pair} 已发给 ${tester}`,
  leftOut: '因超差未计入：',
  leftOutOne: (pair) => `样鞋 ${pair} 超差，未计入。`,
  readAll: '计入全部样鞋',
  undo: '撤销',
  undone: '已撤销',
  add: '添加样鞋',
  toRound: '加入哪一轮',
  stop: '停用样鞋',
  stopThis: '停用这双',
  notices: '停穿',
  endNotice: '解除停用',
  noticeOf: (list, reason) => `${list}：${reason}`,
  loads: '每双样鞋的路面、步数与负荷',
  loadsOfOne: '路面、步数与负荷',
  overTime: '样鞋里程随时间变化',
  page: {
    headline: (h, say) => {
      const pair = say.pair(h.pair);
      const felt = (one: NonNullable<Extract<PairHeadline, { case: 'short' }>['felt']>) =>
        `${one.of} 次中有 ${one.runs} 次出现${say.felt(one.felt)}`;
      const gone = (one: Extract<PairHeadline, { totalM: unknown }>) =>
        `已跑 ${say.distance(one.totalM)}，要求 ${say.distance(one.briefM)}${one.holder === null ? '' : `，在 ${say.tester(one.holder)} 手中`}`;
      switch (h.case) {
        case 'stopped':
          return `样鞋 ${pair} 已停穿，谁都不要再穿。`;
        case 'damaged':
          return `样鞋 ${pair} 开始损坏，请先查看。`;
        case 'short':
          return h.felt
            ? `样鞋 ${pair} 对 ${say.tester(h.tester)} 偏短：${felt(h.felt)}。`
            : `样鞋 ${pair} 对 ${say.tester(h.tester)} 偏短：趾前仅 ${say.number(h.toeMm, 0)} 毫米。`;
        case 'past-limit':
          return `样鞋 ${pair} 的读数已超出任务书的限值。`;
        case 'out-of-tolerance':
          return h.felt ? `样鞋 ${pair} 超差；${felt(h.felt)}。` : `样鞋 ${pair} 超差。`;
        case 'felt':
          return `样鞋 ${pair} ${gone(h)}；${felt(h)}。`;
        case 'quiet':
          return `样鞋 ${pair} ${gone(h)}。${h.asked} 次跑步中没有反复出现的不适。`;
        case 'not-asked':
          return `样鞋 ${pair} ${gone(h)}。还没有问过脚部不适。`;
        case 'not-run':
          return h.holder === null
            ? `还没有人穿样鞋 ${pair} 跑过。`
            : `${say.tester(h.holder)} 已拿到样鞋 ${pair}，还没有跑过。`;
      }
    },
    sub: (size, round, distance, brief, runs) =>
      `${round}，${size}。${runs} 次跑步共 ${distance}，要求 ${brief}。`,
    previous: (code) => `上一双：${code}`,
    next: (code) => `下一双：${code}`,
    notFound: '这个项目里没有这双样鞋。',
    lifeSays: (pair, distance, runs) =>
      `样鞋 ${pair} 的 ${distance}：在谁手中、${runs} 次跑步的舒适度与不适、检测、损坏`,
    hands: '在谁手中',
    handRuns: (from, until, n) => `${from} 至${until === null ? '今' : ` ${until}`}，${n} 次跑步`,
    comfort: '整体舒适度',
    comfortNote: '0 至 100；空心：首次穿着；折线：同轮其他样鞋',
    inRuns: (n, of) => `${of} 次中 ${n} 次`,
    moreFelt: (n) => `另有 ${n} 种次数更少的不适`,
    events: '损坏、停穿',
    limit: (value) => `限值 ${value}`,
    benchNote: (n) => `${n} 次检测；色带：本轮预期读数；圆点：其他样鞋`,
    axis: (unit) => `样鞋里程，${unit}`,
    felt: '不适出现在哪里',
    facts: '这双样鞋',
    size: '尺码',
    feet: (tester) => `${tester} 的脚长`,
    feetValue: (left, right) => `左 ${left}、右 ${right} 毫米`,
    toe: '趾前余量',
    toeValue: (left, right) => `左 ${left}、右 ${right} 毫米；一般为 10 至 15`,
    width: '楦与脚的宽度差',
    arrival: '到货检测',
    arrivalIn: (n) => `已判定 ${n} 个尺寸，均未超差`,
    arrivalOut: '超差',
    arrivalNone: '没有对照图纸测量',
    now: '现在',
    nowWith: (tester, date) => `自 ${date} 在 ${tester} 手中`,
    nowIn: '在库',
    correct: '更正这双样鞋的数据',
    handOut: '发放这双',
    addCheck: '添加检测',
    notes: '写下的话与照片',
    noNotes: '还没有人写过什么。',
    note: (date, tester) => `${date}，${tester}`,
    checks: '检测记录',
    noChecks: '还没有测量过。',
    check: (date, distance, readings) => `${date}，里程 ${distance}：${readings} 个读数`,
    inTolerance: '未超差',
    runTable: {
      run: '跑步',
      tester: '试穿员',
      at: '样鞋里程',
      length: '距离',
      comfort: '舒适度',
      felt: '不适',
      pain: '疼痛',
    },
    quoted: (text) => `“${text}”`,
  },
  hands: {
    title: '发放记录',
    none: '从未发放。',
    to: (tester) => `发给 ${tester}`,
    span: (from, until) => (until ? `${from} 至 ${until}` : `自 ${from}`),
    blind: '盲测',
    notBlind: '知道改动',
    edit: '更正日期',
    editOf: (pair, tester) => `更正日期：样鞋 ${pair}，${tester}`,
    back: '现在收回',
    backOf: (pair, tester) => `从 ${tester} 收回样鞋 ${pair}`,
    from: '发放时间',
    until: '归还时间',
    untilHint: '留空：样鞋仍在外。',
    saved: '日期已更正',
    missing: '请填写日期和时间。',
    beforeFrom: '这早于发放时间。',
    held: (from, until) =>
      until ? `${from} 至 ${until} 这双在别人手中。` : `自 ${from} 起这双在别人手中。`,
  },
  damage: {
    stands: (pair, what) => `样鞋 ${pair}，${what}：请答复试穿员。`,
    out: (pair, what) => `样鞋 ${pair}，${what}：继续停用。`,
    settled: (pair, what) => `样鞋 ${pair}，${what}：可以再穿。`,
    sub: (date, distance) => `于 ${date} 报告，样鞋里程 ${distance}。`,
    crumb: (date) => `${date} 的损坏`,
    notFound: '这个项目里没有这份报告，可能已被收回。',
    where: '位置',
    shoe: { left: '左鞋', right: '右鞋' },
    versions: '较早的版本',
    version: (when, what) => `${when}：${what}`,
    noVersions: '报告自提交后没有改动。',
    report: '报告',
  },
};
