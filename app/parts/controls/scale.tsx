/**
 * A point on a 0-100 line with words at both ends, or no answer: the line stays dashed until it is
 * touched. Figure and words stand above the line, where the thumb does not cover them.
 *
 * A finger that goes up or down scrolls the page and writes nothing: only a tap, or a finger that goes
 * sideways, sets the point. The room for the figure and for "no answer" is there from the start, so that
 * the first touch moves nothing.
 */
import { useEffect, useId, useRef } from 'preact/hooks';
import './scale.css';

export interface ScaleProps {
  readonly label: string;
  /** The words at 0 and at 100. */
  readonly low: string;
  readonly high: string;
  readonly value: number | null;
  readonly onChange: (value: number | null) => void;
  readonly words: {
    readonly unanswered: string;
    readonly clear: string;
    /** Of a point between the ends: towards which. */
    readonly towards: (value: number, end: string) => string;
    readonly middle: (value: number) => string;
    /** Of a line without an answer: what its two ends mean. */
    readonly ends: (unanswered: string, low: string, high: string) => string;
    /** "What: said". */
    readonly said: (what: string, said: string) => string;
  };
}

/** What a screen reader says of the point: a figure alone does not tell which end is the good one. */
export const pointInWords = ({ value, low, high, words }: Omit<ScaleProps, 'onChange'>): string => {
  if (value === null) return words.ends(words.unanswered, low, high);
  if (value === 0 || value === 100) return words.said(String(value), value === 0 ? low : high);
  return value === 50 ? words.middle(value) : words.towards(value, value < 50 ? low : high);
};

const clamp = (value: number): number => Math.min(100, Math.max(0, Math.round(value)));

/** How far a finger may stray in a tap, px. Judgement; systems allow 8 to 15. */
const SLOP_PX = 8;

/** A finger or a pressed mouse on the line. */
interface Press {
  readonly pointerId: number;
  readonly x: number;
  readonly y: number;
  /** The answer that stood there. */
  readonly before: number | null;
  /** Whether the point follows it: a mouse at once, a finger once it goes sideways. */
  drags: boolean;
}

const STEPS: Readonly<Record<string, number>> = {
  ArrowRight: 1,
  ArrowUp: 1,
  ArrowLeft: -1,
  ArrowDown: -1,
  PageUp: 10,
  PageDown: -10,
};

export const Scale = (props: ScaleProps) => {
  const { label, low, high, value, onChange, words } = props;
  const id = useId();
  const line = useRef<HTMLDivElement>(null);
  const mark = useRef<HTMLDivElement>(null);

  // By script, not as a style attribute: the content security policy allows no inline style.
  useEffect(() => {
    if (mark.current && value !== null) mark.current.style.left = `${value}%`;
  }, [value]);

  const press = useRef<Press | null>(null);

  const pick = (clientX: number) => {
    const box = line.current?.getBoundingClientRect();
    if (box) onChange(clamp((100 * (clientX - box.left)) / box.width));
  };
  const onPointerDown = (event: PointerEvent) => {
    // A second finger zooms the page: neither of the two means the line.
    if (!event.isPrimary) return end();
    const { pointerId, pointerType, clientX: x, clientY: y } = event;
    const isMouse = pointerType === 'mouse';
    press.current = { pointerId, x, y, before: value, drags: isMouse };
    if (!isMouse) return;
    line.current?.setPointerCapture(pointerId);
    pick(x);
  };
  const onPointerMove = ({ pointerId, buttons, clientX, clientY }: PointerEvent) => {
    const now = press.current;
    if (now?.pointerId !== pointerId) return;
    if (buttons === 0) return end();
    const [across, along] = [Math.abs(clientX - now.x), Math.abs(clientY - now.y)];
    if (!now.drags && Math.max(across, along) < SLOP_PX) return;
    if (!now.drags && across <= along) return end();
    now.drags = true;
    pick(clientX);
  };
  /** The browser took the finger to scroll the page: as if the line had not been touched. */
  const onPointerCancel = () => {
    const now = press.current;
    if (now?.drags && now.before !== value) onChange(now.before);
    end();
  };
  const end = () => {
    press.current = null;
  };
  const onPointerUp = () => {
    if (press.current?.drags) end();
  };
  // A tap as the system knows it: not the touch that stops a page on its way, nor a long one.
  const onClick = ({ clientX }: MouseEvent) => {
    if (press.current && !press.current.drags) pick(clientX);
    end();
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const step = STEPS[event.key];
    const next =
      event.key === 'Home'
        ? 0
        : event.key === 'End'
          ? 100
          : step !== undefined
            ? clamp((value ?? 50) + (value === null ? 0 : step))
            : null;
    if (next === null) return;
    event.preventDefault();
    onChange(next);
  };
  return (
    <div class="field">
      <div class="row row-apart scale-head">
        <span class="label" id={id}>
          {label}
        </span>
        <span class="row scale-answer">
          <span class="scale-value" aria-hidden="true">
            {value}
          </span>
          {value === null && (
            <span class="scale-none" aria-hidden="true">
              –
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
      <div class="scale-words">
        <span>{low}</span>
        <span>{high}</span>
      </div>
      <div
        ref={line}
        class="scale"
        role="slider"
        tabIndex={0}
        aria-labelledby={id}
        aria-valuemin={0}
        aria-valuemax={100}
        aria-valuenow={value ?? 50}
        aria-valuetext={pointInWords(props)}
        data-unanswered={value === null ? '' : undefined}
        onPointerDown={onPointerDown}
        onPointerMove={onPointerMove}
        onPointerUp={onPointerUp}
        onPointerCancel={onPointerCancel}
        onClick={onClick}
        onKeyDown={onKeyDown}
      >
        <div class="scale-line" />
        {value !== null && <div class="scale-mark" ref={mark} />}
      </div>
    </div>
  );
};
