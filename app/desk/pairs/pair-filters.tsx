/** Narrows the list of pairs: by round, by state, by what stands in it. */
import type { RecordId } from '../../../core/records/index.ts';
import { p } from '../../words/index.ts';
import { pairStates, type PairFilter, type PairState } from './pair-order.ts';

export const PairFilters = (props: {
  readonly rounds: readonly { readonly id: RecordId; readonly name: string }[];
  readonly filter: PairFilter;
  readonly onFilter: (filter: PairFilter) => void;
}) => {
  const { rounds, filter, onFilter } = props;
  const words = p().pairs;
  return (
    <>
      <input
        class="input"
        type="search"
        aria-label={words.find}
        placeholder={words.find}
        value={filter.text}
        onInput={(event) => onFilter({ ...filter, text: event.currentTarget.value })}
      />
      <select
        class="input"
        aria-label={words.roundFilter}
        value={filter.round ?? ''}
        onChange={({ currentTarget: { value } }) =>
          onFilter({ ...filter, round: value === '' ? null : (value as RecordId) })
        }
      >
        <option value="">{words.allRounds}</option>
        {rounds.map(({ id, name }) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
      </select>
      <select
        class="input"
        aria-label={words.stateFilter}
        value={filter.state}
        onChange={(event) => onFilter({ ...filter, state: event.currentTarget.value as PairState })}
      >
        {pairStates.map((state) => (
          <option key={state} value={state}>
            {words.states[state]}
          </option>
        ))}
      </select>
    </>
  );
};
