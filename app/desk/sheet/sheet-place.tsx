/** The sheet: where does the test stand, and what now? */
import { useContext } from 'preact/hooks';
import type { NextStep } from '../../../core/review/index.ts';
import { p, t, terms } from '../../words/index.ts';
import { useWork, type PlaceProps } from '../desk-state.ts';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { roundDistance, sayOf } from '../frame/say.ts';
import { Stamp } from '../frame/stamp.tsx';
import { GuideContext } from '../start/guide.ts';
import { StartCards } from '../start/start-cards.tsx';
import { Calendar } from './calendar.tsx';
import { Callouts } from './callouts.tsx';
import { RoundsStrip } from './rounds-strip.tsx';
import { Todo } from './todo.tsx';
import './sheet.css';
import './callouts.css';
import './calendar.css';

/** What the cards of the six steps say already. */
const inCards: ReadonlySet<NextStep['step']> = new Set([
  'add-round',
  'add-pairs',
  'add-testers',
  'hand-out',
  'set-up-phones',
]);

export const SheetPlace = (props: PlaceProps) => {
  const start = useContext(GuideContext)?.start ?? null;
  const { review, records } = props;
  const words = p().sheet;
  const { id, brief } = review.project;
  const state = useWork((desk) => desk.sheet(id), records, [id]);
  if (!state) return <p class="soft">{t().loading}</p>;
  const links = linksOf(id);
  const further = state.overview.next.filter(({ step }) => !inCards.has(step));
  const { pairs, testers, runs, distanceM } = review.size;
  return (
    <>
      <PlaceHead
        headline={words.headline(state.headline, sayOf(props))}
        stamp={review.rounds.length > 0 && <Stamp word={state.stamp} />}
        sub={
          <>
            {start
              ? words.subStart(terms().uses[brief.use], roundDistance(brief.distanceM))
              : words.sub(
                  terms().uses[brief.use],
                  roundDistance(brief.distanceM),
                  pairs,
                  testers,
                  runs,
                  roundDistance(distanceM),
                )}{' '}
            <a href={links.place('brief')}>{words.brief}</a>{' '}
            <a href={links.place('rounds')}>{words.editRounds}</a>{' '}
            <a href={links.place('tables')}>{p().tables.title}</a>
          </>
        }
      />
      {start ? (
        <>
          <StartCards start={start} project={id} records={records} />
          {further.length > 0 && <Todo {...props} next={further} />}
        </>
      ) : (
        <div class="sheet-top">
          <div class="sheet-shoe">
            <RoundsStrip {...props} rounds={state.rounds} />
            {review.size.runs > 0 && <Callouts {...props} callouts={state.callouts} />}
          </div>
          <Todo {...props} next={state.overview.next} />
        </div>
      )}
      {(!start || start.done.plan) && <Calendar {...props} />}
    </>
  );
};
