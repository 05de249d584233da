/** The question in the place of the save button, where something of a run is odd. */
import { useEffect, useId, useRef } from 'preact/hooks';
import { Button } from '../../parts/controls/controls.tsx';
import { entryWords } from '../../words/index.ts';

/** Asks in the place of the save button; it has the focus, so that it is read out and a key answers it. */
export const Doubt = (props: {
  readonly questions: readonly string[];
  readonly onSure: () => void;
  /** Where it may be a run that was logged before: this one is not saved. */
  readonly onSame: (() => void) | null;
  readonly onChange: () => void;
}) => {
  const said = entryWords();
  const id = useId();
  const group = useRef<HTMLDivElement>(null);
  useEffect(() => group.current?.focus(), []);
  return (
    <div class="stack" role="group" aria-labelledby={id} tabIndex={-1} ref={group}>
      <div id={id}>
        {props.questions.map((question) => (
          <p key={question}>
            <strong>{question}</strong>
          </p>
        ))}
      </div>
      {props.onSame && <Button onClick={props.onSame}>{said.doubtSame}</Button>}
      <div class="row row-even">
        <Button onClick={props.onChange}>{said.doubtChange}</Button>
        <Button kind="main" onClick={props.onSure}>
          {said.doubtSure}
        </Button>
      </div>
    </div>
  );
};
