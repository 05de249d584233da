/** A test as its tester's own phone knows it: what they ran in it, and whether it is over for them. */
import { loggedRun, withoutRepeats } from '../../../core/mileage/index.ts';
import type { RecordId, RecordOf } from '../../../core/records/index.ts';
import { isTestOver, testSummary, type TestSummary } from '../../../core/talk/index.ts';
import type { Store } from '../../store/index.ts';

export interface OwnTest {
  readonly project: RecordOf<'project'>;
  readonly isOver: boolean;
  readonly summary: TestSummary;
}

export interface OwnRecords {
  readonly projects: readonly RecordOf<'project'>[];
  readonly handOuts: readonly RecordOf<'hand-out'>[];
  readonly runs: readonly RecordOf<'run'>[];
  readonly thanks: readonly RecordOf<'thanks'>[];
}

/** Each project in which this tester ran, the one that they ran in last first. A phone may hold others' records as well. */
export const ownTests = (
  tester: RecordId,
  { projects, handOuts, runs, thanks }: OwnRecords,
  nowMs: number,
): readonly OwnTest[] => {
  const { counted } = withoutRepeats(
    runs.filter(({ body }) => body.tester === tester).map(loggedRun),
  );
  return projects
    .map((project): OwnTest => {
      const { id } = project.revision;
      const ofTest = <T extends { readonly body: { project: RecordId; tester: RecordId } }>(
        some: readonly T[],
      ) => some.filter(({ body }) => body.project === id && body.tester === tester);
      return {
        project,
        isOver: isTestOver(
          project.body,
          ofTest(handOuts).map(({ body }) => body),
          nowMs,
        ),
        summary: testSummary(
          counted.filter(({ run }) => run.project === id),
          ofTest(thanks),
        ),
      };
    })
    .filter(({ summary }) => summary.runs > 0)
    .sort((a, b) => (b.summary.untilMs ?? 0) - (a.summary.untilMs ?? 0));
};

export const TEST_KINDS = ['project', 'hand-out', 'run', 'thanks'] as const;

export const readOwnTests = async (
  from: Pick<Store, 'list'>,
  tester: RecordId,
  nowMs: number,
): Promise<readonly OwnTest[]> => {
  const [projects, handOuts, runs, thanks] = await Promise.all([
    from.list('project'),
    from.list('hand-out'),
    from.list('run'),
    from.list('thanks'),
  ]);
  return ownTests(tester, { projects, handOuts, runs, thanks }, nowMs);
};
