/** Changes of the comfort scores between two rounds, as a table. */
import type { ComfortChange } from '../../../core/complaints/index.ts';
import type { Interval } from '../../../core/statistics/index.ts';
import { formatNumber } from '../../parts/format.ts';
import { signed } from '../../words/figures.ts';
import { clauses, d, terms } from '../../words/index.ts';

const signedWhole = (value: number): string => signed(value, (size) => formatNumber(size, 0));

const between = (interval: Interval | null): string =>
  interval === null ? '' : ` (${signedWhole(interval.lower)} … ${signedWhole(interval.upper)})`;

export const ComfortChanges = ({
  title,
  changes,
}: {
  title: string;
  changes: readonly ComfortChange[];
}) => {
  const words = d().comfort;
  return (
    <section class="stack">
      <h2>{title}</h2>
      <div class="table-wrap" tabIndex={0} role="region" aria-label={title}>
        <table>
          <thead>
            <tr>
              <th scope="col">{words.attribute}</th>
              <th scope="col" class="right">
                {words.change}
              </th>
              <th scope="col">{d().complaints.proof}</th>
              <th scope="col">{d().tabs.testers}</th>
            </tr>
          </thead>
          <tbody>
            {changes.map(({ attribute, difference, interval, word, by, testers }) => (
              <tr key={attribute}>
                <th scope="row">{terms().attributes[attribute].name}</th>
                <td class="right">{`${signedWhole(difference)}${between(interval)}`}</td>
                <td class={word === 'worse' ? 'outside' : ''}>{terms().comfortChanges[word]}</td>
                <td>{clauses(String(testers), words.by[by])}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
};
