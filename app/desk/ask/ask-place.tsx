/** What is there to ask testers, and what came back: new answers first, then what nobody asked, then what waits. */
import { useRef } from 'preact/hooks';
import { askHeadline } from '../../../core/headlines/index.ts';
import type { RecordId } from '../../../core/records/index.ts';
import type { TalkItem, ToAsk } from '../../../core/review/index.ts';
import { isUnread } from '../../../core/talk/index.ts';
import { p, t } from '../../words/index.ts';
import { useWork, type PlaceProps, type TabProps } from '../desk-state.ts';
import { OnceOpened } from '../frame/once-opened.tsx';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { sayOf } from '../frame/say.ts';
import { Unfold } from '../parts/form-parts.tsx';
import { Some } from '../parts/some.tsx';
import { AskForm } from './ask-form.tsx';
import { DoubtRow, doubtKey } from './doubt-row.tsx';
import { TalkList } from './talk.tsx';
import { useRead } from './talk-read.ts';

/** So many at a time. */
const STEP = 20;

/** What was new while this place is open: it stays where it is once it is read. */
const useFresh = (items: readonly TalkItem[], nowMs: number): readonly TalkItem[] => {
  const known = useRead();
  const fresh = useRef(new Set<RecordId>());
  const idOf = (item: TalkItem) =>
    (item.kind === 'question' ? item.question : item.message).revision.id;
  if (known !== null)
    for (const item of items) if (isUnread(item, known, nowMs)) fresh.current.add(idOf(item));
  return items.filter((item) => fresh.current.has(idOf(item)));
};

/** A question about nothing in particular, to whoever is chosen. */
const Another = ({ records, review }: TabProps) => (
  <div class="row no-print">
    <Unfold label={p().ask.other}>
      {(close) => (
        <AskForm
          records={records}
          review={review}
          of={{
            testers: records.tester.map(({ revision }) => revision.id),
            about: () => ({}),
            run: null,
            first: [],
          }}
          name="general"
          close={close}
        />
      )}
    </Unfold>
  </div>
);

const Body = (
  props: TabProps & { readonly toAsk: readonly ToAsk[]; readonly items: readonly TalkItem[] },
) => {
  const { toAsk, items, review, records } = props;
  const words = p().ask;
  const fresh = useFresh(items, review.nowMs);
  const waiting = items.filter((item) => item.kind === 'question' && item.open);
  const headline = askHeadline({ toAsk, waiting: waiting.length, unread: fresh.length });
  return (
    <>
      <PlaceHead
        headline={words.headline(headline, sayOf(props))}
        crumbs={[
          { words: p().frame.places.testers, href: linksOf(review.project.id).place('testers') },
          { words: words.crumb },
        ]}
        sub={words.sub}
      />
      {fresh.length > 0 && (
        <section class="paper talk-fresh" aria-label={words.toRead(fresh.length)}>
          <h2>{words.toRead(fresh.length)}</h2>
          <TalkList {...props} items={fresh} />
        </section>
      )}
      <section aria-label={words.doubts}>
        <h2>{words.doubts}</h2>
        {toAsk.length === 0 ? (
          <p class="soft">{words.noDoubts}</p>
        ) : (
          <ul class="plain-list doubts">
            <Some of={toAsk} step={STEP}>
              {(doubt) => (
                <DoubtRow key={doubtKey(doubt)} records={records} review={review} doubt={doubt} />
              )}
            </Some>
          </ul>
        )}
        {records.tester.length > 0 && <Another {...props} />}
      </section>
      {waiting.length > 0 && (
        <section aria-label={words.waiting}>
          <h2>{words.waiting}</h2>
          <TalkList {...props} items={waiting} />
        </section>
      )}
      {items.length > 0 && (
        <OnceOpened title={words.said} bodyClass="how-sure-body">
          <TalkList {...props} items={items} />
        </OnceOpened>
      )}
    </>
  );
};

export const AskPlace = (props: PlaceProps) => {
  const { review, records } = props;
  const { id } = review.project;
  const answer = useWork((desk) => desk.talk(id, {}), records, [id]);
  return answer ? <Body {...props} {...answer} /> : <p class="soft">{t().loading}</p>;
};
