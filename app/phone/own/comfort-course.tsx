/** How comfortable were the last runs in a pair? A line of points, the latest marked. */
import { formatNumber } from '../../parts/format.ts';
import { ownWords } from '../../words/index.ts';

const WIDTH = 180;
const HEIGHT = 48;
const EDGE = 6;

/** @param props.scores overall comfort, 0 to 100, the oldest first; at least two */
export const ComfortCourse = ({ scores }: { readonly scores: readonly number[] }) => {
  const words = ownWords();
  const x = (at: number) => EDGE + ((WIDTH - 2 * EDGE) * at) / (scores.length - 1);
  const y = (score: number) => HEIGHT - EDGE - ((HEIGHT - 2 * EDGE) * score) / 100;
  const points = scores.map((score, at) => [x(at), y(score)] as const);
  const said = scores.map((score) => formatNumber(score, 0));
  return (
    <figure class="stack" style={{ margin: 0, gap: 'var(--space-1)' }}>
      <svg
        class="course"
        viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
        role="img"
        aria-label={words.courseSays(said)}
      >
        <path class="course-middle" d={`M0,${y(50)}H${WIDTH}`} />
        <path d={`M${points.map((point) => point.join()).join('L')}`} />
        {points.map(([cx, cy], at) => (
          <circle
            key={at}
            class={at === points.length - 1 ? 'course-last' : undefined}
            cx={cx}
            cy={cy}
            r={at === points.length - 1 ? 4.5 : 3}
          />
        ))}
      </svg>
      <figcaption class="small soft">{words.course(scores.length)}</figcaption>
    </figure>
  );
};
