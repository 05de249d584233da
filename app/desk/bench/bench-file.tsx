/** Bench checks from a table that a shop or a laboratory wrote: looked through first, then taken in. */
import { useId, useState } from 'preact/hooks';
import { Button, Notice } from '../../parts/controls/controls.tsx';
import { sendFile } from '../../parts/send-file.ts';
import { d } from '../../words/index.ts';
import type { TabProps } from '../desk-state.ts';
import { saveRecord, Unfold } from '../form-parts.tsx';
import { sayRange } from '../in-range.ts';
import { Some } from '../some.tsx';
import type { ReadTable } from './bench-csv.ts';

export const BenchFile = ({ review, records }: TabProps) => {
  const words = d().bench;
  const id = useId();
  const [read, setRead] = useState<ReadTable | null>(null);
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
      const { checkKey, readBenchTable, tableText } = await import('./bench-csv.ts');
      const pairs = new Map(review.pairs.map(({ id: pair, code }) => [code, pair]));
      const known = new Set(records['bench-check'].map(({ body }) => checkKey(body)));
      const text = tableText(await file.arrayBuffer());
      setRead(readBenchTable(text, review.project.id, pairs, known));
    });
  const take = (close: () => void) =>
    doing(async () => {
      // What is taken in leaves the list at once: whatever happens, nothing is taken twice.
      for (let left = read?.checks ?? []; left[0]; left = left.slice(1)) {
        if (!(await saveRecord('bench-check', left[0]))) throw new Error('not saved');
        setRead((now) => now && { ...now, checks: left.slice(1) });
      }
      setRead(null);
      close();
    });
  const saveTemplate = async () => {
    const { emptyBenchTable } = await import('./bench-csv.ts');
    await sendFile('bench-checks.csv', new TextEncoder().encode(emptyBenchTable()));
  };
  const trouble = (one: ReadTable['troubles'][number]): string => {
    const { 'unknown-word': unknownWord, ...rest } = words.tableTroubles;
    const what =
      one.why === 'unknown-word'
        ? unknownWord(one.words.join(', '))
        : one.why === 'out-of-range'
          ? sayRange(one.range)
          : rest[one.why];
    return words.lineTrouble(one.line, one.column, what);
  };
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
          {read && read.known > 0 && <p>{words.knownChecks(read.known)}</p>}
          {read && read.troubles.length > 0 && (
            <Notice tone="danger" live>
              <ul>
                <Some of={read.troubles} step={20}>
                  {(one) => <li key={`${one.line} ${one.column}`}>{trouble(one)}</li>}
                </Some>
              </ul>
            </Notice>
          )}
          {read && read.checks.length > 0 && (
            <>
              <p>
                {words.fromFile(
                  read.checks.length,
                  read.checks.reduce((sum, { readings }) => sum + readings.length, 0),
                )}
              </p>
              <Button kind="main" disabled={busy} onClick={() => void take(close)}>
                {words.takeIn}
              </Button>
            </>
          )}
          <Button kind="quiet" onClick={() => void doing(saveTemplate)}>
            {words.template}
          </Button>
        </div>
      )}
    </Unfold>
  );
};
