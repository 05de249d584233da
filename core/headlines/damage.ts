/** What of a report of damage waits for the lead, in one sentence? */
import type { RecordId } from '../records/index.ts';
import type { Review } from '../review/index.ts';
import type { Claim } from './stamp.ts';

export interface DamageHeadline {
  readonly claims: Claim;
  /** `stands`: not answered; `out`: the lead said to stay out; `settled`: the pair may be worn again. */
  readonly case: 'stands' | 'out' | 'settled';
  readonly pair: RecordId;
  readonly what: Review['damages'][number]['what'];
}

export const damageHeadline = ({
  pair,
  what,
  stands,
  answer,
}: Pick<Review['damages'][number], 'pair' | 'what' | 'stands' | 'answer'>): DamageHeadline => ({
  claims: 'nothing',
  case: stands ? (answer ? 'out' : 'stands') : 'settled',
  pair,
  what,
});
