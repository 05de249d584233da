/** All findings of a project, those first that wait: what it is, for whom, which round carries it, what came of it. */
import { useState } from 'preact/hooks';
import { tradeOf, trades, type Trade } from '../../../core/foot/index.ts';
import { findingStates, type Finding, type RecordOf } from '../../../core/records/index.ts';
import { byUrgency } from '../../../core/review/index.ts';
import { findingHeadline } from '../../../core/headlines/index.ts';
import { Button, LinkButton } from '../../parts/controls/controls.tsx';
import { d, p, terms } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { linksOf } from '../frame/route.ts';
import { VerdictStamp } from './verdict-stamp.tsx';

/** More rows than this are folded. */
const MOST_ROWS = 10;

type State = Finding['state'];

export const FindingList = (props: TabProps) => {
  const { records, review } = props;
  const words = p().changes;
  const links = linksOf(review.project.id);
  const [state, setState] = useState<State | 'any'>('any');
  const [trade, setTrade] = useState<Trade | 'any'>('any');
  const [showsAll, setShowsAll] = useState(false);
  const all = records.finding.filter(({ body }) => body.project === review.project.id);
  const fits = all
    .filter(
      ({ body }) =>
        (state === 'any' || body.state === state) &&
        (trade === 'any' || tradeOf[body.part] === trade),
    )
    .toSorted(
      (a, b) =>
        findingStates.indexOf(a.body.state) - findingStates.indexOf(b.body.state) ||
        byUrgency({ id: a.revision.id, body: a.body }, { id: b.revision.id, body: b.body }),
    );
  const shown = showsAll ? fits : fits.slice(0, MOST_ROWS);
  return (
    <section class="finding-list" aria-label={words.findings}>
      <div class="finding-list-head">
        <h2>{words.findings}</h2>
        {all.length > 0 && (
          <span class="no-print">
            <select
              class="which-pairs"
              aria-label={words.state}
              value={state}
              onChange={(event) => setState(event.currentTarget.value as State | 'any')}
            >
              <option value="any">{words.anyState}</option>
              {findingStates.map((one) => (
                <option key={one} value={one}>
                  {d().finding.states[one]}
                </option>
              ))}
            </select>{' '}
            <select
              class="which-pairs"
              aria-label={words.trade}
              value={trade}
              onChange={(event) => setTrade(event.currentTarget.value as Trade | 'any')}
            >
              <option value="any">{words.anyTrade}</option>
              {trades.map((one) => (
                <option key={one} value={one}>
                  {terms().trades[one]}
                </option>
              ))}
            </select>
          </span>
        )}
        {review.rounds.length > 0 && (
          <LinkButton href={links.place('changes', 'findings', 'new')}>
            {words.newFinding}
          </LinkButton>
        )}
      </div>
      {shown.length === 0 ? (
        <p role="status">{all.length === 0 ? words.noFindings : words.noneShown}</p>
      ) : (
        <div class="table-wrap" tabIndex={0} role="group" aria-label={words.findings}>
          <table class="place-table finding-table">
            <thead>
              <tr>
                {[
                  words.finding,
                  words.state,
                  words.part,
                  words.seenIn,
                  words.carried,
                  words.outcome,
                ].map((title) => (
                  <th scope="col" key={title}>
                    {title}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {shown.map((finding) => (
                <Row key={finding.revision.id} {...props} finding={finding} />
              ))}
            </tbody>
          </table>
        </div>
      )}
      {fits.length > shown.length && (
        <Button kind="quiet" onClick={() => setShowsAll(true)}>
          {words.allFindings(fits.length)}
        </Button>
      )}
    </section>
  );
};

const Row = (props: TabProps & { readonly finding: RecordOf<'finding'> }) => {
  const { review, records, finding } = props;
  const { body, revision } = finding;
  const words = p().changes;
  const links = linksOf(review.project.id);
  const { round } = namesIn(review, records);
  const page = links.finding(revision.id);
  const said = findingHeadline(body, (id) =>
    review.rounds.some((one) => one.id === id && one.size.runs > 0),
  );
  return (
    <tr>
      <th scope="row">
        <a href={page}>{body.title}</a>
      </th>
      <td data-head={words.state}>{d().finding.states[body.state]}</td>
      <td data-head={words.part}>
        {words.partAndTrade(terms().parts[body.part].name, terms().trades[tradeOf[body.part]])}
      </td>
      <td data-head={words.seenIn}>
        <a href={links.round(body.round)}>{round(body.round)}</a>
      </td>
      <td data-head={words.carried}>
        {body.carriedBy === undefined ? (
          <span class="soft">{words.noRound(body.state === 'closed')}</span>
        ) : (
          <a href={links.round(body.carriedBy)}>{round(body.carriedBy)}</a>
        )}
      </td>
      <td data-head={words.outcome}>
        {said.case === 'outcome' ? (
          <VerdictStamp word={said.claims} />
        ) : said.case === 'judge' ? (
          <a href={page}>{words.judge}</a>
        ) : (
          ''
        )}
      </td>
    </tr>
  );
};
