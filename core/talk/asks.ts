/**
 * The ready-made questions: what can be tapped, and for which doubt each is fit. Their words stand in the app, in every
 * language; none says anything of the build. Common practice, no source.
 */
import type { ComplaintKind } from '../foot/index.ts';
import type { AnswerOption, AskedAbout, AskId } from '../records/index.ts';

/** What makes a lead want to ask a tester, the most pressing first. */
export const doubtKinds = [
  'pain',
  'damage',
  'odd-run',
  'early-sign',
  'outlying-score',
  'missing-answer',
  'silence',
] as const;
export type DoubtKind = (typeof doubtKinds)[number];

export interface Ask {
  /** In the order in which they are offered; {@link optionsOf} adds what answers every question. */
  readonly options: readonly AnswerOption[];
  readonly fits: readonly DoubtKind[];
  /** The complaints that it makes sense for; absent: any. */
  readonly complaints?: readonly ComplaintKind[];
  /** What the question must be about, or its words would have a gap. */
  readonly about: 'run' | 'damage-report' | 'pair' | 'anything';
}

/** What a sock can cause, and what looser laces can ease. Common practice, no source. */
const ofTheSock: readonly ComplaintKind[] = [
  ...(['hot-spot', 'rubbing', 'pressure', 'overheating', 'too-tight', 'too-loose'] as const),
  ...(['heel-slip', 'harsh-edge', 'pain'] as const),
];
const ofTheLaces: readonly ComplaintKind[] = [
  ...(['pressure', 'lace-bite', 'numbness', 'arch-pressure', 'too-tight', 'pain'] as const),
];

export const asks: Readonly<Record<AskId, Ask>> = {
  'sock-or-shoe': {
    options: ['shoe', 'sock', 'both'],
    fits: ['early-sign'],
    complaints: ofTheSock,
    about: 'run',
  },
  'looser-laces': {
    options: ['same', 'less', 'gone', 'not-tried'],
    fits: ['early-sign', 'pain'],
    complaints: ofTheLaces,
    about: 'anything',
  },
  'which-foot': { options: ['left', 'right', 'both'], fits: ['pain'], about: 'run' },
  'other-shoes': {
    options: ['this-pair-only', 'others-too', 'not-tried'],
    fits: ['early-sign', 'pain'],
    about: 'anything',
  },
  'when-in-run': {
    options: ['from-the-start', 'later', 'changes'],
    fits: ['early-sign', 'pain'],
    about: 'anything',
  },
  'pain-now': { options: ['gone', 'less', 'same', 'worse'], fits: ['pain'], about: 'run' },
  'pain-next-day': { options: ['no', 'less', 'same', 'worse'], fits: ['pain'], about: 'run' },
  'damage-now': { options: ['same', 'worse'], fits: ['damage'], about: 'damage-report' },
  'still-running': {
    options: ['yes', 'not-logged-yet', 'paused', 'stopped'],
    fits: ['silence'],
    about: 'pair',
  },
  'really-distance': { options: ['yes', 'mistyped'], fits: ['odd-run'], about: 'run' },
  'really-pace': { options: ['yes', 'mistyped'], fits: ['odd-run'], about: 'run' },
  'really-day': { options: ['yes', 'mistyped'], fits: ['odd-run'], about: 'run' },
  'really-pair': { options: ['yes', 'another-pair'], fits: ['odd-run'], about: 'run' },
  'score-meant': {
    options: ['yes', 'mistyped', 'other-reason'],
    fits: ['outlying-score'],
    about: 'run',
  },
  'feet-unanswered': { options: ['nothing', 'something'], fits: ['missing-answer'], about: 'run' },
  'comfort-unanswered': {
    options: ['same', 'better', 'worse'],
    fits: ['missing-answer'],
    about: 'run',
  },
};

/** What a lead can offer to tap to a question in words of their own; none: the tester answers in words. */
export const answerSets = {
  words: [],
  'yes-no': ['yes', 'no', 'partly'],
  foot: ['left', 'right', 'both'],
  now: ['gone', 'less', 'same', 'worse'],
  change: ['better', 'same', 'worse'],
} as const satisfies Readonly<Record<string, readonly AnswerOption[]>>;
export type AnswerSet = keyof typeof answerSets;

/** Answer every question: not knowing is an answer, and so is not wanting to say. */
export const alwaysOffered = ['dont-know', 'skipped'] as const satisfies readonly AnswerOption[];

/** What a tester can tap: what the question names, else what is ready-made; none where only words are asked for. */
export const optionsOf = ({
  ask,
  options,
}: {
  readonly ask?: AskId | undefined;
  readonly options?: readonly AnswerOption[] | undefined;
}): readonly AnswerOption[] => {
  const named = options ?? (ask ? asks[ask].options : []);
  const always: readonly AnswerOption[] = alwaysOffered;
  return [...named.filter((one) => !always.includes(one)), ...always];
};

/**
 * The ready-made questions that fit a doubt, in the order of the list.
 * @param complaint what it is about; absent: nothing in particular
 */
export const asksFor = (doubt: DoubtKind, complaint?: ComplaintKind): readonly AskId[] =>
  (Object.keys(asks) as AskId[]).filter((ask) => {
    const { fits, complaints } = asks[ask];
    return (
      fits.includes(doubt) &&
      (complaint === undefined || !complaints || complaints.includes(complaint))
    );
  });

/** The ready-made questions whose words have no gap where a question is about this. */
export const asksAbout = ({ record, pair, attribute }: AskedAbout): readonly AskId[] =>
  (Object.keys(asks) as AskId[]).filter((ask) => {
    const { about } = asks[ask];
    if (ask === 'score-meant' && attribute === undefined) return false;
    return about === 'anything' || (about === 'pair' ? pair !== undefined : record?.kind === about);
  });
