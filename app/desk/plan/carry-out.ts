/** Saves what a plan asks of the hand-outs, and how that is taken back. */
import type { HandOut, RecordId, RecordOf } from '../../../core/records/index.ts';
import { store } from '../../parts/state.ts';
import type { Settled } from './settle-plan.ts';

export interface CarriedOut {
  /** How many hand-outs could not be saved. */
  readonly failed: number;
  /** Puts everything back as it was; answers whether all of it could be. */
  readonly undo: () => Promise<boolean>;
}

/** Ends what ends and drops what is dropped first: no pair is in two hands in between. */
export const carryOut = async (
  { give, change, drop }: Settled,
  handOuts: readonly RecordOf<'hand-out'>[],
): Promise<CarriedOut> => {
  const before = new Map(handOuts.map(({ body, revision }) => [revision.id, body]));
  const touched: { readonly id: RecordId; readonly body: HandOut }[] = [];
  const made: RecordId[] = [];
  let failed = 0;
  const touch = async (id: RecordId, act: () => Promise<{ readonly ok: boolean }>) => {
    const body = before.get(id);
    if ((await act()).ok && body) touched.push({ id, body });
    else failed++;
  };
  for (const { id, body } of change) await touch(id, () => store.save('hand-out', body, id));
  for (const id of drop) await touch(id, () => store.erase(id));
  for (const body of give) {
    const saved = await store.save('hand-out', body);
    if (saved.ok) made.push(saved.value.revision.id);
    else failed++;
  }
  return {
    failed,
    undo: async () => {
      let left = 0;
      for (const id of made) if (!(await store.erase(id)).ok) left++;
      for (const { id, body } of touched) if (!(await store.save('hand-out', body, id)).ok) left++;
      return left === 0;
    },
  };
};
