/** The hand-out plan: who wears what when, its slips and its invites. */
import type { PlanHeadline } from '../../../../core/headlines/index.ts';
import type { RoomWord } from '../../../../core/rounds/index.ts';
import type { Say } from '../../say-names.ts';

const count = (n: number, one: string, many: string) => `${n} ${n === 1 ? one : many}`;
const pairCount = (n: number) => count(n, 'pair', 'pairs');
const testerCount = (n: number) => count(n, 'tester', 'testers');

export const plan = {
  name: 'Hand-out plan',
  headline: (h: PlanHeadline, say: Say): string => {
    switch (h.case) {
      case 'no-pairs':
        return 'No pair to plan for yet. Add the pairs first.';
      case 'no-testers':
        return 'No tester to plan for yet. Add the testers first.';
      case 'none':
        return `No plan yet for ${pairCount(h.pairs)} and ${testerCount(h.testers)}.`;
      case 'late':
        return `${pairCount(h.pairs)} should be out since ${say.date(h.sinceMs)}.`;
      case 'to-agree':
        return `${testerCount(h.wearers)} ${h.wearers === 1 ? 'wears' : 'wear'} ${say.list(h.rounds.map(say.round))}. Agree the plan.`;
      case 'next':
        return `${pairCount(h.pairs)} ${h.pairs === 1 ? 'goes' : 'go'} out on ${say.date(h.atMs)}.`;
      case 'running':
        return `${pairCount(h.out)} ${h.out === 1 ? 'is' : 'are'} out until ${say.date(h.endMs)}.`;
      case 'over':
        return h.out === 0
          ? `The plan ended on ${say.date(h.endMs)}.`
          : `The plan ended on ${say.date(h.endMs)}. Take ${pairCount(h.out)} back.`;
    }
  },
  sentences: (all: readonly string[]): string => all.join(' '),
  starts: (parts: readonly { readonly round: string; readonly testers: number }[]): string =>
    parts.length < 2
      ? ''
      : `${parts.map(({ round, testers }) => `${testers} start with ${round}`).join(', ')}.`,
  rooms: (good: number, of: number): string =>
    `${good} of ${testerCount(of)} ${good === 1 ? 'has' : 'have'} 10 to 15 mm of room in front.`,
  tooShort: (who: string) => `Too short: ${who}.`,
  tooLong: (who: string) => `Too long: ${who}.`,
  notMeasured: (who: string) => `Feet not measured: ${who}.`,
  room: (mm: number, rough: boolean) => `${rough ? 'about ' : ''}${mm} mm`,
  /** In front of the longer foot, and whether that is right. */
  roomIs: (figure: string, word: string) => `${figure} of room: ${word}`,
  roomWord: { short: 'too short', good: 'good', long: 'too long' } as Readonly<
    Record<RoomWord, string>
  >,
  roomUnknown: 'feet not measured',
  roomKey: 'Room in front of the longer foot: 10 to 15 mm is usual.',
  roomRough: '“about”: by the size alone, because the round names no last.',
  dashed: 'Dashed: planned.',
  agree: 'Agree the plan',
  handOutOnly: (period: number) => `Hand out period ${period} only`,
  agreeHow: (out: number, back: number, first: string) =>
    back === 0
      ? `Agreeing hands out ${pairCount(out)}, each on its day, from ${first} on.`
      : `Agreeing hands out ${pairCount(out)} and takes ${back} back, each on its day, from ${first} on.`,
  lateField: 'Handed out on',
  lateHint: 'The plan’s day is past. Say when the pairs really went out.',
  agreed: (n: number) => `${pairCount(n)} handed out on the plan’s days`,
  undo: 'Undo',
  undone: 'Undone',
  cannot: {
    withdrawn: (pair: string, tester: string) => `Pair ${pair} for ${tester}: taken out of use.`,
    promised: (pair: string, tester: string) =>
      `Pair ${pair} for ${tester}: somebody else has it at that time. Change that hand-out first.`,
  },
  calendar: 'Who has which pair when',
  calendarSays: (pairs: number, testers: number, from: string, until: string) =>
    `Hand-out plan: ${pairCount(pairs)}, ${testerCount(testers)}, ${from} to ${until}`,
  today: 'today',
  showAll: (n: number) => `Show all ${pairCount(n)}`,
  when: 'What happens when',
  printSlips: (n: number) => `Print ${count(n, 'slip', 'slips')}`,
  slipsHint: 'a code square for each pair',
  printInvites: 'Print the invites',
  invitesHint: 'for testers who have not joined',
  goOut: (n: number) => `${pairCount(n)} ${n === 1 ? 'goes' : 'go'} out`,
  comeBack: (n: number) => `${pairCount(n)} ${n === 1 ? 'comes' : 'come'} back`,
  goAndCome: (out: number, back: number) =>
    `${pairCount(out)} ${out === 1 ? 'goes' : 'go'} out, ${back} ${back === 1 ? 'comes' : 'come'} back`,
  measureBack: 'Measure those that come back.',
  allBack: 'All pairs come back',
  measureAll: 'Measure every pair.',
  outNow: (n: number) => `${pairCount(n)} ${n === 1 ? 'is' : 'are'} out now`,
  gets: (tester: string, pair: string, size: string) => `${tester} gets ${pair}, ${size}`,
  has: (tester: string, pair: string, size: string) => `${tester} has ${pair}, ${size}`,
  pair: 'Pair',
  size: 'Size',
  last: 'Last',
  lastUnknown: 'not noted',
  roomColumn: 'Room in front',
  days: 'From, until',
  state: 'State',
  states: {
    drawn: 'planned',
    agreed: 'agreed',
    running: 'in hand',
    over: 'over',
    late: 'late',
  },
  span: (from: string, until: string) => `${from} – ${until}`,
  stop: {
    open: 'A tester stops',
    who: 'Who stops?',
    lastDay: 'Last day',
    lastDayHint: 'Nothing before the next day changes.',
    past: 'This day is past: the change counts from now on.',
    then: 'Who takes the pairs over?',
    reserve: (tester: string, rooms: string) => `${tester}: ${rooms}`,
    roomsAll: (room: string, n: number) => (n === 1 ? room : `${room} in all ${n}`),
    roomOf: (pair: string, room: string) => `${pair} ${room}`,
    store: 'Nobody: leave them in store',
    draw: 'Draw the rest anew for those who stay',
    nothingLeft: (tester: string) => `${tester} has no pair to come in this plan.`,
    says: (tester: string, date: string) => `${tester} stops after ${date}.`,
    goTo: (pairs: string, tester: string) => `${pairs} go to ${tester}.`,
    goesTo: (pair: string, tester: string) => `${pair} goes to ${tester}.`,
    stay: (pairs: string) => `In store: ${pairs}.`,
    redrawn: (n: number) => `${count(n, 'place changes', 'places change')}.`,
    take: (tester: string) => `Take ${tester}`,
    leave: 'Leave in store',
    keepDrawn: 'Take the new plan',
    done: (tester: string) => `${tester} is out of the plan`,
  },
  slips: {
    title: (n: number) => `${count(n, 'slip', 'slips')} to print, one for each pair.`,
    none: 'No pair goes out any more: there is no slip to print.',
    noPlan: 'No plan yet, so no slip to print.',
    name: 'Slips',
    sub: 'Cut along the lines and put each slip into its box. A slip does not tell the round.',
    day: 'Which day',
    allDays: 'All days',
    print: 'Print the slips',
    pair: (code: string) => `Pair ${code}`,
    size: (size: string) => `Size ${size}`,
    for: (tester: string) => `for ${tester}`,
    from: (from: string, until: string) => `${from} – ${until}`,
    scan: 'Scan to log a run in this pair.',
  },
  invites: {
    title: (n: number) =>
      n === 0
        ? 'Every tester has joined.'
        : `${testerCount(n)} ${n === 1 ? 'has' : 'have'} not joined yet.`,
    selected: (n: number) => `Invites for the ${testerCount(n)} you selected.`,
    all: 'All who have not joined',
    nobody: 'No tester yet, so nobody to invite.',
    nobodyHow: 'Add the testers first.',
    name: 'Invites',
    sub: (joined: number, log: number, all: number) =>
      `${joined} of ${all} ${joined === 1 ? 'has' : 'have'} joined, ${log === 0 ? 'none has' : log === 1 ? '1 has' : `${log} have`} logged a run.`,
    who: 'Who is in',
    logs: (n: number) => `has joined and logged ${count(n, 'run', 'runs')}`,
    joined: 'has joined, no run yet',
    byFile: (n: number) => `${count(n, 'run', 'runs')} by file or table, no phone has joined`,
    invited: (until: string) => `invited, the code is good until ${until}`,
    invitedElsewhere: (until: string) =>
      `invited from another device, that code is good until ${until}`,
    lapsed: 'invited, but the code has run out',
    notInvited: 'not invited yet',
    newCode: 'New code',
    codesKept:
      'Each code is good once, for three days. The hub keeps no code, only its fingerprint, so a code is shown on the device that made it and nowhere else. A new code leaves older ones good until they run out.',
    /** Only where the hub speaks with a certificate of its own. */
    trust: {
      title: 'First, once per phone: let it trust this hub',
      shows:
        'The hub has a certificate of its own, so a new phone says “Your connection is not private” (Android) or “This Connection Is Not Private” (iPhone).',
      how: (address: string) =>
        `Before the invite scan this code, or open ${address}, and follow the three steps on that page.`,
      without:
        'A phone that presses on without them can join, but it cannot install Pairlog and loses it without a network.',
      onSlip: (address: string) => `First, once: open ${address} and follow its steps.`,
    },
    makeAnew: (n: number) => `Make ${count(n, 'new code', 'new codes')}`,
    make: (n: number) => `Make ${count(n, 'code', 'codes')}`,
    making: (done: number, of: number) => `${done} of ${of} codes …`,
    print: 'Print the invites',
    failed: (who: string) => `The hub gave no code for ${who}. Try again.`,
    noHub: 'There is no hub: testers come in by hand-out files.',
    noHubHow:
      'Each tester’s file is in the list of testers. Send it; opened on the phone, it lets them in.',
    toTesters: 'To the hand-out files',
    offline: 'The hub does not answer. Without it nobody can be invited.',
    joins: (group: string, tester: string) =>
      `The phone that scans this joins ${group} as tester ${tester}.`,
    type: (address: string) => `Or open ${address} and type:`,
    until: (date: string) => `Good once, until ${date}.`,
  },
};
