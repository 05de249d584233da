/** What a lead must ask about, each line with its run: pain first, then what came apart, then what waits, then odd runs. */
import type { ComponentChildren } from 'preact';
import { formatDate, formatDistance } from '../../parts/format.ts';
import { d, p, saidOf } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { HowSure } from '../frame/how-sure.tsx';
import { linksOf } from '../frame/route.ts';
import { DamageItem, PainItem, Settled } from '../people/pain-answers.tsx';
import { Some } from '../parts/some.tsx';
import { damagesToAnswer } from '../../../core/headlines/index.ts';

/** More odd runs than this are folded. */
const FEW_ODD = 3;
/** So many who are in pain, and so many pairs that came apart, stand there first. */
const FIRST = 20;

const OddRuns = ({ records, review }: TabProps) => {
  const words = d().ask;
  const names = namesIn(review, records);
  const links = linksOf(review.project.id);
  const { oddities } = review;
  const list: ComponentChildren = (
    <ul class="plain-list">
      <Some of={oddities} step={10}>
        {(oddity) => (
          <li key={`${oddity.run} ${oddity.why}`}>
            <a href={links.run(oddity.run)}>
              {words.run(
                names.tester(oddity.tester),
                names.pair(oddity.pair),
                formatDistance(oddity.distanceM),
                formatDate(oddity.startedAt),
              )}
            </a>
            {saidOf('', words.oddity[oddity.why])}
          </li>
        )}
      </Some>
      {oddities.some(({ why }) => why === 'not-handed-out') && (
        <li class="soft small">{words.notedLate}</li>
      )}
    </ul>
  );
  return oddities.length > FEW_ODD ? (
    <HowSure title={p().runs.oddRuns(new Set(oddities.map(({ run }) => run)).size)}>{list}</HowSure>
  ) : (
    list
  );
};

export const ToAsk = ({ records, review }: TabProps) => {
  const words = d().ask;
  // Those that cannot be read stand above every place, to be put right (`unread.tsx`).
  const leftOut = (['unknown-kind', 'newer-schema'] as const).flatMap((why) => {
    const count = review.leftOut[why];
    return count > 0 ? [words.leftOut[why](count)] : [];
  });
  const waiting = review.waiting.length;
  const pains = review.pains.filter(({ stands }) => stands);
  const damages = damagesToAnswer(review.damages, review.pairs);
  const settled = review.pains.length + review.damages.length - pains.length - damages.length;
  const open = pains.length + damages.length + review.oddities.length + waiting;
  if (open + leftOut.length + settled === 0) return null;
  const isDanger = pains.length + damages.length > 0;
  return (
    // What is settled needs nobody: it stays to be read, without a box.
    <section
      {...(open > 0 && {
        class: isDanger ? 'paper to-ask to-ask-danger' : 'paper to-ask',
        'aria-label': p().runs.needsYou,
      })}
    >
      {open > 0 && <h2>{p().runs.needsYou}</h2>}
      {open > 0 && (
        <ul class="plain-list">
          <Some of={pains} step={FIRST}>
            {(one) => <PainItem key={one.run} records={records} review={review} of={one} />}
          </Some>
          <Some of={damages} step={FIRST}>
            {(one) => <DamageItem key={one.id} records={records} review={review} of={one} />}
          </Some>
          {waiting > 0 && (
            <li>
              <a href={linksOf(review.project.id).place('waiting')}>{p().runs.decide(waiting)}</a>
            </li>
          )}
        </ul>
      )}
      {review.oddities.length > 0 && <OddRuns records={records} review={review} />}
      {leftOut.map((line) => (
        <p key={line} class="soft small">
          {line}
        </p>
      ))}
      <Settled records={records} review={review} />
    </section>
  );
};
