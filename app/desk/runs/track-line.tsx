/** The way of a run as its tester sent it, drawn as a line with kilometres: without its ends, which stay on the phone. */
import type { Sha256 } from '../../../core/records/index.ts';
import { measureTrack, readGpx, type MeasuredPoint } from '../../../core/track/index.ts';
import { metres, toMetres } from '../../../core/units/index.ts';
import { formatDistance } from '../../parts/format.ts';
import { settings } from '../../parts/settings.ts';
import { useStored } from '../../parts/state.ts';
import { p } from '../../words/index.ts';
import { Picture } from '../frame/picture.tsx';
import { useWidth } from '../../parts/charts/use-width.ts';

const [HEIGHT, EDGE] = [260, 22];

/** Degrees of longitude are narrower than those of latitude by the cosine of it: enough for a drawing. */
const flatten = (points: readonly MeasuredPoint[], width: number) => {
  const [first] = points;
  const shrink = Math.cos(((first?.lat ?? 0) * Math.PI) / 180);
  const flat = points.map(({ lat, lon }) => ({ x: lon * shrink, y: -lat }));
  const [xs, ys] = [flat.map(({ x }) => x), flat.map(({ y }) => y)];
  const least = { x: Math.min(...xs), y: Math.min(...ys) };
  const [wide, high] = [Math.max(...xs) - least.x, Math.max(...ys) - least.y];
  const scale = Math.min((width - 2 * EDGE) / (wide || 1), (HEIGHT - 2 * EDGE) / (high || 1));
  const [left, top] = [(width - wide * scale) / 2, (HEIGHT - high * scale) / 2];
  return ({ lat, lon }: MeasuredPoint): readonly [number, number] => [
    left + (lon * shrink - least.x) * scale,
    top + (-lat - least.y) * scale,
  ];
};

export const TrackLine = ({ attachment }: { readonly attachment: Sha256 }) => {
  const words = p().runs;
  const [measure, width] = useWidth(400);
  const read = useStored(
    async (from) => {
      const file = await from.attachment(attachment);
      const gpx = file && readGpx(new TextDecoder().decode(file.bytes));
      return { measured: gpx?.ok ? measureTrack(gpx.track) : null };
    },
    ['attachment'],
    [attachment],
  );
  if (!read) return null;
  const { measured } = read;
  const points = measured?.segments.flat() ?? [];
  if (!measured || points.length < 2) return <p class="soft">{words.noTrack}</p>;
  const at = flatten(points, width);
  const step = toMetres(1, settings.value.distance);
  const marks: (readonly [number, MeasuredPoint])[] = [];
  for (let nth = 1; nth * step < measured.distanceM; nth++) {
    const there = points.find(({ alongM }) => alongM >= nth * step);
    if (there) marks.push([nth, there]);
  }
  // On a long way not every kilometre has room for its number.
  const each = Math.ceil(marks.length / 12);
  const [start] = points;
  const distance = formatDistance(metres(measured.distanceM));
  return (
    <Picture title={words.track} says={words.trackSays(distance)}>
      <svg
        class="track-line paper"
        ref={measure}
        viewBox={`0 0 ${width} ${HEIGHT}`}
        height={HEIGHT}
        role="img"
        aria-label={words.trackSays(distance)}
      >
        {measured.segments.map((segment, nth) => (
          <path
            key={nth}
            class="track-way"
            d={segment.map((point, one) => `${one === 0 ? 'M' : 'L'}${at(point).join()}`).join('')}
          />
        ))}
        {marks.map(([nth, point]) => {
          const [x, y] = at(point);
          return (
            <g key={nth}>
              <circle class="track-mark" cx={x} cy={y} r="3" />
              {nth % each === 0 && (
                <text class="soft" x={x + 7} y={y} dy="0.35em">
                  {nth}
                </text>
              )}
            </g>
          );
        })}
        {start && <circle class="track-start" cx={at(start)[0]} cy={at(start)[1]} r="5" />}
      </svg>
      <p class="soft small">{words.trackNote(distance)}</p>
    </Picture>
  );
};
