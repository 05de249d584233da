/** At which site is a limit of the brief held? The sites that its measure has, and what a change of measure does; pure. */
import type { Measure } from '../../core/records/index.ts';
import { practiceSites } from '../../core/rounds/index.ts';
import type { LimitDraft } from './project.ts';

/** Where something is measured. */
export interface KnownSite {
  readonly measure: Measure;
  readonly site: string;
}

/**
 * The sites to choose from, each once: those that this shoe's blueprint and checks name, then the usual ones.
 * @param chosen stands among them whatever it is; empty: every site
 */
export const sitesFor = (
  measure: Measure,
  known: readonly KnownSite[],
  chosen: string,
): readonly string[] => {
  const own = known.filter((one) => one.measure === measure).map(({ site }) => site);
  const all = [...own, ...practiceSites[measure], ...(chosen === '' ? [] : [chosen])];
  return [...new Set(all)];
};

/** The limit of another measure: a site that the measure has not gives way to its first one. */
export const withMeasureOfLimit = (
  limit: LimitDraft,
  measure: Measure,
  known: readonly KnownSite[],
): LimitDraft => {
  const sites = sitesFor(measure, known, '');
  const stays = limit.isTyped === true || limit.site === '' || sites.includes(limit.site);
  return { ...limit, measure, site: stays ? limit.site : (sites[0] ?? '') };
};
