/**
 * By which law may a value move with distance? Three, because few checks rarely tell them apart:
 *
 * - power: (1 + x/d0)^-p on a ratio scale, ln(1 + x/d0) on either. It joins the points of Cook SD, Kester MA
 *   & Brunet ME, Am J Sports Med 1985;13:248-253, in shoes worn by runners with d0 near 50 km;
 * - plateau: 1 - exp(-x/tau), "very rapidly and then settles";
 * - line: the same loss each kilometre.
 *
 * Each is scaled to 0 when new and 1 at 500 km, so a change means the same under all three.
 */

/** The distance to which published changes refer, metres. */
export const FULL_M = 500_000;

export type FormName = 'power' | 'plateau' | 'line';

export interface Form {
  readonly name: FormName;
  /** Weight before any check; the weights of all forms sum to one. */
  readonly weight: number;
  /** Prior of the form's distance, metres: lognormal; null for the line, which has none. */
  readonly bend: { readonly median: number; readonly logSd: number } | null;
  /** Share of the change of 500 km that is there after x metres. */
  readonly share: (x: number, bend: number) => number;
}

/**
 * The three forms. Medians and spreads of the bends: d0 47 to 52 km fitted to Cook et al. 1985, spread by
 * judgement; tau by judgement between 40 and 230 km, which the same points and a press report of "up to
 * 25 % within 200 km" span. The weights are judgement, checked by simulation (tests/calibrate/wear.ts).
 */
export const forms: readonly Form[] = [
  {
    name: 'power',
    weight: 0.5,
    bend: { median: 50_000, logSd: 0.6 },
    share: (x, bend) => Math.log1p(x / bend) / Math.log1p(FULL_M / bend),
  },
  {
    name: 'plateau',
    weight: 0.3,
    bend: { median: 150_000, logSd: 0.8 },
    share: (x, bend) => Math.expm1(-x / bend) / Math.expm1(-FULL_M / bend),
  },
  { name: 'line', weight: 0.2, bend: null, share: (x) => x / FULL_M },
];
