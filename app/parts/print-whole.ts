/** A folded list is printed whole: it unfolds before the page goes to paper. */
import { useEffect } from 'preact/hooks';

/**
 * @param unfold shows all of the list; what it sets is drawn before the printer looks
 * @param fold   after printing; absent: it stays open
 */
export const usePrintWhole = (unfold: () => void, fold?: () => void): void =>
  useEffect(() => {
    window.addEventListener('beforeprint', unfold);
    if (fold) window.addEventListener('afterprint', fold);
    return () => {
      window.removeEventListener('beforeprint', unfold);
      if (fold) window.removeEventListener('afterprint', fold);
    };
  });
