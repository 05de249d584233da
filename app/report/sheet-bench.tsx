/** A trade's own data from the shop: its dimensions, its layers, what came apart, its pairs one by one. */
import { isOnSheet, tradeData } from '../../core/foot/index.ts';
import { arrivalOf, type PairLine } from '../../core/review/index.ts';
import type { Surface } from '../../core/records/index.ts';
import { groupBy } from '../../core/statistics/index.ts';
import { fromMetres, metres, type Metres } from '../../core/units/index.ts';
import { inColumn, percentOf, signed } from '../words/figures.ts';
import { placeName, siteName } from '../words/say-place.ts';
import { bareReading } from '../words/say-wear.ts';
import { Quote } from './own-words.tsx';
import { Heading, ofTrade } from './sheet-parts.tsx';
import type { SheetProps } from './document-props.ts';
import { Say, type Spoken } from './spoken.tsx';
import { Table } from './table.tsx';

/** So many pairs stay together on a page. */
const MOST_WHOLE = 6;
/** More readings than this do not fit the paper. */
const MOST_COLUMNS = 4;

/** A dimension by its place alone; of anything else the measure as well. */
const shortName = (
  one: Pick<PairLine['readings'][number], 'measure' | 'site'>,
  speaker: Spoken['speaker'],
): string => {
  if (one.measure !== 'dimension') return placeName(one, speaker);
  const name = siteName(one.site, speaker);
  return name.charAt(0).toUpperCase() + name.slice(1);
};

/** New pairs against the drawing. */
export const ArrivalTable = ({ report, languages, trade }: SheetProps) => {
  const own = arrivalOf(
    report.deviations.filter((one) => isOnSheet(one, trade)),
    [report.round.id],
  );
  if (own.length === 0) return null;
  const sizes = report.lines.map(({ sizeMm }) => sizeMm);
  const [smallest, largest] = [Math.min(...sizes), Math.max(...sizes)];
  return (
    <section class="whole">
      <Heading languages={languages} of={({ paper }) => paper.sheet.arrival} />
      <Table
        languages={languages}
        title={(spoken) => ofTrade(spoken, trade, spoken.paper.sheet.arrival)}
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
          const inRow = inColumn([nominal, lower, upper, mean, ...values]);
          const write = (value: number, { speaker }: Spoken) => inRow(value, speaker.number);
          const pairs = new Set(points.map(({ pair }) => pair)).size;
          return [
            [
              (spoken: Spoken) => shortName({ measure, site }, spoken.speaker),
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
      {smallest !== largest && (
        <p class="key">
          <Say
            in={languages}
            of={({ paper, speaker }) =>
              paper.sheet.oneDrawing(speaker.number(smallest, 1), speaker.number(largest, 1))
            }
          />
        </p>
      )}
    </section>
  );
};

/** Layers of material beside what was hot or wet there. */
export const LayersTable = ({ report, languages, trade }: SheetProps) => {
  if (!tradeData(trade).layers || !report.layers) return null;
  const { zones, askedTesters } = report.layers;
  const hot = zones.filter(({ testers }) => testers > 0);
  // Where nobody felt it the places of as many layers are one line.
  const cool = [
    ...groupBy(
      zones.filter(({ testers }) => testers === 0),
      ({ layers }) => layers,
    ),
  ].sort(([a], [b]) => b - a);
  return (
    <section class="whole">
      <Heading languages={languages} of={({ paper }) => paper.sheet.layers} />
      <ul class="columns">
        {hot.map(({ zone, layers, testers }) => (
          <li key={zone}>
            <Say
              in={languages}
              of={({ paper }) =>
                paper.sheet.layersLine(paper.places[zone], layers, testers, askedTesters)
              }
            />
          </li>
        ))}
        {cool.map(([layers, own]) => (
          <li key={layers}>
            <Say
              in={languages}
              of={({ paper, list }) =>
                paper.sheet.layersCool(
                  list(own.map(({ zone }) => paper.places[zone])),
                  layers,
                  askedTesters,
                )
              }
            />
          </li>
        ))}
      </ul>
    </section>
  );
};

/** On what the pairs were run, for who makes the outsole. */
export const SurfacesLine = ({ report, languages, trade }: SheetProps) => {
  const entries = Object.entries(report.surfaces) as [Surface | 'unknown', Metres][];
  const sum = entries.reduce((all, [, m]) => all + m, 0);
  if (trade !== 'tooling' || sum === 0) return null;
  const own = entries.toSorted(([, a], [, b]) => b - a);
  return (
    <section class="whole">
      <Heading languages={languages} of={({ paper }) => paper.sheet.surfaces} />
      <p>
        <Say
          in={languages}
          of={({ paper, speaker, surface, far }) =>
            paper.sheet.runOn(
              far(metres(sum)),
              speaker.desk.joined.names(
                own.map(([one, m]) =>
                  paper.sheet.shareOn(
                    one === 'unknown' ? paper.sheet.notSaid : surface(one),
                    percentOf(m / sum, speaker.number),
                  ),
                ),
              ),
            )
          }
        />
      </p>
    </section>
  );
};

/** What came apart in the trade's hands; nothing is said as well. */
export const Damages = ({ report, languages, trade }: SheetProps) => {
  const { damages } = tradeData(trade);
  const own = report.damages.filter(({ what }) => damages.includes(what));
  if (damages.length === 0) return null;
  return (
    <section class="whole">
      <Heading languages={languages} of={({ paper }) => paper.sheet.damages} />
      {own.length === 0 && (
        <p>
          <Say
            in={languages}
            of={({ paper }) => paper.sheet.nothingApart(report.round.size.pairs)}
          />
        </p>
      )}
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
              <Quote in={languages} text={words} />
            </>
          )}
        </p>
      ))}
    </section>
  );
};

const keyOf = ({ measure, site, unit }: PairLine['readings'][number]) =>
  `${measure} ${site} ${unit}`;

/** Distance of the last check of what is shown. */
const checkedAt = (
  { readings }: PairLine,
  shown: readonly PairLine['readings'][number][],
  { speaker, unit }: Spoken,
): string => {
  const keys = new Set(shown.map(keyOf));
  const own = readings.filter((one) => keys.has(keyOf(one)));
  if (own.length === 0) return '–';
  const greatest = metres(Math.max(...own.map(({ first, last }) => (last ?? first).m)));
  return speaker.number(fromMetres(greatest, unit), 0);
};

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
  const limited = new Set(
    report.verdict.items.flatMap((item) =>
      item.what === 'wear' ? [`${item.kind} ${item.site}`] : [],
    ),
  );
  // What the brief limits first, then what else wears.
  const rank = ({ measure, unit, site, last }: PairLine['readings'][number]) =>
    limited.has(`${measure} ${unit} ${site}`)
      ? 0
      : data.wear.includes(`${measure} ${unit}`) && last
        ? 1
        : 2;
  const shown = [...places.values()].toSorted((a, b) => rank(a) - rank(b)).slice(0, MOST_COLUMNS);
  const short = ({ sheet }: Spoken['paper']) => sheet.pairColumns;
  const sizes = inColumn(report.lines.map(({ sizeMm }) => sizeMm));
  const columns = new Map(
    shown.map((place) => [
      keyOf(place),
      report.lines.flatMap(({ readings }) =>
        readings.flatMap((one) =>
          keyOf(one) === keyOf(place)
            ? [one.first.value, ...(one.last ? [one.last.value] : [])]
            : [],
        ),
      ),
    ]),
  );
  const worn = shown.some((place) =>
    report.lines.some(({ readings }) =>
      readings.some((one) => keyOf(one) === keyOf(place) && one.last),
    ),
  );
  // Nothing was run or measured: the pairs alone tell a trade nothing.
  if (shown.length === 0 && report.lines.every(({ totalM }) => totalM === 0)) return null;
  return (
    <section class={report.lines.length <= MOST_WHOLE ? 'whole' : ''}>
      <Heading languages={languages} of={({ paper }) => paper.sheet.pairs} />
      <Table
        languages={languages}
        title={(spoken) => ofTrade(spoken, trade, spoken.paper.sheet.pairs)}
        columns={[
          ({ paper }) => short(paper).pair,
          ({ paper }) => short(paper).size,
          ({ paper }) => short(paper).testers,
          ({ unit }) => unit,
          ...(worn ? [({ paper }: Spoken) => short(paper).checked] : []),
          ...shown.map(
            (one) =>
              ({ speaker }: Spoken) =>
                speaker.desk.joined.clauses([
                  shortName(one, speaker),
                  speaker.glossary.units[one.unit],
                ]),
          ),
        ]}
        rows={report.lines.map((line) => [
          ({ speaker }: Spoken) => speaker.pair(line.pair),
          ({ speaker }: Spoken) => sizes(line.sizeMm, speaker.number),
          ({ speaker }: Spoken) => speaker.desk.joined.names(line.testers.map(speaker.tester)),
          ({ speaker, unit }: Spoken) => speaker.number(fromMetres(line.totalM, unit), 0),
          ...(worn ? [(spoken: Spoken) => checkedAt(line, shown, spoken)] : []),
          ...shown.map((place) => ({ speaker, paper }: Spoken) => {
            const own = line.readings.find((one) => keyOf(one) === keyOf(place));
            const write = (value: number) =>
              bareReading(value, place, columns.get(keyOf(place)) ?? [], speaker);
            return !own
              ? '–'
              : own.last
                ? paper.sheet.newToNow(write(own.first.value), write(own.last.value))
                : write(own.first.value);
          }),
        ])}
      />
      {worn && (
        <p class="key">
          <Say in={languages} of={({ paper }) => paper.sheet.pairKey} />
        </p>
      )}
    </section>
  );
};
