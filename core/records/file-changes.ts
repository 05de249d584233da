/** What would some revisions make of a log, told record by record so that a person can judge it? */
import type { RecordId } from './id.ts';
import { addToHistory, type History, type Log } from './log.ts';
import type { Body, Revision } from './revision.ts';

/**
 * - `adds`, `changes`, `renames`, `erases`, `brings-back`: the record as it is seen;
 * - `erases-for-good`: for ever, whatever else comes of it;
 * - `adds-erased`: one that is not here, and comes erased;
 * - `earlier`: a state that a later one, already here, has replaced.
 */
export const fileEffects = [
  'erases-for-good',
  'erases',
  'renames',
  'changes',
  'brings-back',
  'adds',
  'adds-erased',
  'earlier',
] as const;
export type FileEffect = (typeof fileEffects)[number];

/** What tells one record from others of its kind, as far as its body says it. */
export interface RecordLabel {
  readonly name: string | null;
  /** Codes of the pairs that it is about. */
  readonly pairs: readonly string[];
  /** Code of the tester whom it is about. */
  readonly tester: string | null;
  /** When it happened, ISO 8601. */
  readonly at: string | null;
  readonly distanceM: number | null;
}

export interface FileChange {
  readonly id: RecordId;
  readonly kind: string;
  readonly effect: FileEffect;
  readonly label: RecordLabel;
  /** Of a record that is renamed or changed: what tells it now. */
  readonly before: RecordLabel | null;
}

/** A longer name is cut: bodies of newer versions may hold any text. */
const MOST_CHARACTERS = 80;

const textIn = (body: Body, fields: readonly string[]): string | null => {
  for (const field of fields) {
    const value = body[field];
    if (typeof value === 'string' && value.trim() !== '') return value.slice(0, MOST_CHARACTERS);
  }
  return null;
};

const nameIn = (body: Body): string | null => textIn(body, ['name', 'title', 'code', 'reason']);

const lastBody = (history: History | undefined): Body | null =>
  history
    ? ([history.head, ...[...history.older].reverse()].find(({ body }) => body !== null)?.body ??
      null)
    : null;

const EMPTY: RecordLabel = { name: null, pairs: [], tester: null, at: null, distanceM: null };

const labelOf = (body: Body | null, codeOf: (id: unknown) => string | null): RecordLabel => {
  if (!body) return EMPTY;
  const { pair, pairs, tester, distanceM } = body;
  const at = textIn(body, ['startedAt', 'at', 'from']);
  const all: readonly unknown[] = Array.isArray(pairs) ? pairs : [pair];
  return {
    name: nameIn(body),
    pairs: all.flatMap((one) => codeOf(one) ?? []),
    tester: codeOf(tester),
    at: at !== null && Number.isFinite(Date.parse(at)) ? at : null,
    distanceM: typeof distanceM === 'number' ? distanceM : null,
  };
};

const effectOf = (before: History | undefined, after: History): FileEffect => {
  if (after.head.erased) return 'erases-for-good';
  if (after.head === before?.head) return 'earlier';
  if (after.head.body === null) return before ? 'erases' : 'adds-erased';
  if (!before) return 'adds';
  if (before.head.body === null) return 'brings-back';
  const [was, is] = [nameIn(before.head.body), nameIn(after.head.body)];
  return was !== null && is !== null && was !== is ? 'renames' : 'changes';
};

/**
 * What these revisions would change in a log, the gravest first.
 * @param file all revisions of the file: they may name pairs and testers that the log does not hold
 */
export const changesByFile = (
  revisions: readonly Revision[],
  file: readonly Revision[],
  log: Log,
): readonly FileChange[] => {
  const codes = new Map<unknown, string>();
  for (const { id, body } of file) {
    const code = body && textIn(body, ['code']);
    if (code) codes.set(id, code);
  }
  const codeOf = (id: unknown): string | null => {
    const held = typeof id === 'string' ? lastBody(log.get(id as RecordId)) : null;
    return (held && textIn(held, ['code'])) ?? codes.get(id) ?? null;
  };
  const after = new Map<RecordId, History>();
  for (const revision of revisions) {
    const { id } = revision;
    after.set(id, addToHistory(after.get(id) ?? log.get(id), revision));
  }
  return [...after]
    .map(([id, history]): FileChange => {
      const before = log.get(id);
      const effect = effectOf(before, history);
      const was = lastBody(before);
      return {
        id,
        kind: history.head.kind,
        effect,
        label: labelOf(history.head.body ?? was ?? lastBody(history), codeOf),
        before: effect === 'renames' || effect === 'changes' ? labelOf(was, codeOf) : null,
      };
    })
    .sort((a, b) => fileEffects.indexOf(a.effect) - fileEffects.indexOf(b.effect));
};
