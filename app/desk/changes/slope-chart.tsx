/**
 * Where did each complaint, or each comfort question, go from the earlier round to the later one? A line each, with its
 * name, its figures and what is known of it beside its end. The drawing stretches with the screen; its letters do not.
 */
import type { ComponentChildren } from 'preact';
import { Picture, type PictureTable } from '../frame/picture.tsx';
import { layOutSlopes, type SlopeLayout } from './slope-layout.ts';

export interface Slope {
  readonly key: string;
  readonly name: string;
  readonly href: string;
  /** 0 to 100. */
  readonly from: number;
  readonly to: number;
  /** Both figures, as they are read. */
  readonly figures: string;
  readonly word: string;
  /** How the line is drawn: proved for the better, proved for the worse, worth a look, or not settled. */
  readonly tone: 'good' | 'bad' | 'look' | 'open';
}

/** Ends of the lines across the drawing, in hundredths of its width; what follows leads to the labels. */
const [LEFT, RIGHT] = [2, 84];

const Lines = ({ slopes, layout }: { slopes: readonly Slope[]; layout: SlopeLayout }) => (
  <svg
    class="slope-lines"
    viewBox={`0 0 100 ${layout.height}`}
    preserveAspectRatio="none"
    style={{ blockSize: `${layout.height}px` }}
    aria-hidden="true"
  >
    {layout.ticks.map(({ value, at }) => (
      <path key={value} class="slope-grid" d={`M${LEFT},${at}H${RIGHT}`} />
    ))}
    <path class="slope-axis" d={`M${LEFT},0V${layout.height}M${RIGHT},0V${layout.height}`} />
    {slopes.map(({ key, tone }, at) => {
      const place = layout.places[at];
      return (
        place && (
          <g key={key} class={`slope-${tone}`}>
            <path class="slope-leader" d={`M${RIGHT},${place.to}L100,${place.label}`} />
            <path class="slope-line" d={`M${LEFT},${place.from}L${RIGHT},${place.to}`} />
            <path class="slope-dot" d={`M${LEFT},${place.from}h0M${RIGHT},${place.to}h0`} />
          </g>
        )
      );
    })}
  </svg>
);

export const SlopeChart = (props: {
  readonly title: string;
  readonly says: string;
  readonly rounds: readonly [string, string];
  readonly slopes: readonly Slope[];
  readonly fromZero: boolean;
  readonly tick: (value: number) => string;
  readonly table: () => PictureTable;
  readonly more?: ComponentChildren;
}) => {
  const { slopes, rounds } = props;
  // The worst on top of the others.
  const layout = layOutSlopes(slopes, props.fromZero);
  return (
    <Picture title={props.title} says={props.says} table={props.table}>
      <div class="slope-chart">
        <div class="slope-ticks" aria-hidden="true" style={{ blockSize: `${layout.height}px` }}>
          {layout.ticks.map(({ value, at }) => (
            <span key={value} style={{ insetBlockStart: `${at}px` }}>
              {props.tick(value)}
            </span>
          ))}
        </div>
        <Lines slopes={slopes} layout={layout} />
        <ul class="slope-labels" style={{ blockSize: `${layout.height}px` }}>
          {slopes.map(({ key, name, href, figures, word, tone }, at) => (
            <li
              key={key}
              class={`slope-label-${tone}`}
              style={{ insetBlockStart: `${layout.places[at]?.label ?? 0}px` }}
            >
              <a href={href} title={name}>
                {name}
              </a>
              <span class="slope-figures">{figures}</span>
              <span class="slope-word">{word}</span>
            </li>
          ))}
        </ul>
        <p class="slope-rounds">
          <span>{rounds[0]}</span>
          <span>{rounds[1]}</span>
        </p>
      </div>
      {props.more}
    </Picture>
  );
};
