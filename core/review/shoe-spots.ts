/**
 * On which zone of the drawn shoe does a place of the bench, or a damage, lie? Only for drawing: where nothing better
 * is known, the part's usual place. Common practice, no source.
 */
import type { ZoneCode } from '../foot/index.ts';
import type { DamageReport } from '../records/index.ts';

const zoneOfSite: Readonly<Record<string, ZoneCode>> = {
  'internal-length': 'U2',
  'back-height': 'U9',
  'collar-height-medial': 'U8',
  'collar-height-lateral': 'U8',
  'heel-cup-width': 'U10',
  'toe-cap-length': 'U1',
  'vamp-length': 'U4',
  'eyestay-length': 'U5',
  'eyelet-pitch': 'U5',
  'tongue-length': 'U5',
  'heel-centre': 'P9',
  'heel-lateral': 'P9',
  'heel-medial': 'P8',
  'forefoot-centre': 'P4',
  'forefoot-lateral': 'P5',
  'forefoot-medial': 'P3',
  'outsole-length': 'P6',
  'outsole-width': 'P4',
};

const zoneOfDamage: Readonly<Record<DamageReport['what'], ZoneCode>> = {
  'sole-peeling': 'P9',
  'plate-cracked': 'P6',
  'heel-counter-broken': 'U10',
  'upper-torn': 'U3',
  'eyelet-torn': 'U5',
  'tread-torn': 'P4',
  other: 'P6',
};

/** The zone at which a site of the bench is drawn; null: the shoe as a whole, or a site of the shop's own. */
export const zoneAtSite = (site: string): ZoneCode | null => zoneOfSite[site] ?? null;

/** The zone at which a damage is drawn. */
export const zoneOfDamageAt = (what: DamageReport['what']): ZoneCode => zoneOfDamage[what];
