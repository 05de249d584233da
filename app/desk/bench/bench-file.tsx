/** Bench checks from a table that a shop or a laboratory wrote: looked through first, then taken in. */
import { useId, useState } from 'preact/hooks';
import { Button, Notice } from '../../parts/controls/controls.tsx';
import type { BodyOf, RecordId } from '../../../core/records/index.ts';
import { showToast } from '../../parts/controls/toast.tsx';
import { formatDate } from '../../parts/format.ts';
import { store } from '../../parts/state.ts';
import { d, listed, t } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { saveRecord, Unfold } from '../parts/form-parts.tsx';
import { sayRange } from '../parts/in-range.ts';
import { Some } from '../parts/some.tsx';
import { TroubleList } from '../parts/trouble-list.tsx';
import { saveDecisions } from '../waiting/save-decision.ts';
import type { ReadTable } from '../../drafts/check-table.ts';
import {
  confirmedReadings,
  entryDoubts,
  type DoubtedReading,
  type EntryDoubts,
} from './entry-doubts.ts';
import { TableDoubts } from './table-doubts.tsx';

/** Two checks of a table differ in the pair or the instant. */
const checkId = ({ pair, at }: BodyOf<'bench-check'>): string => `${pair} ${at}`;

const noDoubts: EntryDoubts = { readings: [], gauges: [] };

export const BenchFile = ({ review, records }: TabProps) => {
  const words = d().bench;
  const names = namesIn(review, records);
  const id = useId();
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
  const look = (file: File | undefined) =>
    doing(async () => {
      if (!file) return;
      // The reader of tables is fetched with the first table.
      const { tableText } = await import('../../drafts/table.ts');
      const { checkKey, readBenchTable } = await import('../../drafts/check-table.ts');
      const pairs = new Map(review.pairs.map(({ id: pair, code }) => [code, pair]));
      const known = new Set(records['bench-check'].map(({ body }) => checkKey(body)));
      const text = tableText(await file.arrayBuffer());
      const table = readBenchTable(text, review.project.id, pairs, known);
      setRead(table);
      setDoubts(entryDoubts({ records, review }, table.checks, 'table'));
      setRight(new Set());
    });
  const take = (close: () => void) =>
    doing(async () => {
      const taken: RecordId[] = [];
      // What is taken in leaves the list at once: whatever happens, nothing is taken twice.
      for (const check of read?.checks ?? []) {
        const saved = await saveRecord('bench-check', check);
        if (!saved) throw new Error('not saved');
        setRead((now) => now && { ...now, checks: now.checks.slice(1) });
        const { id: record, stamp: judged } = saved.revision;
        taken.push(record);
        const confirmed = doubts.readings.filter((one) => one.check === check && right.has(one));
        await saveDecisions(
          confirmedReadings(
            confirmed,
            { project: review.project.id, record, judged },
            d().waiting.confirmed,
            Date.now(),
          ),
          null,
        );
      }
      setRead(null);
      close();
      const takeOut = async () => {
        let left = 0;
        for (const id of taken) if (!(await store.erase(id)).ok) left++;
        showToast({ text: left > 0 ? d().trouble : words.takenOut(taken.length) });
      };
      showToast({
        text: words.takenIn(taken.length),
        action: { label: t().undo, run: () => void takeOut() },
      });
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
  const wrongLines = new Set(
    (read?.troubles ?? []).flatMap(({ line, why }) => (why === 'missing-column' ? [] : [line])),
  ).size;
  return (
    <Unfold label={words.readFile}>
      {(close) => (
        <div class="stack">
          <label class="label" for={id}>
            {words.chooseFile}
          </label>
          <input
            id={id}
            class="input"
            type="file"
            accept=".csv,text/csv"
            onChange={(event) => void look(event.currentTarget.files?.[0])}
          />
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
                lines={read.lines}
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
