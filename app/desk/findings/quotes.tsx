/** What testers say of a finding, as a lead quoted it: with the run behind it, and whether specialists may read it. */
import type { QuoteLook } from '../../../core/words/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { formatDate } from '../../parts/format.ts';
import { p } from '../../words/index.ts';
import { namesIn, useWork } from '../desk-state.ts';
import { linksOf } from '../frame/route.ts';
import { roundDistance } from '../frame/say.ts';
import { changeSent, removeQuote } from '../words/quote-writes.ts';
import { PairLinks } from '../words/remark-row.tsx';
import { sourceLink } from '../words/source-link.ts';
import { wordsAddress } from '../words/words-address.ts';
import type { FindingProps } from './finding-props.ts';

const QuoteItem = (props: FindingProps & { readonly of: QuoteLook }) => {
  const { review, records, of } = props;
  const { id, quote, state } = of;
  const words = p().words;
  const names = namesIn(review, records);
  const links = linksOf(review.project.id);
  const who = quote.tester === undefined ? words.theShop : names.tester(quote.tester);
  return (
    <li>
      <q>{quote.words}</q>
      <p class="soft small">
        {quote.tester === undefined ? who : <a href={links.tester(quote.tester)}>{who}</a>}
        {of.of && (
          <>
            {' · '}
            <a href={sourceLink(quote, links)}>{formatDate(of.of.atMs)}</a>
            {' · '}
            <PairLinks {...props} of={of.of} />
            {of.of.pairM !== null && <> · {roundDistance(of.of.pairM)}</>}
          </>
        )}
        {state !== 'as-said' && <b> {words.states[state]}</b>}{' '}
        {quote.sent === undefined ? words.onlyLeads : words.sent(formatDate(quote.sent))}
      </p>
      <span class="row no-print">
        <Button kind="quiet" onClick={() => void changeSent(id, quote.sent === undefined)}>
          {quote.sent === undefined ? words.send : words.unsend}
        </Button>
        <Button kind="quiet" onClick={() => void removeQuote(id, words.removed)}>
          {words.remove}
        </Button>
      </span>
    </li>
  );
};

export const Quotes = (props: FindingProps) => {
  const { review, records, finding } = props;
  const { id } = finding.revision;
  const words = p().words;
  const list = useWork((desk) => desk.quotes(review.project.id, id), records, [id]);
  if (!list) return null;
  const { zone } = finding.body;
  const place = linksOf(review.project.id).place('words');
  return (
    <section class="paper finding-quotes" aria-label={words.quotes}>
      <h2>{words.quotes}</h2>
      {list.length === 0 ? (
        <p class="soft">{words.noQuotes}</p>
      ) : (
        <>
          <ul class="plain-list">
            {list.map((one) => (
              <QuoteItem key={one.id} {...props} of={one} />
            ))}
          </ul>
          <p class="soft small">{words.keeps}</p>
        </>
      )}
      <a class="no-print" href={wordsAddress(place, { zone: zone ?? null })}>
        {words.findMore}
      </a>
    </section>
  );
};
