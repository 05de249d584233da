/** Wear: how long each limit holds, the bench checks behind it, and the gauges. */
import type { Metres } from '../../../../core/units/index.ts';
import type {
  CheckHeadline,
  ChecksHeadline,
  GaugesHeadline,
  WearHeadline,
  WearRoundSays,
} from '../../../../core/headlines/index.ts';
import type { Limit } from '../../../../core/records/index.ts';
import type { Say } from '../../say-names.ts';

const count = (n: number, one: string, many: string) => `${n} ${n === 1 ? one : many}`;
const readings = (n: number) => count(n, 'reading', 'readings');

/** How far a shoe was measured: 0 km is no distance that anybody came to. @param briefM what it must carry */
const until = (farthestM: Metres, say: Say, briefM?: Metres): string =>
  farthestM === 0
    ? 'only when new'
    : `to ${say.distance(farthestM)}${briefM === undefined ? '' : ` of ${say.distance(briefM)}`}`;

export const wear = {
  /** `measure`: the name of what a limit is about, such as "Tread depth". */
  headline: (h: WearHeadline, say: Say, measure: (limit: Limit) => string): string => {
    switch (h.case) {
      case 'no-check':
        return 'Nothing has been measured yet.';
      case 'no-limit':
        return `Measured ${until(h.farthestM, say)}. The brief sets no limit yet.`;
      case 'fails':
        return h.atM === null || h.atM >= h.briefM
          ? `${measure(h.limit)} fails before ${say.distance(h.briefM)}.`
          : `${measure(h.limit)} fails first, at about ${say.distance(h.atM)} of ${say.distance(h.briefM)}.`;
      case 'weak-point':
        return `${measure(h.limit)} likely fails first, at about ${say.distance(h.atM)} of ${say.distance(h.briefM)}.`;
      case 'holds':
        return `${say.round(h.round)} keeps every limit of wear to ${say.distance(h.briefM)}.`;
      case 'open':
        return `No limit is decided. Measured ${until(h.farthestM, say, h.briefM)}.`;
      case 'too-early':
        return `Too early to tell: measured ${until(h.farthestM, say, h.briefM)}.`;
    }
  },
  /** Which round the answer is about, where it is not the latest. */
  thatIs: (round: string) => `That is ${round}. `,
  roundSays: (one: WearRoundSays, say: Say): string => {
    switch (one.case) {
      case 'holds':
        return `lasts ${say.distance(one.briefM)}`;
      case 'fails':
        return one.atM === null ? 'fails' : `fails at about ${say.distance(one.atM)}`;
      case 'reached':
        return `likely reached at about ${say.distance(one.atM)}`;
      case 'open':
        return `about ${one.inTen} in 10 would last ${say.distance(one.briefM)}`;
      case 'too-early':
        return `measured ${until(one.farthestM, say)}, too early to tell`;
      case 'measured-once':
        return 'no pair measured twice yet';
    }
  },
  roundLine: (round: string, says: string) => `${round}: ${says}`,
  measured: (rounds: readonly string[], list: (names: readonly string[]) => string) =>
    `Measured: ${list(rounds)}.`,
  to: (round: string, farthestM: Metres, say: Say) => `${round} ${until(farthestM, say)}`,
  measuredTo: (farthestM: Metres, say: Say) => `measured ${until(farthestM, say)}`,
  atBound: {
    'at-least': (value: string) => `at least ${value}`,
    'at-most': (value: string) => `at most ${value}`,
  },
  notMeasured: 'Nothing was measured for this limit.',
  noLimit: 'no limit',
  cards: 'Limits of the brief',
  rest: (n: number) => count(n, 'more measure without a limit', 'more measures without a limit'),
  says: (title: string, lines: string) => `${title}. ${lines}`,
  shaded: (round: string) => `Shaded: 9 pairs in 10, ${round}. Dotted: beyond the checks.`,
  bar: ' Bar below: where the limit is reached.',
  nextCheck: 'To settle it: ',
  narrow: {
    round: 'Round',
    place: 'Measure and site',
    allRounds: 'all rounds',
    allPlaces: 'all limits',
  },
  table: { round: 'Round', pair: 'Pair', distance: 'Distance', value: 'Value' },
  point: (round: string, pair: string, value: string, distance: string) =>
    `${round}, pair ${pair}: ${value} at ${distance}`,
  allChecks: (n: number) => (n === 1 ? 'The check' : `All ${n} checks`),
  gauges: 'Gauges',
  write: 'Write a check down',
  setLimits: 'Set limits in the brief',

  checks: {
    title: 'Checks',
    headline: (h: ChecksHeadline, say: Say): string => {
      switch (h.case) {
        case 'none':
          return 'Nothing has been measured yet.';
        case 'waiting':
          return h.readings === 1
            ? 'One reading waits for you: does it count?'
            : `${h.readings} readings wait for you: do they count?`;
        case 'all':
          return `${count(h.checks, 'check', 'checks')} of ${count(h.pairs, 'pair', 'pairs')}, ${until(h.farthestM, say)}.`;
      }
    },
    sub: (n: number, aside: number) =>
      aside === 0
        ? `${readings(n)}, all counted.`
        : `${readings(n)}; ${aside} set aside, in no figure.`,
    decide: 'Decide',
    pair: 'Pair',
    measure: 'Measure',
    everyPair: 'Every pair',
    everyMeasure: 'Every measure',
    find: 'Pair, gauge or operator',
    select: (pair: string, date: string) => `Select the check of pair ${pair}, ${date}`,
    asideSelected: (n: number, all: number) =>
      `Set ${count(n, 'check', 'checks')} aside (${readings(all)})`,
    asideHint: 'The readings stay on record, marked, and are in no figure.',
    asideNow: (n: number) => `${readings(n)} set aside`,
    countSelected: (n: number) => `Count ${readings(n)}`,
    countedNow: (n: number) => `${readings(n)} ${n === 1 ? 'counts' : 'count'} now`,
    date: 'Date',
    distance: 'Distance',
    reading: 'Readings',
    foot: 'Foot',
    gauge: 'Gauge',
    by: 'By',
    more: (n: number) => `${n} more`,
    shown: (n: number, of: number) =>
      n === of ? count(n, 'check', 'checks') : `${n} of ${of} checks`,
    none: 'No check fits this choice.',
    arrival: 'new',
  },

  check: {
    of: (pair: string, date: string) => `Pair ${pair}, ${date}`,
    headline: (h: CheckHeadline, say: Say): string => {
      switch (h.case) {
        case 'waiting':
          return `Pair ${say.pair(h.pair)}: ${h.count} of ${readings(h.of)} ${h.count === 1 ? 'waits' : 'wait'} for your decision.`;
        case 'aside':
          return `Pair ${say.pair(h.pair)}: ${h.count} of ${readings(h.of)} ${h.count === 1 ? 'is' : 'are'} set aside.`;
        case 'plain':
          return h.distanceM === 0
            ? `Pair ${say.pair(h.pair)}, new: ${readings(h.of)}.`
            : `Pair ${say.pair(h.pair)} at ${say.distance(h.distanceM)}: ${readings(h.of)}.`;
      }
    },
    sub: (date: string, from: string) => `Measured on ${date}; distance ${from}.`,
    from: { shop: 'as the shop gave it', runs: 'from the logged runs' },
    reading: 'Reading',
    value: 'Value',
    before: 'Before',
    change: 'Since new',
    gauge: 'Gauge',
    course: 'Course',
    courseSays: (place: string, values: string) => `${place}: ${values}`,
    firstTime: 'measured for the first time',
    notKnown: 'not known',
    uncertainty: (value: string) => `± ${value} (one standard uncertainty)`,
    circumstances: 'How it was measured',
    room: (celsius: string) => `${celsius} °C in the room`,
    rested: (hours: string) => `${hours} h since the last run`,
    by: (who: string) => `by ${who}`,
    notes: 'Notes',
    photos: 'Photos',
    noPhotos: 'No photo and no note.',
    standing: { counts: 'counts', waits: 'waits', 'set-aside': 'set aside' },
    edit: 'Correct this check',
    erase: 'Erase this check',
    setAside: 'Set aside',
    setAsideNamed: (what: string) => `Set aside: ${what}`,
    countAgain: 'Count it again',
    countAgainNamed: (what: string) => `Count it again: ${what}`,
    reason: 'Why?',
    reasonMissing: 'Say why in a few words.',
    reasonHint: 'It stays with the check, for every lead to read.',
    usualReason: 'measured wrongly',
    setAsideNow: 'Set aside. It is in no figure now.',
    countedNow: 'It counts again.',
    corrected: 'Corrected.',
    erased: 'Check erased.',
    restored: 'The check is back.',
    takenBack: 'The correction is taken back.',
    correctedBy: (who: string, date: string, why: string) =>
      `Corrected by ${who} on ${date}: ${why}`,
    you: 'you',
    otherLead: 'another lead',
    takeBack: 'Take the correction back',
    gone: 'This check was erased.',
    goneSub: (pair: string, date: string) =>
      `Pair ${pair}, measured on ${date}. It is in no figure.`,
    bringBack: 'Bring it back',
    none: 'There is no such check.',
    save: 'Save the correction',
    same: 'Nothing is changed yet.',
    wait: 'Decide',
  },

  newCheck: {
    headline: 'Write a check down',
    noPair: 'No pair yet, so nothing to measure.',
    crumb: 'New',
  },

  checkTable: {
    crumb: 'As a table',
    open: 'Type a table of checks',
    headline: 'Type the readings, or paste them.',
    sub: 'A row a place, a column a pair. Enter goes down. A block from a spreadsheet can be pasted into any cell. Each pair becomes one check.',
    nothing:
      'Nothing to measure is named yet. Give the round its dimensions or the brief its limits.',
    round: 'Round',
    pairs: 'Pairs',
    span: (first: string, last: string) => `${first} to ${last}`,
    name: (round: string) => `Readings of ${round}`,
    place: 'Place',
    foot: 'Foot',
    cell: (place: string, pair: string) => `${place}, pair ${pair}`,
    arrival: 'On arrival (before the first run)',
    ofPair: (pair: string, said: string) => `Pair ${pair}: ${said}`,
    beyond: (n: number) =>
      `${count(n, 'cell', 'cells')} did not fit the table and ${n === 1 ? 'was' : 'were'} left out.`,
    save: (n: number) => (n === 0 ? 'Save the checks' : `Save ${count(n, 'check', 'checks')}`),
    empty: 'Type at least one reading.',
    asks: (n: number) =>
      n === 1
        ? 'One reading looks wrong. Correct it above, or tick it if it is right, and save again.'
        : `${n} readings look wrong. Correct them above, or tick those that are right, and save again.`,
  },

  shop: {
    crumb: 'For the shop',
    headline: (round: string, lines: number, pairs: number) =>
      `${count(lines, 'place', 'places')} to measure on ${count(pairs, 'pair', 'pairs')} of ${round}.`,
    noPairs: (round: string) => `${round} has no pairs yet: there is nothing to measure.`,
    noLines: (round: string) => `${round} has no dimensions yet: there is nothing to measure.`,
    sub: 'One landscape page of A4 for every eight pairs. The shop writes on it; you type it in, or read its table in as CSV.',
    print: 'Print the table',
    title: (shoe: string, round: string, pairs: string) => `${shoe}, ${round}: pairs ${pairs}`,
    by: 'Measured by',
    room: 'Room, °C',
    rested: 'Hours since the last run',
    place: 'Measure and site',
    allowed: 'Allowed',
    day: 'Day and km on the pair',
    notes: 'Notes',
  },

  gaugesPlace: {
    headline: (h: GaugesHeadline, list: (names: readonly string[]) => string): string => {
      switch (h.case) {
        case 'none':
          return 'No gauge has been studied yet.';
        case 'not-good-enough':
          return `${list(h.gauges)} ${h.gauges.length === 1 ? 'is' : 'are'} not good enough.`;
        case 'conditional':
          return `${list(h.gauges)} ${h.gauges.length === 1 ? 'is' : 'are'} just good enough.`;
        case 'good':
          return h.studies === 1
            ? 'The gauge is good enough.'
            : `All ${h.studies} gauge studies say good enough.`;
        case 'too-little':
          return 'A study is too small to judge its gauge.';
      }
    },
    sub: 'A gauge study shows how far readings scatter by themselves.',
    line: 'Share of the tolerance. Shaded: good; dashed: the most that is of use.',
  },
};
