/** What was said between leads and testers in a project, and what is to be asked, each with the run that it is about. */
import type { RecordId, RecordOf, Run } from '../records/index.ts';
import { exchangesOf, hangsOn, type Exchange, type TalkSubject } from '../talk/index.ts';
import { doubtsOf, unaskedDoubts, type Doubt } from './doubts.ts';
import { ownRecords, type ProjectLog } from './project-log.ts';
import type { Review } from './review-types.ts';

/** As much of a run as a question about it says. */
export interface AskedRun extends Pick<Run, 'startedAt' | 'distanceM' | 'durationS' | 'pair'> {
  readonly id: RecordId;
}

type About = Pick<Doubt, 'about'>;

/** With the run that each is about; null: about something else, or the run is gone. */
const withRuns = <T extends About>(
  log: ProjectLog,
  some: readonly T[],
): readonly (T & { readonly run: AskedRun | null })[] => {
  const wanted = new Set(some.map(({ about }) => about.record?.id));
  const runs = new Map(
    log.everyRun.flatMap(({ revision: { id }, body }): readonly [RecordId, AskedRun][] => {
      if (!wanted.has(id)) return [];
      const { startedAt, distanceM, durationS, pair } = body;
      return [[id, { id, startedAt, distanceM, durationS, pair }]];
    }),
  );
  return some.map((one) => ({ ...one, run: runs.get(one.about.record?.id as RecordId) ?? null }));
};

export type TalkItem = Exchange & { readonly run: AskedRun | null };

/** What was said about the subject, the latest word first. */
export const talkOf = (log: ProjectLog, subject: TalkSubject): readonly TalkItem[] => {
  const { question, answer, reply } = log.records;
  const all = exchangesOf({
    question: ownRecords(question, log.id),
    answer: ownRecords(answer, log.id),
    reply: ownRecords(reply, log.id),
  });
  return withRuns(
    log,
    all.filter((one) => hangsOn(one, subject)),
  );
};

export type ToAsk = Doubt & { readonly run: AskedRun | null };

/** What nobody asked about yet. */
export const toAskOf = (log: ProjectLog, review: Review): readonly ToAsk[] =>
  withRuns(log, unaskedDoubts(doubtsOf(log, review)));

/**
 * The changes that no tester must learn from a question: those of every round. Who wore the first and the third round
 * would learn of the second's, and a round that is still to come is not to be given away either.
 */
export const changesToHide = (
  rounds: readonly RecordOf<'round'>[],
  project: RecordId,
): RecordOf<'round'>['body']['changes'] =>
  ownRecords(rounds, project).flatMap(({ body }) => body.changes);
