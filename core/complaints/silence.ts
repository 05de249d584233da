/**
 * When does it tell something that nobody, or hardly anybody, reported a complaint? When so few reports would be
 * rare, were it there: with half of the testers prone to it at one run in five. Two silent runs of each of eight
 * testers come in 17 of 100 tests all the same; five of each in 2.
 */
import { chanceOfSoFew } from '../statistics/index.ts';

/** Testers and runs that would matter, and how rare silence must then be. Judgement, no source. */
const PRONE_SHARE = 0.5;
const PRONE_RATE = 0.2;
export const SILENCE_LEVEL = 0.05;

/**
 * The chance of at most `reported` runs with it although half of the testers asked have it in a fifth of their
 * runs; in twice the allowed share where that is more.
 * @param asked runs of each tester asked
 */
export const chanceOfSilence = (asked: readonly number[], allowed: number, reported = 0): number =>
  chanceOfSoFew(asked, reported, {
    share: PRONE_SHARE,
    rate: Math.min(1, Math.max(PRONE_RATE, 2 * allowed)),
  });
