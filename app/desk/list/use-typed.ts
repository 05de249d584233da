/** What is typed, handed on when the fingers rest, so that a list is not sought anew at every letter. */
import { useEffect, useRef, useState } from 'preact/hooks';

const REST_MS = 200;

export const useTyped = (value: string, hand: (value: string) => void) => {
  const [typed, setTyped] = useState(value);
  const handed = useRef(value);
  useEffect(() => {
    // What comes back is what was handed on: more may have been typed since. Else it was changed from elsewhere, by a
    // link or by going back.
    if (value === handed.current) return;
    handed.current = value;
    setTyped(value);
  }, [value]);
  useEffect(() => {
    if (typed === value) return;
    const timer = setTimeout(() => {
      handed.current = typed;
      hand(typed);
    }, REST_MS);
    return () => clearTimeout(timer);
    // `hand` is a new function at each drawing.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [typed]);
  return [typed, setTyped] as const;
};
