/** Does the panel answer steadily, and whom should the lead ask what? */
import {
  LEAST_LOGS,
  panelAgreement,
  panelQuestions,
  sessionError,
  type AgreementAnswer,
  type PanelQuestionToAsk,
  type PanelScore,
  type TesterLogs,
} from '../panel/index.ts';
import { stampParts, type RecordId, type Revision } from '../records/index.ts';
import { groupBy, type Repeatability } from '../statistics/index.ts';
import { byCode } from './by-code.ts';
import type { ProjectLog } from './project-log.ts';

export interface PanelCheck {
  readonly agreement: AgreementAnswer;
  /** Null: no tester scored the same pair twice. */
  readonly sessionError: Repeatability | null;
  /** By code of the tester. Questions, not marks. */
  readonly questions: readonly PanelQuestionToAsk[];
  /** Testers with at least one run, and those with enough logs for the questions. */
  readonly testers: number;
  readonly testersEnough: number;
}

const HOUR_MS = 3_600_000;

/**
 * When the record was first written, by its device's clock. The stamp of the first revision says it; where only a
 * later one is at hand, the record's id does, which is made in the same moment (UUIDv7).
 */
const firstWrittenMs = ({ id, prev, stamp }: Revision): number =>
  prev === null ? stampParts(stamp).ms : Number.parseInt(id.replace('-', '').slice(0, 12), 16);

/** Checks the panel of a project over all of its runs that count; first wearings are left out of the scores. */
export const checkPanel = (log: ProjectLog): PanelCheck => {
  const roundOf = new Map(log.pairs.map(({ id, round }) => [id, round]));
  const revisions = new Map(log.records.run.map(({ revision }) => [revision.id, revision]));
  const codes = new Map(log.records.tester.map(({ revision, body }) => [revision.id, body.code]));
  const scores: PanelScore[] = [];
  const byTester = [...groupBy(log.counted, ({ tester }) => tester)]
    .map(([tester, runs]) => ({ tester, runs, code: codes.get(tester) ?? '' }))
    .sort(byCode);
  const logs = byTester.map(({ tester, runs }): TesterLogs => {
    const cells = new Map<string, number[]>();
    const overall: number[] = [];
    const delaysH: number[] = [];
    for (const { id, pair, endMs, run } of runs) {
      const revision = revisions.get(id);
      // What somebody else typed in for the tester says nothing of the tester's habits.
      if (revision?.author === tester) delaysH.push((firstWrittenMs(revision) - endMs) / HOUR_MS);
      const round = roundOf.get(pair);
      if (round === undefined || !run.comfort || run.firstImpression) continue;
      for (const [attribute, score] of Object.entries(run.comfort)) {
        const cell = `${round} ${attribute}`;
        cells.set(cell, [...(cells.get(cell) ?? []), score]);
      }
      const { overall: score } = run.comfort;
      if (score === undefined) continue;
      overall.push(score);
      scores.push({ tester, round, pair, score });
    }
    const answered = runs.filter(({ run }) => run.feet);
    return {
      tester,
      overall,
      asked: answered.length,
      reported: answered.filter(({ run }) => run.feet?.answer === 'complaints').length,
      delaysH,
      profile: new Map(
        [...cells].map(([cell, own]) => [cell, own.reduce((a, b) => a + b, 0) / own.length]),
      ),
    };
  });
  return {
    agreement: panelAgreement(
      scores,
      log.rounds.map(({ revision }): RecordId => revision.id),
    ),
    sessionError: sessionError(scores),
    questions: panelQuestions(logs),
    testers: logs.length,
    testersEnough: logs.filter(
      ({ overall, asked }) => Math.max(overall.length, asked) >= LEAST_LOGS,
    ).length,
  };
};
