/** What testers, leads and specialists ask and answer each other. Loaded by the screens that say it. */
import type {
  AnswerOption,
  AskId,
  ChangeDirection,
  ChangeUnit,
  MeasureUnit,
  ProposalAnswer,
  ProposalReplyAnswer,
  ShoeSide,
  ThanksResult,
} from '../../../../core/records/index.ts';
import type { PatternLine } from '../../../../core/foot/index.ts';
import type { DoubtKind, Turn, TurnFor } from '../../../../core/talk/index.ts';
import type { AskedFacts } from '../../say-talk.ts';
import { thanks } from './thanks.ts';

const asks: Readonly<Record<AskId, (of: AskedFacts) => string>> = {
  'sock-or-shoe': () => 'Was it the shoe or the sock?',
  'looser-laces': () => 'Is it still there with looser laces?',
  'which-foot': () => 'Which foot is it?',
  'other-shoes': () => 'Do you feel it in your own shoes too?',
  'when-in-run': () => 'When in the run does it start?',
  'pain-now': () => 'How is the pain now?',
  'pain-next-day': () => 'Did it still hurt the next day?',
  'damage-now': () => 'Has the damage got worse?',
  'still-running': ({ pair }) => `Are you still running in pair ${pair}?`,
  'really-distance': ({ distance }) => `Was it really ${distance}?`,
  'really-pace': ({ pace }) => `Was it really ${pace}?`,
  'really-day': ({ when }) => `Did you run on ${when}?`,
  'really-pair': ({ pair }) => `Did you wear pair ${pair} on this run?`,
  'score-meant': ({ attribute }) => `${attribute}: is this the score you meant?`,
  'feet-unanswered': () => 'Did anything bother your feet on this run?',
  'comfort-unanswered': ({ pair }) => `How was this run next to your others in pair ${pair}?`,
};

const options: Readonly<Record<AnswerOption, string>> = {
  yes: 'Yes',
  no: 'No',
  partly: 'Partly',
  shoe: 'The shoe',
  sock: 'The sock',
  both: 'Both',
  left: 'Left',
  right: 'Right',
  'this-pair-only': 'Only in this pair',
  'others-too': 'In others too',
  'from-the-start': 'From the start',
  later: 'After a while',
  changes: 'It varies',
  gone: 'It is gone',
  less: 'Less',
  same: 'The same',
  worse: 'Worse',
  paused: 'I am taking a break',
  stopped: 'No, I stopped',
  'not-logged-yet': 'Yes, not logged yet',
  mistyped: 'No, I mistyped',
  'another-pair': 'No, another pair',
  'other-reason': 'Something else was wrong',
  nothing: 'Nothing bothered me',
  something: 'Yes, something did',
  better: 'Better',
  'not-tried': 'I have not tried',
  'dont-know': 'I can’t tell',
  skipped: 'Skip',
};

/** Where an answer reads otherwise after a certain question. */
const optionsIn: Readonly<Partial<Record<AskId, Readonly<Partial<Record<AnswerOption, string>>>>>> =
  {
    'looser-laces': { same: 'Still there' },
    'pain-next-day': { same: 'Yes, the same' },
    'damage-now': { same: 'No', worse: 'Yes' },
  };

const lines: Readonly<Record<PatternLine, string>> = {
  collar: 'collar line',
  'heel-tab': 'heel tab',
  'back-curve': 'heel curve',
  'heel-counter': 'heel counter edge',
  tongue: 'tongue edge',
  eyestay: 'eyestay edge',
  throat: 'throat',
  vamp: 'vamp line',
  'toe-overlay': 'toe overlay edge',
  saddle: 'saddle edge',
  'lasting-edge': 'lasting edge',
  'flex-groove': 'flex groove',
  sidewall: 'sidewall',
  'heel-bevel': 'heel bevel',
  'insole-board': 'insole board',
};

const moves: Readonly<Record<ChangeDirection, string>> = {
  more: 'more',
  less: 'less',
  higher: 'higher',
  lower: 'lower',
  forward: 'forward',
  back: 'back',
  inward: 'inward',
  outward: 'outward',
};

/** Units of a change that nothing is measured in. */
const otherUnits: Readonly<Record<Exclude<ChangeUnit, MeasureUnit>, string>> = {
  deg: 'degrees',
  grade: 'grades',
};

const sides: Readonly<Record<ShoeSide, string>> = {
  medial: 'medial side',
  lateral: 'lateral side',
};

export const talk = {
  asks,
  options,
  optionsIn,
  lines,
  moves,
  otherUnits,
  sides,
  degrees: (figure: string) => `${figure}°`,
  grades: (figure: string) => `${figure} ${figure === '1' ? 'grade' : 'grades'}`,
  /** How far it moves: "2 mm lower"; without a figure only where to. */
  moved: (direction: ChangeDirection, figure: string | null): string =>
    figure === null ? moves[direction] : `${figure} ${moves[direction]}`,
  proposalAnswers: {
    can: 'Can do',
    cannot: 'Cannot do',
    other: 'Another way',
  } as Readonly<Record<ProposalAnswer, string>>,
  proposalReplies: {
    accepted: 'Accepted',
    'ask-again': 'Asked again',
  } as Readonly<Record<ProposalReplyAnswer, string>>,
  thanksResults: {
    carried: 'changed in the next sample',
    mended: 'mended',
    better: 'better',
    'no-different': 'no different',
    worse: 'worse',
  } as Readonly<Record<ThanksResult, string>>,
  thanks,
  /** What a tester reads and writes on the phone. */
  phone: {
    title: 'A question from your lead',
    nth: (of: number) => `1 of ${of}`,
    aboutRun: (distance: string, code: string, when: string) =>
      `Your run of ${distance} in ${code}, ${when}`,
    aboutPair: (code: string) => `About pair ${code}`,
    aboutDamage: (code: string) => `Your report of damage, pair ${code}`,
    together: (parts: readonly string[]) => parts.join(' · '),
    inWords: 'Your answer in a few words',
    send: 'Send',
    missing: 'Write a few words, or skip.',
    answered: 'Your answer',
    skippedNow: 'Skipped.',
    addWords: 'Add a few words',
    next: (left: number) => (left === 1 ? 'One more question' : `${left} more questions`),
    notSaved: 'Not saved. Try once more.',
    thread: 'You and your lead',
    asked: (when: string) => `Your lead asked on ${when}`,
    said: (when: string) => `You answered on ${when}`,
    wrote: (when: string) => `You wrote on ${when}`,
    replied: (when: string) => `Your lead wrote on ${when}`,
    withdrawn: 'Your lead no longer asks.',
    write: 'Write to my lead',
    writeAbout: (code: string) => `About pair ${code}`,
    writeHint: 'Only your lead reads it. Pain belongs in the run, damage in a report.',
    writeMissing: 'Write a few words.',
    written: 'Written to your lead',
    cancel: 'Cancel',
  },
  doubts: {
    pain: 'Pain',
    damage: 'Damage',
    'odd-run': 'Odd run',
    'early-sign': 'Early sign',
    'outlying-score': 'Unusual score',
    'missing-answer': 'Missing answer',
    silence: 'Nothing heard',
  } as Readonly<Record<DoubtKind, string>>,
  whose: { lead: 'Lead', trade: 'Trade', tester: 'Testers' } as Readonly<
    Record<Turn['who'], string>
  >,
  turns: {
    ask: 'ask the trade',
    answer: 'answer the finding',
    decide: 'accept or ask again',
    assign: 'choose the round',
    build: 'make the sample',
    wear: 'run in the sample',
    judge: 'judge the change',
    close: 'close the finding',
  } as Readonly<Record<TurnFor, string>>,
};
