import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addRevisions,
  compareRevisions,
  emptyLog,
  newClock,
  revisionsOf,
  saveDraft,
  unseenByHead,
  type DeviceId,
  type History,
  type Log,
  type Revision,
} from '../../../core/records/index.ts';
import { anyRevision, idOf } from './make.ts';

const logOf = (revisions: Iterable<Revision>): Log => addRevisions(emptyLog, revisions);
const mergeLogs = (a: Log, b: Log): Log => addRevisions(a, revisionsOf(b));
const plain = (log: Log) =>
  [...log].sort(([a], [b]) => (a < b ? -1 : 1)).map(([id, { head, older }]) => [id, head, older]);
const anyLog = fc.array(anyRevision(), { maxLength: 12 });

describe('merging two logs', () => {
  it('gives the same whichever way revisions travel', () => {
    fc.assert(
      fc.property(
        anyLog.chain((revisions) =>
          fc.tuple(
            fc.constant(revisions),
            fc.shuffledSubarray(revisions, { minLength: revisions.length }),
          ),
        ),
        ([revisions, shuffled]) => {
          expect(plain(logOf(shuffled))).toEqual(plain(logOf(revisions)));
          expect(plain(logOf([...shuffled, ...revisions]))).toEqual(plain(logOf(revisions)));
        },
      ),
      { numRuns: 2000 },
    );
  });

  it('is idempotent, commutative and associative', () => {
    fc.assert(
      fc.property(anyLog, anyLog, anyLog, (x, y, z) => {
        const [a, b, c] = [logOf(x), logOf(y), logOf(z)];
        expect(plain(mergeLogs(a, a))).toEqual(plain(a));
        expect(plain(mergeLogs(a, b))).toEqual(plain(mergeLogs(b, a)));
        expect(plain(mergeLogs(mergeLogs(a, b), c))).toEqual(plain(mergeLogs(a, mergeLogs(b, c))));
        expect(plain(mergeLogs(a, b))).toEqual(plain(logOf([...x, ...y])));
      }),
      { numRuns: 2000 },
    );
  });

  it('loses no revision of a record that was not taken back', () => {
    fc.assert(
      fc.property(anyLog, anyLog, (x, y) => {
        const kept = new Set([...revisionsOf(mergeLogs(logOf(x), logOf(y)))].map((r) => r.hash));
        const gone = new Set([...x, ...y].filter((r) => r.erased).map((r) => r.id));
        for (const revision of [...x, ...y])
          if (!gone.has(revision.id)) expect(kept).toContain(revision.hash);
      }),
    );
  });

  it('keeps nothing but the erasure of a record that was taken back', () => {
    fc.assert(
      fc.property(anyLog, (revisions) => {
        for (const { head, older } of logOf(revisions).values()) {
          const erasures = revisions.filter((r) => r.id === head.id && r.erased);
          if (erasures.length === 0) continue;
          expect(older).toEqual([]);
          expect(head).toEqual(erasures.sort(compareRevisions).at(-1));
        }
      }),
    );
  });

  it('takes the greatest by stamp and hash as the current state', () => {
    fc.assert(
      fc.property(anyLog, (revisions) => {
        for (const { head, older } of logOf(revisions).values())
          for (const revision of older) expect(compareRevisions(revision, head)).toBeLessThan(0);
      }),
    );
  });
});

describe('an edit', () => {
  const draft = (word: string) => ({
    id: idOf(1),
    kind: 'run',
    author: idOf(2),
    sv: 1,
    body: { word },
  });

  it('wins over what it edits, even with a clock that is years slow', () => {
    const ahead = saveDraft(newClock('a'.repeat(16) as DeviceId), 4e12, undefined, draft('first'));
    const slow = newClock('b'.repeat(16) as DeviceId);
    const edit = saveDraft(slow, 1000, ahead.history, draft('second'));
    expect(edit.history.head.body).toEqual({ word: 'second' });
    expect(edit.revision.prev).toBe(ahead.revision.stamp);
    expect(edit.clock.ms).toBe(1000);
  });

  it('is shown beside the one that beat it unseen, and no longer after that was edited', () => {
    const device = (letter: string) => newClock(letter.repeat(16) as DeviceId);
    const first = saveDraft(device('a'), 1000, undefined, draft('first'));
    const mine = saveDraft(device('b'), 2000, first.history, draft('mine'));
    const theirs = saveDraft(device('c'), 3000, first.history, draft('theirs'));
    const both = logOf([first.revision, mine.revision, theirs.revision]);
    const history = both.get(idOf(1)) as History;
    expect(history.head).toEqual(theirs.revision);
    expect(unseenByHead(history)).toEqual([mine.revision]);
    const settled = saveDraft(device('b'), 4000, history, draft('settled'));
    expect(unseenByHead(settled.history)).toEqual([]);
  });
});
