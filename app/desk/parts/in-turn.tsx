/** A heavy picture that waits for its turn: the page answers between one and the next, and the first is there sooner. */
import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';

/** About a frame. */
const BETWEEN_MS = 16;

export const InTurn = (props: {
  /** The first, 0, does not wait. */
  readonly at: number;
  readonly children: () => ComponentChildren;
}) => {
  const { at, children } = props;
  const [isUp, setUp] = useState(at === 0);
  useEffect(() => {
    const timer = setTimeout(() => setUp(true), at * BETWEEN_MS);
    return () => clearTimeout(timer);
  }, [at]);
  return isUp ? <>{children()}</> : null;
};
