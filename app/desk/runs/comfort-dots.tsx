/** Comfort of one run on 0-100 lines, each beside the tester's other runs in the same pair. */
import type { RunLook } from '../../../core/review/index.ts';
import { formatNumber } from '../../parts/format.ts';
import { p, terms } from '../../words/index.ts';
import { Picture } from '../frame/picture.tsx';
import { useWidth } from '../../parts/charts/use-width.ts';

const ROW = 34;
const [LEFT, RIGHT] = [140, 12];

const middleOf = (values: readonly number[]): number | null => {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted.length === 0 ? null : (sorted[(sorted.length - 1) >> 1] as number);
};

export const ComfortDots = (props: {
  readonly comfort: RunLook['comfort'];
  readonly tester: string;
}) => {
  const words = p().runs;
  const { comfort, tester } = props;
  const [measure, width] = useWidth(440);
  const rows = comfort.filter(({ score, others }) => score !== null || others.length > 0);
  if (rows.every(({ score }) => score === null)) return <p class="soft">{words.noComfort}</p>;
  const x = (score: number) => LEFT + ((width - LEFT - RIGHT) * score) / 100;
  const height = rows.length * ROW + 8;
  const others = Math.max(...rows.map((row) => row.others.length));
  return (
    <Picture
      title={words.comfort(tester)}
      says={words.comfortSays(tester, others)}
      table={() => ({
        head: [words.attribute, words.thisRun, words.usually],
        rows: rows.map((row) => {
          const usual = middleOf(row.others);
          return [
            terms().attributes[row.attribute].name,
            row.score === null ? words.notSaid : formatNumber(row.score, 0),
            usual === null ? '' : formatNumber(usual, 0),
          ];
        }),
      })}
    >
      <svg
        ref={measure}
        viewBox={`0 0 ${width} ${height}`}
        height={height}
        role="img"
        aria-label={words.comfortSays(tester, others)}
      >
        {rows.map(({ attribute, score, others: beside }, at) => {
          const y = at * ROW + 24;
          return (
            <g key={attribute}>
              <text x={0} y={y} dy="0.35em">
                {terms().attributes[attribute].name}
              </text>
              <path class="dots-line" d={`M${x(0)},${y}H${x(100)}`} />
              {beside.map((one, nth) => (
                <circle key={nth} class="dots-other" cx={x(one)} cy={y} r="4" />
              ))}
              {score !== null && (
                <>
                  <circle class="dots-own" cx={x(score)} cy={y} r="6.5" />
                  <text class="dots-figure" x={x(score)} y={y - 11} text-anchor="middle">
                    {formatNumber(score, 0)}
                  </text>
                </>
              )}
            </g>
          );
        })}
      </svg>
      <p class="dots-key small soft" aria-hidden="true">
        <span>
          <i class="dots-key-own" />
          {words.thisRun}
        </span>
        <span>
          <i class="dots-key-other" />
          {words.otherRuns(tester)}
        </span>
        <span>{words.ends}</span>
      </p>
    </Picture>
  );
};
