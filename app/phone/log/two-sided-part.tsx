/** The comfort questions with too much and too little: loaded when the tester opens them. */
import type { TwoSidedId } from '../../../core/foot/index.ts';
import { TwoSidedLine } from '../../parts/controls/two-sided.tsx';
import { withAnswer, type RunForm } from '../../drafts/run.ts';
import { t, terms } from '../../words/index.ts';

export const TwoSidedPart = (props: {
  readonly questions: readonly TwoSidedId[];
  readonly marks: RunForm['comfort2'];
  readonly onChange: (marks: RunForm['comfort2']) => void;
}) => {
  const { questions, marks, onChange } = props;
  const words = t();
  return (
    <fieldset class="two-sided-part stack">
      <legend>
        <b>{words.twoSided.title}</b>
        <br />
        <span class="soft small">{words.twoSided.hint}</span>
      </legend>
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
            words={{ ...words.twoSided, unanswered: words.unanswered, clear: words.clear }}
          />
        );
      })}
    </fieldset>
  );
};
