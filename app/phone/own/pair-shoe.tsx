/** A pair as a picture: the shoe from above, and around it the seam that its kilometres sew. */
import { soleOutlinePath, viewBox, type ZoneCode } from '../../../core/foot/index.ts';
import type { Metres } from '../../../core/units/index.ts';
import { ShoeDrawing, type DrawnZone } from '../../parts/foot-map/shoe-drawing.tsx';
import { allDashes, dashesOf, seamOf } from './seam.ts';
import '../../parts/foot-map/foot-map.css';

const NO_ZONES: ReadonlyMap<ZoneCode, DrawnZone> = new Map();
const { width, height } = viewBox;
/** The seam lies so much outside of the sole, as a share of the drawing. */
const [WIDER, HIGHER] = [1.17, 1.06];
/** Outside of the foot's drawing, in its units: room for the seam. */
const ROOM = { x: 8, y: 12 };

export const PairShoe = (props: {
  readonly distanceM: Metres;
  readonly targetM: Metres;
  /** What the picture says, for those who do not see it. */
  readonly label: string;
}) => {
  const seam = seamOf(props.distanceM, props.targetM);
  const outline = soleOutlinePath();
  const around = `translate(${width / 2} ${height / 2}) scale(${WIDER} ${HIGHER}) translate(${-width / 2} ${-height / 2})`;
  return (
    <div class="pair-shoe" role="img" aria-label={props.label}>
      <div class="pair-shoe-drawn" aria-hidden="true">
        <ShoeDrawing view="upper" foot="left" zones={NO_ZONES} label="" />
      </div>
      <svg
        class="pair-seam"
        aria-hidden="true"
        viewBox={`${-ROOM.x} ${-ROOM.y} ${width + 2 * ROOM.x} ${height + 2 * ROOM.y}`}
      >
        <g transform={around} fill="none">
          <path
            class="pair-seam-open"
            d={outline}
            pathLength={seam.stitches}
            stroke-dasharray={allDashes}
          />
          <path
            class="pair-seam-sewn"
            d={outline}
            pathLength={seam.stitches}
            stroke-dasharray={dashesOf(seam)}
          />
        </g>
      </svg>
    </div>
  );
};
