/** Which of a tester's own runs told what a thank-you is about? */
import type { Foot, RecordId, RecordOf } from '../../../core/records/index.ts';
import { latestThanks } from '../../../core/talk/index.ts';

type RunRecord = RecordOf<'run'>;

/** The thanks for something that these runs of the same tester report. */
export const thanksFor = (
  thanks: readonly RecordOf<'thanks'>[],
  runs: readonly RunRecord[],
  tester: RecordId,
): readonly RecordOf<'thanks'>[] => {
  const told = new Set(
    runs.flatMap(({ body }) =>
      body.tester === tester && body.feet?.answer === 'complaints'
        ? body.feet.complaints.map(({ zone, kind }) => `${body.project} ${zone} ${kind}`)
        : [],
    ),
  );
  return latestThanks(thanks.filter(({ body }) => body.tester === tester)).filter(({ body }) =>
    told.has(`${body.project} ${body.zone} ${body.kind}`),
  );
};

/** The feet on which the tester told it; both where no run of this phone says which. */
export const feetTold = (
  runs: readonly RunRecord[],
  { tester, project, zone, kind }: RecordOf<'thanks'>['body'],
): readonly Foot[] => {
  const told = new Set(
    runs.flatMap(({ body }) =>
      body.tester === tester && body.project === project && body.feet?.answer === 'complaints'
        ? body.feet.complaints.flatMap((one) =>
            one.zone === zone && one.kind === kind ? [one.foot] : [],
          )
        : [],
    ),
  );
  const both = ['left', 'right'] as const;
  return told.size === 0 ? both : both.filter((foot) => told.has(foot));
};
