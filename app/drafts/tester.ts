/** A tester as they stand in their form: everything as typed, read back into a record, or which field is wrong. */
import {
  editBody,
  isIn,
  ranges,
  readBody,
  type Range,
  type Tester,
} from '../../core/records/index.ts';
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

export type ReadTester =
  | { readonly ok: true; readonly body: Tester }
  | {
      readonly ok: false;
      readonly field: keyof TesterDraft;
      readonly why: 'missing' | 'not-a-code' | 'taken' | 'wrong-number' | 'wrong-length';
    };

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

/** Left and right as typed, one figure for both where they are alike. Undefined: not said; null: no number. */
const feetOf = (typed: string, old: Feet | undefined): Feet | null | undefined => {
  if (typed.trim() === '') return undefined;
  const [left, right = left, ...more] = plainText(typed)
    .split(/\s*\/\s*|\s+/)
    .map(parseCell);
  return left === null || left === undefined || right === null || right === undefined || more.length
    ? null
    : { ...old, left: millimetres(left), right: millimetres(right) };
};

const isLength = (mm: number): boolean => isIn(mm, ranges.footLengthMm);

/** What the figures of a field can be, in the unit they are typed in. */
export const rangesOfTester: Readonly<Partial<Record<keyof TesterDraft, Range>>> = {
  width: ranges.footWidthMm,
  girth: ranges.ballGirthMm,
  mass: ranges.massKg,
  height: { least: 100 * ranges.heightM.least, most: 100 * ranges.heightM.most, unit: 'cm' },
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

const ifSaid = <T>(value: number | undefined, of: (value: number) => T): T | undefined =>
  value === undefined ? undefined : of(value);

/**
 * Reads a draft.
 * @param old the tester as they were; what no form knows is kept
 * @param taken the other testers' codes
 */
export const readTesterDraft = (
  draft: TesterDraft,
  old: Tester | null,
  taken: ReadonlySet<string>,
): ReadTester => {
  const wrong = (field: keyof TesterDraft): ReadTester => ({
    ok: false,
    field,
    why: field === 'code' ? 'not-a-code' : field === 'length' ? 'wrong-length' : 'wrong-number',
  });
  const code = draft.code.trim().toUpperCase();
  if (code === '') return { ok: false, field: 'code', why: 'missing' };
  if (taken.has(code)) return { ok: false, field: 'code', why: 'taken' };
  const length = feetOf(draft.length, old?.footLengthMm);
  const width = feetOf(draft.width, old?.footWidthMm);
  const girth = feetOf(draft.girth, old?.ballGirthMm);
  const [mass, height] = [typedNumber(draft.mass), typedNumber(draft.height)];
  if (length === null || (length && !(isLength(length.left) && isLength(length.right))))
    return wrong('length');
  if (width === null) return wrong('width');
  if (girth === null) return wrong('girth');
  if (mass === null) return wrong('mass');
  if (height === null) return wrong('height');
  const read = readBody(
    'tester',
    editBody<'tester'>(old ?? { code }, {
      code,
      name: typedLine(draft.name),
      footLengthMm: length,
      footWidthMm: width,
      ballGirthMm: girth,
      massKg: ifSaid(mass, kilograms),
      heightM: ifSaid(height, (cm) => metres(cm / 100)),
    }),
  );
  if (read.ok) return read;
  const [top = ''] = (read.problems[0]?.field ?? '').split('.');
  return wrong(fieldOf[top] ?? 'code');
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
  if (read.why === 'taken') return { ok: false, why: 'taken' };
  return { ok: false, why: read.field === 'length' ? 'wrong-length' : 'not-a-code' };
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
