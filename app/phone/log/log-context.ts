/** What the log screen needs to know of the pair, its tester and what was logged before. */
import * as z from 'zod/mini';
import type { RecordId, RecordOf } from '../../../core/records/index.ts';
import { surfaces as allSurfaces } from '../../../core/records/index.ts';
import { settings } from '../../parts/settings.ts';
import { store } from '../../parts/state.ts';
import { standingStop } from '../../../core/mileage/index.ts';
import { draftKey } from './draft-key.ts';
import { takeSharedTrack } from '../track/shared-track.ts';
import { onItsDay } from './run-day.ts';
import { emptyRunForm, formOfRun, runFormSchema, type RunForm } from '../../drafts/run.ts';

export const USUAL_SURFACE = 'usual-surface';

export interface Context {
  readonly pair: RecordOf<'pair'>;
  readonly project: RecordOf<'project'>;
  readonly before: RecordOf<'run'> | null;
  readonly stop: RecordOf<'stop-use'> | null;
  readonly handOuts: readonly RecordOf<'hand-out'>[];
  readonly firstImpression: boolean;
  readonly form: RunForm;
  /** The form as it stands before anything is typed. */
  readonly empty: RunForm;
  readonly hasDraft: boolean;
  /** A track that another app shared into this one. */
  readonly shared: File | null;
}

/** Everything the form needs, or null where the pair or run is not on this phone. */
export const readContext = async (
  pairId: RecordId | null,
  runId: RecordId | null,
): Promise<Context | null> => {
  const before = runId ? await store.get('run', runId) : null;
  const id = before?.body.pair ?? pairId;
  const pair = id ? await store.get('pair', id) : null;
  const project = pair ? await store.get('project', pair.body.project) : null;
  if (!pair || !project || (runId && !before)) return null;
  const [stops, handOuts, runs, usual, draft] = await Promise.all([
    store.list('stop-use'),
    store.list('hand-out'),
    store.list('run'),
    store.setting(USUAL_SURFACE),
    store.draft(draftKey(runId ?? pair.revision.id)),
  ]);
  const kept = z.safeParse(runFormSchema, draft);
  const surface = allSurfaces.find((one) => one === usual) ?? null;
  const empty = before
    ? formOfRun(before.body, settings.value)
    : emptyRunForm(pair.revision.id, surface);
  return {
    pair,
    project,
    before,
    stop: standingStop(stops, pair.revision.id, Date.now()),
    handOuts,
    firstImpression: !runs.some(({ body }) => body.pair === pair.revision.id),
    empty,
    form: kept.success ? onItsDay(kept.data, Date.now()) : empty,
    hasDraft: kept.success,
    shared: runId ? null : takeSharedTrack(),
  };
};
