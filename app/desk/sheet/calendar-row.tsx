/** A pair's line of the calendar: in whose hands, runs, checks, damage, do-not-run. */
import type { CalendarRow } from '../../../core/review/index.ts';
import { formatDate } from '../../parts/format.ts';
import { d, p } from '../../words/index.ts';
import type { namesIn } from '../desk-state.ts';
import type { Links } from '../frame/route.ts';
import { LEFT, ROW, type Line } from './calendar-lines.ts';

/** What a mark is, and of which day. */
const marked = (what: string, atMs: number): string => d().joined.clauses([what, formatDate(atMs)]);

/** Where a tester's code ends before a hand-out: left of a bench check that stands just before it. */
const labelEnd = (row: CalendarRow, fromMs: number, x: (ms: number) => number): number => {
  const marks = row.checks.map(({ atMs }) => x(atMs) - 8).filter((at) => at < x(fromMs));
  const near = marks.filter((at) => at > x(fromMs) - 40);
  return Math.max(LEFT - 8, Math.min(x(fromMs) - 3, ...near));
};

export const Row = (props: {
  readonly line: Line & { readonly row: CalendarRow };
  readonly x: (ms: number) => number;
  readonly end: number;
  readonly links: Links;
  readonly names: ReturnType<typeof namesIn>;
}) => {
  const { line, x, end, links, names } = props;
  const { row, y } = line;
  const middle = y + ROW / 2;
  return (
    <g>
      {row.hands.map(({ handOut, fromMs, untilMs }) => (
        <rect
          key={handOut}
          class="day-hand"
          x={x(fromMs)}
          y={y + 1}
          width={Math.max(1, x(untilMs ?? end) - x(fromMs))}
          height={ROW - 2}
        />
      ))}
      {row.stops.map(({ stop, fromMs, untilMs }) => (
        <rect
          key={stop}
          class="day-stop"
          x={x(fromMs)}
          y={y + 2}
          width={Math.max(2, x(untilMs ?? end) - x(fromMs))}
          height={ROW - 4}
          fill="url(#day-stop)"
        />
      ))}
      {row.runs.map(({ run, atMs, count, complained }) => {
        const mark = (
          <path
            class={complained > 0 ? 'day-run day-complaint' : 'day-run'}
            d={`M${x(atMs)},${complained > 0 ? y + 2 : middle - 1}V${y + ROW - 3}`}
            stroke-width={count > 1 ? 3 : undefined}
          />
        );
        return run ? (
          <a key={run} href={links.run(run)} tabindex={-1}>
            <title>{marked(p().sheet.legend.run, atMs)}</title>
            {mark}
          </a>
        ) : (
          <g key={atMs}>{mark}</g>
        );
      })}
      {row.checks.map(({ check, atMs }) => (
        <a key={check} href={links.check(check)} tabindex={-1}>
          <title>{marked(p().sheet.legend.check, atMs)}</title>
          <path class="day-check" d={`M${x(atMs)},${middle - 5}l5,5l-5,5l-5,-5z`} />
        </a>
      ))}
      {row.damages.map(({ damage, atMs }) => (
        <a key={damage} href={links.damage(damage)} tabindex={-1}>
          <title>{marked(p().sheet.legend.damage, atMs)}</title>
          <path class="day-damage" d={`M${x(atMs) - 4},${middle - 4}l8,8m0,-8l-8,8`} />
        </a>
      ))}
      <a href={links.pair(row.pair)} tabindex={-1}>
        <text x={LEFT - 38} y={middle} dy="0.35em" text-anchor="end">
          {names.code(row.pair)}
        </text>
      </a>
      {row.hands
        .filter(({ tester }, at) => row.hands[at - 1]?.tester !== tester)
        .map(({ handOut, tester, fromMs }) => (
          <text
            key={handOut}
            class="soft day-tester"
            x={labelEnd(row, fromMs, x)}
            y={middle}
            dy="0.35em"
            text-anchor="end"
          >
            {names.tester(tester)}
          </text>
        ))}
    </g>
  );
};
