/**
 * Which of the six steps to a shoe's first run are done, and which is next? Read from the records each time and stored
 * nowhere, so that a test can be set up in any order, by several leads, and left at any point.
 */
import { unheardOf } from './overview.ts';
import { ownRecords, type ProjectLog } from './project-log.ts';

/** In the order in which each needs what the one before left. */
export const startSteps = ['brief', 'round', 'pairs', 'testers', 'plan', 'invites'] as const;
export type StartStep = (typeof startSteps)[number];

export interface Start {
  readonly done: Readonly<Record<StartStep, boolean>>;
  readonly counts: {
    readonly rounds: number;
    readonly pairs: number;
    /** Of the group: they may have come with another shoe. */
    readonly testers: number;
    /** Hand-outs of the shoe's pairs, begun or on a day to come. */
    readonly handOuts: number;
    /** Testers of whom nothing has come yet. */
    readonly unheard: number;
  };
  /** A plan is drawn, and nothing is handed out by it or by hand. */
  readonly drawn: boolean;
}

/** @returns null once a run is logged, whether or not it counts, and for a shoe that is put away */
export const startOf = (log: ProjectLog): Start | null => {
  const { id, project, records, rounds, pairs } = log;
  if (log.everyRun.length > 0 || project.archived !== undefined) return null;
  const handOuts = ownRecords(records['hand-out'], id).length;
  const unheard = unheardOf(log).length;
  const counts = {
    rounds: rounds.length,
    pairs: pairs.length,
    testers: records.tester.length,
    handOuts,
    unheard,
  };
  return {
    done: {
      brief: true,
      round: counts.rounds > 0,
      pairs: counts.pairs > 0,
      testers: counts.testers > 0,
      plan: handOuts > 0,
      // Who joined is known to the hub alone; the records know of whom something came.
      invites: handOuts > 0 && unheard === 0,
    },
    counts,
    drawn: handOuts === 0 && ownRecords(records['hand-out-plan'], id).length > 0,
  };
};

/** What a step cannot do without; testers may come before everything else. */
const needs: Readonly<Record<StartStep, readonly StartStep[]>> = {
  brief: [],
  round: ['brief'],
  pairs: ['round'],
  testers: [],
  plan: ['pairs', 'testers'],
  invites: ['testers'],
};

/** Whether a step can be done now. */
export const isReady = ({ done }: Pick<Start, 'done'>, step: StartStep): boolean =>
  needs[step].every((one) => done[one]);

/**
 * The first step that is not done.
 * @param saved a step whose record was saved just now, and that the log does not know of yet
 * @returns null where all are done: the first run is still to come
 */
export const nextStep = (
  { done }: Pick<Start, 'done'>,
  saved: StartStep | null = null,
): StartStep | null => startSteps.find((step) => !done[step] && step !== saved) ?? null;
