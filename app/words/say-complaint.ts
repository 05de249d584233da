/** What does the log say about a complaint, in sentences? The same at the desk, in the terminal and in a finding. */
import {
  surenessOf,
  type Association,
  type CellName,
  type EvidenceWord,
  type FirstRepeat,
  type Onset,
  type Trend,
} from '../../core/complaints/index.ts';
import { suspectsOf, type PartId } from '../../core/foot/index.ts';
import type { Foot, RecordId } from '../../core/records/index.ts';
import {
  isHint,
  isProven,
  type CellSummary,
  type CloserLook,
  type RoundSummary,
} from '../../core/review/index.ts';
import type { Metres } from '../../core/units/index.ts';
import { percentOf, setPercentOf } from './figures.ts';
import type { DeskWords, Glossary } from './types.ts';

/** The words of one language, and how its reader likes figures and names written. */
export interface Speaker {
  readonly desk: DeskWords;
  readonly glossary: Glossary;
  readonly number: (value: number, most: number, least?: number) => string;
  readonly distance: (distance: Metres) => string;
  readonly tester: (id: RecordId) => string;
  /** Code of a pair and name of a round. */
  readonly pair: (id: string) => string;
  readonly round: (id: RecordId) => string;
  readonly foot: (foot: Foot) => string;
  /** Name of a language by its tag. */
  readonly language: (tag: string) => string;
}

/** How sure it is that a complaint, or pain, recurs: by the words of the desk, with what is proved where it is. */
export const evidenceName = (
  { word, testersOnce }: { readonly word: EvidenceWord; readonly testersOnce: number },
  { desk, glossary }: Pick<Speaker, 'desk' | 'glossary'>,
): string => {
  if (word === 'not-seen' || word === 'too-few-runs') return glossary.evidence[word].name;
  const sure = surenessOf(word, testersOnce);
  const { name } = glossary.sureness[sure];
  return sure === 'clear' || sure === 'one-tester'
    ? desk.joined.of(name, glossary.evidence[word].name)
    : name;
};

/** A p-value as people read it. */
export const pOf = (p: number, { number }: Speaker): string =>
  p < 0.001 ? '< 0.001' : number(p, 3);

/** An e-value as people read it: two figures, and no more digits than it has meaning. */
export const evidenceValue = (value: number, { number }: Speaker): string =>
  value >= 1e6 ? '> 1 000 000' : value < 0.01 ? '< 0.01' : number(value, value >= 10 ? 0 : 2);

/** Zone and kind, as a heading. */
export const cellTitle = ({ zone, kind }: CellName, { desk, glossary }: Speaker): string =>
  desk.joined.of(glossary.zones[zone].name, glossary.kinds[kind].name);

interface Bounds {
  readonly lower: number;
  readonly upper: number;
}

/** What is said of a complaint's counts. */
export interface CellFigures extends Pick<
  CellSummary,
  'word' | 'testersTwice' | 'testersOnce' | 'runs' | 'byFoot' | 'allowedRate' | 'eValue' | 'needed'
> {
  readonly severity: Pick<NonNullable<CellSummary['severity']>, 'mean' | 'most'> | null;
  readonly shareTwice: Bounds;
  readonly runShare: Bounds;
  /** Codes of the testers for each of whom it is proven, where it is proven for these alone. */
  readonly provenFor: readonly string[];
}

/** What is said of when and with whom a complaint comes. */
export interface LookFigures {
  readonly trend: Pick<Trend, 'word' | 'testers' | 'adjustedP'>;
  readonly onset: Omit<Onset, 'runs'> | null;
  readonly firstRepeat: Pick<FirstRepeat, 'medianM' | 'repeated' | 'testers'>;
  readonly hints: readonly Pick<Association, 'factor' | 'goesWith' | 'adjustedP' | 'testers'>[];
  /** How many circumstances were looked at. */
  readonly asked: number;
}

/** How many testers and runs, how sure, how bad, and for whom it is proven. */
export const countLines = (
  cell: CellFigures,
  asked: RoundSummary['complaints']['asked'],
  speaker: Speaker,
): string[] => {
  const words = speaker.desk.proof;
  const percent = (share: number) => percentOf(share, speaker.number);
  const interval = ({ lower, upper }: Bounds) => words.interval(percent(lower), percent(upper));
  return [
    words.testers(cell.testersTwice, cell.testersOnce, asked.testers, interval(cell.shareTwice)),
    words.runs(
      cell.runs,
      asked.runs,
      interval(cell.runShare),
      setPercentOf(cell.allowedRate, speaker.number),
    ),
    ...(isProven(cell) ? [words.ratherHigh] : []),
    [
      words.feet(cell.byFoot.left, cell.byFoot.right),
      ...(cell.severity
        ? [words.severity(speaker.number(cell.severity.mean, 1), cell.severity.most)]
        : []),
    ].join(' '),
    ...(cell.provenFor.length > 0 ? [words.who(speaker.desk.joined.names(cell.provenFor))] : []),
    words.value(evidenceValue(cell.eValue, speaker), evidenceValue(cell.needed, speaker)),
  ];
};

/** From this share of runs without an answer on, it is said: who answers mainly when it hurts proves too much. */
const MUCH_UNANSWERED = 0.2;

/** Who was asked about their feet in a round, and how much was left open. */
export const askedLines = (
  {
    complaints: { asked },
    size,
  }: Pick<RoundSummary, 'size'> & {
    readonly complaints: Pick<RoundSummary['complaints'], 'asked'>;
  },
  { desk }: Pick<Speaker, 'desk'>,
): string[] => {
  const words = desk.complaints;
  if (asked.runs === 0) return [words.nobodyAsked];
  const open = size.runs - asked.runs;
  return [
    words.asked(asked.runs, asked.testers),
    ...(open > MUCH_UNANSWERED * size.runs ? [words.unanswered(open, size.runs)] : []),
  ];
};

/** The counts of a cell of the log in sentences. */
export const cellLines = (
  cell: CellSummary,
  { asked }: Pick<RoundSummary['complaints'], 'asked'>,
  speaker: Speaker,
): string[] =>
  countLines(
    {
      ...cell,
      provenFor:
        cell.word === 'recurs-for-one-tester'
          ? cell.provenTesters.map(({ tester }) => speaker.tester(tester))
          : [],
    },
    asked,
    speaker,
  );

/** Whether it changes with kilometres, from where in a run it begins, and what it goes together with. */
export const circumstanceLines = (
  { trend, onset, firstRepeat, hints, asked }: LookFigures,
  speaker: Speaker,
): string[] => {
  const { glossary, distance } = speaker;
  const words = speaker.desk.proof;
  return [
    trend.word === 'too-few-runs'
      ? speaker.desk.joined.sentence(glossary.trends[trend.word])
      : words.trend(glossary.trends[trend.word], trend.testers, pOf(trend.adjustedP, speaker)),
    ...(onset
      ? [
          words.onset(
            distance(onset.medianM),
            distance(onset.lowerM),
            distance(onset.upperM),
            onset.testers,
          ),
        ]
      : []),
    words.repeated(
      firstRepeat.medianM === null ? null : distance(firstRepeat.medianM),
      firstRepeat.repeated,
      firstRepeat.testers,
    ),
    ...(hints.length === 0
      ? [words.noHint(asked)]
      : hints.map(({ factor, goesWith, adjustedP, testers }) =>
          words.hint(
            glossary.factors[factor][goesWith === 'more' ? 'more' : 'less'],
            pOf(adjustedP, speaker),
            testers,
          ),
        )),
  ];
};

/** A closer look at a cell of the log in sentences. */
export const lookLines = (
  { associations, ...look }: Omit<CloserLook, 'cell'>,
  speaker: Speaker,
): string[] =>
  circumstanceLines(
    { ...look, hints: associations.filter(isHint), asked: associations.length },
    speaker,
  );

/** The parts that usually cause it, marked as common practice. */
export const suspectLine = ({ kind, zone }: CellName, { desk, glossary }: Speaker): string => {
  const { first, second } = suspectsOf(kind, zone);
  const named = (parts: readonly PartId[]) =>
    desk.joined.names(parts.map((part) => glossary.parts[part].name));
  return desk.complaints.suspects(named(first), named(second));
};
