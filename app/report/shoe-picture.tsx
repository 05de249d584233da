/** Both shoes opened, each row of the table as a number at its spot, tied to its title by a line. */
import { zones } from '../../core/foot/index.ts';
import type { DecisionRow } from '../../core/headlines/index.ts';
import type { Callout } from '../../core/review/index.ts';
import { ShoeDrawing } from '../parts/foot-map/shoe-drawing.tsx';
import { heatOfCallouts } from '../parts/opened-shoe/heat.ts';
import {
  drawn,
  DRAWING,
  DRAWINGS_WIDTH,
  layOut,
  type PlacedCallout,
} from '../parts/opened-shoe/layout.ts';
import type { PartProps } from './document-props.ts';
import { calloutWords } from './row-words.ts';
import { joined } from './spoken.tsx';

/** Room for words on either side, in the drawing's units. */
const SIDE = 150;
const CAPTION = 18;
/** Widths of letters in the drawing's units: Chinese ones are square. Judged by eye. */
const WIDE = 12;
const NARROW = 6.3;

/** About how wide a text is, in the drawing's units. */
export const widthOf = (text: string): number =>
  [...text].reduce((sum, one) => sum + (one > '\u2e7f' ? WIDE : NARROW), 0);

/** The text in lines that fit beside the shoe: broken at blanks, and between Chinese signs. */
export const wrapped = (text: string, width: number): readonly string[] => {
  const lines: string[] = [];
  let line = '';
  for (const piece of text.match(/[\u2e80-\uffff]|[^\s\u2e80-\uffff]+\s*|\s+/gu) ?? []) {
    if (line !== '' && widthOf((line + piece).trimEnd()) > width) {
      lines.push(line.trimEnd());
      line = piece.trimStart();
    } else line += piece;
  }
  return line.trim() === '' ? lines : [...lines, line.trimEnd()];
};

export const ShoePicture = (
  props: PartProps & {
    readonly rows: readonly DecisionRow[];
  },
) => {
  const { languages, rows } = props;
  const [{ paper }] = languages;
  const numbers = new Map<Callout, number>();
  for (const [at, { callout }] of rows.entries()) if (callout) numbers.set(callout, at + 1);
  const callouts = [...numbers.keys()];
  if (callouts.length === 0) return null;
  const { left, right, height } = layOut(callouts);
  const places = [...left, ...right];
  return (
    <svg
      class="opened-shoe"
      viewBox={`0 0 ${DRAWINGS_WIDTH + 2 * SIDE} ${height + CAPTION}`}
      role="img"
      aria-label={joined(languages, (spoken) =>
        spoken.list(callouts.map((one) => calloutWords(one, spoken).title)),
      )}
    >
      {drawn.map(({ foot, view }, at) => {
        const x = SIDE + at * (DRAWING.width + DRAWING.gap);
        return (
          <g key={`${foot}${view}`}>
            <svg x={x} y="0" width={DRAWING.width} height={DRAWING.height}>
              <ShoeDrawing
                foot={foot}
                view={view}
                label={paper.views[foot][view]}
                zones={
                  new Map(
                    [...heatOfCallouts(callouts, foot)].filter(
                      ([zone]) => zones[zone].view === view,
                    ),
                  )
                }
              />
            </svg>
            <text
              class="soft"
              x={x + DRAWING.width / 2}
              y={DRAWING.height + 14}
              text-anchor="middle"
            >
              {joined(languages, (spoken) => spoken.paper.views[foot][view])}
            </text>
          </g>
        );
      })}
      {places.map((one) => (
        <Pin
          {...props}
          key={numbers.get(one.callout)}
          placed={one}
          number={numbers.get(one.callout) ?? 0}
        />
      ))}
    </svg>
  );
};

const Pin = ({
  placed: { callout, foot, x, y, lineY },
  number,
  languages,
}: PartProps & { readonly placed: PlacedCallout; readonly number: number }) => {
  const end = foot === 'left' ? SIDE - 12 : SIDE + DRAWINGS_WIDTH + 12;
  const textX = foot === 'left' ? SIDE - 18 : SIDE + DRAWINGS_WIDTH + 18;
  const lines = languages.flatMap((spoken) =>
    wrapped(calloutWords(callout, spoken).title, SIDE - 24),
  );
  return (
    <g>
      <path class="leader" d={`M${end},${lineY}L${SIDE + x},${y}`} />
      <circle class={`pin pin-${callout.what}`} cx={SIDE + x} cy={y} r="9.5" />
      <text class="pin-number" x={SIDE + x} y={y + 4} text-anchor="middle">
        {number}
      </text>
      {lines.map((line, at) => (
        <text
          key={at}
          class="pin-title"
          x={textX}
          y={lineY + 4 + at * 14}
          text-anchor={foot === 'left' ? 'end' : 'start'}
        >
          {line}
        </text>
      ))}
    </g>
  );
};
