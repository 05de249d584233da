/** What colour and hatching say of a zone, in one line. */
import { useId } from 'preact/hooks';
import { hatchId, Hatching } from '../../parts/foot-map/hatching.tsx';
import { p } from '../../words/index.ts';

const [WIDTH, HEIGHT] = [24, 13];

export const HeatKey = () => {
  const words = p().shoe;
  const id = useId();
  return (
    <span class="heat-key small soft">
      <span>{words.legend}</span>
      {([0, 1, 2, 3, 4] as const).map((level) => (
        <span key={level}>
          <svg
            class="shoe-drawing"
            viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
            data-mode="heat"
            aria-hidden="true"
          >
            <defs>
              <Hatching id={`${id}${level}`} />
            </defs>
            <g class="foot-map-zone" data-level={level}>
              <path class="foot-map-area" d={`M0 0H${WIDTH}V${HEIGHT}H0Z`} />
              {level > 0 && (
                <path
                  class="foot-map-hatch"
                  d={`M0 0H${WIDTH}V${HEIGHT}H0Z`}
                  fill={`url(#${hatchId(`${id}${level}`, level as 1 | 2 | 3 | 4)})`}
                />
              )}
            </g>
          </svg>{' '}
          {words.levels[level]}
        </span>
      ))}
    </span>
  );
};
