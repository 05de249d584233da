/** A gauge study as it is typed: into a grid of operators, trials and parts, or read from a table. Pure. */
import {
  isIn,
  rangeOf,
  ranges,
  type GaugeStudy,
  type Measure,
  type MeasureUnit,
  type Range,
  type RecordId,
} from '../../core/records/index.ts';
import { typedLine, typedNumber } from './typed.ts';

export interface GridSize {
  readonly parts: number;
  readonly operators: number;
  readonly trials: number;
}

/** The handbook's usual design, and the most that a grid holds. */
export const usualGrid: GridSize = { parts: 10, operators: 3, trials: 3 };
export const mostOfGrid: GridSize = { parts: 20, operators: 6, trials: 5 };

/** Fewer readings than two parts by two trials say nothing of a gauge. */
const LEAST_READINGS = 4;

export interface GaugeDraft {
  readonly gauge: string;
  readonly measure: Measure;
  readonly unit: MeasureUnit;
  /** Empty: every site. */
  readonly site: string;
  readonly toleranceWidth: string;
  readonly size: GridSize;
  /** Of operators, by their place; empty: as `NamesOfGrid` has it. */
  readonly names: Readonly<Record<number, string>>;
  /** What stands in the grid, by {@link gridKey}. */
  readonly cells: Readonly<Record<string, string>>;
  /** Readings of a table, which are taken instead of the grid's; empty: none was read. */
  readonly table: GaugeStudy['readings'];
}

export const newGaugeDraft: GaugeDraft = {
  gauge: '',
  measure: 'dimension',
  unit: 'mm',
  site: '',
  toleranceWidth: '',
  size: usualGrid,
  names: {},
  cells: {},
  table: [],
};

export const gridKey = (operator: number, trial: number, part: number): string =>
  `${operator} ${trial} ${part}`;

/** How parts and operators are called that nobody named; they count from 1. */
export interface NamesOfGrid {
  readonly part: (at: number) => string;
  readonly operator: (at: number) => string;
}

/** Of an operator of the grid, by place from 0. */
export const operatorOf = ({ names }: GaugeDraft, at: number, grid: NamesOfGrid): string =>
  names[at]?.trim() || grid.operator(at + 1);

const countTo = (many: number): number[] => Array.from({ length: many }, (_, at) => at);

type Readings = GaugeStudy['readings'];

/** What is wrong with the draft, for the form to say at the field or in the cell. */
export type GaugeTrouble =
  | { readonly what: 'no-gauge' | 'too-few' }
  /** Null: no number. */
  | { readonly what: 'tolerance-width'; readonly value: number | null; readonly range: Range }
  /** An operator of the grid, from 0, is called as an earlier one. */
  | { readonly what: 'same-name'; readonly operator: number }
  /** By {@link gridKey}; null: no number. */
  | {
      readonly what: 'cell';
      readonly key: string;
      readonly value: number | null;
      readonly range: Range;
    }
  /** A reading of the table, by its place from 0. */
  | { readonly what: 'table'; readonly at: number; readonly range: Range };

/** Every place of the grid, operator by operator, trial by trial. */
const placesOf = ({ parts, operators, trials }: GridSize) =>
  countTo(operators).flatMap((operator) =>
    countTo(trials).flatMap((trial) => countTo(parts).map((part) => ({ operator, trial, part }))),
  );

/** The readings of the grid, and each of its cells that holds none. */
const readGrid = (draft: GaugeDraft, grid: NamesOfGrid, range: Range) => {
  const readings: Readings = [];
  const troubles: GaugeTrouble[] = [];
  for (const { operator, trial, part } of placesOf(draft.size)) {
    const key = gridKey(operator, trial, part);
    const value = typedNumber(draft.cells[key] ?? '');
    if (value === undefined) continue;
    if (value === null || !isIn(value, range)) troubles.push({ what: 'cell', key, value, range });
    else
      readings.push({
        part: grid.part(part + 1),
        operator: operatorOf(draft, operator, grid),
        value,
      });
  }
  const names = new Map<string, number>();
  for (const operator of countTo(draft.size.operators)) {
    const name = operatorOf(draft, operator, grid);
    if (names.has(name)) troubles.push({ what: 'same-name', operator });
    else names.set(name, operator);
  }
  return { readings, troubles };
};

const readTable = ({ table }: GaugeDraft, range: Range) => ({
  readings: table,
  troubles: table.flatMap(({ value }, at): GaugeTrouble[] =>
    isIn(value, range) ? [] : [{ what: 'table', at, range }],
  ),
});

/** The study as it would be saved, or everything that is wrong with it. */
export const typedStudy = (
  draft: GaugeDraft,
  project: RecordId,
  at: string,
  grid: NamesOfGrid,
): { readonly study: GaugeStudy } | { readonly troubles: readonly GaugeTrouble[] } => {
  const { measure, unit } = draft;
  const possible = rangeOf(measure, unit);
  const [gauge, site] = [typedLine(draft.gauge), typedLine(draft.site)];
  const toleranceWidth = typedNumber(draft.toleranceWidth);
  const widths: Range = { ...ranges.toleranceWidth, most: possible.most, unit };
  const { readings, troubles } =
    draft.table.length > 0 ? readTable(draft, possible) : readGrid(draft, grid, possible);
  const wrong: readonly GaugeTrouble[] = [
    ...(gauge === undefined ? [{ what: 'no-gauge' } as const] : []),
    ...(toleranceWidth === undefined || (toleranceWidth !== null && isIn(toleranceWidth, widths))
      ? []
      : [{ what: 'tolerance-width', value: toleranceWidth, range: widths } as const]),
    ...troubles,
    ...(troubles.length === 0 && readings.length < LEAST_READINGS
      ? [{ what: 'too-few' } as const]
      : []),
  ];
  if (gauge === undefined || wrong.length > 0) return { troubles: wrong };
  return {
    study: {
      project,
      at,
      gauge,
      measure,
      unit,
      ...(site !== undefined && { site }),
      ...(typeof toleranceWidth === 'number' && { toleranceWidth }),
      readings,
    },
  };
};

/** The draft with a block pasted into its grid, from an operator's trial and a part on; what stands beyond the grid is left out. */
export const withBlock = (
  draft: GaugeDraft,
  at: { readonly row: number; readonly part: number },
  block: readonly (readonly string[])[],
): GaugeDraft => {
  const { parts, operators, trials } = draft.size;
  const cells = { ...draft.cells };
  for (const [down, line] of block.entries())
    for (const [across, text] of line.entries()) {
      const [row, part] = [at.row + down, at.part + across];
      if (row < operators * trials && part < parts)
        cells[gridKey(Math.floor(row / trials), row % trials, part)] = text;
    }
  return { ...draft, cells };
};
