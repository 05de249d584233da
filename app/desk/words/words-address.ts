/** Search and filters of the words as the query of their address, so that a lead can send what they see. Pure. */
import { zoneCodes, type ZoneCode } from '../../../core/foot/index.ts';
import type { RecordId } from '../../../core/records/index.ts';
import { RECORD_ID_PATTERN } from '../../../core/records/index.ts';
import { metres, type Metres } from '../../../core/units/index.ts';
import {
  everyRemark,
  remarkPlaces,
  remarkSorts,
  type WordsQuery,
} from '../../../core/words/index.ts';

export type WordFilters = Omit<WordsQuery, 'most' | 'left' | 'unitM'>;

const oneOf = <T extends string>(all: readonly T[], value: string | undefined): T | null =>
  all.find((one) => one === value) ?? null;

const idIn = (value: string | undefined): RecordId | null =>
  value !== undefined && RECORD_ID_PATTERN.test(value) ? (value as RecordId) : null;

const kilometresIn = (value: string | undefined): Metres | null => {
  const km = value === undefined || value === '' ? NaN : Number(value);
  return Number.isFinite(km) && km >= 0 ? metres(km * 1000) : null;
};

/** @param query of the address; what cannot be read filters nothing */
export const wordFiltersIn = (query: Readonly<Record<string, string>>): WordFilters => ({
  text: query['q'] ?? '',
  round: idIn(query['round']),
  zone: oneOf<ZoneCode>(zoneCodes, query['zone']),
  on: oneOf(remarkPlaces, query['on']),
  tester: idIn(query['tester']),
  pair: idIn(query['pair']),
  fromM: kilometresIn(query['from']),
  toM: kilometresIn(query['to']),
  photo: query['photo'] === '1',
  untapped: query['untapped'] === '1',
  marked: query['marked'] === '1',
  sort: oneOf(remarkSorts, query['sort']) ?? 'newest',
});

const kilometres = (distance: Metres | null): string =>
  distance === null ? '' : String(distance / 1000);

/** The address of the words with some filters set. @param place of the words, without a query */
export const wordsAddress = (place: string, some: Partial<WordFilters>): string => {
  const all = { ...everyRemark, ...some };
  const said: readonly (readonly [string, string])[] = [
    ['q', all.text],
    ['round', all.round ?? ''],
    ['zone', all.zone ?? ''],
    ['on', all.on ?? ''],
    ['tester', all.tester ?? ''],
    ['pair', all.pair ?? ''],
    ['from', kilometres(all.fromM)],
    ['to', kilometres(all.toM)],
    ['photo', all.photo ? '1' : ''],
    ['untapped', all.untapped ? '1' : ''],
    ['marked', all.marked ? '1' : ''],
    ['sort', all.sort === 'newest' ? '' : all.sort],
  ];
  const query = new URLSearchParams(
    said.filter(([, value]) => value !== '').map((one) => [...one]),
  );
  return query.size === 0 ? place : `${place}?${query.toString()}`;
};
