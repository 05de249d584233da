/** The review of a project as text: the same figures as the desk's, in tables. */
import type { Reading, RecordId, Surface } from '../../core/records/index.ts';
import type {
  CloserLook,
  PanelCheck,
  Review,
  RoundReview,
  Verdict,
} from '../../core/review/index.ts';
import {
  cellLines,
  cellTitle,
  lookLines,
  suspectLine,
  type Speaker,
} from '../words/say-complaint.ts';
import { signed } from '../words/figures.ts';
import { panelInWords } from '../words/say-panel.ts';
import { itemInWords, verdictTitle } from '../words/say-wear.ts';
import { table } from './table.ts';
import type { LanguageFile } from '../words/types.ts';

const fixed = (value: number): string => value.toFixed(2);
const km = (metres: number): string => (metres / 1000).toFixed(1);

/** What is said of one round beside its counts: of its recurring cells, and the verdict. */
export interface RoundLook {
  readonly cells: readonly CloserLook[];
  readonly verdict: Verdict;
}

/**
 * The whole review; ends without a newline.
 * @param looks one for each round, in their order
 */
export const printReview = (
  review: Review,
  looks: readonly RoundLook[],
  panel: PanelCheck,
  spoken: LanguageFile,
): string => {
  const { terminal: words, glossary } = spoken;
  const code = new Map(review.pairs.map((pair) => [pair.id, pair.code]));
  const tester = new Map(review.testers.map((one) => [one.id, one.code]));
  const round = new Map(review.rounds.map((one) => [one.id, one.name]));
  const { size } = review;
  const speaker: Speaker = {
    desk: spoken.desk,
    glossary,
    number: (value, most) => String(Number(value.toFixed(most))),
    distance: (distance) => `${km(distance)} km`,
    tester: (id) => tester.get(id) ?? '?',
    pair: (id) => code.get(id as RecordId) ?? '?',
    round: (id) => round.get(id) ?? '?',
  };
  const blocks = [
    [
      review.project.name,
      words.evidence(size.pairs, size.testers, size.runs, km(size.distanceM)),
      words.brief(km(review.project.brief.distanceM)),
    ].join('\n'),
    heading(words.pairs),
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
        round.get(pair.round) ?? '',
        String(pair.sizeMm),
        km(pair.totalM),
        `${Math.round(100 * pair.shareOfBrief)} %`,
        String(pair.runs),
        Object.entries(pair.bySurface)
          .sort(([, a], [, b]) => b - a)
          .map(
            ([surface, metres]) =>
              `${surface === 'unknown' ? '?' : glossary.surfaces[surface as Surface]} ${km(metres)}`,
          )
          .join(', '),
        (pair.holder && tester.get(pair.holder)) ?? '',
        [
          ...(pair.stopUse ? [words.stopUse] : []),
          ...(pair.outOfTolerance > 0 ? [words.outOfTolerance(pair.outOfTolerance)] : []),
        ].join('; '),
      ]),
    ),
    ...review.rounds.map((one, at) =>
      [complaintsOf(one, spoken), ...recurringOf(one, looks[at]?.cells ?? [], speaker)].join(
        '\n\n',
      ),
    ),
    ...looks.map(({ verdict }) => verdictOf(verdict, review, speaker)),
    benchOf(review, code, spoken),
    deviationsOf(review, code, spoken),
    ...panelOf(panel, speaker),
  ];
  if (review.damages.length > 0)
    blocks.push(
      heading(words.damages),
      review.damages
        .map(({ pair, tester: by, what, at, words: said }) =>
          [code.get(pair), tester.get(by), at, glossary.damages[what], said]
            .filter(Boolean)
            .join('  '),
        )
        .join('\n'),
    );
  if (review.oddities.length > 0)
    blocks.push(
      heading(words.oddities),
      review.oddities.map(({ run, why }) => `${run}  ${words.oddity[why]}`).join('\n'),
    );
  for (const why of ['unknown-kind', 'newer-schema', 'unreadable'] as const) {
    const count = review.leftOut.filter((one) => one.why === why).length;
    if (count > 0) blocks.push(words.leftOut[why](count));
  }
  return blocks.join('\n\n');
};

const placeOf = (
  { measure, site, foot }: Pick<Reading, 'measure' | 'site' | 'foot'>,
  { glossary, phone }: LanguageFile,
): string => `${glossary.measures[measure]}, ${site}, ${phone.foot[foot]}`;

const heading = (text: string): string => `── ${text} ──`;

const complaintsOf = (round: RoundReview, { terminal: words, glossary }: LanguageFile): string => {
  const { asked, cells } = round.complaints;
  const lines = [heading(words.complaints(round.name))];
  if (round.changes.length > 0)
    lines.push(
      `${words.changes}: ` +
        round.changes.map(({ part, what }) => `${glossary.parts[part].name}: ${what}`).join('; '),
    );
  if (asked.runs === 0) return [...lines, words.nobodyAsked].join('\n');
  lines.push(words.asked(asked.runs, asked.testers));
  if (cells.length === 0) return [...lines, words.noComplaint].join('\n');
  lines.push(
    '',
    table(
      [
        { title: words.zone },
        { title: words.complaint },
        { title: words.testersOnce, right: true },
        { title: words.testersTwice, right: true },
        { title: words.reportedRuns, right: true },
        { title: words.leftRight, right: true },
        { title: words.severity, right: true },
        { title: words.proof },
      ],
      cells.map((cell) => [
        `${cell.zone} ${glossary.zones[cell.zone].name}`,
        glossary.kinds[cell.kind].name,
        `${cell.testersOnce}/${asked.testers}`,
        String(cell.testersTwice),
        `${cell.runs}/${asked.runs}`,
        `${cell.byFoot.left}/${cell.byFoot.right}`,
        cell.severity ? `${cell.severity.mean.toFixed(1)} / ${cell.severity.most}` : '–',
        glossary.evidence[cell.word].name,
      ]),
    ),
  );
  return lines.join('\n');
};

/** What recurs, with how sure it is, and when and with whom it comes. */
const recurringOf = (
  round: RoundReview,
  looks: readonly CloserLook[],
  speaker: Speaker,
): string[] =>
  looks.flatMap((look) => {
    const cell = round.complaints.cells.find(
      ({ zone, kind }) => zone === look.cell.zone && kind === look.cell.kind,
    );
    if (!cell) return [];
    return [
      [
        `${cellTitle(cell, speaker)}: ${speaker.glossary.evidence[cell.word].name}`,
        ...[
          ...cellLines(cell, round.complaints, speaker),
          ...lookLines(look, speaker),
          suspectLine(cell, speaker),
        ].map((line) => `  ${line}`),
      ].join('\n'),
    ];
  });

/** A round's verdict, item by item. */
const panelOf = (panel: PanelCheck, speaker: Speaker): string[] => {
  const said = panelInWords(panel, speaker);
  if (!said) return [];
  const { noQuestion, questions, agreement, correlations, error } = said;
  const asked = noQuestion === null ? questions : [noQuestion];
  return [
    heading(speaker.desk.panel.check.title),
    [...asked, agreement, ...correlations.map((line) => `- ${line}`), error].join('\n'),
  ];
};

const verdictOf = (verdict: Verdict, review: Review, speaker: Speaker): string =>
  [
    heading(verdictTitle(verdict, speaker)),
    ...verdict.items.flatMap((item) => {
      const { title, word, lines, settle } = itemInWords(
        item,
        review.project.brief.distanceM,
        speaker,
      );
      return [
        `${title}: ${speaker.glossary.holds[word]}`,
        ...[...lines, ...settle].map((line) => `  ${line}`),
      ];
    }),
  ].join('\n');

const benchOf = (
  review: Review,
  code: ReadonlyMap<string, string>,
  spoken: LanguageFile,
): string => {
  const words = spoken.terminal;
  const worn = review.bench.filter(({ points }) => points.length > 1);
  if (review.bench.length === 0) return `${heading(words.bench)}\n${words.noBench}`;
  return [
    heading(words.bench),
    table(
      [{ title: words.pair }, { title: words.measure }, { title: words.readings }],
      worn.map(({ pair, measure, site, foot, unit, points }) => [
        code.get(pair) ?? '',
        placeOf({ measure, site, foot }, spoken),
        points.map((p) => `${p.value} ${unit} @ ${km(p.distanceM)}`).join('  '),
      ]),
    ),
  ].join('\n');
};

const deviationsOf = (
  review: Review,
  code: ReadonlyMap<string, string>,
  spoken: LanguageFile,
): string => {
  const words = spoken.terminal;
  const outside = review.deviations.filter(({ inside }) => !inside);
  if (outside.length === 0)
    return `${heading(words.deviations)}\n${words.allInside(review.deviations.length)}`;
  return [
    heading(words.deviations),
    table(
      [
        { title: words.pair },
        { title: words.measure },
        { title: words.nominal, right: true },
        { title: words.reading, right: true },
        { title: words.deviation, right: true },
      ],
      outside.map((one) => [
        code.get(one.pair) ?? '',
        placeOf(one, spoken),
        `${one.nominal} ${one.unit} (${signed(one.lower, fixed)} … ${signed(one.upper, fixed)})`,
        `${one.value} ${one.unit}`,
        signed(one.deviation, fixed),
      ]),
    ),
  ].join('\n');
};
