/** The review of a project as text: the same figures as the desk's, in tables. */
import type { Reading, RecordId, Surface } from '../../core/records/index.ts';
import {
  isOutOfTolerance,
  type CloserLook,
  type FeetLook,
  type PanelCheck,
  type Review,
  type RoundComparison,
  type RoundReview,
  type Verdict,
} from '../../core/review/index.ts';
import { isOut, type LayersAndHeat } from '../../core/rounds/index.ts';
import {
  cellLines,
  cellTitle,
  lookLines,
  suspectLine,
  type Speaker,
} from '../words/say-complaint.ts';
import {
  benchTexts,
  changeTitle,
  comparisonLines,
  feltTitle,
  knewLine,
  riseLine,
} from '../words/say-change.ts';
import { chanceOf, languageIn, percentOf, signed } from '../words/figures.ts';
import {
  decisionInWords,
  feetLines,
  gaugeLines,
  layersLine,
  summaryLine,
  toleranceInWords,
} from '../words/say-blueprint.ts';
import { panelInWords } from '../words/say-panel.ts';
import { itemInWords, verdictTitle } from '../words/say-wear.ts';
import { table } from './table.ts';
import type { LanguageFile } from '../words/types.ts';

const fixed = (value: number): string => value.toFixed(2);
const km = (metres: number): string => (metres / 1000).toFixed(1);

/** What is said of one round beside its counts: of its recurring cells, the verdict, and what changed. */
export interface RoundLook {
  readonly cells: readonly CloserLook[];
  readonly verdict: Verdict;
  /** Against the round before; null for the first. */
  readonly against: RoundComparison | null;
  /** Null: no layers were counted. */
  readonly layers: LayersAndHeat | null;
}

/**
 * The whole review; ends without a newline.
 * @param looks one for each round, in their order
 */
export const printReview = (
  review: Review,
  looks: readonly RoundLook[],
  feet: FeetLook,
  panel: PanelCheck,
  spoken: LanguageFile,
): string => {
  const { terminal: words, glossary } = spoken;
  const said = spoken.desk.blueprint;
  // A pair out of tolerance is marked wherever it is named.
  const code = new Map(
    review.pairs.map((pair) => [
      pair.id,
      isOutOfTolerance(pair.outOfTolerance) ? `${pair.code} (${said.mark})` : pair.code,
    ]),
  );
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
    foot: (foot) => spoken.phone.foot[foot],
    language: (tag) => languageIn(tag, spoken.about.locale),
  };
  const blocks = [
    [
      review.project.name,
      words.evidence(size.pairs, size.testers, size.runs, km(size.distanceM)),
      words.brief(km(review.project.brief.distanceM)),
      ...(review.without === null
        ? []
        : [
            review.without.length === 0
              ? said.withoutNone
              : said.without(
                  review.without.length,
                  review.without.map((pair) => pair.code).join(', '),
                ),
          ]),
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
        [pair.stopUse ? words.stopUse : '', toleranceInWords(pair.outOfTolerance, spoken.desk)]
          .filter(Boolean)
          .join('; '),
      ]),
    ),
    ...review.rounds.map((one, at) =>
      [complaintsOf(one, spoken), ...recurringOf(one, looks[at]?.cells ?? [], speaker)].join(
        '\n\n',
      ),
    ),
    ...looks.map(({ verdict }) => verdictOf(verdict, review, speaker)),
    ...looks.flatMap(({ against }) => (against ? [changesOf(against, speaker)] : [])),
    benchOf(review, code, spoken),
    deviationsOf(review, spoken, speaker),
    sidesOf(review, spoken, speaker),
    gaugesOf(review, speaker),
    ...looks.flatMap(({ layers }, at) =>
      layers ? [layersOf(layers, review.rounds[at]?.name ?? '', speaker)] : [],
    ),
    [heading(said.feet), ...feetLines(feet, speaker)].join('\n'),
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

/** What the changes from one round to the next did. */
const changesOf = (found: RoundComparison, speaker: Speaker): string => {
  const { changes: words, comfort } = speaker.desk;
  const { glossary } = speaker;
  const [earlier, later] = [speaker.round(found.earlier), speaker.round(found.later)];
  const { both, onlyEarlier, onlyLater } = found.testers;
  const knew = knewLine(found, speaker);
  const whole = (value: number) => signed(value, (size) => size.toFixed(0));
  const comfortLines = (
    [
      ['same', words.comfortSame],
      ['onlyOne', words.comfortOne],
    ] as const
  ).flatMap(([who, title]) => {
    const lines = found.comfort[who].map(
      ({ attribute, difference, interval, word, by, testers }) =>
        `  ${glossary.attributes[attribute].name}: ${whole(difference)}${
          interval ? ` (${whole(interval.lower)} … ${whole(interval.upper)})` : ''
        }, ${glossary.comfortChanges[word]} (n ${testers}, ${comfort.by[by]})`,
    );
    return lines.length > 0 ? [title, ...lines] : [];
  });
  const rises = found.cells.flatMap((cell) =>
    cell.word === null ? [] : [`  ${words.newWords[cell.word]}: ${riseLine(cell, speaker)}`],
  );
  const bench = found.bench.map((change) => {
    const { place, earlier: from, later: to, difference, word } = benchTexts(change, speaker);
    return `  ${place}: ${from} → ${to}, ${difference}, ${word}`;
  });
  return [
    heading(words.against(later, earlier)),
    words.worn(both, earlier, onlyEarlier, later, onlyLater),
    ...(knew ? [knew] : []),
    ...(found.changes.length === 0 ? [words.noChanges] : []),
    ...found.changes.flatMap((change) => {
      const title = changeTitle(change, speaker);
      if (!change.found || !change.mends) return [title, `  ${words.mendsNothing}`];
      return [
        `${title}: ${glossary.changeVerdicts[change.found.verdict].name}`,
        ...[
          words.mends(feltTitle(change.mends, speaker)),
          ...comparisonLines(change.found, found, speaker),
        ].map((line) => `  ${line}`),
      ];
    }),
    words.newTitle,
    ...(rises.length > 0 ? rises : [`  ${words.nothingNew}`]),
    ...(comfortLines.length > 0 ? comfortLines : [words.noComfort]),
    ...(bench.length > 0 ? [words.bench, ...bench] : [words.noBench]),
    ...(found.measuredLate > 0 ? [`  ${words.measuredLate(found.measuredLate)}`] : []),
  ].join('\n');
};

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

/** What is out or undecided on arrival; the rest is counted. */
const deviationsOf = (review: Review, spoken: LanguageFile, speaker: Speaker): string => {
  const words = spoken.terminal;
  const said = spoken.desk.blueprint;
  const code = new Map(review.pairs.map((pair) => [pair.id, pair.code]));
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
              { title: said.guard, right: true },
              { title: said.chance, right: true },
              { title: said.decision },
            ],
            wanted.map((one) => [
              code.get(one.pair) ?? '',
              placeOf(one, spoken),
              `${one.nominal} ${one.unit} (${signed(one.lower, fixed)} … ${signed(one.upper, fixed)})`,
              `${fixed(one.value)} ${one.unit}`,
              signed(one.deviation, fixed),
              one.guard === null ? '–' : fixed(one.guard),
              one.chance === null ? '–' : chanceOf(one.chance, speaker.number),
              decisionInWords(one, speaker),
            ]),
          ),
        ]),
  ].join('\n');
};

/** Left against right on arrival, where it is out or undecided. */
const sidesOf = (review: Review, spoken: LanguageFile, speaker: Speaker): string => {
  const said = spoken.desk.blueprint;
  const code = new Map(review.pairs.map((pair) => [pair.id, pair.code]));
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
        code.get(one.pair) ?? '',
        `${spoken.glossary.measures[one.measure]}, ${one.site}`,
        `${signed(one.difference, fixed)} ${one.unit}`,
        `± ${fixed(one.allowed)} (${said.allowedFrom[one.allowedFrom]})`,
        decisionInWords(one, speaker),
      ]),
    ),
  ].join('\n');
};

const gaugesOf = (review: Review, speaker: Speaker): string => {
  const said = speaker.desk.blueprint;
  return [
    heading(said.gauges),
    ...(review.gauges.length === 0 ? [said.gaugesNone] : []),
    ...review.gauges.flatMap((one) => [
      said.gaugeOf(
        one.gauge,
        `${speaker.glossary.measures[one.measure]}, ${one.site ?? said.anySite}`,
        one.at.slice(0, 10),
      ),
      ...gaugeLines(one, speaker).map((line) => `  ${line}`),
    ]),
  ].join('\n');
};

const layersOf = (layers: LayersAndHeat, round: string, speaker: Speaker): string => {
  const said = speaker.desk.blueprint;
  const percent = (share: number) => percentOf(share, speaker.number);
  return [
    heading(`${said.layersTitle}, ${round}`),
    layersLine(layers, speaker),
    ...(layers.askedRuns === 0
      ? []
      : [
          table(
            [
              { title: said.layersZone },
              { title: said.layersCount, right: true },
              { title: said.layersRuns, right: true },
              { title: said.layersTesters, right: true },
            ],
            layers.zones.map(({ zone, layers: count, runs, runShare, testers, testerShare }) => [
              `${zone} ${speaker.glossary.zones[zone].name}`,
              String(count),
              `${runs}/${layers.askedRuns} (${percent(runShare?.lower ?? 0)} … ${percent(runShare?.upper ?? 1)})`,
              `${testers}/${layers.askedTesters} (${percent(testerShare?.lower ?? 0)} … ${percent(testerShare?.upper ?? 1)})`,
            ]),
          ),
        ]),
  ].join('\n');
};
