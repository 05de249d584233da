/** At which kilometres is something said? A bar a stretch; a press on it narrows the list to that stretch. */
import type { Stretches } from '../../../core/words/index.ts';
import { fromMetres, metres } from '../../../core/units/index.ts';
import { formatNumber } from '../../parts/format.ts';
import { settings } from '../../parts/settings.ts';
import { p } from '../../words/index.ts';
import type { WordFilters } from './words-address.ts';

export const DistanceBars = (props: {
  readonly stretches: Stretches;
  readonly filters: Pick<WordFilters, 'fromM' | 'toM'>;
  readonly change: (part: Pick<WordFilters, 'fromM' | 'toM'>) => void;
}) => {
  const { stretches, filters, change } = props;
  const { stepM, counts } = stretches;
  const words = p().words;
  const unit = settings.value.distance;
  if (counts.length < 2) return null;
  const most = Math.max(1, ...counts);
  const write = (at: number) => formatNumber(fromMetres(metres(at * stepM), unit), 0);
  return (
    <div class="word-bars" role="group" aria-label={words.distance(unit)}>
      <div>
        {counts.map((count, at) => {
          const [fromM, toM] = [metres(at * stepM), metres((at + 1) * stepM)];
          const chosen = filters.fromM === fromM && filters.toM === toM;
          return (
            <button
              key={at}
              type="button"
              class="word-bar"
              aria-pressed={chosen}
              aria-label={words.stretch(write(at), write(at + 1), unit, count)}
              title={words.stretch(write(at), write(at + 1), unit, count)}
              disabled={count === 0 && !chosen}
              onClick={() => change(chosen ? { fromM: null, toM: null } : { fromM, toM })}
            >
              <i style={{ blockSize: `${count === 0 ? 0 : Math.max(4, (100 * count) / most)}%` }} />
            </button>
          );
        })}
      </div>
      <p class="row row-apart soft small" aria-hidden="true">
        <span>0</span>
        <span>{`${write(counts.length)}\u00a0${unit}`}</span>
      </p>
    </div>
  );
};
