/** What is typed, handed on when the fingers rest, so that a list is not sought anew at every letter. */
import { useEffect, useState } from 'preact/hooks';

const REST_MS = 200;

export const useTyped = (value: string, hand: (value: string) => void) => {
  const [typed, setTyped] = useState(value);
  // It was changed from elsewhere: by a link, or by going back.
  useEffect(() => setTyped(value), [value]);
  useEffect(() => {
    if (typed === value) return;
    const timer = setTimeout(() => hand(typed), REST_MS);
    return () => clearTimeout(timer);
    // `hand` is a new function at each drawing.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [typed]);
  return [typed, setTyped] as const;
};
