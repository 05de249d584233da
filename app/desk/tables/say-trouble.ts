/** What is wrong with a cell of a table and what to do, in the language of the screen. */
import type { RecordId } from '../../../core/records/index.ts';
import { metres, seconds } from '../../../core/units/index.ts';
import { markColumns, type Column } from '../../drafts/tables/columns.ts';
import type { CellTrouble, PlainWhy } from '../../drafts/tables/row.ts';
import { formatPace } from '../../parts/format.ts';
import { d, entryWords, locale, p, terms } from '../../words/index.ts';
import { sayRange } from '../parts/in-range.ts';

/** The words that can be typed, as the reader says them. */
const namesOf = (column: Column, ids: readonly string[]): string => {
  const { yes, no } = p().runs.form;
  const { surfaces, grounds, socks, twoSided } = terms();
  const named: Readonly<Partial<Record<Column, Readonly<Record<string, string>>>>> = {
    surface: surfaces,
    ground: grounds,
    sock: socks,
    blind: { yes, no },
    ...Object.fromEntries(
      markColumns.map(({ id, column: own }) => {
        const { low, high } = twoSided[id];
        return [own, { low, right: entryWords().twoSided.right, high }];
      }),
    ),
  };
  return new Intl.ListFormat(locale(), { type: 'disjunction' }).format(
    ids.map((id) => named[column]?.[id] ?? id),
  );
};

const isPlain = (
  trouble: CellTrouble,
): trouble is Extract<CellTrouble, { readonly why: PlainWhy }> =>
  trouble.why === 'not-a-code' ||
  typeof (p().tables.troubles as Readonly<Record<string, unknown>>)[trouble.why] === 'string';

const sayPlain = (why: PlainWhy): string =>
  why === 'not-a-code' ? d().notACode : p().tables.troubles[why];

export const sayTrouble = (
  trouble: CellTrouble,
  tester: (id: RecordId | null) => string,
): string => {
  const words = p().tables.troubles;
  if (isPlain(trouble)) return sayPlain(trouble.why);
  switch (trouble.why) {
    case 'out-of-range':
      return sayRange(trouble.range);
    case 'pace':
      return words.pace(formatPace(metres(1000), seconds(trouble.secondsPerKm)));
    case 'with-another':
      return trouble.tester === null
        ? words['with-nobody']
        : words['with-another'](tester(trouble.tester));
    case 'held':
      return words.held(tester(trouble.tester));
    case 'twice':
    case 'held-in-row':
      return words[trouble.why](trouble.line);
    case 'maybe-same':
      return trouble.line === null ? words['maybe-here'] : words['maybe-same'](trouble.line);
    case 'unknown-word':
      return words['unknown-word'](namesOf(trouble.column, trouble.words));
  }
};
