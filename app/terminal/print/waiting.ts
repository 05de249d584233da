/** What waits for the lead's decision, and what was set aside, with the reason. */
import { decidedInWords, waitingInWords } from '../../words/say-waiting.ts';
import { heading, type Printing } from './printed.ts';

const asLogged = (at: string): string => at;

/** One part for what stays out, one for what counts meanwhile, and one for each kind of decision. */
export const waitingOf = ({ review, speaker }: Printing): string[] => {
  const words = speaker.desk.waiting;
  const waiting = (counts: boolean) =>
    review.waiting
      .filter((item) => item.counts === counts)
      .map((item) => {
        const { what, why } = waitingInWords(item, speaker, asLogged);
        return [what, ...why.map((line) => `  ${line}`)].join('\n');
      });
  const decided = (ruling: 'counted' | 'set-aside') =>
    review.decided
      .filter((item) => item.ruling === ruling)
      .map((item) => decidedInWords(item, speaker, asLogged));
  return [
    [words.out, waiting(false)],
    [words.meanwhile, waiting(true)],
    [words.setAside, decided('set-aside')],
    [words.counted, decided('counted')],
  ].flatMap(([title, lines]) =>
    lines && lines.length > 0 ? [heading(String(title)), [lines].flat().join('\n')] : [],
  );
};
