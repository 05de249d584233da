import type { ArrivalWord } from '../../../../../core/rounds/index.ts';
import { countPairs } from '../count.ts';

/** Where a name of a place stands within a sentence, and where it begins one. */
const low = (name: string) => name.charAt(0).toLowerCase() + name.slice(1);
const upper = (name: string) => name.charAt(0).toUpperCase() + name.slice(1);

/** Whether a change is in the shoe, and what else differs. */
export const arrival = {
  line: (measured: string, wanted: string, word: string) =>
    `Arrived: ${measured} of ${wanted}: ${word}`,
  /** No amount was asked for. */
  noAmount: (measured: string, word: string) => `Arrived: ${measured}: ${word}`,
  single: (measured: string, wanted: string) =>
    `Arrived: ${measured} of ${wanted} on one pair: too few to say`,
  unmeasured: 'Arrived: not measured yet',
  cannot: 'Arrived: cannot be measured. Say which line or dimension moves, and by how much.',
  words: {
    arrived: 'all of it',
    beyond: 'more than asked',
    partly: 'partly',
    not: 'not in the shoe',
    open: 'too few pairs to say',
    'not-measured': 'not measured',
  } satisfies Readonly<Record<ArrivalWord, string>>,
  absent: 'The change was not in the shoe, so nothing can be said of what it did.',
  betterAbsent: 'It is better, but the change was not in the shoe.',
  worseAbsent: 'It is worse, but the change was not in the shoe.',
  interval: (place: string, from: string, to: string) =>
    `${upper(place)}: between ${from} and ${to}.`,
  pairs: (later: number, earlier: number, sizes: string) =>
    `${countPairs(later)} against ${earlier} of the round before, in ${sizes}.`,
  nominal: (later: number, sizes: string) =>
    `${countPairs(later)} in ${sizes}, against the drawing of the round before.`,
  size: (size: string) => `size ${size} mm`,
  sizes: (from: string, to: string) => `sizes ${from} to ${to} mm, each against its own`,
  gauges: 'Read with other gauges than the round before: part of it may be the gauge.',
  /** `needed`: pairs of each round; null: not known. */
  measure: (place: string, pairs: string, needed: number | null) =>
    `Measure the ${low(place)} on ${pairs}.${needed === null ? '' : ` ${countPairs(needed)} of each round, both shoes, should settle it.`}`,
  noPairLeft: (place: string) =>
    `No new pair is left to measure the ${low(place)} on: only fresh samples can tell.`,
  found: 'Also different, as found',
  foundHint: 'Nobody asked for it. It may still be why something feels different.',
  reading: (place: string, by: string, from: string, to: string, unit: string) =>
    `${upper(place)}: ${by} ${unit} (between ${from} and ${to})`,
  last: (from: string, to: string) => `Last: ${from} before, ${to} now`,
  lastSize: {
    lengthMm: 'Length of the last',
    ballWidthMm: 'Width of the last at the ball',
    ballGirthMm: 'Girth of the last at the ball',
  },
  drawn: (what: string, from: string, to: string, unit: string) =>
    `${what}: ${from} ${unit} before, ${to} ${unit} now`,
  layers: (zone: string, from: number, to: number) =>
    `Layers at the ${zone}: ${from} before, ${to} now`,
};
