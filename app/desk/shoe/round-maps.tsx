/** The shoe of each round beside the others on one scale of colour; every zone leads to its page. */
import { useRef, useState } from 'preact/hooks';
import {
  complaintKinds,
  zonesOfView,
  type ComplaintKind,
  type ZoneCode,
} from '../../../core/foot/index.ts';
import type { ZoneCount } from '../../../core/complaints/index.ts';
import { surenessOf } from '../../../core/complaints/index.ts';
import type { Foot } from '../../../core/records/index.ts';
import type { RoundSummary } from '../../../core/review/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { heatLevel } from '../../parts/foot-map/heat.ts';
import { ShoeDrawing, type DrawnZone } from '../../parts/foot-map/shoe-drawing.tsx';
import { clauses, p, t, terms } from '../../words/index.ts';
import { useWork, type TabProps } from '../desk-state.ts';
import { linksOf } from '../frame/route.ts';
import { Picture } from '../frame/picture.tsx';
import { SureStamp } from '../frame/stamp.tsx';
import { HeatKey } from './heat-key.tsx';
import { SaveMaps } from './save-maps.tsx';

type Times = 'once' | 'twice';
type Zones = Readonly<Record<Foot, readonly ZoneCount[]>>;

/** As one looks down on one's own feet, soles outside. */
const DRAWINGS = [
  { foot: 'left', view: 'sole' },
  { foot: 'left', view: 'upper' },
  { foot: 'right', view: 'upper' },
  { foot: 'right', view: 'sole' },
] as const;

/** The latest so many rounds stand beside each other; the others come on a press. */
const MOST_ROUNDS = 4;

const FEET = ['left', 'right'] as const;

const sidePlace = (foot: Foot, zone: ZoneCode): string => {
  const words = p().shoe;
  const view = zone.startsWith('P') ? 'sole' : 'upper';
  return words.zoneTitle(words.view[foot][view], terms().zones[zone].name);
};

const Round = (
  props: TabProps & {
    readonly round: RoundSummary;
    readonly zones: Zones | undefined;
    readonly times: Times;
    readonly kind: ComplaintKind | null;
  },
) => {
  const { review, round, zones, times, kind } = props;
  const words = p().shoe;
  const links = linksOf(review.project.id);
  const { asked, cells } = round.complaints;
  const [first] = cells.filter((cell) => kind === null || cell.kind === kind);
  const drawnIn = (foot: Foot, view: 'sole' | 'upper'): ReadonlyMap<ZoneCode, DrawnZone> => {
    const counts = new Map(zones?.[foot].map((one) => [one.zone, one]));
    return new Map(
      zonesOfView(view).map((zone) => {
        const count = counts.get(zone);
        const testers = count ? (times === 'once' ? count.testers : count.testersTwice) : 0;
        return [
          zone,
          {
            level: heatLevel(asked.testers > 0 ? testers / asked.testers : 0),
            label: testers > 0 ? String(testers) : '',
            says: words.zoneSays(sidePlace(foot, zone), testers, asked.testers),
            href: `${links.zone(foot, zone)}${kind === null ? '' : `?kind=${kind}`}`,
          },
        ];
      }),
    );
  };
  return (
    <section class="round-maps" aria-label={round.name}>
      <p class="round-head">
        <a href={links.round(round.id)}>{round.name}</a>
        {first && <SureStamp word={surenessOf(first.word, first.testersOnce)} />}
        <span class="soft small">
          {asked.runs === 0 ? words.nobodyAsked : words.asked(asked.runs, asked.testers)}
        </span>
      </p>
      <div class="round-drawings">
        {DRAWINGS.map(({ foot, view }) => (
          <figure key={`${foot}${view}`}>
            <ShoeDrawing
              foot={foot}
              view={view}
              label={clauses(round.name, words.view[foot][view])}
              zones={drawnIn(foot, view)}
            />
            <figcaption aria-hidden="true">{words.view[foot][view]}</figcaption>
          </figure>
        ))}
      </div>
    </section>
  );
};

/** Every zone that anybody named, by round, as the table of the picture. */
const tableOf = (rounds: readonly RoundSummary[], zones: readonly Zones[], times: Times) => {
  const words = p().shoe;
  const named = FEET.flatMap((foot) =>
    (['sole', 'upper'] as const)
      .flatMap(zonesOfView)
      .filter((zone) => zones.some((one) => one[foot].some((count) => count.zone === zone)))
      .map((zone) => ({ foot, zone })),
  );
  return {
    head: [words.zone.kinds, ...rounds.map(({ name }) => name)],
    rows: named.map(({ foot, zone }) => [
      sidePlace(foot, zone),
      ...rounds.map(({ complaints: { asked } }, at) => {
        const count = zones[at]?.[foot].find((one) => one.zone === zone);
        const testers = count ? (times === 'once' ? count.testers : count.testersTwice) : 0;
        return testers === 0
          ? words.nobody
          : words.counts(testers, asked.testers, count?.runs ?? 0);
      }),
    ]),
  };
};

export const RoundMaps = (props: TabProps) => {
  const { review, records } = props;
  const words = p().shoe;
  const [kind, setKind] = useState<ComplaintKind | null>(null);
  const [times, setTimes] = useState<Times>('once');
  const [all, setAll] = useState(false);
  const drawings = useRef<HTMLDivElement>(null);
  const rounds = all ? review.rounds : review.rounds.slice(-MOST_ROUNDS);
  const zones = useWork(
    (desk) => Promise.all(rounds.map(({ id }) => desk.zones(review.project.id, id, kind))),
    records,
    [kind, rounds.map(({ id }) => id).join()],
  );
  const felt = new Set(
    review.rounds.flatMap(({ complaints }) => complaints.cells.map((cell) => cell.kind)),
  );
  return (
    <Picture
      says={words.maps(rounds.length)}
      {...(zones && { table: () => tableOf(rounds, zones, times) })}
    >
      <div class="maps-row" ref={drawings}>
        {/* A map without its counts would say that nobody felt anything. */}
        {zones ? (
          rounds.map((round, at) => (
            <Round key={round.id} {...props} {...{ round, times, kind }} zones={zones[at]} />
          ))
        ) : (
          <p class="soft maps-loading">{t().loading}</p>
        )}
      </div>
      <div class="maps-key">
        <HeatKey />
        <span class="soft small no-print">{words.numbers}</span>
        <label class="small no-print">
          {words.felt}{' '}
          <select
            class="which-pairs"
            value={kind ?? ''}
            onChange={(event) =>
              setKind(complaintKinds.find((one) => one === event.currentTarget.value) ?? null)
            }
          >
            <option value="">{words.anything}</option>
            {complaintKinds
              .filter((one) => felt.has(one))
              .map((one) => (
                <option key={one} value={one}>
                  {terms().kinds[one].name}
                </option>
              ))}
          </select>
        </label>
        <label class="small no-print">
          {words.times}{' '}
          <select
            class="which-pairs"
            value={times}
            onChange={(event) => setTimes(event.currentTarget.value === 'twice' ? 'twice' : 'once')}
          >
            <option value="once">{words.once}</option>
            <option value="twice">{words.twice}</option>
          </select>
        </label>
        {!all && review.rounds.length > MOST_ROUNDS && (
          <Button kind="quiet" onClick={() => setAll(true)}>
            {words.allRounds(review.rounds.length)}
          </Button>
        )}
        <SaveMaps {...props} rounds={rounds} drawings={drawings} />
      </div>
    </Picture>
  );
};
