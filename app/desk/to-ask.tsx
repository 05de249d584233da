/** What a lead must ask about: pain first, then samples that came apart, then odd runs and unread records. */
import { Notice } from '../parts/controls/controls.tsx';
import { formatDate, formatDistance } from '../parts/format.ts';
import { d } from '../words/index.ts';
import { namesIn, type TabProps } from './desk-state.ts';
import { DamageItem, PainItem, Settled } from './pain-answers.tsx';
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
  const pains = review.pains.filter(({ stands }) => stands);
  const damages = review.damages.filter(({ stands }) => stands);
  const count = pains.length + damages.length + review.oddities.length + leftOut.length + waiting;
  if (count === 0) return null;
  return (
    <Notice tone={pains.length + damages.length > 0 ? 'danger' : 'plain'}>
      <h2>{words.title}</h2>
      <ul>
        {pains.map((one) => (
          <PainItem key={one.run} records={records} review={review} of={one} />
        ))}
        {damages.map((one) => (
          <DamageItem key={one.id} records={records} review={review} of={one} />
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
      <Settled records={records} review={review} />
      {review.oddities.some(({ why }) => why === 'not-handed-out') && (
        <p class="soft small">{words.notedLate}</p>
      )}
    </Notice>
  );
};
