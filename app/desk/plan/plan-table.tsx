/** A plan as a table: testers by periods, a pair in each place. In print the rounds are left out: it stays blind. */
import type { HandOutPlan, RecordId } from '../../../core/records/index.ts';
import { byCode } from '../../../core/review/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { formatDate } from '../../parts/format.ts';
import { d } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { handedOut } from './plan-work.ts';

const WEEK_MS = 7 * 86_400_000;

export const PlanTable = (
  props: TabProps & {
    readonly plan: HandOutPlan;
    readonly onDropOut?: (tester: RecordId) => void;
  },
) => {
  const words = d().panel.plan;
  const { records, review, plan, onDropOut } = props;
  const names = namesIn(review, records);
  const periods = Array.from({ length: plan.periods }, (_, period) => period);
  const firstDay = (period: number) =>
    formatDate(Date.parse(plan.from) + period * plan.weeksPerPeriod * WEEK_MS);
  const made = handedOut(plan, records);
  const rows = plan.testers.map((one) => ({ ...one, code: names.tester(one.tester) })).sort(byCode);
  return (
    <div class="table-wrap" tabIndex={0} role="region" aria-label={words.title}>
      <table>
        <thead>
          <tr>
            <th scope="col">{words.tester}</th>
            {periods.map((period) => (
              <th scope="col" key={period}>
                {words.period(period + 1)}
                <br />
                <span class="soft small">{firstDay(period)}</span>
              </th>
            ))}
            {onDropOut && (
              <th scope="col" class="no-print">
                {words.dropOut}
              </th>
            )}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ tester, code, away = [], droppedOutAt = Infinity }) => (
            <tr key={tester}>
              <th scope="row">{code}</th>
              {periods.map((period) => {
                const place = plan.places.find(
                  (one) => one.tester === tester && one.period === period,
                );
                return (
                  <td key={period}>
                    {place ? (
                      <>
                        <strong>{names.pair(place.pair)}</strong>
                        <span class="soft small no-print">{` ${names.round(place.round)}`}</span>
                        {made.has(place) && (
                          <span class="small no-print">{` ✓ ${words.handedOut}`}</span>
                        )}
                      </>
                    ) : (
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
              {onDropOut && (
                <td class="no-print">
                  {droppedOutAt === Infinity && (
                    <Button
                      kind="quiet"
                      aria-label={words.dropOutName(code)}
                      onClick={() => onDropOut(tester)}
                    >
                      {words.dropOut}
                    </Button>
                  )}
                </td>
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
};
