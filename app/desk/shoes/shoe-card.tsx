/** One shoe among all: drawn, with its stamps, how far it has come, and what needs its lead today. */
import type { RecordId, RecordOf } from '../../../core/records/index.ts';
import type { ReviewSummary } from '../../../core/review/index.ts';
import type { ZoneCode } from '../../../core/foot/index.ts';
import { zones } from '../../../core/foot/index.ts';
import { heatLevel } from '../../parts/foot-map/heat.ts';
import { ShoeDrawing, type DrawnZone } from '../../parts/foot-map/shoe-drawing.tsx';
import { clauses, p, terms } from '../../words/index.ts';
import { linksOf } from '../frame/route.ts';
import { roundDistance } from '../frame/say.ts';
import { Stamp } from '../frame/stamp.tsx';
import { stepLine } from '../sheet/todo.tsx';
import type { DeskRecords } from '../worker/desk-work.ts';
import type { ShoeCard as Card } from '../worker/sheet-answers.ts';

/** More lines than this make a card longer than its neighbours. */
const MOST_LINES = 3;

const drawnZones = (
  { callouts }: Card,
  view: 'upper' | 'sole',
): ReadonlyMap<ZoneCode, DrawnZone> => {
  const found = new Map<ZoneCode, DrawnZone>();
  for (const one of callouts) {
    if (zones[one.zone].view !== view || one.what === 'better') continue;
    const level =
      one.what === 'complaint' ? heatLevel(one.testers / Math.max(1, one.askedTesters)) : 2;
    if (level > (found.get(one.zone)?.level ?? 0)) found.set(one.zone, { level });
  }
  return found;
};

export const ShoeCard = (props: {
  readonly project: RecordOf<'project'>;
  readonly card: Card;
  readonly review: ReviewSummary;
  readonly records: DeskRecords;
}) => {
  const { project, card, review, records } = props;
  const words = p().shoes;
  const id: RecordId = project.revision.id;
  const links = linksOf(id);
  const { brief, name } = project.body;
  const share = brief.distanceM > 0 ? Math.min(1, card.farthestM / brief.distanceM) : 0;
  const danger = card.headline.case === 'pain' || card.headline.case === 'damage';
  return (
    <li class={danger ? 'shoe-card shoe-card-danger' : 'shoe-card'}>
      <h2>
        <a href={links.place('sheet')}>{name}</a>
      </h2>
      <p class="soft small">{clauses(terms().runners[brief.runner], terms().uses[brief.use])}</p>
      <div class="shoe-card-middle">
        <div class="shoe-card-drawings" aria-hidden="true">
          <ShoeDrawing foot="left" view="upper" label="" zones={drawnZones(card, 'upper')} />
          <ShoeDrawing foot="left" view="sole" label="" zones={drawnZones(card, 'sole')} />
        </div>
        {card.rounds.length === 0 ? (
          <p class="small">{words.noRound}</p>
        ) : (
          <ol class="shoe-card-stamps">
            {card.rounds.map(({ id: round, stamp }) => (
              <li key={round}>
                <a href={links.round(round)}>
                  {review.rounds.find((one) => one.id === round)?.name}
                </a>{' '}
                <Stamp word={stamp} />
              </li>
            ))}
          </ol>
        )}
      </div>
      <p class="shoe-card-far">
        <span>{words.ofBrief(roundDistance(card.farthestM), roundDistance(brief.distanceM))}</span>
        <span>{words.runs(card.runs)}</span>
      </p>
      <svg class="shoe-card-bar" viewBox="0 0 100 6" preserveAspectRatio="none" aria-hidden="true">
        <path class="shoe-card-track" d="M0,3H100" />
        <path class="shoe-card-run" d={`M0,3H${100 * share}`} />
      </svg>
      <ul class="shoe-card-next">
        {card.next.length === 0 && <li>{words.nothingToDo}</li>}
        {card.next.slice(0, MOST_LINES).map((step) => {
          const { title, href, danger: isDanger } = stepLine(step, { review, records }, links);
          return (
            <li key={'round' in step ? step.round : step.step}>
              <a class={isDanger ? 'danger-link' : undefined} href={href}>
                {title}
              </a>
            </li>
          );
        })}
      </ul>
    </li>
  );
};
