/**
 * What came apart and is answered by no finding yet? Damage needs no statistics: one bond that opens is one too many, so
 * every report opens a corrective finding by itself. Nothing is written without a person: it stands until a lead writes the
 * finding that answers it (`finding.damage`), or the report is taken back.
 */
import type { PartId, ZoneCode } from '../foot/index.ts';
import { mileageAt } from '../mileage/index.ts';
import type { DamageReport, Foot, RecordId } from '../records/index.ts';
import type { Metres } from '../units/index.ts';
import { groupBy } from '../statistics/index.ts';
import { ownRecords, type ProjectLog } from './project-log.ts';
import { zoneOfDamageAt } from './shoe-spots.ts';

/** Reports of one damage of one pair: one finding answers them all. */
export interface DamageFinding {
  /** The first report. */
  readonly id: RecordId;
  readonly reports: readonly RecordId[];
  readonly pair: RecordId;
  readonly code: string;
  readonly round: RecordId;
  readonly what: DamageReport['what'];
  /** Null: not said, or both. */
  readonly foot: Foot | null;
  /** When it was first reported, and what was on the pair then. */
  readonly at: string;
  readonly pairM: Metres;
  readonly part: PartId;
  readonly zone: ZoneCode;
  readonly photos: readonly string[];
}

/** Whose part it usually is (common practice, no source). */
const partOf: Readonly<Record<DamageReport['what'], PartId>> = {
  'sole-peeling': 'outsole',
  'plate-cracked': 'midsole-geometry',
  'heel-counter-broken': 'upper-pattern',
  'upper-torn': 'upper-material',
  'eyelet-torn': 'lacing',
  'tread-torn': 'outsole',
  other: 'tooling',
};

/** Damage that no finding answers, the earliest first. */
export const openDamage = (log: ProjectLog): readonly DamageFinding[] => {
  const answered = new Set(
    ownRecords(log.records.finding, log.id).flatMap(({ body }) => body.damage ?? []),
  );
  const reports = ownRecords(log.records['damage-report'], log.id).sort(
    (a, b) =>
      Date.parse(a.body.at) - Date.parse(b.body.at) || (a.revision.id < b.revision.id ? -1 : 1),
  );
  return [...groupBy(reports, ({ body }) => `${body.pair} ${body.what}`).values()].flatMap(
    (own): DamageFinding[] => {
      const [first] = own;
      const pair = log.pairs.find(({ id }) => id === first?.body.pair);
      if (!first || !pair || own.some(({ revision }) => answered.has(revision.id))) return [];
      const { what, at } = first.body;
      const feet = new Set(own.map(({ body }) => body.foot ?? null));
      const [foot = null] = feet;
      return [
        {
          id: first.revision.id,
          reports: own.map(({ revision }) => revision.id),
          pair: pair.id,
          code: pair.record.body.code,
          round: pair.round,
          what,
          foot: feet.size === 1 ? foot : null,
          at,
          pairM: mileageAt(pair.curve, Date.parse(at)),
          part: partOf[what],
          zone: zoneOfDamageAt(what),
          photos: [...new Set(own.flatMap(({ body }) => body.photos ?? []))],
        },
      ];
    },
  );
};
