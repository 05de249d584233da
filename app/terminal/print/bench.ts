/** What the bench measured: over distance, on arrival against the blueprint, and how well its gauges repeat. */
import { isOut } from '../../../core/rounds/index.ts';
import { chanceOf, signed } from '../../words/figures.ts';
import { decisionInWords, gaugeLines, summaryLine } from '../../words/say-blueprint.ts';
import { placeName } from '../../words/say-place.ts';
import { table } from '../table.ts';
import { behind, fixed, heading, km, placeOf, type Printing } from './printed.ts';

/** Readings over distance. */
export const benchOf = (printing: Printing, headline: string): string => {
  const { review, speaker } = printing;
  const words = printing.spoken.terminal;
  const worn = review.bench.filter(({ points }) => points.length > 1);
  if (review.bench.length === 0) return `${heading(words.bench)}\n${words.noBench}`;
  return [
    heading(words.bench),
    headline,
    '',
    table(
      [{ title: words.pair }, { title: words.measure }, { title: words.readings }],
      worn.map(({ pair, measure, site, foot, unit, points }) => [
        speaker.pair(pair),
        placeOf({ measure, site, foot }, printing),
        points.map((p) => `${p.value} ${unit} @ ${km(p.distanceM)}`).join('  '),
      ]),
    ),
  ].join('\n');
};

/** What is out or undecided on arrival; the rest is counted. */
export const deviationsOf = (printing: Printing): string => {
  const { review, spoken, speaker, code } = printing;
  const words = spoken.terminal;
  const said = spoken.desk.blueprint;
  if (review.deviations.length === 0)
    return `${heading(words.deviations)}\n${spoken.desk.bench.noBlueprint}`;
  const wanted = review.deviations.filter(({ word }) => isOut(word) || word === 'undecided');
  return [
    heading(words.deviations),
    summaryLine(review.deviations, speaker),
    ...(wanted.length === 0
      ? []
      : [
          table(
            [
              { title: words.pair },
              { title: words.measure },
              { title: words.nominal, right: true },
              { title: words.reading, right: true },
              { title: words.deviation, right: true },
              ...behind(printing, [
                { title: said.guard, right: true },
                { title: said.chance, right: true },
              ]),
              { title: said.decision },
            ],
            wanted.map((one) => [
              code(one.pair),
              placeOf(one, printing),
              `${one.nominal} ${one.unit} (${signed(one.lower, fixed)} … ${signed(one.upper, fixed)})`,
              `${fixed(one.value)} ${one.unit}`,
              signed(one.deviation, fixed),
              ...behind(printing, [
                one.guard === null ? '–' : fixed(one.guard),
                one.chance === null ? '–' : chanceOf(one.chance, speaker.number),
              ]),
              decisionInWords(one, speaker),
            ]),
          ),
        ]),
  ].join('\n');
};

/** Left against right on arrival, where it is out or undecided. */
export const sidesOf = ({ review, spoken, speaker, code }: Printing): string => {
  const said = spoken.desk.blueprint;
  if (review.sides.length === 0) return `${heading(said.sides)}\n${said.noSides}`;
  const wanted = review.sides.filter(({ word }) => isOut(word) || word === 'undecided');
  if (wanted.length === 0) return `${heading(said.sides)}\n${said.sidesFine(review.sides.length)}`;
  return [
    heading(said.sides),
    table(
      [
        { title: spoken.terminal.pair },
        { title: spoken.terminal.measure },
        { title: said.difference, right: true },
        { title: said.allowed, right: true },
        { title: said.decision },
      ],
      wanted.map((one) => [
        code(one.pair),
        placeName(one, speaker),
        `${signed(one.difference, fixed)} ${one.unit}`,
        `± ${fixed(one.allowed)} (${said.allowedFrom[one.allowedFrom]})`,
        decisionInWords(one, speaker),
      ]),
    ),
  ].join('\n');
};

/** What each gauge study says of its gauge. */
export const gaugesOf = ({ review, speaker }: Printing): string => {
  const said = speaker.desk.blueprint;
  return [
    heading(said.gauges),
    ...(review.gauges.length === 0 ? [said.gaugesNone] : []),
    ...review.gauges.flatMap((one) => [
      said.gaugeOf(
        one.gauge,
        one.site === null
          ? speaker.desk.joined.clauses([speaker.glossary.measures[one.measure], said.anySite])
          : placeName({ measure: one.measure, site: one.site }, speaker),
        one.at.slice(0, 10),
      ),
      ...gaugeLines(one, speaker).map((line) => `  ${line}`),
    ]),
  ].join('\n');
};
