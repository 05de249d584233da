/**
 * Both feet in their last, to scale. Only length and width are measured, so an outline is the sole's own outline
 * stretched to them; heels stand on one line, and the room at the toe is what is left above the foot.
 */
import type { TesterLook } from '../../../core/review/index.ts';
import { formatNumber, formatSize } from '../../parts/format.ts';
import { p } from '../../words/index.ts';
import { Picture } from '../frame/picture.tsx';
import { footOutlinePath, stretchedTo, widthAt } from '../people/foot-outline.ts';

type InLast = TesterLook['feet']['inLast'][number];
type Side = 'left' | 'right';

/** Millimetres of the drawing: the longest last that there is, from the base line at its foot. */
const WIDTH = 125;
const BASE = 400;
const ROOM = 4;

/** In the middle of the drawing, the heel on the base line. */
const stretched = (lengthMm: number, widthMm: number): string =>
  stretchedTo(lengthMm, widthMm, [WIDTH / 2, BASE]);

const OneFoot = (props: {
  readonly side: Side;
  readonly footMm: number;
  readonly footWidthMm: number | null;
  readonly inLast: InLast | null;
  /** The longest that is drawn of either side, so that both have one scale. */
  readonly mostMm: number;
}) => {
  const { side, footMm, footWidthMm, inLast, mostMm } = props;
  const words = p().testers.page;
  const { lastLengthMm = null, lastWidthMm = null } = inLast ?? {};
  const toe = inLast?.[side]?.toeMm ?? null;
  const turned = side === 'left' ? undefined : `translate(${WIDTH} 0) scale(-1 1)`;
  const size = words.footSize(
    formatNumber(footMm, 0),
    footWidthMm === null ? null : formatNumber(footWidthMm, 0),
  );
  return (
    <figure>
      <b>{toe === null ? '' : words.room(formatNumber(toe, 0))}</b>
      <svg viewBox={`0 ${BASE - mostMm - ROOM} ${WIDTH} ${mostMm + 2 * ROOM}`} aria-hidden="true">
        <g transform={turned}>
          {lastLengthMm !== null && (
            <path
              class="last-outline"
              d={footOutlinePath}
              transform={stretched(lastLengthMm, lastWidthMm ?? widthAt(lastLengthMm))}
            />
          )}
          <path
            class="foot-outline"
            d={footOutlinePath}
            transform={stretched(footMm, footWidthMm ?? widthAt(footMm))}
          />
        </g>
      </svg>
      <figcaption class="soft small">{words.ofSide(words[side], size)}</figcaption>
    </figure>
  );
};

const mmOrDash = (value: number | null): string => (value === null ? '–' : formatNumber(value, 0));

export const FeetDrawing = (props: {
  readonly look: TesterLook;
  readonly pairName: (pair: InLast['pair']) => string;
}) => {
  const { look, pairName } = props;
  const words = p().testers.page;
  const { footLengthMm, footWidthMm, inLast } = look.feet;
  const last = inLast.findLast(({ lastLengthMm }) => lastLengthMm !== null) ?? null;
  const latest = last ?? inLast.at(-1) ?? null;
  if (!footLengthMm) return <p class="soft">{words.feetNone}</p>;
  return (
    <Picture
      says={words.feetSays(look.code, latest ? pairName(latest.pair) : '–')}
      table={() => ({
        head: [words.foot, words.footLength, words.footWidth, words.last, words.toe],
        rows: inLast.flatMap((pair) =>
          (['left', 'right'] as const).map((side) => [
            words.ofSide(pairName(pair.pair), words[side]),
            formatNumber(footLengthMm[side], 0),
            mmOrDash(footWidthMm?.[side] ?? null),
            mmOrDash(pair.lastLengthMm),
            mmOrDash(pair[side]?.toeMm ?? null),
          ]),
        ),
      })}
    >
      {latest && (
        <p class="soft small">{words.feetOf(pairName(latest.pair), formatSize(latest.sizeMm))}</p>
      )}
      <div class="feet-drawing">
        {(['left', 'right'] as const).map((side) => (
          <OneFoot
            key={side}
            side={side}
            footMm={footLengthMm[side]}
            footWidthMm={footWidthMm?.[side] ?? null}
            inLast={last}
            mostMm={Math.max(footLengthMm.left, footLengthMm.right, last?.lastLengthMm ?? 0)}
          />
        ))}
      </div>
      <p class="soft small">{last ? words.scale : words.feetOnly}</p>
    </Picture>
  );
};
