/** The pace of each kilometre, as the phone worked it out of the track; nothing of the way itself. */
import { formatDuration, type Seconds } from '../../../core/units/index.ts';
import { p } from '../../words/index.ts';
import { Picture } from '../frame/picture.tsx';
import { useWidth } from '../../parts/charts/use-width.ts';

const [HEIGHT, FOOT, HEAD] = [120, 18, 16];
/** Room for a pace over its bar, px. */
const LABEL = 38;

export const PaceBars = ({ paceByKmS }: { readonly paceByKmS: readonly number[] }) => {
  const words = p().runs;
  const [measure, width] = useWidth(400);
  const most = Math.max(...paceByKmS);
  const least = Math.min(...paceByKmS);
  // Bars begin below the quickest kilometre, so that differences of some seconds show.
  const floor = Math.max(0, least - (most - least) - 10);
  const wide = width / paceByKmS.length;
  const each = Math.ceil(LABEL / wide);
  return (
    <Picture
      title={words.paceByKm}
      says={words.paceSays(paceByKmS.length)}
      table={() => ({
        head: [words.kilometre, words.pace],
        rows: paceByKmS.map((time, at) => [String(at + 1), formatDuration(time as Seconds)]),
      })}
    >
      <svg
        ref={measure}
        viewBox={`0 0 ${width} ${HEIGHT}`}
        height={HEIGHT}
        role="img"
        aria-label={words.paceSays(paceByKmS.length)}
      >
        {paceByKmS.map((time, at) => {
          const high = ((HEIGHT - FOOT - HEAD) * (time - floor)) / (most - floor || 1);
          const y = HEIGHT - FOOT - high;
          return (
            <g key={at}>
              <rect
                class="pace-bar"
                x={at * wide + 1}
                y={y}
                width={Math.max(1, wide - 2)}
                height={high}
              />
              {at % each === 0 && (
                <>
                  <text x={(at + 0.5) * wide} y={y - 4} text-anchor="middle">
                    {formatDuration(Math.round(time) as Seconds)}
                  </text>
                  <text class="soft" x={(at + 0.5) * wide} y={HEIGHT - 4} text-anchor="middle">
                    {at + 1}
                  </text>
                </>
              )}
            </g>
          );
        })}
      </svg>
    </Picture>
  );
};
