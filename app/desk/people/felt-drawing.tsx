/** Where something was felt, on both soles and both uppers, in how many runs; each zone leads to its page. */
import { zones as allZones, type FootView, type ZoneCode } from '../../../core/foot/index.ts';
import type { RecordId } from '../../../core/records/index.ts';
import type { FeltInRuns } from '../../../core/review/index.ts';
import { heatLevel } from '../../parts/foot-map/heat.ts';
import { ShoeDrawing, type DrawnZone } from '../../parts/foot-map/shoe-drawing.tsx';
import { p, saidOf, terms } from '../../words/index.ts';
import { linksOf } from '../frame/route.ts';

const shown = [
  ['left', 'upper'],
  ['left', 'sole'],
  ['right', 'sole'],
  ['right', 'upper'],
] as const satisfies readonly (readonly ['left' | 'right', FootView])[];

export const FeltDrawing = (props: {
  readonly project: RecordId;
  readonly felt: readonly FeltInRuns[];
  /** Runs that were asked. */
  readonly asked: number;
}) => {
  const { project, felt, asked } = props;
  const links = linksOf(project);
  const zonesOf = (foot: 'left' | 'right', view: FootView): ReadonlyMap<ZoneCode, DrawnZone> => {
    const most = new Map<ZoneCode, number>();
    for (const { zone, byFoot } of felt)
      if (allZones[zone].view === view && byFoot[foot] > 0)
        most.set(zone, Math.max(most.get(zone) ?? 0, byFoot[foot]));
    return new Map(
      [...most].map(([zone, runs]) => [
        zone,
        {
          level: heatLevel(asked > 0 ? runs / asked : 0),
          says: saidOf(terms().zones[zone].name, p().pairs.page.inRuns(runs, asked)),
          href: links.zone(foot, zone),
        },
      ]),
    );
  };
  return (
    <div class="felt-drawing">
      {shown.map(([foot, view]) => (
        <figure key={`${foot}${view}`}>
          <ShoeDrawing
            foot={foot}
            view={view}
            zones={zonesOf(foot, view)}
            label={p().sheet[foot][view]}
          />
          <figcaption class="soft small">{p().sheet[foot][view]}</figcaption>
        </figure>
      ))}
    </div>
  );
};
