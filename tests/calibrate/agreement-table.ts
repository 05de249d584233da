/** Lowest and highest coverage of the intervals of agreement over designs, a line a true correlation, as a table. */
import { coverageOf, sizes, type Shape } from './agreement.ts';

const WHICH = ['one', 'oneLevelled', 'panel'] as const;
const LEVELS = [0, 0.3, 0.7] as const;

export const AGREEMENT_HEADER = [
  '| true ICC(2,1), scores | designs | one score | after levels | mean of the panel | designs outside of 90 to 98 % |',
  '| --- | --- | --- | --- | --- | --- |',
] as const;

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;

/** @param panels simulated for each design */
export const agreementRows = (panels: number, seed: number): readonly string[] =>
  (
    [
      [0, 'normal'],
      [0.3, 'normal'],
      [0.6, 'normal'],
      [0.9, 'normal'],
      [0, 'tens'],
      [0.6, 'tens'],
      [0, 'heavy tails'],
      [0.6, 'heavy tails'],
    ] as const satisfies readonly (readonly [number, Shape])[]
  ).map(([icc, shape]) => {
    const designs = sizes
      .filter(({ testers }) => testers % 3 === 0)
      .flatMap((size) => LEVELS.map((levels) => ({ ...size, icc, levels })));
    const covered = designs.map((design, at) => coverageOf(design, panels, seed + at, shape));
    const span = WHICH.map((which) => covered.map((one) => one[which])).map(
      (shares) => `${percent(Math.min(...shares))} to ${percent(Math.max(...shares))}`,
    );
    const isOutside = (share: number) => share < 0.9 || (icc > 0 && share > 0.98);
    const outside = covered.filter((one) => WHICH.some((which) => isOutside(one[which]))).length;
    return `| ${icc}, ${shape} | ${designs.length} | ${span.join(' | ')} | ${outside} |`;
  });
