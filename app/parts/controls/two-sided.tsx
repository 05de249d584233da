/**
 * A mark on a line with the good point in the middle: what is too little and too much stand at its ends, in plain words,
 * and what the mark says stands above it. No answer until it is touched: the line stays dashed. A touch near the middle
 * is "just right".
 */
import { useEffect, useId, useRef } from 'preact/hooks';
import { degreeOf } from '../../../core/foot/two-sided-marks.ts';
import { markAfterKey, markAt } from '../../drafts/two-sided.ts';
import { markInWords, type MarkWords } from '../../words/say-mark.ts';
import { useLineTouch } from './line-touch.ts';
import './scale.css';
import './two-sided.css';

export interface TwoSidedProps {
  readonly label: string;
  /** What is too little of it, and too much. */
  readonly low: string;
  readonly high: string;
  /** −100 to 100; 0 is just right. */
  readonly value: number | null;
  readonly onChange: (value: number | null) => void;
  readonly words: MarkWords & {
    readonly unanswered: string;
    readonly clear: string;
    readonly ends: (unanswered: string, low: string, high: string) => string;
    /** "What: said". */
    readonly said: (what: string, said: string) => string;
  };
}

export const TwoSidedLine = (props: TwoSidedProps) => {
  const { label, low, high, value, onChange, words } = props;
  const id = useId();
  const line = useRef<HTMLDivElement>(null);
  const mark = useRef<HTMLDivElement>(null);
  const way = useRef<HTMLDivElement>(null);

  // By script, not as a style attribute: the content security policy allows no inline style.
  useEffect(() => {
    if (value === null) return;
    const at = (value + 100) / 2;
    if (mark.current) mark.current.style.left = `${at}%`;
    if (way.current) {
      way.current.style.left = `${Math.min(50, at)}%`;
      way.current.style.width = `${Math.abs(at - 50)}%`;
    }
  }, [value]);

  const touch = useLineTouch({ line, value, at: markAt, onChange });
  const onKeyDown = (event: KeyboardEvent) => {
    const next = markAfterKey(value, event.key);
    if (next === null) return;
    event.preventDefault();
    onChange(next);
  };
  const said = markInWords(props);
  // The longest that can be said, so that an answer moves nothing.
  const room = [words.degree('little', low), words.degree('little', high)];
  const isRight = value !== null && degreeOf(value) === 'right';
  return (
    <div class="field two-sided">
      <div class="row row-apart scale-head">
        <span class="label" id={id}>
          {label}
        </span>
        <span class="row scale-answer">
          <span class="two-sided-said" aria-hidden="true">
            {room.map((text) => (
              <span class="two-sided-room" key={text}>
                {text}
              </span>
            ))}
            {said !== null && <b>{said}</b>}
          </span>
          {said === null && (
            <span class="scale-none soft small" aria-hidden="true">
              {words.unanswered}
            </span>
          )}
          <button
            type="button"
            class="button button-quiet scale-clear"
            aria-label={words.said(words.clear, label)}
            hidden={value === null}
            onClick={() => {
              line.current?.focus({ preventScroll: true });
              onChange(null);
            }}
          >
            {words.clear}
          </button>
        </span>
      </div>
      <div
        ref={line}
        class="scale two-sided-line"
        role="slider"
        tabIndex={0}
        aria-labelledby={id}
        aria-valuemin={-100}
        aria-valuemax={100}
        aria-valuenow={value ?? 0}
        aria-valuetext={said ?? words.ends(words.unanswered, low, high)}
        data-unanswered={value === null ? '' : undefined}
        data-right={isRight ? '' : undefined}
        {...touch}
        onKeyDown={onKeyDown}
      >
        <div class="two-sided-middle" />
        <div class="scale-line" />
        <div class="two-sided-point" />
        {value !== null && !isRight && <div class="two-sided-way" ref={way} />}
        {value !== null && <div class="scale-mark" ref={mark} />}
      </div>
      <div class="two-sided-words small" aria-hidden="true">
        <span>{low}</span>
        <span class="soft">{words.right}</span>
        <span>{high}</span>
      </div>
    </div>
  );
};
