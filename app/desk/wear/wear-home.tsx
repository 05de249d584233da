/** Wear: which limit is reached first and about when, a card for each, and what to measure next. */
import { useState } from 'preact/hooks';
import type { RecordId } from '../../../core/records/index.ts';
import { metres, type Metres } from '../../../core/units/index.ts';
import { LinkButton } from '../../parts/controls/controls.tsx';
import { p, t } from '../../words/index.ts';
import { useWork, type PlaceProps } from '../desk-state.ts';
import { SelectField } from '../parts/form-parts.tsx';
import { HowSure } from '../frame/how-sure.tsx';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { sayOf } from '../frame/say.ts';
import { Stamp } from '../frame/stamp.tsx';
import { speakerOf } from '../parts/speaker.ts';
import type { LimitCard as Card } from '../worker/wear-answers.ts';
import { InTurn } from '../parts/in-turn.tsx';
import { measureOf, titleOf } from './limit-words.ts';
import { WearCard } from './wear-card.tsx';
import { placeKey, WearDetails } from './wear-details.tsx';

type Narrowed = RecordId | 'all';

/** The cards of one place and one round; a limit that nothing was measured for stays. */
const narrow = (
  cards: readonly Card[],
  round: Narrowed,
  place: string,
  latest: RecordId | null,
): readonly Card[] =>
  cards
    .filter((card) => place === 'all' || placeKey(card) === place)
    .map((card) =>
      round === 'all'
        ? card
        : {
            ...card,
            rounds: card.rounds.filter((one) => one.round === round),
            settle: round === latest ? card.settle : null,
          },
    );

/** What the address asks for: `of/<measure and unit>/<site>/<round>`. */
const askedFor = ([what, kind, site, round]: readonly string[]) => ({
  place: what === 'of' && kind && site ? placeKey({ kind, site }) : 'all',
  round: what === 'of' && round ? (round as RecordId) : ('all' as const),
});

export const WearHome = (props: PlaceProps) => {
  const { review, records } = props;
  const words = p().wear;
  const { id, brief } = review.project;
  const links = linksOf(id);
  const asked = askedFor(props.rest);
  const [round, setRound] = useState<Narrowed>(asked.round);
  const [place, setPlace] = useState(asked.place);
  const [more, setMore] = useState(false);
  const state = useWork((desk) => desk.wearState(id), records, [id]);
  if (!state) return <p class="soft">{t().loading}</p>;
  const { headline, stamp, cards } = state;
  const say = sayOf(props);
  const speaker = speakerOf(props);
  const shown = narrow(cards, round, place, state.latest);
  const limited = shown.filter(({ limit }) => limit !== null);
  const rest = shown.filter(({ limit }) => limit === null);
  const measured = review.rounds.filter((one) =>
    cards.some((card) => card.rounds.some((own) => own.round === one.id)),
  );
  const farthest = (one: RecordId) =>
    cards
      .flatMap((card) => card.rounds)
      .filter((own) => own.round === one)
      .reduce<Metres>((most, { greatest }) => (greatest > most ? greatest : most), metres(0));
  const list = (some: readonly Card[]) => (
    <div class="wear-cards">
      {some.map((card, at) => (
        <InTurn key={`${placeKey(card)} ${card.limit?.value}`} at={at}>
          {() => <WearCard records={records} review={review} card={card} />}
        </InTurn>
      ))}
    </div>
  );
  return (
    <>
      <PlaceHead
        headline={words.headline(headline, say, measureOf)}
        stamp={headline.case !== 'no-check' && <Stamp word={stamp} />}
        sub={
          <>
            {'round' in headline &&
              headline.round !== measured.at(-1)?.id &&
              words.thatIs(say.round(headline.round))}
            {measured.length > 0 &&
              words.measured(
                measured.map(({ id: one, name }) => words.to(name, farthest(one), say)),
                say.list,
              )}
            {brief.limits.length === 0 && (
              <>
                {' '}
                <a href={links.place('brief')}>{words.setLimits}</a>
              </>
            )}
          </>
        }
        actions={<LinkButton href={links.place('wear', 'checks', 'new')}>{words.write}</LinkButton>}
      />
      <div class="wear-narrow no-print">
        {cards.length > 0 && (
          <>
            <SelectField<Narrowed>
              label={words.narrow.round}
              value={round}
              options={[
                { value: 'all', label: words.narrow.allRounds },
                ...measured.map((one) => ({ value: one.id, label: one.name })),
              ]}
              onChange={setRound}
            />
            <SelectField
              label={words.narrow.place}
              value={place}
              options={[
                { value: 'all', label: words.narrow.allPlaces },
                ...[...new Map(cards.map((card) => [placeKey(card), card])).values()].map(
                  (card) => ({ value: placeKey(card), label: titleOf(card, speaker) }),
                ),
              ]}
              onChange={setPlace}
            />
          </>
        )}
        <span class="wear-ways">
          <a href={links.place('wear', 'checks')}>{words.allChecks(state.checks)}</a>
          <a href={links.place('wear', 'gauges')}>{words.gauges}</a>
        </span>
      </div>
      {list(limited)}
      {rest.length > 0 &&
        (place === 'all' && limited.length > 0 ? (
          <details
            class="wear-rest"
            open={more}
            onToggle={(event) => setMore(event.currentTarget.open)}
          >
            <summary>{words.rest(rest.length)}</summary>
            {more && list(rest)}
          </details>
        ) : (
          list(rest)
        ))}
      {cards.length > 0 && (
        <HowSure>
          <WearDetails
            key={`${round} ${place}`}
            records={records}
            review={review}
            round={round === 'all' ? null : round}
            place={place === 'all' ? null : place}
          />
        </HowSure>
      )}
    </>
  );
};
