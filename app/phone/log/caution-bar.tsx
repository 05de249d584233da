/**
 * The caution in the place of the save button, until it was read. The bar is always in view, so the caution is seen
 * however far down the page the answers stand that called for it.
 */
import type { RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { Button } from '../../parts/controls/controls.tsx';
import { isStill } from '../../parts/reveal.ts';
import { careWords } from '../../words/index.ts';
import './caution-bar.css';

/** Between the last answer and the bar. */
const GAP_PX = 12;

export const CautionWords = () => {
  const words = careWords().caution;
  return (
    <>
      <h3 class="caution-title">{words.title}</h3>
      <p>{words.body}</p>
      <p class="small">{words.disclaimer}</p>
      <p class="small">{words.lead}</p>
    </>
  );
};

export const CautionBar = (props: {
  /** The questions beside the pain: they stay in view above the bar, for an answer may take the caution away. */
  readonly asked: RefObject<HTMLElement | null>;
  readonly onRead: () => void;
}) => {
  const bar = useRef<HTMLDivElement>(null);
  const { asked } = props;
  useEffect(() => {
    const questions = asked.current;
    if (!bar.current || !questions) return;
    const covered = bar.current.offsetHeight + GAP_PX;
    questions.style.scrollMarginBlockEnd = `${covered}px`;
    questions.scrollIntoView({
      // Where not all of them have room, the first one.
      block: questions.offsetHeight + covered <= innerHeight ? 'end' : 'start',
      behavior: isStill() ? 'auto' : 'smooth',
    });
  }, [asked]);
  return (
    <div class="foot-bar caution-bar" ref={bar}>
      <div class="stack" role="alert">
        <CautionWords />
      </div>
      <Button big onClick={props.onRead}>
        {careWords().caution.read}
      </Button>
    </div>
  );
};
