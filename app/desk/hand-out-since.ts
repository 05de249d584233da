/** From when may a hand-out be noted? */
import type { RecordId, RecordOf } from '../../core/records/index.ts';
import { toInstant, toLocalMinute } from '../parts/instant.ts';

export type SinceTrouble =
  | { readonly why: 'missing' }
  | { readonly why: 'not-yet' }
  /** An earlier hand-out of the pair lasted until then. */
  | { readonly why: 'held'; readonly untilMs: number };

/** When each hand-out of the pair that is over came back, the latest last. */
const returnsOf = (handOuts: readonly RecordOf<'hand-out'>[], pair: RecordId): readonly number[] =>
  handOuts
    .flatMap(({ body }) =>
      body.pair === pair && body.until !== undefined ? [Date.parse(body.until)] : [],
    )
    .sort((a, b) => a - b);

/**
 * Why a pair cannot have been handed out at an instant; null where it can.
 * @param fromMs not a number where nothing readable was typed
 */
export const sinceTrouble = (
  handOuts: readonly RecordOf<'hand-out'>[],
  pair: RecordId,
  fromMs: number,
  nowMs: number,
): SinceTrouble | null => {
  if (Number.isNaN(fromMs)) return { why: 'missing' };
  if (fromMs > nowMs) return { why: 'not-yet' };
  const untilMs = returnsOf(handOuts, pair).at(-1);
  return untilMs !== undefined && fromMs < untilMs ? { why: 'held', untilMs } : null;
};

/**
 * The instant of a hand-out whose date and time were shown to be changed, or null where nothing readable was typed. What
 * still stands as shown is the stored instant: the field has no seconds.
 */
export const sinceInstant = (typed: string, stored: string): string | null => {
  if (typed === toLocalMinute(stored)) return stored;
  const ms = new Date(typed).getTime();
  return Number.isNaN(ms) ? null : toInstant(ms);
};
