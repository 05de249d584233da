/** What do arrival checks, gauge studies, layers and feet say, in sentences? The same on desk and terminal. */
import type { Deviation, GaugeReview, PairTolerance, FeetLook } from '../../core/review/index.ts';
import type { Last } from '../../core/records/index.ts';
import type { ConformityWord, Coverage, LayersAndHeat, SizeStep } from '../../core/rounds/index.ts';
import { sizeOfLast } from '../../core/units/index.ts';
import { chanceOf, percentOf, signed } from './figures.ts';
import { pOf, type Speaker } from './say-complaint.ts';
import { placeName } from './say-place.ts';
import type { DeskWords } from './types.ts';

/** How many dimensions of a pair are out or undecided; empty where none is. */
export const toleranceInWords = (
  { proved, outside, undecided }: PairTolerance,
  { blueprint }: DeskWords,
): string => blueprint.counts(proved, outside, undecided);

/** A decision with its risk. */
export const decisionInWords = (
  {
    word,
    risk,
    disagree,
  }: { readonly word: ConformityWord; readonly risk: number | null; readonly disagree?: boolean },
  { desk, number }: Speaker,
): string => {
  const words = desk.blueprint;
  return desk.joined.clauses([
    words.conformity[word],
    ...(disagree ? [words.disagree] : []),
    ...(risk === null ? [] : [words.risk(chanceOf(risk, number))]),
  ]);
};

/** What is said of a reading against the blueprint. */
export interface ReadingFigures extends Pick<
  Deviation,
  'foot' | 'value' | 'deviation' | 'lower' | 'upper' | 'word' | 'risk' | 'disagree'
> {
  readonly place: Pick<Deviation, 'measure' | 'site' | 'unit'>;
  /** Code of the pair. */
  readonly pair: string;
}

/** A reading against the blueprint, and what is decided of it, in one sentence. */
export const readingInWords = (reading: ReadingFigures, speaker: Speaker): string => {
  const { glossary, number, desk } = speaker;
  const { unit } = reading.place;
  const write = (one: number) => signed(one, (size) => number(size, 2));
  const said = desk.report.deviation(
    reading.pair,
    desk.joined.clauses([placeName(reading.place, speaker), speaker.foot(reading.foot)]),
    `${number(reading.value, 2)} ${glossary.units[unit]}`,
    `${write(reading.deviation)} ${glossary.units[unit]}`,
    `${write(reading.lower)} … ${write(reading.upper)}`,
  );
  return desk.joined.sentence(desk.joined.of(said, decisionInWords(reading, speaker)));
};

/** The arrival readings of all pairs in one sentence. */
export const summaryLine = (
  deviations: readonly { readonly word: ConformityWord }[],
  { desk }: Speaker,
): string => {
  const words = desk.blueprint;
  const count = (word: ConformityWord) => deviations.filter((one) => one.word === word).length;
  const [proved, outside, undecided] = [
    count('not-conforming'),
    count('outside'),
    count('undecided'),
  ] as const;
  const named = [
    words.counts(proved, outside, undecided),
    ...(['conforming', 'inside'] as const)
      .filter((word) => count(word) > 0)
      .map((word) => words.counted[word](count(word))),
  ].filter(Boolean);
  return words.summary(deviations.length, desk.joined.apart(named));
};

/** A gauge study: whether the gauge will do, how it is known, and what speaks against it. */
export const gaugeLines = (
  { result, unit }: Pick<GaugeReview, 'result' | 'unit'>,
  speaker: Speaker,
): string[] => {
  const { desk, glossary, number } = speaker;
  const words = desk.blueprint;
  if (!result.ok)
    return [
      result.why === 'unbalanced'
        ? words.gaugeUnbalanced(result.operator, result.part, result.have, result.need)
        : words.gaugeWhy[result.why],
    ];
  const { anova, ranges, parts, operators, trials } = result;
  const share = result.wordFrom === 'tolerance' ? (anova.shareOfTolerance ?? 0) : anova.share;
  return [
    words.gaugeVerdict(
      words.gaugeWord[result.word],
      percentOf(share, number),
      words.gaugeOfWhat[result.wordFrom],
    ),
    words.gaugeUncertainty(
      number(anova.gauge, 3),
      number(anova.interval.lower, 3),
      number(anova.interval.upper, 3),
      glossary.units[unit],
    ),
    words.gaugeDesign(parts, operators, trials),
    ...(anova.interaction
      ? [
          anova.pooled
            ? words.pooled(pOf(anova.interaction.p, speaker))
            : words.notPooled(pOf(anova.interaction.p, speaker)),
        ]
      : []),
    ...(anova.categories === null ? [] : [words.categories(Math.floor(anova.categories))]),
    ...(ranges === null
      ? [words.noRanges]
      : ranges.above.length > 0
        ? [
            words.above(
              desk.joined.apart(
                ranges.above.map((one) => desk.joined.clauses([one.operator, one.part])),
              ),
            ),
          ]
        : []),
  ];
};

/** Up to this p-value an association is called shown. */
const SHOWN = 0.05;

/** Whether layers and heat go together. */
export const layersLine = ({ association }: LayersAndHeat, speaker: Speaker): string => {
  const words = speaker.desk.blueprint;
  return association.ok
    ? words.layersFigures(
        words.layersFound[
          association.p > SHOWN ? 'neither' : association.tau > 0 ? 'more' : 'less'
        ],
        signed(association.tau, (size) => speaker.number(size, 2)),
        pOf(association.p, speaker),
        association.zones,
      )
    : words.layersWhy[association.why](association.zones);
};

/** The last at the size that it was measured at. */
export const lastLine = (last: Last, { desk, number }: Speaker): string => {
  const words = desk.blueprint;
  const { lengthMm, ballWidthMm, ballGirthMm } = last;
  const parts = [
    ...(lengthMm === undefined
      ? []
      : [
          words.lastParts.length(
            number(lengthMm, 1),
            number(sizeOfLast(lengthMm, 'eu'), 1),
            number(sizeOfLast(lengthMm, 'uk'), 1),
          ),
        ]),
    ...(ballWidthMm === undefined ? [] : [words.lastParts.width(number(ballWidthMm, 1))]),
    ...(ballGirthMm === undefined ? [] : [words.lastParts.girth(number(ballGirthMm, 1))]),
  ];
  return words.lastLine(
    last.name,
    number(last.sizeMm, 1),
    parts.length > 0 ? desk.joined.clauses(parts) : desk.none,
  );
};

const coverageLines = (
  cover: Coverage | null,
  what: string,
  { desk, number }: Speaker,
): string[] => {
  const words = desk.blueprint;
  if (cover === null) return [words.noRange(what)];
  const { fromMm, toMm, measured, outside, notMeasured, empty } = cover;
  return [
    words.coverageLine(what, number(fromMm, 1), number(toMm, 1), measured - outside, measured),
    ...(measured === 0
      ? []
      : [
          empty.length === 0
            ? words.coverageFull
            : words.coverageEmpty(
                desk.joined.apart(
                  empty.map((one) => words.stretch(number(one.fromMm, 1), number(one.toMm, 1))),
                ),
              ),
        ]),
    ...(notMeasured > 0 ? [words.coverageNot(notMeasured, what)] : []),
  ];
};

/** Whose feet the panel has, against the brief, and who lies between sizes. */
export const feetLines = ({ testers, length, width }: FeetLook, speaker: Speaker): string[] => {
  const { desk, number } = speaker;
  const words = desk.blueprint;
  const sized = testers.flatMap(({ size }) => (size ? [size] : []));
  const between = (step: SizeStep) =>
    words.betweenCount(
      sized.filter((size) => (step === 5 ? size.by5 : size.by7half).between).length,
      sized.length,
      number(step, 1),
    );
  return [
    ...coverageLines(length, words.coverage.length, speaker),
    ...coverageLines(width, words.coverage.width, speaker),
    ...(sized.length > 0 ? [between(5), between(7.5)] : []),
  ];
};
