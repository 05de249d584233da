/** How comfortable the testers found each round: wear scores, first impressions apart, and what they prefer. */
import { comfortAttributeIds } from '../../core/foot/index.ts';
import type { ComfortScores } from '../../core/review/index.ts';
import { formatNumber } from '../parts/format.ts';
import { d, terms } from '../words/index.ts';
import { namesIn, type TabProps } from './desk-state.ts';

const inWords = (scores: ComfortScores | undefined): string =>
  scores === undefined
    ? d().none
    : `${formatNumber(scores.mean, 0)} (${formatNumber(scores.lowest, 0)}–${formatNumber(scores.highest, 0)}; ${d().comfort.of(scores.testers, scores.scores)})`;

export const Comfort = ({ records, review }: TabProps) => {
  const words = d().comfort;
  const names = namesIn(review, records);
  const rounds = review.rounds.filter(
    ({ comfort }) => comfort.wear.length + comfort.firstImpressions.length > 0,
  );
  const asked = comfortAttributeIds.filter((attribute) =>
    rounds.some(({ comfort }) =>
      [...comfort.wear, ...comfort.firstImpressions].some((one) => one.attribute === attribute),
    ),
  );
  return (
    <>
      {rounds.length === 0 ? (
        <p>{words.nobody}</p>
      ) : (
        (['wear', 'firstImpressions'] as const).map((part) => (
          <section class="stack" key={part}>
            <h2>{words[part]}</h2>
            <div class="table-wrap" tabIndex={0} role="region" aria-label={words[part]}>
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
                  {asked.map((attribute) => (
                    <tr key={attribute}>
                      <th scope="row">{terms().attributes[attribute].name}</th>
                      {rounds.map(({ id, comfort }) => (
                        <td class="right" key={id}>
                          {inWords(comfort[part].find((one) => one.attribute === attribute))}
                        </td>
                      ))}
                    </tr>
                  ))}
                </tbody>
              </table>
            </div>
          </section>
        ))
      )}
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
