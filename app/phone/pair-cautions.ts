/** What is said on the card of a pair of pain and damage: what stands, latest first, and the lead's last "go on". */
import type { RecordOf } from '../../core/records/index.ts';
import { damageThatStands, painsThatStand, type PairCautions } from './pair-off.ts';

export interface ShownCautions {
  readonly pains: readonly RecordOf<'run'>[];
  readonly damages: readonly RecordOf<'damage-report'>[];
  /** Where the pair may be worn: the latest "go on" about it, until a run was begun since. */
  readonly goOn: RecordOf<'reply'> | null;
}

const latestFirst = <T>(list: readonly T[], at: (one: T) => string): T[] =>
  [...list].sort((a, b) => Date.parse(at(b)) - Date.parse(at(a)));

export const shownCautions = (told: PairCautions): ShownCautions => {
  const { runs, reports, replies } = told;
  const pains = latestFirst(painsThatStand(told), ({ body }) => body.startedAt);
  const damages = latestFirst(damageThatStands(told), ({ body }) => body.at);
  const lastRunMs = Math.max(...runs.map(({ body }) => Date.parse(body.startedAt)));
  const goOns = [...runs, ...reports]
    .flatMap(({ revision }) => replies.get(revision.id) ?? [])
    .filter(({ body }) => body.advice === 'go-on' && !(Date.parse(body.at) < lastRunMs));
  const isOff = pains.length + damages.length > 0;
  return {
    pains,
    damages,
    goOn: isOff ? null : (latestFirst(goOns, ({ body }) => body.at)[0] ?? null),
  };
};
