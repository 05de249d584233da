/** Too much or too little, question by question: testers on either side, how sure, what it costs. */
import type { TwoSidedSummary } from '../../core/review/index.ts';
import { costsInWords, knownInWords, sidesInWords } from '../words/say-two-sided.ts';
import type { Languages, Spoken } from './spoken.tsx';
import { Table } from './table.tsx';

export const TwoSidedTable = (props: {
  readonly languages: Languages;
  readonly answers: readonly TwoSidedSummary[];
  readonly title: (spoken: Spoken) => string;
  /** With what each side costs, whatever is known. */
  readonly whole?: boolean;
}) => {
  const { languages, answers, title, whole = false } = props;
  if (answers.length === 0) return null;
  return (
    <Table
      languages={languages}
      title={title}
      columns={[
        ({ paper }) => paper.sheet.twoSidedColumns.what,
        ({ paper }) => paper.sheet.twoSidedColumns.sides,
        ({ paper }) => paper.sheet.twoSidedColumns.known,
        ({ paper }) => paper.sheet.twoSidedColumns.cost,
      ]}
      rows={answers.map((one) => [
        ({ speaker }: Spoken) => speaker.glossary.twoSided[one.attribute].name,
        ({ speaker }: Spoken) => sidesInWords(one, speaker),
        ({ speaker }: Spoken) => knownInWords(one, speaker),
        ({ speaker, paper }: Spoken) =>
          whole || one.word === 'low' || one.word === 'high'
            ? costsInWords(one.attribute, one.cost, speaker).join('; ') || paper.noAmount
            : paper.noAmount,
      ])}
    />
  );
};
