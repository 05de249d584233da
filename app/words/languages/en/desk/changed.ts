import { countRuns, countTesters } from '../count.ts';

/** Sentences on a change, the same at the desk, in the terminal and in a finding. */
export const changed = {
  count: (
    round: string,
    reporters: number,
    of: number,
    reported: number,
    asked: number,
    share: string,
  ) =>
    `${round}: ${reporters} of ${countTesters(of)}, ${reported} of ${asked} asked runs (${share}).`,
  nobodyAsked: (round: string) => `${round}: nobody was asked.`,
  same: (count: number, runsEach: number, change: string, interval: string) =>
    `${countTesters(count)} wore both. Over their first runs, ${runsEach} of each round in all, the share of runs with it changed by ${change} (${interval}).`,
  flips: (changed: number, p: string, falls: boolean) =>
    `${countTesters(changed)} changed; how often chance alone makes such a ${falls ? 'fall' : 'rise'}: p ${p}.`,
  reporters: (gone: number, come: number, p: string) =>
    `Testers who had it before only: ${gone}; now only: ${come}. How often chance alone makes such a difference: p ${p} (exact McNemar test).`,
  panels: (change: string, interval: string) =>
    `Fewer than five wore both, so all testers of one round are set against all of the other: the share of runs with it changed by ${change} (${interval}). That takes both groups of testers to be alike.`,
  onlyOne: (earlier: string, before: string, later: string, now: string, change: string | null) =>
    `Testers who wore only one: ${earlier}: ${before}; ${later}: ${now}${change === null ? '' : `; the share of runs with it changed by ${change}`}.`,
  nobody: 'nobody',
  onlyCount: (count: number, reported: number, asked: number) =>
    `${countTesters(count)}, ${reported} of ${asked} runs`,
  points: (value: string) => `${value} percentage points`,
  withInterval: (change: string, interval: string) => `${change} (${interval})`,
  interval: (lower: string, upper: string) => `95 % interval ${lower} to ${upper}`,
  allowed: (upTo: string, allowed: string) =>
    `In the later round it may still be in up to ${upTo} of runs (with 95 % certainty); the brief allows ${allowed}.`,
  settle: (moreRuns: number | null, moreTesters: number | null) =>
    moreRuns === null && moreTesters === null
      ? 'Clean runs of this panel will not show that it is mended: too much hangs on who wears it.'
      : `To show that it is mended it takes, without one more report: ${[
          moreRuns === null ? '' : `${countRuns(moreRuns)} more of each tester`,
          moreTesters === null
            ? ''
            : `${moreTesters} more ${moreTesters === 1 ? 'tester' : 'testers'} with as many runs`,
        ]
          .filter(Boolean)
          .join(', or ')}.`,
  margin: (points: string) => `A change of less than ${points} counts as none.`,
  why: {
    'nobody-asked-earlier':
      'Nobody was asked in the earlier round. That is not the same as no complaint.',
    'nobody-asked-later':
      'Nobody was asked in the later round yet. That is not the same as no complaint.',
    'never-reported': 'Nobody reported it before either, so there is nothing to mend.',
    'too-few-testers':
      'Too few testers: five who wore both are needed, or four in each round, with two asked runs each.',
    'too-few-changed':
      'Fewer than five testers changed at all, and fewer can prove nothing, however often they ran.',
    'not-decided': 'The interval leaves room both for a change that matters and for none.',
  },
};
