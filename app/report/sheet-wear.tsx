/** How a trade's measures wear: how much by which kilometre, whether it lasts, which pair most. */
import { tradeData } from '../../core/foot/index.ts';
import { stampOf } from '../../core/headlines/index.ts';
import type { PairLine, RoundReport, WearLook } from '../../core/review/index.ts';
import { bareOf, placeTitle, unitName } from '../words/say-wear.ts';
import type { SheetProps } from './document-props.ts';
import { asked } from './limit-strip.tsx';
import { PaperCurve } from './paper-curve.tsx';
import { Heading, ofTrade } from './sheet-parts.tsx';
import { Lines, Say, type Spoken } from './spoken.tsx';
import { Table } from './table.tsx';
import { changed, changedBy, curvesOf, itemsOf, placeWords, reachedWords } from './wear-words.ts';

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
      <p class="curve-key">
        <Say in={languages} of={({ paper }) => paper.curveKey} />
      </p>
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

/** Which pair changed most, and whether one stands apart. */
const notesOf = (
  report: RoundReport,
  curves: readonly WearLook[],
  spoken: Spoken,
): readonly string[] => {
  const limited = curves.filter((look) => itemsOf(report, look).length > 0);
  const told = limited.length > 0 ? limited : curves.slice(0, 1);
  return told.flatMap((look) => mostChanged(report.lines, look, spoken) ?? []);
};

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
