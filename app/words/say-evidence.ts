/**
 * What did the data say when a finding was written, in the reader's language? The figures were frozen with it
 * (`core/review/freeze.ts`), so it is said the same at the desk, in the report and at the specialist's.
 */
import type { Evidence, EvidenceFigures } from '../../core/records/index.ts';
import { kindOf } from '../../core/wear/index.ts';
import { readingInWords, type ReadingFigures } from './say-blueprint.ts';
import { comfortChangeLine, scoreLine, type ComfortChangeFigures } from './say-comfort.ts';
import { costsInWords, twoSidedLine, type TwoSidedFigures } from './say-two-sided.ts';
import {
  circumstanceLines,
  countLines,
  evidenceName,
  type LookFigures,
  type Speaker,
} from './say-complaint.ts';
import { wearOutlook, type WearFigures } from './say-wear.ts';
import type { DeskWords, Glossary } from './types.ts';

type Complaint = NonNullable<Evidence['complaint']>;
type Wear = NonNullable<Evidence['wear']>;
type Reading = NonNullable<Evidence['reading']>;
type TwoSided = NonNullable<Evidence['twoSided']>;
type ComfortChange = NonNullable<NonNullable<Evidence['comfort']>['change']>;

/** Whether a word of the figures is one that this version can say. */
const isOf = <T extends object>(terms: T, word: string): word is Extract<keyof T, string> =>
  Object.hasOwn(terms, word);

const isLook = (
  look: NonNullable<Complaint['look']>,
  { trends, factors }: Glossary,
): look is typeof look & LookFigures =>
  isOf(trends, look.trend.word) &&
  look.hints.every(
    ({ factor, goesWith }) => isOf(factors, factor) && (goesWith === 'more' || goesWith === 'less'),
  );

const isWear = (
  wear: Wear,
  { directions, holds }: Glossary,
): wear is Wear & Omit<WearFigures, 'kind' | 'site' | 'dose'> =>
  (wear.basis === 'checks' || wear.basis === 'prior-only') &&
  isOf(directions, wear.direction) &&
  wear.limits.every(({ hold }) => hold === null || isOf(holds, hold.word));

const isReading = (
  reading: Reading,
  { conformity }: DeskWords['blueprint'],
): reading is Reading & Omit<ReadingFigures, 'place'> => isOf(conformity, reading.word);

const isChange = (
  change: ComfortChange,
  { comfortChanges }: Glossary,
): change is ComfortChange & ComfortChangeFigures => isOf(comfortChanges, change.word);

const sayComplaint = (
  { weighed, look, ...counts }: Complaint,
  speaker: Speaker,
): readonly string[] | null => {
  const { desk, glossary } = speaker;
  if (!isOf(glossary.evidence, counts.word)) return null;
  const known = { word: counts.word, testersOnce: counts.testersOnce };
  const proof = desk.joined.aside(
    evidenceName(known, speaker),
    glossary.evidence[counts.word].meaning,
  );
  const byFoot = { left: counts.left, right: counts.right };
  const asked = { runs: counts.askedRuns, testers: counts.askedTesters };
  if (!weighed)
    return [
      proof,
      desk.report.frozenTesters(counts.testersTwice, counts.testersOnce, asked.testers),
      desk.report.frozenRuns(counts.runs, asked.runs),
      desk.proof.feet(byFoot.left, byFoot.right),
    ];
  const named = counts.word === 'recurs-for-one-tester' ? weighed.testers : [];
  const lines = [
    proof,
    ...countLines(
      { ...counts, word: counts.word, ...weighed, byFoot, provenFor: named },
      asked,
      speaker,
    ),
  ];
  if (!look) return lines;
  return isLook(look, glossary) ? [...lines, ...circumstanceLines(look, speaker)] : null;
};

const sayWear = (
  wear: Wear,
  { measure, unit, site }: NonNullable<Evidence['place']>,
  speaker: Speaker,
): readonly string[] | null => {
  const kind = kindOf({ measure, unit });
  return kind !== null && isWear(wear, speaker.glossary)
    ? wearOutlook({ ...wear, kind, site, dose: 'distance' }, wear.briefM, speaker)
    : null;
};

const sayComfort = (
  { attribute, mean, interval, testers, scores, change }: NonNullable<Evidence['comfort']>,
  speaker: Speaker,
): readonly string[] | null => {
  const name = speaker.glossary.attributes[attribute].name;
  const said = scoreLine(name, { mean, interval, n: testers, runs: scores }, speaker);
  if (!change) return [said];
  return isChange(change, speaker.glossary)
    ? [said, comfortChangeLine(change, change, speaker)]
    : null;
};

/** Whether the words are ones that this version can say. */
const isTwoSided = (
  one: TwoSided,
  { word, sure }: DeskWords['comfort']['twoSided'],
): one is TwoSided & Pick<TwoSidedFigures, 'word' | 'sure'> =>
  isOf(word, one.word) && isOf(sure, one.sure);

const sayTwoSided = (one: TwoSided, speaker: Speaker): readonly string[] | null => {
  if (!isTwoSided(one, speaker.desk.comfort.twoSided)) return null;
  const { attribute, low, right, high, word, sure, cost } = one;
  const said = twoSidedLine({ attribute, counts: { low, right, high }, word, sure }, speaker);
  if (!cost || (word !== 'low' && word !== 'high')) return [said];
  const { difference: points, interval, testers: onSide } = cost;
  const own = { points, interval, onSide, right: cost.right };
  const costs = costsInWords(attribute, { low: null, high: null, [word]: own }, speaker);
  return [
    said,
    ...costs.map((line) => speaker.desk.joined.of(speaker.desk.comfort.twoSided.cost, line)),
  ];
};

/**
 * The figures in sentences.
 * @returns null where there are none, or where a later version wrote a word that this one does not know
 */
export const sayFigures = (
  { complaint, place, wear, reading, comfort, twoSided }: EvidenceFigures,
  speaker: Speaker,
): readonly string[] | null => {
  if (complaint) return sayComplaint(complaint, speaker);
  if (wear && place) return sayWear(wear, place, speaker);
  if (reading && place)
    return isReading(reading, speaker.desk.blueprint)
      ? [readingInWords({ ...reading, place }, speaker)]
      : null;
  if (twoSided) return sayTwoSided(twoSided, speaker);
  return comfort ? sayComfort(comfort, speaker) : null;
};

/** Lines as somebody wrote them, and in which language as far as that is known. */
export interface WrittenLines {
  readonly lines: readonly string[];
  /** The language's tag, for the page. */
  readonly tag: string | null;
  /** What stands above the lines, in the reader's language. */
  readonly title: string;
}

export const writtenLines = (
  lines: readonly string[],
  tag: string | undefined,
  { desk, language }: Speaker,
): WrittenLines => ({
  lines,
  tag: tag ?? null,
  title: desk.report.asWritten(tag === undefined ? null : language(tag)),
});

export interface SaidEvidence {
  /** In the reader's language. */
  readonly said: readonly string[];
  /** The lead's own words, and what cannot be said anew. */
  readonly written: WrittenLines;
}

/**
 * Evidence in sentences: figures are said anew. What was frozen without them, or by an app whose words this
 * one does not know, stays as it was written.
 */
export const evidenceInWords = (evidence: Evidence, speaker: Speaker): SaidEvidence => {
  const { lines, own, language } = evidence;
  const said = sayFigures(evidence, speaker);
  return {
    said: said ?? [],
    written: writtenLines(said === null ? lines : (own ?? lines), language, speaker),
  };
};

/**
 * Evidence as a finding keeps it: the figures, and all of it in sentences of the language it is written in.
 * @param own the lead's own words, a line each
 * @returns undefined where there is nothing to freeze
 */
export const frozenEvidence = (
  figures: EvidenceFigures,
  own: readonly string[],
  until: string,
  language: string,
  speaker: Speaker,
): Evidence | undefined => {
  const said = sayFigures(figures, speaker) ?? [];
  return said.length + own.length === 0
    ? undefined
    : { ...figures, until, language, lines: [...said, ...own], own: [...own] };
};
