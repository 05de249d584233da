/** The sheet of one trade: what is wanted of it, and its own data even where no finding is addressed to it. */
import { tradeOf, tradesOfComplaint, zones, type Trade } from '../../core/foot/index.ts';
import { decisionRows } from '../../core/headlines/index.ts';
import type { CellSummary, RoundReport } from '../../core/review/index.ts';
import { ReportMap } from './complaints-part.tsx';
import type { SheetProps } from './document-props.ts';
import { Findings } from './findings-part.tsx';
import { rowName } from './row-words.ts';
import { ArrivalTable, Damages, LayersTable, PairTable } from './sheet-bench.tsx';
import {
  ComfortTable,
  ComplaintTable,
  Curves,
  TwoSidedOfTrade,
  WordsOfTesters,
} from './sheet-parts.tsx';
import { Say, type Spoken } from './spoken.tsx';

/** What was felt that usually points to the trade, most runs first. */
export const cellsOf = ({ round }: RoundReport, trade: Trade): readonly CellSummary[] =>
  round.complaints.cells
    .filter(({ kind, zone }) => tradesOfComplaint(kind, zone).includes(trade))
    .sort((a, b) => b.runs - a.runs);

const ofTrade =
  (trade: Trade) =>
  ({ body }: RoundReport['findings'][number]): boolean =>
    tradeOf[body.part] === trade;

/** The sheet's first line: never more than the rows of the first page say of it. */
const headlineOf = ({ report, trade }: SheetProps, spoken: Spoken): string => {
  const words = spoken.paper.sheet.headline;
  const own = decisionRows(report).filter(({ finding }) => finding && ofTrade(trade)(finding));
  const change = own.filter(({ act }) => act === 'change');
  if (change.length > 0)
    return words.change(
      spoken.list([...new Set(change.slice(0, 3).map((row) => rowName(row, spoken)))]),
    );
  const findings = report.findings.filter(ofTrade(trade)).length;
  if (findings > 0) return words.finding(findings);
  const cell = cellsOf(report, trade).find(({ testersOnce }) => testersOnce >= 2);
  return cell
    ? words.felt(
        spoken.paper.felt(
          spoken.speaker.glossary.kinds[cell.kind].name,
          spoken.paper.places[cell.zone],
        ),
      )
    : words.quiet;
};

export const Sheet = (props: SheetProps) => {
  const { report, languages, trade } = props;
  const own = ofTrade(trade);
  const carried = report.carried.filter(own);
  const cells = cellsOf(report, trade);
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
      <Findings {...props} findings={report.findings.filter(own)} heading="findings" short />
      {carried.length > 0 && <Findings {...props} findings={carried} heading="carried" short />}
      <ComplaintTable {...props} cells={cells} />
      <div class="felt whole">
        <Map {...props} cells={cells} />
        <WordsOfTesters {...props} cells={cells} />
      </div>
      <Curves {...props} />
      <TwoSidedOfTrade {...props} />
      <ComfortTable {...props} />
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
  const asked = [...report.findings, ...report.carried]
    .filter(ofTrade(trade))
    .flatMap(({ body: { kind, zone } }) => (kind && zone ? [{ kind, zone }] : []));
  const cell = [...asked, ...cells].find(({ kind }) => report.zonesByKind[kind] !== undefined);
  const own = cell && report.zonesByKind[cell.kind];
  if (!cell || !own) return null;
  return (
    <section>
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
        report={report}
        languages={languages}
        view={zones[cell.zone].view}
        zones={own}
        marked={cell.zone}
      />
    </section>
  );
};
