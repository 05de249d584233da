/** What happens when, by the plan: a day each; where there is no room for the picture, each pair of the day too. */
import type { ComponentChildren } from 'preact';
import { p } from '../../words/index.ts';
import { formatDay, formatSize } from '../../parts/format.ts';
import { toLocalDay } from '../../parts/instant.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { linksOf } from '../frame/route.ts';
import { slipsOf, type DatedPlace, type PlanDay } from './plan-facts.ts';
import type { RoomIn } from './plan-fit.ts';
import { RoomSign } from './room-sign.tsx';

type Props = TabProps & {
  readonly places: readonly DatedPlace[];
  readonly days: readonly PlanDay[];
  readonly room: RoomIn;
};

const Item = (props: {
  readonly atMs: number;
  readonly sign: string;
  readonly children: ComponentChildren;
}) => (
  <li class="plan-day">
    <span class={`plan-sign plan-sign-${props.sign}`} aria-hidden="true" />
    <div>
      <span class="soft">{formatDay(toLocalDay(props.atMs))}</span>
      {props.children}
    </div>
  </li>
);

/** Each pair of the day, with who gets it and how it fits. */
const Pairs = (props: Props & { readonly out: readonly DatedPlace[]; readonly has?: boolean }) => {
  const { records, review, out, room, has } = props;
  const words = p().plan;
  const names = namesIn(review, records);
  const bodies = new Map(records.pair.map(({ body, revision }) => [revision.id, body]));
  const called = new Map(records.tester.map(({ body, revision }) => [revision.id, body.name]));
  return (
    <ul class="plan-day-pairs">
      {out.map(({ place }) => {
        const size = bodies.get(place.pair)?.sizeMm;
        const who = [names.tester(place.tester), called.get(place.tester)].filter(Boolean);
        const say = has ? words.has : words.gets;
        return (
          <li key={`${place.tester}${place.pair}`}>
            {say(who.join(' '), names.code(place.pair), size ? formatSize(size) : '')}{' '}
            <span class="small">
              <RoomSign room={room(place.tester, place.pair)} />
            </span>
          </li>
        );
      })}
    </ul>
  );
};

const dayTitle = ({ out, back, isEnd }: PlanDay): string => {
  const words = p().plan;
  if (isEnd && out.length === 0) return words.allBack;
  if (out.length === 0) return words.comeBack(back.length);
  return back.length === 0 ? words.goOut(out.length) : words.goAndCome(out.length, back.length);
};

const Day = ({ day, ...props }: Props & { readonly day: PlanDay }) => {
  const words = p().plan;
  const { out, back, isEnd, atMs } = day;
  const isOver = isEnd && out.length === 0;
  return (
    <Item atMs={atMs} sign={out.length > 0 ? 'change' : 'measure'}>
      <strong>{dayTitle(day)}</strong>
      {back.length > 0 && (
        <span class="soft small">{isOver ? words.measureAll : words.measureBack}</span>
      )}
      <Pairs {...props} out={out} />
    </Item>
  );
};

export const PlanWhen = (props: Props & { readonly children?: ComponentChildren }) => {
  const { review, places, days } = props;
  const words = p().plan;
  const links = linksOf(review.project.id);
  const slips = slipsOf(places, review.nowMs);
  const running = places.filter(({ state }) => state === 'running');
  // What should be out today needs its slip today; else a day before anything happens, in the order of the days.
  const isDue = slips.some(({ fromMs }) => fromMs <= review.nowMs);
  const slipsMs = isDue ? review.nowMs : Math.max(review.nowMs, (days[0]?.atMs ?? 0) - 86_400_000);
  return (
    <section class="paper plan-when no-print" aria-label={words.when}>
      <h2>{words.when}</h2>
      <ol class="plain-list plan-days">
        {running.length > 0 && (
          <li class="plan-day plan-day-now">
            <span class="plan-sign" aria-hidden="true" />
            <div>
              <strong>{words.outNow(running.length)}</strong>
              <Pairs {...props} out={running} has />
            </div>
          </li>
        )}
        {slips.length > 0 && (
          <Item atMs={slipsMs} sign="slip">
            <a href={links.place('plan', 'slips')}>{words.printSlips(slips.length)}</a>
            <span class="soft small">{words.slipsHint}</span>
            <a href={links.place('plan', 'invites')}>{words.printInvites}</a>
            <span class="soft small">{words.invitesHint}</span>
          </Item>
        )}
        {days.map((day) => (
          <Day key={day.atMs} {...props} day={day} />
        ))}
      </ol>
      <p class="plan-key small">
        <span class="room-good">● 12 mm</span> {words.roomWord.good} ·{' '}
        <span class="room-short">▲ 8 mm</span> {words.roomWord.short} ·{' '}
        <span class="room-long">▼ 16 mm</span> {words.roomWord.long}
        <br />
        <span class="soft">{words.sentences([words.roomKey, words.dashed])}</span>
      </p>
    </section>
  );
};
