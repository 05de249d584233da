/**
 * What a finger or a mouse means on a line that takes a point. A finger that goes up or down scrolls the page and
 * writes nothing: only a tap, or a finger that goes sideways, sets the point.
 */
import { useRef } from 'preact/hooks';
import type { RefObject } from 'preact';

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

export interface LineTouch {
  readonly line: RefObject<HTMLElement | null>;
  readonly value: number | null;
  /** The value at a share of the line, 0 at its left end and 1 at its right one; it may lie outside of both. */
  readonly at: (share: number) => number;
  readonly onChange: (value: number | null) => void;
}

/** The handlers of the line. */
export const useLineTouch = ({ line, value, at, onChange }: LineTouch) => {
  const press = useRef<Press | null>(null);
  const end = () => {
    press.current = null;
  };
  const pick = (clientX: number) => {
    const box = line.current?.getBoundingClientRect();
    if (box) onChange(at((clientX - box.left) / box.width));
  };
  return {
    onPointerDown: (event: PointerEvent) => {
      // A second finger zooms the page: neither of the two means the line.
      if (!event.isPrimary) return end();
      const { pointerId, pointerType, clientX: x, clientY: y } = event;
      const isMouse = pointerType === 'mouse';
      press.current = { pointerId, x, y, before: value, drags: isMouse };
      if (!isMouse) return;
      line.current?.setPointerCapture(pointerId);
      pick(x);
    },
    onPointerMove: ({ pointerId, buttons, clientX, clientY }: PointerEvent) => {
      const now = press.current;
      if (now?.pointerId !== pointerId) return;
      if (buttons === 0) return end();
      const [across, along] = [Math.abs(clientX - now.x), Math.abs(clientY - now.y)];
      if (!now.drags && Math.max(across, along) < SLOP_PX) return;
      if (!now.drags && across <= along) return end();
      now.drags = true;
      pick(clientX);
    },
    /** The browser took the finger to scroll the page: as if the line had not been touched. */
    onPointerCancel: () => {
      const now = press.current;
      if (now?.drags && now.before !== value) onChange(now.before);
      end();
    },
    onPointerUp: () => {
      if (press.current?.drags) end();
    },
    // A tap as the system knows it: not the touch that stops a page on its way, nor a long one.
    onClick: ({ clientX }: MouseEvent) => {
      if (press.current && !press.current.drags) pick(clientX);
      end();
    },
  };
};
