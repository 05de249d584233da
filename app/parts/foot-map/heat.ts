/** In which steps does the foot map tell shares apart? */
import type { HeatLevel } from './foot-map.tsx';

/** Steps that a reader can tell apart: none, up to a tenth, a quarter, a half, more. */
export const heatLevel = (share: number): Exclude<HeatLevel, 'unasked'> =>
  share === 0 ? 0 : share <= 0.1 ? 1 : share <= 0.25 ? 2 : share <= 0.5 ? 3 : 4;
