/** Runs from the rows of a table. Pure. */
import {
  isPlausibleDistance,
  isPlausiblePace,
  isWithin,
  secondsPerKm,
  whereWas,
} from '../../../core/mileage/index.ts';
import {
  isIn,
  ranges,
  readBody,
  type RecordId,
  type Run,
  type TwoSided,
} from '../../../core/records/index.ts';
import {
  celsius,
  metres,
  toCelsius,
  type Metres,
  type Seconds,
} from '../../../core/units/index.ts';
import { toInstant } from '../../parts/instant.ts';
import { readClock, readDistance, readTime } from './cells.ts';
import { markColumns } from './columns.ts';
import { groundNames, markOfWords, sockNames, surfaceNames } from './names.ts';
import { wrongRow } from './people.ts';
import type { KnownRun, ReadRow, RowReader } from './row.ts';
import type { RunIndex } from './run-index.ts';
import { pairOf, testerOf, type WearContext } from './who.ts';
import type { Ways } from './ways.ts';

const HOUR_MS = 3_600_000;

const distanceOf = (reader: RowReader, ways: Ways): Metres | null => {
  const text = reader.text('distance');
  if (text === '') return reader.fail('distance', { why: 'missing' });
  const read = readDistance(text, ways.distance, ways.decimal);
  if (read === null) return reader.fail('distance', { why: 'no-number' });
  // To the metre: no table knows a run better, and miles would leave fractions.
  const distanceM = metres(Math.round(read));
  if (!isIn(distanceM, ranges.distanceM))
    return reader.fail('distance', {
      why: 'out-of-range',
      range: { least: 0, most: ranges.distanceM.most / 1000, unit: 'km' },
    });
  if (!isPlausibleDistance(distanceM)) reader.doubt('distance', { why: 'far' });
  return distanceM;
};

const durationOf = (reader: RowReader, ways: Ways, distanceM: Metres | null) => {
  const text = reader.text('time');
  if (text === '') return undefined;
  const durationS = readTime(text, ways.time, ways.decimal);
  if (durationS === null || durationS <= 0) return reader.fail('time', { why: 'no-time' });
  if (!isIn(durationS, ranges.durationS)) return reader.fail('time', { why: 'no-time' });
  const pace = distanceM === null ? null : secondsPerKm(distanceM, durationS);
  if (pace !== null && !isPlausiblePace(pace))
    reader.doubt('time', { why: 'pace', secondsPerKm: pace });
  return durationS;
};

interface Start {
  readonly ms: number;
  readonly dayOnly: boolean;
}

/** The hours from which runs of a day without an hour are set apart: noon, then three hours on. Judgement. */
const NOON_H = 12;
const APART_H = 3;

const startOf = (
  reader: RowReader,
  tester: RecordId | null,
  durationS: Seconds | null | undefined,
  index: RunIndex,
  nowMs: number,
): Start | null => {
  const date = reader.moment('date');
  if (date === undefined) return reader.fail('date', { why: 'missing' });
  if (date === null) return null;
  const clock = reader.text('clock');
  const minutes = clock === '' ? null : readClock(clock);
  if (clock !== '' && minutes === null) return reader.fail('clock', { why: 'no-clock' });
  if (date.ms > nowMs) return reader.fail('date', { why: 'future' });
  if (!date.dayOnly) return { ms: date.ms, dayOnly: false };
  if (minutes !== null) {
    const ms = date.ms + minutes * 60_000;
    return ms > nowMs ? reader.fail('clock', { why: 'future' }) : { ms, dayOnly: false };
  }
  const nth = tester === null ? 0 : index.withoutHour(`${tester} ${date.day}`);
  const made = date.ms + ((NOON_H + APART_H * nth) % 24) * HOUR_MS;
  return { ms: Math.min(made, nowMs - 1000 * (durationS ?? 0)), dayOnly: true };
};

const temperatureOf = (reader: RowReader, ways: Ways) => {
  if (ways.temperature === 'C') return reader.number('temperature', ranges.temperatureC);
  const { least, most } = ranges.temperatureC;
  const typed = reader.number('temperature', {
    least: (least * 9) / 5 + 32,
    most: (most * 9) / 5 + 32,
    unit: null,
  });
  return typed === null || typed === undefined ? typed : toCelsius(typed, 'F');
};

/** The two-sided questions of the row, as figures or in the words of the line. */
const marksOf = (reader: RowReader): TwoSided => {
  const marks: TwoSided = {};
  for (const { id, column } of markColumns) {
    const text = reader.text(column).toLowerCase();
    const inWords = text === '' ? null : markOfWords(id, text);
    if (inWords !== null) marks[id] = inWords;
    else if (text !== '' && !/\d/.test(text))
      reader.fail(column, { why: 'unknown-word', words: ['low', 'right', 'high'] });
    else {
      const mark = reader.number(column, ranges.twoSided);
      if (typeof mark === 'number') marks[id] = mark;
    }
  }
  return marks;
};

/** What else the row says of the run; null where something of it is wrong. */
const saidOf = (reader: RowReader, ways: Ways): Partial<Run> | null => {
  const surface = reader.oneOf('surface', surfaceNames);
  const ground = reader.oneOf('ground', groundNames);
  const sock = reader.oneOf('sock', sockNames);
  const temperature = temperatureOf(reader, ways);
  const comfort = reader.number('comfort', ranges.lineScore, 100 / ways.comfort);
  const pain = reader.number('pain', ranges.ten);
  const marks = marksOf(reader);
  const words = reader.text('words');
  if (pain !== null && pain !== undefined && !Number.isInteger(pain))
    reader.fail('pain', { why: 'out-of-range', range: ranges.ten });
  if (words.length > LONGEST_WORDS) reader.fail('words', { why: 'too-long' });
  if (reader.isWrong) return null;
  return {
    ...(surface && { surfaces: { [surface]: 1 } }),
    ...(ground && { ground }),
    ...(sock && { sock }),
    ...(typeof temperature === 'number' && { temperatureC: celsius(temperature) }),
    ...(typeof comfort === 'number' && { comfort: { overall: comfort } }),
    ...(Object.keys(marks).length > 0 && { comfort2: marks }),
    ...(typeof pain === 'number' && { pain: { score: pain } }),
    ...(words !== '' && { words }),
  };
};

/** As long as a record's words may be. */
const LONGEST_WORDS = 4000;

/** Whether the pair was with that tester then, as far as hand-outs are noted. */
const doubtPlace = (
  reader: RowReader,
  run: { readonly pair: RecordId; readonly tester: RecordId; readonly startMs: number },
  { spans }: WearContext,
): void => {
  const own = spans.get(run.pair) ?? [];
  if (spans.size === 0 || whereWas(run, own) !== 'elsewhere') return;
  const other = own.find((span) => isWithin(span, run.startMs))?.tester ?? null;
  reader.doubt('pair', { why: 'with-another', tester: other });
};

const wornBy = ({ tester, pair }: Pick<KnownRun, 'tester' | 'pair'>): string => `${tester} ${pair}`;

/** The first run of a tester in a pair is marked as it is where testers log: its scores are kept apart. */
export const withFirstImpressions = (
  rows: readonly ReadRow[],
  known: readonly KnownRun[],
): readonly ReadRow[] => {
  const worn = new Set(known.map(wornBy));
  const first = new Map<string, { readonly line: number; readonly ms: number }>();
  for (const { line, record } of rows) {
    if (record?.kind !== 'run' || worn.has(wornBy(record.body))) continue;
    const [key, ms] = [wornBy(record.body), Date.parse(record.body.startedAt)];
    if (ms < (first.get(key)?.ms ?? Infinity)) first.set(key, { line, ms });
  }
  const lines = new Set([...first.values()].map(({ line }) => line));
  return rows.map((row) =>
    lines.has(row.line) && row.record?.kind === 'run'
      ? { ...row, record: { ...row.record, body: { ...row.record.body, firstImpression: true } } }
      : row,
  );
};

export const readRun = (
  reader: RowReader,
  ways: Ways,
  context: WearContext,
  index: RunIndex,
): ReadRow => {
  const [tester, pair] = [testerOf(reader, context), pairOf(reader, context)];
  const distanceM = distanceOf(reader, ways);
  const durationS = durationOf(reader, ways, distanceM);
  const start = startOf(reader, tester, durationS, index, context.nowMs);
  const said = saidOf(reader, ways);
  if (!tester || !pair || distanceM === null || durationS === null || !start || !said)
    return wrongRow(reader);
  const { ms: startMs, dayOnly } = start;
  const run: KnownRun = { tester, pair, startedAt: toInstant(startMs), distanceM, dayOnly };
  const { same, maybe } = index.find(run);
  if (same === 'record') return { line: reader.line, troubles: [], fate: 'same' };
  if (same !== null) reader.fail('date', { why: 'twice', line: same });
  else if (maybe !== null)
    reader.doubt('distance', { why: 'maybe-same', line: maybe === 'record' ? null : maybe });
  doubtPlace(reader, { pair, tester, startMs }, context);
  if (reader.isWrong) return wrongRow(reader);
  index.add(run, reader.line);
  const read = readBody('run', {
    project: context.project,
    pair,
    tester,
    startedAt: run.startedAt,
    distanceM,
    distanceFrom: 'typed',
    ...(durationS !== undefined && { durationS }),
    ...said,
    broughtIn: {
      by: context.by,
      at: toInstant(context.nowMs),
      ...(dayOnly && { dayOnly: true as const }),
    },
  });
  if (!read.ok) throw new Error(`a row was read that no record takes: ${read.problems[0]?.field}`);
  return {
    line: reader.line,
    troubles: reader.troubles,
    fate: reader.troubles.length > 0 ? 'odd' : 'new',
    record: { kind: 'run', body: read.body },
  };
};
