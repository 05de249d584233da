/** Bench checks typed as one table: a row a place and foot, a column a pair, of which each becomes one check. Pure. */
import type { BenchCheck, RecordId } from '../../core/records/index.ts';
import { metres, type Metres } from '../../core/units/index.ts';
import type { CellAt } from './cell-moves.ts';
import { newCheckDraft, typedCheck } from './check.ts';
import type { Gauges } from './check-gauges.ts';
import {
  isTyped,
  withAsked,
  type AskedPlace,
  type ReadingForm,
  type WrongRow,
} from './check-readings.ts';

export interface GridDraft {
  readonly round: RecordId | '';
  /** As `datetime-local` gives it, in the time of the device. */
  readonly at: string;
  /** Null: not said, so it goes by whether a pair of the round was measured before. */
  readonly arrival: boolean | null;
  readonly operator: string;
  readonly gauges: Gauges;
  /** As typed, by {@link cellKey}. */
  readonly values: Readonly<Record<string, string>>;
}

export type GridRow = Pick<ReadingForm, 'measure' | 'site' | 'foot' | 'unit'>;

export interface GridPair {
  readonly id: RecordId;
  /** On it before the test. */
  readonly carriedInM?: Metres | undefined;
}

/** The rows: what is asked of a pair, left and right. */
export const gridRows = (asked: readonly AskedPlace[]): readonly GridRow[] =>
  withAsked([], asked).map(({ measure, site, foot, unit }) => ({ measure, site, foot, unit }));

/** What stays with a pair and a place, whatever rows and columns come to stand around it. */
export const cellKey = (pair: RecordId, { measure, site, foot, unit }: GridRow): string =>
  [pair, measure, site, foot, unit].join(' ');

/** A wrong value, by its place in the table. */
export type WrongCell = CellAt & Pick<WrongRow, 'value' | 'range'>;

export interface ReadGrid {
  readonly checks: readonly BenchCheck[];
  readonly wrong: readonly WrongCell[];
  /** The day cannot be read. */
  readonly noDay: boolean;
}

/** The checks of all pairs with a value, and every cell that holds none that can be. */
export const readGrid = (
  draft: GridDraft & { readonly arrival: boolean },
  rows: readonly GridRow[],
  pairs: readonly GridPair[],
  project: RecordId,
): ReadGrid => {
  const checks: BenchCheck[] = [];
  const wrong: WrongCell[] = [];
  let noDay = false;
  for (const [column, { id: pair, carriedInM = metres(0) }] of pairs.entries()) {
    const readings = rows.map((row): ReadingForm => ({
      ...row,
      value: draft.values[cellKey(pair, row)] ?? '',
      uncertainty: '',
      load: '',
    }));
    if (!readings.some(isTyped)) continue;
    const { at, arrival, operator, gauges } = draft;
    const check = { ...newCheckDraft(0), pair, at, arrival, operator, gauges, readings };
    const typed = typedCheck(check, project, carriedInM, null);
    if ('check' in typed) checks.push(typed.check);
    else
      for (const trouble of typed.troubles)
        if (trouble.what === 'row') {
          const { at: row, value, range } = trouble;
          wrong.push({ row, column, value, range });
        } else noDay = true;
  }
  return { checks, wrong, noDay };
};

/**
 * The values with a block pasted from a cell on.
 * @returns with the number of cells beyond the table, which are left out
 */
export const withPasted = (
  values: GridDraft['values'],
  from: CellAt,
  block: readonly (readonly string[])[],
  rows: readonly GridRow[],
  pairs: readonly GridPair[],
): { readonly values: GridDraft['values']; readonly beyond: number } => {
  const pasted: Record<string, string> = { ...values };
  let beyond = 0;
  for (const [down, line] of block.entries())
    for (const [across, text] of line.entries()) {
      const row = rows[from.row + down];
      const pair = pairs[from.column + across];
      if (row && pair) pasted[cellKey(pair.id, row)] = text;
      else if (text !== '') beyond += 1;
    }
  return { values: pasted, beyond };
};

/** As many pairs as stand beside each other and can be taken in at a look. Judgement. */
export const PAIRS_AT_ONCE = 12;
