/** A trade's own wear curves with the limits on them, and how each is said on its sheet. */
import { tradeData } from '../../core/foot/index.ts';
import type { RoundReport, Settle, VerdictItem, WearLook } from '../../core/review/index.ts';
import { scaleOf } from '../../core/wear/index.ts';
import { percentOf, signed } from '../words/figures.ts';
import { siteName } from '../words/say-place.ts';
import { asWritten, bareOf, measureOf, unitName } from '../words/say-wear.ts';
import type { SheetProps } from './document-props.ts';
import type { Spoken } from './spoken.tsx';

export type WearItem = Extract<VerdictItem, { what: 'wear' }>;

/** The curves that are the trade's own. */
export const curvesOf = ({
  report,
  trade,
}: Pick<SheetProps, 'report' | 'trade'>): readonly WearLook[] =>
  report.curves.filter(({ kind }) => tradeData(trade).wear.includes(kind));

/** The verdict's items about a curve, each with what would settle it. */
export const itemsOf = (
  { verdict, settles }: RoundReport,
  { kind, site }: WearLook,
): readonly { readonly item: WearItem; readonly settle: Settle | null }[] =>
  verdict.items.flatMap((item, at) =>
    item.what === 'wear' && item.kind === kind && item.site === site
      ? [{ item, settle: settles[at] ?? null }]
      : [],
  );

/** A change as a share, or in the place's unit where its scale has no zero; of the values as they are written beside it. */
export const changed = (
  before: number,
  after: number,
  look: WearLook,
  { speaker }: Spoken,
): string => {
  const [from, to] = [asWritten(before, look), asWritten(after, look)];
  return scaleOf(look.kind) === 'ratio'
    ? signed(to / from - 1, (share) => percentOf(share, speaker.number))
    : signed(to - from, (by) => bareOf(by, look, speaker));
};

/** The same in a sentence, where no column names the unit. */
export const changedBy = (from: number, to: number, look: WearLook, spoken: Spoken): string => {
  const change = changed(from, to, look, spoken);
  return scaleOf(look.kind) === 'ratio'
    ? change
    : `${change}\u00a0${unitName(look, spoken.speaker)}`;
};

export const placeWords = ({ kind, site }: WearLook, { paper, speaker }: Spoken): string =>
  paper.wearAt(speaker.glossary.measures[measureOf(kind)], siteName(site, speaker));

/** By when the limit is reached, as far as the checks tell; empty: they tell nothing. */
export const reachedWords = (
  { distance }: WearItem,
  look: WearLook,
  { paper: { sheet }, far }: Spoken,
): string => {
  if (!distance) return '';
  const { lower, median } = distance;
  return typeof median === 'number'
    ? sheet.reached.about(far(median))
    : typeof lower === 'number'
      ? sheet.reached.after(far(lower))
      : sheet.reached.after(far(look.reach));
};
