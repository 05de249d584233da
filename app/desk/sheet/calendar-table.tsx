/** The calendar in words: the same rows as a table, for a screen reader and for whoever likes figures. */
import type { Calendar } from '../../../core/review/index.ts';
import type { Metres } from '../../../core/units/index.ts';
import { formatDate } from '../../parts/format.ts';
import { p } from '../../words/index.ts';
import type { namesIn } from '../desk-state.ts';
import type { Links } from '../frame/route.ts';
import { Some } from '../parts/some.tsx';

export const CalendarTable = (props: {
  readonly days: Calendar;
  readonly links: Links;
  readonly names: ReturnType<typeof namesIn>;
  readonly format: (distance: Metres) => string;
}) => {
  const { days, links, names, format } = props;
  const words = p().sheet;
  if (days.rows.length === 0) return null;
  const head = [
    words.pair,
    words.hands,
    words.runs,
    words.complaints,
    words.checks,
    words.distance,
    words.note,
  ];
  return (
    <details class="how-sure no-print">
      <summary>{p().frame.asTable}</summary>
      <div class="table-wrap" tabIndex={0} role="region" aria-label={p().frame.asTable}>
        <table class="place-table">
          <thead>
            <tr>
              {head.map((cell) => (
                <th scope="col" key={cell}>
                  {cell}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            <Some of={days.rows} columns={head.length}>
              {(row) => (
                <tr key={row.pair}>
                  <th scope="row">
                    <a href={links.pair(row.pair)}>{names.pair(row.pair)}</a>
                  </th>
                  <td>
                    {row.hands.map(({ handOut, tester, fromMs, untilMs }) => (
                      <div key={handOut}>
                        <a href={links.tester(tester)}>{names.tester(tester)}</a>{' '}
                        {formatDate(fromMs)} – {untilMs === null ? '' : formatDate(untilMs)}
                      </div>
                    ))}
                  </td>
                  <td>{row.runs.reduce((sum, { count }) => sum + count, 0)}</td>
                  <td>{row.runs.reduce((sum, { complained }) => sum + complained, 0)}</td>
                  <td>
                    {row.checks.map(({ check, atMs }) => (
                      <div key={check}>
                        <a href={links.check(check)}>{formatDate(atMs)}</a>
                      </div>
                    ))}
                  </td>
                  <td>{format(row.totalM)}</td>
                  <td>
                    {row.damages.map(({ damage, atMs }) => (
                      <div key={damage}>
                        <a href={links.damage(damage)}>
                          {words.legend.damage} {formatDate(atMs)}
                        </a>
                      </div>
                    ))}
                    {row.stops.map(({ stop, fromMs }) => (
                      <div key={stop}>
                        {words.legend.stop} {formatDate(fromMs)}
                      </div>
                    ))}
                  </td>
                </tr>
              )}
            </Some>
          </tbody>
        </table>
      </div>
    </details>
  );
};
