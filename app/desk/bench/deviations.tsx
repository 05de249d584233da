/** The arrival check against the blueprint: which readings are out of tolerance. */
import { formatNumber } from '../../parts/format.ts';
import { signed } from '../../words/figures.ts';
import { d, t, terms } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { Some } from '../some.tsx';

export const Deviations = ({ records, review }: TabProps) => {
  const words = d().bench;
  const names = namesIn(review, records);
  const { deviations } = review;
  const outside = deviations.filter(({ inside }) => !inside);
  const write = (value: number) => signed(value, (size) => formatNumber(size, 2, 2));
  return (
    <section class="stack">
      <h2>{words.deviations}</h2>
      {deviations.length === 0 ? (
        <p>{words.noBlueprint}</p>
      ) : outside.length === 0 ? (
        <p>{words.allInside(deviations.length)}</p>
      ) : (
        <div class="table-wrap" tabIndex={0} role="region" aria-label={words.deviations}>
          <table>
            <thead>
              <tr>
                <th scope="col">{words.pair}</th>
                <th scope="col">{words.choose}</th>
                <th scope="col" class="right">
                  {words.nominal}
                </th>
                <th scope="col" class="right">
                  {words.value}
                </th>
                <th scope="col" class="right">
                  {words.deviation}
                </th>
              </tr>
            </thead>
            <tbody>
              <Some of={outside} columns={5}>
                {(one) => (
                  <tr key={`${one.pair} ${one.measure} ${one.site} ${one.foot}`}>
                    <th scope="row">{names.pair(one.pair)}</th>
                    <td>{`${terms().measures[one.measure]}, ${one.site}, ${t().foot[one.foot]}`}</td>
                    <td class="right">
                      {`${formatNumber(one.nominal, 2)} (${write(one.lower)} … ${write(one.upper)}) ${terms().units[one.unit]}`}
                    </td>
                    <td class="right">{formatNumber(one.value, 2)}</td>
                    <td class="right outside">{write(one.deviation)}</td>
                  </tr>
                )}
              </Some>
            </tbody>
          </table>
        </div>
      )}
    </section>
  );
};
