/** What a file would change, as a person is told it before anything is taken in. */
import { describe, expect, it } from 'vitest';
import {
  addRevisions,
  changesByFile,
  emptyLog,
  sealRevision,
  type Body,
  type RecordId,
  type Revision,
} from '../../../core/records/index.ts';
import { idOf, stampAt } from './make.ts';

const lead = idOf(1);
let ms = 0;
const save = (
  id: RecordId,
  kind: string,
  body: Body | null,
  more: { erased?: true; at?: number } = {},
): Revision =>
  sealRevision(
    {
      id,
      kind,
      author: lead,
      sv: 9,
      body,
      ...(body === null && { deleted: true as const }),
      ...(more.erased && { erased: true as const }),
    },
    stampAt(more.at ?? ++ms),
    null,
  );

const [project, pair, tester, run, notice] = [10, 11, 12, 13, 14].map(idOf) as [
  RecordId,
  RecordId,
  RecordId,
  RecordId,
  RecordId,
];
const runBody = { pair, tester, startedAt: '2026-05-03T07:30:00+02:00', distanceM: 10_000 };
const log = addRevisions(emptyLog, [
  save(project, 'project', { name: 'Wren' }),
  save(pair, 'pair', { code: '637', sizeMm: 270 }),
  save(tester, 'tester', { code: 'T01' }),
  save(run, 'run', runBody),
]);

const told = (revisions: readonly Revision[], held = log) =>
  changesByFile(revisions, revisions, held);
const effects = (...revisions: readonly Revision[]) => told(revisions).map(({ effect }) => effect);

describe('the effect of a file', () => {
  it('is a new name, a change, an erasure, or a record that comes back', () => {
    expect(effects(save(project, 'project', { name: 'Lark' }))).toEqual(['renames']);
    expect(effects(save(pair, 'pair', { code: '637', sizeMm: 275 }))).toEqual(['changes']);
    expect(effects(save(pair, 'pair', null))).toEqual(['erases']);
    expect(effects(save(pair, 'pair', null, { erased: true }))).toEqual(['erases-for-good']);
    const without = addRevisions(log, [save(pair, 'pair', null)]);
    const back = told([save(pair, 'pair', { code: '637' })], without);
    expect(back).toMatchObject([{ effect: 'brings-back', before: null }]);
  });

  it('is a new record, also one that comes erased, or an earlier state of one that is here', () => {
    const fresh = idOf(20);
    expect(effects(save(fresh, 'run', runBody))).toEqual(['adds']);
    expect(effects(save(fresh, 'run', runBody), save(fresh, 'run', null))).toEqual(['adds-erased']);
    expect(effects(save(run, 'run', runBody, { at: 0 }))).toEqual(['earlier']);
  });

  it('is told once a record, the gravest first', () => {
    const changed = (distanceM: number) => save(run, 'run', { ...runBody, distanceM });
    const revisions = [save(idOf(21), 'run', runBody), changed(5000), changed(6000)];
    expect(told([...revisions, save(pair, 'pair', null)])).toMatchObject([
      { effect: 'erases', id: pair },
      { effect: 'changes', before: { distanceM: 10_000 }, label: { distanceM: 6000 } },
      { effect: 'adds' },
    ]);
  });
});

describe('what tells a record from others', () => {
  it('is its name, its pairs and tester by their codes, its day and its distance', () => {
    expect(told([save(run, 'run', { ...runBody, words: 'x' })])[0]?.label).toEqual({
      name: null,
      pairs: ['637'],
      tester: 'T01',
      at: '2026-05-03T07:30:00+02:00',
      distanceM: 10_000,
    });
    const body = { pairs: [pair, idOf(99)], reason: 'Sole came off', from: 'yesterday' };
    expect(told([save(notice, 'stop-use', body)])[0]?.label).toEqual({
      name: 'Sole came off',
      pairs: ['637'],
      tester: null,
      at: null,
      distanceM: null,
    });
  });

  it('is what an erased record said last', () => {
    expect(told([save(pair, 'pair', null, { erased: true })])[0]?.label.name).toBe('637');
  });

  it('comes from the file where the log does not have it, and never instead of it', () => {
    const other = idOf(30);
    const revisions = [
      save(other, 'pair', { code: '638' }),
      save(pair, 'pair', { code: '999' }),
      save(idOf(31), 'run', { ...runBody, pair: other }),
      save(idOf(32), 'run', runBody),
    ];
    const runs = told(revisions).filter(({ kind }) => kind === 'run');
    expect(runs.map(({ label }) => label.pairs)).toEqual([['638'], ['637']]);
  });

  it.each([
    [{ name: 'x'.repeat(5000) }, 'x'.repeat(80)],
    [{ name: '  ', title: 'Titled' }, 'Titled'],
    [{ name: { toString: 1 }, code: 7 }, null],
    [{ pairs: 'all', distanceM: '1' }, null],
  ])('is read from whatever a body of a newer version holds %#', (body, name) => {
    expect(told([save(idOf(40), 'weather-mast', body)])[0]?.label.name).toBe(name);
  });
});
