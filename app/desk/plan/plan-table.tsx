/** A plan as a table: testers by periods, in each place the pair, its size and last, and the room in front. */
import type { HandOutPlan } from '../../../core/records/index.ts';
import { byCode } from '../../../core/review/index.ts';
import { periodStartMs, type PlannedPlace } from '../../../core/panel/index.ts';
import { formatDate, formatSize } from '../../parts/format.ts';
import { d, p, saidOf } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { linksOf } from '../frame/route.ts';
import type { RoomIn } from './plan-fit.ts';
import { RoomSign } from './room-sign.tsx';
import { handedOut } from './settle-plan.ts';

type Props = TabProps & { readonly plan: HandOutPlan; readonly room: RoomIn };

const Place = (props: Props & { readonly place: PlannedPlace; readonly made: boolean }) => {
  const { records, review, place, made, room } = props;
  const words = p().plan;
  const names = namesIn(review, records);
  const pair = records.pair.find(({ revision }) => revision.id === place.pair)?.body;
  const last = records.round.find(({ revision }) => revision.id === place.round)?.body.last;
  const own = [
    place.from && formatDate(place.from),
    place.until && `– ${formatDate(place.until)}`,
  ].filter(Boolean);
  return (
    <div>
      <a href={linksOf(review.project.id).pair(place.pair)}>{names.pair(place.pair)}</a>{' '}
      {pair && formatSize(pair.sizeMm)}
      {own.length > 0 && ` ${own.join(' ')}`}
      {/* In print the rounds are left out: it stays blind. */}
      <span class="soft small no-print">
        {` ${d().joined.clauses([names.round(place.round), last?.name ?? saidOf(words.last, words.lastUnknown)])} `}
        <RoomSign room={room(place.tester, place.pair)} />
        {made && ` ✓ ${d().panel.plan.handedOut}`}
      </span>
    </div>
  );
};

export const PlanTable = (props: Props) => {
  const words = d().panel.plan;
  const { records, review, plan } = props;
  const names = namesIn(review, records);
  const periods = Array.from({ length: plan.periods }, (_, period) => period);
  const made = handedOut(plan, records);
  const called = new Map(records.tester.map(({ body, revision }) => [revision.id, body.name]));
  const rows = plan.testers
    .map((one) => ({ ...one, code: names.tester(one.tester), name: called.get(one.tester) }))
    .sort(byCode);
  return (
    <div class="table-wrap" tabIndex={0} role="region" aria-label={words.title}>
      <table class="place-table">
        <thead>
          <tr>
            <th scope="col">{words.tester}</th>
            {periods.map((period) => (
              <th scope="col" key={period}>
                {words.period(period + 1)}
                <br />
                <span class="soft small">{formatDate(periodStartMs(plan, period))}</span>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ tester, code, name, away = [], droppedOutAt = Infinity }) => (
            <tr key={tester}>
              <th scope="row">{[code, name].filter(Boolean).join(' ')}</th>
              {periods.map((period) => {
                const places = plan.places.filter(
                  (one) => one.tester === tester && one.period === period,
                );
                return (
                  <td key={period}>
                    {places.map((place) => (
                      <Place key={place.pair} {...props} place={place} made={made.has(place)} />
                    ))}
                    {places.length === 0 && (
                      <span class="soft">
                        {period >= droppedOutAt
                          ? words.gone
                          : away.includes(period)
                            ? words.away
                            : words.emptyPlace}
                      </span>
                    )}
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
};
