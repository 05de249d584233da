/** The bar at the foot of a log: save; before that the caution, where one is due; or a question about odd figures. */
import type { RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { Button } from '../../parts/controls/controls.tsx';
import { t } from '../../words/index.ts';
import { CautionBar } from './caution-bar.tsx';
import { Doubt } from './doubt.tsx';
import type { cautionIn } from '../../drafts/run-pain.ts';

export const SaveBar = (props: {
  readonly caution: ReturnType<typeof cautionIn>;
  /** The questions beside the pain, whose answers call for the caution or not. */
  readonly asked: RefObject<HTMLElement | null>;
  /** What is odd about the run, in words. */
  readonly questions: readonly string[];
  readonly saving: boolean;
  readonly onRead: () => void;
  readonly onSure: () => void;
  /** Where it may be a run that was logged before: this one is not saved. */
  readonly onSame: (() => void) | null;
  readonly onChange: () => void;
}) => {
  const { caution, questions } = props;
  const before = useRef(caution);
  useEffect(() => {
    // The button that was pressed is gone; the next one takes its focus.
    if (before.current === 'unread' && caution === 'read')
      document.querySelector<HTMLElement>('.foot-bar button')?.focus({ preventScroll: true });
    before.current = caution;
  }, [caution]);
  if (caution === 'unread') return <CautionBar asked={props.asked} onRead={props.onRead} />;
  return (
    <div class="foot-bar">
      {questions.length === 0 ? (
        <Button kind="main" big submit disabled={props.saving}>
          {t().save}
        </Button>
      ) : (
        <Doubt
          questions={questions}
          onSure={props.onSure}
          onSame={props.onSame}
          onChange={props.onChange}
        />
      )}
    </div>
  );
};
