/** A trade's own data: what is felt, in whose words, its curves. */
import { tradeData, type Trade } from '../../core/foot/index.ts';
import { surenessOf } from '../../core/complaints/index.ts';
import type { CellSummary } from '../../core/review/index.ts';
import { signed } from '../words/figures.ts';
import { PaperCurve } from './paper-curve.tsx';
import type { SheetProps } from './document-props.ts';
import { Say, type Languages, type Spoken } from './spoken.tsx';
import { Table } from './table.tsx';
import { TwoSidedTable } from './two-sided-table.tsx';

type CellsProps = SheetProps & { readonly cells: readonly CellSummary[] };

/** Beyond these a sheet is read by nobody; the appendix and the tables have them all. */
const MOST = { cells: 8, words: 5 } as const;

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

/** Complaints that usually point to the trade. */
export const ComplaintTable = ({ report, languages, cells, trade }: CellsProps) => {
  const { asked } = report.round.complaints;
  return (
    <section class={cells.length <= MOST.cells ? 'whole' : ''}>
      <Heading languages={languages} of={({ paper }) => paper.sheet.complaints} />
      {cells.length === 0 ? (
        <p>
          <Say in={languages} of={({ paper }) => paper.sheet.noComplaint} />
        </p>
      ) : (
        <>
          <Table
            languages={languages}
            title={(spoken) => ofTrade(spoken, trade, spoken.paper.sheet.complaints)}
            columns={[
              ({ paper }) => paper.sheet.complaintColumns.what,
              ({ paper }) => paper.sheet.complaintColumns.testers,
              ({ paper }) => paper.sheet.complaintColumns.runs,
              ({ paper }) => paper.sheet.complaintColumns.feet,
              ({ paper }) => paper.sheet.complaintColumns.sure,
            ]}
            rows={cells
              .slice(0, MOST.cells)
              .map((cell) => [
                ({ paper, speaker }) =>
                  paper.felt(speaker.glossary.kinds[cell.kind].name, paper.places[cell.zone]),
                ({ paper }) => paper.so.people(cell.testersOnce, asked.testers),
                ({ paper }) => paper.so.share(cell.runs, asked.runs),
                () => `${cell.byFoot.left} / ${cell.byFoot.right}`,
                ({ paper }) => paper.sure[surenessOf(cell.word, cell.testersOnce)],
              ])}
          />
          <p class="key">
            <Say in={languages} of={({ paper }) => paper.sheet.why} />
          </p>
        </>
      )}
    </section>
  );
};

/** What testers wrote of runs in which they felt it: each sentence once, of as many testers as there are. */
export const WordsOfTesters = ({ report, languages, cells }: CellsProps) => {
  const [{ paper, speaker, far }] = languages;
  const felt = new Set(cells.map(({ zone, kind }) => `${zone} ${kind}`));
  const texts = new Set<string>();
  const own = report.said.filter(({ text, felt: with_ }) => {
    if (texts.has(text) || !with_.some(({ zone, kind }) => felt.has(`${zone} ${kind}`)))
      return false;
    texts.add(text);
    return true;
  });
  if (own.length === 0) return null;
  return (
    <section class="whole">
      <Heading languages={languages} of={({ paper }) => paper.sheet.words} />
      <ul class="said">
        {own.slice(0, MOST.words).map(({ run, text, tester, pairM }) => (
          <li key={run}>
            <q>{text}</q>{' '}
            <span class="soft">{paper.sheet.source(speaker.tester(tester), far(pairM))}</span>
          </li>
        ))}
      </ul>
      <p class="key">
        <Say in={languages} of={({ paper }) => paper.sheet.wordsNote} />
      </p>
    </section>
  );
};

/** The trade's wear curves, two to a row. */
export const Curves = (props: SheetProps) => {
  const { report, languages, trade } = props;
  const own = report.curves.filter(({ kind }) => tradeData(trade).wear.includes(kind));
  const foam = own[0]?.foam ?? null;
  if (own.length === 0) return null;
  return (
    <section>
      <Heading languages={languages} of={({ paper }) => paper.sheet.curves} />
      {foam !== null && trade === 'foam' && (
        <p class="soft">
          <Say
            in={languages}
            of={({ paper, speaker }) => paper.sheet.foam(speaker.glossary.foams[foam])}
          />
        </p>
      )}
      <div class="curves">
        {own.map((look) => (
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

/** What of the trade's own questions is too much or too little. */
export const TwoSidedOfTrade = ({ report, languages, trade }: SheetProps) => {
  const { attributes } = tradeData(trade);
  const asked = [...attributes, ...(trade === 'last' ? (['ball-width'] as const) : [])];
  const own = report.round.twoSided.filter(({ attribute }) =>
    asked.some((one) => one === attribute),
  );
  if (own.length === 0) return null;
  return (
    <section class="whole">
      <Heading languages={languages} of={({ paper }) => paper.sheet.twoSided} />
      <TwoSidedTable
        languages={languages}
        answers={own}
        title={(spoken) => ofTrade(spoken, trade, spoken.paper.sheet.twoSided)}
      />
    </section>
  );
};

/** Comfort that the trade answers for: at first, later, and how it goes with distance. */
export const ComfortTable = ({ report, languages, trade }: SheetProps) => {
  const own = report.comfort.filter(({ attribute }) =>
    tradeData(trade).attributes.includes(attribute),
  );
  if (own.length === 0) return null;
  const km = (m: number, { speaker }: Spoken) => speaker.number(m / 1000, 0);
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
        rows={own.flatMap(({ attribute, rounds: [round] }) => {
          const first = round?.course[0];
          const last = round?.course.at(-1);
          return round?.wear
            ? [
                [
                  ({ speaker }: Spoken) => speaker.glossary.attributes[attribute].name,
                  ({ speaker, paper }: Spoken) =>
                    speaker.desk.joined.clauses([
                      speaker.number(round.wear?.mean ?? 0, 0),
                      paper.sheet.testers(round.wear?.n ?? 0),
                    ]),
                  ({ speaker, paper }: Spoken) =>
                    first?.fromM === 0 ? speaker.number(first.mean.mean, 0) : paper.noAmount,
                  (spoken: Spoken) =>
                    last && last !== first
                      ? spoken.paper.sheet.stretch(
                          spoken.speaker.number(last.mean.mean, 0),
                          km(last.fromM, spoken),
                          km(last.toM, spoken),
                        )
                      : spoken.paper.noAmount,
                  ({ speaker, paper }: Spoken) =>
                    round.drift &&
                    (round.drift.interval.lower > 0 || round.drift.interval.upper < 0)
                      ? `${signed(round.drift.per100Km, (size) => speaker.number(size, 1))} / 100 km`
                      : paper.sheet.noTrend,
                ],
              ]
            : [];
        })}
      />
    </section>
  );
};
