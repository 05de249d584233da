/** Asks about readings that look wrong, in the place of the save button. */
import { useEffect, useId, useRef } from 'preact/hooks';
import { Button } from '../../parts/controls/controls.tsx';
import { d } from '../../words/index.ts';
import { apartInWords, askInWords } from '../../words/say-waiting.ts';
import type { TabProps } from '../desk-state.ts';
import { speakerOf } from '../parts/speaker.ts';
import type { EntryDoubts } from './entry-doubts.ts';

export const EntryQuestion = (
  props: TabProps & {
    readonly doubts: EntryDoubts;
    /** Before the form is sent once more. */
    readonly onSure: () => void;
    readonly onCorrect: () => void;
  },
) => {
  const words = d().waiting;
  const speaker = speakerOf(props);
  const id = useId();
  const group = useRef<HTMLDivElement>(null);
  // It has the focus, so that it is read out and a key answers it.
  useEffect(() => group.current?.focus(), []);
  const { readings, gauges } = props.doubts;
  return (
    <div class="notice stack" role="group" aria-labelledby={id} tabIndex={-1} ref={group}>
      <div id={id} class="stack">
        {readings.map(({ at, reading, doubt }) => (
          <p key={at}>
            <strong>{askInWords(reading, doubt, speaker).join(' ')}</strong>
          </p>
        ))}
        {gauges.map((apart) => (
          <p key={`${apart.measure} ${apart.unit} ${apart.gauge}`}>
            <strong>{words.newGauge(apart.gauge, apart.than, apartInWords(apart, speaker))}</strong>
          </p>
        ))}
      </div>
      <div class="row">
        <Button onClick={props.onCorrect}>{words.correct}</Button>
        <Button kind="main" submit onClick={props.onSure}>
          {words.isRight}
        </Button>
      </div>
    </div>
  );
};
