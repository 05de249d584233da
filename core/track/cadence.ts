/**
 * Steps of both feet a minute from what a device calls cadence: some count both feet, some one, and the file does
 * not say which. 86 is running counted by one foot, 110 walking counted by both; the pace tells them apart.
 */

/** Faster than this is running: about where people change (1.9 to 2.1 m/s; common knowledge, no source read). */
const RUNNING_MPS = 2;
/**
 * Step length over cadence of walkers, metres per step a minute, nearly the same at every speed (Sekiya & Nagasaki,
 * Gait Posture 1998;7:225-227; value from memory).
 */
const WALK_RATIO = 0.0064;
/** Nobody's feet are faster, steps a minute: sprinters reach about 280. Judgement, no source. */
const FASTEST = 280;

/**
 * Steps of both feet a minute to expect at a speed. Running by the regression of Hoeger et al. (ACSM's Health Fit J
 * 2008;12(1):14-19, from memory) for 1.70 m, with whom it hardly matters: the two readings differ by a factor of two.
 */
const expectedSteps = (mps: number): number => {
  if (mps < RUNNING_MPS) return Math.sqrt((60 * mps) / WALK_RATIO);
  const minutesPerMile = 1609.344 / 60 / mps;
  return (1084 + 143.6 * minutesPerMile - 13.5 * (1.7 / 0.0254)) / minutesPerMile;
};

/**
 * Steps of both feet a minute.
 * @param cadence mean of what the device wrote
 * @param mps mean speed while moving
 */
export const stepsPerMinute = (cadence: number, mps: number): number =>
  2 * cadence <= FASTEST && cadence < expectedSteps(mps) / Math.SQRT2 ? 2 * cadence : cadence;
