/** Which questions wait for a tester, and what answers each? One rule for the phone and the desk. */
import { stampParts, type RecordId, type RecordOf } from '../records/index.ts';

type Question = RecordOf<'question'>;
type Answer = RecordOf<'answer'>;

const isLater = (a: Answer, b: Answer): boolean =>
  a.revision.stamp !== b.revision.stamp
    ? a.revision.stamp > b.revision.stamp
    : a.revision.hash > b.revision.hash;

/**
 * The answer that stands to each question: the latest of the tester who was asked. What anybody else wrote as an answer
 * answers nothing.
 */
export const answersTo = (
  questions: readonly Question[],
  answers: readonly Answer[],
): ReadonlyMap<RecordId, Answer> => {
  const asked = new Map(questions.map(({ revision, body }) => [revision.id, body.tester]));
  const latest = new Map<RecordId, Answer>();
  for (const answer of answers) {
    const { question, tester } = answer.body;
    if (question === undefined || asked.get(question) !== tester) continue;
    const other = latest.get(question);
    if (!other || isLater(answer, other)) latest.set(question, answer);
  }
  return latest;
};

/** When a record was written, as its body says; milliseconds since 1970. */
export const writtenMs = ({
  body,
  revision,
}: {
  readonly body: { readonly at: string };
  readonly revision: Question['revision'];
}): number => {
  const ms = Date.parse(body.at);
  return Number.isFinite(ms) ? ms : stampParts(revision.stamp).ms;
};

/** Whether a question still asks for an answer. @param answer the one that stands */
export const isOpen = ({ body }: Question, answer: Answer | undefined): boolean =>
  answer === undefined && body.withdrawn === undefined;

/**
 * The questions that wait for this tester, oldest first: the phone shows the first one.
 * @param has whether a record is here: what was asked about a record that was taken back is asked no more
 */
export const openQuestions = (
  records: { readonly question: readonly Question[]; readonly answer: readonly Answer[] },
  tester: RecordId,
  has: (record: RecordId) => boolean,
): readonly Question[] => {
  const own = records.question.filter(({ body }) => body.tester === tester);
  const answers = answersTo(own, records.answer);
  return own
    .filter((one) => {
      const about = one.body.about?.record?.id;
      return isOpen(one, answers.get(one.revision.id)) && (about === undefined || has(about));
    })
    .sort((a, b) => writtenMs(a) - writtenMs(b) || (a.revision.id < b.revision.id ? -1 : 1));
};
