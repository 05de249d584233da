import type { Tester } from '../../core/records/index.ts';
import { formatNumber } from '../parts/format.ts';
import { d } from '../words/index.ts';

/** A tester with the length of their feet, where it is known: does the pair fit? */
export const testerLabel = ({ code, footLengthMm }: Tester): string => {
  if (footLengthMm === undefined) return code;
  const [left, right] = [footLengthMm.left, footLengthMm.right].map((one) => formatNumber(one, 1));
  return `${code}, ${d().pairs.foot(left === right ? `${left}` : `${left} / ${right}`)}`;
};
