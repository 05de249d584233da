/** Two rounds as one story, and the findings that go with them. */
import type { ChangesHeadline, ChangesStamp } from '../../../../core/headlines/index.ts';
import type { MoveWord } from '../../../../core/review/index.ts';
import type { Say } from '../../say-names.ts';

const count = (n: number, one: string, many: string) => `${n} ${n === 1 ? one : many}`;
/** Within a sentence. */
const low = (name: string) => name.charAt(0).toLowerCase() + name.slice(1);
const are = (names: readonly unknown[]) => (names.length > 1 ? 'are' : 'is');

/** Names that a headline of changes uses beside those of every sentence. */
export interface ChangesSay extends Say {
  /** A complaint by the fewest words that tell it from the others, or a comfort question. */
  readonly moved: (one: Extract<ChangesHeadline, { case: 'worse' }>['worse'][number]) => string;
}

export const changes = {
  headline: (h: ChangesHeadline, say: ChangesSay): string => {
    const moved = (one: Parameters<ChangesSay['moved']>[0]) => low(say.moved(one));
    const list = (some: readonly Parameters<ChangesSay['moved']>[0][]) => say.list(some.map(moved));
    const names = (some: readonly Parameters<ChangesSay['moved']>[0][]) => say.upper(list(some));
    switch (h.case) {
      case 'one-round':
        return 'Comparing takes two rounds. There are not two yet.';
      case 'nobody-ran':
        return `Nobody has run in ${say.round(h.round)} yet: nothing to compare.`;
      case 'mixed':
        return `${names(h.better)} is better, but ${list(h.worse)} is worse.`;
      case 'worse':
        return `${names(h.worse)} ${are(h.worse)} clearly worse.`;
      case 'mended':
        return h.open
          ? `${names(h.better)} is mended; ${moved(h.open)} is not settled.`
          : `${names(h.better)} ${are(h.better)} mended. Nothing else is clearly worse.`;
      case 'better':
        return h.open
          ? `${names(h.better)} is better; ${moved(h.open)} is not settled.`
          : `${names(h.better)} ${are(h.better)} better. Nothing else is clearly worse.`;
      case 'no-different':
        return `${names(h.same)} ${are(h.same)} no different: the change did not help.`;
      case 'not-in-shoe':
        return h.better.length > 0
          ? `${names(h.better)} ${are(h.better)} better, but the change was not in the shoe.`
          : `The change for ${list(h.named)} was not in the shoe: nothing to judge.`;
      case 'too-early':
        return `Too early to tell whether ${list(h.open)} got better.`;
      case 'nothing-moved':
        return `Nothing is clearly better or worse in ${say.round(h.round)}.`;
    }
  },
  stamps: {
    mended: 'mended',
    better: 'better',
    mixed: 'better and worse',
    worse: 'worse',
    'no-different': 'no different',
    'too-little': 'open',
  } satisfies Readonly<Record<ChangesStamp, string>>,
  stampMeaning: {
    mended: 'Clearly rarer, and no more often than the brief allows.',
    better: 'Clearly rarer. Whether that is rare enough for the brief is open.',
    mixed: 'Something is clearly better, something else clearly worse.',
    worse: 'Clearly more frequent.',
    'no-different': 'A change that would matter is ruled out.',
    'too-little': 'The answers so far leave it open.',
  } satisfies Readonly<Record<ChangesStamp, string>>,
  wore: (both: number, earlier: string, onlyEarlier: number, later: string, onlyLater: number) =>
    `${count(both, 'tester', 'testers')} wore both rounds; ${onlyEarlier} only ${earlier}, ${onlyLater} only ${later}.`,
  knew: (who: string) => `${who} knew what was changed.`,
  later: 'Later round',
  earlier: 'Earlier round',
  against: 'against',
  hands: 'Hand-outs',
  allHands: 'all hand-outs',
  blindHands: 'blind ones only',
  slopes: (earlier: string, later: string) => `Runs with a complaint, ${earlier} to ${later}`,
  comfortSlopes: 'Comfort, mean score out of 100',
  slopeSays: (earlier: string, later: string, lines: number) =>
    `${count(lines, 'complaint', 'complaints')}: share of runs with it in ${earlier} and in ${later}`,
  comfortSays: (earlier: string, later: string) =>
    `Mean score of each comfort question in ${earlier} and in ${later}`,
  words: {
    mended: '▼ mended',
    better: '▼ better',
    worse: '▲ worse',
    'no-different': '= no different',
    look: '? worth a look',
    'too-little': 'open',
  } satisfies Readonly<Record<MoveWord, string>>,
  comfortWords: {
    better: '▲ better',
    worse: '▼ worse',
    'no-relevant': '= no different',
    open: 'open',
  },
  fromTo: (from: string, to: string) => `${from} → ${to}`,
  moreLines: (n: number) => `${n} more in the table`,
  noComplaint: 'Nobody reported a complaint in either round.',
  noComfort: 'Nobody has scored the comfort of both rounds.',
  complaint: 'Complaint',
  question: 'Comfort question',
  testersOf: (round: string) => `${round}, testers`,
  runsOf: (round: string) => `${round}, runs`,
  of: (some: number, all: number) => `${some} of ${all}`,
  word: 'What is known',
  comfortTable: {
    change: 'Change, points of 100 (95 %)',
    testers: 'Testers',
    by: { 'same-testers': 'the same in both', 'different-testers': 'different ones' },
  },
  arrive: 'Did it arrive?',
  arrived: {
    yes: 'Yes, all of it.',
    partly: 'Partly.',
    no: 'No: not in the shoe.',
    open: 'Too few pairs to say.',
    'not-asked': 'Not known: no change is said in figures.',
    'not-measured': 'Not measured on new pairs yet.',
  },
  sayInFigures: 'Say the change in figures',
  noChanges: 'No change is noted for this round.',
  measured: (size: string, unit: string) => `${size} ${unit}`,
  drawn: (place: string, wanted: string, measured: string, word: string) =>
    `${place}: ${measured} of ${wanted} drawn: ${word}`,
  drawnUnmeasured: (place: string, wanted: string) =>
    `${place}: ${wanted} drawn, not measured on enough pairs of one size`,
  sameMeasures: (n: number) =>
    `${count(n, 'other place', 'other places')}: no difference shown on new pairs.`,
  mend: 'Did it mend?',
  mendNothing: 'No finding and no change says what it was meant to mend.',
  since: (round: string) => `since ${round}`,
  judge: 'Write down the outcome',
  else: 'Did anything else move?',
  nothingWorse: 'Nothing else is clearly worse.',
  clearlyWorse: 'Clearly worse:',
  comfortBetter: 'Clearly more comfortable:',
  /** Testers of whom it is just right. */
  rightFor: (before: string, now: string) => `just right for ${now}, before ${before}`,
  lookAt: 'Not proved, ask about it:',
  twoCounts: (before: string, after: string) => `${before} runs before, ${after} now`,
  newPairs: 'Stack height, hardness and mass of new pairs',
  print: 'Print',

  damage: {
    title: 'To be answered: it came apart',
    line: (pair: string, what: string) => `Pair ${pair}: ${what}`,
    where: (at: string, brief: string, shoe: string, date: string) =>
      `at ${at} of ${brief}${shoe === '' ? '' : `, ${shoe}`}, reported ${date}`,
    /** Of a shoe: a finding's title. */
    finding: (what: string, pair: string, at: string) => `${what}: pair ${pair} at ${at}`,
    evidence: (pair: string, what: string, at: string, brief: string, date: string) =>
      `Pair ${pair}: ${what} at ${at} of ${brief}, reported ${date}.`,
    make: 'Write the finding',
    made: 'Finding written: say what is wanted.',
    report: 'The report',
    caution: 'Nobody should run in a pair that comes apart.',
    stopped: 'The pair is out of use.',
    still: 'The pair is not stopped.',
    stop: 'See to the pair',
  },
  findings: 'Findings',
  noFindings:
    'No finding yet. Make one from a complaint, or write a new one here from wear, the blueprint or comfort.',
  noneShown: 'No finding fits this choice.',
  newFinding: 'New finding',
  finding: 'Finding',
  state: 'State',
  part: 'Part and trade',
  seenIn: 'Seen in',
  carried: 'Changed in',
  noRound: (closed: boolean): string => (closed ? 'in no round' : 'no round yet'),
  outcome: 'Outcome',
  anyState: 'all states',
  anyTrade: 'all trades',
  trade: 'Trade',
  find: 'Title or wish',
  counted: (n: number, of: number) =>
    n === of ? count(n, 'finding', 'findings') : `${n} of ${count(of, 'finding', 'findings')}`,
  selectFinding: (title: string) => `Select “${title}”`,
  assign: (n: number) => `Assign ${count(n, 'finding', 'findings')} to a round`,
  assignTo: 'Which round carries the change?',
  assignHint: 'Only rounds after the ones in which they were seen.',
  assigned: (n: number, round: string) => `${count(n, 'finding', 'findings')} assigned to ${round}`,
  close: (n: number) => `Close ${count(n, 'finding', 'findings')}`,
  closedNow: (n: number) => `${count(n, 'finding', 'findings')} closed`,
  partAndTrade: (part: string, trade: string) => (part === trade ? part : `${part}, ${trade}`),
  said: {
    outcome: (round: string, verdict: string, date: string) =>
      `${round} makes this change: ${verdict}, as of ${date}.`,
    judge: (round: string) => `${round} makes this change. Did it work?`,
    asked: (round: string) => `${round} will make this change.`,
    'no-round': () => 'No round makes this change yet.',
    closed: () => 'Closed without an outcome.',
  },
  shows: 'What shows it',
  counts: (testers: number, askedTesters: number, runs: number, askedRuns: number) =>
    `${testers} of ${askedTesters} testers, ${runs} of ${askedRuns} runs`,
  onFoot: (left: number, right: number) => `left shoe in ${left} runs, right shoe in ${right}`,
  noEvidence: 'No evidence was kept with it.',
  frozen: (date: string) => `How sure, as of ${date}?`,
  zonePage: (zone: string) => `Everything felt at the ${zone}`,
  wearPage: 'The curves of wear',
  comfortPage: 'Comfort of every round',
  pairPage: (code: string) => `Pair ${code}`,
  runsBehind: 'Latest runs with it:',
  ownWords: 'In the lead’s own words',
  wants: 'What is wanted',
  nothingWanted: (closed: boolean): string =>
    closed ? 'Nothing was asked for.' : 'Nothing is asked for yet.',
  priority: 'Priority',
  whatCame: 'What came of it',
  noOutcome: (closed: boolean): string =>
    closed ? 'It was closed without an outcome.' : 'No outcome is written down yet.',
  proposed: (before: string, after: string) => `The log says: ${before} runs before, ${after} now.`,
  proposedRight: (before: string, after: string) =>
    `The log says: just right for ${before} testers before, ${after} now.`,
  proposedNobody: 'Fewer than two testers answered it in both rounds.',
  outcomeAsOf: (date: string) => `What shows it, as of ${date}`,
  edit: 'Edit this finding',
  writeOutcome: 'Write down the outcome',
  erase: 'Erase this finding',
  history: 'Earlier versions',
  form: {
    nothing: (title: string) => `${title} is missing.`,
    due: 'Wanted by',
    titleIn: (language: string) => `Title in ${language}`,
    wantedIn: (language: string) => `Wanted change in ${language}`,
  },
};
