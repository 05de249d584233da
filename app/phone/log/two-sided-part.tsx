/** The comfort questions with too much and too little: loaded when the tester opens them. */
import { useId } from 'preact/hooks';
import type { TwoSidedId } from '../../../core/foot/index.ts';
import { TwoSidedLine } from '../../parts/controls/two-sided.tsx';
import { withAnswer, type RunForm } from '../../drafts/run.ts';
import { entryWords, t, terms } from '../../words/index.ts';

export const TwoSidedPart = (props: {
  readonly questions: readonly TwoSidedId[];
  readonly marks: RunForm['comfort2'];
  readonly onChange: (marks: RunForm['comfort2']) => void;
}) => {
  const { questions, marks, onChange } = props;
  const id = useId();
  const words = entryWords().twoSided;
  return (
    <div class="stack" role="group" aria-labelledby={id}>
      <div>
        <h2 id={id}>{words.title}</h2>
        <p class="soft small">{words.hint}</p>
      </div>
      {questions.map((question) => {
        const { name, low, high } = terms().twoSided[question];
        return (
          <TwoSidedLine
            key={question}
            label={name}
            low={low}
            high={high}
            value={marks[question] ?? null}
            onChange={(value) => onChange(withAnswer(marks, question, value))}
            words={{ ...words, unanswered: t().unanswered, said: t().joined.of }}
          />
        );
      })}
    </div>
  );
};
