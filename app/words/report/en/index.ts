/** The printed report, in English: one line for who decides, then a sheet for each trade. */
import type { ZoneCode, Trade } from '../../../../core/foot/index.ts';
import type {
  ChangesHeadline,
  DecisionHeadline,
  WorseName,
} from '../../../../core/headlines/index.ts';
import type { Foot, RecordId } from '../../../../core/records/index.ts';
import type { VerdictItem } from '../../../../core/review/index.ts';
import { countPairs, countRuns } from '../../languages/en/count.ts';
import { sheet } from './sheet.ts';

const count = (n: number, one: string, many: string) => `${n} ${n === 1 ? one : many}`;
const limits = (n: number) => count(n, 'limit', 'limits');

/** Names that the first sentence uses; each row by the part of the shoe that it is about. */
export interface PaperSay {
  /** Whether a sentence before it says something that is proved. */
  readonly isProved: boolean;
  readonly names: readonly string[];
  readonly pairs: readonly string[];
  readonly list: (names: readonly string[]) => string;
}

/** Names that the changes' first sentence uses. */
export interface ChangedSay {
  readonly round: (id: RecordId) => string;
  readonly names: (some: readonly WorseName[]) => string;
}

const look = (say: PaperSay) =>
  `Look at ${say.pairs.length === 1 ? 'pair' : 'pairs'} ${say.list(say.pairs)} first.`;
const rest = (open: number) => (open === 0 ? 'Keep the rest.' : 'Keep testing the rest.');

export const paper = {
  for: {
    whole: 'For the project lead',
    last: 'For the last maker',
    upper: 'For the pattern cutter',
    materials: 'For the material developer',
    foam: 'For the foam developer',
    tooling: 'For the sole and mould maker',
  } satisfies Readonly<Record<Trade | 'whole', string>>,
  mark: 'Confidential: for the people building this shoe.',
  headline: (h: DecisionHeadline, say: PaperSay): string => {
    switch (h.case) {
      case 'nobody-ran':
        return 'Nobody has run in this round yet. Nothing to decide.';
      case 'change':
        return `${h.look.length > 0 ? `${look(say)} ` : ''}Change the ${say.list(say.names)}. ${rest(h.open)}`;
      case 'look':
        return `${look(say)} ${h.open > 0 ? `${limits(h.open)} still open.` : ''}`.trim();
      case 'fails':
        return `The round fails: ${paper.failing[h.what]}. Find the cause first.`;
      case 'watch':
        return `${say.isProved ? '' : 'Nothing is proved yet. '}Watch the ${say.list(say.names)}.`;
      case 'keep':
        return `Keep it as it is: all ${limits(h.limits)} hold.`;
      case 'go-on':
        return `Change nothing yet. Keep testing: ${limits(h.open)} open.`;
    }
  },
  failing: {
    wear: 'it wears out too soon',
    'not-measured': 'a limit was not measured',
    structure: 'pairs come apart',
    'allowed-rate': 'a complaint recurs',
    complaints: 'a complaint grows with distance',
    'stop-use': 'a pair must not be run',
  } satisfies Readonly<Record<VerdictItem['what'], string>>,
  /** The part of the shoe at a zone, as a maker says it. */
  places: {
    P1: 'sole under the big toe',
    P2: 'sole under the toes',
    P3: 'inner forefoot',
    P4: 'middle of the forefoot',
    P5: 'outer forefoot',
    P6: 'inner waist',
    P7: 'outer waist',
    P8: 'inner heel',
    P9: 'outer heel',
    U1: 'toe tip',
    U2: 'inner toe box',
    U3: 'outer toe box',
    U4: 'vamp',
    U5: 'tongue and eyestay',
    U6: 'inner quarter',
    U7: 'outer quarter',
    U8: 'collar',
    U9: 'heel tab',
    U10: 'heel cup',
  } satisfies Readonly<Record<ZoneCode, string>>,
  /** A complaint as a title. */
  felt: (kind: string, place: string) => `${kind}, ${place}`,
  onFoot: (foot: Foot, place: string) => `${foot} ${place}`,
  wearAt: (measure: string, site: string) => `${measure.toLowerCase()} (${site})`,
  /** Sentences one after the other. */
  sentences: (some: readonly string[]) => some.join(' '),
  sizes: (testers: number, pairs: number, runs: number, distance: string) =>
    `${count(testers, 'tester', 'testers')}, ${count(pairs, 'pair', 'pairs')}, ${count(runs, 'run', 'runs')}, ${distance}.`,
  farthest: (distance: string, brief: string) => `The farthest pair has ${distance} of ${brief}.`,
  views: {
    left: { sole: 'left sole', upper: 'left upper' },
    right: { sole: 'right sole', upper: 'right upper' },
  },
  columns: {
    so: 'What is so',
    change: 'What to change',
    amount: 'How much',
    who: 'Who',
    by: 'By',
    sure: 'How sure',
  },
  so: {
    complaint: (testers: number, of: number, runs: number, ofRuns: number) =>
      `${testers} of ${of} testers, ${runs} of ${ofRuns} runs`,
    oneTester: (tester: string, runs: number, ofRuns: number) =>
      `${tester} alone: ${runs} of ${ofRuns} runs`,
    side: { left: 'left only', right: 'right only', both: 'both shoes' },
    better: (before: string, earlier: string, after: string, later: string) =>
      `${before} runs in ${earlier}, ${after} in ${later}`,
    /** Leads to the words of a change that was made for it. */
    changedBy: (part: string, round: string) => `Your change with ${round} (${part}):`,
    /** The same of another's part. */
    changedByOther: (part: string, round: string, role: string) =>
      `Changed with ${round} by the ${role} (${part}):`,
    changedByNone: 'No change on the lists was made for it.',
    share: (runs: number, of: number) => `${runs} of ${of}`,
    tolerance: (pair: string, site: string, by: string) => `${site}: ${by} off on pair ${pair}`,
    damage: (pair: string, distance: string) => `pair ${pair}, at ${distance}`,
    wear: (site: string, value: string, at: string, brief: string) =>
      `${site}: down to ${value} at about ${at}; ${brief} asked`,
    wearTitle: (measure: string) => `${measure} wears fast`,
    toleranceTitle: 'Out of tolerance',
    betterTitle: (felt: string) => `${felt}: better`,
  },
  acts: {
    change: 'No change is written down yet.',
    look: 'Look at the pair; find the cause.',
    watch: 'Nothing yet: watch it.',
    keep: 'Keep it as it is.',
    damage: 'Take the pair apart; find the cause.',
    tolerance: 'Sort the pair out, or put the mould right.',
    wear: 'Nothing yet: measure it again.',
    oneTester: 'A question of fit on that foot.',
    asked: 'No change is written down yet.',
    first: (parts: string) => `Look first at: ${parts}.`,
  },
  noAmount: 'no number yet',
  noDate: 'no date yet',
  nobodyYet: 'nobody yet',
  inRound: (round: string) => `with ${round}`,
  sure: {
    clear: 'clear',
    'one-tester': 'one tester',
    likely: 'likely',
    'too-early': 'too early to tell',
    fails: 'fails',
    open: 'open',
    holds: 'holds',
    asked: 'asked for by the lead',
  },
  moreRows: (n: number) => `${n} more on the sheets of the trades.`,
  nothingShows: 'Nothing recurs, wears out early or comes apart.',
  limits: 'Against the brief',
  limit: {
    structure: 'Nothing comes apart',
    'allowed-rate': 'Complaints',
    complaints: 'None grows',
    'stop-use': 'No pair withdrawn',
  },
  limitAsks: {
    structure: '9 pairs in 10',
    'allowed-rate': (share: string) => `up to ${share} of runs`,
    complaints: 'with distance',
    'stop-use': 'no notice in force',
    reading: (bound: string, value: string) => `${bound} ${value}`,
    ofNew: (bound: string, value: string) => `${bound} ${value} of new`,
  },
  bounds: { 'at-least': 'at least', 'at-most': 'at most' },
  limitSays: {
    checked: (distance: string) => `checked to ${distance}`,
    reached: (at: string, brief: string) => `${at} of ${brief}`,
    cameApart: (n: number, of: number) => `${n} of ${of} came apart`,
    recurring: (n: number) => count(n, 'recurs', 'recur'),
    nothingRecurs: 'nothing proved',
    growing: (n: number) => count(n, 'grows', 'grow'),
    noneGrows: 'no rise seen',
    withdrawn: (pairs: string) => `pair ${pairs}`,
    none: 'none',
    notMeasured: 'not measured',
  },
  curveOf: (distance: string) => `Checked to ${distance}.`,
  curveKey: 'Marks: one a pair. Line: a new pair. Grey: where it may lie. Dots: beyond the checks.',
  atLimit: (value: string) => `limit ${value}`,
  mapTitle: (kind: string, testers: number) => `${kind}: testers of ${testers} who reported it`,
  shoes: { left: 'Left shoe', right: 'Right shoe' },
  mapNobody: 'nobody',
  mapZone: (place: string, testers: number, of: number) => `${place} ${testers} of ${of}`,
  howSure: 'How sure?',
  sureLines: {
    clear: (names: string) => `Clear by the rule of the brief: ${names}.`,
    'one-tester': (names: string) => `Clear for one tester only: ${names}.`,
    likely: (names: string) => `Likely to recur, not proved: ${names}.`,
    'too-early': (names: string) => `Too early to tell: ${names}.`,
    fails: (names: string) => `Seen on the sample: ${names}.`,
    open: (names: string) => `Still open: ${names}.`,
    holds: (names: string) => `Holds: ${names}.`,
    asked: (names: string) => `Asked for by the lead: ${names}.`,
  },
  behind: 'Figures and methods are in the appendix.',

  changes: {
    first: 'This is the first round: nothing to compare it with.',
    noted: 'Nothing is noted as changed in this round.',
    headline: (h: ChangesHeadline, say: ChangedSay): string => {
      switch (h.case) {
        case 'one-round':
          return 'This is the first round: nothing to compare it with.';
        case 'nobody-ran':
          return `Nobody has run in ${say.round(h.round)} yet: nothing to compare.`;
        case 'mixed':
          return `Better: ${say.names(h.better)}. Worse: ${say.names(h.worse)}.`;
        case 'worse':
          return `Clearly worse: ${say.names(h.worse)}.`;
        case 'mended':
        case 'better':
          return `${h.case === 'mended' ? 'Mended' : 'Better'}: ${say.names(h.better)}.${h.open ? ` Ask about: ${say.names([h.open])}.` : ''}`;
        case 'no-different':
          return `No difference shown: ${say.names(h.same)}.`;
        case 'not-in-shoe':
          return h.better.length > 0
            ? `Better, though the change was not in the shoe: ${say.names(h.better)}.`
            : `Not in the shoe: the change for ${say.names(h.named)}.`;
        case 'too-early':
          return `Too early to tell: ${say.names(h.open)}.`;
        case 'nothing-moved':
          return `Nothing has clearly moved in ${say.round(h.round)}.`;
      }
    },
    against: (earlier: string, later: string, both: number) =>
      `${earlier} against ${later}. ${count(both, 'tester', 'testers')} wore both.`,
    meant: (felt: string) => `Meant to mend: ${felt}.`,
    mendsNothing: 'Does not say what it was meant to mend.',
    arrived: 'Did it arrive?',
    arrivedLine: (place: string, from: string, to: string, by: string) =>
      `${place}: ${from} before, ${to} now (${by})`,
    arrivedAs: (line: string, word: string) => `${line}: ${word}`,
    arrivedKey:
      'Arrival is told where a change is said in figures, or the drawing has a new number. A change in words alone cannot be measured.',
    notOnBlueprint:
      'Cannot be told: it is not said in figures, and the drawing has no new number for it.',
    unlisted: 'Changed on the drawing, named by no change',
    worked: 'Did it work?',
    notJudged: 'Cannot be judged.',
    noAim: 'Cannot be judged: no complaint is named for it.',
    else: 'Did anything else move?',
    elseKey: 'Share of runs, before and now. A dashed line marks what the brief allows.',
    found: 'Also different, as found: nobody asked for it',
    foundNothing: 'Nothing else differs that was measured or written down.',
    comfort: 'Comfort',
    rightNow: (question: string) => `${question}, just right`,
    ofAll: (some: number, all: number) => `${some} of ${all}`,
    comfortWord: {
      better: 'clearly better',
      worse: 'clearly worse',
      'no-relevant': 'no difference',
      open: 'too early to tell',
    },
    word: {
      worse: 'worse',
      mended: 'mended',
      better: 'better',
      'no-different': 'no difference',
      look: 'ask about it',
      'too-little': 'too early to tell',
    },
    knew: (testers: string) => `${testers} knew what was changed: that alone can raise comfort.`,
    close: 'Close it?',
  },

  care: {
    title: 'Pain, numbness, blisters and damage',
    columns: {
      what: 'What',
      where: 'Where',
      testers: 'Testers',
      runs: 'Runs',
      most: 'Worst',
      now: 'Now',
    },
    pain: (from: number) => `Pain of ${from} of 10 or more, or with a sign such as swelling`,
    ofTen: (score: number) => `${score} of 10`,
    stayOut: (testers: string) => `${testers}: not to run in the pair until the lead has answered`,
    noneOut: 'answered, or over',
    skin: { blister: 'Blister', broken: 'Broken skin' },
    onPair: (pair: string, date: string) => `pair ${pair}, ${date}`,
    doNotWear: 'do not wear the pair',
    answered: 'the lead says go on',
    none: (pain: number, feet: number, pairs: number) =>
      `No pain of 3 of 10 or more in ${countRuns(pain)}; no numbness, blister or broken skin in ${countRuns(feet)}; nothing came apart on ${countPairs(pairs)}.`,
    cautions: [
      'New pain of 3 or more, or pain with swelling, a limp, numbness, at night, or when the foot bears no weight: the tester stops running in this test and sees a doctor or physiotherapist. If the foot bears no weight or is badly swollen, today. A pair that comes apart is not worn again.',
      'This is a count of answers, not medical advice. What a clinician and local rules say comes first.',
    ],
  },

  sheet,
  /** Leads to the complaints of the appendix that are not proved, after those that are. */
  alsoReported: 'Also reported, not proved:',
  appendix: 'Appendix: figures and methods',
  /** What a dictionary finds in words that the reader does not read. */
  named: (names: string) => `(no translation; our word list finds: ${names})`,
  /** Beside words that stay as they were written. */
  asIn: (language: string | null) =>
    language === null ? '(as written)' : `(written in ${language})`,
  inLanguage: (language: string) => `in ${language}:`,
};
