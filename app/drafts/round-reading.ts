/** The draft of a round, read back into a record, or why it cannot be. */
import type { ZoneCode } from '../../core/foot/index.ts';
import {
  editBody,
  isIn,
  rangeOf,
  ranges,
  type Change,
  type Dimension,
  type Last,
  type Range,
  type Round,
} from '../../core/records/index.ts';
import { millimetres, parseDecimal, plainText } from '../../core/units/index.ts';
import {
  lastFields,
  type ChangeDraft,
  type DimensionDraft,
  type LastField,
  type RoundDraft,
} from './round.ts';

/** What is wrong with a dimension, and in which of its fields. */
export interface DimensionTrouble {
  /** From 0. */
  readonly at: number;
  readonly field: 'site' | 'nominal' | 'lower' | 'upper' | 'leftRight';
  /** Which numbers can be there; absent: what was typed is none, or the two tolerances are the wrong way round. */
  readonly range?: Range;
}

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

export type ReadDraft =
  | { readonly ok: true; readonly body: Round }
  | ({ readonly ok: false; readonly part: 'blueprint' } & DimensionTrouble)
  | ({ readonly ok: false; readonly part: 'last' } & LastTrouble)
  | { readonly ok: false; readonly part: 'name' | 'layers' };

/** Binary fractions of percent do not come back as they were typed. */
const tidy = (value: number): number => Number(value.toPrecision(12));

/** A tolerance as typed, against its nominal; null where it is none. */
const toleranceOf = (typed: string, nominal: number): number | null => {
  const plain = plainText(typed);
  if (!plain.endsWith('%')) return parseDecimal(plain);
  const percent = parseDecimal(plain.slice(0, -1));
  return percent === null ? null : tidy((percent * nominal) / 100);
};

/** A part of the draft that was read, or what is wrong with it. */
type Read<Part, Trouble> = Part | { readonly wrong: Trouble };
const isTrouble = <Part extends object, Trouble>(
  read: Read<Part, Trouble>,
): read is { readonly wrong: Trouble } => 'wrong' in read;

/** The dimension, or which of its fields is wrong. */
const readDimension = (draft: DimensionDraft): Read<Dimension, Omit<DimensionTrouble, 'at'>> => {
  const wrong = (field: DimensionTrouble['field'], range?: Range) => ({
    wrong: { field, ...(range && { range }) },
  });
  const { measure, unit, foot } = draft;
  const site = draft.site.trim();
  if (!/^[a-z0-9][a-z0-9-]{0,39}$/.test(site)) return wrong('site');
  const possible = rangeOf(measure, unit);
  const nominal = parseDecimal(draft.nominal);
  if (nominal === null) return wrong('nominal');
  if (!isIn(nominal, possible)) return wrong('nominal', possible);
  const either = { ...possible, least: -possible.most };
  const [lower, upper] = [toleranceOf(draft.lower, nominal), toleranceOf(draft.upper, nominal)];
  if (lower === null) return wrong('lower');
  if (!isIn(lower, either)) return wrong('lower', either);
  if (upper === null || lower > upper) return wrong('upper');
  if (!isIn(upper, either)) return wrong('upper', either);
  const named = draft.leftRight.trim() !== '';
  const leftRight = named ? toleranceOf(draft.leftRight, nominal) : undefined;
  const difference = { ...possible, least: 0 };
  if (leftRight === null) return wrong('leftRight');
  if (leftRight !== undefined && !isIn(leftRight, difference))
    return wrong('leftRight', difference);
  const { foot: _foot, leftRight: _leftRight, ...kept } = draft.kept ?? {};
  return {
    ...kept,
    measure,
    site,
    unit,
    nominal,
    lower,
    upper,
    ...(foot !== 'both' && { foot }),
    ...(leftRight !== undefined && { leftRight }),
  };
};

const readChange = ({ part, what, mends, kept }: ChangeDraft): Change => {
  const { mends: before, ...rest } = kept ?? {};
  return {
    ...rest,
    part,
    what: what.trim(),
    // The zone belongs to the kind that it was noted with.
    ...(mends !== '' && { mends: before?.kind === mends ? before : { kind: mends } }),
  };
};

/** Undefined: no last is noted. */
const readLast = (
  typed: RoundDraft['last'],
  kept: Last | undefined,
): Read<Last, LastTrouble> | undefined => {
  if (Object.values(typed).every((one) => one.trim() === '')) return undefined;
  const read: Partial<Record<LastField, number>> = {};
  for (const field of lastFields) {
    if (typed[field].trim() === '') continue;
    const value = parseDecimal(typed[field]);
    const range = lastRanges[field];
    if (value === null || !isIn(value, range)) return { wrong: { field, range } };
    read[field] = value;
  }
  const { sizeMm, lengthMm, ballWidthMm, ballGirthMm, widthPerStepMm, girthPerStepMm } = read;
  if (typed.name.trim() === '') return { wrong: { field: 'name' } };
  if (sizeMm === undefined) return { wrong: { field: 'sizeMm' } };
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

/**
 * Reads a draft.
 * @param old the round as it was; its fields that no form knows are kept
 * @param place the project, and which of its rounds it is
 */
export const readDraft = (
  draft: RoundDraft,
  old: Round | null,
  place: Readonly<Pick<Round, 'project' | 'order'>>,
): ReadDraft => {
  if (draft.name.trim() === '') return { ok: false, part: 'name' };
  const blueprint: Dimension[] = [];
  for (const [at, one] of draft.dimensions.entries()) {
    const read = readDimension(one);
    if (isTrouble(read)) return { ok: false, part: 'blueprint', at, ...read.wrong };
    blueprint.push(read);
  }
  const last = readLast(draft.last, old?.last);
  if (last && isTrouble(last)) return { ok: false, part: 'last', ...last.wrong };
  const layers: NonNullable<Round['layers']> = [];
  for (const [zone, typed] of Object.entries(draft.layers)) {
    if (typed.trim() === '') continue;
    const count = parseDecimal(typed);
    if (count === null || !isIn(count, ranges.layers) || !Number.isInteger(count))
      return { ok: false, part: 'layers' };
    layers.push({ zone: zone as ZoneCode, count });
  }
  const named: Round = {
    ...place,
    name: draft.name.trim(),
    stage: draft.stage,
    changes: draft.changes.filter(({ what }) => what.trim() !== '').map(readChange),
    blueprint,
  };
  return {
    ok: true,
    body: editBody<'round'>(old ?? named, {
      ...named,
      foam: draft.foam === 'unsaid' ? undefined : draft.foam,
      last,
      layers: layers.length > 0 ? layers : undefined,
    }),
  };
};
