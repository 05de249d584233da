/**
 * Whom does a lead owe a word of what came of their complaint, and may they have it yet?
 *
 * Due when a round carries the finding, and when its outcome is judged; to each tester who reported that complaint in
 * the finding's round. It waits while a blind hand-out of the project is open or planned for that tester: it tells that
 * something was changed.
 */
import { placeSpan } from '../panel/index.ts';
import type {
  Change,
  ChangeVerdict,
  RecordId,
  RecordOf,
  StructuredChange,
  Thanks,
  ThanksResult,
} from '../records/index.ts';
import { acceptedOf, offeredChange, proposalsTo } from '../talk/index.ts';
import { ownRecords, type ProjectLog } from './project-log.ts';

/** Why it may not be sent yet. */
export interface Withheld {
  readonly why: 'blind-open' | 'blind-planned';
  /** When that ends, milliseconds since 1970; null: nobody said. */
  readonly untilMs: number | null;
}

export interface ThanksDue {
  readonly tester: RecordId;
  readonly finding: RecordId;
  readonly result: ThanksResult;
  readonly zone: NonNullable<Thanks['zone']>;
  readonly kind: NonNullable<Thanks['kind']>;
  /** Runs in which this tester reported it. */
  readonly runs: number;
  /** What the round carries because of it, where that is structured. */
  readonly change: StructuredChange | null;
  /** Null: it may be sent, if the lead says so. */
  readonly withheld: Withheld | null;
}

/** A verdict that says nothing yet is no result. */
const resultOf: Readonly<Record<ChangeVerdict, ThanksResult | null>> = {
  mended: 'mended',
  better: 'better',
  'no-different': 'no-different',
  worse: 'worse',
  'too-little': null,
};

/** What there is to tell of a finding now; null: nothing. */
const tellable = ({ body }: RecordOf<'finding'>): ThanksResult | null =>
  (body.outcome ? resultOf[body.outcome.verdict] : null) ??
  (body.carriedBy === undefined ? null : 'carried');

/** The plan that holds: the latest of the project. */
const latestPlan = (log: ProjectLog): RecordOf<'hand-out-plan'>['body'] | null =>
  ownRecords(log.records['hand-out-plan'], log.id).reduce<RecordOf<'hand-out-plan'> | null>(
    (best, one) => (!best || Date.parse(one.body.at) > Date.parse(best.body.at) ? one : best),
    null,
  )?.body ?? null;

/**
 * Whether a tester must not hear yet that something was changed, and why.
 * @param log of the project
 */
export const withheldFrom = (log: ProjectLog, tester: RecordId): Withheld | null => {
  const blind = ownRecords(log.records['hand-out'], log.id)
    .filter(({ body }) => body.tester === tester && body.blind)
    .map(({ body }) => ({
      fromMs: Date.parse(body.from),
      untilMs: body.until === undefined ? Infinity : Date.parse(body.until),
    }))
    .filter(({ untilMs }) => untilMs > log.nowMs);
  const plan = latestPlan(log);
  const out = plan?.testers.find((one) => one.tester === tester)?.droppedOutAt ?? Infinity;
  const planned = (plan?.places ?? [])
    .filter((place) => place.tester === tester && place.period < out)
    .map((place) => placeSpan(plan as NonNullable<typeof plan>, place))
    .filter(({ untilMs }) => untilMs > log.nowMs);
  const all = [...blind, ...planned];
  if (all.length === 0) return null;
  const untilMs = Math.max(...all.map((one) => one.untilMs));
  return {
    why: blind.some(({ fromMs }) => fromMs <= log.nowMs) ? 'blind-open' : 'blind-planned',
    untilMs: Number.isFinite(untilMs) ? untilMs : null,
  };
};

/** Runs by tester that reported the finding's complaint in its round. */
const reportersOf = (
  log: ProjectLog,
  round: RecordId,
  zone: string,
  kind: string,
): ReadonlyMap<RecordId, number> => {
  const reporters = new Map<RecordId, number>();
  for (const pair of log.pairs) {
    if (pair.round !== round) continue;
    for (const { tester, run } of pair.runs)
      if (
        run.feet?.answer === 'complaints' &&
        run.feet.complaints.some((one) => one.zone === zone && one.kind === kind)
      )
        reporters.set(tester, (reporters.get(tester) ?? 0) + 1);
  }
  return reporters;
};

const structuredChangeOf = (
  log: ProjectLog,
  finding: RecordOf<'finding'>,
): StructuredChange | null => {
  const { id } = finding.revision;
  const { records } = log;
  const carrying = log.rounds.find(({ revision }) => revision.id === finding.body.carriedBy);
  const carried = carrying?.body.changes.find((one) => one.finding === id)?.structured;
  if (carried) return carried;
  const accepted = acceptedOf(proposalsTo(id, records.proposal, records['proposal-reply']));
  return accepted && offeredChange(finding.body, accepted.body);
};

/** Whether a tester may be told, worked out once for each. */
const withheldIn = (log: ProjectLog): ((tester: RecordId) => Withheld | null) => {
  const known = new Map<RecordId, Withheld | null>();
  return (tester) => {
    const before = known.get(tester);
    if (before !== undefined) return before;
    const found = withheldFrom(log, tester);
    known.set(tester, found);
    return found;
  };
};

/** Those to whom it is due and was not sent, of these findings; in each the tester who reported it most first. */
const dueOf = (log: ProjectLog, findings: readonly RecordOf<'finding'>[]): readonly ThanksDue[] => {
  const sent = new Set(
    ownRecords(log.records.thanks, log.id).map(
      ({ body }) => `${body.tester} ${body.finding} ${body.result}`,
    ),
  );
  const here = new Set<RecordId>(log.records.tester.map(({ revision }) => revision.id));
  const withheld = withheldIn(log);
  return findings.flatMap((finding) => {
    const { zone, kind, round } = finding.body;
    const result = tellable(finding);
    if (!zone || !kind || !result) return [];
    const change = structuredChangeOf(log, finding);
    return [...reportersOf(log, round, zone, kind)]
      .filter(
        ([tester]) => here.has(tester) && !sent.has(`${tester} ${finding.revision.id} ${result}`),
      )
      .sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1))
      .map(([tester, runs]) => ({
        ...{ tester, finding: finding.revision.id, result, zone, kind, runs, change },
        withheld: withheld(tester),
      }));
  });
};

/** Whether the lead wants testers to hear what came of their reports; nothing is sent without a press in any case. */
export const tellsTesters = ({ project }: Pick<ProjectLog, 'project'>): boolean =>
  project.brief.tellTesters !== false;

/** What the lead is offered to send: nothing where the brief says that testers are not told. */
export const thanksDue = (log: ProjectLog): readonly ThanksDue[] =>
  tellsTesters(log) ? dueOf(log, ownRecords(log.records.finding, log.id)) : [];

/** One finding, for the page on which its thanks are sent. */
export interface ThanksLook {
  /** Whether the brief lets testers be told. */
  readonly allowed: boolean;
  readonly due: readonly ThanksDue[];
  /** Testers of the project who wear a pair blind now or will, whoever is thanked: word gets round. */
  readonly blind: number;
  /** What the rounds after the finding's changed, in the words of their lists: own words are held against them. */
  readonly changes: readonly Change[];
}

/** @returns null where the finding is not in the project */
export const lookAtThanks = (log: ProjectLog, finding: RecordId): ThanksLook | null => {
  const one = ownRecords(log.records.finding, log.id).find(
    ({ revision }) => revision.id === finding,
  );
  if (!one) return null;
  const withheld = withheldIn(log);
  const from = log.rounds.find(({ revision }) => revision.id === one.body.round)?.body.order ?? 0;
  return {
    allowed: tellsTesters(log),
    due: dueOf(log, [one]),
    blind: log.records.tester.filter(({ revision }) => withheld(revision.id) !== null).length,
    changes: log.rounds.flatMap(({ body }) => (body.order > from ? body.changes : [])),
  };
};

/** The thank-you as a lead would save it. It names neither another tester nor a maker. */
export const thanksOf = (
  { tester, finding, result, zone, kind, runs, change }: ThanksDue,
  { project, at, tellChange }: Pick<Thanks, 'project' | 'at'> & { readonly tellChange: boolean },
): Thanks => ({
  project,
  tester,
  at,
  finding,
  zone,
  kind,
  runs,
  result,
  ...(tellChange && change && { change }),
});
