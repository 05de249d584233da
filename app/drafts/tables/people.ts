/** Testers and pairs from the rows of a table. Pure. */
import {
  editBody,
  isIn,
  ranges,
  readBody,
  type Pair,
  type Range,
  type RecordId,
  type RecordOf,
} from '../../../core/records/index.ts';
import { footLengthOf, millimetres, type SizeSystem } from '../../../core/units/index.ts';
import { EU_SIZES } from '../pair.ts';
import {
  draftOfTester,
  rangesOfTester,
  readTesterDraft,
  type TesterDraft,
  type TesterTrouble,
} from '../tester.ts';
import { readDistance, readNumber } from './cells.ts';
import type { Column } from './columns.ts';
import type { ReadRow, RowReader, TableRecord } from './row.ts';
import type { Ways } from './ways.ts';

/** Records in the same order of their fields, to be compared. */
const ordered = (body: object): string =>
  JSON.stringify(body, (_, value: unknown) =>
    typeof value === 'object' && value !== null && !Array.isArray(value)
      ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
      : value,
  );

/** What becomes of a row that reads as `record`, beside the one that is here with the same key. */
export const fateBeside = (
  reader: RowReader,
  record: TableRecord,
  known: { readonly body: object; readonly id: RecordId } | undefined,
): ReadRow => {
  const { line, troubles } = reader;
  if (!known) return { line, troubles, fate: 'new', record };
  return ordered(known.body) === ordered(record.body)
    ? { line, troubles, fate: 'same' }
    : { line, troubles, fate: 'changed', record: { ...record, id: known.id } };
};

export const wrongRow = ({ line, troubles }: RowReader): ReadRow => ({
  line,
  troubles,
  fate: 'wrong',
});

/** Which line had a key first; tells a row that says it again. */
export class Seen {
  readonly #lines = new Map<string, number>();

  /** Notes the key; fails the reader where an earlier row has it. */
  isFirst(key: string, column: Column, reader: RowReader): boolean {
    const line = this.#lines.get(key);
    if (line !== undefined) reader.fail(column, { why: 'twice', line });
    else this.#lines.set(key, reader.line);
    return line === undefined;
  }
}

const columnOfField: Readonly<Record<keyof TesterDraft, Column>> = {
  code: 'code',
  name: 'name',
  length: 'length',
  width: 'width',
  girth: 'girth',
  mass: 'mass',
  height: 'height',
};

const METRES_END = 3;

/** Heights in metres as centimetres: nobody is three metres tall, nor three centimetres. */
const heightOf = (text: string, { decimal }: Ways): string => {
  const value = readNumber(text, decimal);
  return value !== null && value < METRES_END ? String(Number((100 * value).toFixed(1))) : text;
};

const lengthOf = (reader: RowReader): string => {
  const [left, right] = [reader.text('length-left'), reader.text('length-right')];
  if (left === '' && right === '') return reader.text('length');
  return left === '' ? right : right === '' ? left : `${left} / ${right}`;
};

/** What the row says of the tester; an empty cell leaves what is on record. */
const testerDraft = (reader: RowReader, before: TesterDraft, ways: Ways): TesterDraft => {
  const typed = {
    ...Object.fromEntries(
      Object.entries(columnOfField).map(([field, column]) => [field, reader.text(column)]),
    ),
    length: lengthOf(reader),
    height: heightOf(reader.text('height'), ways),
  };
  return {
    ...before,
    ...Object.fromEntries(Object.entries(typed).filter(([, text]) => text !== '')),
  };
};

const tellTroubles = (
  reader: RowReader,
  draft: TesterDraft,
  troubles: readonly TesterTrouble[],
): void => {
  for (const { field, why } of troubles) {
    const column =
      field === 'length' && !reader.has('length') ? 'length-left' : columnOfField[field];
    const range = why === 'wrong-length' ? ranges.footLengthMm : rangesOfTester[field];
    const isNumber = readNumber(draft[field].split(/[/ ]/)[0] ?? '', 'point') !== null;
    reader.fail(
      column,
      why === 'missing' || why === 'not-a-code'
        ? { why }
        : range && isNumber
          ? { why: 'out-of-range', range }
          : { why: field === 'name' ? 'too-long' : 'no-number' },
    );
  }
};

/** @param known testers of the group by code */
export const readTester = (
  reader: RowReader,
  ways: Ways,
  known: ReadonlyMap<string, RecordOf<'tester'>>,
  seen: Seen,
): ReadRow => {
  const code = reader.text('code').toUpperCase();
  const old = known.get(code);
  const draft = testerDraft(reader, draftOfTester(old?.body ?? null), ways);
  const read = readTesterDraft(draft, old?.body ?? null, new Set());
  if (!read.ok) tellTroubles(reader, draft, read.troubles);
  else if (seen.isFirst(code, 'code', reader))
    return fateBeside(
      reader,
      { kind: 'tester', body: read.body },
      old && { body: old.body, id: old.revision.id },
    );
  return wrongRow(reader);
};

/** The size as mm of foot length, to the millimetre where it is converted. */
const sizeMmOf = (reader: RowReader, system: SizeSystem, ways: Ways): number | null => {
  const text = reader.text('size').replace(/^(?:eu|uk|us)\s*|\s*mm$/i, '');
  if (text === '') return reader.fail('size', { why: 'missing' });
  const typed = readNumber(text, ways.decimal);
  if (typed === null) return reader.fail('size', { why: 'no-number' });
  const range = rangeOfSizes(system);
  if (!isIn(typed, range)) return reader.fail('size', { why: 'out-of-range', range });
  return system === 'mondopoint' ? typed : Math.round(footLengthOf(typed, system));
};

/** Which sizes there are in a system: those of the form, and of the same feet. Judgement, no source. */
const rangeOfSizes = (system: SizeSystem): Range => {
  if (system === 'mondopoint') return ranges.footLengthMm;
  if (system === 'eu') return { least: EU_SIZES.smallest, most: EU_SIZES.largest, unit: null };
  return { least: 0, most: 22, unit: null };
};

export interface PairContext {
  readonly project: RecordId;
  readonly rounds: readonly RecordOf<'round'>[];
  /** The project's pairs by code. */
  readonly pairs: ReadonlyMap<string, RecordOf<'pair'>>;
}

/** A round by its name or its number. */
const roundOf = (
  reader: RowReader,
  rounds: PairContext['rounds'],
  usual: RecordId | null,
): RecordId | null => {
  const text = reader.text('round').toLowerCase();
  if (text === '') return usual ?? reader.fail('round', { why: 'missing' });
  const found = rounds.find(
    ({ body }) => body.name.toLowerCase() === text || String(body.order) === text,
  );
  return found?.revision.id ?? reader.fail('round', { why: 'unknown-round' });
};

const carriedOf = (reader: RowReader, ways: Ways): Pair['carriedInM'] | null => {
  const text = reader.text('carried');
  if (text === '') return undefined;
  const typed = readDistance(text, ways.distance, ways.decimal);
  if (typed === null) return reader.fail('carried', { why: 'no-number' });
  if (typed < 0 || typed > ranges.distanceM.most)
    return reader.fail('carried', {
      why: 'out-of-range',
      range: { least: 0, most: ranges.distanceM.most / 1000, unit: 'km' },
    });
  return typed === 0 ? undefined : typed;
};

export const readPair = (
  reader: RowReader,
  ways: Ways,
  { project, rounds, pairs }: PairContext,
  seen: Seen,
): ReadRow => {
  const code = reader.text('code').toUpperCase();
  const old = pairs.get(code);
  if (code === '') reader.fail('code', { why: 'missing' });
  const sizeMm = sizeMmOf(reader, ways.size ?? 'eu', ways);
  const round = roundOf(reader, rounds, old?.body.round ?? ways.round);
  const carriedInM = carriedOf(reader, ways);
  if (sizeMm === null || round === null || carriedInM === null || code === '')
    return wrongRow(reader);
  const size = millimetres(sizeMm);
  const body = editBody<'pair'>(old?.body ?? { project, round, code, sizeMm: size }, {
    round,
    sizeMm: size,
    ...(carriedInM !== undefined && { carriedInM }),
  });
  const read = readBody('pair', body);
  if (!read.ok) reader.fail('code', { why: 'not-a-code' });
  if (!read.ok || !seen.isFirst(code, 'code', reader)) return wrongRow(reader);
  return fateBeside(
    reader,
    { kind: 'pair', body: read.body },
    old && { body: old.body, id: old.revision.id },
  );
};
