/** Beside the runs: the zone on the shoe, what is felt there, which parts are usually behind it, its findings. */
import { suspectsOf } from '../../../core/foot/index.ts';
import { oneSided, type ZoneLook } from '../../../core/review/index.ts';
import { heatLevel } from '../../parts/foot-map/heat.ts';
import { ShoeDrawing } from '../../parts/foot-map/shoe-drawing.tsx';
import { p, proposeWords, terms } from '../../words/index.ts';
import type { TabProps } from '../desk-state.ts';
import { linksOf } from '../frame/route.ts';

/** The shoe that a complaint is nearly always on, in the latest round that has it; null: neither. */
const sideOfLatest = (
  { rounds }: TabProps['review'],
  { zone, kind }: Pick<ZoneLook, 'zone' | 'kind'>,
) => {
  const cell = rounds
    .toReversed()
    .flatMap(({ complaints }) => complaints.cells)
    .find((one) => one.zone === zone && one.kind === kind);
  return cell ? oneSided(cell.byFoot) : null;
};

const Behind = ({ look, review }: TabProps & { readonly look: ZoneLook }) => {
  const words = p().shoe.zone;
  if (look.kind === null) return null;
  const { first, second } = suspectsOf(look.kind, look.zone);
  if (first.length + second.length === 0) return null;
  const side = sideOfLatest(review, look);
  return (
    <section>
      <h2>{words.behind}</h2>
      {side !== null && <p>{proposeWords().onFoot[side]}</p>}
      <ul class="plain-list">
        {first.map((part) => (
          <li key={part}>{terms().parts[part].name}</li>
        ))}
        {second.length > 0 && (
          <li class="soft small">
            {words.then} {second.map((part) => terms().parts[part].name).join(words.comma)}
          </li>
        )}
      </ul>
      <p class="soft small">{words.practice}</p>
    </section>
  );
};

export const ZoneAside = (props: TabProps & { readonly look: ZoneLook }) => {
  const { review, records, look } = props;
  const { foot, zone, kind, kinds, rounds } = look;
  const words = p().shoe.zone;
  const links = linksOf(review.project.id);
  const here = links.zone(foot, zone);
  const view = zone.startsWith('P') ? 'sole' : 'upper';
  const other = foot === 'left' ? 'right' : 'left';
  const share = Math.max(
    0,
    ...rounds.map(({ testers, askedTesters }) => (askedTesters > 0 ? testers / askedTesters : 0)),
  );
  const own = new Set(review.rounds.map(({ id }) => id));
  const findings = records.finding.filter(
    ({ body }) =>
      body.zone === zone &&
      (kind === null || body.kind === kind) &&
      body.round !== undefined &&
      own.has(body.round),
  );
  return (
    <aside class="zone-aside">
      <div class="zone-drawing">
        <ShoeDrawing
          foot={foot}
          view={view}
          label={p().shoe.zoneTitle(p().shoe.view[foot][view], terms().zones[zone].name)}
          zones={new Map([[zone, { level: heatLevel(share), marked: true }]])}
        />
      </div>
      <p class="small no-print">
        <a href={`${links.zone(other, zone)}${kind === null ? '?kind=any' : `?kind=${kind}`}`}>
          {words.other[other]}
        </a>
      </p>
      {kinds.length > 0 && (
        <section class="no-print">
          <h2>{words.kinds}</h2>
          <ul class="plain-list">
            {[...kinds, { kind: null, runs: null }].map((one) => (
              <li key={one.kind}>
                <a
                  href={`${here}?kind=${one.kind ?? 'any'}`}
                  {...(one.kind === kind && { 'aria-current': 'true' as const })}
                >
                  {one.kind === null ? words.anything : terms().kinds[one.kind].name}
                </a>{' '}
                {one.runs !== null && <span class="soft small">{one.runs}</span>}
              </li>
            ))}
          </ul>
        </section>
      )}
      <Behind {...props} />
      {findings.length > 0 && (
        <section>
          <h2>{words.findings}</h2>
          <ul class="plain-list">
            {findings.map(({ revision, body }) => (
              <li key={revision.id}>
                <a href={links.finding(revision.id)}>{body.title}</a>
              </li>
            ))}
          </ul>
        </section>
      )}
    </aside>
  );
};
