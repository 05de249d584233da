/** A folded list is printed whole: it unfolds before the page goes to paper. */
import { useEffect } from 'preact/hooks';

/** @param unfold shows all of the list; what it sets is drawn before the printer looks */
export const usePrintWhole = (unfold: () => void): void =>
  useEffect(() => {
    window.addEventListener('beforeprint', unfold);
    return () => window.removeEventListener('beforeprint', unfold);
  });
