/** What of a trade's own questions is too much or too little: the rows of its sheet's first table, and its first line. */
import { tradeData, type Trade } from '../../core/foot/index.ts';
import type { RoundReport, TwoSidedSummary } from '../../core/review/index.ts';
import type { SheetProps } from './document-props.ts';
import type { Spoken } from './spoken.tsx';

/** The answers to the trade's own questions of too much or too little. */
export const twoSidedOf = ({ round }: RoundReport, trade: Trade): readonly TwoSidedSummary[] => {
  const { attributes } = tradeData(trade);
  const asked = [...attributes, ...(trade === 'last' ? (['ball-width'] as const) : [])];
  return round.twoSided.filter(({ attribute }) => asked.some((one) => one === attribute));
};

/** A question with a side that is more than chance. */
export type OffRow = TwoSidedSummary & { readonly word: 'low' | 'high' };

const isOff = (one: TwoSidedSummary): one is OffRow => one.word === 'low' || one.word === 'high';

/** Those that are off, and that no finding speaks of: a finding has a row of its own. The clear ones first. */
export const offRows = ({
  report,
  trade,
}: Pick<SheetProps, 'report' | 'trade'>): readonly OffRow[] => {
  const told = new Set(
    report.findings.flatMap(({ body }) => body.evidence?.twoSided?.attribute ?? []),
  );
  return twoSidedOf(report, trade)
    .filter(isOff)
    .filter(({ attribute }) => !told.has(attribute))
    .toSorted((a, b) => Number(b.sure === 'clear') - Number(a.sure === 'clear'));
};

/** What the question is called, its side, and how many of how many testers lie there. */
export const offWords = (
  { attribute, word, counts }: OffRow,
  { speaker: { glossary } }: Spoken,
): readonly [name: string, side: string, testers: number, of: number] => {
  const question = glossary.twoSided[attribute];
  return [question.name, question[word], counts[word], counts.low + counts.right + counts.high];
};
