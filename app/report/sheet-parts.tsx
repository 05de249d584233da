/** A trade's own data: what is felt, in whose words, its curves, its dimensions, its pairs one by one. */
import { isOnSheet, tradeData } from '../../core/foot/index.ts';
import { surenessOf } from '../../core/headlines/index.ts';
import { arrivalOf, type CellSummary, type PairLine } from '../../core/review/index.ts';
import { fromMetres } from '../../core/units/index.ts';
import { signed } from '../words/figures.ts';
import { placeName } from '../words/say-place.ts';
import { PaperCurve } from './paper-curve.tsx';
import type { SheetProps } from './sheet.tsx';
import { Say, type Languages, type Spoken } from './spoken.tsx';
import { Table } from './table.tsx';

type CellsProps = SheetProps & { readonly cells: readonly CellSummary[] };

/** Beyond these a sheet is read by nobody; the appendix and the tables have them all. */
const MOST = { cells: 8, words: 5, columns: 4 } as const;

const Heading = ({
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
export const ComplaintTable = ({ report, languages, cells }: CellsProps) => {
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
            title={({ paper }) => paper.sheet.complaints}
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
        title={({ paper }) => paper.sheet.comfort}
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

/** New pairs against the drawing. */
export const ArrivalTable = ({ report, languages, trade }: SheetProps) => {
  const own = arrivalOf(
    report.deviations.filter((one) => isOnSheet(one, trade)),
    [report.round.id],
  );
  if (own.length === 0) return null;
  return (
    <section class="whole">
      <Heading languages={languages} of={({ paper }) => paper.sheet.arrival} />
      <Table
        languages={languages}
        title={({ paper }) => paper.sheet.arrival}
        columns={(['what', 'nominal', 'allowed', 'mean', 'range', 'out'] as const).map(
          (column) =>
            ({ paper }: Spoken) =>
              paper.sheet.arrivalColumns[column],
        )}
        rows={own.flatMap(({ measure, site, unit, rounds: [round] }) => {
          if (!round) return [];
          const { nominal, lower, upper, points } = round;
          const values = points.map(({ deviation }) => nominal + deviation);
          const mean = values.reduce((sum, one) => sum + one, 0) / values.length;
          const write = (value: number, { speaker }: Spoken) => speaker.number(value, 1);
          const pairs = new Set(points.map(({ pair }) => pair)).size;
          return [
            [
              (spoken: Spoken) => placeName({ measure, site }, spoken.speaker),
              (spoken: Spoken) =>
                `${write(nominal, spoken)}\u00a0${spoken.speaker.glossary.units[unit]}`,
              (spoken: Spoken) =>
                `${signed(lower, (size) => write(size, spoken))} … ${signed(upper, (size) => write(size, spoken))}`,
              (spoken: Spoken) => write(mean, spoken),
              (spoken: Spoken) =>
                `${write(Math.min(...values), spoken)} … ${write(Math.max(...values), spoken)}`,
              ({ paper, speaker, list }: Spoken) =>
                round.out.length === 0
                  ? paper.sheet.outOf(0, pairs)
                  : speaker.desk.joined.aside(
                      paper.sheet.outOf(round.out.length, pairs),
                      list(round.out.map(speaker.pair)),
                    ),
            ],
          ];
        })}
      />
    </section>
  );
};

/** Layers of material beside what was hot or wet there. */
export const LayersTable = ({ report, languages, trade }: SheetProps) => {
  if (!tradeData(trade).layers || !report.layers) return null;
  const { zones, askedTesters } = report.layers;
  return (
    <section class="whole">
      <Heading languages={languages} of={({ paper }) => paper.sheet.layers} />
      <ul class="columns">
        {zones.map(({ zone, layers, testers }) => (
          <li key={zone}>
            <Say
              in={languages}
              of={({ paper }) =>
                paper.sheet.layersLine(paper.places[zone], layers, testers, askedTesters)
              }
            />
          </li>
        ))}
      </ul>
    </section>
  );
};

export const Damages = ({ report, languages, trade }: SheetProps) => {
  const own = report.damages.filter(({ what }) => tradeData(trade).damages.includes(what));
  if (own.length === 0) return null;
  return (
    <section class="whole">
      <Heading languages={languages} of={({ paper }) => paper.sheet.damages} />
      {own.map(({ id, pair, what, at, words }) => (
        <p key={id}>
          <Say
            in={languages}
            of={({ paper, speaker, date }) =>
              paper.sheet.damageLine(speaker.pair(pair), speaker.glossary.damages[what], date(at))
            }
          />
          {words !== null && words !== undefined && words !== '' && (
            <>
              {' '}
              <q>{words}</q>
            </>
          )}
        </p>
      ))}
    </section>
  );
};

const keyOf = ({ measure, site, unit }: PairLine['readings'][number]) =>
  `${measure} ${site} ${unit}`;

/** Every pair with its testers, its kilometres, and its readings new and now. */
export const PairTable = ({ report, languages, trade }: SheetProps) => {
  const data = tradeData(trade);
  const isOwn = (one: PairLine['readings'][number]) =>
    isOnSheet(one, trade) || data.wear.includes(`${one.measure} ${one.unit}`);
  const places = new Map(
    report.lines.flatMap(({ readings }) =>
      readings.filter(isOwn).map((one) => [keyOf(one), one] as const),
    ),
  );
  const shown = [...places.values()].slice(0, MOST.columns);
  const short = ({ sheet }: Spoken['paper']) => sheet.pairColumns;
  return (
    <section>
      <Heading languages={languages} of={({ paper }) => paper.sheet.pairs} />
      <Table
        languages={languages}
        title={({ paper }) => paper.sheet.pairs}
        columns={[
          ({ paper }) => short(paper).pair,
          ({ paper }) => short(paper).size,
          ({ paper }) => short(paper).testers,
          ({ unit }) => unit,
          ...shown.map(
            (one) =>
              ({ speaker }: Spoken) =>
                speaker.desk.joined.clauses([
                  placeName(one, speaker),
                  speaker.glossary.units[one.unit],
                ]),
          ),
        ]}
        rows={report.lines.map((line) => [
          ({ speaker }: Spoken) => speaker.pair(line.pair),
          ({ speaker }: Spoken) => speaker.number(line.sizeMm, 1),
          ({ speaker }: Spoken) => speaker.desk.joined.names(line.testers.map(speaker.tester)),
          ({ speaker, unit }: Spoken) => speaker.number(fromMetres(line.totalM, unit), 0),
          ...shown.map((place) => ({ speaker, paper }: Spoken) => {
            const own = line.readings.find((one) => keyOf(one) === keyOf(place));
            const write = (value: number) => speaker.number(value, place.unit === 'J' ? 2 : 1);
            return !own
              ? '–'
              : own.last
                ? paper.sheet.newToNow(write(own.first.value), write(own.last.value))
                : write(own.first.value);
          }),
        ])}
      />
    </section>
  );
};
