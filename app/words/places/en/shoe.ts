/** The place Shoe: complaints, one zone, comfort, arrival. */
import type {
  ArrivalHeadline,
  ComfortHeadline,
  HeadlineCount,
  ShoeHeadline,
  ZoneHeadline,
} from '../../../../core/headlines/index.ts';
import type { ComfortAttributeId } from '../../../../core/foot/index.ts';
import type { Measure } from '../../../../core/records/index.ts';
import type { Say } from '../../say-names.ts';

const count = (n: number, one: string, many: string) => `${n} ${n === 1 ? one : many}`;
const runs = (n: number) => count(n, 'run', 'runs');
const testers = (n: number) => count(n, 'tester', 'testers');
const of = ({ testers: some, askedTesters }: HeadlineCount) =>
  `${some} of ${testers(askedTesters)}`;

/** "5, 6, now 7 of 8 testers". */
const course = (counts: readonly HeadlineCount[], say: Say): string => {
  const last = counts.at(-1);
  if (!last) return '';
  return counts.length === 1
    ? `${of(last)} in ${say.round(last.round)}`
    : `${counts
        .slice(0, -1)
        .map((one) => one.testers)
        .join(', ')}, now ${of(last)}`;
};

export const shoe = {
  parts: 'Of the shoe',
  /** Between two sentences. */
  between: ' ',
  part: { complaints: 'Complaints', comfort: 'Comfort', arrival: 'Arrival' },
  headline: (h: ShoeHeadline, say: Say): string => {
    switch (h.case) {
      case 'no-round':
        return 'No round yet. Add the first one.';
      case 'not-asked':
        return 'No answers about feet yet.';
      case 'pain':
        return h.testers.length === 1
          ? `${say.testers(h.testers)} reports pain. Answer that first.`
          : `${h.testers.length} testers report pain. Answer them first.`;
      case 'recurs':
        return `${say.upper(say.felt(h.felt))} recurs: ${of(h)}.`;
      case 'one-tester':
        return h.testers.length === 1
          ? `Only ${say.testers(h.testers)} keeps having ${say.felt(h.felt)}.`
          : `${say.upper(say.felt(h.felt))}: proved for single testers only.`;
      case 'watch':
        return `Watch ${say.felt(h.felt)}: ${course(h.counts, say)}.`;
      case 'single-reports':
        return `${count(h.complaints, 'complaint', 'complaints')} in ${say.round(h.round)}, nothing proved. Too early to tell.`;
      case 'nothing':
        return `No complaint in ${runs(h.runs)} of ${say.round(h.round)}.`;
    }
  },
  sub: (round: string, r: number, t: number) => `${round}: ${runs(r)} of ${testers(t)} asked.`,
  nothingClear: 'Nothing clearly recurs in it so far.',
  moreClear: (n: number) => `${n} more ${n === 1 ? 'recurs' : 'recur'}.`,
  clearBefore: (list: string) => `Clearly recurred in earlier rounds: ${list}.`,
  inRound: (felt: string, round: string) => `${felt} (${round})`,
  pains: 'Pain after a run',
  pain: (score: number) => `${score} of 10`,
  painSign: (signs: string) => `, ${signs}`,
  answered: 'answered',
  notAnswered: 'not answered',
  over: 'over',
  maps: (rounds: number) => `Where it is felt, ${count(rounds, 'round', 'rounds')} side by side`,
  asked: (r: number, t: number) => `${runs(r)}, ${testers(t)} asked`,
  nobodyAsked: 'nobody asked yet',
  view: {
    left: { sole: 'left sole', upper: 'left upper' },
    right: { sole: 'right sole', upper: 'right upper' },
  },
  zoneSays: (place: string, some: number, asked: number) =>
    `${place}: ${some} of ${testers(asked)}`,
  legend: 'Share of testers',
  levels: ['none', 'to 10 %', 'to 25 %', 'to 50 %', 'more'],
  numbers: 'Number: testers who felt it. Press a zone.',
  felt: 'Felt',
  anything: 'anything',
  times: 'Reported',
  once: 'once or more',
  twice: 'twice or more',
  complaint: 'Complaint',
  since: 'Since',
  sure: 'How sure',
  complaints: 'Complaints, the most pressing first',
  side: { left: 'left shoe only', right: 'right shoe only', both: 'both feet' },
  mostly: (tester: string, n: number, all: number) => `${n} of ${all} reports: ${tester}`,
  counts: (t: number, asked: number, r: number) => `${t} of ${testers(asked)}, ${runs(r)}`,
  nobody: 'nobody',
  intervalSays: (round: string, counts: string) => `${round}: ${counts}`,
  sinceKm: (distance: string) => `at ${distance}`,
  sinceNew: 'on a new pair',
  all: (n: number) => `All ${n} complaints`,
  allRounds: (n: number) => `All ${n} rounds`,
  none: 'Nobody has named a zone that bothers.',
  print: 'Print this page',
  saveMap: 'Save the maps',
  zoneTitle: (side: string, zone: string) => `${side}, ${zone}`,
  zone: {
    /** `zone`: within a sentence. */
    headline: (h: ZoneHeadline, say: Say, zone: string): string => {
      switch (h.case) {
        case 'not-asked':
          return `No answers about the ${zone} yet.`;
        case 'nothing':
          return `Nobody has felt anything at the ${zone} in ${runs(h.runs)}.`;
        case 'recurs':
          return `${say.upper(say.felt(h.felt))} recurs: ${of(h)}.`;
        case 'recurred':
          return `${say.upper(say.felt(h.felt))}: ${h.before.testers} of ${h.before.askedTesters} in ${say.round(h.before.round)}, now ${h.now.testers === 0 ? 'nobody' : h.now.testers}.`;
        case 'one-tester':
          return h.testers.length === 1
            ? `Only ${say.testers(h.testers)} keeps having ${say.felt(h.felt)}.`
            : `${say.upper(say.felt(h.felt))}: proved for single testers only.`;
        case 'mostly-one':
          return `${say.upper(say.felt(h.felt))}: ${h.runs} of ${h.of} reports come from ${say.tester(h.tester)}.`;
        case 'likely':
          return `${say.upper(say.felt(h.felt))}: ${of(h)} in ${say.round(h.round)}.`;
        case 'few':
          return `${say.upper(say.felt(h.felt))}: ${count(h.reports, 'report', 'reports')} so far. Too early to tell.`;
        case 'any':
          return `${say.upper(zone)}: felt by ${of(h)} in ${say.round(h.round)}.`;
      }
    },
    sub: (felt: string, reports: number, t: number) =>
      `${felt}: ${count(reports, 'report', 'reports')} from ${testers(t)}.`,
    feet: (left: number, right: number) => `Left foot ${runs(left)}, right foot ${runs(right)}.`,
    other: { left: 'See the left foot', right: 'See the right foot' },
    who: 'Who felt it, and when',
    says: (felt: string, zone: string) =>
      `${felt}, ${zone}: each tester’s runs along the kilometres of the pair`,
    counts: (r: number, askedR: number, t: number, askedT: number) =>
      `${r} of ${runs(askedR)}, ${t} of ${testers(askedT)}`,
    layers: (n: number) => count(n, 'layer', 'layers'),
    notWorn: 'did not wear it',
    row: (tester: string, felt: number, asked: number) => `${tester}: ${felt} of ${runs(asked)}`,
    dot: (tester: string, date: string, distance: string, severity: string) =>
      `${tester}, ${date}, ${distance} on the pair${severity}`,
    severity: (value: number) => `, ${value} of 10`,
    legend: {
      silent: 'asked, nothing',
      here: 'felt; larger is stronger',
      other: 'felt on the other foot only',
    },
    allTesters: (n: number) => `All ${n} testers`,
    onset: (distance: string) => `Starts about ${distance} into a run.`,
    trend: {
      grows: 'It grows with the kilometres on the pair.',
      fades: 'It fades with the kilometres on the pair.',
    },
    pairShare: (pair: string, some: number, all: number, round: string) =>
      `Pair ${pair} makes ${some} of ${all} reports in ${round}.`,
    sizeAndFoot: (tester: string, size: string, foot: string) =>
      `It is made for a foot of ${size}; the longer foot of ${tester} measures ${foot}.`,
    words: 'What they said, newest first',
    run: 'Run',
    tester: 'Tester',
    pair: 'Pair',
    onPair: 'On the pair before',
    from: 'Felt from',
    strength: 'Strength',
    inWords: 'In their words',
    noWords: 'no words',
    comma: ', ',
    photos: (tester: string) => `photo from ${tester}`,
    skin: { blister: 'blister', broken: 'broken skin' },
    allReports: (n: number) => `All ${n} reports`,
    behind: 'Usually behind it',
    then: 'then',
    practice: 'From practice, not measured.',
    kinds: 'Felt here',
    anything: 'anything',
    findings: 'Findings',
    round: 'Round',
    unknown: 'There is no such zone.',
  },
  comfort: {
    headline: (
      h: ComfortHeadline,
      say: Say,
      attribute: (id: ComfortAttributeId) => string,
    ): string => {
      const n = (value: number) => say.number(value, 0);
      switch (h.case) {
        case 'not-scored':
          return 'Nobody has scored the comfort yet.';
        case 'score':
          return `Comfort is ${n(h.mean)} of 100 in ${say.round(h.round)}.`;
        case 'better':
          return `Comfort is better: ${n(h.mean)} of 100, after ${n(h.before)}.`;
        case 'worse':
          return `Comfort is worse: ${n(h.mean)} of 100, after ${n(h.before)}.`;
        case 'same':
          return `Comfort is ${n(h.mean)} of 100, after ${n(h.before)}. No real difference.`;
        case 'open':
          return `Comfort is ${n(h.mean)} of 100, after ${n(h.before)}. Too early to compare.`;
        case 'attribute-worse':
          return `${attribute(h.attribute)} got worse by ${n(h.by)} points.`;
      }
    },
    sub: (round: string, scores: number, t: number) =>
      `${round}: ${count(scores, 'score', 'scores')} from ${testers(t)}. First wearings stand apart.`,
    /** Why a mean and a difference of two rounds do not go together. */
    same: (by: string, t: number) => `Same testers only: ${by} (${t} who wore both).`,
    different: (by: string) => `Different testers: ${by}.`,
    tester: 'a tester',
    score: 'Score',
    course: 'Along the kilometres',
    change: 'Since last round',
    attribute: 'Attribute',
    drift: {
      fades: (points: string) => `fades: ${points} in 100 km`,
      rises: (points: string) => `rises: +${points} in 100 km`,
      steady: 'no clear change',
    },
    changes: {
      better: 'better',
      worse: 'worse',
      'no-relevant': 'too small to matter',
      open: 'too early to tell',
    },
    says: (attribute: string, round: string, mean: string, t: number) =>
      `${attribute}, ${round}: ${mean} of 100, ${testers(t)}`,
    pictureSays:
      'Comfort by attribute and round, 0 to 100: means, intervals, one small dot a tester',
    courseSays: (attribute: string) => `${attribute} along the kilometres on the pair`,
    prefer: 'Which pair they prefer',
    preferLine: (first: string, n: number, second: string, m: number, equal: number) =>
      `${testers(n)} for ${first}, ${testers(m)} for ${second}${equal > 0 ? `, ${equal} find them equal` : ''}`,
    agreement: 'How far the panel agrees',
  },
  arrival: {
    headline: (
      h: ArrivalHeadline,
      say: Say,
      place: (one: { readonly measure: Measure; readonly site: string }) => string,
    ): string => {
      switch (h.case) {
        case 'not-measured':
          return 'No sample has been measured against a blueprint yet.';
        case 'all-in':
          return `No dimension out of tolerance on ${count(h.pairs, 'measured pair', 'measured pairs')}.`;
        case 'one-out':
          return `Pair ${say.pair(h.pair)} is out of tolerance: ${place(h)}.`;
        case 'out':
          return `${h.pairs.length} of ${count(h.measured, 'measured pair', 'measured pairs')} are out of tolerance.`;
        case 'undecided':
          return `Too close to the limit to tell for ${count(h.pairs, 'pair', 'pairs')}.`;
      }
    },
    sub: (measured: number, all: number, dimensions: number) =>
      `${measured} of ${count(all, 'pair', 'pairs')} measured on arrival, ${count(dimensions, 'dimension', 'dimensions')}.`,
    says: (place: string, out: number, readings: number) =>
      `${place}: ${out} of ${count(readings, 'reading', 'readings')} out of tolerance`,
    pictureSays:
      'Each dimension’s difference from the blueprint, pair by pair, with the tolerance as a band',
    dimension: 'Dimension',
    band: 'allowed',
    dot: 'a shoe of a pair',
    outDot: 'out of tolerance',
    point: (pair: string, foot: string, by: string) => `pair ${pair}, ${foot}: ${by}`,
    nominal: (value: string) => `drawn: ${value}`,
    allIn: 'all in tolerance',
    undecidedMark: 'undecided',
    undecided: (n: number) => `${n} too close to tell`,
    notMeasured: 'not measured',
    all: (n: number) => `All ${n} dimensions`,
    gap: 'Scale: each line is as long as its own deviations.',
  },
};
