/** The tables on the limits of a proof and on wrong numbers that `npm run calibrate` prints. */
import type { GrowingTest } from '../core/review/growing-logs.ts';
import {
  calledNotSeen,
  falseProofs,
  falseTrends,
  falseWhenSkipped,
  saidOfGrowth,
  shareAtProof,
} from './limits-of-proof.ts';
import { faults, simulateFault } from './wrong-numbers.ts';

const shown = (share: number): string => `${(100 * share).toFixed(1)} %`;

const lingering = [
  { rate: 0.05, linger: 0 },
  { rate: 0.05, linger: 0.3 },
  { rate: 0.02, linger: 0.5 },
  { rate: 0.01, linger: 0.7 },
] as const;

const growing = (runs: number, briefKm: number, linger: number): GrowingTest => ({
  testers: 8,
  runs,
  runKm: 20,
  briefKm,
  linger,
  rateAt: (km) => (km >= 250 ? 0.3 : 0),
});

/** What holds of a proof where its assumptions do not, and what the words around it are worth. */
export const limitLines = (tests: number, seed: number): string[] => {
  const trends = [0, 0.3, 0.5, 0.7].map((linger) => {
    const found = [2, 8].map((testers) =>
      shown(falseTrends({ rate: 0.2, linger, testers, runs: 16 }, 5 * tests, seed)),
    );
    return `| a trend is named though the rate stays at 20 %, lingering ${linger} | ${found.join(' (2 testers), ')} (8 testers) |`;
  });
  const growth = [
    [16, 300, 0],
    [16, 300, 0.5],
    [25, 500, 0],
  ] as const;
  return [
    '| mechanism, 8 testers, 12 runs | share of tests |',
    '| --- | --- |',
    ...lingering.map(({ rate, linger }) => {
      const { across, single } = falseProofs({ rate, linger }, tests, seed);
      return `| all cells at ${100 * rate} %, lingering ${linger}: false "across testers"; false "for one tester" | ${shown(across)}; ${shown(single)} |`;
    }),
    ...[0, 0.8, 1].map(
      (skipped) =>
        `| three cells at 5 %, 24 runs, ${100 * skipped} % of the good ones unanswered: false "across testers" | ${shown(falseWhenSkipped(skipped, 3 * tests, seed))} |`,
    ),
    ...(
      [
        [4, 0.4],
        [2, 0.6],
        [8, 0.2],
      ] as const
    ).map(([affected, rate]) => {
      const ratio = shareAtProof([affected, rate], tests, seed);
      return `| share of runs when it is first proven, against the true one (${affected} of 8 at ${100 * rate} %) | ${ratio === null ? '' : `${ratio.toFixed(2)} times`} |`;
    }),
    ...[2, 4, 12].map((runs) => {
      const { silent, before, now } = calledNotSeen(runs, 5 * tests, seed);
      return `| 4 of 8 prone at 20 %, ${runs} runs each: silent; called "not seen" before; now | ${[silent, before, now].map(shown).join('; ')} |`;
    }),
    ...trends,
    ...growth.map(([runs, briefKm, linger]) => {
      const { before, holds, grows } = saidOfGrowth(growing(runs, briefKm, linger), tests, seed);
      return `| all at 30 % from 250 km on, brief ${briefKm} km, lingering ${linger}: "holds" before; "holds" now; "does not hold" now | ${[before, holds, grows].map(shown).join('; ')} |`;
    }),
  ];
};

export const FAULT_HEADER = [
  '| fault | width | covers a new pair | covers the pair itself | "holds" far from the limit | "holds" near it | "holds" at it | blamed on the pairs before | now | one pair or reading named |',
  '| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |',
] as const;

/** One row a fault: what a wrong number does to the verdict on wear. */
export const faultRows = (rounds: number, seed: number): string[] =>
  faults.map((fault) => {
    const { width, ...shares } = simulateFault(fault, rounds, seed);
    return `| ${fault} | ${width.toFixed(2)} | ${Object.values(shares).map(shown).join(' | ')} |`;
  });
