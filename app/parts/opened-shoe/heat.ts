/** How warm does each zone of the opened shoe look, from what is pointed at there? */
import type { ZoneCode } from '../../../core/foot/index.ts';
import type { Foot } from '../../../core/records/index.ts';
import type { Callout } from '../../../core/review/index.ts';
import { heatLevel } from '../foot-map/heat.ts';
import type { DrawnZone } from '../foot-map/shoe-drawing.tsx';

const levelOf = (one: Callout): DrawnZone['level'] =>
  one.what === 'complaint'
    ? heatLevel(one.askedTesters > 0 ? one.testers / one.askedTesters : 0)
    : one.what === 'damage' || one.what === 'wear'
      ? 2
      : 0;

/** The zones of one shoe that a callout lies on, each as warm as its warmest one. */
export const heatOfCallouts = (
  callouts: readonly Callout[],
  foot: Foot,
): ReadonlyMap<ZoneCode, DrawnZone> => {
  const found = new Map<ZoneCode, DrawnZone>();
  for (const one of callouts) {
    if (one.side !== 'both' && one.side !== foot) continue;
    const level = levelOf(one);
    if (level > (found.get(one.zone)?.level ?? 0)) found.set(one.zone, { level });
  }
  return found;
};
