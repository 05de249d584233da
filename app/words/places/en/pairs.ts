/** Pairs: the list, a pair's page, a report of damage; and hand-outs, wherever they are shown. */
import type { PairHeadline, PairsHeadline } from '../../../../core/headlines/index.ts';
import type { Say } from '../../say-names.ts';

const count = (n: number, one: string, many: string) => `${n} ${n === 1 ? one : many}`;
const pairCount = (n: number) => count(n, 'pair', 'pairs');
const runs = (n: number) => count(n, 'run', 'runs');

/** "185 of 600 km": the unit once, where both have the same. */
const ofDistance = (distance: string, brief: string): string => {
  const unit = brief.replace(/^[\d.,\s]+/, '');
  return `${distance.endsWith(unit) ? distance.slice(0, -unit.length).trimEnd() : distance} of ${brief}`;
};

/** "pair 963", "pairs 963 and 417", "4 pairs". */
const named = (ids: readonly Parameters<Say['pair']>[0][], say: Say): string =>
  ids.length > 3
    ? pairCount(ids.length)
    : `${ids.length === 1 ? 'pair' : 'pairs'} ${say.list(ids.map(say.pair))}`;

export const pairs = {
  headline: (h: PairsHeadline, say: Say): string => {
    switch (h.case) {
      case 'no-round':
        return 'No round yet, so no pair. Add the first round.';
      case 'none':
        return 'No pair yet. Add the first ones.';
      case 'stop-held':
        return `Take back ${named(h.pairs, say)}: nobody may run in ${h.pairs.length === 1 ? 'it' : 'them'}.`;
      case 'stopped':
        return `${h.out} of ${h.of} pairs are out. Do not run: ${named(h.pairs, say)}.`;
      case 'all-in':
        return h.of === 1
          ? `The one pair is in. ${h.worn ? 'Hand it out again.' : 'Hand it out.'}`
          : `All ${pairCount(h.of)} are in. ${h.worn ? 'Hand out the next ones.' : 'Nobody has run yet.'}`;
      case 'not-run':
        return `${h.out} of ${pairCount(h.of)} are out. Nobody has run yet.`;
      case 'farthest':
        return `${h.out} of ${h.of} pairs are out. Farthest: ${say.pair(h.pair)}, ${ofDistance(say.distance(h.totalM), say.distance(h.briefM))}.`;
    }
  },
  sub: (testers: number, rounds: number, runCount: number, distance: string) =>
    `With ${count(testers, 'tester', 'testers')}, in ${count(rounds, 'round', 'rounds')}. ${runs(runCount)}; the pairs have ${distance} on them.`,
  columns: {
    pair: 'Pair',
    round: 'Round',
    size: 'Size',
    holder: 'With',
    distance: 'Distance',
    runs: 'Runs',
    lastRun: 'Last run',
    complaints: 'With a complaint',
    checks: 'Checks',
    state: 'State',
  },
  states: {
    all: 'All pairs',
    out: 'Out',
    in: 'In',
    'do-not-run': 'Do not run',
    silent: 'With a silent tester',
    'out-of-tolerance': 'Out of tolerance',
    'never-run': 'Never run',
  },
  stateFilter: 'State',
  roundFilter: 'Round',
  allRounds: 'All rounds',
  find: 'Pair or tester',
  nothingFound: 'No pair fits. Change the filters.',
  counted: (n: number, of: number) => (n === of ? pairCount(n) : `${n} of ${pairCount(of)}`),
  select: (pair: string) => `Select pair ${pair}`,
  since: (date: string) => `since ${date}`,
  nobody: 'nobody',
  silent: (days: number) => `silent ${count(days, 'day', 'days')}`,
  ofAsked: (some: number, asked: number) => `${some} of ${asked}`,
  ofBrief: ofDistance,
  damaged: 'damaged',
  narrow: (run: string, last: string) => `${run}, last ${last}`,
  runs,
  takeBack: (n: number) => `Take back ${pairCount(n)}`,
  handOutSelected: (n: number) => `Hand out ${pairCount(n)}`,
  stopSelected: (n: number) => `Stop the use of ${pairCount(n)}`,
  stoppedNow: (n: number) => `${pairCount(n)} out of use`,
  takeBackOne: (pair: string) => `Take back ${pair}`,
  back: 'Back since',
  backHint: 'When the pairs came back; every chosen pair gets this time.',
  backMissing: 'Say when they came back.',
  inFuture: 'This is in the future.',
  beforeOut: (list: string) => `Handed out only after that time: ${list}.`,
  tookBack: (n: number) => `${pairCount(n)} taken back`,
  handedOutTo: (pair: string, tester: string) => `Pair ${pair} handed out to ${tester}`,
  leftOut: 'Left out, because out of tolerance:',
  leftOutOne: (pair: string) => `Pair ${pair} is left out: it is out of tolerance.`,
  readAll: 'Read all pairs',
  undo: 'Undo',
  undone: 'Undone',
  add: 'Add pairs',
  toRound: 'To which round',
  stop: 'Stop the use of pairs',
  stopThis: 'Stop its use',
  notices: 'Do not run',
  endNotice: 'End the notice',
  noticeOf: (list: string, reason: string) => `${list}: ${reason}`,
  loads: 'Surfaces, steps and load of each pair',
  loadsOfOne: 'Surfaces, steps and load',
  overTime: 'Pairs over time',
  page: {
    headline: (h: PairHeadline, say: Say): string => {
      const pair = say.pair(h.pair);
      const felt = (one: NonNullable<Extract<PairHeadline, { case: 'short' }>['felt']>) =>
        `${say.felt(one.felt)} in ${one.runs} of ${one.of} runs`;
      const gone = (one: Extract<PairHeadline, { totalM: unknown }>) =>
        `${ofDistance(say.distance(one.totalM), say.distance(one.briefM))}${one.holder === null ? '' : `, with ${say.tester(one.holder)}`}`;
      switch (h.case) {
        case 'stopped':
          return `Nobody may run in pair ${pair}.`;
        case 'damaged':
          return `Pair ${pair} comes apart. Look at it first.`;
        case 'short':
          return h.felt
            ? `Pair ${pair} is short for ${say.tester(h.tester)}: ${felt(h.felt)}.`
            : `Pair ${pair} is short for ${say.tester(h.tester)}: ${say.number(h.toeMm, 0)} mm at the toe.`;
        case 'past-limit':
          return `Pair ${pair} reads past a limit of the brief.`;
        case 'out-of-tolerance':
          return h.felt
            ? `Pair ${pair} is out of tolerance; ${felt(h.felt)}.`
            : `Pair ${pair} is out of tolerance.`;
        case 'felt':
          return `Pair ${pair}, ${gone(h)}; ${felt(h)}.`;
        case 'quiet':
          return `Pair ${pair}, ${gone(h)}. Nothing recurs in ${runs(h.asked)}.`;
        case 'not-asked':
          return `Pair ${pair}, ${gone(h)}. Nobody was asked what they felt.`;
        case 'not-run':
          return h.holder === null
            ? `Nobody has run in pair ${pair}.`
            : `${say.tester(h.holder)} has pair ${pair} and has not run yet.`;
      }
    },
    sub: (size: string, round: string, distance: string, brief: string, runCount: number) =>
      `${size}, ${round}. ${ofDistance(distance, brief)} in ${runs(runCount)}.`,
    previous: (code: string) => `Previous: ${code}`,
    next: (code: string) => `Next: ${code}`,
    notFound: 'This pair is not in the project.',
    lifeSays: (pair: string, distance: string, runCount: number) =>
      `Pair ${pair} over ${distance}: who had it, comfort and complaints in ${runs(runCount)}, bench checks, damage`,
    hands: 'In whose hands',
    handRuns: (from: string, until: string | null, n: number) =>
      `${from} to ${until ?? 'now'}, ${runs(n)}`,
    comfort: 'Overall comfort',
    comfortNote: '0 to 100; hollow: first wearing; line: other pairs of the round',
    inRuns: (n: number, of: number) => `${n} of ${runs(of)}`,
    moreFelt: (n: number) => `and ${count(n, 'other complaint', 'other complaints')} in fewer runs`,
    events: 'Damage, do not run',
    limit: (value: string) => `limit ${value}`,
    benchNote: (n: number) =>
      `${count(n, 'check', 'checks')}; band: what its round reads; dots: other pairs`,
    axis: (unit: string) => `${unit} on the pair`,
    felt: 'Where it was felt',
    facts: 'The pair',
    size: 'Size',
    feet: (tester: string) => `Feet of ${tester}`,
    feetValue: (left: string, right: string) => `${left} and ${right} mm`,
    toe: 'Room at the toe',
    toeValue: (left: string, right: string) => `${left} and ${right} mm; 10 to 15 is usual`,
    width: 'Last against foot, width',
    arrival: 'On arrival',
    arrivalIn: (n: number) => `${count(n, 'dimension', 'dimensions')} judged, in tolerance`,
    arrivalOut: 'out of tolerance',
    arrivalNone: 'not measured against a blueprint',
    now: 'Now',
    nowWith: (tester: string, date: string) => `with ${tester} since ${date}`,
    nowIn: 'in nobody’s hands',
    correct: 'Correct this pair',
    handOut: 'Hand it out',
    addCheck: 'Add a bench check',
    notes: 'What was written and photographed',
    noNotes: 'Nobody has written anything yet.',
    note: (date: string, tester: string) => `${date}, ${tester}`,
    checks: 'Bench checks',
    noChecks: 'Not measured yet.',
    check: (date: string, distance: string, readings: number) =>
      `${date}, at ${distance}: ${count(readings, 'reading', 'readings')}`,
    inTolerance: 'in tolerance',
    runTable: {
      run: 'Run',
      tester: 'Tester',
      at: 'On the pair',
      length: 'Distance',
      comfort: 'Comfort',
      felt: 'Complaints',
      pain: 'Pain',
    },
    quoted: (text: string) => `“${text}”`,
  },
  hands: {
    title: 'Hand-outs',
    none: 'Never handed out.',
    to: (tester: string) => `to ${tester}`,
    span: (from: string, until: string | null) => (until ? `${from} – ${until}` : `since ${from}`),
    blind: 'blind',
    notBlind: 'knows the change',
    edit: 'Edit dates',
    editOf: (pair: string, tester: string) => `Edit the dates: pair ${pair}, ${tester}`,
    back: 'Take back now',
    backOf: (pair: string, tester: string) => `Take back pair ${pair} from ${tester}`,
    from: 'Handed out on',
    until: 'Came back on',
    untilHint: 'Empty: the pair is still out.',
    saved: 'Dates changed',
    missing: 'Put in a date and a time.',
    beforeFrom: 'This is before it was handed out.',
    held: (from: string, until: string | null) =>
      until
        ? `Somebody else had the pair from ${from} to ${until}.`
        : `Somebody else has had the pair since ${from}.`,
  },
  damage: {
    stands: (pair: string, what: string) => `Pair ${pair}, ${what}: answer the tester.`,
    out: (pair: string, what: string) => `Pair ${pair}, ${what}: it stays out of use.`,
    settled: (pair: string, what: string) => `Pair ${pair}, ${what}: it may be worn again.`,
    sub: (date: string, distance: string) => `reported it on ${date}, at ${distance} on the pair.`,
    crumb: (date: string) => `Damage on ${date}`,
    notFound: 'This report is not in the project. It may have been taken back.',
    where: 'Where',
    shoe: { left: 'left shoe', right: 'right shoe' },
    versions: 'Earlier versions',
    version: (when: string, what: string) => `${when}: ${what}`,
    noVersions: 'It stands as it was first reported.',
    report: 'The report',
  },
};
