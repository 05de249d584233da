/** What there is, and what is on each pair. */
import type { Surface } from '../../../core/records/index.ts';
import type { Review } from '../../../core/review/index.ts';
import { toleranceInWords } from '../../words/say-blueprint.ts';
import { table } from '../table.ts';
import { heading, km, type Printing } from './printed.ts';

/** The project, how much evidence there is, and what is left out. */
export const projectOf = (
  { review, spoken: { terminal: words, desk } }: Printing,
  headline: string,
): string => {
  const { project, size, without } = review;
  const said = desk.blueprint;
  return [
    project.name,
    headline,
    '',
    words.evidence(size.pairs, review.groupTesters, size.testers, size.runs, km(size.distanceM)),
    words.brief(km(project.brief.distanceM)),
    ...(without === null
      ? []
      : [
          without.length === 0
            ? said.withoutNone
            : said.without(without.length, desk.joined.names(without.map(({ code }) => code))),
        ]),
  ].join('\n');
};

const surfacesOf = (
  { bySurface }: Pick<Review['pairs'][number], 'bySurface'>,
  { glossary, desk }: Printing['spoken'],
): string =>
  desk.joined.clauses(
    Object.entries(bySurface)
      .sort(([, a], [, b]) => b - a)
      .map(
        ([surface, metres]) =>
          `${surface === 'unknown' ? '?' : glossary.surfaces[surface as Surface]} ${km(metres)}`,
      ),
  );

/** Kilometres on each pair, who has it, and what is to be known of it. */
export const pairsOf = ({ review, spoken, speaker }: Printing, headline: string): string => {
  const words = spoken.terminal;
  return [
    `${heading(words.pairs)}\n${headline}`,
    table(
      [
        { title: words.pair },
        { title: words.round },
        { title: words.size, right: true },
        { title: words.distance, right: true },
        { title: words.ofBrief, right: true },
        { title: words.runs, right: true },
        { title: words.surfaces },
        { title: words.holder },
        { title: words.note },
      ],
      review.pairs.map((pair) => [
        pair.code,
        speaker.round(pair.round),
        String(pair.sizeMm),
        km(pair.totalM),
        `${Math.round(100 * pair.shareOfBrief)} %`,
        String(pair.runs),
        surfacesOf(pair, spoken),
        pair.holder === null ? '' : speaker.tester(pair.holder),
        spoken.desk.joined.apart(
          [
            pair.stopUse ? words.stopUse : '',
            pair.holderSilentDays === null ? '' : words.silent(pair.holderSilentDays),
            toleranceInWords(pair.outOfTolerance, spoken.desk),
          ].filter(Boolean),
        ),
      ]),
    ),
  ].join('\n\n');
};
