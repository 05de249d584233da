/** A trade's own data: what is felt, and how comfortable it is. */
import {
  kindsOfTrade,
  tradeData,
  type ComfortAttributeId,
  type Trade,
} from '../../core/foot/index.ts';
import { surenessOf } from '../../core/complaints/index.ts';
import type { CellSummary, ComfortRound } from '../../core/review/index.ts';
import { signed } from '../words/figures.ts';
import type { SheetProps } from './document-props.ts';
import { twoSidedOf } from './off-rows.ts';
import { Say, type Languages, type Spoken } from './spoken.tsx';
import { Table } from './table.tsx';
import { TwoSidedTable } from './two-sided-table.tsx';

export type CellsProps = SheetProps & { readonly cells: readonly CellSummary[] };

/** Beyond these a sheet is read by nobody; the appendix and the tables have them all. */
const MOST_CELLS = 8;

/** What a table of a sheet is called where several trades have one. */
export const ofTrade = ({ speaker }: Spoken, trade: Trade, title: string): string =>
  speaker.desk.joined.clauses([title, speaker.glossary.trades[trade]]);

export const Heading = ({
  languages,
  of,
}: {
  readonly languages: Languages;
  readonly of: (spoken: Spoken) => string;
}) => (
  <h3>
    <Say in={languages} of={of} />
  </h3>
);

/** Complaints that usually point to the trade; in which round before, on which foot and from where on. */
export const ComplaintTable = ({ report, languages, cells, trade }: CellsProps) => {
  const { asked } = report.round.complaints;
  const { story } = report;
  const same = (cell: CellSummary) => (one: { readonly zone: string; readonly kind: string }) =>
    one.zone === cell.zone && one.kind === cell.kind;
  const before = (cell: CellSummary) => story?.felt.find(same(cell))?.earlier;
  return (
    <section class={cells.length <= MOST_CELLS ? 'whole' : ''}>
      <Heading languages={languages} of={({ paper }) => paper.sheet.complaints} />
      {cells.length > 0 && (
        <Table
          languages={languages}
          title={(spoken) => ofTrade(spoken, trade, spoken.paper.sheet.complaints)}
          columns={[
            ({ paper }) => paper.sheet.complaintColumns.what,
            ({ paper }) => paper.sheet.complaintColumns.testers,
            ({ paper }) => paper.sheet.complaintColumns.runs,
            ...(story ? [({ speaker }: Spoken) => speaker.round(story.comparison.earlier)] : []),
            ({ paper }) => paper.sheet.complaintColumns.feet,
            ({ paper }) => paper.sheet.complaintColumns.onPair,
            ({ paper }) => paper.sheet.complaintColumns.inRun,
            ({ paper }) => paper.sheet.complaintColumns.sure,
          ]}
          rows={cells.slice(0, MOST_CELLS).map((cell) => {
            const from = report.from.find(same(cell));
            const earlier = before(cell);
            return [
              ({ paper, speaker }: Spoken) =>
                speaker.desk.joined.clauses([
                  paper.felt(speaker.glossary.kinds[cell.kind].name, paper.places[cell.zone]),
                  ...report.skin
                    .filter(same(cell))
                    .map(({ skin, runs }) => paper.sheet.skin(paper.care.skin[skin], runs)),
                ]),
              () => `${cell.testersOnce} / ${asked.testers}`,
              () => `${cell.runs} / ${asked.runs}`,
              ...(story ? [() => (earlier ? `${earlier.reported} / ${earlier.runs}` : '–')] : []),
              () => `${cell.byFoot.left} / ${cell.byFoot.right}`,
              ({ far, paper }: Spoken) =>
                !from ? '–' : from.pairM === 0 ? paper.sheet.firstRun : far(from.pairM),
              ({ far, paper }: Spoken) =>
                from?.onset ? paper.sheet.onset(far(from.onset.medianM), from.onset.runs) : '–',
              ({ paper }: Spoken) => paper.sure[surenessOf(cell.word, cell.testersOnce)],
            ];
          })}
        />
      )}
      <Silent {...{ report, languages, trade }} any={cells.length > 0} />
      {cells.length > 0 && (
        <p class="key">
          <Say
            in={languages}
            of={({ paper }) =>
              paper.sentences([
                ...(asked.runs < report.round.size.runs
                  ? [paper.sheet.counted(asked.runs, report.round.size.runs)]
                  : []),
                paper.sheet.from,
                paper.sheet.why,
              ])
            }
          />
        </p>
      )}
    </section>
  );
};

/** What of the trade's own questions is too much or too little. */
export const TwoSidedOfTrade = ({ report, languages, trade }: SheetProps) => {
  const own = twoSidedOf(report, trade);
  if (own.length === 0) return null;
  return (
    <section class="whole">
      <Heading languages={languages} of={({ paper }) => paper.sheet.twoSided} />
      <TwoSidedTable
        languages={languages}
        answers={own}
        title={(spoken) => ofTrade(spoken, trade, spoken.paper.sheet.twoSided)}
      />
      {own.some(({ word }) => word === 'low' || word === 'high') && (
        <p class="key">
          <Say in={languages} of={({ paper }) => paper.sheet.twoSidedKey} />
        </p>
      )}
    </section>
  );
};

/** Which complaints that point to the trade nobody has: silence of so many runs, which is not proof. */
const Silent = ({
  report,
  languages,
  trade,
  any,
}: Pick<SheetProps, 'report' | 'languages' | 'trade'> & { readonly any: boolean }) => {
  const { cells, asked } = report.round.complaints;
  const felt = new Set(cells.map(({ kind }) => kind));
  const silent = kindsOfTrade(trade).filter((kind) => !felt.has(kind));
  if (silent.length === 0) return null;
  return (
    <p>
      <Say
        in={languages}
        of={({ paper, speaker, list }) =>
          asked.runs === 0
            ? speaker.desk.complaints.nobodyAsked
            : paper.sentences([
                ...(any ? [] : [paper.sheet.noComplaint]),
                paper.sheet.silent(
                  list(silent.map((kind) => speaker.glossary.kinds[kind].name)),
                  asked.runs,
                ),
              ])
        }
      />
    </p>
  );
};

/** A stretch of kilometres that fewer testers reached says nothing of the others. */
const LEAST_TESTERS = 3;

const comfortCells = (
  attribute: ComfortAttributeId,
  { course, drift }: ComfortRound,
  wear: NonNullable<ComfortRound['wear']>,
) => {
  const [first] = course;
  const later = course.slice(1);
  const last = later.findLast(({ mean }) => mean.n >= LEAST_TESTERS) ?? later.at(-1);
  const km = (m: number, { speaker }: Spoken) => speaker.number(m / 1000, 0);
  return [
    ({ speaker }: Spoken) => speaker.glossary.attributes[attribute].name,
    ({ speaker, paper }: Spoken) => paper.sheet.ofTesters(speaker.number(wear.mean, 0), wear.n),
    ({ speaker, paper }: Spoken) =>
      first?.fromM === 0
        ? paper.sheet.ofTesters(speaker.number(first.mean.mean, 0), first.mean.n)
        : '–',
    (spoken: Spoken) =>
      last
        ? spoken.paper.sheet.stretch(
            spoken.paper.sheet.ofTesters(spoken.speaker.number(last.mean.mean, 0), last.mean.n),
            km(last.fromM, spoken),
            km(last.toM, spoken),
          )
        : '–',
    ({ speaker }: Spoken) =>
      drift && (drift.interval.lower > 0 || drift.interval.upper < 0)
        ? signed(drift.per100Km, (size) => speaker.number(size, 1))
        : '–',
  ];
};

/** Comfort that the trade answers for: at first, later, and how it goes with distance. */
export const ComfortTable = ({ report, languages, trade }: SheetProps) => {
  const own = report.comfort.filter(({ attribute }) =>
    tradeData(trade).attributes.includes(attribute),
  );
  if (own.length === 0) return null;
  const hasSides = twoSidedOf(report, trade).length > 0;
  return (
    <section class="whole">
      <Heading languages={languages} of={({ paper }) => paper.sheet.comfort} />
      <Table
        languages={languages}
        title={(spoken) => ofTrade(spoken, trade, spoken.paper.sheet.comfort)}
        columns={[
          ({ paper }) => paper.sheet.comfortColumns.what,
          ({ paper }) => paper.sheet.comfortColumns.mean,
          ({ paper }) => paper.sheet.comfortColumns.first,
          ({ paper }) => paper.sheet.comfortColumns.last,
          ({ paper }) => paper.sheet.comfortColumns.trend,
        ]}
        rows={own.flatMap(({ attribute, rounds: [round] }) =>
          round?.wear ? [comfortCells(attribute, round, round.wear)] : [],
        )}
      />
      <p class="key">
        <Say
          in={languages}
          of={({ paper }) =>
            paper.sentences([
              paper.sheet.comfortKey,
              ...(trade === 'foam' && !hasSides ? [paper.sheet.noSides] : []),
            ])
          }
        />
      </p>
    </section>
  );
};
