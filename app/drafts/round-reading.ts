/** The draft of a round, read back into a record, or why it cannot be. */
import type { ZoneCode } from '../../core/foot/index.ts';
import {
  editBody,
  isIn,
  measures,
  ranges,
  type Change,
  type Last,
  type Range,
  type Round,
  type StructuredChange,
} from '../../core/records/index.ts';
import { millimetres, parseDecimal } from '../../core/units/index.ts';
import {
  changeTroubles,
  readChange as readFigures,
  saysChange,
  type ChangeTrouble,
} from './change.ts';
import { readSole, type SoleTrouble } from './compound.ts';
import { readDimensions, type DimensionTrouble } from './dimension-reading.ts';
import {
  lastFields,
  limitKey,
  type ChangeDraft,
  type LastField,
  type RoundDraft,
} from './round.ts';

/** What the figures of a last can be. */
const lastRanges: Readonly<Record<LastField, Range>> = {
  sizeMm: ranges.footLengthMm,
  lengthMm: ranges.lastLengthMm,
  ballWidthMm: ranges.footWidthMm,
  ballGirthMm: ranges.ballGirthMm,
  widthPerStepMm: ranges.widthPerStepMm,
  girthPerStepMm: ranges.girthPerStepMm,
};

/** What is missing of a last, or which of its figures cannot be. */
export interface LastTrouble {
  readonly field: 'name' | LastField;
  readonly range?: Range;
}

/** What is wrong, and in which part of the form. */
export type RoundTrouble =
  | ({ readonly part: 'blueprint' } & DimensionTrouble)
  | ({ readonly part: 'last' } & LastTrouble)
  | { readonly part: 'layers'; readonly zone: ZoneCode }
  | ({ readonly part: 'sole' } & SoleTrouble)
  | ({ readonly part: 'changes'; readonly at: number } & ChangeTrouble)
  | { readonly part: 'name' };

export type ReadDraft =
  | { readonly ok: true; readonly body: Round }
  | { readonly ok: false; readonly troubles: readonly RoundTrouble[] };

/** A part of the draft that was read, or everything that is wrong with it. */
type Read<Part, Trouble> = Part | { readonly wrong: readonly Trouble[] };
const isTrouble = <Part extends object, Trouble>(
  read: Read<Part, Trouble>,
): read is { readonly wrong: readonly Trouble[] } => 'wrong' in read;

/** The limit that a key names; undefined: none. */
const limitOf = (
  key: string,
  before: StructuredChange['limit'],
): NonNullable<StructuredChange['limit']> | undefined => {
  if (key === '') return undefined;
  if (before && limitKey(before) === key) return before;
  const [measure, ...site] = key.split(' ');
  const known = measures.find((one) => one === measure);
  return known && { measure: known, ...(site.join(' ') !== '' && { site: site.join(' ') }) };
};

/** The figures of a change as they are saved; null: none are said. */
const figuresOf = ({ part, figures, limit, kept }: ChangeDraft): StructuredChange | null => {
  const before = kept?.structured ?? null;
  const read = saysChange(figures) ? readFigures({ ...figures, part }, before) : null;
  if (!read) return null;
  const { limit: _limit, ...rest } = read;
  const meant = limitOf(limit, before?.limit);
  return { ...rest, ...(meant && { limit: meant }) };
};

/** Whether a row says anything: one that nobody filled in is no change. */
const saysAnything = ({ what, figures }: ChangeDraft): boolean =>
  what.trim() !== '' || saysChange(figures);

const readChange =
  (say: (change: StructuredChange) => string) =>
  (draft: ChangeDraft): Change => {
    const { part, what, mends, kept } = draft;
    const { mends: before, structured: _structured, ...rest } = kept ?? {};
    const structured = figuresOf(draft);
    const words = what.trim();
    return {
      ...rest,
      part,
      what: words === '' && structured ? say(structured) : words,
      // The zone belongs to the kind that it was noted with.
      ...(mends !== '' && { mends: before?.kind === mends ? before : { kind: mends } }),
      ...(structured && { structured }),
    };
  };

/** Undefined: no last is noted. */
const readLast = (
  typed: RoundDraft['last'],
  kept: Last | undefined,
): Read<Last, LastTrouble> | undefined => {
  if (Object.values(typed).every((one) => one.trim() === '')) return undefined;
  const read: Partial<Record<LastField, number>> = {};
  const wrong: LastTrouble[] = [];
  for (const field of lastFields) {
    if (typed[field].trim() === '') continue;
    const value = parseDecimal(typed[field]);
    const range = lastRanges[field];
    if (value === null || !isIn(value, range)) wrong.push({ field, range });
    else read[field] = value;
  }
  const { sizeMm, lengthMm, ballWidthMm, ballGirthMm, widthPerStepMm, girthPerStepMm } = read;
  if (typed.name.trim() === '') wrong.push({ field: 'name' });
  if (typed.sizeMm.trim() === '') wrong.push({ field: 'sizeMm' });
  if (wrong.length > 0 || sizeMm === undefined) return { wrong };
  const cleared = Object.fromEntries(
    Object.entries(kept ?? {}).filter(([key]) => !(lastFields as readonly string[]).includes(key)),
  );
  return {
    ...cleared,
    name: typed.name.trim(),
    sizeMm: millimetres(sizeMm),
    ...(lengthMm !== undefined && { lengthMm: millimetres(lengthMm) }),
    ...(ballWidthMm !== undefined && { ballWidthMm: millimetres(ballWidthMm) }),
    ...(ballGirthMm !== undefined && { ballGirthMm: millimetres(ballGirthMm) }),
    ...(widthPerStepMm !== undefined && { widthPerStepMm: millimetres(widthPerStepMm) }),
    ...(girthPerStepMm !== undefined && { girthPerStepMm: millimetres(girthPerStepMm) }),
  };
};

type Layer = NonNullable<Round['layers']>[number];

const readLayers = (typed: RoundDraft['layers']): readonly Read<Layer, ZoneCode>[] =>
  (Object.entries(typed) as [ZoneCode, string][])
    .filter(([, count]) => count.trim() !== '')
    .map(([zone, text]) => {
      const count = parseDecimal(text);
      return count === null || !isIn(count, ranges.layers) || !Number.isInteger(count)
        ? { wrong: [zone] }
        : { zone, count };
    });

/** Everything of a part that could be read. */
const fine = <Part extends object, Trouble>(all: readonly Read<Part, Trouble>[]): Part[] =>
  all.filter((one): one is Part => !isTrouble(one));

/**
 * Reads a draft, or says everything that is wrong with it.
 * @param old the round as it was; its fields that no form knows are kept
 * @param place the project, and which of its rounds it is
 * @param say a change in figures in the words of who writes it: of one that is said in figures alone
 */
export const readDraft = (
  draft: RoundDraft,
  old: Round | null,
  place: Readonly<Pick<Round, 'project' | 'order'>>,
  say: (change: StructuredChange) => string,
): ReadDraft => {
  const blueprint = readDimensions(draft.dimensions);
  const sole = readSole(draft.sole, old);
  const last = readLast(draft.last, old?.last);
  const layers = readLayers(draft.layers);
  const isLastFine = last === undefined || !isTrouble(last);
  const troubles: readonly RoundTrouble[] = [
    ...(draft.name.trim() === '' ? [{ part: 'name' } as const] : []),
    ...draft.changes.flatMap(({ figures }, at) =>
      saysChange(figures)
        ? changeTroubles(figures).map((one) => ({ part: 'changes', at, ...one }) as const)
        : [],
    ),
    ...sole.troubles.map((one) => ({ part: 'sole', ...one }) as const),
    ...blueprint.troubles.map((one) => ({ part: 'blueprint', ...one }) as const),
    ...(isLastFine ? [] : last.wrong.map((one) => ({ part: 'last', ...one }) as const)),
    ...layers.flatMap((read) =>
      isTrouble(read) ? read.wrong.map((zone) => ({ part: 'layers', zone }) as const) : [],
    ),
  ];
  if (troubles.length > 0 || !isLastFine) return { ok: false, troubles };
  const counted = fine(layers);
  const named: Round = {
    ...place,
    name: draft.name.trim(),
    stage: draft.stage,
    changes: draft.changes.filter(saysAnything).map(readChange(say)),
    blueprint: [...blueprint.dimensions],
  };
  return {
    ok: true,
    body: editBody<'round'>(old ?? named, {
      ...named,
      foam: draft.foam === 'unsaid' ? undefined : draft.foam,
      midsole: sole.sole.midsole,
      outsole: sole.sole.outsole,
      last,
      layers: counted.length > 0 ? counted : undefined,
    }),
  };
};
