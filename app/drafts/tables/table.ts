/** A whole table read: what becomes of each row, by what is on record and by how the table writes. Pure. */
import { handOutSpan } from '../../../core/mileage/index.ts';
import type { RecordId, RecordOf } from '../../../core/records/index.ts';
import { groupBy } from '../../../core/statistics/index.ts';
import type { Column, TableKind } from './columns.ts';
import { neededOf } from './columns.ts';
import { readPair, readTester, Seen } from './people.ts';
import { RowReader, type KnownRun, type ReadRow, type TableRecord } from './row.ts';
import type { Sheet } from './sheet.ts';
import { readHandOut, type RowSpans } from './hand-outs.ts';
import { readRun, withFirstImpressions } from './runs.ts';
import { RunIndex } from './run-index.ts';
import type { WearContext } from './who.ts';
import type { Way, Ways } from './ways.ts';
import { waysFor } from './ways.ts';

/** What is on record, as far as a table is compared with it. */
export interface TableContext {
  readonly project: RecordId;
  readonly rounds: readonly RecordOf<'round'>[];
  /** Of the group. */
  readonly testers: readonly RecordOf<'tester'>[];
  /** Of the project, as the two below. */
  readonly pairs: readonly RecordOf<'pair'>[];
  readonly handOuts: readonly RecordOf<'hand-out'>[];
  readonly runs: readonly KnownRun[];
  readonly by: RecordId;
  /** When the table was opened, milliseconds since 1970: all runs of one table come in at one instant. */
  readonly nowMs: number;
}

export interface Choice {
  readonly kind: TableKind;
  /** By position; null: the column is not read. */
  readonly columns: readonly (Column | null)[];
  readonly ways: Ways;
}

/** Columns that must be chosen, and ways that a person must say, before anything can be read. */
export const openQuestions = ({ kind, columns, ways }: Choice) => ({
  columns: neededOf(kind).filter((column) => !columns.includes(column)),
  ways: waysFor(kind, columns).filter((way): way is Way => isOpen(way, columns, ways)),
});

const isOpen = (way: Way, columns: Choice['columns'], ways: Ways): boolean =>
  ways[way] === null && !(way === 'round' && columns.includes('round'));

/** Cells that were mended in the preview, by `line column-position`. */
export type Mends = ReadonlyMap<string, string>;

export const mendKey = (line: number, at: number): string => `${line} ${at}`;

export const mended = ({ head, rows }: Sheet, mends: Mends): Sheet => ({
  head,
  rows:
    mends.size === 0
      ? rows
      : rows.map((row) => ({
          ...row,
          cells: row.cells.map((cell, at) => (mends.get(mendKey(row.line, at)) ?? cell).trim()),
        })),
});

const byCode = <R extends { readonly body: { readonly code: string } }>(records: readonly R[]) =>
  new Map(records.map((record) => [record.body.code, record]));

/** Ids of testers by code, and by a name that no other tester has. */
const testerIds = (testers: TableContext['testers']): ReadonlyMap<string, RecordId> => {
  const names = groupBy(
    testers.filter(({ body }) => body.name !== undefined),
    ({ body }) => body.name?.toUpperCase() ?? '',
  );
  return new Map([
    ...[...names].flatMap(([name, own]): [string, RecordId][] =>
      own.length === 1 && own[0] ? [[name, own[0].revision.id]] : [],
    ),
    ...testers.map(({ body, revision }): [string, RecordId] => [body.code, revision.id]),
  ]);
};

const wearContext = (context: TableContext): WearContext => ({
  ...context,
  pairs: new Map(context.pairs.map(({ body, revision }) => [body.code, revision.id])),
  testers: testerIds(context.testers),
  spans: groupBy(context.handOuts.map(handOutSpan), ({ pair }) => pair),
});

/** Reads every row. Nothing is written, and the order of the rows matters only for which of two equal ones is first. */
export const readTable = (
  { rows }: Sheet,
  { kind, columns, ways }: Choice,
  context: TableContext,
): readonly ReadRow[] => {
  const readers = rows.map((row) => new RowReader(row, columns, ways));
  const seen = new Seen();
  switch (kind) {
    case 'testers': {
      const known = byCode(context.testers);
      return readers.map((reader) => readTester(reader, ways, known, seen));
    }
    case 'pairs': {
      const about = { ...context, pairs: byCode(context.pairs) };
      return readers.map((reader) => readPair(reader, ways, about, seen));
    }
    case 'hand-outs': {
      const about = wearContext(context);
      const spans: RowSpans = new Map();
      return readers.map((reader) => readHandOut(reader, about, seen, spans));
    }
    case 'runs': {
      const about = wearContext(context);
      const index = new RunIndex(context.runs);
      const read = readers.map((reader) => readRun(reader, ways, about, index));
      return withFirstImpressions(read, context.runs);
    }
  }
};

export interface Wanted {
  /** Lines that stay out. */
  readonly out: ReadonlySet<number>;
  /** Odd lines that are right. */
  readonly right: ReadonlySet<number>;
  /** Whether the table's word goes before what is on record. */
  readonly changed: boolean;
}

/** The rows that come in. */
export const wantedRows = (
  rows: readonly ReadRow[],
  { out, right, changed }: Wanted,
): readonly (ReadRow & { readonly record: TableRecord })[] =>
  rows.filter(
    (row): row is ReadRow & { readonly record: TableRecord } =>
      row.record !== undefined &&
      !out.has(row.line) &&
      (row.fate === 'new' ||
        (row.fate === 'odd' && right.has(row.line)) ||
        (row.fate === 'changed' && changed)),
  );
