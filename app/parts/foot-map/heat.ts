/** How does a count of testers become the heat of a zone, and in which steps are shares told apart? */
import type { ZoneCount } from '../../../core/complaints/index.ts';
import { zonesOfView, type FootView } from '../../../core/foot/index.ts';
import type { Foot } from '../../../core/records/index.ts';
import { zoneKey, type HeatLevel, type ZoneHeat } from './foot-map.tsx';

/** Steps that a reader can tell apart: none, up to a tenth, a quarter, a half, more. */
export const heatLevel = (share: number): Exclude<HeatLevel, 'unasked'> =>
  share === 0 ? 0 : share <= 0.1 ? 1 : share <= 0.25 ? 2 : share <= 0.5 ? 3 : 4;

/** Up to so many testers a zone can hold "3/98"; beyond, the share is written and the number said above. */
const MOST_WRITTEN = 99;

/**
 * Heat by zone and foot: testers who reported something there, of those asked. Empty where nobody was.
 * @param percent writes a share
 */
export const heatOfZones = (
  zones: Readonly<Record<Foot, readonly ZoneCount[]>>,
  testers: number,
  view: FootView,
  times: 'once' | 'twice',
  percent: (share: number) => string,
): ReadonlyMap<string, ZoneHeat> => {
  const heat = new Map<string, ZoneHeat>();
  if (testers === 0) return heat;
  for (const foot of ['left', 'right'] as const) {
    const counts = new Map(zones[foot].map((one) => [one.zone, one]));
    for (const zone of zonesOfView(view)) {
      const count = counts.get(zone);
      const reported = count ? (times === 'once' ? count.testers : count.testersTwice) : 0;
      const share = reported / testers;
      heat.set(zoneKey(foot, zone), {
        share,
        level: heatLevel(share),
        label: !count ? '' : testers <= MOST_WRITTEN ? `${reported}/${testers}` : percent(share),
      });
    }
  }
  return heat;
};
