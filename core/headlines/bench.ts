/** What do the list of checks, one check and the gauges say first? */
import type { RecordId } from '../records/index.ts';
import type { CheckLook, GaugeReview, ListedCheck } from '../review/index.ts';
import type { Metres } from '../units/index.ts';
import type { Claim } from './stamp.ts';

export type ChecksHeadline = { readonly claims: Claim } & (
  | { readonly case: 'none' }
  /** Readings that wait for the lead. */
  | { readonly case: 'waiting'; readonly readings: number }
  | {
      readonly case: 'all';
      readonly checks: number;
      readonly pairs: number;
      readonly farthestM: Metres;
    }
);

export const checksHeadline = (
  checks: readonly Pick<ListedCheck, 'pair' | 'distanceM' | 'readings'>[],
): ChecksHeadline => {
  if (checks.length === 0) return { case: 'none', claims: 'nothing' };
  const readings = checks
    .flatMap((check) => check.readings)
    .filter(({ standing }) => standing.state === 'waits').length;
  if (readings > 0) return { case: 'waiting', claims: 'nothing', readings };
  return {
    case: 'all',
    claims: 'nothing',
    checks: checks.length,
    pairs: new Set(checks.map(({ pair }) => pair)).size,
    farthestM: checks.reduce<Metres>(
      (most, { distanceM }) => (distanceM > most ? distanceM : most),
      0 as Metres,
    ),
  };
};

export type CheckHeadline = { readonly claims: Claim; readonly pair: RecordId } & (
  | { readonly case: 'aside'; readonly count: number; readonly of: number }
  | { readonly case: 'waiting'; readonly count: number; readonly of: number }
  | { readonly case: 'plain'; readonly distanceM: Metres; readonly of: number }
);

export const checkHeadline = ({ pair, distanceM, readings }: CheckLook): CheckHeadline => {
  const about = { claims: 'nothing', pair, of: readings.length } as const;
  const countOf = (state: string) =>
    readings.filter(({ standing }) => standing.state === state).length;
  const waiting = countOf('waits');
  if (waiting > 0) return { ...about, case: 'waiting', count: waiting };
  const aside = countOf('set-aside');
  return aside > 0
    ? { ...about, case: 'aside', count: aside }
    : { ...about, case: 'plain', distanceM };
};

export type GaugesHeadline = { readonly claims: Claim } & (
  | { readonly case: 'none' }
  | { readonly case: 'not-good-enough'; readonly gauges: readonly string[] }
  /** Some are good enough for some decisions only. */
  | { readonly case: 'conditional'; readonly gauges: readonly string[] }
  | { readonly case: 'good'; readonly studies: number }
  | { readonly case: 'too-little'; readonly studies: number }
);

/** The worst first: a gauge that cannot decide makes every reading of it doubtful. */
export const gaugesHeadline = (
  studies: readonly Pick<GaugeReview, 'gauge' | 'result'>[],
): GaugesHeadline => {
  if (studies.length === 0) return { case: 'none', claims: 'nothing' };
  const named = (word: string) => [
    ...new Set(
      studies.flatMap(({ gauge, result }) => (result.ok && result.word === word ? [gauge] : [])),
    ),
  ];
  const bad = named('not-good-enough');
  if (bad.length > 0) return { case: 'not-good-enough', claims: 'nothing', gauges: bad };
  const conditional = named('conditional');
  if (conditional.length > 0)
    return { case: 'conditional', claims: 'nothing', gauges: conditional };
  return {
    case: studies.every(({ result }) => result.ok) ? 'good' : 'too-little',
    claims: 'nothing',
    studies: studies.length,
  };
};
