/** Where do people agree that a shoe is too short, tight, long or loose, and by how much? */
import { fitPlaces, type FitPlace } from '../foot/index.ts';
import type { Fit } from '../records/index.ts';
import { median } from '../statistics/index.ts';
import { answerOf, slipOf, type FeetLooked, type Fitter } from './fitters.ts';

/** Fewer people make no majority: an evening's three to six fitters are common practice, no source. */
export const FEWEST_TO_AGREE = 3;

/** The middle of some estimates and their ends, in mm. */
export interface Spread {
  readonly median: number;
  readonly least: number;
  readonly most: number;
  readonly people: number;
}

/** Null: nobody gave one. */
export const spreadOf = (values: readonly number[]): Spread | null => {
  const middle = median(values);
  return middle === null
    ? null
    : {
        median: middle,
        least: Math.min(...values),
        most: Math.max(...values),
        people: values.length,
      };
};

/**
 * What most say of a place: more than half of those who answered, where at least three did. `divided`: no majority;
 * `too-few`: fewer than three answers.
 */
export type PlaceWord = Fit | 'divided' | 'too-few';

export interface PlaceAgreement {
  readonly place: FitPlace;
  /** Keys of the people, by what they say. */
  readonly said: Readonly<Record<Fit, readonly string[]>>;
  readonly answered: number;
  readonly word: PlaceWord;
  /** Estimates of those on the side. */
  readonly mm: Readonly<Record<'little' | 'much', Spread | null>>;
}

const wordOf = (said: PlaceAgreement['said'], answered: number): PlaceWord => {
  if (answered < FEWEST_TO_AGREE) return 'too-few';
  const most = (['little', 'right', 'much'] as const).find(
    (fit) => 2 * said[fit].length > answered,
  );
  return most ?? 'divided';
};

/** What people say of each place, each by the trial that speaks for them. Who did not answer is not counted. */
export const agreementOf = (
  fitters: readonly Fitter[],
  foot: FeetLooked,
): readonly PlaceAgreement[] =>
  fitPlaces.map((place): PlaceAgreement => {
    const answers = fitters.flatMap(({ key, best }) => {
      const answer = answerOf(best.body, place, foot);
      return answer ? [{ key, ...answer }] : [];
    });
    const on = (fit: Fit) => answers.filter((one) => one.fit === fit);
    const keys = (fit: Fit) => on(fit).map(({ key }) => key);
    const said = { little: keys('little'), right: keys('right'), much: keys('much') };
    const estimates = (fit: Fit) =>
      spreadOf(on(fit).flatMap(({ mm }) => (mm === null ? [] : [mm])));
    return {
      ...{ place, said, answered: answers.length, word: wordOf(said, answers.length) },
      mm: { little: estimates('little'), much: estimates('much') },
    };
  });

/** Of those who walked and said so: how many heels stayed, lifted a little, slipped out. */
export const heelCounts = (fitters: readonly Fitter[], foot: FeetLooked) => {
  const slips = fitters.flatMap(({ best }) => slipOf(best.body, foot) ?? []);
  const of = (slip: (typeof slips)[number]) => slips.filter((one) => one === slip).length;
  return {
    answered: slips.length,
    stays: of('stays'),
    lifts: of('lifts'),
    slipsOut: of('slips-out'),
  };
};
