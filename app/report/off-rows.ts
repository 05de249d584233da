/** What is too much or too little: rows of the first tables, and of the first lines where it is clear. */
import { tradeData, type Trade, type TwoSidedId } from '../../core/foot/index.ts';
import type { RoundReport, TwoSidedSummary } from '../../core/review/index.ts';
import type { SheetProps } from './document-props.ts';
import type { Spoken } from './spoken.tsx';

/** Whether a question is one of the trade's own. */
export const isAskedOf = (attribute: TwoSidedId, trade: Trade): boolean =>
  attribute === 'ball-width' ? trade === 'last' : tradeData(trade).attributes.includes(attribute);

/** The answers to the trade's own questions of too much or too little. */
export const twoSidedOf = ({ round }: RoundReport, trade: Trade): readonly TwoSidedSummary[] =>
  round.twoSided.filter(({ attribute }) => isAskedOf(attribute, trade));

/** A question with a side that is more than chance. */
export type OffRow = TwoSidedSummary & { readonly word: 'low' | 'high' };

const isOff = (one: TwoSidedSummary): one is OffRow => one.word === 'low' || one.word === 'high';

/**
 * Those that are off, and that no finding speaks of: a finding has a row of its own. The clear ones first.
 * @param props.trade null: of all trades
 */
export const offRows = ({
  report,
  trade,
}: {
  readonly report: RoundReport;
  readonly trade: SheetProps['trade'] | null;
}): readonly OffRow[] => {
  const told = new Set(
    report.findings.flatMap(({ body }) => body.evidence?.twoSided?.attribute ?? []),
  );
  return (trade === null ? report.round.twoSided : twoSidedOf(report, trade))
    .filter(isOff)
    .filter(({ attribute }) => !told.has(attribute))
    .toSorted((a, b) => Number(b.sure === 'clear') - Number(a.sure === 'clear'));
};

/** The clear ones alone: what the first page and the first lines say. */
export const clearlyOff = (of: Parameters<typeof offRows>[0]): readonly OffRow[] =>
  offRows(of).filter(({ sure }) => sure === 'clear');

/** What the question is called, its side, and how many of how many testers lie there. */
export const offWords = (
  { attribute, word, counts }: OffRow,
  { speaker: { glossary } }: Spoken,
): readonly [name: string, side: string, testers: number, of: number] => {
  const question = glossary.twoSided[attribute];
  return [question.name, question[word], counts[word], counts.low + counts.right + counts.high];
};

/** The same as a sentence of a first line. */
export const offSentence = (row: OffRow, spoken: Spoken): string =>
  spoken.paper.sheet.headline.off(...offWords(row, spoken));
