/** How strong a zone is, told without colour: hatching that grows denser from level 1 to 4. */
import type { JSX } from 'preact';

type Level = 1 | 2 | 3 | 4;

/** The id of the pattern of a level, for `fill="url(#…)"`. `id` keeps maps on one page apart. */
export const hatchId = (id: string, level: Level): string => `hatch-${id}-${level}`;

const patterns: Readonly<Record<Level, { readonly size: number; readonly d: string }>> = {
  // Dots, lines, close lines, lines both ways: told apart by shape as well as by density.
  1: { size: 14, d: 'M7 7h0.01' },
  2: { size: 14, d: 'M0 7H14' },
  3: { size: 7, d: 'M0 3.5H7' },
  4: { size: 8, d: 'M0 4H8M4 0V8' },
};

/** The four patterns, to stand inside `<defs>`. */
export const Hatching = ({ id }: { readonly id: string }): JSX.Element => (
  <>
    {([1, 2, 3, 4] as const).map((level) => {
      const { size, d } = patterns[level];
      return (
        <pattern
          key={level}
          id={hatchId(id, level)}
          width={size}
          height={size}
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(-45)"
        >
          <path class={`foot-map-hatch-line foot-map-hatch-${level}`} d={d} />
        </pattern>
      );
    })}
  </>
);
