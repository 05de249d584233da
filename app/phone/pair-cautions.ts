/** What keeps a tester out of a pair in hand, and what did a lead answer? From the records on this phone. */
// By their files: the rest of that room is no part of the first page.
import { painStands } from '../../core/complaints/pain-stands.ts';
import { damageStands, type RecordId, type RecordOf } from '../../core/records/index.ts';
import type { HeldPair } from './own-mileage.ts';

export interface PairCautions {
  /** Whether the pair must not be worn for now. */
  readonly isOff: boolean;
  /** Runs whose pain stands, the latest first. */
  readonly pains: readonly RecordOf<'run'>[];
  /** Reports of damage that stand, the latest first. */
  readonly damages: readonly RecordOf<'damage-report'>[];
  /** The reply that stands about each of them. */
  readonly replies: ReadonlyMap<RecordId, RecordOf<'reply'>>;
  /** The latest "go on" about the pair, where it may be worn and no run was begun in it since. */
  readonly goOn: RecordOf<'reply'> | null;
}

const latestFirst = <T>(list: readonly T[], at: (one: T) => string): T[] =>
  [...list].sort((a, b) => Date.parse(at(b)) - Date.parse(at(a)));

/** @param replies the one that stands about each record */
export const cautionsOf = (
  { pair, told }: Pick<HeldPair, 'pair' | 'told'>,
  reports: readonly RecordOf<'damage-report'>[],
  replies: PairCautions['replies'],
): PairCautions => {
  const own = reports.filter(({ body }) => body.pair === pair.revision.id);
  const replyTo = ({ revision }: RecordOf<'run' | 'damage-report'>) =>
    replies.get(revision.id)?.body;
  const pains = latestFirst(
    told.filter((run) => painStands(run.body.pain, replyTo(run))),
    ({ body }) => body.startedAt,
  );
  const damages = latestFirst(
    own.filter((report) => damageStands(replyTo(report))),
    ({ body }) => body.at,
  );
  const lastRunMs = Math.max(...told.map(({ body }) => Date.parse(body.startedAt)));
  const goOn = [...told, ...own]
    .flatMap(({ revision }) => replies.get(revision.id) ?? [])
    .filter(({ body }) => body.advice === 'go-on' && !(Date.parse(body.at) < lastRunMs));
  const isOff = pains.length + damages.length > 0;
  return {
    isOff,
    pains,
    damages,
    replies,
    goOn: isOff ? null : (latestFirst(goOn, ({ body }) => body.at)[0] ?? null),
  };
};
