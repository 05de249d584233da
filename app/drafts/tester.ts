/** A tester as they stand in their form: everything as typed, read back into a record, or which fields are wrong. */
import { editBody, ranges, readBody, type Range, type Tester } from '../../core/records/index.ts';
import { kilograms, metres, millimetres } from '../../core/units/index.ts';
import { plainText } from '../../core/units/typed.ts';
import { typedLine, typedNumber } from './typed.ts';
import { cellsOf, parseCell, type LineCells, type ReadOne } from './lines.ts';

/** As typed; feet are `left / right` or one figure for both. */
export interface TesterDraft {
  readonly code: string;
  readonly name: string;
  readonly length: string;
  readonly width: string;
  readonly girth: string;
  readonly mass: string;
  readonly height: string;
}

/** What is wrong with a field. */
export interface TesterTrouble {
  readonly field: keyof TesterDraft;
  readonly why: 'missing' | 'not-a-code' | 'taken' | 'wrong-number' | 'wrong-length';
}

export type ReadTester =
  | { readonly ok: true; readonly body: Tester }
  | { readonly ok: false; readonly troubles: readonly TesterTrouble[] };

type Feet = NonNullable<Tester['footLengthMm']>;

/** Binary fractions of metres do not come back as centimetres that were typed. */
const written = (value: number | undefined): string =>
  value === undefined ? '' : String(Number(value.toPrecision(12)));

const writtenFeet = (feet: Feet | undefined): string =>
  feet === undefined
    ? ''
    : feet.left === feet.right
      ? written(feet.left)
      : `${written(feet.left)} / ${written(feet.right)}`;

/** The draft of a tester, or of a new one. */
export const draftOfTester = (tester: Tester | null): TesterDraft => ({
  code: tester?.code ?? '',
  name: tester?.name ?? '',
  length: writtenFeet(tester?.footLengthMm),
  width: writtenFeet(tester?.footWidthMm),
  girth: writtenFeet(tester?.ballGirthMm),
  mass: written(tester?.massKg),
  height: tester?.heightM === undefined ? '' : written(100 * tester.heightM),
});

/** Left and right as typed, one figure for both where they are alike. Undefined: not said; not numbers: none were typed. */
const feetOf = (typed: string, old: Feet | undefined): Feet | undefined => {
  if (typed.trim() === '') return undefined;
  const [left = null, right = left, ...more] = plainText(typed)
    .split(/\s*\/\s*|\s+/)
    .map(parseCell);
  const mm = (value: number | null) =>
    millimetres(more.length > 0 ? Number.NaN : (value ?? Number.NaN));
  return { ...old, left: mm(left), right: mm(right) };
};

/** As the form has it. */
const heightCm: Range = {
  least: 100 * ranges.heightM.least,
  most: 100 * ranges.heightM.most,
  unit: 'cm',
};

/** What the figures of a field can be, in the unit they are typed in. */
export const rangesOfTester: Readonly<Partial<Record<keyof TesterDraft, Range>>> = {
  width: ranges.footWidthMm,
  girth: ranges.ballGirthMm,
  mass: ranges.massKg,
  height: heightCm,
};

const fieldOf: Readonly<Record<string, keyof TesterDraft>> = {
  code: 'code',
  name: 'name',
  footLengthMm: 'length',
  footWidthMm: 'width',
  ballGirthMm: 'girth',
  massKg: 'mass',
  heightM: 'height',
};

/** Undefined: not said; not a number: none was typed. */
const figureOf = <T>(typed: string, of: (value: number) => T): T | undefined => {
  const value = typedNumber(typed);
  return value === undefined ? undefined : of(value ?? Number.NaN);
};

const whyOf = (
  field: keyof TesterDraft,
  code: string,
  taken: ReadonlySet<string>,
): TesterTrouble['why'] => {
  if (field === 'length') return 'wrong-length';
  if (field !== 'code') return 'wrong-number';
  return code === '' ? 'missing' : taken.has(code) ? 'taken' : 'not-a-code';
};

/**
 * Reads a draft, or says everything that is wrong with it.
 * @param old the tester as they were; what no form knows is kept
 * @param taken the other testers' codes
 */
export const readTesterDraft = (
  draft: TesterDraft,
  old: Tester | null,
  taken: ReadonlySet<string>,
): ReadTester => {
  const code = draft.code.trim().toUpperCase();
  // What is no number becomes NaN, which the schema refuses as it does one that cannot be.
  const read = readBody(
    'tester',
    editBody<'tester'>(old ?? { code }, {
      code,
      name: typedLine(draft.name),
      footLengthMm: feetOf(draft.length, old?.footLengthMm),
      footWidthMm: feetOf(draft.width, old?.footWidthMm),
      ballGirthMm: feetOf(draft.girth, old?.ballGirthMm),
      massKg: figureOf(draft.mass, kilograms),
      heightM: figureOf(draft.height, (cm) => metres(cm / 100)),
    }),
  );
  const wrong = new Set(
    read.ok ? [] : read.problems.map(({ field }) => fieldOf[field.split('.')[0] ?? ''] ?? 'code'),
  );
  if (taken.has(code)) wrong.add('code');
  if (read.ok && wrong.size === 0) return read;
  const inOrder = (Object.keys(draft) as (keyof TesterDraft)[]).filter((field) => wrong.has(field));
  return {
    ok: false,
    troubles: inOrder.map((field) => ({ field, why: whyOf(field, code, taken) })),
  };
};

export type TesterLineTrouble = 'not-a-code' | 'taken' | 'wrong-length' | 'too-many-cells';

const isFigures = (cell = ''): boolean => /^\d[\d.,/ ]*$/.test(cell);

/**
 * Reads a line `code name length`, of which the code must be there. Between spaces a last cell of figures is the
 * length, all between is the name; in a table figures alone in the second cell are the length too.
 */
export const readTesterLine = (
  { by, cells }: LineCells,
  taken: ReadonlySet<string>,
): ReadOne<Tester, TesterLineTrouble> => {
  const [code = '', ...rest] = cells;
  const hasLength = by === 'table' ? rest.length > 1 || isFigures(rest[0]) : isFigures(rest.at(-1));
  const names = hasLength ? rest.slice(0, -1) : rest;
  // Left and right in cells of their own would make a name of the left one, and so would 265 before mm.
  const tooMany = (by === 'table' && names.length > 1) || names.some((cell) => isFigures(cell));
  if (tooMany) return { ok: false, why: 'too-many-cells' };
  const length = hasLength ? (rest.at(-1) ?? '') : '';
  const name = names.join(' ');
  const read = readTesterDraft({ ...draftOfTester(null), code, name, length }, null, taken);
  if (read.ok) return read;
  const [first] = read.troubles;
  if (first?.why === 'taken') return { ok: false, why: 'taken' };
  return { ok: false, why: first?.field === 'length' ? 'wrong-length' : 'not-a-code' };
};

/** Codes as testers mostly have them: T01, T02 … */
const NUMBERED = /^T(\d{1,4})$/;
const numbered = (number: number): string => `T${String(number).padStart(2, '0')}`;

/** A code has a digit in it; a name mostly has none. */
const hasCode = ({ cells: [first = ''] }: LineCells): boolean => /\d/.test(first);

/**
 * The lines with a code before each that begins with a name, and lines with a code alone until there are `count`.
 * The codes go on after the highest that is used.
 * @param taken the group's codes so far
 */
export const withCodes = (text: string, count: number, taken: ReadonlySet<string>): string => {
  const lines = text.trim() === '' ? [] : text.trimEnd().split(/\r?\n/);
  const typed = lines.map((line) => cellsOf(line).cells[0]?.toUpperCase() ?? '');
  let last = [...taken, ...typed].reduce(
    (most, code) => Math.max(most, Number(NUMBERED.exec(code)?.[1] ?? 0)),
    0,
  );
  const coded = lines.map((line) => {
    const cells = cellsOf(line);
    if (cells.cells.length === 0 || hasCode(cells)) return line;
    last += 1;
    return `${numbered(last)}${line.includes('\t') ? '\t' : line.includes(';') ? '; ' : ' '}${line.trim()}`;
  });
  const filled = coded.filter((line) => line.trim() !== '').length;
  const more = Array.from({ length: Math.max(0, count - filled) }, (_, at) =>
    numbered(last + at + 1),
  );
  return [...coded, ...more].join('\n');
};
