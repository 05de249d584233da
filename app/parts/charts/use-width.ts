/** How wide is an element in pixels? Followed as it changes, so that letters in a drawing keep their size. */
import { useEffect, useState } from 'preact/hooks';

/** @returns where to put the element, and its width; `fallback` until it is known */
export const useWidth = (fallback: number): [(element: Element | null) => void, number] => {
  const [width, setWidth] = useState(fallback);
  const [element, setElement] = useState<Element | null>(null);
  useEffect(() => {
    if (!element) return;
    const observer = new ResizeObserver(([entry]) => {
      if (entry && entry.contentRect.width > 0) setWidth(Math.round(entry.contentRect.width));
    });
    observer.observe(element);
    return () => observer.disconnect();
  }, [element]);
  return [setElement, width];
};
