/** The names that sentences of the desk use, in the language of its reader. */
import type { Say } from '../../words/say-names.ts';
import { fromMetres, type Metres } from '../../../core/units/index.ts';
import { formatDate, formatNumber } from '../../parts/format.ts';
import { settings } from '../../parts/settings.ts';
import { listed, locale, p, terms } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';

/** More names than this in one sentence are counted, not read. */
const MOST_NAMES = 4;

/** A distance as one says it: whole from 100 on, else to a tenth. */
export const roundDistance = (distance: Metres): string => {
  const unit = settings.value.distance;
  const value = fromMetres(distance, unit);
  return `${formatNumber(value, value >= 100 ? 0 : 1)} ${unit}`;
};

export const sayOf = ({ review, records }: TabProps): Say => {
  const names = namesIn(review, records);
  const list = (some: readonly string[]): string =>
    new Intl.ListFormat(locale(), { type: 'conjunction' }).format(some);
  return {
    round: names.round,
    pair: names.code,
    tester: (id) => names.tester(id),
    testers: (ids) =>
      ids.length <= MOST_NAMES
        ? list(ids.map(names.tester))
        : `${listed(ids.slice(0, MOST_NAMES).map(names.tester))} ${p().sheet.more(ids.length - MOST_NAMES)}`,
    felt: ({ zone, kind }) => p().frame.felt(terms().kinds[kind].name, terms().zones[zone].name),
    distance: roundDistance,
    number: (value, digits = 1) => formatNumber(value, digits),
    date: formatDate,
    list,
    upper: (text) => text.charAt(0).toLocaleUpperCase(locale()) + text.slice(1),
  };
};
