/** What bothered whom where: honest counts on the foot map and in a table, with the runs behind them. */
import { useState } from 'preact/hooks';
import { zonesOfView, type FootView, type ZoneCode } from '../../core/foot/index.ts';
import type { Foot, RecordId } from '../../core/records/index.ts';
import type { RoundReview } from '../../core/review/index.ts';
import { Choice } from '../parts/controls/controls.tsx';
import { FootMap, zoneKey, type HeatLevel, type ZoneHeat } from '../parts/foot-map/foot-map.tsx';
import { PhotoRow } from '../parts/photos/photo-view.tsx';
import { formatDate, formatDistance, formatNumber } from '../parts/format.ts';
import { d, t, terms } from '../words/index.ts';
import { namesIn, type TabProps } from './desk-state.ts';

const zoneName = (zone: ZoneCode): string => terms().zones[zone].name;

/** Shares in steps that a reader can tell apart: none, up to a tenth, a quarter, a half, more. */
const levelOf = (share: number): HeatLevel =>
  share === 0 ? 0 : share <= 0.1 ? 1 : share <= 0.25 ? 2 : share <= 0.5 ? 3 : 4;

/** Heat by zone and foot: testers who reported anything there, of those asked. */
const heatOf = (round: RoundReview, view: FootView): ReadonlyMap<string, ZoneHeat> => {
  const { testers } = round.complaints.asked;
  const heat = new Map<string, ZoneHeat>();
  if (testers === 0) return heat;
  for (const foot of ['left', 'right'] as const) {
    const counts = new Map(round.zones[foot].map((one) => [one.zone, one.testers]));
    for (const zone of zonesOfView(view)) {
      const reported = counts.get(zone) ?? 0;
      const share = reported / testers;
      heat.set(zoneKey(foot, zone), {
        share,
        level: levelOf(share),
        label: reported > 0 ? `${reported}/${testers}` : '',
      });
    }
  }
  return heat;
};

export const Complaints = ({ records, review }: TabProps) => {
  const words = d().complaints;
  const [chosen, setChosen] = useState<RecordId | null>(null);
  const [view, setView] = useState<FootView>('upper');
  const [open, setOpen] = useState<{ foot: Foot; zone: ZoneCode } | null>(null);
  const withRuns = review.rounds.filter(({ size }) => size.runs > 0);
  const round =
    review.rounds.find(({ id }) => id === chosen) ?? withRuns.at(-1) ?? review.rounds.at(-1);
  if (!round) return <p>{d().rounds.none}</p>;
  const { asked, cells } = round.complaints;
  return (
    <>
      <Choice
        label={words.round}
        options={review.rounds.map(({ id, name }) => ({ value: id, label: name }))}
        value={round.id}
        onChange={setChosen}
      />
      <p>{asked.runs === 0 ? words.nobodyAsked : words.asked(asked.runs, asked.testers)}</p>
      <div class="two-columns">
        <section class="stack">
          <Choice
            hideLabel
            label={words.view}
            options={[
              { value: 'upper', label: t().upper },
              { value: 'sole', label: t().sole },
            ]}
            value={view}
            onChange={setView}
          />
          <p class="soft small">{words.mapTitle}</p>
          <FootMap
            view={view}
            mode="heat"
            heat={heatOf(round, view)}
            {...(open && { selected: new Set([zoneKey(open.foot, open.zone)]) })}
            onPick={(foot, zone) => setOpen({ foot, zone })}
            names={zoneName}
            labels={{
              left: t().left,
              right: t().right,
              sole: t().sole,
              upper: t().upper,
              unasked: words.unasked,
            }}
          />
        </section>
        <section class="stack">
          {open ? (
            <RunsBehind records={records} review={review} round={round} {...open} />
          ) : (
            <p class="soft">{words.pick}</p>
          )}
        </section>
      </div>
      {asked.runs > 0 && cells.length === 0 && <p>{words.none}</p>}
      {cells.length > 0 && (
        <div class="table-wrap" tabIndex={0} role="region" aria-label={d().tabs.complaints}>
          <table>
            <thead>
              <tr>
                <th scope="col">{words.zone}</th>
                <th scope="col">{words.kind}</th>
                <th scope="col" class="right">
                  {words.testers}
                </th>
                <th scope="col" class="right">
                  {words.twice}
                </th>
                <th scope="col" class="right">
                  {words.runs}
                </th>
                <th scope="col" class="right">
                  {words.feet}
                </th>
                <th scope="col" class="right">
                  {words.severity}
                </th>
              </tr>
            </thead>
            <tbody>
              {cells.map((cell) => (
                <tr key={`${cell.zone} ${cell.kind}`}>
                  <th scope="row">{zoneName(cell.zone)}</th>
                  <td>{terms().kinds[cell.kind].name}</td>
                  <td class="right">{`${cell.testersOnce} / ${asked.testers}`}</td>
                  <td class="right">{cell.testersTwice}</td>
                  <td class="right">{`${cell.runs} / ${asked.runs}`}</td>
                  <td class="right">{`${cell.byFoot.left} / ${cell.byFoot.right}`}</td>
                  <td class="right">
                    {cell.severity
                      ? `${formatNumber(cell.severity.mean, 1, 1)} / ${cell.severity.most}`
                      : d().none}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
      <p class="soft small">{words.counts}</p>
    </>
  );
};

const RunsBehind = (props: TabProps & { round: RoundReview; foot: Foot; zone: ZoneCode }) => {
  const { records, review, round, foot, zone } = props;
  const names = namesIn(review, records);
  const ids = new Set(round.complaints.cells.flatMap((cell) => cell.runIds));
  const behind = records.run.flatMap(({ body, revision }) => {
    if (!ids.has(revision.id) || body.feet?.answer !== 'complaints') return [];
    const here = body.feet.complaints.filter((one) => one.foot === foot && one.zone === zone);
    return here.length > 0 ? [{ id: revision.id, body, here }] : [];
  });
  return (
    <div class="sheet" aria-live="polite">
      <h2>{d().complaints.runsBehind(`${t().foot[foot]}, ${zoneName(zone)}`)}</h2>
      {behind.length === 0 ? (
        <p>{d().complaints.none}</p>
      ) : (
        <ul class="plain-list">
          {behind.map(({ id, body, here }) => (
            <li key={id}>
              {[
                names.tester(body.tester),
                names.pair(body.pair),
                formatDate(body.startedAt),
                formatDistance(body.distanceM),
                here
                  .map(
                    ({ kind, severity, words }) =>
                      `${terms().kinds[kind].name}${severity === undefined ? '' : ` ${severity}`}${words ? ` “${words}”` : ''}`,
                  )
                  .join(', '),
              ].join(' · ')}
              <PhotoRow
                photos={here.flatMap(({ photos }) => photos ?? [])}
                label={`${names.tester(body.tester)}, ${zoneName(zone)}`}
              />
            </li>
          ))}
        </ul>
      )}
    </div>
  );
};
