/** Bench checks from a table that a shop or a laboratory wrote: looked through first, then taken in. */
import { useState } from 'preact/hooks';
import { Button, Notice } from '../../parts/controls/controls.tsx';
import type { BodyOf } from '../../../core/records/index.ts';
import { neededColumns, otherColumns } from '../../drafts/check-columns.ts';
import { formatDate } from '../../parts/format.ts';
import { d, listed } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { Unfold } from '../parts/form-parts.tsx';
import { sayRange } from '../parts/in-range.ts';
import { Some } from '../parts/some.tsx';
import { TroubleList } from '../parts/trouble-list.tsx';
import { namesHere } from '../rounds/names-here.ts';
import { TakeTable } from '../tables/take-table.tsx';
import type { ReadTable } from '../../drafts/check-table.ts';
import { entryDoubts, type Check, type DoubtedReading, type EntryDoubts } from './entry-doubts.ts';
import { saveChecks } from './save-checks.ts';
import { roundsOf, saveEmptyTable, saveShopTable } from './save-shop-table.ts';
import { TableDoubts } from './table-doubts.tsx';

/** Two checks of a table differ in the pair or the instant. */
const checkId = ({ pair, at }: BodyOf<'bench-check'>): string => `${pair} ${at}`;

const noDoubts: EntryDoubts = { readings: [], gauges: [] };

export const BenchFile = (props: TabProps) => {
  const { review, records } = props;
  const words = d().bench;
  const names = namesIn(review, records);
  const [read, setRead] = useState<ReadTable | null>(null);
  const [doubts, setDoubts] = useState<EntryDoubts>(noDoubts);
  /** Doubted readings that the lead says are right. */
  const [right, setRight] = useState<ReadonlySet<DoubtedReading>>(new Set());
  const [busy, setBusy] = useState(false);
  const [failed, setFailed] = useState(false);
  /** Does one thing at a time, and says so if it cannot be done. */
  const doing = async (work: () => Promise<void>) => {
    if (busy) return;
    setBusy(true);
    setFailed(false);
    await work().catch(() => setFailed(true));
    setBusy(false);
  };
  const look = (text: string) =>
    doing(async () => {
      setRead(null);
      if (text.trim() === '') return;
      // The reader of tables is fetched with the first table.
      const { checkKey, readBenchTable } = await import('../../drafts/check-table.ts');
      const pairs = new Map(review.pairs.map(({ id: pair, code }) => [code, pair]));
      const known = new Set(records['bench-check'].map(({ body }) => checkKey(body)));
      const table = readBenchTable(text, review.project.id, pairs, known, namesHere());
      setRead(table);
      setDoubts(entryDoubts({ records, review }, table.checks, 'table'));
      setRight(new Set());
    });
  const take = (close: () => void) =>
    doing(async () => {
      await saveChecks(review.project.id, read?.checks ?? [], right, () =>
        setRead((now) => now && { ...now, checks: now.checks.slice(1) }),
      );
      setRead(null);
      close();
    });
  const trouble = (one: ReadTable['troubles'][number]): string => {
    const { 'unknown-word': unknownWord, ...rest } = words.tableTroubles;
    const what =
      one.why === 'unknown-word'
        ? unknownWord(listed(one.words))
        : one.why === 'out-of-range'
          ? sayRange(one.range)
          : rest[one.why];
    return words.lineTrouble(one.line, one.column, one.typed, what);
  };
  const filled = roundsOf(props).filter(({ revision }) =>
    review.pairs.some(({ round }) => round === revision.id),
  );
  const lines: ReadonlyMap<Check, readonly number[]> = read?.lines ?? new Map();
  const wrongLines = new Set(
    (read?.troubles ?? []).flatMap(({ line, why }) => (why === 'missing-column' ? [] : [line])),
  ).size;
  return (
    <Unfold label={words.readFile}>
      {(close) => (
        <div class="stack">
          <TakeTable
            hint={words.tableColumns(listed(neededColumns), listed(otherColumns))}
            file={words.chooseFile}
            onText={(text) => void look(text)}
          />
          <div class="row">
            <span class="soft small">{words.templates}</span>
            {filled.map((round) => (
              <Button
                key={round.revision.id}
                kind="quiet"
                onClick={() => void doing(() => saveShopTable(props, round))}
              >
                {words.tableOf(round.body.name)}
              </Button>
            ))}
            <Button kind="quiet" onClick={() => void doing(saveEmptyTable)}>
              {words.emptyTable}
            </Button>
          </div>
          {failed && (
            <Notice tone="danger" live>
              {d().trouble}
            </Notice>
          )}
          {read && read.unmeasured > 0 && <p>{words.unmeasured(read.unmeasured)}</p>}
          {read && read.known > 0 && <p>{words.knownChecks(read.known)}</p>}
          {wrongLines > 0 && <p>{words.linesLeftOut(wrongLines)}</p>}
          <TroubleList of={(read?.troubles ?? []).map(trouble)} />
          {read && read.checks.length > 0 && (
            <>
              <TableDoubts
                records={records}
                review={review}
                doubts={doubts}
                placed={({ check, at }, said) =>
                  d().waiting.ofLine(lines.get(check)?.[at] ?? 0, said)
                }
                asks={d().waiting.tableAsks}
                right={right}
                onChange={setRight}
              />
              <p>
                {words.fromFile(
                  read.checks.length,
                  read.checks.reduce((sum, { readings }) => sum + readings.length, 0),
                )}
              </p>
              <ul class="soft small">
                <Some of={read.checks} step={20}>
                  {(check) => (
                    <li key={checkId(check)}>
                      {words.fromFilePair(
                        names.code(check.pair),
                        formatDate(Date.parse(check.at)),
                        check.readings.length,
                      )}
                    </li>
                  )}
                </Some>
              </ul>
              <Button kind="main" disabled={busy} onClick={() => void take(close)}>
                {words.takeIn}
              </Button>
            </>
          )}
        </div>
      )}
    </Unfold>
  );
};
