/**
 * Too much or too little: for each question of the latest rounds, testers on both sides of just right, how sure it is, what
 * it costs in overall comfort, and whether it came closer since the round before.
 */
import type { Side } from '../../../core/foot/index.ts';
import type { TwoSidedLook, TwoSidedRound } from '../../../core/review/index.ts';
import { RoundMark } from '../../parts/charts/interval-line.tsx';
import { clauses, halves, p, terms } from '../../words/index.ts';
import {
  costsInWords,
  knownInWords,
  lostFigures,
  sidesInWords,
} from '../../words/say-two-sided.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { Picture } from '../frame/picture.tsx';
import { SureStamp } from '../frame/stamp.tsx';
import { linksOf } from '../frame/route.ts';
import { speakerOf } from '../parts/speaker.ts';
import './too-much.css';

const SIDES: readonly Side[] = ['low', 'right', 'high'];

/** Rounds drawn of one question, the latest ones. */
const MOST_ROUNDS = 3;

/**
 * The testers of one round as a bar: those for whom it is right about the middle of the line, the others to their sides.
 * Each half of the line is all of them.
 */
const SidesBar = (props: { readonly one: TwoSidedRound; readonly says: string }) => {
  const { counts, mean } = props.one;
  const share = (side: Side) => counts[side] / mean.n;
  const widths = { low: share('low') / 2, right: share('right') / 2, high: share('high') / 2 };
  const from = {
    low: 0.5 - widths.right / 2 - widths.low,
    right: 0.5 - widths.right / 2,
    high: 0.5 + widths.right / 2,
  };
  return (
    <div class="sides-bar" role="img" aria-label={props.says}>
      <i class="sides-middle" />
      {SIDES.map(
        (side) =>
          counts[side] > 0 && (
            <span
              key={side}
              class={`sides-${side === 'right' ? 'right' : 'off'}`}
              style={{
                insetInlineStart: `${100 * from[side]}%`,
                inlineSize: `${100 * widths[side]}%`,
              }}
            >
              {counts[side]}
            </span>
          ),
      )}
    </div>
  );
};

const Row = (props: TabProps & { readonly look: TwoSidedLook }) => {
  const { review, records, look } = props;
  const words = p().tooMuch;
  const speaker = speakerOf(props);
  const names = namesIn(review, records);
  const { name, low, high } = terms().twoSided[look.attribute];
  const rounds = look.rounds.slice(-MOST_ROUNDS);
  const last = rounds.at(-1);
  if (!last) return null;
  const isOff = last.word === 'low' || last.word === 'high';
  const cost = isOff ? last.cost[last.word === 'low' ? 'low' : 'high'] : null;
  return (
    <li class="sides">
      <h3>{name}</h3>
      <span class="sides-low small soft">{low}</span>
      <div class="sides-bars">
        {rounds.map((one) => (
          <div class="sides-line" key={one.round}>
            {rounds.length > 1 && (
              <svg class="key-mark" viewBox="0 0 16 16" aria-hidden="true">
                <RoundMark
                  round={review.rounds.findIndex(({ id }) => id === one.round)}
                  x={8}
                  y={8}
                />
              </svg>
            )}
            <SidesBar
              one={one}
              says={words.rowSays(name, names.round(one.round), sidesInWords(one, speaker))}
            />
          </div>
        ))}
      </div>
      <span class="sides-high small soft">{high}</span>
      <span class="sides-known">
        {isOff ? (
          <>
            <b>{last.word === 'low' ? low : high}</b> <SureStamp word={last.sure} />
          </>
        ) : (
          <span class="soft">{knownInWords(last, speaker)}</span>
        )}
      </span>
      <span class="sides-cost small">
        {isOff &&
          (cost ? (
            words.costOf(...lostFigures(cost, speaker))
          ) : (
            <span class="soft">{words.costNone}</span>
          ))}
      </span>
      <span class="sides-move small">
        {last.change && (
          <>
            {words.moves[last.change.word]}{' '}
            <span class="soft">{words.bySame(last.change.testers)}</span>
          </>
        )}
      </span>
    </li>
  );
};

/** Old answers are there, on another line: which rounds, which questions. */
const OldLine = (props: TabProps & { readonly look: readonly TwoSidedLook[] }) => {
  const { review, records, look } = props;
  const say = speakerOf(props).desk.joined;
  const old = look.filter(({ onOldLine }) => onOldLine.length > 0);
  if (old.length === 0) return null;
  const names = namesIn(review, records);
  const rounds = review.rounds.filter(({ id }) => old.some((one) => one.onOldLine.includes(id)));
  return (
    <p class="small soft">
      {p().tooMuch.oldLine(
        say.clauses(rounds.map(({ id }) => names.round(id))),
        say.clauses(old.map(({ attribute }) => terms().twoSided[attribute].name)),
      )}
    </p>
  );
};

/** Off first, surest first; then in the order in which testers are asked. */
const rank = ({ rounds }: TwoSidedLook): number => {
  const last = rounds.at(-1);
  if (last?.word === 'low' || last?.word === 'high') return last.sure === 'clear' ? 0 : 1;
  return last?.word === 'split' ? 2 : 3;
};

export const TooMuch = (props: TabProps & { readonly look: readonly TwoSidedLook[] }) => {
  const { review, records, look } = props;
  const words = p().tooMuch;
  const speaker = speakerOf(props);
  const names = namesIn(review, records);
  const links = linksOf(review.project.id);
  const rows = look.toSorted((a, b) => rank(a) - rank(b));
  const shown = new Set(
    rows.flatMap(({ rounds }) => rounds.slice(-MOST_ROUNDS).map(({ round }) => round)),
  );
  const latest = review.rounds.findLast(({ id }) => shown.has(id));
  return (
    <section aria-label={words.title}>
      <h2>{words.title}</h2>
      <Picture
        says={words.pictureSays(latest?.name ?? '')}
        table={() => ({
          head: [words.question, words.sides, words.known, words.cost],
          rows: rows.flatMap(({ attribute, rounds }) =>
            rounds.map((one) => [
              clauses(terms().twoSided[attribute].name, names.round(one.round)),
              sidesInWords(one, speaker),
              knownInWords(one, speaker),
              halves(costsInWords(attribute, one.cost, speaker)),
            ]),
          ),
        })}
      >
        <p class="small soft">{words.note}</p>
        {shown.size > 1 && (
          <p class="comfort-key small">
            {review.rounds.map(
              ({ id, name }, at) =>
                shown.has(id) && (
                  <span key={id}>
                    <svg class="key-mark" viewBox="0 0 16 16" aria-hidden="true">
                      <RoundMark round={at} x={8} y={8} />
                    </svg>{' '}
                    <a href={links.round(id)}>{name}</a>
                  </span>
                ),
            )}
          </p>
        )}
        <ul class="plain-list">
          <li class="sides sides-head small soft" aria-hidden="true">
            <span>{words.question}</span>
            <span class="sides-bars">{words.sides}</span>
            <span class="sides-known">{words.known}</span>
            <span class="sides-cost">{words.cost}</span>
            <span class="sides-move">{words.move}</span>
          </li>
          {rows.map((one) => (
            <Row key={one.attribute} {...props} look={one} />
          ))}
        </ul>
        <OldLine {...props} look={look} />
      </Picture>
    </section>
  );
};
