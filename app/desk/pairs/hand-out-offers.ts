/** Whom may a pair be handed to? Every tester, those first whom its size fits. Pure. */
import { ALLOWED_MM } from '../../../core/panel/index.ts';
import type { RecordId, RecordOf } from '../../../core/records/index.ts';
import { byCode } from '../../../core/review/index.ts';
import type { Millimetres } from '../../../core/units/index.ts';
import { footLengthOf } from '../plan/plan-work.ts';
import type { DeskRecords } from '../worker/desk-work.ts';

export interface Candidate {
  readonly tester: RecordOf<'tester'>;
  /** As the hand-out plan reads it: the size that fitted, the longer foot, else the last pair's size; null: none is known. */
  readonly footLengthMm: Millimetres | null;
}

/** Nearest in size first, then by code. */
export type Offers = Readonly<Record<'fits' | 'other-size' | 'size-unknown', readonly Candidate[]>>;

/** All testers, each with the length of their feet. */
export const candidatesOf = (
  records: Pick<DeskRecords, 'pair' | 'tester' | 'hand-out' | 'stop-use' | 'fit-trial'>,
): readonly Candidate[] =>
  records.tester
    .map((tester) => ({
      tester,
      footLengthMm: footLengthOf(tester.revision.id, tester.body, records),
    }))
    .sort((a, b) => byCode(a.tester.body, b.tester.body));

/** @param candidates by code */
export const offersFor = (sizeMm: Millimetres, candidates: readonly Candidate[]): Offers => {
  const off = ({ footLengthMm }: Candidate): number =>
    footLengthMm === null ? Infinity : Math.abs(footLengthMm - sizeMm);
  const nearest = [...candidates].sort((a, b) => (off(a) === off(b) ? 0 : off(a) - off(b)));
  return {
    fits: nearest.filter((one) => off(one) <= ALLOWED_MM),
    'other-size': nearest.filter((one) => off(one) > ALLOWED_MM && off(one) < Infinity),
    'size-unknown': nearest.filter((one) => off(one) === Infinity),
  };
};

/** Codes of the pairs that each tester has, and is about to get, to be seen beside their name. */
export const pairsInHands = (
  held: readonly { readonly code: string; readonly holder: RecordId | null }[],
): ReadonlyMap<RecordId, readonly string[]> => {
  const hands = new Map<RecordId, readonly string[]>();
  for (const { code, holder } of held)
    if (holder !== null) hands.set(holder, [...(hands.get(holder) ?? []), code]);
  return hands;
};
