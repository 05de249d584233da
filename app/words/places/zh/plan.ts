import type { PlaceWords } from '../../types.ts';

export const plan: PlaceWords['plan'] = {
  name: '发鞋方案',
  headline: (h, say) => {
    switch (h.case) {
      case 'no-pairs':
        return '还没有样鞋可安排，请先添加样鞋。';
      case 'no-testers':
        return '还没有试穿员可安排，请先添加试穿员。';
      case 'none':
        return `${h.pairs} 双样鞋、${h.testers} 名试穿员，还没有方案。`;
      case 'late':
        return `${h.pairs} 双样鞋本应在 ${say.date(h.sinceMs)} 发出。`;
      case 'to-agree':
        return `${h.wearers} 名试穿员试穿 ${say.list(h.rounds.map(say.round))}，请确认方案。`;
      case 'next':
        return `${say.date(h.atMs)} 发出 ${h.pairs} 双样鞋。`;
      case 'running':
        return `${h.out} 双样鞋在外，到 ${say.date(h.endMs)} 为止。`;
      case 'over':
        return h.out === 0
          ? `方案已于 ${say.date(h.endMs)} 结束。`
          : `方案已于 ${say.date(h.endMs)} 结束，请收回 ${h.out} 双样鞋。`;
    }
  },
  sentences: (all) => all.join(''),
  starts: (parts) =>
    parts.length < 2
      ? ''
      : `${parts.map(({ round, testers }) => `${testers} 人先穿 ${round}`).join('，')}。`,
  rooms: (good, of) => `${of} 名试穿员中，${good} 人前方余量为 10 至 15 mm。`,
  tooShort: (who) => `偏短：${who}。`,
  tooLong: (who) => `偏长：${who}。`,
  notMeasured: (who) => `未量脚长：${who}。`,
  room: (mm, rough) => `${rough ? '约 ' : ''}${mm} mm`,
  roomIs: (figure, word) => `前方余量${figure}，${word}`,
  roomWord: { short: '偏短', good: '合适', long: '偏长' },
  roomUnknown: '未量脚长',
  roomKey: '较长一只脚前方的余量，通常为 10 至 15 mm。',
  roomRough: '“约”：该轮未记录鞋楦，仅按尺码推算。',
  dashed: '虚线为计划中。',
  agree: '确认方案',
  handOutOnly: (period) => `只发放第 ${period} 期`,
  agreeHow: (out, back, first) =>
    back === 0
      ? `确认后，从 ${first} 起，各按其日期发出 ${out} 双。`
      : `确认后，从 ${first} 起，各按其日期发出 ${out} 双、收回 ${back} 双。`,
  lateField: '实际发出时间',
  lateHint: '方案定的日期已过，请填样鞋实际发出的时间。',
  agreed: (n) => `已按方案的日期发出 ${n} 双`,
  undo: '撤销',
  undone: '已撤销',
  cannot: {
    withdrawn: (pair, tester) => `给 ${tester} 的 ${pair}：已停穿。`,
    promised: (pair, tester) =>
      `给 ${tester} 的 ${pair}：那段时间在别人手中，请先修改那次发鞋记录。`,
  },
  calendar: '哪双鞋何时在谁手中',
  calendarSays: (pairs, testers, from, until) =>
    `发鞋方案：${pairs} 双样鞋，${testers} 名试穿员，${from} 至 ${until}`,
  today: '今天',
  showAll: (n) => `显示全部 ${n} 双`,
  when: '何时做什么',
  printSlips: (n) => `打印 ${n} 张标签`,
  slipsHint: '每双样鞋一张，带二维码',
  printInvites: '打印邀请单',
  invitesHint: '给还没加入的试穿员',
  goOut: (n) => `发出 ${n} 双`,
  comeBack: (n) => `收回 ${n} 双`,
  goAndCome: (out, back) => `发出 ${out} 双，收回 ${back} 双`,
  measureBack: '收回的样鞋请测量。',
  allBack: '全部收回',
  measureAll: '每双都要测量。',
  outNow: (n) => `目前 ${n} 双在外`,
  gets: (tester, pair, size) => `${tester} 领 ${pair}，${size}`,
  has: (tester, pair, size) => `${tester} 手中是 ${pair}，${size}`,
  pair: '样鞋',
  size: '尺码',
  last: '鞋楦',
  lastUnknown: '未记录',
  roomColumn: '前方余量',
  days: '起止日期',
  state: '状态',
  states: { drawn: '计划中', agreed: '已确认', running: '在手中', over: '已结束', late: '逾期' },
  span: (from, until) => `${from} – ${until}`,
  stop: {
    open: '有试穿员退出',
    who: '谁退出？',
    lastDay: '最后一天',
    lastDayHint: '次日之前的安排都不变。',
    past: '这一天已过：从现在起才改动。',
    then: '样鞋由谁接手？',
    reserve: (tester, rooms) => `${tester}：${rooms}`,
    roomsAll: (room, n) => (n === 1 ? room : `${n} 双都是 ${room}`),
    roomOf: (pair, room) => `${pair} ${room}`,
    store: '没有人，留在库里',
    draw: '为留下的人重新抽取其余部分',
    nothingLeft: (tester) => `${tester} 在这个方案里已没有要穿的样鞋。`,
    says: (tester, date) => `${tester} 在 ${date} 之后退出。`,
    goTo: (pairs, tester) => `${pairs} 转给 ${tester}。`,
    goesTo: (pair, tester) => `${pair} 转给 ${tester}。`,
    stay: (pairs) => `留在库里：${pairs}。`,
    redrawn: (n) => `有 ${n} 处改动。`,
    take: (tester) => `改由 ${tester} 接手`,
    leave: '留在库里',
    keepDrawn: '采用新方案',
    done: (tester) => `${tester} 已退出方案`,
  },
  slips: {
    title: (n) => `有 ${n} 张标签要打印，每双样鞋一张。`,
    none: '不再有样鞋发出，没有标签要打印。',
    noPlan: '还没有方案，也就没有标签可打印。',
    name: '标签',
    sub: '沿线剪开，每张放进对应的鞋盒。标签上看不出是哪一轮。',
    day: '日期',
    allDays: '所有日期',
    print: '打印标签',
    pair: (code) => `样鞋 ${code}`,
    size: (size) => `尺码 ${size}`,
    for: (tester) => `交给 ${tester}`,
    from: (from, until) => `${from} – ${until}`,
    scan: '扫码即可记录穿这双鞋的跑步。',
  },
  invites: {
    title: (n) => (n === 0 ? '所有试穿员都已加入。' : `还有 ${n} 名试穿员没有加入。`),
    selected: (n) => `为选中的 ${n} 名试穿员打印邀请。`,
    all: '所有还没有加入的人',
    nobody: '还没有试穿员可邀请。',
    nobodyHow: '请先添加试穿员。',
    name: '邀请单',
    sub: (joined, log, all) => `${all} 名中 ${joined} 名已加入，${log} 名已有跑步记录。`,
    who: '加入情况',
    logs: (n) => `已加入，已记录 ${n} 次跑步`,
    joined: '已加入，还没有跑步记录',
    byFile: (n) => `由文件或表格得到 ${n} 次跑步，没有手机加入`,
    invited: (until) => `已邀请，邀请码 ${until} 前有效`,
    invitedElsewhere: (until) => `已从另一台设备邀请，那个邀请码 ${until} 前有效`,
    lapsed: '已邀请，邀请码已过期',
    notInvited: '还没有邀请',
    newCode: '新邀请码',
    codesKept:
      '每个邀请码只能用一次，三天内有效。服务器不保存邀请码，只保存它的指纹，所以邀请码只在生成它的设备上显示。生成新邀请码后，旧的在到期前仍然有效。',
    trust: {
      title: '每部手机先做一次：信任这台服务器',
      shows:
        '服务器用的是自己的证书，新手机会显示“您的连接不是私密连接”（安卓）或“此连接非私人连接”（iPhone）。',
      how: (address) => `扫邀请码之前，先扫这个码，或打开 ${address}，按页面上的三步操作。`,
      without: '不做这一步也能加入，但不能安装 Pairlog，没有网络时也打不开。',
      onSlip: (address) => `先做一次：打开 ${address}，按步骤操作。`,
    },
    makeAnew: (n) => `重新生成 ${n} 个邀请码`,
    make: (n) => `生成 ${n} 个邀请码`,
    making: (done, of) => `已生成 ${done} 个，共 ${of} 个……`,
    print: '打印邀请单',
    failed: (who) => `服务器没有给 ${who} 生成邀请码，请重试。`,
    noHub: '没有服务器：试穿员用发鞋文件加入。',
    noHubHow: '每名试穿员的文件在试穿员列表中。发给本人，在手机上打开即可加入。',
    toTesters: '前往发鞋文件',
    offline: '服务器没有应答，暂时无法邀请。',
    joins: (group, tester) => `扫码的手机将以试穿员 ${tester} 的身份加入 ${group}。`,
    type: (address) => `也可以打开 ${address}，输入：`,
    until: (date) => `只能用一次，${date} 前有效。`,
  },
};
