/** Which dimension of a blueprint is a reading held against? */
import type { Reading } from './bodies/making.ts';
import type { Dimension } from './bodies/project.ts';

/** The dimension of the reading's place; one of its foot goes before one of both. */
export const dimensionOf = (
  blueprint: readonly Dimension[],
  { measure, site, unit, foot }: Pick<Reading, 'measure' | 'site' | 'unit' | 'foot'>,
): Dimension | undefined => {
  const own = blueprint.filter(
    (one) => one.measure === measure && one.site === site && one.unit === unit,
  );
  return own.find((one) => one.foot === foot) ?? own.find((one) => one.foot === undefined);
};
