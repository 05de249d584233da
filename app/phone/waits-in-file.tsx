/** What of a file would wait for the lead's decision. Fetched with its words only when a lead opens a file. */
import { wrap } from 'comlink';
import { useEffect, useState } from 'preact/hooks';
import type { Revision } from '../../core/records/index.ts';
import { store } from '../parts/state.ts';
import { d, need } from '../words/index.ts';
import type { WaitsWork } from './waits-worker.ts';

interface Counts {
  readonly runs: number;
  readonly readings: number;
}

const countsOf = (waiting: ReturnType<WaitsWork['newlyWaiting']>): Counts => ({
  runs: waiting.filter(({ about }) => about === 'run').length,
  readings: waiting
    .map((item) =>
      item.about === 'gauge' ? item.subjects.length : item.about === 'reading' ? 1 : 0,
    )
    .reduce((a: number, b) => a + b, 0),
});

export const WaitsInFile = ({ fresh }: { readonly fresh: readonly Revision[] }) => {
  const [counts, setCounts] = useState<Counts | null>(null);
  useEffect(() => {
    let current = true;
    const worker = new Worker(new URL('./waits-worker.ts', import.meta.url), { type: 'module' });
    const look = async () => {
      const [heads] = await Promise.all([store.heads(), need('desk')]);
      const waiting = await wrap<WaitsWork>(worker).newlyWaiting(heads, fresh, Date.now());
      if (current) setCounts(countsOf(waiting));
    };
    // Where it fails the file can be taken in all the same: what waits is listed at the desk.
    look()
      .catch(() => undefined)
      .finally(() => worker.terminate());
    return () => {
      current = false;
      worker.terminate();
    };
  }, [fresh]);
  return counts && counts.runs + counts.readings > 0 ? (
    <p>
      <strong>{d().waiting.inFile(counts.runs, counts.readings)}</strong>
    </p>
  ) : null;
};
