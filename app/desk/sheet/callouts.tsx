/** The shoe opened: what recurs, wears, comes apart or lies out of tolerance, each tied to its spot by a line. */
import { surenessOf } from '../../../core/complaints/index.ts';
import { zones } from '../../../core/foot/index.ts';
import type { Callout } from '../../../core/review/index.ts';
import { formatSetPercent } from '../../parts/format.ts';
import { ShoeDrawing } from '../../parts/foot-map/shoe-drawing.tsx';
import { heatOfCallouts } from '../../parts/opened-shoe/heat.ts';
import {
  drawn,
  DRAWING,
  DRAWINGS_WIDTH,
  layOut,
  LINE_START,
  type PlacedCallout,
} from '../../parts/opened-shoe/layout.ts';
import { p, terms } from '../../words/index.ts';
import { siteName } from '../../words/say-place.ts';
import { unitsOf } from '../../../core/records/index.ts';
import type { TabProps } from '../desk-state.ts';
import { linksOf } from '../frame/route.ts';
import { sayOf } from '../frame/say.ts';
import { speakerOf } from '../parts/speaker.ts';
import { useHeights } from './use-heights.ts';

interface Said {
  readonly title: string;
  readonly note: string;
  readonly href: string;
}

type Words = TabProps;

const complaintNote = (one: Extract<Callout, { what: 'complaint' }>, props: Words): string => {
  const words = p().sheet.callout;
  const say = sayOf(props);
  const sure = surenessOf(one.word, one.testers);
  const [alone] = one.proved;
  const said =
    sure === 'one-tester' && alone !== undefined
      ? words.oneTester(say.testers(one.proved), one.runs, one.askedRuns)
      : words.felt(
          say.upper(terms().sureness[sure][sure === 'clear' ? 'alone' : 'name']),
          one.testers,
          one.askedTesters,
          one.runs,
          one.askedRuns,
        );
  return said + words.side[one.side] + words.rounds(one.rounds);
};

/** What a callout says, and where it leads. */
const saidOf = (one: Callout, props: Words): Said => {
  const words = p().sheet.callout;
  const say = sayOf(props);
  const speaker = speakerOf(props);
  const links = linksOf(props.review.project.id);
  const felt = (kind: Extract<Callout, { kind: unknown; what: 'complaint' }>['kind']) =>
    p().frame.feltTitle(terms().kinds[kind].name, terms().zones[one.zone].name);
  const foot = one.side === 'right' ? 'right' : 'left';
  switch (one.what) {
    case 'complaint':
      return {
        title: felt(one.kind),
        note: complaintNote(one, props),
        href: links.zone(foot, one.zone),
      };
    case 'better':
      return {
        title: felt(one.kind),
        note: words.better(
          words.share(one.before.runs, one.before.askedRuns),
          say.round(one.earlier),
          words.share(one.after.runs, one.after.askedRuns),
          say.round(one.later),
        ),
        href: links.zone(foot, one.zone),
      };
    case 'out-of-tolerance': {
      const sign = one.deviation > 0 ? '+' : '';
      return {
        title: say.upper(
          words.tolerance(
            siteName(one.site, speaker),
            `${sign}${say.number(one.deviation)}`,
            terms().units[one.unit],
          ),
        ),
        note: words.toleranceNote(say.pair(one.pair), one.measured),
        href: links.pair(one.pair),
      };
    }
    case 'damage':
      return {
        title: say.upper(terms().damages[one.kind]),
        note: words.damageNote(say.pair(one.pair), say.distance(one.pairM)),
        href: links.damage(one.damage),
      };
    case 'wear': {
      const { measure, value, basis } = one.limit;
      return {
        title: words.wear(terms().measures[measure]),
        note: words.wearNote(
          siteName(one.site, speaker),
          basis === 'share-of-new'
            ? formatSetPercent(value)
            : `${say.number(value, 2)} ${terms().units[unitsOf[measure][0]]}`,
          say.distance(one.reachedM),
          say.distance(one.briefM),
        ),
        href: links.place('wear'),
      };
    }
  }
};

/** The mark at the spot: a dot for a complaint, a cross for damage, a diamond for a reading, a tick for what is better. */
const SpotMark = ({ callout, x, y }: PlacedCallout) => {
  switch (callout.what) {
    case 'complaint':
      return (
        <circle
          class={
            surenessOf(callout.word, callout.testers) === 'clear' ? 'spot-clear' : 'spot-early'
          }
          cx={x}
          cy={y}
          r="6"
        />
      );
    case 'better':
      return (
        <g class="spot-better">
          <circle cx={x} cy={y} r="8" />
          <path d={`M${x - 4},${y}l3,3.5l5,-7`} />
        </g>
      );
    case 'out-of-tolerance':
      return <path class="spot-out" d={`M${x},${y - 7}l7,7l-7,7l-7,-7z`} />;
    case 'damage':
      return (
        <g class="spot-damage">
          <circle cx={x} cy={y} r="8" />
          <path d={`M${x - 4},${y - 4}l8,8m0,-8l-8,8`} />
        </g>
      );
    case 'wear':
      return <path class="spot-wear" d={`M${x},${y - 8}l7,13h-14z`} />;
  }
};

const isDanger = ({ what }: Callout): boolean => what === 'damage';

const Side = (props: {
  readonly side: 'left' | 'right';
  readonly placed: readonly PlacedCallout[];
  readonly height: number;
  readonly tab: Words;
  readonly words: Map<Callout, HTMLElement> | null;
}) => (
  <ul class={`callouts-${props.side}`} style={{ blockSize: `${props.height}px` }}>
    {props.placed.map(({ callout, top }) => {
      const { title, note, href } = saidOf(callout, props.tab);
      return (
        <li
          key={`${callout.what} ${title}`}
          ref={(element) => {
            if (element) props.words?.set(callout, element);
            else props.words?.delete(callout);
          }}
          class={isDanger(callout) ? 'callout callout-danger' : 'callout'}
          style={{ '--top': `${top}px` }}
        >
          <a href={href}>{title}</a>
          <span>{note}</span>
        </li>
      );
    })}
  </ul>
);

export const Callouts = (props: TabProps & { readonly callouts: readonly Callout[] }) => {
  const { callouts } = props;
  const words = p().sheet;
  const { heights, words: elements, around } = useHeights(callouts);
  const { left, right, height } = layOut(callouts, heights);
  const placed = [...left, ...right];
  return (
    <section class="callouts" aria-label={words.shoe} ref={around}>
      <Side side="left" placed={left} height={height} tab={props} words={elements.current} />
      <div class="callouts-shoes" aria-hidden="true">
        {drawn.map(({ foot, view }) => (
          <figure
            key={`${foot}${view}`}
            style={{ inlineSize: `${(100 * DRAWING.width) / DRAWINGS_WIDTH}%` }}
          >
            <ShoeDrawing
              foot={foot}
              view={view}
              label={words[foot][view]}
              zones={
                new Map(
                  [...heatOfCallouts(callouts, foot)].filter(([zone]) => zones[zone].view === view),
                )
              }
            />
            <figcaption>{words[foot][view]}</figcaption>
          </figure>
        ))}
        <svg class="callouts-lines" viewBox={`0 0 ${DRAWINGS_WIDTH} ${height}`}>
          {placed.map(({ callout, foot, x, y, lineY }, at) => (
            <g key={at}>
              <path
                class="leader"
                d={`M${foot === 'left' ? -LINE_START : DRAWINGS_WIDTH + LINE_START},${lineY}L${x},${y}`}
              />
              <SpotMark callout={callout} foot={foot} x={x} y={y} top={0} lineY={0} />
            </g>
          ))}
        </svg>
      </div>
      <Side side="right" placed={right} height={height} tab={props} words={elements.current} />
      {callouts.length === 0 && <p class="callouts-none">{words.nothingShows}</p>}
    </section>
  );
};
