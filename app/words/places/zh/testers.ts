import type { PlaceWords } from '../../types.ts';

export const testers: PlaceWords['testers'] = {
  headline: (h, say) => {
    switch (h.case) {
      case 'none':
        return '还没有试穿员，请先添加。';
      case 'pain':
        return h.testers.length > 3
          ? `${h.testers.length} 名试穿员反映疼痛，请先答复。`
          : `${say.testers(h.testers)} 反映疼痛，请先答复。`;
      case 'silent':
        return h.testers.length > 3
          ? `${h.testers.length} 名试穿员久无消息，最长 ${h.days} 天。`
          : `${say.testers(h.testers)} 久无消息，${h.testers.length === 1 ? '已' : '最长'} ${h.days} 天。`;
      case 'all-quiet':
        return `自${say.date(h.sinceMs)}起没有人记录（${h.days} 天）。`;
      case 'nobody-holds':
        return `样鞋都在库，${h.of} 名试穿员可以开始跑。`;
      case 'all-heard':
        return `手中有鞋的 ${h.holders} 名试穿员都跑过，没有人久无消息。`;
      case 'some-ran':
        return `手中有鞋的 ${h.holders} 名试穿员中，${h.ran} 名跑过，没有人久无消息。`;
      case 'nobody-ran':
        return `${h.holders} 名试穿员手中有鞋，还没有人跑过。`;
    }
  },
  sub: (all, holders, ran, runs, distance) =>
    `全组 ${all} 名试穿员，${holders} 名手中有鞋，${ran} 名跑过：${runs} 次，共 ${distance}。`,
  columns: {
    tester: '试穿员',
    pairs: '手中的样鞋',
    runs: '跑步次数',
    distance: '里程',
    lastRun: '最近一次',
    silent: '无消息',
    most: '最常出现的不适',
    complaints: '有不适的次数',
    pain: '疼痛',
  },
  states: {
    all: '全部试穿员',
    holds: '手中有鞋',
    silent: '久无消息',
    pain: '有需处理的疼痛',
    'never-ran': '从未跑过',
  },
  stateFilter: '显示',
  find: '试穿员或样鞋',
  nothingFound: '没有符合的试穿员，请调整筛选条件。',
  counted: (n, of) => (n === of ? `${n} 名试穿员` : `${of} 名试穿员中的 ${n} 名`),
  select: (tester) => `选择试穿员 ${tester}`,
  inviteSelected: (n) => `打印 ${n} 份邀请`,
  takeBack: (n) => `收回他们的 ${n} 双样鞋`,
  actions: '邀请、发鞋文件',
  silentFor: (n) => `${n} 天`,
  pain: (score) => `${score} 分（满分 10）`,
  feltIn: (felt, n) => `${felt}，${n} 次`,
  plan: '安排谁穿哪双',
  feet: '脚与楦，以及任务书面向的脚型',
  steady: '试穿员的回答是否稳定？',
  power: '需要多少名试穿员',
  page: {
    headline: (h, say) => {
      const who = say.tester(h.tester);
      switch (h.case) {
        case 'pain':
          return `${who} 反映疼痛，${h.score} 分（满分 10），请先答复。`;
        case 'not-run':
          return h.pairs.length === 0
            ? `${who} 手中没有样鞋，还没有跑过。`
            : `${who} 已拿到样鞋 ${say.list(h.pairs.map(say.pair))}，还没有跑过。`;
        case 'alone':
          return `${who}：${h.of} 次中有 ${h.runs} 次${say.felt(h.felt)}；其他人 ${h.others.askedRuns} 次中有 ${h.others.runs} 次。`;
        case 'shared':
          return `${who} 和另外 ${h.others.testers} 人都有${say.felt(h.felt)}。`;
        case 'felt':
          return `${who} 在 ${h.of} 次中有 ${h.runs} 次${say.felt(h.felt)}。`;
        case 'silent':
          return `${who} 已有 ${h.days} 天没有消息。`;
        case 'quiet':
          return h.once === 0
            ? `${who} 跑了 ${h.asked} 次，没有任何不适。`
            : `${who} 跑了 ${h.asked} 次，没有反复出现的不适。`;
        case 'not-asked':
          return `${who} 跑了 ${h.runs} 次，从未回答过脚部不适。`;
      }
    },
    sub: (runs, distance, list, last) =>
      `${runs} 次跑步，共 ${distance}${list === '' ? '' : `，现有样鞋 ${list}`}${last === null ? '' : `。最近一次 ${last}`}。`,
    previous: (code) => `上一名：${code}`,
    next: (code) => `下一名：${code}`,
    notFound: '全组里没有这名试穿员。',
    where: '不适出现在哪里',
    whereSays: (tester) => `${tester} 哪里不适，其他人是否也有`,
    nothingFelt: '没有反映任何不适。',
    ownRuns: (n, of) => `${of} 次中 ${n} 次`,
    others: (testers, of, n, ofRuns) => `其他人：${of} 名中 ${testers} 名，${ofRuns} 次中 ${n} 次`,
    own: '本人',
    otherTesters: '其他试穿员',
    otherRuns: '他们的跑步',
    sure: '把握',
    against: '与其他人相比',
    againstNote: '同轮平均分，0 至 100；首次穿着不计',
    marksNote: '同轮里过了还是不够：中间就是正好',
    twoSidedRow: (question) => `${question}：过了还是不够`,
    againstSays: (tester) => `${tester} 与其他试穿员的平均分`,
    attribute: '项目',
    mean: '平均分',
    range: '其他人最低至最高',
    complainedRow: '有不适的跑步',
    another: '其他试穿员',
    course: '每次跑步的整体舒适度（0 至 100）',
    courseSays: (tester, n) => `${tester} 在 ${n} 次跑步中的整体舒适度`,
    words: (tester) => `${tester} 自己的话`,
    noWords: '还没有写过什么。',
    noteOf: (date, pair) => `${date}，样鞋 ${pair}`,
    feet: '脚在楦中',
    feetSays: (tester, pair) => `${tester} 的脚在样鞋 ${pair} 的楦中，按比例绘制`,
    feetOf: (pair, size) => `样鞋 ${pair}，${size}`,
    feetNone: '还没有量过脚。请在“编辑这名试穿员”中补上。',
    feetOnly: '这些轮次没有记录楦，只画出脚。',
    room: (mm) => `${mm} 毫米`,
    footSize: (length, width) => (width === null ? `长 ${length}` : `${length} × ${width}`),
    scale:
      '按比例，单位毫米。前端数字：趾前余量，一般为 10 至 15。轮廓为示意，只有长度和宽度是测得的。',
    foot: '脚',
    footLength: '脚长',
    footWidth: '脚宽',
    last: '楦',
    toe: '趾前余量',
    ofSide: (name, side) => `${name}，${side}`,
    left: '左',
    right: '右',
    edit: '编辑这名试穿员',
    remove: '移除这名试穿员',
    removeAsk: (tester) => `要把 ${tester} 移出全组吗？这名试穿员没有任何记录；可以撤销。`,
    removed: (tester) => `已移除 ${tester}`,
    takeAll: (n) => (n === 1 ? '收回这双样鞋' : `收回 ${n} 双样鞋`),
    pains: '反映过的疼痛与损坏',
    invite: (tester) => `邀请 ${tester}`,
    file: '发鞋文件',
  },
};
