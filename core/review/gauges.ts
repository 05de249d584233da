/** How far can each gauge be trusted? The group's gauge studies, read and looked up by the readings. */
import type { GaugeUncertainty } from '../rounds/index.ts';
import type { GaugeStudy, Reading, RecordId, RecordOf } from '../records/index.ts';
import { gaugeStudy, type GaugeStudyResult } from '../statistics/index.ts';
import { gaugeName } from '../wear/index.ts';

export interface GaugeReview extends Pick<GaugeStudy, 'at' | 'gauge' | 'measure' | 'unit'> {
  readonly id: RecordId;
  /** Null: it speaks for every site of the measure. */
  readonly site: string | null;
  readonly toleranceWidth: number | null;
  readonly result: GaugeStudyResult;
}

/** What gauge studies say, latest first. */
export const reviewGauges = (studies: readonly RecordOf<'gauge-study'>[]): readonly GaugeReview[] =>
  studies
    .map(({ body, revision }) => ({
      id: revision.id,
      at: body.at,
      gauge: body.gauge,
      measure: body.measure,
      unit: body.unit,
      site: body.site ?? null,
      toleranceWidth: body.toleranceWidth ?? null,
      result: gaugeStudy(body.readings, body.toleranceWidth ?? null),
    }))
    .sort((a, b) => Date.parse(b.at) - Date.parse(a.at) || (a.id < b.id ? -1 : 1));

/**
 * The uncertainty of a reading: the one it states; else that of the latest gauge study of the same gauge, measure
 * and unit, one of the same site before one of every site. Null: not known.
 */
export const uncertaintyOf = (
  { measure, site, unit, gauge, uncertainty }: Reading,
  gauges: readonly GaugeReview[],
): GaugeUncertainty | null => {
  if (uncertainty !== undefined && uncertainty > 0)
    return { repeatable: 0, lasting: uncertainty, betweenOperators: false, from: 'reading' };
  if (gauge === undefined) return null;
  const own = gauges.filter(
    (one) =>
      one.result.ok &&
      one.result.anova.gauge > 0 &&
      gaugeName(one.gauge) === gaugeName(gauge) &&
      one.measure === measure &&
      one.unit === unit,
  );
  const best = own.find((one) => one.site === site) ?? own.find((one) => one.site === null);
  const found = best?.result;
  if (!found?.ok) return null;
  const { repeatability, reproducibility } = found.anova;
  return {
    repeatable: repeatability,
    lasting: reproducibility,
    betweenOperators: true,
    from: 'gauge-study',
  };
};
