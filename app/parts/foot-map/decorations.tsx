/** What of a drawn shoe is no zone: the print of the sole, laces and seams of the upper. */
import { solePrint, upperDecorations, type FootView } from '../../../core/foot/index.ts';

export const Decorations = ({ view }: { readonly view: FootView }) => (
  <>
    {view === 'sole'
      ? solePrint.map((d) => <path key={d} class="foot-map-print" d={d} />)
      : upperDecorations.map(({ kind, d }) =>
          kind === 'lace' ? (
            <g key={d}>
              <path class="foot-map-lace-edge" d={d} />
              <path class="foot-map-lace" d={d} />
            </g>
          ) : (
            <path key={d} class={`foot-map-${kind}`} d={d} />
          ),
        )}
  </>
);
