/**
 * The foot map: where on the foot, to be tapped on the phone and read as a heat map at the desk.
 *
 * Every zone is a button in the accessibility tree with a name of its own ("left, medial ball"). Tab
 * goes from zone to zone, arrow keys to the nearest zone in that direction, Enter or Space picks. Heat
 * is told three times: by colour, by hatching, and by the label with its sample size.
 */
import type { ComponentChildren, JSX } from 'preact';
import { useId, useState } from 'preact/hooks';
import {
  mirroredX,
  soleOutlinePath,
  tapBounds,
  viewBox,
  zoneShapes,
  type FootView,
  type ZoneCode,
  type ZoneShape,
} from '../../../core/foot/index.ts';
import { Decorations } from './decorations.tsx';
import type { DeskWords } from '../../words/types.ts';
import { Hatching, hatchId } from './hatching.tsx';

export type MapFoot = 'left' | 'right';
export type ZoneKey = `${MapFoot}:${ZoneCode}`;
export type HeatLevel = 0 | 1 | 2 | 3 | 4 | 'unasked';

export type ZoneHeat = {
  /** Share of those asked who reported it; null where nobody was asked. */
  readonly share: number | null;
  /** Shown on the zone and read out; short, with its sample size, e.g. `3/8`. */
  readonly label: string;
  readonly level: HeatLevel;
};

export type FootMapProps = {
  readonly view: FootView;
  readonly foot?: MapFoot | 'both';
  readonly mode: 'pick' | 'heat';
  /** Keys as `left:P1`. In heat mode: the zone whose detail is open. */
  readonly selected?: ReadonlySet<string>;
  readonly onPick?: (foot: MapFoot, zone: ZoneCode) => void;
  /** By key as `left:P1`; a zone that is not in it counts as unasked. */
  readonly heat?: ReadonlyMap<string, ZoneHeat>;
  readonly names: (zone: ZoneCode) => string;
  readonly labels: {
    readonly left: string;
    readonly right: string;
    readonly sole: string;
    readonly upper: string;
    /** How the language puts words together. */
    readonly joined: Pick<DeskWords['joined'], 'clauses' | 'of'>;
    /** Read out for zones that nobody was asked about. */
    readonly unasked?: string;
  };
};

export const zoneKey = (foot: MapFoot, zone: ZoneCode): ZoneKey => `${foot}:${zone}`;

const unasked: ZoneHeat = { share: null, label: '', level: 'unasked' };

/** Left is the mirror of right, so everything but the words is drawn once and turned. */
const turned = (foot: MapFoot): string | undefined =>
  foot === 'left' ? undefined : `translate(${viewBox.width} 0) scale(-1 1)`;

/** On a map for tapping the feet move together by what the lateral zones need beside them. */
const drawnFrom = (foot: MapFoot, mode: FootMapProps['mode']): number =>
  mode === 'heat' ? 0 : foot === 'left' ? tapBounds.left : -tapBounds.left;

const directions: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** The element nearest to `from` among those that lie in the direction of the key. */
const nearestInDirection = (
  from: Element,
  elements: readonly SVGElement[],
  [dx, dy]: readonly [number, number],
): SVGElement | undefined => {
  const middle = (element: Element): readonly [number, number] => {
    const box = element.getBoundingClientRect();
    return [box.left + box.width / 2, box.top + box.height / 2];
  };
  const [x, y] = middle(from);
  let best: SVGElement | undefined;
  let least = Infinity;
  for (const element of elements) {
    const [ex, ey] = middle(element);
    const along = (ex - x) * dx + (ey - y) * dy;
    const aside = Math.abs((ex - x) * dy) + Math.abs((ey - y) * dx);
    if (element === from || along < 1 || aside > 2 * along) continue;
    if (along + 2 * aside < least) {
      least = along + 2 * aside;
      best = element;
    }
  }
  return best;
};

type ZoneProps = {
  readonly shape: ZoneShape;
  readonly name: string;
  readonly pressed: boolean;
  readonly level: HeatLevel | null;
  readonly hatch: string | null;
  readonly onPick: (() => void) | undefined;
};

const Zone = ({ shape, name, pressed, level, hatch, onPick }: ZoneProps): JSX.Element => {
  const drawing = (
    <>
      <path class="foot-map-tap" d={shape.tapPath} />
      <path class="foot-map-area" d={shape.path} />
      {hatch !== null && <path class="foot-map-hatch" d={shape.path} fill={`url(#${hatch})`} />}
    </>
  );
  const heat = level === null ? {} : { 'data-level': level };
  if (onPick === undefined) {
    return (
      <g class="foot-map-zone" role="img" aria-label={name} {...heat}>
        {drawing}
      </g>
    );
  }
  return (
    <g
      class="foot-map-zone"
      role="button"
      // In lower case: an SVG element keeps the spelling, and only this one makes it focusable.
      tabindex={0}
      aria-label={name}
      aria-pressed={pressed}
      data-zone={shape.zone}
      {...heat}
      onClick={onPick}
      onKeyDown={(event) => {
        if (event.key !== 'Enter' && event.key !== ' ') return;
        event.preventDefault();
        onPick();
      }}
    >
      {drawing}
    </g>
  );
};

/** A tick in the corner of a picked zone, so that it is not told by colour alone. */
const Tick = ({ x, y }: { readonly x: number; readonly y: number }): JSX.Element => (
  <g class="foot-map-tick" transform={`translate(${x} ${y})`}>
    <circle r="13" />
    <path d="M-6 0.5L-1.5 5L6.5 -4.5" />
  </g>
);

const HeatLabel = ({
  x,
  y,
  text,
}: {
  readonly x: number;
  readonly y: number;
  readonly text: string;
}): JSX.Element => (
  <text class="foot-map-label" x={x} y={y} text-anchor="middle" dominant-baseline="central">
    {text}
  </text>
);

const OneFoot = (props: FootMapProps & { readonly side: MapFoot }): JSX.Element => {
  const { view, side, mode, selected, onPick, heat, names, labels } = props;
  const id = useId();
  const [focused, setFocused] = useState<ZoneCode | null>(null);
  const shapes = zoneShapes(view);
  const heatOf = (zone: ZoneCode): ZoneHeat => heat?.get(zoneKey(side, zone)) ?? unasked;
  const isSelected = (zone: ZoneCode): boolean => selected?.has(zoneKey(side, zone)) ?? false;

  const nameOf = (zone: ZoneCode): string => {
    const name = labels.joined.clauses([labels[side], names(zone)]);
    if (mode === 'pick') return name;
    const { label, level } = heatOf(zone);
    const said = label || (level === 'unasked' ? (labels.unasked ?? '') : '');
    return said === '' ? name : labels.joined.of(name, said);
  };

  const overlay: ComponentChildren = shapes.map((shape) => (
    <g key={shape.zone}>
      {mode === 'heat' && heatOf(shape.zone).level === 'unasked' && (
        <>
          <path class="foot-map-unasked-gap" d={shape.path} />
          <path class="foot-map-unasked" d={shape.path} />
        </>
      )}
      {isSelected(shape.zone) && <path class="foot-map-picked" d={shape.path} />}
      {focused === shape.zone && (
        <>
          <path class="foot-map-focus-gap" d={shape.path} />
          <path class="foot-map-focus" d={shape.path} />
        </>
      )}
    </g>
  ));

  return (
    // The focus is watched from here: browsers take an SVG element that listens for it as a tab stop.
    <div
      class="foot-map-side"
      onFocusIn={(event) => {
        const zone = (event.target as Element).closest('.foot-map-zone:focus-visible');
        setFocused(zone === null ? null : (zone.getAttribute('data-zone') as ZoneCode));
      }}
      onFocusOut={() => {
        setFocused(null);
      }}
    >
      <svg
        class="foot-map-foot"
        viewBox={`${drawnFrom(side, mode)} 0 ${viewBox.width} ${viewBox.height}`}
        role="group"
        aria-label={labels.joined.clauses([labels[side], labels[view]])}
        data-foot={side}
      >
        {mode === 'heat' && (
          <defs>
            <Hatching id={id} />
          </defs>
        )}
        <g transform={turned(side)}>
          {view === 'upper' && (
            <path class="foot-map-rim" d={soleOutlinePath()} aria-hidden="true" />
          )}
          {shapes.map((shape) => {
            const level = mode === 'heat' ? heatOf(shape.zone).level : null;
            return (
              <Zone
                key={shape.zone}
                shape={shape}
                name={nameOf(shape.zone)}
                pressed={isSelected(shape.zone)}
                level={level}
                hatch={
                  level === null || level === 'unasked' || level === 0 ? null : hatchId(id, level)
                }
                onPick={
                  onPick === undefined
                    ? undefined
                    : () => {
                        onPick(side, shape.zone);
                      }
                }
              />
            );
          })}
          <g aria-hidden="true" class="foot-map-above">
            <g class="foot-map-decorations">
              <Decorations view={view} />
            </g>
            {overlay}
          </g>
        </g>
        <g aria-hidden="true" class="foot-map-above">
          {shapes.map(({ zone, label: [x, y] }) => {
            const at = mirroredX(side, x);
            if (mode === 'heat') {
              const { label, level } = heatOf(zone);
              const text = label || (level === 'unasked' ? '–' : '');
              return text !== '' && <HeatLabel key={zone} x={at} y={y} text={text} />;
            }
            return isSelected(zone) && <Tick key={zone} x={at} y={y} />;
          })}
        </g>
      </svg>
      <p class="foot-map-caption" aria-hidden="true">
        {labels[side]}
      </p>
    </div>
  );
};

/** One view of one foot or of both, side by side as one looks down on one's own feet. */
export const FootMap = (props: FootMapProps): JSX.Element => {
  const { foot = 'both', mode, view } = props;
  const sides: readonly MapFoot[] = foot === 'both' ? ['left', 'right'] : [foot];
  return (
    <div
      class="foot-map"
      data-mode={mode}
      data-view={view}
      onKeyDown={(event) => {
        const direction = directions[event.key];
        const from = (event.target as Element).closest('.foot-map-zone');
        if (direction === undefined || from === null) return;
        const zones = event.currentTarget.querySelectorAll<SVGElement>('.foot-map-zone[tabindex]');
        const next = nearestInDirection(from, [...zones], direction);
        if (next === undefined) return;
        event.preventDefault();
        next.focus();
      }}
    >
      {sides.map((side) => (
        <OneFoot key={side} {...props} side={side} />
      ))}
    </div>
  );
};
