/** One finding: what shows it, what is wanted of whom, which round carries it, what came of it, and how it got there. */
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { useLocation } from 'preact-iso';
import { tradeOf } from '../../../core/foot/index.ts';
import type { RecordId } from '../../../core/records/index.ts';
import { isAbsent } from '../../../core/review/index.ts';
import type { RoundCount } from '../../../core/rounds/index.ts';
import { findingHeadline } from '../../../core/headlines/index.ts';
import { carriersOf } from '../../drafts/finding.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { sayChange } from '../../parts/change-speaker.ts';
import { showToast } from '../../parts/controls/toast.tsx';
import { formatDate, formatNumber } from '../../parts/format.ts';
import { PhotoRow } from '../../parts/photos/photo-view.tsx';
import { SaidLines } from '../../parts/said-lines.tsx';
import { store } from '../../parts/state.ts';
import { d, p, proposeWords, t, terms } from '../../words/index.ts';
import { wantedSize } from '../../words/figures.ts';
import { arrivalLine } from '../../words/say-arrival.ts';
import { findingInWords } from '../../words/say-finding.ts';
import { namesIn, useWork, type TabProps } from '../desk-state.ts';
import { OpenForm } from '../parts/form-parts.tsx';
import { HowSure } from '../frame/how-sure.tsx';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { Mark } from '../frame/stamp.tsx';
import { speakerOf } from '../parts/speaker.ts';
import { EditForm } from './edit-form.tsx';
import { FindingTalk, useTurns } from './finding-talk.tsx';
import type { FindingProps } from './finding-props.ts';
import { FindingHistory } from './history.tsx';
import { OutcomeForm } from './outcome-form.tsx';
import { Quotes } from './quotes.tsx';
import { askTrade } from './reply-writes.ts';
import { Shows } from './shows.tsx';
import { TellTesters } from './tell-testers.tsx';
import { VerdictStamp } from './verdict-stamp.tsx';

type Panel = 'edit' | 'outcome';

/** @param props.id of the finding; one that was erased is gone, with a way to bring it back in the message */
export const FindingPage = (props: TabProps & { readonly id: RecordId }) => {
  const { records, id } = props;
  const finding = records.finding.find(({ revision }) => revision.id === id);
  return finding ? (
    <Page {...props} finding={finding} />
  ) : (
    <PlaceHead
      headline={t().notFound}
      crumbs={[
        {
          words: p().frame.places.changes,
          href: linksOf(props.review.project.id).place('changes'),
        },
      ]}
    />
  );
};

const erase = async ({ finding }: FindingProps): Promise<boolean> => {
  const { id } = finding.revision;
  const erased = await store.erase(id);
  showToast(
    erased.ok
      ? {
          text: d().report.board.erased,
          action: { label: t().undo, run: () => void store.restore(id) },
        }
      : { text: d().trouble },
  );
  return erased.ok;
};

const Page = (props: FindingProps) => {
  const { finding, review, records } = props;
  const { body } = finding;
  const words = p().changes;
  const links = linksOf(review.project.id);
  const names = namesIn(review, records);
  const { route } = useLocation();
  const [open, setOpen] = useState<Panel | null>(null);
  const said = findingHeadline(body, (id) =>
    review.rounds.some((one) => one.id === id && one.size.runs > 0),
  );
  const saying =
    said.case === 'outcome'
      ? words.said.outcome(
          names.round(said.round),
          words.stamps[said.claims],
          formatDate(said.until),
        )
      : 'round' in said
        ? words.said[said.case](names.round(said.round))
        : words.said[said.case]();
  const turn = useTurns(props)?.get(finding.revision.id);
  const canJudge = carriersOf(review.rounds, body.round).length > 0;
  return (
    <>
      <PlaceHead
        crumbs={[
          { words: p().frame.places.changes, href: links.place('changes') },
          { words: words.findings },
        ]}
        headline={body.title}
        sub={saying}
        stamp={
          said.case === 'outcome' ? (
            <VerdictStamp word={said.claims} />
          ) : (
            <Mark tone={body.state === 'closed' ? 'plain' : 'open'}>
              {d().finding.states[body.state]}
            </Mark>
          )
        }
        actions={
          <span class="place-acts no-print">
            {canJudge && (
              <Button
                kind={said.case === 'judge' ? 'main' : 'plain'}
                onClick={() => setOpen('outcome')}
              >
                {words.writeOutcome}
              </Button>
            )}
            {turn?.for === 'ask' && (
              <Button
                kind={said.case === 'judge' ? 'plain' : 'main'}
                onClick={() => void askTrade(finding)}
              >
                {proposeWords().askTrade}
              </Button>
            )}
            <Button onClick={() => setOpen('edit')}>{words.edit}</Button>
          </span>
        }
      />
      {open === 'edit' && (
        <OpenForm label={words.edit} close={() => setOpen(null)}>
          <EditForm {...props} close={() => setOpen(null)} />
        </OpenForm>
      )}
      {open === 'outcome' && (
        <OpenForm label={words.writeOutcome} close={() => setOpen(null)}>
          <OutcomeForm {...props} close={() => setOpen(null)} />
        </OpenForm>
      )}
      <div class="finding-page">
        <Shows {...props} />
        <Wanted {...props} />
        <Came {...props} />
        <FindingTalk {...props} />
        <TellTesters {...props} />
        <Quotes {...props} />
      </div>
      <PhotoRow photos={body.photos ?? []} label={body.title} />
      <HowSure title={words.history}>
        <FindingHistory {...props} />
      </HowSure>
      <div class="no-print">
        <Button
          kind="quiet"
          onClick={() =>
            void erase(props).then((gone) => gone && route(links.place('changes'), true))
          }
        >
          {words.erase}
        </Button>
      </div>
    </>
  );
};

const Wanted = (props: FindingProps) => {
  const { finding, review, records } = props;
  const { body } = finding;
  const words = p().changes;
  const links = linksOf(review.project.id);
  const { round } = namesIn(review, records);
  const isClosed = body.state === 'closed';
  const trade = tradeOf[body.part];
  const wanted = [
    body.wanted ?? '',
    body.change ? sayChange(body.change) : '',
    body.wantedMm === undefined ? '' : `${wantedSize(body.wantedMm, formatNumber)}\u00a0mm`,
  ].filter((one) => one !== '');
  const roundLink = (id: RecordId) => <a href={links.round(id)}>{round(id)}</a>;
  const rows: readonly (readonly [string, ComponentChildren])[] = [
    [
      words.part,
      <>
        {words.partAndTrade(terms().parts[body.part].name, terms().trades[trade])}{' '}
        <a class="no-print" href={links.sheet(body.round, trade)}>
          {d().finding.openSheet(terms().trades[trade])}
        </a>
      </>,
    ],
    [words.priority, d().finding.priorities[body.priority]],
    [words.state, d().finding.states[body.state]],
    [words.seenIn, roundLink(body.round)],
    ...(body.fitSession === undefined
      ? []
      : ([
          [
            p().fitting.fromTrial,
            <a href={links.place('fitting', body.fitSession)}>
              {records['fit-session'].find(({ revision }) => revision.id === body.fitSession)?.body
                .name ?? p().fitting.title}
            </a>,
          ],
        ] as const)),
    [
      words.carried,
      body.carriedBy === undefined ? words.noRound(isClosed) : roundLink(body.carriedBy),
    ],
  ];
  return (
    <section class="paper" aria-label={words.wants}>
      <h2>{words.wants}</h2>
      <p>
        {wanted.length === 0 ? words.nothingWanted(isClosed) : <b>{d().joined.clauses(wanted)}</b>}
      </p>
      <dl class="pairs-of-words">
        {rows.map(([title, said]) => [
          <dt key={`${title} title`}>{title}</dt>,
          <dd key={title}>{said}</dd>,
        ])}
      </dl>
    </section>
  );
};

const Came = (props: FindingProps) => {
  const { outcome, state } = props.finding.body;
  const words = p().changes;
  const speaker = speakerOf(props);
  const said = findingInWords(props.finding.body, speaker, speaker.round, formatDate);
  const links = linksOf(props.review.project.id);
  return (
    <section class="paper" aria-label={words.whatCame}>
      <h2>{words.whatCame}</h2>
      {outcome && said.outcome ? (
        <>
          <p>
            <VerdictStamp word={outcome.verdict} />{' '}
            <a href={links.round(outcome.round)}>{speaker.round(outcome.round)}</a>
          </p>
          <p class="soft">{words.stampMeaning[outcome.verdict]}</p>
          <HowSure title={words.outcomeAsOf(formatDate(outcome.until))}>
            <SaidLines said={[]} written={said.outcome.written} />
          </HowSure>
        </>
      ) : (
        <p class="soft">{words.noOutcome(state === 'closed')}</p>
      )}
      <Proposed {...props} />
    </section>
  );
};

/** What the log says of the round that carries the change, beside what was written down. */
const Proposed = ({ finding, review, records }: FindingProps) => {
  const { id } = finding.revision;
  const words = p().changes;
  const answer = useWork(
    async (desk) => ({ proposed: await desk.proposeOutcome(review.project.id, id) }),
    records,
    [id],
  );
  if (!answer?.proposed) return null;
  const { proposed } = answer;
  const count = ({ reported, runs }: RoundCount) => words.of(reported, runs);
  const said = () => {
    if (proposed.of === 'complaint')
      return words.proposed(count(proposed.found.earlier), count(proposed.found.later));
    const { moved } = proposed;
    if (!moved) return words.proposedNobody;
    const right = (counts: typeof moved.later) => words.of(counts.right, moved.testers);
    return words.proposedRight(right(moved.earlier), right(moved.later));
  };
  const { arrival } = proposed;
  const speaker = speakerOf({ records, review });
  return (
    <>
      {arrival && <p>{arrivalLine(arrival, speaker)}</p>}
      <p>
        {said()}{' '}
        {isAbsent(arrival) ? speaker.desk.arrival.absent : <VerdictStamp word={proposed.verdict} />}
      </p>
    </>
  );
};
