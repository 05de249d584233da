/** What a lead sees of the words is in the address, whole, and an address that says nonsense filters nothing. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  wordFiltersIn,
  wordsAddress,
  type WordFilters,
} from '../../../../app/desk/words/words-address.ts';
import { zoneCodes } from '../../../../core/foot/index.ts';
import { metres } from '../../../../core/units/index.ts';
import { everyRemark, remarkPlaces, remarkSorts } from '../../../../core/words/index.ts';
import { idOf } from '../../../core/records/make.ts';

const queryOf = (address: string) =>
  Object.fromEntries(new URL(address, 'https://hub.test').searchParams);

it('comes back as it was', () => {
  const id = fc.option(fc.nat(200).map(idOf));
  const distance = fc.option(fc.nat(900).map((km) => metres(km * 1000)));
  const any: fc.Arbitrary<WordFilters> = fc.record({
    ...{ text: fc.string(), round: id, tester: id, pair: id },
    ...{
      zone: fc.option(fc.constantFrom(...zoneCodes)),
      on: fc.option(fc.constantFrom(...remarkPlaces)),
    },
    ...{ fromM: distance, toM: distance },
    ...{ photo: fc.boolean(), untapped: fc.boolean(), marked: fc.boolean() },
    sort: fc.constantFrom(...remarkSorts),
  });
  fc.assert(
    fc.property(any, (filters) => {
      expect(wordFiltersIn(queryOf(wordsAddress('/desk/x/words', filters)))).toEqual(filters);
    }),
  );
});

it('is the place alone where nothing narrows it', () => {
  expect(wordsAddress('/desk/x/words', {})).toBe('/desk/x/words');
  expect(wordsAddress('/desk/x/words', { zone: 'U5' })).toBe('/desk/x/words?zone=U5');
});

it('filters nothing where it cannot be read', () => {
  const odd = {
    zone: 'U99',
    round: 'x',
    from: 'far',
    to: '-3',
    on: 'moon',
    sort: 'up',
    photo: '7',
  };
  expect(wordFiltersIn(odd)).toEqual(everyRemark);
});
