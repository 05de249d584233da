import type { PriorSource } from '../../../../../core/wear/index.ts';
import { countPairs, countTesters } from '../count.ts';

export const wear = {
  round: 'Round',
  place: 'Measure and site',
  against: 'Against',
  curveOf: 'Curve of',
  newPair: 'a new pair of the round',
  pairName: (code: string) => `pair ${code}`,
  xTitles: { steps: 'Steps per shoe, thousands', load: 'Load per shoe, MN' },
  amounts: {
    steps: (thousands: string) => `${thousands} thousand steps per shoe`,
    load: (meganewtons: string) => `${meganewtons} MN per shoe`,
  },
  curve: 'estimate',
  beyond: 'estimate beyond the checks',
  band: '90 % interval',
  key: 'Shaded: where the value of a pair lies with 90 % probability; single readings scatter more. Dotted: beyond the checks, never beyond twice their distance.',
  priorOnly:
    'No two checks at different distances yet. What you see is what is known of such foams beforehand, not this foam.',
  leftOut: (count: number) =>
    `${count} ${count === 1 ? 'check is' : 'checks are'} left out: steps or force before it are not known.`,
  change: (word: string, at: string, change: string, lower: string, upper: string) =>
    `${word}. By ${at} a new pair will have changed by ${change} (90 % interval ${lower} to ${upper}).`,
  value: (at: string, value: string, lower: string, upper: string) =>
    `At ${at} a new pair will have ${value} (90 % interval ${lower} to ${upper}).`,
  limit: (what: string, bound: string, value: string) => `${what} ${bound} ${value}`,
  ofNew: (percent: string) => `${percent} of new`,
  hold: (limit: string, at: string, chance: string, word: string) =>
    `${limit} at ${at}: ${word}. A new pair keeps it with a probability of ${chance}.`,
  crossing: (lower: string, median: string, upper: string) =>
    `Where the limit is reached: ${median} as the middle estimate; at the earliest (5 % probability) ${lower}, at the latest (95 %) ${upper}.`,
  crossedAfter: (lower: string) =>
    `Where the limit is reached: ${lower} at the earliest (5 % probability); by when, the checks cannot tell yet.`,
  tooFar: (limit: string, at: string) =>
    `${limit} at ${at}: nothing can be said yet. That is more than twice as far as any check went.`,
  beyondChecks: 'farther than the checks can tell',
  notCrossed: 'At what distance the limit is reached the checks cannot tell yet.',
  toldApart: (form: string, others: string) => `It goes ${form}; ${others} fits worse.`,
  notToldApart: (weights: string) =>
    `How it goes on cannot be told yet (probability of each form: ${weights}); the interval allows for all of them.`,
  basis: {
    published: (source: string) =>
      `Part of the estimate is what was known beforehand, published: ${source}.`,
    judgement: (source: string) =>
      `Part of the estimate is what was assumed beforehand, judgement, no source: ${source}.`,
  },
  /** Where what was known beforehand is from. */
  sources: {
    'cook-1985':
      'Cook SD, Kester MA & Brunet ME, Am J Sports Med 1985;13:248-253: 80 % at 241 km and 70 % at 805 km kept when worn; wide, for Hennig EM, Footwear Sci 2011;3:71-81 saw little change',
    'wang-2010-2012':
      'Wang L et al., Footwear Sci 2010;2:141-147: peak +4.88 % at 500 km (95 % interval 3.40 to 6.36), 15 shoes worn; Wang L, Hong Y & Li JX, J Sports Sci 2012;30:1787-1792: EVA 921.1 (SD 20.1) to 968.0 (SD 25.9) N, PU 972.9 to 909.6 N at 200 km; wide, for few models were measured',
    'wang-2012':
      'Wang L, Hong Y & Li JX, J Sports Sci 2012;30:1787-1792: EVA 921.1 (SD 20.1) to 968.0 (SD 25.9) N, PU 972.9 to 909.6 N at 200 km',
    'brueckner-2010':
      'Brückner K et al., Procedia Eng 2010;2:2789-2793: PU changes less than EVA, no figure',
    'lippa-2019':
      'below the 1.2 to 1.8 mm of machine ageing, Lippa N et al., Proc IMechE P 2019, doi 10.1177/1754337118824001',
    'not-of-foam': 'no published change with distance for this foam',
    'not-worn': 'no published change with distance in shoes worn by runners',
    'not-worn-tread':
      'no published change with distance in shoes worn by runners; half a millimetre in 100 km assumed',
  } satisfies Readonly<Record<PriorSource, string>>,
  foamUnknown: 'The round does not say which foam it has; what is known beforehand is wide.',
  outlying: (pair: string, change: string, p: string) =>
    `Pair ${pair} wears otherwise than the rest (${change}, adjusted p ${p}).`,
  outlier: { lower: 'its change lies lower', higher: 'its change lies higher' },
  leftRight: (difference: string, lower: string, upper: string, count: number) =>
    `The left shoe changed by ${difference} against the right one (90 % interval ${lower} to ${upper}, ${countPairs(count)}).`,
  againstRound: (round: string, at: string, difference: string, lower: string, upper: string) =>
    `By ${at} the pairs of this round changed by ${difference} against those of ${round} (90 % interval ${lower} to ${upper}).`,
  next: (pair: string, distance: string, narrowing: string) =>
    `Measure pair ${pair} at ${distance}: that should make the interval ${narrowing} narrower.`,
  warningsTitle: 'Checks to read with care',
  warning: {
    'short-rest': (rested: string, left: string) =>
      `rested ${rested} h; up to ${left} of the last run’s change may still be there`,
    temperature: (celsius: string, points: string | null) =>
      `measured at ${celsius}${points === null ? '' : `, Asker C reads about ${points} off`}`,
    'temperature-missing': 'the temperature was not noted',
    'no-start': 'this pair has no reading at 0 km',
    'measured-otherwise': (what: string) => `measured otherwise than before (${what})`,
    'impossible-value': 'a value that cannot be; left out',
  },
  ways: {
    site: 'site',
    foot: 'foot',
    unit: 'unit',
    method: 'method',
    gauge: 'gauge',
    load: 'load',
  },
  felt: 'How it feels over the same distance',
  feltLine: (attribute: string, mean: string, lower: string, upper: string, count: number) =>
    `${attribute}: ${mean} of 100 per 100 km (95 % interval ${lower} to ${upper}, ${countTesters(count)}).`,
  feltNone: 'Too few scores to say how it feels over distance.',
  feltScore: 'Score, 0 to 100',
  feltMarks: 'Too soft or too firm over the same distance',
  feltMark: (low: string, high: string) => `Mark: −100 ${low}, 0 just right, 100 ${high}`,
  feltMarkLine: (
    question: string,
    low: string,
    high: string,
    mean: string,
    lower: string,
    upper: string,
    count: number,
  ) =>
    `${question}, from −100 (${low}) to 100 (${high}): ${mean} per 100 km (95 % interval ${lower} to ${upper}, ${countTesters(count)}).`,
  feltPart:
    'Felt and measured cushioning often part: what the bench shows is not what a foot notices.',
  sites: 'Where it goes first, mean change',
};
