/** The figures behind too much and too little: shares with intervals, what chance alone gives, costs, round against round. */
import type { RoundSummary } from '../../../core/review/index.ts';
import type { Interval } from '../../../core/statistics/index.ts';
import { formatNumber, formatPercent } from '../../parts/format.ts';
import { signed } from '../../words/figures.ts';
import { clauses, d, halves, terms } from '../../words/index.ts';
import { costsInWords, knownInWords, sidesInWords } from '../../words/say-two-sided.ts';
import type { TabProps } from '../desk-state.ts';
import { speakerOf } from '../parts/speaker.ts';
import { TwoSidedMoves } from '../parts/two-sided-moves.tsx';

const mark = (value: number): string => signed(value, (size) => formatNumber(size, 0));
const between = (interval: Interval | null, write: (value: number) => string): string =>
  interval === null ? '' : ` (${write(interval.lower)} … ${write(interval.upper)})`;
const chance = (p: number): string => formatNumber(p, 3);

const Figures = (props: TabProps & { readonly round: RoundSummary }) => {
  const { round } = props;
  const words = d().comfort.twoSided;
  const speaker = speakerOf(props);
  const title = d().joined.of(words.title, round.name);
  return (
    <section class="stack">
      <h2>{title}</h2>
      <div class="table-wrap" tabIndex={0} role="region" aria-label={title}>
        <table>
          <thead>
            <tr>
              <th scope="col">{words.question}</th>
              <th scope="col">{words.testers}</th>
              <th scope="col">{words.known}</th>
              <th scope="col" class="right">
                {words.mean}
              </th>
              <th scope="col">{words.share}</th>
              <th scope="col" class="right">
                {words.chance}
              </th>
              <th scope="col">{words.cost}</th>
            </tr>
          </thead>
          <tbody>
            {round.twoSided.map((one) => (
              <tr key={one.attribute}>
                <th scope="row">{terms().twoSided[one.attribute].name}</th>
                <td>
                  {halves([sidesInWords(one, speaker), d().comfort.of(one.mean.n, one.runs)])}
                </td>
                <td>{knownInWords(one, speaker)}</td>
                <td class="right">{`${mark(one.mean.mean)}${between(one.mean.interval, mark)}`}</td>
                <td>
                  {clauses(
                    ...(['low', 'high'] as const).map(
                      (side) =>
                        `${formatPercent(one.counts[side] / one.mean.n)}${between(one.share[side], formatPercent)}`,
                    ),
                  )}
                </td>
                <td class="right">{clauses(chance(one.p), chance(one.adjustedP))}</td>
                <td>{halves(costsInWords(one.attribute, one.cost, speaker)) || words.noCost}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
};

export const TooMuchProof = (props: TabProps) => {
  const rounds = props.review.rounds.filter(({ twoSided }) => twoSided.length > 0);
  if (rounds.length === 0) return null;
  return (
    <div class="stack">
      {rounds.map((round) => (
        <Figures key={round.id} {...props} round={round} />
      ))}
      {props.review.rounds.map(
        (round, at) =>
          round.twoSidedChanges.length > 0 && (
            <TwoSidedMoves
              key={round.id}
              title={d().comfort.twoSided.movedTitle(
                props.review.rounds[at - 1]?.name ?? '',
                round.name,
              )}
              changes={round.twoSidedChanges}
              speaker={speakerOf(props)}
            />
          ),
      )}
      <p class="soft small">{d().comfort.twoSided.how}</p>
    </div>
  );
};
