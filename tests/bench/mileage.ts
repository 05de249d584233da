/** Distance per pair over 200,000 runs: checked for repeats and summed, against GROUP BY on the same rows. */
import SQLite from 'better-sqlite3';
import {
  checkRuns,
  pairMileage,
  type HandOutSpan,
  type LoggedRun,
} from '../../core/mileage/index.ts';
import { newRecordId, type RecordId, type Run } from '../../core/records/index.ts';
import { groupBy } from '../../core/statistics/index.ts';
import { metres, seconds } from '../../core/units/index.ts';
import type { BenchRow } from './row.ts';
import { seeded } from '../seeded.ts';

const RUNS = 200_000;
const PAIRS = 2000;
const TESTERS = 1000;
const START = 1_780_000_000_000;

export const mileageRow: BenchRow = {
  name: `mileage over ${RUNS.toLocaleString('en')} runs`,
  peerName: 'plain SQL sums in SQLite (no checks for repeats or clashes)',
  setUp() {
    const random = seeded(2);
    const id = (at: number) => newRecordId(START + at, new Uint8Array(16).fill(at % 256));
    const pairs = Array.from({ length: PAIRS }, (_, at) => id(at));
    const testers = Array.from({ length: TESTERS }, (_, at) => id(10_000 + at));
    const spans: HandOutSpan[] = pairs.map((pair, at) => ({
      id: id(20_000 + at),
      pair,
      tester: testers[at % TESTERS] as RecordId,
      fromMs: 0,
      untilMs: Infinity,
    }));
    const runs = Array.from({ length: RUNS }, (_, at): LoggedRun => {
      const slot = at % PAIRS;
      const startMs =
        START + Math.floor(at / PAIRS) * 86_400_000 + (slot < TESTERS ? 0 : 43_200_000);
      const distanceM = metres(3000 + Math.floor(random() * 17_000));
      const durationS = seconds(Math.round(distanceM * 0.33));
      const surfaces = random() < 0.3 ? { road: 0.5, gravel: 0.5 } : { road: 1 };
      const [pair, tester] = [pairs[slot] as RecordId, testers[slot % TESTERS] as RecordId];
      const run = { distanceM, durationS, surfaces, pair, tester } as unknown as Run;
      return {
        id: id(100_000 + at),
        pair,
        tester,
        startMs,
        endMs: startMs + durationS * 1000,
        distanceM,
        run,
      };
    });
    const db = new SQLite(':memory:');
    db.exec(
      'create table run (pair text, tester text, start_ms integer, m real, road real, gravel real)',
    );
    const insert = db.prepare('insert into run values (?, ?, ?, ?, ?, ?)');
    db.transaction(() => {
      for (const { pair, tester, startMs, distanceM, run } of runs)
        insert.run(
          pair,
          tester,
          startMs,
          distanceM,
          run.surfaces?.road ?? 0,
          run.surfaces?.gravel ?? 0,
        );
    })();
    const context = { pairs: new Set(pairs), handOuts: spans, nowMs: START + 400 * 86_400_000 };
    const spansOf = new Map(spans.map((span) => [span.pair, [span]]));
    return Promise.resolve({
      ours: () => {
        const { counted } = checkRuns(runs, context);
        return [...groupBy(counted, ({ pair }) => pair)].map(([pair, own]) => {
          const { totalM, bySurface } = pairMileage(pair, own, metres(0), spansOf.get(pair) ?? []);
          return { pair, m: totalM, gravel: bySurface.gravel ?? 0 };
        });
      },
      peer: () =>
        db.prepare('select pair, sum(m) m, sum(m * gravel) gravel from run group by pair').all(),
      check(ours, peer) {
        const plain = (rows: unknown) =>
          (rows as { pair: string; m: number; gravel: number }[])
            .map(({ pair, m, gravel }) => `${pair} ${m} ${gravel}`)
            .sort()
            .join('\n');
        if (plain(ours) !== plain(peer)) throw new Error('the two sums differ');
      },
    });
  },
};
