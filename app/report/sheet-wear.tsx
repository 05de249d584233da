/** How a trade's measures wear: how much by which kilometre, whether it lasts, which pair most, what is measured next. */
import { tradeData } from '../../core/foot/index.ts';
import { stampOf } from '../../core/headlines/index.ts';
import type {
  Expected,
  PairLine,
  RoundReport,
  Settle,
  VerdictItem,
  WearLook,
} from '../../core/review/index.ts';
import { metres, type Metres } from '../../core/units/index.ts';
import { scaleOf } from '../../core/wear/index.ts';
import { percentOf, signed } from '../words/figures.ts';
import { siteName } from '../words/say-place.ts';
import { asWritten, bareOf, measureOf, placeTitle, unitName } from '../words/say-wear.ts';
import type { SheetProps } from './document-props.ts';
import { asked } from './limit-strip.tsx';
import { PaperCurve } from './paper-curve.tsx';
import { Heading, ofTrade } from './sheet-parts.tsx';
import { Lines, Say, type Spoken } from './spoken.tsx';
import { Table } from './table.tsx';

type WearItem = Extract<VerdictItem, { what: 'wear' }>;

/** The curves that are the trade's own. */
const curvesOf = ({ report, trade }: SheetProps): readonly WearLook[] =>
  report.curves.filter(({ kind }) => tradeData(trade).wear.includes(kind));

/** The verdict's items about a curve, each with what would settle it. */
const itemsOf = (
  { verdict, settles }: RoundReport,
  { kind, site }: WearLook,
): readonly { readonly item: WearItem; readonly settle: Settle | null }[] =>
  verdict.items.flatMap((item, at) =>
    item.what === 'wear' && item.kind === kind && item.site === site
      ? [{ item, settle: settles[at] ?? null }]
      : [],
  );

/** A change as a share, or in the place's unit where its scale has no zero; of the values as they are written beside it. */
const changed = (before: number, after: number, look: WearLook, { speaker }: Spoken): string => {
  const [from, to] = [asWritten(before, look), asWritten(after, look)];
  return scaleOf(look.kind) === 'ratio'
    ? signed(to / from - 1, (share) => percentOf(share, speaker.number))
    : signed(to - from, (by) => bareOf(by, look, speaker));
};

/** The same in a sentence, where no column names the unit. */
const changedBy = (from: number, to: number, look: WearLook, spoken: Spoken): string => {
  const change = changed(from, to, look, spoken);
  return scaleOf(look.kind) === 'ratio'
    ? change
    : `${change}\u00a0${unitName(look, spoken.speaker)}`;
};

const placeWords = ({ kind, site }: WearLook, { paper, speaker }: Spoken): string =>
  paper.wearAt(speaker.glossary.measures[measureOf(kind)], siteName(site, speaker));

/** By when the limit is reached, as far as the checks tell. */
const reachedWords = (
  { distance }: WearItem,
  look: WearLook,
  { paper: { sheet }, far }: Spoken,
): string => {
  if (!distance) return '';
  const { lower, median } = distance;
  return typeof median === 'number'
    ? sheet.reached.about(far(median))
    : typeof lower === 'number'
      ? sheet.reached.after(far(lower))
      : sheet.reached.after(far(look.reach));
};

export const WearOfTrade = (props: SheetProps) => {
  const { report, languages, trade } = props;
  const curves = curvesOf(props);
  if (curves.length === 0)
    return tradeData(trade).wear.length === 0 ? null : (
      <section class="whole">
        <Heading languages={languages} of={({ paper }) => paper.sheet.curves} />
        <p>
          <Say in={languages} of={({ paper }) => paper.sheet.nothingMeasured} />
        </p>
      </section>
    );
  return (
    <section class="wear">
      <Heading languages={languages} of={({ paper }) => paper.sheet.curves} />
      <WearTable {...props} curves={curves} />
      <p class="key">
        <Say in={languages} of={(spoken) => wearKey(curves, report, spoken)} />
      </p>
      <Lines in={languages} of={(spoken) => notesOf(report, curves, spoken)} />
      <div class="curves">
        {curves.map((look) => (
          <PaperCurve
            key={`${look.kind} ${look.site}`}
            report={report}
            languages={languages}
            look={look}
          />
        ))}
      </div>
      <p class="key">
        <Say in={languages} of={({ paper }) => paper.curveKey} />
      </p>
    </section>
  );
};

/** Whose values the table tells, and how far the checks tell anything where a row ends there. */
const wearKey = (
  curves: readonly WearLook[],
  { project }: RoundReport,
  { paper, far, list }: Spoken,
): string => {
  const ends = curves.filter(({ reach }) => reach < project.brief.distanceM);
  const distances = [...new Set(ends.map(({ reach }) => far(reach)))];
  return paper.sentences([
    paper.sheet.wearKey,
    ...(distances.length > 0 ? [paper.sheet.reach(list(distances))] : []),
  ]);
};

const WearTable = ({
  report,
  languages,
  trade,
  curves,
}: SheetProps & { readonly curves: readonly WearLook[] }) => {
  const briefM = report.project.brief.distanceM;
  const columns = ['what', 'new', 'now', 'change', 'brief', 'limit', 'sure'] as const;
  return (
    <Table
      languages={languages}
      title={(spoken) => ofTrade(spoken, trade, spoken.paper.sheet.curves)}
      columns={columns.map(
        (column) =>
          ({ paper, far }: Spoken) =>
            column === 'brief'
              ? paper.sheet.wearColumns.brief(far(briefM))
              : paper.sheet.wearColumns[column],
      )}
      rows={curves.map((look) => {
        const start = look.curve?.[0]?.median;
        const now = look.atGreatest?.median;
        const there = look.atBrief?.value;
        const own = itemsOf(report, look);
        return [
          ({ speaker }: Spoken) =>
            speaker.desk.joined.clauses([placeTitle(look, speaker), unitName(look, speaker)]),
          ({ speaker }: Spoken) => (start === undefined ? '–' : bareOf(start, look, speaker)),
          ({ paper, speaker, far }: Spoken) =>
            now === undefined
              ? '–'
              : paper.sheet.valueAt(bareOf(now, look, speaker), far(look.greatest)),
          (spoken: Spoken) =>
            start === undefined || now === undefined ? '–' : changed(start, now, look, spoken),
          ({ paper, speaker }: Spoken) =>
            there
              ? paper.sheet.expects(
                  bareOf(there.median, look, speaker),
                  bareOf(there.lower, look, speaker),
                  bareOf(there.upper, look, speaker),
                )
              : paper.sheet.tooFar,
          (spoken: Spoken) =>
            own.length === 0
              ? spoken.paper.sheet.noLimit
              : own
                  .map(({ item }) =>
                    spoken.speaker.desk.joined.clauses(
                      [asked(item.limit, spoken), reachedWords(item, look, spoken)].filter(
                        (one) => one !== '',
                      ),
                    ),
                  )
                  .join(' '),
          ({ paper }: Spoken) =>
            own.length === 0
              ? '–'
              : own.map(({ item }) => paper.sure[stampOf(item.word)]).join(' '),
        ];
      })}
    />
  );
};

/** Which pair changed most, whether one stands apart, and what is measured next. */
const notesOf = (
  report: RoundReport,
  curves: readonly WearLook[],
  spoken: Spoken,
): readonly string[] => {
  const limited = curves.filter((look) => itemsOf(report, look).length > 0);
  const told = limited.length > 0 ? limited : curves.slice(0, 1);
  return [
    ...told.flatMap((look) => mostChanged(report.lines, look, spoken) ?? []),
    ...nextOf(
      limited.flatMap((look) =>
        itemsOf(report, look).flatMap(({ settle }) => (settle ? [{ look, settle }] : [])),
      ),
      report.project.brief.distanceM,
      spoken,
    ),
  ];
};

interface Open {
  readonly look: WearLook;
  readonly settle: Settle;
}

/** What is measured next, by place; one visit to the bench that answers several limits is said once. */
const nextOf = (open: readonly Open[], briefM: Metres, spoken: Spoken): readonly string[] => {
  const { paper, list } = spoken;
  const said = open.flatMap(({ look, settle }) => {
    const line = settleWords(settle, spoken);
    const of =
      settle.by === 'measure' ? `${settle.atM} ${pairsOf(settle, spoken).join(' ')}` : line;
    return line === null ? [] : [{ line, of, settle, place: placeWords(look, spoken) }];
  });
  return [...new Map(said.map((one) => [one.of, one])).values()].map(({ line, of, settle }) =>
    paper.sentences([
      paper.sheet.next(list(said.filter((one) => one.of === of).map(({ place }) => place)), line),
      ...(settle.by === 'measure' ? [whyThere(settle.atM, briefM, spoken)] : []),
    ]),
  );
};

/** Why the next check is where it is: of half-way to the brief's distance and the distance itself, the first that tells enough. */
const whyThere = (atM: Metres, briefM: Metres, { paper, far }: Spoken): string =>
  atM < briefM ? paper.sheet.settles.halfWay(far(briefM)) : paper.sheet.settles.atBrief;

/** Where the soonest check lies that would settle a limit of the trade's; null: none would. */
export const nextCheckOf = (props: SheetProps): Metres | null => {
  const all = curvesOf(props).flatMap((look) =>
    itemsOf(props.report, look).flatMap(({ settle }) =>
      settle?.by === 'measure' ? [settle.atM] : [],
    ),
  );
  return all.length === 0 ? null : metres(Math.min(...all));
};

/** All pairs of a visit, by code. */
const pairsOf = (
  { pair, also }: Extract<Settle, { by: 'measure' }>,
  { speaker }: Spoken,
): readonly string[] => [pair, ...also].map(speaker.pair).toSorted();

/** The pairs that were checked twice, the most changed first. */
export const byChange = (
  lines: readonly PairLine[],
  { kind, site }: Pick<WearLook, 'kind' | 'site'>,
) =>
  lines
    .flatMap(({ pair, readings }) => {
      const own = readings.find(
        (one) => `${one.measure} ${one.unit}` === kind && one.site === site,
      );
      return own?.last ? [{ pair, from: own.first.value, to: own.last.value, m: own.last.m }] : [];
    })
    .sort((a, b) => Math.abs(b.to / b.from - 1) - Math.abs(a.to / a.from - 1));

const MOST_PAIRS = 4;

const mostChanged = (lines: readonly PairLine[], look: WearLook, spoken: Spoken): string | null => {
  const { paper, speaker, far } = spoken;
  const pairs = byChange(lines, look);
  if (pairs.length < 2) return null;
  return paper.sentences([
    paper.sheet.mostChanged(
      placeWords(look, spoken),
      speaker.desk.joined.names(
        pairs
          .slice(0, MOST_PAIRS)
          .map(({ pair, from, to, m }) =>
            paper.sheet.pairChange(speaker.pair(pair), changedBy(from, to, look, spoken), far(m)),
          ),
      ),
    ),
    ...(look.outlying.length > 0
      ? [
          paper.sheet.apart(
            speaker.desk.joined.names(
              look.outlying.map((one) => speaker.pair(one.pair as PairLine['pair'])),
            ),
          ),
        ]
      : pairs.length >= 3
        ? [paper.sheet.noneApart]
        : []),
  ]);
};

/** What is to be measured next; null where that is no check. */
const settleWords = (settle: Settle, spoken: Spoken): string | null => {
  const { paper, speaker, far, date } = spoken;
  const { settles } = paper.sheet;
  switch (settle.by) {
    case 'measure': {
      const visits = [
        { pair: settle.pair, expected: settle.expected },
        ...settle.also.map((pair, at) => ({
          pair,
          expected: settle.expectedOfAlso[at] ?? { when: 'not-known' as const },
        })),
      ].map(({ pair, expected }) => ({ code: speaker.pair(pair), expected }));
      const when = (expected: Expected): string =>
        expected.when === 'later' || expected.when === 'if-resumed'
          ? settles.about(date(expected.atMs), expected.when === 'if-resumed')
          : expected.when === 'comes-back-first'
            ? settles.comesBack(date(expected.atMs))
            : settles.when[expected.when];
      return settles.measure(
        visits
          .toSorted((a, b) => (a.code < b.code ? -1 : 1))
          .map(({ code, expected }) => settles.whose(code, when(expected))),
        far(settle.atM),
        spoken.list,
      );
    }
    case 'look-at-pair':
      return settles.lookAtPair(speaker.pair(settle.pair));
    case 'look-at-reading':
      return settles.lookAtReading(speaker.pair(settle.pair), far(settle.atM));
    case 'pairs-differ':
      return settles.pairsDiffer;
    case 'change':
      return settles.change;
    case 'measure-first':
    case 'run-pairs':
    case 'ask-testers':
    case 'decide-by-reports':
    case 'ask-at':
    case 'lift-or-keep':
      return null;
  }
};
