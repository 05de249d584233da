import type { PlaceWords } from '../../types.ts';

export const runs: PlaceWords['runs'] = {
  headline: (h, say) => {
    switch (h.case) {
      case 'none':
        return '还没有人记录跑步。';
      case 'pain':
        if (!h.unanswered)
          return h.testers.length === 1
            ? `${say.testers(h.testers)} 因疼痛仍在停跑。`
            : `${h.testers.length} 名试穿员因疼痛仍在停跑。`;
        return h.testers.length === 1
          ? `${say.testers(h.testers)} 反映疼痛，请先答复。`
          : `${h.testers.length} 名试穿员反映疼痛，请先答复。`;
      case 'damage':
        return h.pairs.length === 1
          ? `样鞋 ${say.list(h.pairs.map(say.pair))} 开始损坏，请答复试穿员。`
          : `${h.pairs.length} 双样鞋开始损坏，请答复试穿员。`;
      case 'waiting':
        return h.runs === h.entries
          ? `${h.runs} 次跑步等你决定。`
          : `${h.entries} 条记录等你决定。`;
      case 'odd':
        return `没有等你决定的记录；${h.runs} 次跑步中有 ${h.odd} 次可疑。`;
      case 'quiet':
        return `共 ${h.runs} 次跑步，没有等你决定的记录。`;
    }
  },
  howTheyCome: '试穿员在手机上记录；旧表格里的跑步可以导入。',
  sub: (all, counted, distance, testers) =>
    all === counted
      ? `${testers} 名试穿员，${all} 次跑步，共 ${distance}。`
      : `${testers} 名试穿员，${all} 次跑步；计入 ${counted} 次，共 ${distance}。`,
  waitingHeadline: (h) => {
    switch (h.case) {
      case 'nothing':
        return h.aside === 0
          ? '没有等你决定的记录。'
          : `没有等你决定的记录；已搁置 ${h.aside} 条。`;
      case 'out': {
        const parts = [
          ...(h.runs > 0 ? [`${h.runs} 次跑步`] : []),
          ...(h.readings > 0 ? [`${h.readings} 个读数`] : []),
        ];
        return `${parts.join('和 ')}在你决定之前不计入。`;
      }
      case 'meanwhile':
        return `${h.entries} 条可疑记录暂时计入，等你决定。`;
    }
  },
  runHeadline: (h, say) => {
    const who = say.tester(h.tester);
    const day = say.date(h.at);
    switch (h.case) {
      case 'pain':
        return `${who} 在 ${day} 反映疼痛，${h.score} 分（满分 10 分）。`;
      case 'off-day':
        return `${who} 在 ${day} 状态不佳：舒适度 ${say.number(h.score, 0)}，平时 ${say.number(h.usual, 0)}。`;
      case 'best-day':
        return `${who} 在 ${day} 状态很好：舒适度 ${say.number(h.score, 0)}，平时 ${say.number(h.usual, 0)}。`;
      case 'felt':
        return h.more === 0
          ? `${who} 在 ${day} 感到${say.felt(h.felt)}。`
          : `${who} 在 ${day} 感到${say.felt(h.felt)}，另有 ${h.more} 处。`;
      case 'nothing':
        return `${who} 在 ${day} 的跑步没有不适。`;
      case 'not-asked':
        return `${who} 在 ${day} 没有回答脚部不适。`;
    }
  },
  all: '全部跑步',
  needsYou: '需要你处理',
  decide: (n) => `决定 ${n} 条记录是否计入`,
  oddRuns: (n) => `${n} 次可疑的跑步`,
  columns: {
    date: '日期',
    tester: '试穿员',
    pair: '样鞋',
    distance: (unit) => `距离（${unit}）`,
    pace: (unit) => `配速（分/${unit}）`,
    surface: '路面',
    comfort: '舒适度',
    complaints: '不适',
    pain: '疼痛',
    said: '原话',
    state: '状态',
  },
  filters: {
    all: '全部',
    complaint: '有不适',
    pain: '有疼痛',
    words: '有留言',
    photos: '有照片或轨迹',
    apart: '可疑、已更正或未计入',
  },
  show: '显示',
  everyRound: '全部轮次',
  everyTester: '全部试穿员',
  everyPair: '全部样鞋',
  search: '文字、试穿员或样鞋',
  found: (found, all) => (found === all ? `${all} 次跑步` : `${all} 次跑步中的 ${found} 次`),
  noneFound: '没有这样的跑步。',
  tooMany: (listed, left) => `列表只含前 ${listed} 次，另有 ${left} 次不在其中，请缩小范围。`,
  select: (date, tester) => `选择 ${tester} ${date} 的跑步`,
  asideSelected: (n) => `搁置 ${n} 次跑步`,
  countSelected: (n) => `计入 ${n} 次跑步`,
  asideNow: (n) => `已搁置 ${n} 次跑步`,
  countedNow: (n) => `已计入 ${n} 次跑步`,
  notAsked: '未问',
  marks: {
    photos: (n) => `${n} 张照片`,
    track: '轨迹',
    odd: '可疑',
    corrected: '已更正',
    despiteStop: '停穿期间跑过',
  },
  states: { counts: '计入', waits: '待决定', 'set-aside': '已搁置', twice: '重复记录' },
  stateMeaning: {
    counts: '计入所有数字。',
    waits: '在你决定之前不计入。',
    'set-aside': '保留在记录中，不计入。',
    twice: '同一次跑步又记了一次，只计另一条。',
  },
  openRun: (date, tester) => `打开 ${tester} ${date} 的跑步`,

  nth: (nth, of) => `这双鞋 ${of} 次跑步中的第 ${nth} 次`,
  before: (date) => `上一次：${date}`,
  after: (date) => `下一次：${date}`,
  pairCrumb: (code) => `样鞋 ${code}`,
  gone: '这里没有这次跑步。',
  goneNote: '试穿员已撤回，或者这双样鞋不在你正在看的范围内。',
  erased: (tester) => `${tester} 撤回了这次跑步。`,
  comfort: (tester) => `舒适度，与 ${tester} 穿这双鞋的其他跑步相比`,
  comfortSays: (tester, others) =>
    `舒适度 0 至 100：这次跑步，以及 ${tester} 穿这双鞋的其他 ${others} 次`,
  ends: '0 至 100',
  thisRun: '这次',
  otherRuns: (tester) => `${tester} 的其他跑步`,
  usually: '平时',
  attribute: '项目',
  noComfort: '没有打舒适度。',
  feet: '脚部不适',
  nothingBothered: '没有不适',
  feetSays: (n) => `脚上的位置：${n} 处不适`,
  severity: (n) => `${n} 分（满分 10 分）`,
  from: (distance) => `从 ${distance} 开始`,
  skin: { blister: '水泡', broken: '破皮' },
  said: '全部回答',
  labels: {
    pair: '样鞋',
    startedAt: '开始',
    distanceM: '距离',
    durationS: '用时',
    surfaces: '路面',
    ground: '地面',
    temperatureC: '气温',
    sock: '袜子',
    comfort: '舒适度',
    feet: '脚部不适',
    pain: '疼痛',
    words: '留言',
    photos: '照片',
    track: '轨迹',
    wornDespiteStop: '停穿期间仍穿的原因',
  },
  pace: '配速',
  tester: '试穿员',
  round: '轮次',
  inRound: (round, at) => `${round}，跑前累计 ${at}`,
  byTrack: '按轨迹',
  otherFigure: (distance) => `轨迹为 ${distance}`,
  firstImpression: '这双鞋的第一次跑步',
  painOf: (n) => `${n} 分（满分 10 分）`,
  painIsNew: '新出现',
  none: '无',
  notSaid: '未回答',
  photoCount: (n) => `${n} 张照片`,
  complaintCount: (n) => `${n} 处不适`,
  caution: '这种疼痛需要谨慎：在医生同意之前不要再参加本测试的跑步。',
  painTitle: '疼痛：请答复试穿员',
  track: '轨迹',
  trackNote: (sent) => `已发送其中 ${sent}；两端留在手机上。`,
  trackSays: (distance) => `跑步路线，${distance}，标有公里数`,
  start: '起点',
  noTrack: '轨迹还没有传到这台设备。',
  paceByKm: '每公里配速',
  paceSays: (n) => `${n} 公里的配速`,
  kilometre: '公里',

  correct: '更正这次跑步',
  correctOf: (tester) => `替 ${tester} 更正这次跑步`,
  correctHint: (tester) => `${tester} 会看到更正后的内容，并注明由负责人更正及原因。`,
  why: '为什么更正？',
  whyMissing: '请写明原因，试穿员会看到。',
  saveCorrection: '保存更正',
  corrected: '已更正',
  undone: '已恢复之前的版本',
  correctedOn: (who, date, why) => `${who}已于 ${date} 更正：${why}`,
  undoCorrection: '撤销更正',
  changedMeanwhile: '这次跑步刚刚被修改过，请重新查看。',
  noReason: '请写明原因。',
  aLead: '负责人',
  setAside: '搁置这次跑步',
  setAsideHint: '记录会保留并注明，但不计入任何数字。',
  asideSince: (date, why) =>
    why === '' ? `${date} 搁置，不计入。` : `${date} 搁置，不计入：${why}`,
  countedSince: (date, why) => (why === '' ? `${date} 核对后计入。` : `${date} 核对后计入：${why}`),
  takeBackDecision: '撤回决定',
  decisionBack: '已收回决定',
  countIt: '计入这次跑步',
  history: '以前的版本',
  loggedOn: (who, when) => `${who} 记录于 ${when}。`,
  changedOn: (who, when) => `${who} 修改于 ${when}。`,
  erasedOn: (who, when) => `${who} 收回于 ${when}。`,
  neverChanged: '此后没有改动。',
  nothingShown: '这里显示的内容没有变化。',
  fromTo: (before, after) => `${before} → ${after}`,
  form: {
    distance: (unit) => `距离（${unit}）`,
    time: '用时（时:分:秒，或分钟）',
    start: '开始',
    pair: '样鞋',
    surfaces: '路面',
    ground: '地面',
    temperature: (unit) => `气温（${unit}）`,
    sock: '袜子',
    comfort: '舒适度；空白为未回答',
    feet: '脚部不适',
    feetAnswers: { unasked: '未回答', nothing: '没有不适', something: '有不适' },
    foot: '脚',
    zone: '位置',
    kind: '感觉',
    severity: '程度，0 至 10',
    from: (unit) => `开始于（${unit}）`,
    skin: '皮肤',
    skinWhole: '完好',
    addComplaint: '添加一处不适',
    removeComplaint: '移除',
    pain: '疼痛，0 至 10',
    painIsNew: '是新出现的吗？',
    yes: '是',
    no: '否',
    painSigns: '体征',
    words: '原话',
    unsaid: '未回答',
    wrong: {
      pair: '请选择样鞋。',
      distance: '请填写距离，例如 10.5。',
      time: '请填写用时，例如 52:30。',
      start: '请选择日期和时间。',
      ahead: '这个时间还没到。',
      temperature: '请填写气温，例如 12。',
      worn: '请写明仍穿这双鞋的原因。',
      from: '应在跑步途中开始。',
      where: '请添加一处不适，或选择没有不适。',
      kind: '请选择是什么感觉。',
    },
  },
};
