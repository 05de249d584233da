/** How cushioning feels over the distance: marks from too soft to too firm, and scores from bad to good, each its own chart. */
import type { Felt } from '../../../core/review/index.ts';
import { fromMetres, metres } from '../../../core/units/index.ts';
import { DistanceChart } from '../../parts/charts/distance-chart.tsx';
import { distanceFigure, formatNumber } from '../../parts/format.ts';
import { settings } from '../../parts/settings.ts';
import { signed } from '../../words/figures.ts';
import { clauses, d, entryWords, saidOf, terms } from '../../words/index.ts';
import { markInWords } from '../../words/say-mark.ts';

const whole = (value: number): string => formatNumber(value, 0);

const nameOf = ({ attribute, line }: Felt): string =>
  (line === 'mark' ? terms().twoSided : terms().attributes)[attribute].name;

/** "a little too soft, −25"; a score stays a figure. */
const said = ({ attribute, line }: Felt, value: number): string => {
  if (line === 'score') return whole(value);
  const { low, high } = terms().twoSided[attribute];
  const words = markInWords({ value, low, high, words: entryWords().twoSided }) ?? '';
  return clauses(words, signed(value, whole));
};

const pointsOf = (one: Felt) => {
  const unit = settings.value.distance;
  const write = (value: number) => (one.line === 'mark' ? signed(value, whole) : whole(value));
  return one.stretches.map(({ fromM, toM, mean }) => {
    const between = mean.interval
      ? ` (${write(mean.interval.lower)} … ${write(mean.interval.upper)})`
      : '';
    return {
      x: fromMetres(metres((fromM + toM) / 2), unit),
      y: mean.mean,
      label: saidOf(
        clauses(nameOf(one), `${distanceFigure(fromM)}–${distanceFigure(toM)} ${unit}`),
        clauses(`${said(one, mean.mean)}${between}`, `n ${mean.n}`),
      ),
    };
  });
};

const driftLine = (one: Felt): string => {
  const words = d().wear;
  if (!one.drift) return saidOf(nameOf(one), words.feltNone);
  const write = (value: number) => signed(value, (size) => formatNumber(size, 1));
  const { per100Km, interval, testers } = one.drift;
  const figures = [write(per100Km), write(interval.lower), write(interval.upper), testers] as const;
  if (one.line === 'score') return words.feltLine(nameOf(one), ...figures);
  const { low, high } = terms().twoSided[one.attribute];
  return words.feltMarkLine(nameOf(one), low, high, ...figures);
};

const Line = ({ line, felt }: { readonly line: Felt['line']; readonly felt: readonly Felt[] }) => {
  const words = d().wear;
  const own = felt.filter((one) => one.line === line);
  const [first] = own;
  if (!first) return null;
  const { low, high } = terms().twoSided[first.attribute];
  const isMark = line === 'mark';
  return (
    <div class="two-columns">
      <DistanceChart
        title={isMark ? words.feltMarks : words.felt}
        xTitle={d().bench.xTitle(settings.value.distance)}
        yTitle={isMark ? words.feltMark(low, high) : words.feltScore}
        yCovers={isMark ? [-100, 100] : [0, 100]}
        {...(isMark && { limits: [{ y: 0, label: entryWords().twoSided.right }] })}
        series={own.map((one) => ({ name: nameOf(one), points: pointsOf(one) }))}
        formatX={whole}
        formatY={(value) => (isMark ? signed(value, whole) : whole(value))}
      />
      <ul>
        {own.map((one) => (
          <li key={one.attribute}>{driftLine(one)}</li>
        ))}
      </ul>
    </div>
  );
};

export const FeltPart = ({ felt }: { readonly felt: readonly Felt[] }) => {
  const words = d().wear;
  return (
    <section class="stack">
      <h3>{words.felt}</h3>
      <Line line="mark" felt={felt} />
      <Line line="score" felt={felt} />
      <p class="soft">{words.feltPart}</p>
    </section>
  );
};
