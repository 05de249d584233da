/**
 * Which rows of a list are drawn now? A short list is drawn whole; of a long one the rows near the reader, measured as
 * they come (the package `@tanstack/virtual-core`). The list scrolls in a box of its own, or with the page.
 */
import {
  elementScroll,
  observeElementOffset,
  observeElementRect,
  observeWindowOffset,
  observeWindowRect,
  Virtualizer,
  windowScroll,
  type VirtualizerOptions,
} from '@tanstack/virtual-core';
import type { RefObject } from 'preact';
import { useCallback, useLayoutEffect, useReducer, useState } from 'preact/hooks';
import { rowsAround, withGaps, type Drawn } from './drawn-rows.ts';

/** Longer lists are drawn in part. */
const WHOLE = 60;
/** So many rows more are drawn on either side of what is seen. */
const MORE = 12;

type Scroller = HTMLElement | Window;
type Options = VirtualizerOptions<Scroller, HTMLTableRowElement>;

/** How the box, or the page, tells where it is and how high. The package's types name one of the two. */
const scrollsIn = (box: RefObject<HTMLElement | null> | null) =>
  (box
    ? {
        getScrollElement: () => box.current,
        observeElementRect,
        observeElementOffset,
        scrollToFn: elementScroll,
      }
    : {
        getScrollElement: () => window,
        observeElementRect: observeWindowRect,
        observeElementOffset: observeWindowOffset,
        scrollToFn: windowScroll,
      }) as unknown as Pick<
    Options,
    'getScrollElement' | 'observeElementRect' | 'observeElementOffset' | 'scrollToFn'
  >;

/** How far below the beginning of what scrolls the rows begin, px. */
const marginOf = (body: HTMLElement, box: HTMLElement | null): number =>
  Math.round(
    box
      ? body.getBoundingClientRect().top - box.getBoundingClientRect().top + box.scrollTop
      : body.getBoundingClientRect().top + window.scrollY,
  );

export interface DrawnRows {
  readonly drawn: readonly Drawn[];
  /** Whether some rows are not drawn. */
  readonly inPart: boolean;
  readonly measure: (row: HTMLTableRowElement | null) => void;
  /** Scrolls until the row is seen and drawn. */
  readonly show: (at: number) => void;
  /** How many rows are seen at once. */
  readonly page: () => number;
}

export const useDrawnRows = (asked: {
  readonly ids: readonly string[];
  readonly body: RefObject<HTMLElement | null>;
  /** Null: the list scrolls with the page. Stays what it is while the list is there. */
  readonly box: RefObject<HTMLElement | null> | null;
  /** Drawn whole however long it is, as for the printer. */
  readonly isWhole: boolean;
  /** The row that has the focus; null: none. */
  readonly focused: number | null;
  /** About how high a row is, px. */
  readonly rowPx: number;
}): DrawnRows => {
  const { ids, body, box, isWhole, focused, rowPx } = asked;
  const [, redraw] = useReducer((drawings: number) => drawings + 1, 0);
  const [scrollMargin, setMargin] = useState(0);
  const inPart = !isWhole && ids.length > WHOLE;
  const drawnIn = useCallback<NonNullable<Options['rangeExtractor']>>(
    ({ startIndex, endIndex, count }) => [
      ...rowsAround({ first: startIndex, last: endIndex }, { more: MORE, count, focused }),
    ],
    [focused],
  );
  const options: Options = {
    ...scrollsIn(box),
    enabled: inPart,
    count: ids.length,
    estimateSize: () => rowPx,
    getItemKey: (at) => ids[at] ?? at,
    indexAttribute: 'data-at',
    scrollMargin,
    // The head stands over the rows that scroll below it.
    scrollPaddingStart: box ? scrollMargin : 0,
    rangeExtractor: drawnIn,
    onChange: redraw,
  };
  const [rows] = useState(() => new Virtualizer(options));
  rows.setOptions(options);
  useLayoutEffect(() => rows._didMount(), [rows]);
  // After each drawing: what stands above the rows may have grown. A margin that stays as it is draws nothing anew.
  // eslint-disable-next-line react-hooks/exhaustive-deps
  useLayoutEffect(() => {
    rows._willUpdate();
    if (inPart && body.current) setMargin(marginOf(body.current, box?.current ?? null));
  });
  return {
    inPart,
    drawn: inPart
      ? withGaps(rows.getVirtualItems(), scrollMargin, rows.getTotalSize())
      : ids.map((_, at) => ({ is: 'row', at })),
    measure: rows.measureElement,
    show: (at) => rows.scrollToIndex(at),
    page: () => Math.max(1, Math.floor((rows.scrollRect?.height ?? 10 * rowPx) / rowPx) - 2),
  };
};
