/** Is a change in the shoe, and what else differs? In sentences, the same at the desk, in the report and in the terminal. */
import type { MeasureUnit } from '../../core/records/index.ts';
import {
  isAbsent,
  type ChangeArrival,
  type ComparedChange,
  type FoundDifference,
  type PlaceArrival,
} from '../../core/review/index.ts';
import type { SampleDifference } from '../../core/rounds/index.ts';
import { signed } from './figures.ts';
import type { Speaker } from './say-complaint.ts';
import { placeName, siteName } from './say-place.ts';

type Words = Pick<Speaker, 'desk' | 'glossary' | 'number'>;

/** Writes figures of a change as fine as the change itself: of less than a millimetre in hundredths. */
const figure = (value: number, unit: MeasureUnit, { number }: Words, of = value): string =>
  number(value, Math.abs(of) < 1 && unit === 'mm' ? 2 : 1);

/** A dimension by its place alone: that it is one goes without saying. */
const placeOf = (
  one: Pick<PlaceArrival, 'measure' | 'site'>,
  { desk, glossary }: Pick<Words, 'desk' | 'glossary'>,
): string =>
  one.measure === 'dimension' ? siteName(one.site, { desk }) : placeName(one, { desk, glossary });

/** What goes the wrong way bears a minus. */
const along = (value: number, unit: MeasureUnit, words: Words, of: number): string =>
  value < 0
    ? signed(value, (size) => figure(size, unit, words, of))
    : figure(value, unit, words, of);

const inUnit = (text: string, unit: MeasureUnit, { glossary }: Words): string =>
  `${text}\u00a0${glossary.units[unit]}`;

/** Of two figures in one unit, rounded alike: what was measured, and what was asked for with the unit. */
export const arrivalFigures = ({ measured, wanted, unit }: PlaceArrival, words: Words) => {
  if (!measured || wanted === null) return null;
  const by = measured.difference * (wanted < 0 ? -1 : 1);
  return {
    measured: along(by, unit, words, wanted),
    wanted: inUnit(figure(Math.abs(wanted), unit, words), unit, words),
  };
};

/** The one line of a change: "Arrived: 0.7 of 3 mm: partly". */
export const arrivalLine = ({ places, word }: ChangeArrival, words: Words): string => {
  const { arrival } = words.desk;
  const [place] = places;
  if (!place) return arrival.cannot;
  const { measured, unit } = place;
  if (!measured) return arrival.unmeasured;
  const both = arrivalFigures(place, words);
  if (!both)
    return arrival.noAmount(
      inUnit(
        signed(measured.difference, (size) => figure(size, unit, words)),
        unit,
        words,
      ),
      arrival.words[word],
    );
  return word === 'not-measured'
    ? arrival.single(both.measured, both.wanted)
    : arrival.line(both.measured, both.wanted, arrival.words[word]);
};

const sizesOf = ({ sizes }: SampleDifference, { desk, number }: Words): string => {
  const [first, last] = [sizes[0] ?? 0, sizes.at(-1) ?? 0];
  return sizes.length > 1
    ? desk.arrival.sizes(number(first, 1), number(last, 1))
    : desk.arrival.size(number(first, 1));
};

/** Interval, pairs and sizes of one place; empty where it was not measured. */
const placeDetails = (place: PlaceArrival, words: Words): string[] => {
  const { measured, unit, wanted } = place;
  const { arrival } = words.desk;
  if (!measured) return [];
  const { interval, against, earlier, later, gaugesUnknown } = measured;
  const write = (value: number) =>
    inUnit(
      signed(value, (size) => figure(size, unit, words, wanted ?? measured.difference)),
      unit,
      words,
    );
  const sizes = sizesOf(measured, words);
  return [
    ...(interval
      ? [arrival.interval(placeOf(place, words), write(interval.lower), write(interval.upper))]
      : []),
    against === 'round'
      ? arrival.pairs(later.n, earlier.n, sizes)
      : arrival.nominal(later.n, sizes),
    ...(gaugesUnknown ? [arrival.gauges] : []),
  ];
};

/**
 * What would settle it: where to measure, on which pairs. Null where it is settled.
 * @param pairs codes of several pairs, as the screen writes them
 */
export const measureLine = (
  { word, places }: ChangeArrival,
  words: Words,
  pairs: (ids: PlaceArrival['unread']) => string,
): string | null => {
  const place = places.find((one) => one.word === 'open' || one.word === 'not-measured');
  if (!place || (word !== 'open' && word !== 'not-measured')) return null;
  const { arrival } = words.desk;
  const name = placeOf(place, words);
  return place.unread.length === 0
    ? arrival.noPairLeft(name)
    : arrival.measure(name, pairs(place.unread), place.needed);
};

/** What stands behind the line of a change, place by place. */
export const arrivalDetails = ({ places }: ChangeArrival, words: Words): string[] =>
  places.flatMap((place) => placeDetails(place, words));

/** The sentence in place of a verdict on a change that is not in the shoe; null where its verdict may be said. */
export const absentLine = (
  { arrival, found }: Pick<ComparedChange, 'arrival' | 'found'>,
  { desk }: Pick<Speaker, 'desk'>,
): string | null => {
  if (!isAbsent(arrival)) return null;
  const verdict = found?.verdict;
  if (verdict === 'mended' || verdict === 'better') return desk.arrival.betterAbsent;
  return verdict === 'worse' ? desk.arrival.worseAbsent : desk.arrival.absent;
};

/** A difference that nobody asked for. */
export const foundLine = (one: FoundDifference, words: Words): string => {
  const { arrival } = words.desk;
  const { units, zones } = words.glossary;
  switch (one.of) {
    case 'last':
      return arrival.last(one.earlier, one.later);
    case 'last-size':
      return arrival.drawn(
        arrival.lastSize[one.field],
        words.number(one.earlier, 1),
        words.number(one.later, 1),
        units.mm,
      );
    case 'layers':
      return arrival.layers(zones[one.zone].name, one.earlier, one.later);
    case 'reading': {
      const { measured, unit } = one;
      const { difference, interval } = measured;
      const write = (value: number) =>
        signed(value, (size) => figure(size, unit, words, difference));
      const { lower, upper } = interval ?? { lower: difference, upper: difference };
      return arrival.reading(
        placeOf(one, words),
        write(difference),
        write(lower),
        write(upper),
        units[unit],
      );
    }
  }
};

/** Whether a change is in the shoe, what stands behind it, and what is withheld because it is not; empty in words alone. */
export const arrivalLines = (
  change: Pick<ComparedChange, 'arrival' | 'found'>,
  speaker: Words,
): string[] => {
  const { arrival } = change;
  const absent = absentLine(change, speaker);
  return arrival
    ? [
        arrivalLine(arrival, speaker),
        ...arrivalDetails(arrival, speaker),
        ...(absent === null ? [] : [absent]),
      ]
    : [];
};
