/** What is so, what to change, how much, who or how sure, and by when: of the first page and of each trade's sheet. */
import { tradeOf, type Trade } from '../../core/foot/index.ts';
import type { Sureness } from '../../core/complaints/index.ts';
import type { DecisionRow, Stamp } from '../../core/headlines/index.ts';
import type { Callout, RoundReport } from '../../core/review/index.ts';
import { languageIn } from '../words/figures.ts';
import { placeTitle } from '../words/say-wear.ts';
import { limitAct, limitBy, soFar, whyThere, type LimitRow } from './limit-rows.ts';
import { ofTrade } from './sheet-parts.tsx';
import { Off } from './off-row.tsx';
import type { OffRow } from './off-rows.ts';
import { AsWritten, foreignOfAll, Own } from './own-words.tsx';
import {
  actWords,
  amountWords,
  byWords,
  calloutWords,
  reasonWords,
  whoWords,
  type Column,
} from './row-words.ts';
import { joined, Say, type Languages, type Spoken } from './spoken.tsx';

interface ActsProps {
  readonly languages: Languages;
  readonly rows: readonly DecisionRow[];
  /** What is too much or too little. */
  readonly off: readonly OffRow[];
  /**
   * On the sheet of one trade: who acts is known, so it says how sure it is instead. Rows have no number, and complaints
   * no counts, which the next table has. A column that says nothing in any row is left out.
   */
  readonly of?: {
    readonly report: RoundReport;
    readonly trade: Trade;
    /** What the brief limits of its wear: what is to be measured stands before what is only watched. */
    readonly limits: readonly LimitRow[];
  };
}

const tableClass = (columns: readonly Column[], sheet: ActsProps['of']): string =>
  sheet === undefined
    ? 'acts'
    : `acts acts-of-trade${columns.includes('amount') ? '' : ' acts-without-amount'}${sheet.limits.some(({ settle }) => settle?.by === 'measure') ? ' acts-with-days' : ''}`;

/** Whether something is to be done for a row, beyond watching. */
const isActed = ({ act }: DecisionRow): boolean => act === 'change' || act === 'look';

const columnsOf = (
  rows: readonly DecisionRow[],
  { limits }: NonNullable<ActsProps['of']>,
  spoken: Spoken,
): readonly Column[] => [
  'so',
  'change',
  ...(rows.some((row) => row.act === 'change' || amountWords(row, spoken) !== null)
    ? (['amount'] as const)
    : []),
  ...(rows.some((row) => byWords(row, spoken) !== null) ||
  limits.some((row) => limitBy(row, spoken).length > 0)
    ? (['by'] as const)
    : []),
  'sure',
];

export const ActsTable = ({ languages, rows, off, of: sheet }: ActsProps) => {
  const trade = sheet?.trade;
  const columns: readonly Column[] = sheet
    ? columnsOf(rows, sheet, languages[0])
    : ['so', 'change', 'amount', 'who', 'by'];
  const foreign = foreignOfAll(
    sheet
      ? rows.flatMap(({ callout }) =>
          callout?.what === 'better' ? callout.changes.map(({ what }) => what) : [],
        )
      : [],
    languages,
  );
  const drawn = (some: readonly DecisionRow[]) =>
    some.map((row) => (
      <Row
        key={rows.indexOf(row)}
        at={rows.indexOf(row)}
        marked={foreign === undefined}
        {...{ row, languages, columns }}
        {...(sheet && { of: sheet })}
      />
    ));
  return (
    <>
      {foreign !== undefined && (
        <p class="key">
          <Say
            in={languages}
            of={({ paper, locale }) =>
              paper.sheet.changesForeign(foreign === null ? null : languageIn(foreign, locale))
            }
          />
        </p>
      )}
      <div
        class="table-wrap"
        tabIndex={0}
        role="region"
        aria-label={joined(languages, (spoken) =>
          trade ? ofTrade(spoken, trade, spoken.paper.columns.change) : spoken.paper.columns.change,
        )}
      >
        <table class={tableClass(columns, sheet)}>
          <thead>
            <tr>
              {!trade && <td class="acts-number" />}
              {columns.map((column) => (
                <th scope="col" class={`acts-${column}`} key={column}>
                  <Say in={languages} of={({ paper }) => paper.columns[column]} />
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {drawn(rows.filter(isActed))}
            {off.map((row) => (
              <Off
                key={row.attribute}
                isOfTrade={trade !== undefined}
                {...{ row, languages, columns }}
              />
            ))}
            {sheet?.limits.map((row, at) => (
              <Limits key={at} row={row} {...{ languages, columns }} report={sheet.report} />
            ))}
            {drawn(rows.filter((row) => !isActed(row)))}
          </tbody>
        </table>
      </div>
    </>
  );
};

/** What the brief limits, how far it has come, and what is measured next. */
const Limits = ({
  row,
  languages,
  columns,
  report,
}: {
  readonly row: LimitRow;
  readonly languages: Languages;
  readonly columns: readonly Column[];
  readonly report: RoundReport;
}) => (
  <tr>
    <td>
      {row.limits.map((one, at) => (
        <div class="limit-of-row" key={at}>
          <strong>
            <Say in={languages} of={({ speaker }) => placeTitle(one.look, speaker)} />
          </strong>
          <div class="soft">
            <Say in={languages} of={(spoken) => soFar(one, spoken)} />
          </div>
        </div>
      ))}
    </td>
    <td>
      <Say in={languages} of={(spoken) => limitAct(row, spoken)} />
      {row.settle?.by === 'measure' && (
        <div class="soft">
          <Say
            in={languages}
            of={(spoken) => whyThere(row, report.project.brief.distanceM, spoken) ?? ''}
          />
        </div>
      )}
    </td>
    {columns.includes('amount') && <td>–</td>}
    {columns.includes('by') && (
      <td>
        {limitBy(row, languages[0]).length === 0
          ? '–'
          : limitBy(row, languages[0]).map((_, at) => (
              <div key={at}>
                <Say in={languages} of={(spoken) => limitBy(row, spoken)[at] ?? ''} />
              </div>
            ))}
      </td>
    )}
    <td>
      <Say
        in={languages}
        of={({ paper }) =>
          row.stamp in paper.sheet.holds ? paper.sheet.holds[row.stamp] : paper.sure[row.stamp]
        }
      />
    </td>
  </tr>
);

interface RowProps extends Pick<ActsProps, 'languages' | 'of'> {
  readonly row: DecisionRow;
  readonly at: number;
  readonly columns: readonly Column[];
  /** Whether the words of a change say their language. */
  readonly marked: boolean;
}

const Row = ({ row, at, languages, of: sheet, columns, marked }: RowProps) => {
  const { callout, finding, act } = row;
  const trade = sheet?.trade;
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
        {sheet && reasonWords(row, sheet.report, languages[0]) !== null && (
          <div class="soft">
            <Say in={languages} of={(spoken) => reasonWords(row, sheet.report, spoken) ?? ''} />
          </div>
        )}
        {trade && callout?.what === 'better' && (
          <MeantChanges changes={callout.changes} {...{ languages, trade, marked }} />
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
      {columns.includes('amount') && <Amount row={row} languages={languages} />}
      {!trade && (
        <td>
          <Say in={languages} of={(spoken) => whoWords(row, spoken)} />
        </td>
      )}
      {columns.includes('by') && (
        <td>
          <Say in={languages} of={(spoken) => byWords(row, spoken) ?? '–'} />
        </td>
      )}
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
  marked,
}: {
  readonly changes: Extract<Callout, { what: 'better' }>['changes'];
  readonly languages: Languages;
  readonly trade: Trade;
  readonly marked: boolean;
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
              tradeOf[part] === trade
                ? paper.so.changedBy(speaker.glossary.parts[part].name, speaker.round(round))
                : paper.so.changedByOther(
                    speaker.glossary.parts[part].name,
                    speaker.round(round),
                    speaker.glossary.parts[part].role,
                  )
            }
          />
          <div>
            <AsWritten in={languages} text={what} marked={marked} />
          </div>
        </div>
      ))}
    </>
  );

/** How sure a row is, and of what. */
export const sureWords = (
  { sure, callout }: Pick<DecisionRow, 'sure' | 'callout'>,
  { paper, speaker }: Spoken,
): string => {
  const { recurs, holds, turned } = paper.sheet;
  switch (callout?.what) {
    case 'better':
      return callout.changes.length > 0
        ? turned.worked(paper.changes.word[callout.verdict])
        : callout.verdict === 'mended'
          ? turned.mendedByNone(speaker.round(callout.earlier))
          : turned.byNone(paper.changes.word.better, speaker.round(callout.earlier));
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
      <span class="none">
        <Say in={languages} of={({ paper }) => (row.act === 'change' ? paper.noAmount : '–')} />
      </span>
    ) : (
      <Say in={languages} of={(spoken) => amountWords(row, spoken) ?? ''} />
    )}
  </td>
);
