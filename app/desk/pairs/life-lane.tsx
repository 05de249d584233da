/** One lane of a pair's life: a name, and a field in which marks are placed in percent of the axis. */
import type { ComponentChildren } from 'preact';
import type { PairLook } from '../../../core/review/index.ts';
import type { TabProps } from '../desk-state.ts';

export type LaneProps = TabProps & { readonly look: PairLook };

export interface Axis {
  readonly endM: number;
  /** Percent of the axis. */
  readonly at: (m: number) => string;
}

export const axisOf = ({ briefM, totalM }: PairLook): Axis => {
  const endM = Math.max(briefM, totalM, 1);
  return { endM, at: (m) => `${Math.min(100, Math.max(0, (100 * m) / endM))}%` };
};

export const Lane = (props: {
  readonly title: ComponentChildren;
  readonly note?: string;
  readonly kind: string;
  readonly children: ComponentChildren;
}) => (
  <div class={`lane lane-${props.kind}`}>
    <div class="lane-name">
      <b>{props.title}</b>
      {props.note !== undefined && <span class="soft small">{props.note}</span>}
    </div>
    <div class="lane-field">{props.children}</div>
  </div>
);

export const line = (points: readonly (readonly [number, number])[]): string =>
  points.map(([x, y], at) => `${at === 0 ? 'M' : 'L'}${x.toFixed(2)},${y.toFixed(2)}`).join('');

/** A drawing behind the marks that is stretched to its lane; strokes keep their width. */
export const Behind = ({ children }: { readonly children: ComponentChildren }) => (
  <svg class="lane-behind" viewBox="0 0 100 100" preserveAspectRatio="none" aria-hidden="true">
    {children}
  </svg>
);
