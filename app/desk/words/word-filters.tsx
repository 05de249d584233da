/** Search and filters of the words, each choice with how many remarks it would find. */
import { zoneCodes } from '../../../core/foot/index.ts';
import { fromMetres, toMetres } from '../../../core/units/index.ts';
import { parseDecimal } from '../../../core/units/typed.ts';
import {
  everyRemark,
  remarkPlaces,
  remarkSorts,
  type WordsSlice,
} from '../../../core/words/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { settings } from '../../parts/settings.ts';
import { listed, p, terms } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { FindField } from '../list/find-field.tsx';
import { useTyped } from '../list/use-typed.ts';
import { Select, type Option } from '../parts/options.tsx';
import { DistanceBars } from './distance-bars.tsx';
import type { WordFilters } from './words-address.ts';

const Pick = (props: {
  readonly label: string;
  readonly value: string;
  readonly options: readonly Option[];
  readonly onChange: (value: string) => void;
}) => (
  <label class="word-filter">
    <span class="soft small">{props.label}</span>
    <Select class="input" value={props.value} options={props.options} onChoose={props.onChange} />
  </label>
);

const Tick = (props: {
  readonly label: string;
  readonly checked: boolean;
  readonly onChange: (checked: boolean) => void;
}) => (
  <label class="word-tick">
    <input
      type="checkbox"
      class="tick"
      checked={props.checked}
      onChange={(event) => props.onChange(event.currentTarget.checked)}
    />
    {props.label}
  </label>
);

interface FilterProps extends TabProps {
  readonly filters: WordFilters;
  readonly found: WordsSlice;
  readonly change: (part: Partial<WordFilters>) => void;
}

const Distance = ({ filters, change, found }: FilterProps) => {
  const words = p().words;
  const unit = settings.value.distance;
  const written = (distance: WordFilters['fromM']) =>
    distance === null ? '' : String(Math.round(fromMetres(distance, unit) * 10) / 10);
  const read = (typed: string): WordFilters['fromM'] => {
    const value = parseDecimal(typed);
    return value === null || value < 0 ? null : toMetres(value, unit);
  };
  const [from, setFrom] = useTyped(written(filters.fromM), (typed) =>
    change({ fromM: read(typed) }),
  );
  const [to, setTo] = useTyped(written(filters.toM), (typed) => change({ toM: read(typed) }));
  const field = (label: string, value: string, set: (value: string) => void) => (
    <label>
      <span class="soft small">{label}</span>{' '}
      <input
        class="input"
        inputMode="decimal"
        autocomplete="off"
        value={value}
        onInput={(event) => set(event.currentTarget.value)}
      />
    </label>
  );
  return (
    <fieldset class="word-distance">
      <legend class="soft small">{words.distance(unit)}</legend>
      <DistanceBars stretches={found.stretches} filters={filters} change={change} />
      {field(words.from, from, setFrom)}
      {field(words.to, to, setTo)}
    </fieldset>
  );
};

export const WordFilterPart = (props: FilterProps) => {
  const { review, records, filters, found, change } = props;
  const words = p().words;
  const names = namesIn(review, records);
  const { counts } = found;
  const options = <Id extends string>(
    all: readonly Id[],
    chosen: Id | null,
    of: Readonly<Partial<Record<string, number>>>,
    name: (id: Id) => string,
  ): readonly Option[] => [
    { value: '', label: words.any },
    ...all
      .filter((id) => id === chosen || of[id] !== undefined)
      .map((id) => ({ value: id, label: words.option(name(id), of[id] ?? 0) })),
  ];
  const pick = <K extends 'round' | 'zone' | 'on' | 'tester' | 'pair'>(
    key: K,
    all: readonly NonNullable<WordFilters[K]>[],
    name: (id: NonNullable<WordFilters[K]>) => string,
  ) => (
    <Pick
      label={words[key]}
      value={filters[key] ?? ''}
      options={options(all, filters[key] as NonNullable<WordFilters[K]> | null, counts[key], name)}
      onChange={(value) => change({ [key]: value === '' ? null : value })}
    />
  );
  const tick = (key: 'photo' | 'untapped' | 'marked') => (
    <Tick
      label={words.option(words[key], counts[key])}
      checked={filters[key]}
      onChange={(checked) => change({ [key]: checked })}
    />
  );
  return (
    <section class="word-filters no-print" aria-label={words.filters}>
      <FindField label={words.search} value={filters.text} onFind={(text) => change({ text })} />
      {found.also.length > 0 && <p class="soft small">{words.also(listed(found.also))}</p>}
      {pick(
        'round',
        review.rounds.map(({ id }) => id),
        names.round,
      )}
      {pick('zone', zoneCodes, (zone) => terms().zones[zone].name)}
      {pick('on', remarkPlaces, (place) => words.places[place])}
      {pick(
        'tester',
        review.testers.map(({ id }) => id),
        names.tester,
      )}
      {pick(
        'pair',
        review.pairs.map(({ id }) => id),
        names.pair,
      )}
      <Distance {...props} />
      {tick('photo')}
      {tick('untapped')}
      {tick('marked')}
      <Pick
        label={words.sort}
        value={filters.sort}
        options={remarkSorts.map((sort) => ({ value: sort, label: words.sorts[sort] }))}
        onChange={(sort) => change({ sort: sort as WordFilters['sort'] })}
      />
      {(found.narrowed || found.searched !== null) && (
        <Button kind="quiet" onClick={() => change(everyRemark)}>
          {words.clear}
        </Button>
      )}
    </section>
  );
};
