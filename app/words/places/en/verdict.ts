/** The verdict: what each round holds of the brief, and what would settle the rest. */
import type { VerdictHeadline } from '../../../../core/headlines/index.ts';
import type { Expected, GridRow, NextVisit } from '../../../../core/review/index.ts';
import type { Say } from '../../say-names.ts';

const count = (n: number, one: string, many: string) => `${n} ${n === 1 ? one : many}`;
const pairs = (say: Say, ids: Parameters<Say['pair']>[0][]) =>
  `${ids.length === 1 ? 'pair' : 'pairs'} ${say.list(ids.map(say.pair))}`;

export const verdict = {
  headline: (h: VerdictHeadline, say: Say): string => {
    switch (h.case) {
      case 'no-round':
        return 'No round yet, so nothing to decide.';
      case 'nobody-ran':
        return 'Nobody has run yet, so nothing is decided.';
      case 'fails':
        return h.count === 1
          ? `${say.round(h.round)} fails: ${verdict.failing[h.what]}.`
          : `${say.round(h.round)} fails ${h.count} of ${h.of} limits.`;
      case 'holds':
        return `${say.round(h.round)} holds all ${h.of} limits of the brief.`;
      case 'open':
        return `Not decided: ${h.open} of ${h.of} limits are open in ${say.round(h.round)}.`;
    }
  },
  failing: {
    wear: 'it wears out too soon',
    structure: 'pairs come apart',
    'allowed-rate': 'a complaint recurs',
    complaints: 'a complaint grows with distance',
    'stop-use': 'a pair must not be run',
  } satisfies Readonly<Record<GridRow['what'], string>>,
  sub: (distance: string, rounds: number) =>
    `The brief asks for ${distance} a pair. ${count(rounds, 'round', 'rounds')}.`,
  noLimits: 'The brief sets no limit for foam or tread yet.',
  setLimits: 'Set limits',
  report: 'Report',
  print: 'Print',
  grid: 'Limits by rounds',
  limit: 'The brief asks',
  settle: (round: string) => `To settle ${round}`,
  settleShort: 'To settle it',
  rows: {
    structure: 'Nothing comes apart',
    'allowed-rate': (complaint: string) => `No complaint in more than ${complaint} of runs`,
    complaints: 'No complaint grows with distance',
    'stop-use': 'No pair is withdrawn',
  },
  rowNotes: {
    structure: '9 pairs in 10 must last',
    'allowed-rate': (pain: string) => `pain in at most ${pain}`,
    complaints: 'runs with any complaint, by distance',
    'stop-use': 'do-not-run notices in force',
  },
  notMeasured: 'not measured',
  noReading: 'not measured here',
  /** `at`: the farthest pair where none came apart, else where the first did. */
  cameApart: (failed: number, of: number, at: string) =>
    failed === 0
      ? `0 of ${count(of, 'pair', 'pairs')} came apart; farthest ${at}`
      : `${failed} of ${count(of, 'pair', 'pairs')} came apart, ${failed === 1 ? 'at' : 'first at'} ${at}`,
  recurs: (felt: string, runs: number, askedRuns: number, testers: number, askedTesters: number) =>
    `${felt}: ${runs} of ${askedRuns} runs, ${testers} of ${askedTesters} testers`,
  painRecurs: 'Pain recurs',
  nothingRecurs: (runs: number, testers: number) =>
    `nothing clearly recurs in ${count(runs, 'run', 'runs')} of ${count(testers, 'tester', 'testers')}`,
  nobodyAsked: 'nobody was asked yet',
  grows: (felt: string) => `grows: ${felt}`,
  noRise: (there: number, brief: string) =>
    there === 0 ? `no rise seen; nobody asked at ${brief} yet` : 'no rise seen',
  withdrawn: (codes: string, n: number) => `${n === 1 ? 'pair' : 'pairs'} ${codes} withdrawn`,
  noneWithdrawn: 'none',
  share: (felt: string, runs: number, of: number) => `${felt}: ${runs} of ${of} runs`,
  without: (who: string, word: string) => `Without ${who}: ${word}`,
  pair: (code: string) => `pair ${code}`,
  cellSays: (limit: string, round: string, stamp: string, says: string) =>
    `${limit}, ${round}: ${stamp}; ${says}`,
  /** When a pair is expected to have come so far. */
  expected: (expected: Expected, say: Say): string => {
    switch (expected.when) {
      case 'now':
        return 'it has come so far';
      case 'later':
        return `about ${say.date(expected.atMs)}`;
      case 'if-resumed':
        return `about ${say.date(expected.atMs)}, if ${say.tester(expected.tester)} runs again`;
      case 'not-run':
        return 'not being run now';
      case 'not-known':
        return 'too few runs in it to say when';
      case 'comes-back-first':
        return `it comes back before that, on ${say.date(expected.atMs)}`;
    }
  },
  nextChecks: 'Next checks',
  settles: {
    measure: (visit: NextVisit, say: Say): string =>
      `Measure pair ${say.pair(visit.pair)} at ${say.distance(visit.atM)} (${verdict.expected(visit.expected, say)})${
        visit.also.length > 0 ? `; also ${pairs(say, [...visit.also])}` : ''
      }`,
    'measure-first': 'Measure it, new and worn',
    'look-at-pair': (code: string) => `Look at pair ${code}: it wears unlike the others`,
    'look-at-reading': (code: string, at: string) => `Check the reading of pair ${code} at ${at}`,
    'pairs-differ': 'Pairs differ; more checks tell little',
    'run-pairs': (need: number | null, have: number, at: string) =>
      need === null
        ? `Too many came apart to show it`
        : `Run ${need} pairs to ${at} without damage; ${have} did`,
    'ask-testers': (need: number, have: number) =>
      `Takes ${need} testers without a report; ${have} so far`,
    'decide-by-reports': (need: number) =>
      `Decide by what testers report; proof would take ${need} of them`,
    'ask-at': (need: number, have: number, at: string) =>
      `Ask the testers of ${count(need, 'pair', 'pairs')} at ${at}; ${have} so far`,
    'lift-or-keep': (ids: Parameters<Say['pair']>[0][], say: Say) =>
      `Look at ${pairs(say, ids)}: lift the notice or keep it`,
    change: 'Change it in a new round',
    nothing: 'settled',
  },
  figures: 'Figures and methods',
};
