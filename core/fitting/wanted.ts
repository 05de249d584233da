/** What do people want moved, summed up by line of the pattern: how far in the middle, how far apart, who against? */
import type { FitPlace, PartId, PatternLine } from '../foot/index.ts';
import {
  changeRangeOf,
  type ChangeDirection,
  type ChangeUnit,
  type Fit,
  type Foot,
  type ShoeSide,
  type StructuredChange,
} from '../records/index.ts';
import { median } from '../statistics/index.ts';
import { spreadOf, type Spread } from './agreement.ts';
import type { Fitter } from './fitters.ts';

/** Ways that undo each other lie on one axis; the first of each counts as positive. */
const axes = [
  ['more', 'less'],
  ['higher', 'lower'],
  ['forward', 'back'],
  ['outward', 'inward'],
] as const satisfies readonly (readonly [ChangeDirection, ChangeDirection])[];
type Axis = (typeof axes)[number];

const axisOf = (direction: ChangeDirection): Axis =>
  axes.find((axis) => (axis as readonly ChangeDirection[]).includes(direction)) as Axis;
const signOf = (direction: ChangeDirection): 1 | -1 =>
  axisOf(direction)[0] === direction ? 1 : -1;

export interface Wish {
  /** {@link Fitter.key} */
  readonly fitter: string;
  /** In the unit; positive along {@link WantedMove.direction}, negative the other way. Null: not said how far. */
  readonly by: number | null;
  /** Whether it goes the way of the sum. */
  readonly agrees: boolean;
}

export interface WantedMove {
  /** What moves and along which axis, in one word of its own. */
  readonly key: string;
  readonly part: PartId;
  readonly line?: PatternLine;
  readonly dimension?: NonNullable<StructuredChange['dimension']>;
  readonly side?: ShoeSide;
  /** Where all speak of one shoe alone. */
  readonly foot?: Foot;
  /** Which way most want it; null: as many one way as the other. */
  readonly direction: ChangeDirection | null;
  readonly unit: ChangeUnit;
  /** Of those who said how far, those against it negative; null: nobody did. */
  readonly by: Spread | null;
  readonly wishes: readonly Wish[];
}

type Moved = Pick<StructuredChange, 'part' | 'line' | 'dimension' | 'side'>;

const whatMoves = ({ part, line, dimension, side }: Moved): readonly string[] => [
  part,
  line ?? (dimension ? `${dimension.measure} ${dimension.site}` : 'whole'),
  side ?? 'both',
];

const keyOf = (change: StructuredChange): string =>
  [...whatMoves(change), axisOf(change.direction)[0], change.by?.unit ?? 'mm'].join('/');

interface Said {
  readonly fitter: string;
  readonly change: StructuredChange;
}

const wantedMoveOf = (key: string, said: readonly Said[]): WantedMove => {
  const [first] = said as [Said, ...Said[]];
  const { part, line, dimension, side } = first.change;
  const [positive, negative] = axisOf(first.change.direction);
  const people = [...new Set(said.map(({ fitter }) => fitter))].map((fitter) => {
    const own = said.filter((one) => one.fitter === fitter).map(({ change }) => change);
    const sign = Math.sign(own.reduce((sum, { direction }) => sum + signOf(direction), 0));
    const far = own.flatMap(({ direction, by }) => (by ? [signOf(direction) * by.amount] : []));
    // One voice a person: who names the left and the right shoe counts once, with the middle of the two.
    return { fitter, sign, far: median(far) };
  });
  const votes = people.reduce((sum, { sign, far }) => sum + Math.sign(far ?? sign), 0);
  const way = Math.sign(votes);
  const feet = new Set(said.map(({ change }) => change.foot ?? 'both'));
  const [foot] = feet;
  const turn = way === 0 ? 1 : way;
  const wishes = people.map(({ fitter, sign, far }): Wish => {
    const by = far === null ? null : far * turn;
    return { fitter, by, agrees: way !== 0 && Math.sign(far ?? sign) === way };
  });
  return {
    ...{ key, part, wishes, unit: first.change.by?.unit ?? 'mm' },
    ...(line && { line }),
    ...(dimension && { dimension }),
    ...(side && { side }),
    ...(feet.size === 1 && foot !== 'both' && foot !== undefined && { foot }),
    direction: way === 0 ? null : way > 0 ? positive : negative,
    by: spreadOf(wishes.flatMap(({ by }) => (by === null ? [] : [by]))),
  };
};

const agreeing = ({ wishes }: WantedMove): number => wishes.filter(({ agrees }) => agrees).length;

/**
 * Every line or dimension that somebody wants moved, the one that most agree on first. Each person has one voice, by the
 * trial that speaks for them; amounts in other units stand apart.
 */
export const wantedMoves = (fitters: readonly Fitter[]): readonly WantedMove[] => {
  const byKey = new Map<string, Said[]>();
  for (const { key: fitter, best } of fitters)
    for (const change of best.body.wanted ?? []) {
      const key = keyOf(change);
      byKey.set(key, [...(byKey.get(key) ?? []), { fitter, change }]);
    }
  return [...byKey]
    .map(([key, said]) => wantedMoveOf(key, said))
    .sort((a, b) => agreeing(b) - agreeing(a) || b.wishes.length - a.wishes.length);
};

/**
 * The change to ask for: the middle of what people want, on the step that a change is given in. Null where they are
 * divided, or the middle is no way at all.
 */
export const changeOf = ({
  part,
  line,
  dimension,
  side,
  foot,
  direction,
  unit,
  by,
}: WantedMove): StructuredChange | null => {
  if (direction === null || (by !== null && by.median <= 0)) return null;
  const { least, most } = changeRangeOf(unit);
  const amount =
    by &&
    Math.min(most, Math.max(least, Number((Math.round(by.median / least) * least).toFixed(3))));
  return {
    part,
    ...(line && { line }),
    ...(dimension && { dimension }),
    ...(side && { side }),
    ...(foot && { foot }),
    direction,
    ...(amount !== null && { by: { amount, unit } }),
  };
};

const move = (part: PartId, line: PatternLine, direction: ChangeDirection) => ({
  part,
  line,
  direction,
});
const last = (site: string, direction: ChangeDirection) => ({
  part: 'last' as const,
  dimension: { measure: 'dimension' as const, site },
  direction,
});

type Move = Pick<StructuredChange, 'part' | 'line' | 'dimension' | 'direction'>;

/** What is usually moved where a place is off (common practice, no source); the fitter decides. */
const usualMoves: Readonly<Record<FitPlace, Readonly<Record<Exclude<Fit, 'right'>, Move>>>> = {
  length: {
    little: last('last-stick-length', 'more'),
    much: last('last-stick-length', 'less'),
  },
  'toe-height': {
    little: move('upper-pattern', 'toe-overlay', 'higher'),
    much: move('upper-pattern', 'toe-overlay', 'lower'),
  },
  'toe-width': {
    little: move('upper-pattern', 'vamp', 'outward'),
    much: move('upper-pattern', 'vamp', 'inward'),
  },
  ball: { little: last('last-ball-girth', 'more'), much: last('last-ball-girth', 'less') },
  instep: {
    little: move('upper-pattern', 'eyestay', 'outward'),
    much: move('upper-pattern', 'eyestay', 'inward'),
  },
  heel: {
    little: move('upper-pattern', 'back-curve', 'outward'),
    much: move('upper-pattern', 'back-curve', 'inward'),
  },
  collar: {
    little: move('upper-pattern', 'collar', 'higher'),
    much: move('upper-pattern', 'collar', 'lower'),
  },
};

/** What a person may want moved where they say that a place is off. @param mm as they estimated it; null: not said */
export const usualMove = (
  place: FitPlace,
  fit: Exclude<Fit, 'right'>,
  mm: number | null,
  foot: Foot | null,
): StructuredChange => ({
  ...usualMoves[place][fit],
  ...(foot && { foot }),
  ...(mm !== null && { by: { amount: mm, unit: 'mm' } }),
});

/** What moves and which way, not how far: the same wish of two people, and what was asked for already, have the same. */
export const moveKey = (change: Moved & Pick<StructuredChange, 'foot' | 'direction'>): string =>
  [...whatMoves(change), change.foot ?? 'both', change.direction].join('/');
