import type { PlaceWords } from '../../types.ts';

export const sheet: PlaceWords['sheet'] = {
  headline: (h, say) => {
    switch (h.case) {
      case 'no-round':
        return '还没有轮次，请先添加第一轮。';
      case 'nobody-ran':
        return h.pairs === 0
          ? `${say.round(h.round)}还没有样鞋。`
          : `${say.round(h.round)}有 ${h.pairs} 双样鞋，还没有人跑过。`;
      case 'pain':
        return h.testers.length === 1
          ? `${say.testers(h.testers)} 反映疼痛，请先答复。`
          : `${h.testers.length} 名试穿员反映疼痛，请先答复。`;
      case 'damage':
        return `样鞋 ${say.pair(h.pair)} 开始损坏，请先查看。`;
      case 'recurs':
        return h.felt.length > 1
          ? `${say.round(h.round)}反复出现：${say.list(h.felt.map(say.felt))}。`
          : `${say.list(h.felt.map(say.felt))}反复出现：${h.askedTesters} 名试穿员中有 ${h.testers} 名。`;
      case 'one-tester':
        return h.testers.length === 1
          ? `只有 ${say.testers(h.testers)} 反复出现${say.felt(h.felt)}。`
          : `${say.felt(h.felt)}：只在个别试穿员身上证实。`;
      case 'fails':
        return `${say.round(h.round)}至少有一项达不到任务书的要求。`;
      case 'holds':
        return `${say.round(h.round)}达到任务书的全部要求。`;
      case 'better':
        return `${say.list(h.felt.map(say.felt))}已有改善，但还没有定论。`;
      case 'watch':
        return `${say.round(h.round)}尚无定论，请留意${say.felt(h.felt)}。`;
      case 'early':
        return `为时尚早：${say.tester(h.tester)} 的 ${h.asked} 次跑步中有 ${h.reported} 次${say.felt(h.felt)}。`;
      case 'nothing-recurs':
        return `${say.round(h.round)}目前没有反复出现的问题。`;
    }
  },
  sub: (use, briefDistance, pairs, testers, runs, distance) =>
    `${use}，每双 ${briefDistance}。目前 ${pairs} 双样鞋、${testers} 名试穿员、${runs} 次跑步、共 ${distance}。`,
  subStart: (use, briefDistance) => `${use}，每双 ${briefDistance}。`,
  brief: '查看或修改任务书',
  rounds: '轮次',
  editRounds: '轮次、图纸与样鞋',
  farthest: (distance, brief) => `最远 ${distance}，要求 ${brief}`,
  roundBars: (round, stamp, farthest, brief) =>
    `${round}：${stamp}；跑得最远的一双 ${farthest}，要求 ${brief}`,
  recurs: (felt, sure, testers, asked) => {
    const of = `${asked} 名试穿员中有 ${testers} 名`;
    return {
      clear: `${felt}：${of}。`,
      'one-tester': `${felt}：仅一名试穿员反复出现。`,
      likely: `${felt}：很可能反复出现，${of}。`,
    }[sure];
  },
  early: (felt, n) => `${felt}：一名试穿员有 ${n} 次，还不能说反复出现。`,
  nothingRecurs: '目前没有反复出现的问题。',
  nobodyRan: '还没有人穿它跑过。',
  shoe: '鞋上看得到的问题',
  left: { sole: '左鞋底', upper: '左鞋面' },
  right: { sole: '右鞋底', upper: '右鞋面' },
  nothingShows: '目前没有能确认反复出现、过早磨损、损坏或超差的地方。',
  callout: {
    felt: (sure, testers, of, runs, ofRuns) =>
      `${sure}：${of} 名试穿员中 ${testers} 名，${ofRuns} 次中 ${runs} 次`,
    oneTester: (tester, runs, ofRuns) => `仅 ${tester}：${ofRuns} 次中 ${runs} 次`,
    side: { left: '，只在左鞋', right: '，只在右鞋', both: '' },
    rounds: (rounds) => (rounds > 1 ? `，出现于 ${rounds} 轮` : ''),
    better: (before, earlier, after, later) =>
      `已改善：${earlier} ${before} 次，${later} ${after} 次`,
    share: (runs, of) => `${of} 次中 ${runs}`,
    tolerance: (site, by, unit) => `${site}偏差 ${by} ${unit}`,
    toleranceNote: (pair, measured) => `超差：样鞋 ${pair}，共测 ${measured} 双`,
    damageNote: (pair, distance) => `损坏：样鞋 ${pair}，${distance}`,
    wear: (limit) => `${limit}磨损过快`,
    wearNote: (site, value, at, brief) => `${site}：约 ${at} 时到 ${value}；要求 ${brief}`,
  },
  next: '接下来要做的事',
  steps: {
    'ask-about-pain': (who) => `答复 ${who}：疼痛`,
    'look-at-damage': (which) => `查看${which}：开始损坏`,
    'answer-damage': (which) => `损坏待答复，请写问题项：${which}`,
    'measure-change': (change, n) => `到位了吗？在 ${n} 双样鞋上测量“${change}”`,
    'reach-about-stop-use': (who) => `通知 ${who}：停穿`,
    'decide-what-counts': (_, n) => `决定 ${n} 条记录是否计入`,
    'add-round': () => '添加第一轮',
    'add-pairs': () => '添加本轮的样鞋',
    'add-testers': () => '添加试穿员',
    'measure-on-arrival': (round, n) => `对照图纸测量 ${round} 的 ${n} 双样鞋`,
    'hand-out': (which) => `发放${which}`,
    'set-up-phones': (who) => `邀请 ${who}：还没有任何记录`,
    'ask-all': (since, n) => `自${since}起没有人记录（${n} 天）`,
    'ask-the-silent': (who) => `联系 ${who}：一周没有跑步`,
    'write-findings': (_, n) => `为 ${n} 个已证实的问题写问题项`,
    'answer-proposals': (_, n) => `${n} 个专员回答待答复`,
    'assign-findings': (_, n) => `为 ${n} 个问题项指定轮次`,
    'judge-findings': (_, n) => `${n} 个问题项待结案：改动有效吗？`,
    'thank-testers': (_, n) => `感谢 ${n} 名试穿员：反映的问题有了结果`,
    'set-limits': () => '在任务书中设定限值',
    'settle-verdict': (_, n) => `${n} 项限值未定：看看该测什么`,
    'ask-testers': (who, n) => `有 ${n} 件事要问 ${who}`,
    'ask-about-odd-runs': (_, n) => `核对 ${n} 次可疑的跑步`,
  },
  testers: (n) => `${n} 名试穿员`,
  pairs: (n) => `${n} 双样鞋`,
  pairNamed: (code) => `样鞋 ${code}`,
  nothingToDo: '目前没有要做的事。',
  more: (n) => `另有 ${n} 项`,
  calendar: '测试日程',
  calendarSays: (pairs, from, until) =>
    `${pairs} 双样鞋，${from} 至 ${until}：持有人、跑步、检测、损坏`,
  legend: {
    hand: '在试穿员手中',
    run: '跑步',
    complaint: '有不适的跑步',
    check: '台架检测',
    damage: '损坏',
    stop: '停穿',
    planned: '计划',
  },
  pair: '样鞋',
  hands: '在谁手中',
  runs: '跑步',
  complaints: '有不适',
  checks: '台架检测',
  distance: '里程',
  note: '备注',
  span: '时间范围',
  spans: { whole: '整个测试', weeks: '最近 4 周', week: '最近一周' },
  openRound: (round, pairs) => `${round}：展开 ${pairs} 双样鞋`,
  closeRound: (round) => `${round}：收起`,
  firstRows: (rows, of) => `显示跑得最远的 ${rows} 双，共 ${of} 双。`,
  runMark: (pair, date, distance) => `样鞋 ${pair}，${date}${distance}`,
};
