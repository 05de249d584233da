/** Whose turn each finding of a project is. */
import type { RecordId } from '../records/index.ts';
import { proposalsTo, turnOf, type CarryingRound, type Turn } from '../talk/index.ts';
import { RUNS_FOR_OUTCOME } from './overview.ts';
import { ownRecords, type ProjectLog } from './project-log.ts';

const earliest = (times: readonly number[]): number | null =>
  times.reduce<number | null>((least, ms) => (least === null || ms < least ? ms : least), null);

/** How far each round is that carries a finding: since when it is out, and since when enough was worn. */
const carryingRounds = (log: ProjectLog): ReadonlyMap<RecordId, CarryingRound> =>
  new Map(
    log.rounds.map(({ revision: { id } }): [RecordId, CarryingRound] => {
      const pairs = log.pairs.filter(({ round }) => round === id);
      const runs = pairs.flatMap((pair) => pair.runs);
      const out = pairs.flatMap(({ spans }) =>
        spans.flatMap(({ fromMs }) => (fromMs <= log.nowMs ? [fromMs] : [])),
      );
      const asked = runs
        .filter(({ run }) => run.feet !== undefined)
        .map(({ endMs }) => endMs)
        .sort((a, b) => a - b);
      return [
        id,
        {
          outMs: earliest([...out, ...runs.map(({ startMs }) => startMs)]),
          enoughMs: asked[RUNS_FOR_OUTCOME - 1] ?? null,
        },
      ];
    }),
  );

/** By finding; those that are closed are nobody's turn and not in it. */
export const findingTurns = (log: ProjectLog): ReadonlyMap<RecordId, Turn> => {
  const { records, id } = log;
  const rounds = carryingRounds(log);
  const turns = new Map<RecordId, Turn>();
  for (const finding of ownRecords(records.finding, id)) {
    const standing = proposalsTo(finding.revision.id, records.proposal, records['proposal-reply']);
    const turn = turnOf(finding, standing, (round) => rounds.get(round) ?? null);
    if (turn) turns.set(finding.revision.id, turn);
  }
  return turns;
};
