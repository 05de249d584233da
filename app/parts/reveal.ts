/** Brings the next question into view, so that a thumb need not look for it. */
import { useEffect, useRef } from 'preact/hooks';

/** Whether the person asked for no motion. */
export const isStill = (): boolean => matchMedia('(prefers-reduced-motion: reduce)').matches;

const reveal = (element: Element): void =>
  element.scrollIntoView({ block: 'start', behavior: isStill() ? 'auto' : 'smooth' });

/**
 * Brings `part`, the upper part of `around`, into view whole, above the bar at the foot of the screen: with what
 * stands before it in `around` where there is room for both, else by itself.
 */
export const revealWhole = (around: Element | null, part: Element | null): void => {
  if (!around || !part) return;
  const bar = document.querySelector('.foot-bar');
  const covered =
    bar && getComputedStyle(bar).position === 'sticky' ? bar.getBoundingClientRect().height : 0;
  const whole = part.getBoundingClientRect().bottom - around.getBoundingClientRect().top;
  reveal(whole <= innerHeight - covered ? around : part);
};

/** A ref whose element scrolls into view whenever `when` becomes another truthy value. */
export const useReveal = <E extends HTMLElement>(when: unknown) => {
  const element = useRef<E>(null);
  const before = useRef(when);
  useEffect(() => {
    const isNew = Boolean(when) && before.current !== when;
    before.current = when;
    if (isNew && element.current) reveal(element.current);
  }, [when]);
  return element;
};
