/**
 * One view of one shoe as a picture: zones in the heat of their count, each a link to its own page. For small
 * multiples, cards and callouts; the map that is tapped on is `foot-map.tsx`.
 */
import { useId } from 'preact/hooks';
import {
  mirroredX,
  soleOutlinePath,
  viewBox,
  zoneShapes,
  type FootView,
  type ZoneCode,
} from '../../../core/foot/index.ts';
import { Decorations } from './decorations.tsx';
import type { HeatLevel, MapFoot } from './foot-map.tsx';
import { Hatching, hatchId } from './hatching.tsx';

export interface DrawnZone {
  readonly level: Exclude<HeatLevel, 'unasked'>;
  /** Written on the zone, such as the number of testers; empty: nothing. */
  readonly label?: string;
  /** What the zone says to a screen reader, with its name. */
  readonly says?: string;
  /** Where a press on the zone leads. */
  readonly href?: string;
  /** A strong edge around it. */
  readonly marked?: boolean;
}

/** The middle of a zone in the drawing's units (`viewBox`), for leader lines and marks. */
export const middleOf = (
  view: FootView,
  foot: MapFoot,
  zone: ZoneCode,
): readonly [number, number] => {
  const shape = zoneShapes(view).find((one) => one.zone === zone);
  if (!shape) return [viewBox.width / 2, viewBox.height / 2];
  const [x, y] = shape.label;
  return [mirroredX(foot, x), y];
};

export const ShoeDrawing = (props: {
  readonly view: FootView;
  readonly foot: MapFoot;
  /** Absent zones are drawn plain. */
  readonly zones: ReadonlyMap<ZoneCode, DrawnZone>;
  /** What the drawing is, for a screen reader; its links follow inside. */
  readonly label: string;
}) => {
  const { view, foot, zones, label } = props;
  const id = useId();
  const shapes = zoneShapes(view);
  const turned = foot === 'left' ? undefined : `translate(${viewBox.width} 0) scale(-1 1)`;
  return (
    <svg
      class="foot-map-foot shoe-drawing"
      viewBox={`0 0 ${viewBox.width} ${viewBox.height}`}
      role="group"
      aria-label={label}
      data-mode="heat"
      data-foot={foot}
      data-view={view}
    >
      <defs>
        <Hatching id={id} />
      </defs>
      <g transform={turned}>
        {view === 'upper' && <path class="foot-map-rim" d={soleOutlinePath()} aria-hidden="true" />}
        {shapes.map(({ zone, path }) => {
          const drawn = zones.get(zone);
          const area = (
            <>
              <path class="foot-map-area" d={path} />
              {drawn && drawn.level > 0 && (
                <path
                  class="foot-map-hatch"
                  d={path}
                  fill={`url(#${hatchId(id, drawn.level as 1 | 2 | 3 | 4)})`}
                />
              )}
            </>
          );
          const heat = drawn ? { 'data-level': drawn.level } : {};
          return drawn?.href ? (
            <a
              key={zone}
              class="foot-map-zone"
              href={drawn.href}
              aria-label={drawn.says}
              data-zone={zone}
              {...heat}
            >
              {area}
            </a>
          ) : (
            <g
              key={zone}
              class="foot-map-zone"
              data-zone={zone}
              {...(drawn?.says
                ? { role: 'img', 'aria-label': drawn.says }
                : { 'aria-hidden': true })}
              {...heat}
            >
              {area}
            </g>
          );
        })}
        <g class="foot-map-above" aria-hidden="true">
          <Decorations view={view} />
        </g>
        <g class="foot-map-above" aria-hidden="true">
          {shapes.map(
            ({ zone, path }) =>
              zones.get(zone)?.marked && <path key={zone} class="foot-map-picked" d={path} />,
          )}
        </g>
      </g>
      <g class="foot-map-above" aria-hidden="true">
        {shapes.map(({ zone, label: [x, y] }) => {
          const text = zones.get(zone)?.label ?? '';
          return (
            text !== '' && (
              <text
                key={zone}
                class="foot-map-label"
                x={mirroredX(foot, x)}
                y={y}
                text-anchor="middle"
                dominant-baseline="central"
              >
                {text}
              </text>
            )
          );
        })}
      </g>
    </svg>
  );
};
