/** What do the runs of a test ask of its lead, in one sentence? Who may be hurt first, then what waits, then what is odd. */
import type { RecordId } from '../records/index.ts';
import type { Review } from '../review/index.ts';
import type { Claim } from './stamp.ts';

export type RunsHeadline = { readonly claims: Claim } & (
  | { readonly case: 'none' }
  /** Pain that stands: each tester once, the latest first. */
  | { readonly case: 'pain'; readonly testers: readonly RecordId[]; readonly unanswered: boolean }
  | { readonly case: 'damage'; readonly pairs: readonly RecordId[] }
  | { readonly case: 'waiting'; readonly entries: number; readonly runs: number }
  | { readonly case: 'odd'; readonly odd: number; readonly runs: number }
  | { readonly case: 'quiet'; readonly runs: number }
);

export interface RunsFacts {
  readonly review: Pick<Review, 'pains' | 'damages' | 'oddities'> & {
    readonly pairs: readonly Pick<Review['pairs'][number], 'id' | 'stopUse'>[];
    readonly size: Pick<Review['size'], 'runs'>;
    readonly waiting: readonly Pick<Review['waiting'][number], 'about'>[];
  };
}

/**
 * Damage that still needs its lead. Nobody runs in a pair that was stopped: it is settled, and the sheet does not ask
 * about it either.
 */
export const damagesToAnswer = <D extends Pick<Review['damages'][number], 'pair' | 'stands'>>(
  damages: readonly D[],
  pairs: RunsFacts['review']['pairs'],
): readonly D[] => {
  const stopped = new Set(pairs.filter(({ stopUse }) => stopUse).map(({ id }) => id));
  return damages.filter(({ pair, stands }) => stands && !stopped.has(pair));
};

/** @returns the case; pain and damage that a lead has answered are asked about after those that nobody answered */
export const runsHeadline = ({ review }: RunsFacts): RunsHeadline => {
  const { pains, damages, waiting, oddities, size } = review;
  const hurts = pains.filter(({ stands }) => stands);
  const open = hurts.filter(({ answer }) => answer === null);
  if (open.length > 0)
    return {
      case: 'pain',
      claims: 'nothing',
      testers: [...new Set(open.map(({ tester }) => tester))],
      unanswered: true,
    };
  const broken = damagesToAnswer(damages, review.pairs).filter(({ answer }) => answer === null);
  if (broken.length > 0)
    return {
      case: 'damage',
      claims: 'nothing',
      pairs: [...new Set(broken.map(({ pair }) => pair))],
    };
  if (waiting.length > 0)
    return {
      case: 'waiting',
      claims: 'nothing',
      entries: waiting.length,
      runs: waiting.filter(({ about }) => about === 'run').length,
    };
  if (hurts.length > 0)
    return {
      case: 'pain',
      claims: 'nothing',
      testers: [...new Set(hurts.map(({ tester }) => tester))],
      unanswered: false,
    };
  const odd = new Set(oddities.map(({ run }) => run)).size;
  if (odd > 0) return { case: 'odd', claims: 'nothing', odd, runs: size.runs };
  return size.runs === 0
    ? { case: 'none', claims: 'nothing' }
    : { case: 'quiet', claims: 'nothing', runs: size.runs };
};

export type WaitingHeadline = { readonly claims: Claim } & (
  | { readonly case: 'nothing'; readonly aside: number }
  /** In no figure until a lead decides. */
  | { readonly case: 'out'; readonly runs: number; readonly readings: number }
  /** Odd, but in the figures meanwhile. */
  | { readonly case: 'meanwhile'; readonly entries: number }
);

export interface WaitingFacts {
  readonly waiting: readonly Pick<Review['waiting'][number], 'about' | 'counts'>[];
  readonly decided: readonly Pick<Review['decided'][number], 'ruling'>[];
}

/** What the list of open decisions says first. */
export const waitingHeadline = ({ waiting, decided }: WaitingFacts): WaitingHeadline => {
  const out = waiting.filter(({ counts }) => !counts);
  if (out.length > 0) {
    const runs = out.filter(({ about }) => about === 'run').length;
    return { case: 'out', claims: 'nothing', runs, readings: out.length - runs };
  }
  return waiting.length > 0
    ? { case: 'meanwhile', claims: 'nothing', entries: waiting.length }
    : {
        case: 'nothing',
        claims: 'nothing',
        aside: decided.filter(({ ruling }) => ruling === 'set-aside').length,
      };
};
