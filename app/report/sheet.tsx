/** The sheet of one trade: what is wanted of it, and its own data even where no finding is addressed to it. */
import { tradeOf, zones, type Trade } from '../../core/foot/index.ts';
import { decisionRows, rowsOfTrade } from '../../core/headlines/index.ts';
import { cellsOfTrade, type CellSummary, type RoundReport } from '../../core/review/index.ts';
import { ActsTable } from './acts-table.tsx';
import { TradeChanges } from './one-change.tsx';
import { MapKey, ReportMap } from './complaints-part.tsx';
import type { SheetProps } from './document-props.ts';
import { besideLimits, limitRows, measureAsked } from './limit-rows.ts';
import { FindingNotes } from './findings-part.tsx';
import { clearlyOff, offRows, offSentence } from './off-rows.ts';
import { rowName } from './row-words.ts';
import { ArrivalTable, Damages, LayersTable, PairTable, SurfacesLine } from './sheet-bench.tsx';
import { ComfortTable, ComplaintTable, TwoSidedOfTrade } from './sheet-parts.tsx';
import { WearOfTrade } from './sheet-wear.tsx';
import { linesOfWords, WordsOfTesters } from './sheet-words.tsx';
import { SoleLines } from './sole-line.tsx';
import { Say, type Spoken } from './spoken.tsx';

const ofTrade =
  (trade: Trade) =>
  ({ body }: RoundReport['findings'][number]): boolean =>
    tradeOf[body.part] === trade;

/** The sheet's first line: never more than the rows of its first table say. */
export const headlineOf = (props: SheetProps, spoken: Spoken): string => {
  const { report, trade } = props;
  const words = spoken.paper.sheet.headline;
  const own = decisionRows(report).filter(({ finding }) => finding && ofTrade(trade)(finding));
  const change = own.filter(({ act }) => act === 'change');
  const findings = report.findings.filter(ofTrade(trade)).length;
  const measure = measureAsked(limitRows(props), spoken);
  const off = clearlyOff(props).map((one) => offSentence(one, spoken));
  const asked = [...off, ...(measure === null ? [] : [measure])];
  const said = (...some: readonly string[]) => spoken.paper.sentences(some);
  if (change.length > 0)
    return said(
      words.change(
        spoken.list([...new Set(change.slice(0, 3).map((row) => rowName(row, spoken)))]),
      ),
      ...asked,
    );
  if (findings > 0) return said(words.finding(findings), ...asked);
  const cell = cellsOfTrade(report.round.complaints.cells, trade).find(
    ({ testersOnce }) => testersOnce >= 2,
  );
  return said(
    words.quiet,
    ...asked,
    // What is clear says more than what is only watched.
    ...(cell && off.length === 0
      ? [
          words.watch(
            spoken.paper.felt(
              spoken.speaker.glossary.kinds[cell.kind].name,
              spoken.paper.places[cell.zone],
            ),
          ),
        ]
      : []),
  );
};

/** So many lines of words leave room beside the map for the comfort. */
const LINES_BESIDE_COMFORT = 3;

/** @param props.under what stands below the title, where the sheet is a report by itself */
export const Sheet = (props: SheetProps & { readonly under?: (spoken: Spoken) => string }) => {
  const { report, languages, trade, under } = props;
  const own = ofTrade(trade);
  const cells = cellsOfTrade(report.round.complaints.cells, trade);
  const limits = limitRows(props);
  const off = offRows(props);
  const rows = besideLimits(rowsOfTrade(decisionRows(report), trade), limits);
  // In two languages, and where they are many, the words beside the map are as tall as it is.
  const isBeside =
    languages.length === 1 && linesOfWords({ ...props, cells }) <= LINES_BESIDE_COMFORT;
  return (
    <section class="sheet">
      <h2 class="page-title">
        <Say
          in={languages}
          of={(spoken) =>
            spoken.speaker.desk.joined.of(spoken.paper.for[trade], headlineOf(props, spoken))
          }
        />
      </h2>
      {under && (
        <p class="soft">
          <Say in={languages} of={under} />
        </p>
      )}
      <SoleLines {...props} />
      {rows.length + limits.length + off.length > 0 && (
        <ActsTable {...{ languages, rows, off }} of={{ report, trade, limits }} />
      )}
      <FindingNotes
        {...props}
        findings={report.findings.filter(own)}
        said={new Set(rows.flatMap(({ finding }) => finding?.id ?? []))}
      />
      <TradeChanges {...props} carried={report.carried.filter(own)} />
      <ComplaintTable {...props} cells={cells} />
      <div class="felt">
        <Map {...props} cells={cells} />
        <div>
          <WordsOfTesters {...props} cells={cells} />
          {isBeside && <ComfortTable {...props} />}
        </div>
      </div>
      <TwoSidedOfTrade {...props} />
      {!isBeside && <ComfortTable {...props} />}
      <WearOfTrade {...props} />
      <SurfacesLine {...props} />
      <ArrivalTable {...props} />
      <LayersTable {...props} />
      <Damages {...props} />
      <PairTable {...props} />
    </section>
  );
};

/** The map of the complaint that its first finding is about, else of the one that most runs reported. */
const Map = (props: SheetProps & { readonly cells: readonly CellSummary[] }) => {
  const { report, languages, cells, trade } = props;
  const asked = report.findings
    .filter(ofTrade(trade))
    .flatMap(({ body: { kind, zone } }) => (kind && zone ? [{ kind, zone }] : []));
  const cell = [...asked, ...cells].find(({ kind }) =>
    ['left', 'right'].some((foot) => (report.zonesByKind[kind]?.[foot as 'left'].length ?? 0) > 0),
  );
  const own = cell && report.zonesByKind[cell.kind];
  if (!cell || !own) return null;
  return (
    <section class="whole">
      <h3>
        <Say
          in={languages}
          of={({ paper, speaker }) =>
            paper.mapTitle(
              speaker.glossary.kinds[cell.kind].name,
              report.round.complaints.asked.testers,
            )
          }
        />
      </h3>
      <ReportMap
        {...{ report, languages }}
        view={zones[cell.zone].view}
        zones={own}
        marked={cell.zone}
      />
      <MapKey {...{ report, languages }} view={zones[cell.zone].view} zones={own} />
    </section>
  );
};
