/** One remark: the words, where they are from, what was tapped beside them, and what they name that was not. */
import { mentionKey, type FoundRemark, type Mention } from '../../../core/words/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { showToast } from '../../parts/controls/toast.tsx';
import { formatDate } from '../../parts/format.ts';
import { PhotoRow } from '../../parts/photos/photo-view.tsx';
import { p, t, terms } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { linksOf } from '../frame/route.ts';
import { roundDistance, sayOf } from '../frame/say.ts';
import { askAgain, leave } from './left-mentions.ts';
import { MarkedText } from './marked-text.tsx';
import { removeQuote } from './quote-writes.ts';
import { sourceLink } from './source-link.ts';

const leaveIt = (key: string): void => {
  leave(key);
  showToast({
    text: p().words.leftNow,
    action: { label: t().undo, run: () => askAgain(key) },
  });
};

const perhapsInWords = (props: TabProps, { zone, kind }: Mention): string => {
  const words = p().words;
  const glossary = terms();
  const within = (name: string) => name.charAt(0).toLocaleLowerCase() + name.slice(1);
  if (kind === null) return zone === null ? '' : words.perhapsAt(within(glossary.zones[zone].name));
  return words.perhaps(
    zone === null ? within(glossary.kinds[kind].name) : sayOf(props).felt({ zone, kind }),
  );
};

const Perhaps = (props: TabProps & { readonly remark: FoundRemark; readonly of: Mention }) => {
  const { remark, of } = props;
  const words = p().words;
  const asked = perhapsInWords(props, of);
  const who = namesIn(props.review, props.records).tester(remark.tester);
  return (
    <p class="remark-perhaps small">
      <b>{asked}</b> {words.perhapsWho(who)}{' '}
      <Button kind="quiet" onClick={() => leaveIt(mentionKey(remark.id, of))}>
        {words.leave}
      </Button>
    </p>
  );
};

const Marks = (props: TabProps & { readonly remark: FoundRemark }) => {
  const { records, review, remark } = props;
  const words = p().words;
  const links = linksOf(review.project.id);
  return (
    <>
      {remark.marks.map(({ quote, finding }) => {
        const found = records.finding.find(({ revision }) => revision.id === finding);
        return found ? (
          <span key={quote}>
            {' · '}
            <a href={links.finding(found.revision.id)}>{words.quotedIn(found.body.title)}</a>
          </span>
        ) : (
          <span key={quote}>
            {' · '}
            <b>{words.isMarked}</b>{' '}
            <Button kind="quiet" onClick={() => void removeQuote(quote, words.unmarked)}>
              {words.unmark}
            </Button>
          </span>
        );
      })}
    </>
  );
};

/** What was tapped on the run, each complaint once whatever the foot. */
const tappedIn = (props: TabProps, { on, tapped }: FoundRemark): string => {
  const say = sayOf(props);
  const each = new Set(tapped.map((felt) => say.felt(felt)));
  if (each.size > 0) return [...each].join(' · ');
  return on === 'damage' || on === 'check' ? p().words.places[on] : p().words.notTapped;
};

export const RemarkRow = (
  props: TabProps & {
    readonly remark: FoundRemark;
    readonly chosen: boolean;
    readonly choose: (chosen: boolean) => void;
  },
) => {
  const { review, records, remark, chosen, choose } = props;
  const words = p().words;
  const names = namesIn(review, records);
  const links = linksOf(review.project.id);
  const who = remark.tester === null ? words.theShop : names.tester(remark.tester);
  const date = formatDate(remark.atMs);
  return (
    <li class={`remark${chosen ? ' remark-chosen' : ''}`}>
      <input
        type="checkbox"
        class="tick"
        checked={chosen}
        aria-label={words.choose(who, date)}
        onChange={(event) => choose(event.currentTarget.checked)}
      />
      <div class="remark-said">
        <p>
          <MarkedText text={remark.text} hits={remark.hits} />
        </p>
        <p class="soft small">
          <a href={sourceLink(remark, links)}>{date}</a>
          {' · '}
          {remark.tester === null ? who : <a href={links.tester(remark.tester)}>{who}</a>}
          {' · '}
          <a href={links.pair(remark.pair)}>
            {words.pairOf(
              names.pair(remark.pair),
              remark.round === null ? '' : names.round(remark.round),
            )}
          </a>
          {' · '}
          {tappedIn(props, remark)}
          <Marks {...props} />
        </p>
        {remark.untapped.map((of) => (
          <Perhaps key={mentionKey(remark.id, of)} {...props} of={of} />
        ))}
      </div>
      <span class="remark-at">{roundDistance(remark.pairM)}</span>
      <PhotoRow photos={remark.photos} label={who} />
    </li>
  );
};
