/** How a trade's measures wear: how much by which kilometre, whether it lasts, which pair most, what is measured next. */
import { tradeData } from '../../core/foot/index.ts';
import { stampOf } from '../../core/headlines/index.ts';
import type {
  PairLine,
  RoundReport,
  Settle,
  VerdictItem,
  WearLook,
} from '../../core/review/index.ts';
import { scaleOf } from '../../core/wear/index.ts';
import { percentOf, signed } from '../words/figures.ts';
import { siteName } from '../words/say-place.ts';
import { bareOf, measureOf, placeTitle, unitName } from '../words/say-wear.ts';
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

/** A change as a share, or in the place's unit where its scale has no zero. */
const changed = (from: number, to: number, look: WearLook, { speaker }: Spoken): string =>
  scaleOf(look.kind) === 'ratio'
    ? signed(to / from - 1, (share) => percentOf(share, speaker.number))
    : signed(to - from, (by) => bareOf(by, look, speaker));

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
      spoken,
    ),
  ];
};

interface Open {
  readonly look: WearLook;
  readonly settle: Settle;
}

/** What is measured next, by place; one visit to the bench that answers several limits is said once. */
const nextOf = (open: readonly Open[], spoken: Spoken): readonly string[] => {
  const { paper, list } = spoken;
  const said = open.flatMap(({ look, settle }) => {
    const line = settleWords(settle, spoken);
    const of =
      settle.by === 'measure' ? `${settle.atM} ${pairsOf(settle, spoken).join(' ')}` : line;
    return line === null ? [] : [{ line, of, place: placeWords(look, spoken) }];
  });
  return [...new Map(said.map((one) => [one.of, one])).values()].map(({ line, of }) =>
    paper.sheet.next(list(said.filter((one) => one.of === of).map(({ place }) => place)), line),
  );
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
      const { expected, pair, atM } = settle;
      const when =
        expected.when === 'later' || expected.when === 'if-resumed'
          ? settles.about(date(expected.atMs), expected.when === 'if-resumed')
          : expected.when === 'comes-back-first'
            ? settles.comesBack(date(expected.atMs))
            : settles.when[expected.when];
      return settles.measure(
        pairsOf(settle, spoken),
        far(atM),
        settle.also.length > 0 ? settles.whose(speaker.pair(pair), when) : when,
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
