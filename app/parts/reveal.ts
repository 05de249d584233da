/** Brings the next question into view, so that a thumb need not look for it. */
import { useEffect, useRef } from 'preact/hooks';

/** Whether the person asked for no motion. */
export const isStill = (): boolean => matchMedia('(prefers-reduced-motion: reduce)').matches;

/** A ref whose element scrolls into view whenever `when` becomes another truthy value. */
export const useReveal = <E extends HTMLElement>(when: unknown) => {
  const element = useRef<E>(null);
  const before = useRef(when);
  useEffect(() => {
    const isNew = Boolean(when) && before.current !== when;
    before.current = when;
    if (isNew)
      element.current?.scrollIntoView({ block: 'start', behavior: isStill() ? 'auto' : 'smooth' });
  }, [when]);
  return element;
};
