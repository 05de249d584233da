/** Where a lead tells testers what came of their reports. */
import type { Withheld } from '../../../../core/review/index.ts';

const testers = (n: number) => `${n} ${n === 1 ? 'tester' : 'testers'}`;

export const thanks = {
  title: 'Tell the testers',
  offer: (n: number) => `${testers(n)} reported this and can hear what came of it.`,
  nobodyYet: 'Nobody can be told yet.',
  reads: 'What each of them reads, in the language of their phone',
  whom: 'Who is thanked',
  tellChange: (change: string) => `Say what was changed: ${change}`,
  own: 'A few words of your own',
  ownHint: 'Everybody thanked here reads them as you type them. Name no other tester and no maker.',
  names: (who: string) => `Take out “${who}”: a thank-you names no other tester.`,
  reveals: (words: string) => `“${words}” tells what was changed.`,
  blind: (n: number) =>
    `${testers(n)} ${n === 1 ? 'wears' : 'wear'} this shoe without knowing what changed. Word gets round.`,
  nobodyChosen: 'Choose somebody to thank.',
  send: (n: number) => `Thank ${testers(n)}`,
  sent: (n: number) => `${testers(n)} thanked`,
  undone: 'Taken back',
  later: (n: number) => `Not yet: ${testers(n)}`,
  /** Before the names of those whom it keeps from hearing it. */
  withheld: {
    'blind-open': (until: string | null) =>
      until === null ? 'Wearing a pair blind, no end noted' : `Wearing a pair blind until ${until}`,
    'blind-planned': (until: string | null) =>
      until === null
        ? 'To wear a pair blind, no end noted'
        : `To wear a pair blind, planned until ${until}`,
  } satisfies Readonly<Record<Withheld['why'], (until: string | null) => string>>,
  off: 'In this project testers are not told what came of their reports: the brief says so.',
  toBrief: 'Open the brief',
  thanked: (n: number) => `Thanked: ${testers(n)}`,
  thankedOn: (date: string) => `on ${date}`,
};
