/** What the sole of the round is made of, on the sheets of the trades that make it. */
import type { Trade } from '../../core/foot/index.ts';
import { midsoleLine, outsoleLine } from '../words/say-sole.ts';
import type { SheetProps } from './document-props.ts';
import { Say, type Spoken } from './spoken.tsx';

/** The foam developer reads of the foam first, whoever makes the tool of the rubber. */
const linesOf: Readonly<Partial<Record<Trade, readonly (typeof midsoleLine)[]>>> = {
  foam: [midsoleLine, outsoleLine],
  tooling: [outsoleLine, midsoleLine],
};

export const SoleLines = ({ report, languages, trade }: SheetProps) => (
  <>
    {(linesOf[trade] ?? []).map((line, at) =>
      line(report.sole, languages[0].speaker) === null ? null : (
        <p key={at} class="soft">
          <Say in={languages} of={({ speaker }: Spoken) => line(report.sole, speaker) ?? ''} />
        </p>
      ),
    )}
  </>
);
