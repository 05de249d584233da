/** A pair as it is typed, in its form or as a line of a list, read into a record, or what is wrong with it. */
import { drawCodes } from '../../core/panel/index.ts';
import { editBody, readBody, type Pair, type RecordId } from '../../core/records/index.ts';
import { footLengthOf, fromMetres, millimetres, sizeOf, toMetres } from '../../core/units/index.ts';
import { cellsOf, parseCell, type LineCells, type ReadOne } from './lines.ts';

/** As typed; the size is EU, `carried` is kilometres. */
export interface PairDraft {
  readonly code: string;
  readonly size: string;
  readonly carried: string;
}

export type PairTrouble =
  'no-code' | 'not-a-code' | 'taken' | 'not-a-size' | 'wrong-carried' | 'too-many-cells';

export interface AboutPair {
  readonly project: RecordId;
  readonly round: RecordId;
  /** Codes of the project's pairs so far. */
  readonly taken: ReadonlySet<string>;
}

/** From the shortest foot that a record takes to the longest that lasts are made for. Judgement, no source. */
export const EU_SIZES = { smallest: 17, largest: 56 } as const;

/** Which field of the form is wrong. */
export const fieldOfTrouble: Readonly<Record<PairTrouble, keyof PairDraft>> = {
  'no-code': 'code',
  'not-a-code': 'code',
  taken: 'code',
  'not-a-size': 'size',
  'wrong-carried': 'carried',
  'too-many-cells': 'carried',
};

const wrong = (why: PairTrouble): ReadOne<Pair, PairTrouble> => ({ ok: false, why });

/** Shortened as a figure is typed: no more than a tenth of a size, no more than metres. */
const short = (value: number, digits: number): string => String(Number(value.toFixed(digits)));

/** The draft of a pair that is on record. */
export const draftOfPair = ({ code, sizeMm, carriedInM }: Pair): PairDraft => ({
  code,
  size: short(sizeOf(sizeMm, 'eu'), 1),
  carried: carriedInM === undefined ? '' : short(fromMetres(carriedInM, 'km'), 3),
});

/** The size as typed, mm of foot length; null where there is no such size. */
const sizeMmOf = (typed: string) => {
  const eu = parseCell(typed);
  return eu === null || eu < EU_SIZES.smallest || eu > EU_SIZES.largest
    ? null
    : millimetres(Math.round(footLengthOf(eu, 'eu')));
};

/** Whether there is such a size as typed. */
export const isEuSize = (typed: string): boolean => sizeMmOf(typed) !== null;
export type ReadPair =
  | { readonly ok: true; readonly body: Pair }
  | { readonly ok: false; readonly troubles: readonly PairTrouble[] };

/**
 * Reads a draft, or says everything that is wrong with it.
 * @param old the pair as it was; a figure that still stands as it was shown stays exactly what it was, and so does
 *   what no form knows. Null: a new pair
 */
export const readPairDraft = (
  draft: PairDraft,
  about: AboutPair,
  old: Pair | null = null,
): ReadPair => {
  const { taken, ...place } = about;
  const shown = old && draftOfPair(old);
  const code = draft.code.trim().toUpperCase();
  const sizeMm = old && draft.size === shown?.size ? old.sizeMm : sizeMmOf(draft.size);
  const km = draft.carried.trim() === '' ? 0 : parseCell(draft.carried);
  const carriedInM =
    old && draft.carried === shown?.carried
      ? old.carriedInM
      : km === 0
        ? undefined
        : toMetres(km ?? Number.NaN, 'km');
  // What is no size or no number becomes NaN, which the schema refuses as it does one that cannot be.
  const typed = { ...place, code, sizeMm: sizeMm ?? millimetres(Number.NaN), carriedInM };
  const read = readBody('pair', editBody<'pair'>(old ?? typed, typed));
  const refused = new Set(read.ok ? [] : read.problems.map(({ field }) => field.split('.')[0]));
  const troubles: readonly PairTrouble[] = [
    ...(code === ''
      ? (['no-code'] as const)
      : taken.has(code)
        ? (['taken'] as const)
        : refused.has('code')
          ? (['not-a-code'] as const)
          : []),
    ...(refused.has('sizeMm') ? (['not-a-size'] as const) : []),
    ...(refused.has('carriedInM') ? (['wrong-carried'] as const) : []),
  ];
  if (read.ok && troubles.length === 0) return read;
  return { ok: false, troubles };
};

/** Reads a line `code size kilometres`; the last may be missing or empty, and the size too where there is a usual one. */
export const readPairLine = (
  { cells }: LineCells,
  usualSize: string,
  about: AboutPair,
): ReadOne<Pair, PairTrouble> => {
  const [code = '', size = '', carried = '', ...more] = cells;
  if (more.length > 0) return wrong('too-many-cells');
  const read = readPairDraft({ code, size: size === '' ? usualSize : size, carried }, about);
  return read.ok ? read : wrong(read.troubles[0] ?? 'not-a-code');
};

/**
 * The lines with a pair more for each size, under drawn codes.
 * @param sizes as typed; an empty one is put in later
 * @param used codes of the group's pairs so far
 * @returns null where there are not so many codes left
 */
export const withDrawn = (
  text: string,
  sizes: readonly string[],
  used: ReadonlySet<string>,
  seed: number,
): string | null => {
  const typed = text.split(/\r?\n/).map((line) => cellsOf(line).cells[0]?.toUpperCase() ?? '');
  const drawn = drawCodes(sizes.length, new Set([...used, ...typed]), seed);
  if (drawn === null) return null;
  const lines = drawn.map((code, at) => `${code} ${sizes[at]?.trim()}`);
  return [...(text.trim() === '' ? [] : [text.trimEnd()]), ...lines].join('\n');
};
