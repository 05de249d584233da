/** The lead's question on Today, one at a time; while there is none, what else may be asked there. */
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { RecordOf } from '../../../core/records/index.ts';
import { useLoaded } from '../../parts/loaded.ts';
import { session, useStored } from '../../parts/state.ts';
import { need } from '../../words/index.ts';
import { KINDS_OF_QUESTIONS, readOpenQuestions } from './open-questions.ts';

const loadCard = async () => {
  const [loaded] = await Promise.all([
    import('./question-card.tsx'),
    need('talk', 'glossary', 'entry'),
  ]);
  return loaded;
};

/** Mounted once there is a question, so that its files come then. */
const Card = (props: {
  readonly open: readonly RecordOf<'question'>[];
  readonly asked: RecordOf<'question'> | undefined;
  readonly done: (question: RecordOf<'question'> | null) => void;
}) => {
  const loaded = useLoaded(loadCard);
  const { open, asked, done } = props;
  if (!loaded || !asked) return null;
  return (
    <loaded.QuestionCard
      key={asked.revision.id}
      question={asked}
      left={open.filter(({ revision }) => revision.id !== asked.revision.id).length}
      onAnswered={() => done(asked)}
      onNext={() => done(null)}
    />
  );
};

export const LeadsQuestion = ({ children }: { readonly children?: ComponentChildren }) => {
  const tester = session.value?.member;
  const open = useStored(
    (from) => (tester ? readOpenQuestions(from, tester) : Promise.resolve([])),
    KINDS_OF_QUESTIONS,
    [tester],
  );
  /** What was answered just now stays until the next one is asked for. */
  const [answered, setAnswered] = useState<RecordOf<'question'> | null>(null);
  if (open === null) return null;
  return answered || open.length > 0 ? (
    <Card open={open} asked={answered ?? open[0]} done={setAnswered} />
  ) : (
    <>{children}</>
  );
};
