/** What the desk works on: the records but the runs, and the answers of its worker. */
import { signal } from '@preact/signals';
import { transferHandlers, wrap, type Remote } from 'comlink';
import { useEffect, useState } from 'preact/hooks';
import { kinds, type RecordId } from '../../core/records/index.ts';
import { isOutOfTolerance, type ReviewSummary, type Start } from '../../core/review/index.ts';
import { useStored } from '../parts/state.ts';
import { d } from '../words/index.ts';
import type { DeskAnswers, DeskRecords, DeskWork } from './worker/desk-work.ts';
import { inPieces } from './worker/in-pieces.ts';

transferHandlers.set('in-pieces', inPieces(false));

let worker: Remote<DeskWork> | null = null;
/** Why the worker does not answer, if it does not. */
const broken = signal<unknown>(null);

/** One worker for all of the desk, made when the desk is first opened. */
const work = (): Remote<DeskWork> => {
  if (worker) return worker;
  const made = new Worker(new URL('./worker/worker.ts', import.meta.url), { type: 'module' });
  made.addEventListener('error', ({ message }) => (broken.value = message));
  // A worker of a page that is put aside would keep the database (see `store/database.ts`). When the page is
  // shown again it reads the records anew, by a new worker.
  const end = ({ persisted }: PageTransitionEvent) => {
    if (!persisted) return;
    made.terminate();
    worker = null;
    window.removeEventListener('pagehide', end);
  };
  window.addEventListener('pagehide', end);
  return (worker = wrap<DeskWork>(made));
};

/** The project that is read without its pairs out of tolerance; null: all pairs are read. */
export const readInTolerance = signal<RecordId | null>(null);

/** Says at the desk that the worker does not answer. */
export const noteTrouble = (error: unknown): void => {
  broken.value = error;
};

/** What went wrong with the worker; null while all is well. */
export const workTrouble = (): unknown => broken.value;

/** All records of the group but the runs; null until they are read. */
export const useDeskRecords = (): DeskRecords | null =>
  useStored(
    () =>
      work()
        .read()
        .catch((error: unknown) => {
          noteTrouble(error);
          throw error;
        }),
    kinds,
  );

/**
 * The worker's answer to one question. While only the log has changed, or which pairs are read, the last answer
 * stays until the next is there; to another question nothing is answered until it is.
 * @param about what the question is about, other than the log
 */
export const useWork = <T>(
  ask: (work: Remote<DeskAnswers>) => Promise<T>,
  records: DeskRecords,
  about: readonly unknown[],
): T | null => {
  const only = readInTolerance.value !== null;
  const [answer, setAnswer] = useState<{ value: T; about: readonly unknown[] } | null>(null);
  useEffect(() => {
    let current = true;
    ask(answers(only)).then((value) => current && setAnswer({ value, about }), noteTrouble);
    return () => {
      current = false;
    };
    // `ask` is a new function at each drawing; what it depends on is named by the caller.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [records, only, ...about]);
  const fits = answer?.about.every((one, at) => one === about[at]);
  return answer && fits ? answer.value : null;
};

/** Comlink reaches into the worker's object by name, which its types take for a copy. */
const answers = (only: boolean): Remote<DeskAnswers> =>
  only ? (work().inTolerance as unknown as Remote<DeskAnswers>) : work();
/** One question to the worker that a person asked by a press. */
export const askWorker = <T>(ask: (work: Remote<DeskWork>) => Promise<T>): Promise<T> =>
  ask(work());

/** The review of a project as of now, null where it is not in the records; and how far it has come to its first run. */
export const useReview = (records: DeskRecords, project: RecordId) =>
  useWork(
    async (desk): Promise<{ review: ReviewSummary | null; start: Start | null }> => ({
      review: await desk.review(project),
      start: await askWorker((whole) => whole.start(project)),
    }),
    records,
    [project],
  );

/** What every tab of a project gets. */
export interface TabProps {
  readonly records: DeskRecords;
  readonly review: ReviewSummary;
}

/** What every place of a project gets; `rest` is what follows the place in the address. */
export interface PlaceProps extends TabProps {
  readonly rest: readonly string[];
}

/** Codes of pairs and testers and names of rounds, by id. */
interface Names {
  /** Without the mark: where it is said beside it. */
  readonly code: (id: string) => string;
  /** A pair out of tolerance is marked wherever it is named. */
  readonly pair: (id: string) => string;
  readonly tester: (id: RecordId | null) => string;
  readonly round: (id: RecordId) => string;
}

const findNames = (review: ReviewSummary, records: DeskRecords): Names => {
  const out = new Set([
    ...review.pairs.flatMap(({ id, outOfTolerance }) =>
      isOutOfTolerance(outOfTolerance) ? [id] : [],
    ),
    ...(review.without ?? []).map(({ id }) => id),
  ]);
  const pairs = new Map(records.pair.map(({ revision, body }) => [revision.id, body.code]));
  const code = (id: string) => pairs.get(id as RecordId) ?? '?';
  const testers = new Map(records.tester.map(({ revision, body }) => [revision.id, body.code]));
  const rounds = new Map(review.rounds.map(({ id, name }) => [id, name]));
  return {
    code,
    pair: (id) => (out.has(id as RecordId) ? `${code(id)} (${d().blueprint.mark})` : code(id)),
    tester: (id) => (id === null ? '' : (testers.get(id) ?? '?')),
    round: (id) => rounds.get(id) ?? '?',
  };
};

const known = new WeakMap<
  ReviewSummary,
  { readonly records: DeskRecords; readonly names: Names }
>();

/** Found once for each review: every row and line of a place asks for them, and there may be a thousand pairs. */
export const namesIn = (review: ReviewSummary, records: DeskRecords): Names => {
  const before = known.get(review);
  if (before?.records === records) return before.names;
  const names = findNames(review, records);
  known.set(review, { records, names });
  return names;
};
