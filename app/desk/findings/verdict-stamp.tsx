/** What came of a change, as a stamp. */
import type { ChangesStamp } from '../../../core/headlines/index.ts';
import { p } from '../../words/index.ts';
import { Mark, type Tone } from '../frame/stamp.tsx';

export const verdictTones: Readonly<Record<ChangesStamp, Tone>> = {
  mended: 'holds',
  better: 'holds',
  mixed: 'fails',
  worse: 'fails',
  'no-different': 'plain',
  'too-little': 'open',
};

export const VerdictStamp = ({ word }: { readonly word: ChangesStamp }) => (
  <Mark tone={verdictTones[word]} title={p().changes.stampMeaning[word]}>
    {p().changes.stamps[word]}
  </Mark>
);
