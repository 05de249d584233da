/** Which questions wait for the tester of this phone? Read for Today and for the number on the icon. */
import type { RecordId, RecordOf } from '../../../core/records/index.ts';
import { openQuestions } from '../../../core/talk/questions.ts';
import type { Store } from '../../store/index.ts';

/** The kinds of record that they are read from. */
export const KINDS_OF_QUESTIONS = ['question', 'answer', 'run', 'damage-report'] as const;

/** Oldest first. */
export const readOpenQuestions = async (
  from: Pick<Store, 'list' | 'get'>,
  tester: RecordId,
): Promise<readonly RecordOf<'question'>[]> => {
  const question = (await from.list('question')).filter(({ body }) => body.tester === tester);
  // Most phones have none most of the time.
  if (question.length === 0) return [];
  const answer = await from.list('answer');
  const about = new Set(question.flatMap(({ body }) => body.about?.record ?? []));
  const here = await Promise.all(
    [...about].map(async ({ kind, id }) => ((await from.get(kind, id)) ? [id] : [])),
  );
  const has = new Set(here.flat());
  return openQuestions({ question, answer }, tester, (record) => has.has(record));
};
