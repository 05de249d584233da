import type { PlaceWords } from '../../types.ts';

export const changes: PlaceWords['changes'] = {
  headline: (h, say) => {
    const names = (some: readonly Parameters<typeof say.moved>[0][]) =>
      say.list(some.map(say.moved));
    switch (h.case) {
      case 'one-round':
        return '要有两轮才能比较，目前还不到两轮。';
      case 'nobody-ran':
        return `${say.round(h.round)}还没有人跑过，暂时无法比较。`;
      case 'mixed':
        return `${names(h.better)}有改善，但${names(h.worse)}变差。`;
      case 'worse':
        return `${names(h.worse)}明显变差。`;
      case 'mended':
        return h.open
          ? `${names(h.better)}已解决；${say.moved(h.open)}尚无定论。`
          : `${names(h.better)}已解决，其他方面没有明显变差。`;
      case 'better':
        return h.open
          ? `${names(h.better)}有改善；${say.moved(h.open)}尚无定论。`
          : `${names(h.better)}有改善，其他方面没有明显变差。`;
      case 'no-different':
        return `${names(h.same)}没有变化：改动没有起作用。`;
      case 'not-in-shoe':
        return h.better.length > 0
          ? `${names(h.better)}有改善，但改动没有做到鞋上。`
          : `针对${names(h.named)}的改动没有做到鞋上，无法评价。`;
      case 'too-early':
        return `${names(h.open)}有没有改善，还看不出来。`;
      case 'nothing-moved':
        return `${say.round(h.round)}没有明显变好或变差的地方。`;
    }
  },
  stamps: {
    mended: '已解决',
    better: '有改善',
    mixed: '有好有坏',
    worse: '变差',
    'no-different': '无差别',
    'too-little': '未定',
  },
  stampMeaning: {
    mended: '已证实减少，且不超过任务书允许的比例。',
    better: '已证实减少；是否已少到任务书的要求尚未定论。',
    mixed: '有的已证实改善，有的已证实变差。',
    worse: '已证实增多。',
    'no-different': '可以排除有意义的变化。',
    'too-little': '目前的回答还不能定论。',
  },
  wore: (both, earlier, onlyEarlier, later, onlyLater) =>
    `${both} 名试穿员两轮都穿过；只穿过${earlier}的 ${onlyEarlier} 名，只穿过${later}的 ${onlyLater} 名。`,
  knew: (who) => `${who} 事先知道改了什么。`,
  later: '后一轮',
  earlier: '前一轮',
  against: '对比',
  hands: '发放',
  allHands: '全部发放',
  blindHands: '仅盲测',
  slopes: (earlier, later) => `有不适的跑步占比：${earlier}至${later}`,
  comfortSlopes: '舒适度平均分（满分 100）',
  slopeSays: (earlier, later, lines) => `${lines} 种不适在${earlier}与${later}的跑步中所占比例`,
  comfortSays: (earlier, later) => `${earlier}与${later}各项舒适度的平均分`,
  words: {
    mended: '▼ 已解决',
    better: '▼ 有改善',
    worse: '▲ 变差',
    'no-different': '= 无差别',
    look: '? 值得留意',
    'too-little': '未定',
  },
  comfortWords: {
    better: '▲ 更好',
    worse: '▼ 更差',
    'no-relevant': '= 无差别',
    open: '未定',
  },
  fromTo: (from, to) => `${from} → ${to}`,
  moreLines: (n) => `另有 ${n} 项见表格`,
  noComplaint: '两轮都没有人反映不适。',
  noComfort: '还没有人给两轮都打过舒适度分。',
  complaint: '不适',
  question: '舒适度问题',
  testersOf: (round) => `${round}，试穿员`,
  runsOf: (round) => `${round}，跑步`,
  of: (some, all) => `${all} 中有 ${some}`,
  word: '结论',
  comfortTable: {
    change: '变化，分（95 %）',
    testers: '试穿员',
    by: { 'same-testers': '两轮相同', 'different-testers': '两轮不同' },
  },
  arrive: '改动到位了吗？',
  arrived: {
    yes: '全部到位。',
    partly: '部分到位。',
    no: '没有做到鞋上。',
    open: '样鞋太少，还不能下结论。',
    'not-asked': '还不知道：没有用数字写明的改动。',
    'not-measured': '还没有在新样鞋上测量。',
  },
  sayInFigures: '用数字写明改动',
  noChanges: '本轮没有记录任何改动。',
  measured: (size, unit) => `${size} ${unit}`,
  drawn: (place, wanted, measured, word) =>
    `${place}：图纸要求 ${wanted}，实测 ${measured}：${word}`,
  drawnUnmeasured: (place, wanted) => `${place}：图纸要求 ${wanted}，同码样鞋测量不足`,
  sameMeasures: (n) => `其余 ${n} 处：新样鞋未显示差别。`,
  mend: '问题解决了吗？',
  mendNothing: '没有问题项或改动写明要解决什么。',
  since: (round) => `自${round}起`,
  judge: '写下结果',
  else: '其他方面有变化吗？',
  nothingWorse: '其他方面没有明显变差。',
  clearlyWorse: '明显变差：',
  comfortBetter: '明显更舒适：',
  rightFor: (before, now) => `觉得正好：现在 ${now}，之前 ${before}`,
  lookAt: '尚未证实，请询问：',
  twoCounts: (before, after) => `之前 ${before} 次，现在 ${after} 次`,
  newPairs: '新样鞋的厚度、硬度与重量',
  print: '打印',

  damage: {
    title: '待答复：样鞋损坏',
    line: (pair, what) => `样鞋 ${pair}：${what}`,
    where: (at, brief, shoe, date) =>
      `要求 ${brief}，${at} 时出现${shoe === '' ? '' : `，${shoe}`}，${date}报告`,
    finding: (what, pair, at) => `${what}：样鞋 ${pair}，${at}`,
    evidence: (pair, what, at, brief, date) =>
      `样鞋 ${pair}：要求 ${brief}，${at} 时${what}，${date}报告。`,
    make: '写成问题项',
    made: '问题项已写好：请说明要怎么改。',
    report: '查看报告',
    caution: '开始损坏的样鞋不应再穿着跑步。',
    stopped: '这双样鞋已停穿。',
    still: '这双样鞋还没有停穿。',
    stop: '处理这双样鞋',
  },
  findings: '问题项',
  noFindings: '还没有问题项。可由不适建立，也可在此根据磨损、图纸或舒适度新建。',
  noneShown: '没有符合条件的问题项。',
  newFinding: '新建问题项',
  finding: '问题项',
  state: '状态',
  part: '部件与工种',
  seenIn: '发现于',
  carried: '改动轮次',
  noRound: (closed) => (closed ? '没有任何一轮修改' : '尚未指定'),
  outcome: '结果',
  anyState: '全部状态',
  anyTrade: '全部工种',
  trade: '工种',
  find: '标题或要求',
  counted: (n, of) => (n === of ? `${n} 个问题项` : `${of} 个问题项中的 ${n} 个`),
  selectFinding: (title) => `选择“${title}”`,
  assign: (n) => `为 ${n} 个问题项指定轮次`,
  assignTo: '由哪一轮实施改动？',
  assignHint: '只列出晚于发现轮次的轮次。',
  assigned: (n, round) => `已为 ${n} 个问题项指定${round}`,
  close: (n) => `将 ${n} 个问题项结案`,
  closedNow: (n) => `已将 ${n} 个问题项结案`,
  partAndTrade: (part, trade) => (part === trade ? part : `${part}（${trade}）`),
  said: {
    outcome: (round, verdict, date) => `${round}已改动：${verdict}（截至 ${date}）。`,
    judge: (round) => `${round}已改动，有效吗？`,
    asked: (round) => `改动将由${round}实施。`,
    'no-round': () => '还没有轮次实施这项改动。',
    closed: () => '已结案，没有写下结果。',
  },
  shows: '依据',
  counts: (testers, askedTesters, runs, askedRuns) =>
    `${askedTesters} 名试穿员中 ${testers} 名，${askedRuns} 次跑步中 ${runs} 次`,
  onFoot: (left, right) => `左鞋 ${left} 次，右鞋 ${right} 次`,
  noEvidence: '没有随之保存依据。',
  frozen: (date) => `有多确定（截至 ${date}）？`,
  zonePage: (zone) => `${zone}的全部反映`,
  wearPage: '磨损曲线',
  comfortPage: '各轮舒适度',
  pairPage: (code) => `样鞋 ${code}`,
  runsBehind: '最近反映的跑步：',
  ownWords: '负责人自述',
  wants: '要求的改动',
  nothingWanted: (closed) => (closed ? '没有提出要求。' : '还没有提出要求。'),
  priority: '优先级',
  whatCame: '结果',
  noOutcome: (closed) => (closed ? '结案时没有写下结果。' : '还没有写下结果。'),
  proposed: (before, after) => `记录显示：之前 ${before} 次，现在 ${after} 次。`,
  proposedRight: (before, after) => `记录显示：之前 ${before} 名试穿员觉得正好，现在 ${after} 名。`,
  proposedNobody: '两轮都回答过的试穿员不到两人。',
  outcomeAsOf: (date) => `依据（截至 ${date}）`,
  edit: '修改此问题项',
  writeOutcome: '写下结果',
  erase: '删除此问题项',
  history: '历史版本',
  form: {
    nothing: (title) => `请填写${title}。`,
    due: '希望何时完成',
    titleIn: (language) => `标题（${language}）`,
    wantedIn: (language) => `期望改动（${language}）`,
  },
};
