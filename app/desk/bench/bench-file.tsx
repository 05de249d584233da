/** Bench checks from a table that a shop or a laboratory wrote: looked through first, then taken in. */
import { useId, useState } from 'preact/hooks';
import { Button, Notice } from '../../parts/controls/controls.tsx';
import { sendFile } from '../../parts/send-file.ts';
import { d } from '../../words/index.ts';
import type { TabProps } from '../desk-state.ts';
import { saveRecord, Unfold } from '../form-parts.tsx';
import { Some } from '../some.tsx';
import type { ReadTable } from './bench-csv.ts';

export const BenchFile = ({ review }: TabProps) => {
  const words = d().bench;
  const id = useId();
  const [read, setRead] = useState<ReadTable | null>(null);
  const look = async (file: File | undefined) => {
    if (!file) return;
    // The reader of tables is fetched with the first table.
    const { readBenchTable } = await import('./bench-csv.ts');
    const pairs = new Map(review.pairs.map(({ id: pair, code }) => [code, pair]));
    setRead(readBenchTable(await file.text(), review.project.id, pairs));
  };
  const take = async (close: () => void) => {
    for (const check of read?.checks ?? []) if (!(await saveRecord('bench-check', check))) return;
    setRead(null);
    close();
  };
  const saveTemplate = async () => {
    const { emptyBenchTable } = await import('./bench-csv.ts');
    await sendFile('bench-checks.csv', new TextEncoder().encode(emptyBenchTable()));
  };
  const trouble = (one: ReadTable['troubles'][number]): string => {
    const { 'unknown-word': unknownWord, ...rest } = words.tableTroubles;
    return words.lineTrouble(
      one.line,
      one.column,
      one.why === 'unknown-word' ? unknownWord(one.words.join(', ')) : rest[one.why],
    );
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
              <Button kind="main" onClick={() => void take(close)}>
                {words.takeIn}
              </Button>
            </>
          )}
          <Button kind="quiet" onClick={() => void saveTemplate()}>
            {words.template}
          </Button>
        </div>
      )}
    </Unfold>
  );
};
