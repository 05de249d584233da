/** Which shoes need their lead today? In the order: somebody may be hurt, something comes apart, all else that waits. */
import type { NextStep } from '../review/index.ts';
import type { Claim } from './stamp.ts';
import type { SheetHeadline } from './sheet.ts';

export interface ShoeState {
  readonly headline: Pick<SheetHeadline, 'case'>;
  readonly next: readonly Pick<NextStep, 'step'>[];
}

/** The smaller, the sooner: 0 pain, 1 damage or a notice that was not read, 2 anything to do, 3 nothing. */
export const urgencyOf = ({ headline, next }: ShoeState): number =>
  headline.case === 'pain'
    ? 0
    : headline.case === 'damage' || next.some(({ step }) => step === 'reach-about-stop-use')
      ? 1
      : next.length > 0
        ? 2
        : 3;

export type ShoesHeadline = { readonly claims: Claim } & (
  | { readonly case: 'none' }
  /** Pain or damage: names of the shoes, most urgent first. */
  | { readonly case: 'urgent'; readonly names: readonly string[] }
  | { readonly case: 'waiting'; readonly count: number; readonly of: number }
  | { readonly case: 'quiet'; readonly of: number }
);

/** What the list of all shoes says first. */
export const shoesHeadline = (
  shoes: readonly (ShoeState & { readonly name: string })[],
): ShoesHeadline => {
  if (shoes.length === 0) return { case: 'none', claims: 'nothing' };
  const sorted = shoes.toSorted((a, b) => urgencyOf(a) - urgencyOf(b));
  const urgent = sorted.filter((one) => urgencyOf(one) <= 1);
  if (urgent.length > 0)
    return { case: 'urgent', claims: 'nothing', names: urgent.map(({ name }) => name) };
  const count = sorted.filter((one) => urgencyOf(one) === 2).length;
  return count > 0
    ? { case: 'waiting', claims: 'nothing', count, of: shoes.length }
    : { case: 'quiet', claims: 'nothing', of: shoes.length };
};
