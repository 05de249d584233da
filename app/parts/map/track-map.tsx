/**
 * The way of a run as a line on plain ground: coloured by surface, with kilometres, complaints, scale and
 * north. Two taps on the line and a surface paint the stretch between them. Tiles lie under it only where
 * the group has chosen some.
 */
import { useEffect, useRef, useState } from 'preact/hooks';
import * as z from 'zod/mini';
import L from 'leaflet';
import 'leaflet/dist/leaflet.css';
import './track-map.css';
import { surfaces, tilesSchema, type Surface } from '../../../core/records/index.ts';
import {
  measureTrack,
  paint,
  type MeasuredPoint,
  type Stretch,
  type Track,
} from '../../../core/track/index.ts';
import { metres } from '../../../core/units/index.ts';
import { Choice } from '../controls/controls.tsx';
import { formatDistance } from '../format.ts';
import { TILES_SETTING } from '../../store/index.ts';
import { useStored } from '../state.ts';
import { entryWords, terms } from '../../words/index.ts';

export interface TrackMapProps {
  readonly track: Track;
  readonly stretches: readonly Stretch[];
  readonly lengthM: number;
  /** Surface of what is not painted. */
  readonly base: Surface | null;
  readonly marks: readonly { readonly atM: number; readonly label: string }[];
  readonly onPaint: (stretches: Stretch[]) => void;
}

const place = ({ lat, lon }: { lat: number; lon: number }): L.LatLngTuple => [lat, lon];

/** The line cut where its surface changes, each piece with its surface. */
const pieces = (
  segments: readonly (readonly MeasuredPoint[])[],
  stretches: readonly Stretch[],
  base: Surface | null,
): { surface: Surface | null; points: L.LatLngTuple[] }[] =>
  segments.flatMap((segment) => {
    const found: { surface: Surface | null; points: L.LatLngTuple[] }[] = [];
    for (const [at, point] of segment.entries()) {
      const before = segment[at - 1];
      if (!before) continue;
      const middle = (before.alongM + point.alongM) / 2;
      const surface =
        stretches.find(({ fromM, toM }) => fromM <= middle && middle < toM)?.surface ?? base;
      const last = found.at(-1);
      if (last?.surface === surface) last.points.push(place(point));
      else found.push({ surface, points: [place(before), place(point)] });
    }
    return found;
  });

const pointAt = (points: readonly MeasuredPoint[], alongM: number): MeasuredPoint | undefined =>
  points.find((point) => point.alongM >= alongM) ?? points.at(-1);

export const TrackMap = (props: TrackMapProps) => {
  const words = entryWords().track;
  const holder = useRef<HTMLDivElement>(null);
  const map = useRef<{ map: L.Map; layer: L.LayerGroup } | null>(null);
  const [first, setFirst] = useState<number | null>(null);
  const [span, setSpan] = useState<readonly [number, number] | null>(null);
  const tiles = useStored(async (from) => {
    const read = z.safeParse(tilesSchema, await from.setting(TILES_SETTING));
    return read.success ? read.data : null;
  }, []);
  const [measured] = useState(() => measureTrack(props.track).segments);
  // The map outlives the drawings of this component: its listener asks for what holds now.
  const tapped = useRef<(alongM: number) => void>(() => undefined);
  tapped.current = (alongM) => {
    if (first === null) {
      setSpan(null);
      setFirst(alongM);
    } else {
      setSpan([first, alongM]);
      setFirst(null);
    }
  };

  useEffect(() => {
    if (!holder.current) return;
    const made = L.map(holder.current, { attributionControl: false, zoomSnap: 0.25 });
    L.control.scale({ imperial: false }).addTo(made);
    const layer = L.layerGroup().addTo(made);
    if (tiles) {
      // With CORS, so that what the service worker keeps is known to be a picture.
      L.tileLayer(tiles.url, { attribution: tiles.attribution, crossOrigin: true }).addTo(made);
      L.control.attribution({ prefix: false }).addTo(made);
    }
    const points = measured.flat();
    made.fitBounds(L.latLngBounds(points.map(place)), { padding: [24, 24], animate: false });
    made.on('click', (event: L.LeafletMouseEvent) => {
      let nearest: MeasuredPoint | undefined;
      let least = Number.POSITIVE_INFINITY;
      for (const point of points) {
        const away = made.latLngToContainerPoint(place(point)).distanceTo(event.containerPoint);
        if (away < least) [nearest, least] = [point, away];
      }
      if (nearest && least < 40) tapped.current(nearest.alongM);
    });
    const watch = new ResizeObserver(() => made.invalidateSize());
    watch.observe(holder.current);
    map.current = { map: made, layer };
    return () => {
      watch.disconnect();
      made.remove();
      map.current = null;
    };
  }, [measured, tiles]);

  useEffect(() => {
    const layer = map.current?.layer;
    if (!layer) return;
    layer.clearLayers();
    const points = measured.flat();
    for (const { surface, points: line } of pieces(measured, props.stretches, props.base))
      L.polyline(line, { className: `way way-${surface ?? 'unknown'}`, interactive: false }).addTo(
        layer,
      );
    const mark = (atM: number, kind: string, text: string) => {
      const there = pointAt(points, atM);
      if (!there) return;
      const icon = L.divIcon({ className: `way-mark way-${kind}`, iconSize: [0, 0] });
      const marker = L.marker(place(there), { icon, keyboard: false, interactive: false });
      marker.addTo(layer).getElement()?.append(text);
    };
    for (let km = 1; km * 1000 < props.lengthM; km++) mark(km * 1000, 'kilometre', String(km));
    for (const { atM, label } of props.marks) mark(atM, 'complaint', label);
    for (const end of [first, ...(span ?? [])])
      if (end !== null) mark(end, 'tapped', formatDistance(metres(end)));
  }, [measured, tiles, props.stretches, props.base, props.marks, props.lengthM, first, span]);

  const choose = (surface: Surface) => {
    if (!span) return;
    const stroke = { fromM: span[0], toM: span[1], surface };
    props.onPaint([...paint(props.stretches, stroke, props.lengthM)]);
    setSpan(null);
  };
  return (
    <div class="stack">
      <div class="way-map">
        <div ref={holder} class="way-ground" role="group" aria-label={words.mapOf} />
        <span class="way-north" aria-hidden="true">
          {`↑ ${words.north}`}
        </span>
      </div>
      {tiles && <p class="soft small">{words.tiles(new URL(tiles.url).host)}</p>}
      <p class="soft small" role="status">
        {span ? words.chooseSurface : first === null ? words.tapFirst : words.tapSecond}
      </p>
      {span && (
        <Choice
          label={words.surface}
          options={surfaces.map((value) => ({ value, label: terms().surfaces[value] }))}
          value={null}
          onChange={choose}
        />
      )}
      <ul class="way-key">
        {[...new Set([props.base, ...props.stretches.map(({ surface }) => surface)])].map(
          (surface) => (
            <li key={surface ?? 'unknown'}>
              <svg class="way-sample" viewBox="0 0 24 6" aria-hidden="true">
                <path class={`way way-${surface ?? 'unknown'}`} d="M0 3h24" />
              </svg>
              {surface === null ? words.unknown : terms().surfaces[surface]}
            </li>
          ),
        )}
      </ul>
    </div>
  );
};
