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

/** What stands in the grid; null: a cell holds no number. */
const readGrid = (draft: GaugeDraft, grid: NamesOfGrid): GaugeStudy['readings'] | null => {
  const { size, cells } = draft;
  const readings: GaugeStudy['readings'] = [];
  for (const operator of countTo(size.operators))
    for (const trial of countTo(size.trials))
      for (const part of countTo(size.parts)) {
        const value = typedNumber(cells[gridKey(operator, trial, part)] ?? '');
        if (value === null) return null;
        if (value !== undefined)
          readings.push({
            part: grid.part(part + 1),
            operator: operatorOf(draft, operator, grid),
            value,
          });
      }
  return readings;
};

/** What is wrong with the draft, for the form to say at the field. */
export type GaugeTrouble =
  | { readonly what: 'no-gauge' | 'same-name' | 'no-number' | 'too-few' }
  /** Null: no number. */
  | { readonly what: 'tolerance-width'; readonly value: number | null; readonly range: Range }
  | {
      readonly what: 'reading';
      readonly reading: GaugeStudy['readings'][number];
      readonly range: Range;
    };

/** The study as it would be saved, or the first thing that is wrong with it. */
export const typedStudy = (
  draft: GaugeDraft,
  project: RecordId,
  at: string,
  grid: NamesOfGrid,
): { readonly study: GaugeStudy } | { readonly trouble: GaugeTrouble } => {
  const { measure, unit, size, table } = draft;
  const possible = rangeOf(measure, unit);
  const [gauge, site] = [typedLine(draft.gauge), typedLine(draft.site)];
  if (gauge === undefined) return { trouble: { what: 'no-gauge' } };
  const toleranceWidth = typedNumber(draft.toleranceWidth);
  const widths: Range = { ...ranges.toleranceWidth, most: possible.most, unit };
  if (toleranceWidth === null || (toleranceWidth !== undefined && !isIn(toleranceWidth, widths)))
    return { trouble: { what: 'tolerance-width', value: toleranceWidth, range: widths } };
  const isTable = table.length > 0;
  const operators = new Set(countTo(size.operators).map((of) => operatorOf(draft, of, grid)));
  if (!isTable && operators.size < size.operators) return { trouble: { what: 'same-name' } };
  const readings = isTable ? table : readGrid(draft, grid);
  if (readings === null) return { trouble: { what: 'no-number' } };
  const reading = readings.find(({ value }) => !isIn(value, possible));
  if (reading) return { trouble: { what: 'reading', reading, range: possible } };
  if (readings.length < LEAST_READINGS) return { trouble: { what: 'too-few' } };
  return {
    study: {
      project,
      at,
      gauge,
      measure,
      unit,
      ...(site !== undefined && { site }),
      ...(toleranceWidth !== undefined && { toleranceWidth }),
      readings,
    },
  };
};
