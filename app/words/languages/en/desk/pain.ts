import { countRuns, countTesters } from '../count.ts';

/** The answers to the question after pain, the same at the desk, in the report and in the terminal. */
export const pain = {
  title: 'Question about pain',
  nobodyAsked: 'Nobody answered the question about pain. That is not the same as no pain.',
  asked: (r: number, t: number) =>
    `${countRuns(r)} of ${countTesters(t)} answered the question about pain.`,
  none: 'No pain was reported.',
  onlyLight: (count: number, most: number, from: number) =>
    `Pain below ${from} of 10 and without a sign such as swelling in ${countRuns(count)}, ${most} of 10 at most; none above that.`,
  silence: (upTo: string, allowed: string, chance: string) =>
    `In the long run more may still be in up to ${upTo} of runs (95 %); the brief allows ${allowed}. If half of the testers had it in a fifth of their runs, a test would be this silent in ${chance} of cases.`,
  testers: (once: number, twice: number, of: number, from: number) =>
    `${once} of ${countTesters(of)} had pain of ${from} of 10 or more, or any pain with a sign such as swelling; ${twice} of them at least twice.`,
  runs: (count: number, of: number, interval: string, allowed: string) =>
    `It was in ${count} of ${of} answers. In the long run it may be in ${interval} of runs; the brief allows ${allowed}.`,
  beside: (any: number, most: number, caution: number) =>
    `Any pain at all: ${countRuns(any)}, ${most} of 10 at most. The caution was due after ${countRuns(caution)}.`,
  ask: 'Ask these testers how they are. This is a count of answers, not medical advice.',
  clause: (count: number, of: number, t: number, asked: number, from: number, word: string) =>
    `question about pain: ${from} of 10 or more, or with a sign, in ${count} of ${of} answers of ${t} of ${countTesters(asked)}: ${word}`,
};
