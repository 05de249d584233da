/** How far is each of these towards what it owes? One bar a row, its figure always in words. */
import './charts.css';

export interface Bar {
  readonly key: string;
  readonly name: string;
  readonly value: number;
  /** The value with its unit. */
  readonly label: string;
  readonly note?: string;
}

export interface BarsProps {
  readonly title: string;
  readonly bars: readonly Bar[];
  /** What a full bar stands for, with its words, e.g. the brief's distance. */
  readonly full: { readonly value: number; readonly label: string };
}

/** Bars against a common goal; one that passes it is marked and the goal line stays visible. */
export const Bars = ({ title, bars, full }: BarsProps) => {
  const most = Math.max(full.value, ...bars.map((bar) => bar.value), 1e-9);
  return (
    <figure class="bars">
      <figcaption class="chart-title">{title}</figcaption>
      <ul>
        {bars.map((bar) => (
          <li key={bar.key} class="bars-row">
            <span class="bars-name">{bar.name}</span>
            <svg
              class="bars-track"
              viewBox="0 0 100 10"
              preserveAspectRatio="none"
              aria-hidden="true"
            >
              <rect class="bars-ground" x="0" y="1" width="100" height="8" />
              <rect class="bars-fill" x="0" y="1" width={(100 * bar.value) / most} height="8" />
              <path
                class="bars-goal"
                vector-effect="non-scaling-stroke"
                d={`M${(100 * full.value) / most},0V10`}
              />
            </svg>
            <span class="bars-label">{bar.label}</span>
            {bar.note && <span class="bars-note">{bar.note}</span>}
          </li>
        ))}
      </ul>
      <p class="bars-full">{full.label}</p>
    </figure>
  );
};
