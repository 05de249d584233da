import type { Advice } from '../../../../core/records/index.ts';

/** What a tester must know before a shoe goes on: pain, and damage. Not on the first page unless a pair needs it. */
export const care = {
  caution: {
    title: 'Stop this test for now',
    body: 'New pain of 3 or more, or pain with swelling, a limp, numbness, at night, or when you cannot put weight on the foot: stop running in this test and see a doctor or physiotherapist. If you cannot put weight on it, or it is badly swollen, today.',
    disclaimer:
      'This is no medical advice. What your clinician and your local rules say comes first.',
    lead: 'Your lead is told.',
    read: 'I have read this',
  },

  pain: {
    of: (score: number, when: string) => `Pain ${score} of 10, run of ${when}`,
    over: 'It is over',
    overHint: 'Tap this only once the pain has gone. Your lead is told.',
    overSaved: 'Noted: the pain is over.',
    overTrouble: 'This could not be saved. Try again.',
    run: (when: string) => `See or correct the run of ${when}`,
  },

  damage: {
    title: 'The pair is coming apart',
    titleChange: 'Your report',
    now: 'Take the pair off now and do not run in it again.',
    what: 'What broke?',
    which: 'Which shoe?',
    saved: 'Reported. Do not wear this pair.',
    corrected: 'Report corrected',
    missing: 'Say what broke.',
    keep: 'Do not wear this pair',
    reported: (what: string, shoe: string | null, when: string) =>
      `Reported ${when}: ${what}${shoe === null ? '' : `, ${shoe} shoe`}.`,
    open: 'See or correct the report',
    takeBack: 'Take the report back',
    takeBackAsk: 'The report and its photos are then gone everywhere, for good. Take it back?',
    takenBack: 'Report taken back',
    gone: 'This report is no longer on this phone.',
  },

  lead: {
    none: 'Your lead has not answered yet.',
    says: {
      'go-on': (when: string) => `Your lead, ${when}: you can run in this pair again.`,
      'stay-out': (when: string) => `Your lead, ${when}: stay out of this pair.`,
    } as Readonly<Record<Advice, (when: string) => string>>,
    words: (words: string) => `“${words}”`,
  },
};
