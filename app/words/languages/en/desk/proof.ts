import { countTesters } from '../count.ts';

/** Sentences on a complaint, the same at the desk, in the terminal and in a finding. */
export const proof = {
  testers: (twice: number, once: number, of: number, interval: string) =>
    `${twice} of ${countTesters(of)} reported it at least twice${once > twice ? `, ${once} at least once` : ''}. Of all such runners it may be ${interval}.`,
  runs: (count: number, of: number, interval: string, allowed: string) =>
    `It came in ${count} of ${of} asked runs. In the long run it may be in ${interval} of runs; the brief allows ${allowed}.`,
  ratherHigh:
    'It is named because it stood out, so this share is rather too high: at the moment of proof by a sixth to a third in simulations.',
  feet: (left: number, right: number) =>
    `Runs with it on the left foot: ${left}, on the right foot: ${right}.`,
  severity: (mean: string, most: number) => `Severity ${mean} of 10 on average, ${most} at most.`,
  who: (names: string) => `Proven for ${names}, each by their own runs.`,
  value: (value: string, needed: string) =>
    `How strongly the runs prove that at least two testers have it more often than allowed: e-value ${value}; from ${needed} on that is enough by itself.`,
  interval: (lower: string, upper: string) => `${lower} to ${upper} (95 % interval)`,
  trend: (word: string, count: number, p: string) =>
    `Whether it changes: ${word} (${countTesters(count)} had runs with it and runs without; p ${p}, over all reported complaints and allowing for complaints that linger from run to run). This names no cause.`,
  onset: (median: string, lower: string, upper: string, count: number) =>
    `It begins after ${median} of a run (the middle one of ${countTesters(count)}); for half of them between ${lower} and ${upper}.`,
  repeated: (median: string | null, repeated: number, of: number) =>
    median === null
      ? `${repeated} of ${countTesters(of)} have had it twice so far.`
      : `By ${median} of their own in the pair half of the testers are expected to have had it twice (so far ${repeated} of ${of}).`,
  hint: (factor: string, p: string, count: number) =>
    `Worth a look: more often with ${factor} (${countTesters(count)}, adjusted p ${p}). This names no cause.`,
  noHint: (count: number) =>
    count === 0
      ? 'Nothing to compare it with yet.'
      : `Set against ${count} ${count === 1 ? 'circumstance' : 'circumstances'} such as size, sock and ground: none stands out.`,
};
