/** How high are the words of each callout? Measured before they are painted, and anew when their column is wider or narrower. */
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { RefObject } from 'preact';
import type { Callout } from '../../../core/review/index.ts';
import { useWidth } from '../../parts/charts/use-width.ts';
import { locale } from '../../words/index.ts';
import type { CalloutHeights } from '../../parts/opened-shoe/layout.ts';

const isSame = (a: CalloutHeights, b: CalloutHeights): boolean =>
  a.size === b.size && [...b].every(([callout, height]) => a.get(callout) === height);

/** The elements of the words, each under its callout; their heights as they are on the screen. */
export const useHeights = (
  callouts: readonly Callout[],
): {
  readonly heights: CalloutHeights;
  readonly words: RefObject<Map<Callout, HTMLElement>>;
  readonly around: (element: Element | null) => void;
} => {
  const words = useRef(new Map<Callout, HTMLElement>());
  const [heights, setHeights] = useState<CalloutHeights>(new Map());
  const [around, width] = useWidth(0);
  const language = locale();
  useLayoutEffect(() => {
    const measured = new Map(
      [...(words.current ?? [])].map(([callout, { offsetHeight }]) => [callout, offsetHeight]),
    );
    setHeights((known) => (isSame(known, measured) ? known : measured));
  }, [callouts, width, language]);
  return { heights, words, around };
};
