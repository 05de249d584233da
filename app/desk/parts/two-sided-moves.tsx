/** What came closer to just right from one round to another, as a table; nothing where nobody answered in both. */
import type { TwoSidedChange } from '../../../core/complaints/index.ts';
import { formatNumber } from '../../parts/format.ts';
import { signed } from '../../words/figures.ts';
import { d, terms } from '../../words/index.ts';
import type { Speaker } from '../../words/say-complaint.ts';
import { closerInWords } from '../../words/say-two-sided.ts';

const mark = (value: number): string => signed(value, (size) => formatNumber(size, 0));

export const TwoSidedMoves = (props: {
  readonly title: string;
  readonly changes: readonly TwoSidedChange[];
  readonly speaker: Speaker;
}) => {
  const { title, changes, speaker } = props;
  if (changes.length === 0) return null;
  const words = d().comfort.twoSided;
  return (
    <section class="stack">
      <h2>{title}</h2>
      <div class="table-wrap" tabIndex={0} role="region" aria-label={title}>
        <table>
          <thead>
            <tr>
              <th scope="col">{words.question}</th>
              <th scope="col">{words.marks}</th>
              <th scope="col">{words.closer}</th>
              <th scope="col">{d().complaints.proof}</th>
              <th scope="col">{words.testers}</th>
            </tr>
          </thead>
          <tbody>
            {changes.map((one) => (
              <tr key={one.attribute}>
                <th scope="row">{terms().twoSided[one.attribute].name}</th>
                <td>{`${mark(one.from)} → ${mark(one.to)}`}</td>
                <td>{closerInWords(one, speaker)}</td>
                <td class={one.word === 'worse' ? 'outside' : ''}>
                  {terms().comfortChanges[one.word]}
                </td>
                <td>{one.testers}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
};
