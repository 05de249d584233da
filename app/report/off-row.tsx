/** A row of what testers find too much or too little, and of which no finding asks for a change yet. */
import { trades } from '../../core/foot/index.ts';
import { isAskedOf, offWords, type OffRow } from './off-rows.ts';
import type { Column } from './row-words.ts';
import { Say, type Languages, type Spoken } from './spoken.tsx';

const title = (row: OffRow, spoken: Spoken): string => {
  const [name, side] = offWords(row, spoken);
  return spoken.speaker.desk.joined.of(name, side);
};

/** In the words of the table of these questions. */
const sureOf = ({ sure }: OffRow, { speaker }: Spoken): string =>
  speaker.desk.comfort.twoSided.sure[sure];

/** How many testers; on the first page, which has no column for it, how sure as well. */
const note = (row: OffRow, isOfTrade: boolean, spoken: Spoken): string => {
  const [, , testers, of] = offWords(row, spoken);
  return spoken.speaker.desk.joined.clauses([
    spoken.paper.sheet.someTesters(testers, of),
    ...(isOfTrade ? [] : [sureOf(row, spoken)]),
  ]);
};

/** The trades that ask after it, as a list; the first sign as a sentence has it. */
const who = ({ attribute }: OffRow, { speaker, list }: Spoken): string => {
  const names = list(
    trades
      .filter((trade) => isAskedOf(attribute, trade))
      .map((trade) => speaker.glossary.trades[trade]),
  );
  return names.charAt(0).toUpperCase() + names.slice(1);
};

export const Off = ({
  row,
  languages,
  columns,
  isOfTrade,
}: {
  readonly row: OffRow;
  readonly languages: Languages;
  readonly columns: readonly Column[];
  /** On the sheet of one trade; else on the first page, where rows have numbers and say who acts. */
  readonly isOfTrade: boolean;
}) => (
  <tr>
    {!isOfTrade && <td />}
    <td>
      <strong>
        <Say in={languages} of={(spoken) => title(row, spoken)} />
      </strong>
      <div class="soft">
        <Say in={languages} of={(spoken) => note(row, isOfTrade, spoken)} />
      </div>
    </td>
    <td>
      <Say in={languages} of={({ paper }) => paper.acts.asked} />
    </td>
    {columns.includes('amount') && <td>–</td>}
    {columns.includes('who') && (
      <td>
        <Say in={languages} of={(spoken) => who(row, spoken)} />
      </td>
    )}
    {columns.includes('by') && <td>–</td>}
    {columns.includes('sure') && (
      <td>
        <Say in={languages} of={(spoken) => sureOf(row, spoken)} />
      </td>
    )}
  </tr>
);
