/** Kilometres as a bar against the brief's distance, with the figure beside it. */
export const DistanceBar = (props: {
  /** May pass 1. */
  readonly share: number;
  readonly words: string;
  readonly title?: string;
}) => (
  <span class="distance-bar" title={props.title}>
    <span class="distance-bar-track" aria-hidden="true">
      <span style={{ inlineSize: `${Math.min(100, 100 * props.share)}%` }} />
    </span>
    <span class="distance-bar-figure">{props.words}</span>
  </span>
);
