/** The width of an element in CSS px, followed as it changes: a picture drawn to it keeps the size of its letters. */
import { useEffect, useState } from 'preact/hooks';

export const useWidth = (first: number): [(element: Element | null) => void, number] => {
  const [width, setWidth] = useState(first);
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
