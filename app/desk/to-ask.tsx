/** What a lead must ask about: pain first, then samples that came apart, then odd runs and unread records. */
import { Notice } from '../parts/controls/controls.tsx';
import { PhotoRow } from '../parts/photos/photo-view.tsx';
import { formatDate, formatDistance } from '../parts/format.ts';
import { d, terms } from '../words/index.ts';
import { namesIn, type TabProps } from './desk-state.ts';
import { Some } from './some.tsx';

export const ToAsk = ({ records, review }: TabProps) => {
  const words = d().ask;
  const names = namesIn(review, records);
  // Those that cannot be read stand above every tab, to be put right (`unread.tsx`).
  const leftOut = (['unknown-kind', 'newer-schema'] as const).flatMap((why) => {
    const count = review.leftOut[why];
    return count > 0 ? [words.leftOut[why](count)] : [];
  });
  const waiting = review.waiting.length;
  const count =
    review.pains.length + review.damages.length + review.oddities.length + leftOut.length + waiting;
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
        {waiting > 0 && (
          <li>
            <a href={`/desk/${review.project.id}/waiting`}>{d().waiting.link(waiting)}</a>
          </li>
        )}
        <Some of={review.oddities} step={10}>
          {(oddity) => (
            <li key={`${oddity.run} ${oddity.why}`}>
              {`${words.run(
                names.tester(oddity.tester),
                names.pair(oddity.pair),
                formatDistance(oddity.distanceM),
                formatDate(oddity.startedAt),
              )}: ${words.oddity[oddity.why]}`}
            </li>
          )}
        </Some>
        {leftOut.map((line) => (
          <li key={line} class="soft">
            {line}
          </li>
        ))}
      </ul>
      {review.oddities.some(({ why }) => why === 'not-handed-out') && (
        <p class="soft small">{words.notedLate}</p>
      )}
    </Notice>
  );
};
