/**
 * The gamma function's logarithm and the incomplete gamma function, and with them the chi-squared
 * distribution.
 *
 * Sources: Stirling's series, Abramowitz & Stegun, Handbook of Mathematical Functions (1964), 6.1.41;
 * series and continued fraction of the incomplete gamma function, NIST Digital Library of Mathematical
 * Functions 8.7.1 and 8.9.2, the latter by Lentz's method (Thompson & Barnett, J Comput Phys 1986;64).
 */

/** The coefficients B(2k) / (2k (2k − 1)) of Stirling's series, in 1/x, 1/x³ … */
const STIRLING = [
  1 / 12,
  -1 / 360,
  1 / 1260,
  -1 / 1680,
  1 / 1188,
  -691 / 360_360,
  1 / 156,
  -3617 / 122_400,
] as const;

/** ln Γ(x) for x > 0; about 14 digits. @throws RangeError where x is not positive */
export const logGamma = (x: number): number => {
  if (!(x > 0)) throw new RangeError('logGamma is for positive numbers');
  let shifted = x;
  let product = 1;
  while (shifted < 16) product *= shifted++;
  const inverse = 1 / shifted;
  const square = inverse * inverse;
  const series =
    STIRLING.reduceRight((sum, coefficient) => sum * square + coefficient, 0) * inverse;
  return (
    (shifted - 0.5) * Math.log(shifted) -
    shifted +
    0.5 * Math.log(2 * Math.PI) +
    series -
    Math.log(product)
  );
};

/** ln of the number of ways to choose k of n. */
export const logChoose = (n: number, k: number): number =>
  logGamma(n + 1) - logGamma(k + 1) - logGamma(n - k + 1);

const TINY = 1e-300;
const EPSILON = 1e-16;

/** The upper regularised incomplete gamma function Q(a, x), a > 0, x ≥ 0. */
export const upperGamma = (a: number, x: number): number => {
  if (x <= 0) return 1;
  if (x === Infinity) return 0;
  const front = Math.exp(a * Math.log(x) - x - logGamma(a));
  if (x < a + 1) {
    let term = 1 / a;
    let sum = term;
    for (let n = 1; n < 10_000 && Math.abs(term) > Math.abs(sum) * EPSILON; n++) {
      term *= x / (a + n);
      sum += term;
    }
    return 1 - sum * front;
  }
  let b = x + 1 - a;
  let c = 1 / TINY;
  let d = 1 / b;
  let fraction = d;
  for (let n = 1; n < 10_000; n++) {
    const an = -n * (n - a);
    b += 2;
    d = 1 / (an * d + b || TINY);
    c = b + an / c || TINY;
    const step = c * d;
    fraction *= step;
    if (Math.abs(step - 1) < EPSILON * 4) break;
  }
  return front * fraction;
};

/** Probability that a chi-squared variable with `df` degrees of freedom is at least x. */
export const chiSquaredUpper = (x: number, df: number): number => upperGamma(df / 2, x / 2);
