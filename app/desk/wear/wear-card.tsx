/** A limit as a card: its picture, what each round says of it, and the check that would tell most. */
import { stampOf, wearRoundSays } from '../../../core/headlines/index.ts';
import type { WearRound } from '../../../core/review/index.ts';
import { RoundMark } from '../../parts/charts/interval-line.tsx';
import { clauses, halves, p } from '../../words/index.ts';
import { valueOf } from '../../words/say-wear.ts';
import type { TabProps } from '../desk-state.ts';
import { Picture } from '../frame/picture.tsx';
import { linksOf } from '../frame/route.ts';
import { sayOf } from '../frame/say.ts';
import { Stamp } from '../frame/stamp.tsx';
import { speakerOf } from '../parts/speaker.ts';
import { settleLine } from '../verdict/cell-words.ts';
import type { LimitCard as Card } from '../worker/wear-answers.ts';
import { boundOf, titleOf } from './limit-words.ts';
import { farthestRound, isReached, WearPicture } from './wear-picture.tsx';

type CardProps = TabProps & { readonly card: Card };

/** What the latest round with a check says of the limit. */
const stampOfCard = (rounds: readonly WearRound[]) => {
  const word = rounds.at(-1)?.outlook?.hold?.word;
  return word === undefined ? 'open' : stampOf(word);
};

/** What would settle it, as its row of the verdict says; that a limit fails stands on its stamp. */
const Next = (props: CardProps) => {
  const { settle } = props.card;
  if (!settle || settle.by === 'change') return null;
  const { line, href } = settleLine(settle, props, props.card);
  return (
    <p class="wear-next">
      {p().wear.nextCheck}
      <a href={href}>{line}</a>
    </p>
  );
};

export const WearCard = (props: CardProps) => {
  const { card, review } = props;
  const { rounds, limit, kind, site } = card;
  const words = p().wear;
  const say = sayOf(props);
  const speaker = speakerOf(props);
  const links = linksOf(review.project.id);
  const title = titleOf(card, speaker);
  const bound = limit && boundOf(limit);
  const { distanceM: briefM } = review.project.brief;
  const markOf = ({ round }: WearRound) => review.rounds.findIndex(({ id }) => id === round);
  const saysOf = (one: WearRound) =>
    limit ? words.roundSays(wearRoundSays(one, briefM), say) : words.measuredTo(one.greatest, say);
  const write = (value: number) =>
    kind === null ? say.number(value, 2) : valueOf(value, { kind }, speaker);
  const shaded = farthestRound(rounds);
  return (
    <section class="paper wear-card" aria-label={bound ? clauses(title, bound) : title}>
      <header>
        <h2>{title}</h2>
        {limit && <Stamp word={stampOfCard(rounds)} />}
        <span class="soft small">{bound ?? words.noLimit}</span>
      </header>
      {rounds.length === 0 || kind === null || site === null ? (
        <p class="soft">{words.notMeasured}</p>
      ) : (
        <Picture
          says={words.says(
            title,
            halves(rounds.map((one) => words.roundLine(say.round(one.round), saysOf(one)))),
          )}
          table={() => ({
            head: [words.table.round, words.table.pair, words.table.distance, words.table.value],
            rows: rounds.flatMap((one) =>
              one.points.map((point) => [
                say.round(one.round),
                <a key="pair" href={links.pair(point.pair)}>
                  {say.pair(point.pair)}
                </a>,
                say.distance(point.x),
                <a key="value" href={links.check(point.check)}>
                  {write(point.value)}
                </a>,
              ]),
            ),
          })}
        >
          <WearPicture
            rounds={rounds}
            markOf={markOf}
            briefM={briefM}
            limit={bound}
            href={({ check }) => links.check(check)}
            point={(one, { pair, value, x }) =>
              words.point(say.round(one.round), say.pair(pair), write(value), say.distance(x))
            }
          />
          <ul class="wear-lines">
            {rounds.map((one) => (
              <li key={one.round}>
                <svg viewBox="-7 -7 14 14" aria-hidden="true">
                  <RoundMark round={markOf(one)} x={0} y={0} size={5} />
                </svg>
                <span>
                  <a href={links.round(one.round)}>{say.round(one.round)}</a> {saysOf(one)}
                </span>
              </li>
            ))}
          </ul>
          {shaded && (
            <p class="soft small">
              {words.shaded(say.round(shaded.round))}
              {rounds.some(isReached) && words.bar}
            </p>
          )}
        </Picture>
      )}
      <Next {...props} />
    </section>
  );
};
