/** What a tester reads of what came of their report. The desk shows the lead the same words before they go. */
import type { ThanksResult } from '../../../../core/records/index.ts';

export const thanks = {
  titles: {
    carried: 'You felt it. The next sample is changed.',
    mended: 'You felt it. It is mended.',
    better: 'You felt it. It is better.',
    'no-different': 'You felt it. The change did not help.',
    worse: 'You felt it. The change made it worse.',
  } as Readonly<Record<ThanksResult, string>>,
  /** What they felt, within a sentence. */
  felt: (kind: string, zone: string) => `${kind.charAt(0).toLowerCase()}${kind.slice(1)}, ${zone}`,
  told: (felt: string, runs: number | null) =>
    runs === null
      ? `You reported this: ${felt}.`
      : `You reported this on ${runs} ${runs === 1 ? 'run' : 'runs'}: ${felt}.`,
  came: {
    carried:
      'Your reports led to a change in the next sample. The next runs will show whether it helps.',
    mended: 'After the change it comes up clearly less often, as rarely as this shoe asks for.',
    better:
      'After the change it comes up clearly less often. Whether that is rare enough is still open.',
    'no-different':
      'After the change it comes up as often as before, so that alone was not enough.',
    worse: 'After the change it comes up more often. It is good to know that now.',
  } as Readonly<Record<ThanksResult, string>>,
  changed: (change: string) => `The change: ${change}.`,
  thank: 'Thank you for reporting it.',
};
