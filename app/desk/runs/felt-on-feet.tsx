/** Where on the feet it was felt in one run, drawn, with each complaint in words and its photos. */
import { zones, type FootView, type ZoneCode } from '../../../core/foot/index.ts';
import type { Complaint, RecordId } from '../../../core/records/index.ts';
import { ShoeDrawing, type DrawnZone } from '../../parts/foot-map/shoe-drawing.tsx';
import { PhotoRow } from '../../parts/photos/photo-view.tsx';
import { d, p, t } from '../../words/index.ts';
import { linksOf } from '../frame/route.ts';
import { complaintInWords, complaintLevel } from '../../words/say-run.ts';
import '../../parts/foot-map/foot-map.css';

const views = ['upper', 'sole'] as const satisfies readonly FootView[];

export const FeltOnFeet = (props: {
  readonly complaints: readonly Complaint[];
  readonly project: RecordId;
}) => {
  const { complaints, project } = props;
  const words = p().runs;
  const links = linksOf(project);
  const drawn = views.flatMap((view) =>
    (['left', 'right'] as const).map((foot) => ({
      view,
      foot,
      felt: complaints.filter((one) => one.foot === foot && zones[one.zone].view === view),
    })),
  );
  const shown = drawn.filter(({ view }) =>
    drawn.some((one) => one.view === view && one.felt.length > 0),
  );
  return (
    <section class="run-feet" aria-label={words.feetSays(complaints.length)}>
      <h2>{words.feet}</h2>
      <div class="run-feet-drawn">
        {shown.map(({ view, foot, felt }) => {
          const marked = new Map<ZoneCode, DrawnZone>(
            felt.map((one) => [
              one.zone,
              {
                level: complaintLevel(one),
                label: one.severity === undefined ? '' : String(one.severity),
                says: complaintInWords(one),
                href: links.zone(foot, one.zone),
                marked: true,
              },
            ]),
          );
          const label = d().joined.clauses([t()[foot], t()[view]]);
          return (
            <figure key={`${view}${foot}`}>
              <ShoeDrawing view={view} foot={foot} zones={marked} label={label} />
              <figcaption class="small soft">{label}</figcaption>
            </figure>
          );
        })}
      </div>
      <ul class="plain-list">
        {complaints.map((one) => (
          <li key={`${one.foot} ${one.zone} ${one.kind}`}>
            <a href={links.zone(one.foot, one.zone)}>{complaintInWords(one)}</a>
            <PhotoRow photos={one.photos ?? []} label={complaintInWords(one)} />
          </li>
        ))}
      </ul>
    </section>
  );
};
