/** What a lead must ask about: pain first, then samples that came apart, then odd runs and unread records. */
import { Notice } from '../parts/controls/controls.tsx';
import { PhotoRow } from '../parts/photos/photo-view.tsx';
import { formatDate, formatDistance } from '../parts/format.ts';
import { d, terms } from '../words/index.ts';
import { namesIn, type TabProps } from './desk-state.ts';

export const ToAsk = ({ records, review }: TabProps) => {
  const words = d().ask;
  const names = namesIn(review, records);
  const runs = new Map(records.run.map(({ body, revision }) => [revision.id, body]));
  const leftOut = (['unknown-kind', 'newer-schema', 'unreadable'] as const).flatMap((why) => {
    const count = review.leftOut.filter((one) => one.why === why).length;
    return count > 0 ? [words.leftOut[why](count)] : [];
  });
  const count =
    review.pains.length + review.damages.length + review.oddities.length + leftOut.length;
  if (count === 0) return null;
  const urgent = review.pains.length + review.damages.length > 0;
  return (
    <Notice tone={urgent ? 'danger' : 'plain'}>
      <h2>{words.title}</h2>
      <ul>
        {review.pains.map(({ run, tester, pair, score, at }) => (
          <li key={run}>
            <strong>
              {words.pain(names.tester(tester), score, names.pair(pair), formatDate(at))}
            </strong>
          </li>
        ))}
        {review.damages.map(({ id, tester, pair, what, at, photos }) => (
          <li key={id}>
            <strong>
              {words.damage(
                names.tester(tester),
                names.pair(pair),
                terms().damages[what],
                formatDate(at),
              )}
            </strong>
            <PhotoRow photos={photos} label={`${names.pair(pair)}, ${terms().damages[what]}`} />
          </li>
        ))}
        {review.oddities.map((oddity) => {
          const run = runs.get(oddity.run);
          const who = run
            ? words.run(
                names.tester(run.tester),
                names.pair(run.pair),
                formatDistance(run.distanceM),
                formatDate(run.startedAt),
              )
            : '?';
          return (
            <li key={`${oddity.run} ${oddity.why}`}>{`${who}: ${words.oddity[oddity.why]}`}</li>
          );
        })}
        {leftOut.map((line) => (
          <li key={line} class="soft">
            {line}
          </li>
        ))}
      </ul>
    </Notice>
  );
};
