/** Who wears what when, and what is to be done about it now? In one sentence, by rule. */
import type { RecordId } from '../records/index.ts';
import type { Claim } from './stamp.ts';

export interface PlanFacts {
  /** Of the project, and testers of the group. */
  readonly pairs: number;
  readonly testers: number;
  /** The plan that is looked at; null: none. */
  readonly plan: null | {
    readonly rounds: readonly RecordId[];
    /** Who wears a pair in it. */
    readonly wearers: number;
    /** Pairs of it in hands now. */
    readonly out: number;
    /** Places that should have begun, and nothing was handed out for them. */
    readonly late: number;
    readonly lateSinceMs: number | null;
    /** Places to come that are not agreed yet. */
    readonly open: number;
    /** The next day on which pairs of it go out; null: none does any more. */
    readonly nextMs: number | null;
    readonly next: number;
    readonly endMs: number;
    readonly isOver: boolean;
  };
}

export type PlanHeadline = { readonly claims: Claim } & (
  | { readonly case: 'no-pairs' }
  | { readonly case: 'no-testers' }
  | { readonly case: 'none'; readonly pairs: number; readonly testers: number }
  | { readonly case: 'late'; readonly pairs: number; readonly sinceMs: number }
  | { readonly case: 'to-agree'; readonly wearers: number; readonly rounds: readonly RecordId[] }
  | { readonly case: 'next'; readonly pairs: number; readonly atMs: number }
  | { readonly case: 'running'; readonly out: number; readonly endMs: number }
  | { readonly case: 'over'; readonly out: number; readonly endMs: number }
);

/** What the plan says first. */
export const planHeadline = ({ pairs, testers, plan }: PlanFacts): PlanHeadline => {
  const claims = 'nothing';
  if (plan === null) {
    if (pairs === 0) return { case: 'no-pairs', claims };
    return testers === 0
      ? { case: 'no-testers', claims }
      : { case: 'none', claims, pairs, testers };
  }
  const { out, endMs } = plan;
  if (plan.isOver) return { case: 'over', claims, out, endMs };
  if (plan.lateSinceMs !== null)
    return { case: 'late', claims, pairs: plan.late, sinceMs: plan.lateSinceMs };
  if (plan.open > 0)
    return { case: 'to-agree', claims, wearers: plan.wearers, rounds: plan.rounds };
  return plan.nextMs === null
    ? { case: 'running', claims, out, endMs }
    : { case: 'next', claims, pairs: plan.next, atMs: plan.nextMs };
};
