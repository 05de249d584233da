/** Changes of the comfort scores between two rounds, with interval and whose they are, as a table. */
import type { ComfortChange } from '../../../core/complaints/index.ts';
import { formatNumber } from '../../parts/format.ts';
import { signed } from '../../words/figures.ts';
import { clauses, p, terms } from '../../words/index.ts';

const points = (value: number): string => signed(value, (size) => formatNumber(size, 0));

const changeInWords = ({ difference, interval }: ComfortChange): string =>
  interval === null
    ? points(difference)
    : `${points(difference)} (${points(interval.lower)} … ${points(interval.upper)})`;

export const ComfortChanges = (props: {
  readonly title: string;
  readonly changes: readonly ComfortChange[];
}) => {
  const { title, changes } = props;
  const words = p().changes;
  if (changes.length === 0) return null;
  return (
    <section class="stack">
      <h2>{title}</h2>
      <div class="table-wrap" tabIndex={0} role="region" aria-label={title}>
        <table class="place-table">
          <thead>
            <tr>
              <th scope="col">{words.question}</th>
              <th scope="col" class="right">
                {words.comfortTable.change}
              </th>
              <th scope="col">{words.word}</th>
              <th scope="col">{words.comfortTable.testers}</th>
            </tr>
          </thead>
          <tbody>
            {changes.map((change) => (
              <tr key={change.attribute}>
                <th scope="row">{terms().attributes[change.attribute].name}</th>
                <td class="right">{changeInWords(change)}</td>
                <td>{terms().comfortChanges[change.word]}</td>
                <td>{clauses(String(change.testers), words.comfortTable.by[change.by])}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
};
