/** What they want moved, line by line: each person a dot, the middle, the spread; what most want goes into a finding. */
import {
  changeOf,
  FEWEST_TO_AGREE,
  wantedMoves,
  type WantedMove,
} from '../../../core/fitting/index.ts';
import { LinkButton } from '../../parts/controls/controls.tsx';
import { changeSpeaker, sayChange } from '../../parts/change-speaker.ts';
import { formatNumber } from '../../parts/format.ts';
import { clauses, halves, listed, p, saidOf } from '../../words/index.ts';
import { amountInWords, whatInWords } from '../../words/say-talk.ts';
import { linksOf } from '../frame/route.ts';
import { nameByKey } from './names.ts';
import { askedIn } from './session-facts.ts';
import type { SessionProps } from './session-props.ts';

const STRIP = { width: 300, height: 46, from: 14, line: 26 } as const;
/** The scale ends here at least, so that 1 mm does not fill it. */
const LEAST_SCALE = 5;

/** What moves and which way, without how far: "Heel curve: inward"; where they are divided, what moves alone. */
const moveInWords = (move: WantedMove): string => {
  const { direction, unit: _, by: __, ...what } = move;
  return direction === null
    ? whatInWords(move, changeSpeaker())
    : sayChange({ ...what, direction });
};

/** An amount of a move in its unit, such as "2 mm". */
export const farInWords = (amount: number, unit: WantedMove['unit']): string =>
  amountInWords({ amount, unit }, changeSpeaker());

const Strip = ({
  move,
  name,
}: {
  readonly move: WantedMove;
  readonly name: (key: string) => string;
}) => {
  const { by, wishes, unit } = move;
  if (by === null) return <p class="soft small">{p().fitting.noAmount}</p>;
  const least = Math.min(0, by.least);
  const most = Math.max(LEAST_SCALE, by.most);
  const span = STRIP.width - 2 * STRIP.from;
  const x = (value: number) => STRIP.from + (span * (value - least)) / (most - least);
  const dots = new Map<number, string[]>();
  for (const { by: far, fitter } of wishes)
    if (far !== null) dots.set(far, [...(dots.get(far) ?? []), name(fitter)]);
  const label = [...dots].map(([far, who]) => saidOf(listed(who), farInWords(far, unit)));
  return (
    <svg
      class="fit-strip"
      viewBox={`0 0 ${STRIP.width} ${STRIP.height}`}
      role="img"
      aria-label={halves(label)}
    >
      <line class="fit-axis" x1={x(least)} x2={x(most)} y1={STRIP.line} y2={STRIP.line} />
      <line class="fit-now" x1={x(0)} x2={x(0)} y1={STRIP.line - 8} y2={STRIP.line + 8} />
      <line class="fit-range" x1={x(by.least)} x2={x(by.most)} y1={STRIP.line} y2={STRIP.line} />
      {[...dots].map(([far, who]) => (
        <g key={far}>
          <title>{who.join(' ')}</title>
          <circle class="fit-dot" cx={x(far)} cy={STRIP.line} r={3 + Math.min(4, who.length)} />
          <text x={x(far)} y={STRIP.line - 11} text-anchor="middle">
            {who.length > 1 ? `${who.length}×` : who[0]}
          </text>
        </g>
      ))}
      <path class="fit-middle" d={`M${x(by.median)} ${STRIP.line + 8}l6 10h-12Z`} />
      <text class="soft" x={x(most) + 4} y={STRIP.line + 4}>
        {formatNumber(most, 1)}
      </text>
    </svg>
  );
};

const Move = (props: SessionProps & { readonly move: WantedMove }) => {
  const { facts, move, review, records } = props;
  const words = p().fitting;
  const links = linksOf(review.project.id);
  const { id } = facts.session.revision;
  const agree = move.wishes.filter(({ agrees }) => agrees).length;
  const against = move.wishes.length - agree;
  const change = changeOf(move);
  const asked = askedIn(move, id, records);
  const figure = change?.by ? farInWords(change.by.amount, change.by.unit) : null;
  return (
    <li class="fit-move" aria-label={moveInWords(move)}>
      <div>
        <b>{moveInWords(move)}</b>
        <span class="soft small fit-under">
          {move.direction === null
            ? words.split
            : clauses(
                words.agree(agree, facts.fitters.length),
                ...(against > 0 ? [words.against(against)] : []),
              )}
          {figure !== null && ` · ${words.middle(figure)}`}
        </span>
      </div>
      <Strip move={move} name={nameByKey(facts.fitters, props)} />
      <div class="no-print">
        {asked ? (
          <a href={links.finding(asked.revision.id)}>{words.asked}</a>
        ) : change === null ? null : agree < FEWEST_TO_AGREE ? (
          <span class="soft small">
            {words.tooFew(agree)}{' '}
            <a href={links.place('fitting', id, 'ask', move.key)}>{words.ask(figure)}</a>
          </span>
        ) : (
          <LinkButton kind="main" href={links.place('fitting', id, 'ask', move.key)}>
            {words.ask(figure)}
          </LinkButton>
        )}
      </div>
    </li>
  );
};

export const WantedPart = (props: SessionProps) => {
  const words = p().fitting;
  const moves = wantedMoves(props.facts.fitters);
  return (
    <section class="paper fit-wanted" aria-label={words.wanted}>
      <h2>{words.wanted}</h2>
      {moves.length === 0 ? (
        <p class="soft">{words.noWanted}</p>
      ) : (
        <>
          <p class="soft small">{words.wantedHint}</p>
          <ul class="plain-list fit-moves">
            {moves.map((move) => (
              <Move key={move.key} {...props} move={move} />
            ))}
          </ul>
        </>
      )}
    </section>
  );
};
