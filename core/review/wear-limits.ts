/** How far does a new pair of a round keep each limit of the brief that its bench readings speak to? */
import type { RecordId } from '../records/index.ts';
import type { RankedCheck, WearFit, WearKind } from '../wear/index.ts';
import type { ProjectLog } from './project-log.ts';
import { spreadCause, type SpreadCause } from './spread-cause.ts';
import {
  fitOf,
  isOf,
  nextOf,
  outlookOf,
  seriesOf,
  type LimitOutlook,
  type WearPlace,
} from './wear-series.ts';

/** What the series of a round say of the brief's limits: the fit and the outlook of each limit. */
export interface FittedLimit extends WearPlace, LimitOutlook {
  readonly basis: WearFit<WearKind>['basis'];
  readonly pairs: number;
  readonly checks: number;
  readonly next: readonly RankedCheck[];
  /** Why further checks would hardly settle it; null where they would, or where it is settled. */
  readonly spread: SpreadCause | null;
}

/**
 * The limits of the brief that this round's readings speak to, each place by itself.
 * @param asksNext whether the next checks are wanted, which takes longest
 */
export const fitLimits = (
  log: ProjectLog,
  round: RecordId,
  asksNext = true,
): readonly FittedLimit[] => {
  const { limits, distanceM } = log.project.brief;
  return seriesOf(log, round, 'distance').series.flatMap((series) => {
    const own = limits.filter((limit) => isOf(limit, series));
    if (own.length === 0) return [];
    const fit = fitOf(log, round, series);
    return own.map((limit): FittedLimit => {
      const outlook = outlookOf(fit, limit, distanceM);
      const open = outlook.hold === null || outlook.hold.word === 'not-known-yet';
      const next = asksNext && open ? nextOf(log, fit, series, 2) : [];
      return {
        round,
        kind: series.kind,
        site: series.site,
        basis: fit.basis,
        ...outlook,
        pairs: fit.pairs.length,
        checks: series.checks.length,
        next,
        spread: asksNext
          ? spreadCause(fit, series, limit, distanceM, next, (one) => fitOf(log, round, one))
          : null,
      };
    });
  });
};
