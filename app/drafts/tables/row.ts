/** One row of a table while it is read: its cells by column, and what is wrong with them. Pure. */
import type { BodyOf, Range, RecordId } from '../../../core/records/index.ts';
import { isIn } from '../../../core/records/index.ts';
import { readNumber, readMoment, type Moment } from './cells.ts';
import type { Column, TableKind } from './columns.ts';
import type { SheetRow } from './sheet.ts';
import type { Ways } from './ways.ts';

/** What needs no figure and no name to be said. */
export type PlainWhy =
  | 'missing'
  | 'not-a-code'
  | 'unknown-pair'
  | 'unknown-tester'
  | 'unknown-round'
  | 'no-number'
  | 'no-date'
  | 'no-time'
  | 'no-clock'
  | 'future'
  | 'before-from'
  | 'far'
  | 'too-long';

type Why =
  | { readonly why: 'out-of-range'; readonly range: Range }
  /** Seconds for a kilometre that nobody runs. */
  | { readonly why: 'pace'; readonly secondsPerKm: number }
  /** That tester had the pair then; null: nobody had it. */
  | { readonly why: 'with-another'; readonly tester: RecordId | null }
  /** The row that says the same. */
  | { readonly why: 'twice' | 'held-in-row'; readonly line: number }
  /** Null: the one on record. */
  | { readonly why: 'maybe-same'; readonly line: number | null }
  | { readonly why: 'held'; readonly tester: RecordId }
  | { readonly why: 'unknown-word'; readonly words: readonly string[] }
  | { readonly why: PlainWhy };

/** What is wrong with a cell, or odd: odd ones are taken when somebody says that they are right. */
export type CellTrouble = Why & { readonly column: Column; readonly grade: 'wrong' | 'odd' };

type KindOf = { testers: 'tester'; pairs: 'pair'; 'hand-outs': 'hand-out'; runs: 'run' };

/** A record that a row makes, or changes where it has an id. */
export type TableRecord = {
  [K in KindOf[TableKind]]: {
    readonly kind: K;
    readonly body: BodyOf<K>;
    readonly id?: RecordId;
  };
}[KindOf[TableKind]];

/** `changed`: a record with that code is here and says something else. */
export type Fate = 'new' | 'same' | 'changed' | 'odd' | 'wrong';

export interface ReadRow {
  readonly line: number;
  readonly fate: Fate;
  readonly troubles: readonly CellTrouble[];
  /** Absent where something is wrong, or where it is here already. */
  readonly record?: TableRecord;
}

/** A run that is on record, as far as a table is compared with it. */
export interface KnownRun {
  readonly tester: RecordId;
  readonly pair: RecordId;
  readonly startedAt: string;
  readonly distanceM: number;
  readonly dayOnly: boolean;
}

/** Reads the cells of one row and gathers what is wrong with them. */
export class RowReader {
  readonly line: number;
  readonly troubles: CellTrouble[] = [];
  readonly #row: SheetRow;
  readonly #columns: readonly (Column | null)[];
  readonly #ways: Ways;

  constructor(row: SheetRow, columns: readonly (Column | null)[], ways: Ways) {
    this.line = row.line;
    this.#row = row;
    this.#columns = columns;
    this.#ways = ways;
  }

  has(column: Column): boolean {
    return this.#columns.includes(column);
  }

  text(column: Column): string {
    const at = this.#columns.indexOf(column);
    return at < 0 ? '' : (this.#row.cells[at] ?? '');
  }

  fail(column: Column, why: Why): null {
    this.troubles.push({ column, grade: 'wrong', ...why });
    return null;
  }

  doubt(column: Column, why: Why): void {
    this.troubles.push({ column, grade: 'odd', ...why });
  }

  get isWrong(): boolean {
    return this.troubles.some(({ grade }) => grade === 'wrong');
  }

  /** Undefined: the cell is empty; null: it is wrong. */
  number(column: Column, range: Range, factor = 1): number | null | undefined {
    const text = this.text(column);
    if (text === '') return undefined;
    const typed = readNumber(text, this.#ways.decimal);
    if (typed === null) return this.fail(column, { why: 'no-number' });
    return isIn(typed * factor, range)
      ? typed * factor
      : this.fail(column, { why: 'out-of-range', range: inUnitOf(range, factor) });
  }

  /** Undefined: the cell is empty; null: it is wrong. */
  moment(column: Column): Moment | null | undefined {
    const text = this.text(column);
    if (text === '') return undefined;
    return readMoment(text, this.#ways.dates ?? 'dmy') ?? this.fail(column, { why: 'no-date' });
  }

  /** The one of a fixed list that the cell names, by any of its names. */
  oneOf<T extends string>(column: Column, names: ReadonlyMap<string, T>): T | null | undefined {
    const text = this.text(column).toLowerCase();
    if (text === '') return undefined;
    return (
      names.get(text) ??
      this.fail(column, { why: 'unknown-word', words: [...new Set(names.values())] })
    );
  }
}

/** A range in the unit of the table, so that the message says what can be typed. */
const inUnitOf = (range: Range, factor: number): Range =>
  factor === 1 ? range : { least: range.least / factor, most: range.most / factor, unit: null };
