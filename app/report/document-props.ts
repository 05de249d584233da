/** What a report is made of, and what each of its sections gets. */
import type { Trade } from '../../core/foot/index.ts';
import type { RoundReport } from '../../core/review/index.ts';
import type { Languages } from './spoken.tsx';

export interface DocumentProps {
  readonly report: RoundReport;
  readonly languages: Languages;
  /** For whom: one trade, or everybody. */
  readonly trade: Trade | null;
  /** Address of each photo by its SHA-256; one that is missing is said to be. */
  readonly photos: ReadonlyMap<string, string>;
}

/** What the sheet of one trade gets. */
export type SheetProps = DocumentProps & { readonly trade: Trade };

/** The same without the trade and the photos: what every section gets. */
export type PartProps = Pick<DocumentProps, 'report' | 'languages'>;
