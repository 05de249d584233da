/** What can be done to records on this device, apart from reading them. */
import type { Body, BodyOf, Kind, RecordId, RecordOf, Revision } from '../../core/records/index.ts';
import type { Outcome, SaveProblem } from './outcome.ts';

export interface RecordWriter {
  /** Names a record before it is saved, where another must name it. */
  newId(): RecordId;
  /**
   * Saves a new record, or an edit of `id`, with the photos that it shows, all or nothing. "Saved" may be
   * shown once it resolves with ok.
   */
  save<K extends Kind>(
    kind: K,
    body: BodyOf<K>,
    id?: RecordId,
  ): Promise<Outcome<RecordOf<K>, SaveProblem>>;
  /**
   * Saves many records that show no photos, and takes others out of the current state, all or nothing; the answers stand
   * in the order of the drafts.
   */
  saveAll(drafts: readonly ManyDraft[]): Promise<Outcome<readonly Revision[], SaveProblem>>;
  /** Takes the record out of the current state; `restore` brings it back. */
  erase(id: RecordId): Promise<Outcome<void, SaveProblem>>;
  restore(id: RecordId): Promise<Outcome<void, SaveProblem>>;
  /** Takes the record, its photos and the quotes of it back for good, wherever they went. */
  eraseForGood(id: RecordId): Promise<Outcome<void, SaveProblem>>;
}

/** One record of many: a new one, an edit of `id`, or, without a body, the end of its current state. */
export type ManyDraft =
  | { readonly kind: Kind; readonly body: Body; readonly id?: RecordId }
  | { readonly id: RecordId; readonly body: null };
