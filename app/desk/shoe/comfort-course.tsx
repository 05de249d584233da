/** The course of an attribute along the kilometres, a small line a round: means of each 50 km. */
import type { AttributeLook } from '../../../core/review/index.ts';
import { p, terms } from '../../words/index.ts';
import type { TabProps } from '../desk-state.ts';

const [WIDTH, HEIGHT] = [84, 34];
/** So many points at least from top to bottom: a smaller range would make much of little. */
const LEAST_RANGE = 30;

export const ComfortCourse = (props: TabProps & { readonly look: AttributeLook }) => {
  const { review, look } = props;
  const { attribute, rounds } = look;
  const stretches = rounds.flatMap(({ course }) => course);
  const end = Math.max(1, ...stretches.map(({ toM }) => toM));
  const means = stretches.map(({ mean }) => mean.mean);
  const [least, most] = [Math.min(...means), Math.max(...means)];
  const room = Math.max(0, LEAST_RANGE - (most - least)) / 2;
  const from = Math.max(0, least - room);
  const to = Math.min(100, from + Math.max(LEAST_RANGE, most - least));
  const x = (atM: number) => (WIDTH * atM) / end;
  const y = (score: number) => HEIGHT - (HEIGHT * (score - from)) / (to - from);
  return (
    <svg
      class="comfort-course"
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      role="img"
      aria-label={p().shoe.comfort.courseSays(terms().attributes[attribute].name)}
    >
      <path class="interval-axis" d={`M0,${HEIGHT}H${WIDTH}`} />
      {rounds.map(({ round, course }) => {
        const at = review.rounds.findIndex(({ id }) => id === round);
        const points = course.map(
          ({ fromM, toM, mean }) => `${x((fromM + toM) / 2).toFixed(1)},${y(mean.mean).toFixed(1)}`,
        );
        return points.length === 1 ? (
          <circle
            key={round}
            class={`round-mark round-${at % 6}`}
            cx={points[0]?.split(',')[0]}
            cy={points[0]?.split(',')[1]}
            r="2"
          />
        ) : (
          <path key={round} class={`course-line course-${at % 6}`} d={`M${points.join('L')}`} />
        );
      })}
    </svg>
  );
};
