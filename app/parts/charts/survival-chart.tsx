/** The share that is still without an event, over distance: a stair that falls at each of them. */
import { metres } from '../../../core/units/index.ts';
import type { SurvivalStep } from '../../../core/statistics/index.ts';
import { fromMetres } from '../../../core/units/index.ts';
import { formatDistance, formatNumber, formatPercent } from '../format.ts';
import { settings } from '../settings.ts';
import { clauses, saidOf } from '../../words/index.ts';
import { DistanceChart } from './distance-chart.tsx';

/** @param props.steps over metres, ascending; nothing is drawn before the first event */
export const SurvivalChart = (props: {
  readonly title: string;
  readonly xTitle: string;
  readonly yTitle: string;
  /** What a mark on the stair is. */
  readonly eventName: string;
  readonly steps: readonly SurvivalStep[];
}) => {
  const { steps } = props;
  const unit = settings.value.distance;
  if (!steps.some(({ events }) => events > 0)) return null;
  const inUnit = (time: number) => fromMetres(metres(time), unit);
  let before = 1;
  const stairs = [
    { x: 0, y: 100, label: '' },
    ...steps.flatMap(({ time, survival }) => {
      const corners = [100 * before, 100 * survival].map((y) => ({
        x: inUnit(time),
        y,
        label: '',
      }));
      before = survival;
      return corners;
    }),
  ];
  const events = steps
    .filter((step) => step.events > 0)
    .map(({ time, survival, lower, upper, atRisk }) => ({
      x: inUnit(time),
      y: 100 * survival,
      label: saidOf(
        formatDistance(metres(time)),
        clauses(
          `${formatPercent(survival)} (${formatPercent(lower)}–${formatPercent(upper)})`,
          `n ${atRisk}`,
        ),
      ),
    }));
  return (
    <DistanceChart
      title={props.title}
      xTitle={props.xTitle}
      yTitle={props.yTitle}
      yCovers={[0, 100]}
      series={[
        { name: props.yTitle, curve: 'fitted', points: stairs },
        { name: props.eventName, unjoined: true, points: events },
      ]}
      formatX={(x) => formatNumber(x, 1)}
      formatY={(y) => formatNumber(y, 0)}
    />
  );
};
