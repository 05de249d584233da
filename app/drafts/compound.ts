/** What midsole and outsole are made of, as it is typed: a name and the hardness that was ordered. Pure. */
import { isIn, ranges, type Compound, type Range, type Round } from '../../core/records/index.ts';
import { typedLine, typedNumber } from './typed.ts';

/** The parts of the sole with a compound of their own. */
export const soleParts = ['midsole', 'outsole'] as const;
export type SolePart = (typeof soleParts)[number];

type HardnessUnit = NonNullable<Compound['hardness']>['unit'];

export interface CompoundDraft {
  readonly name: string;
  readonly hardness: string;
  readonly unit: HardnessUnit;
}

export type SoleDraft = Readonly<Record<SolePart, CompoundDraft>>;

/** Foams are usually read in Asker C, rubbers in Shore A (common practice, no source). */
const usualUnit: Readonly<Record<SolePart, HardnessUnit>> = {
  midsole: 'asker-c',
  outsole: 'shore-a',
};

const draftOf = (part: SolePart, compound: Compound | undefined): CompoundDraft => ({
  name: compound?.name ?? '',
  hardness: compound?.hardness === undefined ? '' : String(compound.hardness.value),
  unit: compound?.hardness?.unit ?? usualUnit[part],
});

/** The draft of a round's compounds, or of none. */
export const draftOfSole = (round: Pick<Round, SolePart> | null): SoleDraft => ({
  midsole: draftOf('midsole', round?.midsole),
  outsole: draftOf('outsole', round?.outsole),
});

/** Whether nothing is said of a compound: its scale alone says nothing. */
export const isBlankSole = (sole: SoleDraft): boolean =>
  soleParts.every((part) => `${sole[part].name}${sole[part].hardness}`.trim() === '');

/** A hardness that is no number, or none of the scale. */
export interface SoleTrouble {
  readonly of: SolePart;
  /** Absent: what was typed is no number. */
  readonly range?: Range;
}

/**
 * Reads one compound.
 * @param kept as it was; fields that no form knows stay
 * @returns undefined where nothing is said of it
 */
const readCompound = (
  typed: CompoundDraft,
  kept: Compound | undefined,
): { readonly compound: Compound | undefined } | Omit<SoleTrouble, 'of'> => {
  const value = typedNumber(typed.hardness);
  if (value === null) return {};
  if (value !== undefined && !isIn(value, ranges.hardness)) return { range: ranges.hardness };
  const name = typedLine(typed.name);
  const { name: _name, hardness, ...rest } = kept ?? {};
  const compound: Compound = {
    ...rest,
    ...(name !== undefined && { name }),
    ...(value !== undefined && { hardness: { ...hardness, value, unit: typed.unit } }),
  };
  return { compound: Object.keys(compound).length > 0 ? compound : undefined };
};

/**
 * Reads both compounds, or says which hardness cannot be.
 * @param old the round as it was
 */
export const readSole = (sole: SoleDraft, old: Pick<Round, SolePart> | null) => {
  const read: Partial<Record<SolePart, Compound>> = {};
  const troubles: SoleTrouble[] = [];
  for (const part of soleParts) {
    const one = readCompound(sole[part], old?.[part]);
    if (!('compound' in one)) troubles.push({ of: part, ...one });
    else if (one.compound) read[part] = one.compound;
  }
  return { sole: read, troubles };
};
