/**
 * What is to be different in a shoe, as it stands in a form: a specialist offers it in a proposal, a lead edits it
 * before a round carries it. Read back into the structured change, or which field is wrong. Pure.
 */
import { patternLines, type PartId } from '../../core/foot/index.ts';
import { practiceDimensions } from '../../core/rounds/index.ts';
import {
  changeDirections,
  changeRangeOf,
  changeUnits,
  isIn,
  unitsOf,
  type ChangeDirection,
  type ChangeUnit,
  type Foot,
  type Range,
  type ShoeSide,
  type StructuredChange,
} from '../../core/records/index.ts';
import { typedNumber } from './typed.ts';

/** What moves: `line collar`, `dimension back-height` (measure and site), or empty: the part as a whole. */
export type WhatMoves = string;

export interface ChangeFormDraft {
  readonly part: PartId;
  readonly what: WhatMoves;
  readonly side: ShoeSide | '';
  readonly foot: Foot | 'both';
  /** Empty: not said. Nothing is said of a change until it is. */
  readonly direction: ChangeDirection | '';
  /** As typed, without a sign. */
  readonly amount: string;
  readonly unit: ChangeUnit;
}

export type ChangeTrouble =
  { readonly field: 'direction' } | { readonly field: 'amount'; readonly range: Range };

/** The lines of the pattern and the usual dimensions, as a form offers them. */
export const whatCanMove: readonly WhatMoves[] = [
  ...patternLines.map((line) => `line ${line}`),
  ...practiceDimensions.map(({ measure, site }) => `${measure} ${site}`),
];

const DIMENSION = /^(\S+) (.+)$/;

/** What moves, taken apart; empty: the part as a whole. */
export const movedOf = (what: WhatMoves): Pick<StructuredChange, 'line' | 'dimension'> => {
  const [, first, second] = DIMENSION.exec(what) ?? [];
  if (first === undefined || second === undefined) return {};
  return first === 'line'
    ? { line: second as (typeof patternLines)[number] }
    : { dimension: { measure: first as keyof typeof unitsOf, site: second } };
};

/** A line moves, a dimension grows or shrinks; a part as a whole can do either. */
export const directionsOf = (what: WhatMoves): readonly ChangeDirection[] =>
  changeDirections.filter((one) => {
    const isQuantity = one === 'more' || one === 'less';
    return what === '' || (what.startsWith('line ') ? !isQuantity : isQuantity);
  });

const isChangeUnit = (unit: string): unit is ChangeUnit =>
  (changeUnits as readonly string[]).includes(unit);

/** In which units what moves can be given. */
export const changeUnitsOf = (what: WhatMoves): readonly ChangeUnit[] => {
  const { line, dimension } = movedOf(what);
  if (line) return ['mm', 'deg'];
  return dimension
    ? [...(unitsOf[dimension.measure] as readonly string[]).filter(isChangeUnit), '%']
    : changeUnits;
};

/** A form in which nothing is said yet. */
export const emptyChangeForm = (part: PartId): ChangeFormDraft => ({
  part,
  what: '',
  side: '',
  foot: 'both',
  direction: '',
  amount: '',
  unit: 'mm',
});

/** @param write a number as the reader types it */
export const draftOfChange = (
  { part, line, dimension, side, foot, direction, by }: StructuredChange,
  write: (value: number) => string,
): ChangeFormDraft => ({
  part,
  what: line ? `line ${line}` : dimension ? `${dimension.measure} ${dimension.site}` : '',
  side: side ?? '',
  foot: foot ?? 'both',
  direction,
  amount: by ? write(by.amount) : '',
  unit: by?.unit ?? 'mm',
});

/** The draft with another thing that moves: a direction or unit that does not go with it is no longer chosen. */
export const withMoved = (draft: ChangeFormDraft, what: WhatMoves): ChangeFormDraft => {
  const units = changeUnitsOf(what);
  return {
    ...draft,
    what,
    direction: directionsOf(what).some((one) => one === draft.direction) ? draft.direction : '',
    unit: units.includes(draft.unit) ? draft.unit : (units[0] as ChangeUnit),
  };
};

/** Whether anything is said of a change; the part alone is no change. */
export const saysChange = ({ what, side, direction, amount }: ChangeFormDraft): boolean =>
  what !== '' || side !== '' || direction !== '' || amount.trim() !== '';

/** Everything that is wrong with a change of which something is said. */
export const changeTroubles = (draft: ChangeFormDraft): readonly ChangeTrouble[] => {
  const amount = typedNumber(draft.amount);
  const range = changeRangeOf(draft.unit);
  return [
    ...(draft.direction === '' ? [{ field: 'direction' } as const] : []),
    ...(amount === null || (amount !== undefined && !isIn(amount, range))
      ? [{ field: 'amount', range } as const]
      : []),
  ];
};

/**
 * The change that a draft says; null where nothing is said of one, or something is wrong.
 * @param before the change that the draft was begun from: what a newer app wrote into it stays
 */
export const readChange = (
  draft: ChangeFormDraft,
  before: StructuredChange | null,
): StructuredChange | null => {
  const { part, what, side, foot, direction, unit } = draft;
  if (direction === '' || changeTroubles(draft).length > 0) return null;
  const amount = typedNumber(draft.amount) ?? undefined;
  const { line, dimension } = movedOf(what);
  const {
    line: _line,
    dimension: _dimension,
    side: _side,
    foot: _foot,
    by: _by,
    ...kept
  } = before ?? {};
  return {
    ...kept,
    part,
    ...(line && { line }),
    ...(dimension && { dimension }),
    ...(side !== '' && { side }),
    ...(foot !== 'both' && { foot }),
    direction,
    ...(amount !== undefined && { by: { amount, unit } }),
  };
};
