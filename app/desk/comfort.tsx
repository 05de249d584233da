/** How comfortable the testers found each round: wear scores, first impressions apart, and what they prefer. */
import { comfortAttributeIds } from '../../core/foot/index.ts';
import type { ComfortChange, ComfortDrift, ComfortScore } from '../../core/complaints/index.ts';
import type { RoundSummary } from '../../core/review/index.ts';
import type { Interval } from '../../core/statistics/index.ts';
import { formatNumber } from '../parts/format.ts';
import { signed } from '../words/figures.ts';
import { d, terms } from '../words/index.ts';
import { namesIn, type TabProps } from './desk-state.ts';

const signedWhole = (value: number): string => signed(value, (size) => formatNumber(size, 0));

const between = (interval: Interval | null, write: (value: number) => string): string =>
  interval === null ? '' : ` (${write(interval.lower)} … ${write(interval.upper)})`;

const whole = (value: number): string => formatNumber(value, 0);

const scoreInWords = (score: ComfortScore | null | undefined): string =>
  score
    ? `${whole(score.mean)}${between(score.interval, whole)}; ${d().comfort.of(score.n, score.runs)}`
    : d().none;

const signedTenths = (value: number): string => signed(value, (size) => formatNumber(size, 1));

const driftInWords = ({ per100Km, interval }: ComfortDrift): string =>
  `${signedTenths(per100Km)}${between(interval, signedTenths)}`;

const Scores = (props: { rounds: readonly RoundSummary[]; part: 'wear' | 'firstImpression' }) => {
  const { rounds, part } = props;
  const words = d().comfort;
  const title = part === 'wear' ? words.wear : words.firstImpressions;
  const rows = comfortAttributeIds.flatMap((attribute) => {
    const cells = rounds.map(({ id, comfort }) => ({
      id,
      own: comfort.find((one) => one.attribute === attribute),
    }));
    return cells.some(({ own }) => own?.[part]) ? [{ attribute, cells }] : [];
  });
  if (rows.length === 0) return null;
  return (
    <section class="stack">
      <h2>{title}</h2>
      <div class="table-wrap" tabIndex={0} role="region" aria-label={title}>
        <table>
          <thead>
            <tr>
              <th scope="col">{words.attribute}</th>
              {rounds.map(({ id, name }) => (
                <th scope="col" class="right" key={id}>
                  {name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map(({ attribute, cells }) => (
              <tr key={attribute}>
                <th scope="row">{terms().attributes[attribute].name}</th>
                {cells.map(({ id, own }) => (
                  <td class="right" key={id}>
                    {scoreInWords(own?.[part])}
                    {part === 'wear' && own?.drift && (
                      <>
                        <br />
                        <span class="soft small">
                          {`${words.drift}: ${driftInWords(own.drift)}`}
                        </span>
                      </>
                    )}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
};

/** Changes of the comfort scores between two rounds, as a table. */
export const ComfortChanges = ({
  title,
  changes,
}: {
  title: string;
  changes: readonly ComfortChange[];
}) => {
  const words = d().comfort;
  return (
    <section class="stack">
      <h2>{title}</h2>
      <div class="table-wrap" tabIndex={0} role="region" aria-label={title}>
        <table>
          <thead>
            <tr>
              <th scope="col">{words.attribute}</th>
              <th scope="col" class="right">
                {words.change}
              </th>
              <th scope="col">{d().complaints.proof}</th>
              <th scope="col">{d().tabs.testers}</th>
            </tr>
          </thead>
          <tbody>
            {changes.map(({ attribute, difference, interval, word, by, testers }) => (
              <tr key={attribute}>
                <th scope="row">{terms().attributes[attribute].name}</th>
                <td class="right">{`${signedWhole(difference)}${between(interval, signedWhole)}`}</td>
                <td class={word === 'worse' ? 'outside' : ''}>{terms().comfortChanges[word]}</td>
                <td>{`${testers}, ${words.by[by]}`}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
};

export const Comfort = ({ records, review }: TabProps) => {
  const words = d().comfort;
  const names = namesIn(review, records);
  const rounds = review.rounds.filter(({ comfort }) => comfort.length > 0);
  return (
    <>
      {rounds.length === 0 && <p>{words.nobody}</p>}
      <Scores rounds={rounds} part="wear" />
      {review.rounds.map(({ id, name, comfortChanges }, at) =>
        comfortChanges.length === 0 ? null : (
          <ComfortChanges
            key={id}
            title={words.changes(review.rounds[at - 1]?.name ?? '', name)}
            changes={comfortChanges}
          />
        ),
      )}
      <Scores rounds={rounds} part="firstImpression" />
      <p class="soft small">{words.how}</p>
      <section class="stack">
        <h2>{words.preferred}</h2>
        {review.preferences.length === 0 ? (
          <p>{words.noOrder}</p>
        ) : (
          <ul class="plain-list">
            {review.preferences.map((one) => (
              <li key={`${one.first} ${one.second}`}>
                {words.prefer(
                  { name: names.round(one.first), testers: one.preferFirst },
                  { name: names.round(one.second), testers: one.preferSecond },
                  one.equal,
                )}
                {one.unblinded > 0 && (
                  <span class="outside">{` ${words.unblinded(one.unblinded)}`}</span>
                )}
              </li>
            ))}
          </ul>
        )}
      </section>
    </>
  );
};
