/** What is so, what to change, how much, who or how sure, and by when: of the first page and of each trade's sheet. */
import { tradeOf, type Trade } from '../../core/foot/index.ts';
import type { Sureness } from '../../core/complaints/index.ts';
import type { DecisionRow, Stamp } from '../../core/headlines/index.ts';
import type { Callout } from '../../core/review/index.ts';
import { ofTrade } from './sheet-parts.tsx';
import { AsWritten, Own } from './own-words.tsx';
import { actWords, amountWords, byWords, calloutWords, whoWords } from './row-words.ts';
import { joined, Say, type Languages, type Spoken } from './spoken.tsx';

interface ActsProps {
  readonly languages: Languages;
  readonly rows: readonly DecisionRow[];
  /**
   * On the sheet of one trade: who acts is known, so it says how sure it is instead. Rows have no number, and complaints
   * no counts, which the next table has.
   */
  readonly trade?: Trade;
}

export const ActsTable = ({ languages, rows, trade }: ActsProps) => {
  const columns = [
    'so',
    'change',
    'amount',
    ...(trade ? (['by', 'sure'] as const) : (['who', 'by'] as const)),
  ] as const;
  return (
    <div
      class="table-wrap"
      tabIndex={0}
      role="region"
      aria-label={joined(languages, (spoken) =>
        trade ? ofTrade(spoken, trade, spoken.paper.columns.change) : spoken.paper.columns.change,
      )}
    >
      <table class={trade ? 'acts acts-of-trade' : 'acts'}>
        <thead>
          <tr>
            {!trade && <td />}
            {columns.map((column) => (
              <th scope="col" key={column}>
                <Say in={languages} of={({ paper }) => paper.columns[column]} />
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, at) => (
            <Row key={at} row={row} at={at} languages={languages} {...(trade && { trade })} />
          ))}
        </tbody>
      </table>
    </div>
  );
};

interface RowProps extends Pick<ActsProps, 'languages' | 'trade'> {
  readonly row: DecisionRow;
  readonly at: number;
}

const Row = ({ row, at, languages, trade }: RowProps) => {
  const { callout, finding, act } = row;
  return (
    <tr>
      {!trade && (
        <td>
          <span class={`number number-${act}`}>{at + 1}</span>
        </td>
      )}
      <td>
        {callout ? (
          <>
            <strong>
              <Say in={languages} of={(spoken) => calloutWords(callout, spoken).title} />
            </strong>
            {!(trade && callout.what === 'complaint') && (
              <div class="soft">
                <Say in={languages} of={(spoken) => calloutWords(callout, spoken).note} />
              </div>
            )}
          </>
        ) : (
          finding && (
            <strong>
              <Own of={finding.body} field="title" in={languages} />
            </strong>
          )
        )}
      </td>
      <td>
        {finding?.body.wanted !== undefined ? (
          <Own of={finding.body} field="wanted" in={languages} />
        ) : (
          <Say in={languages} of={(spoken) => actWords(row, spoken)} />
        )}
        {trade && callout?.what === 'better' && (
          <MeantChanges changes={callout.changes} languages={languages} trade={trade} />
        )}
        {trade && finding && tradeOf[finding.body.part] !== trade && (
          <div class="soft">
            <Say
              in={languages}
              of={(spoken) =>
                spoken.paper.sheet.askedOf(spoken.speaker.glossary.parts[finding.body.part].role)
              }
            />
          </div>
        )}
      </td>
      <Amount row={row} languages={languages} />
      {!trade && (
        <td>
          <Say in={languages} of={(spoken) => whoWords(row, spoken)} />
        </td>
      )}
      <td>
        <Say in={languages} of={(spoken) => byWords(row, spoken) ?? '–'} />
      </td>
      {trade && (
        <td>
          <Say in={languages} of={(spoken) => sureWords(row, spoken)} />
        </td>
      )}
    </tr>
  );
};

/** Whose change made it better, in the words of the lists of changes. */
const MeantChanges = ({
  changes,
  languages,
  trade,
}: {
  readonly changes: Extract<Callout, { what: 'better' }>['changes'];
  readonly languages: Languages;
  readonly trade: Trade;
}) =>
  changes.length === 0 ? (
    <div class="soft">
      <Say in={languages} of={({ paper }) => paper.so.changedByNone} />
    </div>
  ) : (
    <>
      {changes.map(({ round, part, what }, at) => (
        <div class="soft" key={at}>
          <Say
            in={languages}
            of={({ paper, speaker }) =>
              paper.so.changedBy(
                speaker.glossary.parts[part].name,
                speaker.round(round),
                tradeOf[part] === trade,
              )
            }
          />
          <div>
            <AsWritten in={languages} text={what} />
          </div>
        </div>
      ))}
    </>
  );

/** How sure a row is, and of what. */
export const sureWords = (
  { sure, callout }: Pick<DecisionRow, 'sure' | 'callout'>,
  { paper }: Spoken,
): string => {
  const { recurs, holds } = paper.sheet;
  switch (callout?.what) {
    case 'better':
      return paper.changes.word[callout.verdict];
    case 'complaint':
      return sure in recurs ? recurs[sure as Sureness] : paper.sure[sure];
    case 'wear':
      return sure in holds ? holds[sure as Stamp] : paper.sure[sure];
    case 'damage':
    case 'out-of-tolerance':
    case undefined:
      return paper.sure[sure];
  }
};

const Amount = ({ row, languages }: Pick<RowProps, 'row' | 'languages'>) => (
  <td class="amount">
    {amountWords(row, languages[0]) === null ? (
      <span class="soft">
        <Say in={languages} of={({ paper }) => (row.act === 'change' ? paper.noAmount : '–')} />
      </span>
    ) : (
      <Say in={languages} of={(spoken) => amountWords(row, spoken) ?? ''} />
    )}
  </td>
);
