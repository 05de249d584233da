/** Comfort on 0-100 lines: overall first, the brief's other attributes when asked for. */
import { useState } from 'preact/hooks';
import type { ComfortAttributeId } from '../../../core/foot/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { Scale } from '../../parts/controls/scale.tsx';
import { t, terms } from '../../words/index.ts';
import { withScore, type RunForm } from '../../drafts/run.ts';

export const ComfortPart = (props: {
  readonly attributes: readonly ComfortAttributeId[];
  readonly comfort: RunForm['comfort'];
  readonly onChange: (comfort: RunForm['comfort']) => void;
}) => {
  const words = t();
  const others = props.attributes.filter((attribute) => attribute !== 'overall');
  const [open, setOpen] = useState(others.some((attribute) => attribute in props.comfort));
  const scale = (attribute: ComfortAttributeId) => {
    const { name, low, high } = terms().attributes[attribute];
    return (
      <Scale
        key={attribute}
        label={name}
        low={low}
        high={high}
        value={props.comfort[attribute] ?? null}
        onChange={(value) => props.onChange(withScore(props.comfort, attribute, value))}
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
      {open
        ? others.map(scale)
        : others.length > 0 && (
            <Button kind="quiet" onClick={() => setOpen(true)}>
              {words.log.moreComfort}
            </Button>
          )}
    </section>
  );
};
