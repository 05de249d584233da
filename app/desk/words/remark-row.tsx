/** One remark: the words, where they are from, what was tapped beside them, and what they name that was not. */
import {
  mentionKey,
  sentencesOf,
  type FoundRemark,
  type Mention,
} from '../../../core/words/index.ts';
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
import { removeQuote, type ChosenRemark } from './quote-writes.ts';
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

/** The pairs that a remark or a quote is about, each with its page; the round is said after the last one. */
export const PairLinks = (
  props: TabProps & { readonly of: Pick<FoundRemark, 'pairs' | 'round'> },
) => {
  const { review, records, of } = props;
  const names = namesIn(review, records);
  const links = linksOf(review.project.id);
  const round = of.round === null ? '' : names.round(of.round);
  return (
    <>
      {of.pairs.map((pair, at) => (
        <span key={pair}>
          {at > 0 && ' · '}
          <a href={links.pair(pair)}>
            {p().words.pairOf(names.pair(pair), at === of.pairs.length - 1 ? round : '')}
          </a>
        </span>
      ))}
    </>
  );
};

/** What was tapped on the run, each complaint once whatever the foot. */
const tappedIn = (props: TabProps, { on, sourceKind, tapped }: FoundRemark): string => {
  const say = sayOf(props);
  const each = new Set(tapped.map((felt) => say.felt(felt)));
  if (each.size > 0) return [...each].join(' · ');
  return sourceKind === 'run' ? p().words.notTapped : p().words.places[on];
};

/** Which part of a chosen remark is quoted; nothing where it is one sentence. */
const Sentences = (props: {
  readonly chosen: ChosenRemark;
  readonly choose: (chosen: ChosenRemark) => void;
}) => {
  const { chosen, choose } = props;
  const { sentence: now, ...whole } = chosen;
  const words = p().words;
  const sentences = [...new Set(sentencesOf(chosen.text))];
  if (sentences.length < 2) return null;
  return (
    <fieldset class="remark-sentences small no-print">
      <legend class="soft">{words.quoteWhat}</legend>
      {[undefined, ...sentences].map((sentence) => (
        <label key={sentence ?? ''}>
          <input
            type="radio"
            name={`quoted ${chosen.id}`}
            checked={now === sentence}
            onChange={() => choose(sentence === undefined ? whole : { ...whole, sentence })}
          />{' '}
          {sentence ?? words.wholeRemark}
        </label>
      ))}
    </fieldset>
  );
};

export const RemarkRow = (
  props: TabProps & {
    readonly remark: FoundRemark;
    /** Null: not chosen. */
    readonly chosen: ChosenRemark | null;
    readonly choose: (chosen: ChosenRemark | null) => void;
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
        checked={chosen !== null}
        aria-label={words.choose(who, date)}
        onChange={(event) => choose(event.currentTarget.checked ? remark : null)}
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
          <PairLinks {...props} of={remark} />
          {' · '}
          {tappedIn(props, remark)}
          <Marks {...props} />
        </p>
        {chosen && <Sentences chosen={chosen} choose={choose} />}
        {remark.untapped.map((of) => (
          <Perhaps key={mentionKey(remark.id, of)} {...props} of={of} />
        ))}
      </div>
      <span class="remark-at">{remark.pairM !== null && roundDistance(remark.pairM)}</span>
      <PhotoRow photos={remark.photos} label={who} />
    </li>
  );
};
