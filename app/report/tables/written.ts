/** What is written down of a project: its log and the figures of its review. */
import type {
  FeetLook,
  PanelCheck,
  ProjectLog,
  ReportedFinding,
  Review,
  RoundReport,
} from '../../../core/review/index.ts';

export interface Written {
  readonly log: ProjectLog;
  readonly review: Review;
  /** One for each round, in their order. */
  readonly reports: readonly RoundReport[];
  readonly findings: readonly ReportedFinding[];
  readonly feet: FeetLook;
  readonly panel: PanelCheck;
}

/** The names that tables use for ids; empty for what is not in the log. */
export interface Names {
  readonly round: (id: string | undefined) => string;
  readonly pair: (id: string | undefined) => string;
  readonly tester: (id: string | undefined) => string;
}

const namedBy = (names: ReadonlyMap<string, string>) => (id: string | undefined) =>
  names.get(id ?? '') ?? '';

export const namesOf = ({ review, log }: Pick<Written, 'review' | 'log'>): Names => ({
  round: namedBy(new Map(review.rounds.map(({ id, name }) => [id, name]))),
  pair: namedBy(new Map(log.records.pair.map(({ revision, body }) => [revision.id, body.code]))),
  tester: namedBy(
    new Map(log.records.tester.map(({ revision, body }) => [revision.id, body.code])),
  ),
});
