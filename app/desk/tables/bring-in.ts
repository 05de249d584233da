/** Writes the rows that a lead wants, in one transaction, and takes them out again. */
import { signal } from '@preact/signals';
import type { RecordId, Revision, Stamp } from '../../../core/records/index.ts';
import { decisionOn } from '../../../core/review/index.ts';
import type { TableKind } from '../../drafts/tables/columns.ts';
import type { ReadRow, TableRecord } from '../../drafts/tables/row.ts';
import { showToast } from '../../parts/controls/toast.tsx';
import { toInstant } from '../../parts/instant.ts';
import { store } from '../../parts/state.ts';
import type { ManyDraft } from '../../store/index.ts';
import { d, p } from '../../words/index.ts';

interface Written {
  readonly id: RecordId;
  readonly stamp: Stamp;
  /** As it was before; null: it is new. */
  readonly before: ManyDraft | null;
}

export interface BroughtInNow {
  readonly project: RecordId;
  readonly kind: TableKind;
  readonly count: number;
  readonly written: readonly Written[];
}

/** The last table of this page, so that it can be taken out again after a look at what came in. */
export const lastBroughtIn = signal<BroughtInNow | null>(null);

type Row = ReadRow & { readonly record: TableRecord };

const beforeOf = async ({ kind, id }: TableRecord): Promise<ManyDraft | null> => {
  const held = id === undefined ? null : await store.get(kind, id);
  return held && { kind, body: held.body, id: held.revision.id };
};

const writtenOf = (
  revisions: readonly Revision[],
  before: readonly (ManyDraft | null)[],
): readonly Written[] =>
  revisions.map(({ id, stamp }, at) => ({ id, stamp, before: before[at] ?? null }));

/** What looked odd and is right counts at once: nobody is asked a second time. */
const decisionsAbout = (
  rows: readonly Row[],
  revisions: readonly Revision[],
  project: RecordId,
): readonly ManyDraft[] =>
  revisions.flatMap((revision, at): ManyDraft[] => {
    if (rows[at]?.fate !== 'odd') return [];
    const subject = {
      record: revision.id,
      recordKind: 'run',
      judged: revision.stamp,
      reading: null,
    } as const;
    const said = {
      project,
      ruling: 'counted',
      why: p().tables.confirmed,
      at: toInstant(Date.now()),
    } as const;
    return [{ kind: 'decision', body: decisionOn(subject, said) }];
  });

/** @returns whether the rows came in */
export const bringIn = async (
  rows: readonly Row[],
  kind: TableKind,
  project: RecordId,
): Promise<boolean> => {
  const before = await Promise.all(rows.map(({ record }) => beforeOf(record)));
  const saved = await store.saveAll(rows.map(({ record }) => record));
  if (!saved.ok) {
    showToast({ text: d().trouble });
    return false;
  }
  const decided = await store.saveAll(decisionsAbout(rows, saved.value, project));
  if (!decided.ok) showToast({ text: d().trouble });
  const written = [
    ...writtenOf(saved.value, before),
    ...writtenOf(decided.ok ? decided.value : [], []),
  ];
  lastBroughtIn.value = { project, kind, count: rows.length, written };
  return true;
};

/** Takes out what came in; what somebody has changed meanwhile stays. */
export const takeOut = async ({ written }: BroughtInNow): Promise<void> => {
  const histories = await Promise.all(written.map(({ id }) => store.history(id)));
  const untouched = written.filter(({ stamp }, at) => histories[at]?.head.stamp === stamp);
  const undone = await store.saveAll(
    untouched.map(({ id, before }) => before ?? { id, body: null }),
  );
  if (!undone.ok) return showToast({ text: d().trouble });
  const left = written.length - untouched.length;
  lastBroughtIn.value = null;
  showToast({ text: left === 0 ? p().tables.undone : p().tables.partlyUndone(left) });
};
