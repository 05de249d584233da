/** Comfort: overall on a 0-100 line first; the brief's other questions when asked for, most with too much and too little. */
import { useState } from 'preact/hooks';
import type { ComfortAttributeId } from '../../../core/foot/index.ts';
import type { Brief } from '../../../core/records/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { Scale } from '../../parts/controls/scale.tsx';
import { latePart } from '../../parts/late.tsx';
import { askedOfComfort } from '../../drafts/two-sided.ts';
import { t, terms } from '../../words/index.ts';
import { withAnswer, type RunForm } from '../../drafts/run.ts';

const TwoSidedPart = latePart(async () => (await import('./two-sided-part.tsx')).TwoSidedPart);

export const ComfortPart = (props: {
  readonly brief: Pick<Brief, 'attributes' | 'alsoAsked'>;
  readonly form: Pick<RunForm, 'comfort' | 'comfort2'>;
  readonly onChange: (part: Partial<Pick<RunForm, 'comfort' | 'comfort2'>>) => void;
}) => {
  const words = t();
  const { brief, form, onChange } = props;
  // As it was when the form was opened: clearing an answer does not swap its line.
  const [{ twoSided, oneSided }] = useState(() => askedOfComfort(brief, form.comfort));
  const [open, setOpen] = useState(
    oneSided.some((one) => one in form.comfort) || twoSided.some((one) => one in form.comfort2),
  );
  const scale = (attribute: ComfortAttributeId) => {
    const { name, low, high } = terms().attributes[attribute];
    return (
      <Scale
        key={attribute}
        label={name}
        low={low}
        high={high}
        value={form.comfort[attribute] ?? null}
        onChange={(value) => onChange({ comfort: withAnswer(form.comfort, attribute, value) })}
        words={{
          ...words.scale,
          unanswered: words.unanswered,
          clear: words.clear,
          said: words.joined.of,
        }}
      />
    );
  };
  return (
    <section class="stack" aria-label={words.log.comfort}>
      {scale('overall')}
      {open && twoSided.length > 0 && (
        <TwoSidedPart
          questions={twoSided}
          marks={form.comfort2}
          onChange={(comfort2: RunForm['comfort2']) => onChange({ comfort2 })}
        />
      )}
      {open
        ? oneSided.map(scale)
        : twoSided.length + oneSided.length > 0 && (
            <Button kind="quiet" onClick={() => setOpen(true)}>
              {words.log.moreComfort}
            </Button>
          )}
    </section>
  );
};
