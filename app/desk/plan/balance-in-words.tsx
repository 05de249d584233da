/** How even a plan is, in words and with the counts behind them. */
import type { PlanBalance } from '../../../core/panel/index.ts';
import type { HandOutPlan } from '../../../core/records/index.ts';
import { d } from '../../words/index.ts';

const tables = ['inPeriod', 'inAll', 'together', 'after'] as const;

export const BalanceInWords = (props: {
  readonly balance: PlanBalance;
  readonly basis: HandOutPlan['basis'];
  /** Least imbalance of any such plan without limits; null: not known. */
  readonly least: number | null;
}) => {
  const words = d().panel.plan;
  const { balance, basis, least } = props;
  return (
    <div class="stack">
      <h3>{words.evenness}</h3>
      <p>{words.basis[basis]}</p>
      <ul>
        {tables.map((table) => {
          const { least: fewest, most, differ, imbalance } = balance[table];
          return (
            <li key={table}>
              {words.line(
                words.table[table],
                words.count(fewest, most, differ),
                imbalance === 0 ? words.even : words.over(imbalance),
              )}
            </li>
          );
        })}
      </ul>
      <p>{words.whole(balance.imbalance, least)}</p>
      <p class="soft small">{words.how}</p>
    </div>
  );
};
