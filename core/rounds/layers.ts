/**
 * Are the zones of the upper with more layers of material the ones that testers call hot and wet?
 *
 * Within one round every asked run was asked about all zones, so shares of zones can be set beside each other.
 * The association is Kendall's over zones (variance with ties, normal with continuity correction); its p-value takes
 * zones for independent, which feet are not, so it is a hint where to look and no proof. Intervals: runs with the tester
 * as the cluster, testers by Wilson.
 */
import { heatKinds, type ZoneCode } from '../foot/index.ts';
import type { Complaint, RecordId } from '../records/index.ts';
import {
  clusteredProportion,
  groupBy,
  stratifiedKendall,
  wilson,
  type ClusteredShare,
  type Interval,
} from '../statistics/index.ts';

/** Below so many zones with layers no order of them tells: four can be in order by chance once in 24. */
export const LEAST_ZONES = 5;

export interface AskedRun {
  readonly tester: RecordId;
  readonly complaints: readonly Pick<Complaint, 'zone' | 'kind'>[];
}

export interface LayeredZone {
  readonly zone: ZoneCode;
  readonly layers: number;
  readonly runs: number;
  /** Share of the asked runs that called the zone hot or wet; null where nobody was asked. */
  readonly runShare: ClusteredShare | null;
  readonly testers: number;
  readonly testerShare: (Interval & { readonly share: number }) | null;
}

export interface LayersAndHeat {
  readonly askedRuns: number;
  readonly askedTesters: number;
  /** Most layers first. */
  readonly zones: readonly LayeredZone[];
  readonly association:
    | { readonly ok: true; readonly zones: number; readonly tau: number; readonly p: number }
    | {
        readonly ok: false;
        readonly why: 'nobody-asked' | 'too-few-zones' | 'same-layers' | 'same-shares';
        readonly zones: number;
      };
}

/** Sets the layers of a round's zones against the hot and wet complaints there. Zones not counted are absent. */
export const layersAndHeat = (
  layers: readonly { readonly zone: ZoneCode; readonly count: number }[],
  runs: readonly AskedRun[],
): LayersAndHeat => {
  const byTester = [...groupBy(runs, ({ tester }) => tester).values()];
  const zones = [...new Map(layers.map((one) => [one.zone, one.count]))]
    .map(([zone, count]): LayeredZone => {
      const hot = byTester.map(
        (own) =>
          own.filter(({ complaints }) =>
            complaints.some((one) => one.zone === zone && heatKinds.includes(one.kind)),
          ).length,
      );
      const testers = hot.filter((times) => times > 0).length;
      return {
        zone,
        layers: count,
        runs: hot.reduce((a, b) => a + b, 0),
        runShare: clusteredProportion(
          hot,
          byTester.map((own) => own.length),
        ),
        testers,
        testerShare:
          byTester.length === 0
            ? null
            : { share: testers / byTester.length, ...wilson(testers, byTester.length) },
      };
    })
    .sort((a, b) => b.layers - a.layers || (a.zone < b.zone ? -1 : 1));
  return {
    askedRuns: runs.length,
    askedTesters: byTester.length,
    zones,
    association: associationOf(zones, runs.length),
  };
};

const associationOf = (
  zones: readonly LayeredZone[],
  askedRuns: number,
): LayersAndHeat['association'] => {
  const no = (why: 'nobody-asked' | 'too-few-zones' | 'same-layers' | 'same-shares') => ({
    ok: false as const,
    why,
    zones: zones.length,
  });
  if (askedRuns === 0) return no('nobody-asked');
  if (zones.length < LEAST_ZONES) return no('too-few-zones');
  const [x, y] = [zones.map(({ layers }) => layers), zones.map(({ runs }) => runs)];
  if (new Set(x).size < 2) return no('same-layers');
  if (new Set(y).size < 2) return no('same-shares');
  const { s, p } = stratifiedKendall([{ x, y }]);
  return { ok: true, zones: zones.length, tau: s / Math.sqrt(untied(x) * untied(y)), p };
};

/** Pairs that are not tied: under the root of Kendall's tau-b (Kendall MG, Rank Correlation Methods, 1975). */
const untied = (values: readonly number[]): number => {
  const n = values.length;
  const ties = [...groupBy(values, (value) => value).values()];
  return (n * (n - 1)) / 2 - ties.reduce((sum, { length }) => sum + (length * (length - 1)) / 2, 0);
};
