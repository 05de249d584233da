/** What of a file would wait for the lead's decision. Fetched with its words only when a lead opens a file. */
import { useEffect, useState } from 'preact/hooks';
import type { Revision } from '../../core/records/index.ts';
import { newlyWaiting } from '../../core/review/index.ts';
import { store } from '../parts/state.ts';
import { d, need } from '../words/index.ts';

interface Counts {
  readonly runs: number;
  readonly readings: number;
}

export const WaitsInFile = ({ fresh }: { readonly fresh: readonly Revision[] }) => {
  const [counts, setCounts] = useState<Counts | null>(null);
  useEffect(() => {
    let current = true;
    void Promise.all([store.heads(), need('desk')]).then(([heads]) => {
      if (!current) return;
      const waiting = newlyWaiting(heads, fresh, Date.now());
      const runs = waiting.filter(({ about }) => about === 'run').length;
      const readings = waiting
        .map((item) =>
          item.about === 'gauge' ? item.subjects.length : item.about === 'reading' ? 1 : 0,
        )
        .reduce((a, b) => a + b, 0);
      setCounts({ runs, readings });
    });
    return () => {
      current = false;
    };
  }, [fresh]);
  return counts && counts.runs + counts.readings > 0 ? (
    <p>
      <strong>{d().waiting.inFile(counts.runs, counts.readings)}</strong>
    </p>
  ) : null;
};
