import type { Tester } from '../../../core/records/index.ts';
import { formatNumber } from '../../parts/format.ts';
import { clauses, d } from '../../words/index.ts';

/** A tester with their name and the length of their feet, where they are known: does the pair fit? */
export const testerLabel = ({ code, name, footLengthMm }: Tester): string =>
  clauses(
    ...[code, name ?? '', footLengthMm ? footInWords(footLengthMm) : ''].filter(
      (one) => one !== '',
    ),
  );

const footInWords = (length: NonNullable<Tester['footLengthMm']>): string => {
  const [left = '', right = ''] = [length.left, length.right].map((one) => formatNumber(one, 1));
  return d().pairs.foot(left === right ? left : `${left} / ${right}`);
};
