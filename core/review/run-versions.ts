/** What changed in a run from one saved version to the next, who saved it, and when? */
import { readBody, stampParts, type History, type Run } from '../records/index.ts';

/** The fields of a run that a person can change. */
export const runFields = [
  'pair',
  'startedAt',
  'distanceM',
  'durationS',
  'surfaces',
  'ground',
  'temperatureC',
  'sock',
  'comfort',
  'comfort2',
  'feet',
  'pain',
  'words',
  'photos',
  'track',
  'wornDespiteStop',
] as const satisfies readonly (keyof Run)[];
export type RunField = (typeof runFields)[number];

export interface RunVersion {
  /** When it was saved, milliseconds since 1970, by the clock of who saved it. */
  readonly savedMs: number;
  /** The member who saved it. */
  readonly author: string;
  /** Null: it was erased, or this version of the app cannot read it. */
  readonly run: Run | null;
  readonly erased: boolean;
  /** Against the version before it; empty for the first, and after one that cannot be read. */
  readonly changed: readonly RunField[];
  /** The version before it that can be read. */
  readonly previous: Run | null;
}

/** A value with the names of its fields in order, so that what is equal reads equal. */
const inOrder = (value: unknown): unknown =>
  Array.isArray(value)
    ? value.map(inOrder)
    : value !== null && typeof value === 'object'
      ? Object.entries(value)
          .sort(([a], [b]) => (a < b ? -1 : 1))
          .map(([name, part]) => [name, inOrder(part)])
      : value;

const isSame = (a: unknown, b: unknown): boolean =>
  JSON.stringify(inOrder(a)) === JSON.stringify(inOrder(b));

/** The fields in which two versions differ. */
export const changedFields = (before: Run, after: Run): readonly RunField[] =>
  runFields.filter((field) => !isSame(before[field], after[field]));

/** Every version of a run, the latest first. */
export const versionsOf = ({ head, older }: History): readonly RunVersion[] => {
  let previous: Run | null = null;
  const versions: RunVersion[] = [];
  for (const { stamp, author, body } of [...older, head]) {
    const read = body === null ? null : readBody('run', body);
    const run = read?.ok ? read.body : null;
    versions.push({
      savedMs: stampParts(stamp).ms,
      author,
      run,
      erased: body === null,
      changed: run && previous ? changedFields(previous, run) : [],
      previous,
    });
    previous = run ?? previous;
  }
  return versions.reverse();
};
