import type { RunOddity } from '../../../../../core/mileage/index.ts';
import type { Advice, LeftOut } from '../../../../../core/records/index.ts';

export const ask = {
  pain: (tester: string, score: number, pair: string, date: string) =>
    `${tester}: pain ${score} of 10 in pair ${pair} on ${date}. Ask how they are; no more runs in this test until a clinician says so.`,
  damage: (tester: string, pair: string, what: string, date: string) =>
    `${tester}: pair ${pair} came apart (${what}) on ${date}.`,
  answer: {
    give: (tester: string) => `Answer ${tester}`,
    change: (tester: string) => `Change the answer to ${tester}`,
    advice: 'May they run in this pair?',
    advices: { 'go-on': 'Go on in this pair', 'stay-out': 'Stay out of this pair' } as Readonly<
      Record<Advice, string>
    >,
    words: 'A few words to the tester',
    missing: 'Choose whether they may run in this pair.',
    given: (advice: string, when: string) => `Answered on ${when}: ${advice}.`,
    quoted: (words: string) => `“${words}”`,
    over: (tester: string, when: string) => `${tester} said on ${when} that it is over.`,
    pain: (tester: string, score: number, pair: string, date: string) =>
      `${tester}: pain ${score} of 10 in pair ${pair} on ${date}.`,
    settled: (count: number) => `Settled: ${count} ${count === 1 ? 'report' : 'reports'}`,
  },
  oddity: {
    'logged-twice': 'logged twice; counted once',
    'tester-overlap': 'overlaps with another run of the same tester',
    'pair-overlap': 'two testers in one pair at the same time',
    pace: 'implausible pace',
    distance: 'implausible distance',
    'not-handed-out': 'the pair was not handed out to this tester then',
    'in-the-future': 'lies in the future',
    'unknown-pair': 'the pair is not in the log',
  } as Readonly<Record<RunOddity['why'], string>>,
  run: (tester: string, pair: string, distance: string, date: string) =>
    `${tester}, pair ${pair}, ${distance}, ${date}`,
  notedLate: 'Was a hand-out noted late? “Edit dates” on the page of its pair puts it right.',
  leftOut: {
    'unknown-kind': (count: number) =>
      `${count} ${count === 1 ? 'record is' : 'records are'} of a kind that needs a newer app; kept, and in no figure.`,
    'newer-schema': (count: number) =>
      `${count} ${count === 1 ? 'record was' : 'records were'} written by a newer app; kept, and in no figure.`,
  } as Readonly<Record<Exclude<LeftOut['why'], 'unreadable'>, (count: number) => string>>,
};
