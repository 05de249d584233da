/** A specialist's front page: what waits for their answer, the reports, and the other findings of their trade. */
import { useEffect, useState } from 'preact/hooks';
import { partIds, tradeOf, trades, type Trade } from '../../core/foot/index.ts';
import type { RecordOf, Sha256 } from '../../core/records/index.ts';
import { Button, Choice, LinkButton, Notice, Page } from '../parts/controls/controls.tsx';
import { formatDate, formatDateTime } from '../parts/format.ts';
import { sendOwnLog } from '../parts/send-file.ts';
import { session, store, useRecords } from '../parts/state.ts';
import {
  d,
  languages,
  nameOfLanguage,
  proposeWords,
  saidOf,
  t,
  talkWords,
  terms,
} from '../words/index.ts';
import { findingInWords } from '../words/say-finding.ts';
import { inOwnLanguage, readerSpeaker } from './say-reader.ts';
import { standingOf, type ReaderStanding } from './standing.ts';
import './reader.css';

const urgency = ['high', 'medium', 'low'] as const;

/** Where the finding stands, in one line. */
const stateOf = ({ waits, again, days, own, byOther }: ReaderStanding): string | null => {
  const words = proposeWords();
  if (waits) return [...(again ? [words.askedAgain] : []), words.waits(days)].join(' ');
  if (own)
    return [
      words.answered(talkWords().proposalAnswers[own.proposal.body.answer]),
      own.reply?.body.answer === 'accepted' ? words.taken : words.withLead,
    ].join(' ');
  return byOther ? words.answeredByOther : null;
};

const FindingCard = (props: {
  readonly finding: RecordOf<'finding'>;
  readonly project: string;
  readonly standing: ReaderStanding;
}) => {
  const { finding, project, standing } = props;
  const words = proposeWords();
  const body = inOwnLanguage(finding.body);
  const said = findingInWords(body, readerSpeaker(), () => null, formatDate);
  const state = stateOf(standing);
  return (
    <article class="sheet">
      <h3>{body.title}</h3>
      <p class="soft small">{project}</p>
      <p>{[said.part, said.urgency].join(' ')}</p>
      {said.wanted !== null && <p>{said.wanted}</p>}
      {state !== null && (
        <p>
          {standing.waits ? <b>{state}</b> : state}
          {standing.late && <b class="reader-late"> {words.late}</b>}
        </p>
      )}
      {said.outcome && (
        <p>
          <strong>{said.outcome.title}</strong>
        </p>
      )}
      <LinkButton href={`/finding/${finding.revision.id}`} kind={standing.waits ? 'main' : 'plain'}>
        {standing.waits ? words.answerIt : words.openIt}
        <span class="hidden-words">{saidOf('', body.title)}</span>
      </LinkButton>
    </article>
  );
};

/** Fetches what the records show while there is a network, so that it is there when there is none. */
const useKeptForOffline = (files: readonly string[]): void => {
  const all = files.join();
  useEffect(() => {
    let current = true;
    const fetchAll = async () => {
      for (const sha256 of all === '' ? [] : all.split(',')) {
        if (!current) return;
        // Without a network it stays where it is; the next visit asks again.
        await store.attachment(sha256 as Sha256).catch(() => null);
      }
    };
    void fetchAll();
    return () => {
      current = false;
    };
  }, [all]);
};

const languagesOf = (ids: readonly string[]): string =>
  ids.map((id) => (languages.includes(id) ? nameOfLanguage(id) : id)).join(' + ');

export const Reader = () => {
  const words = d().report.reader;
  const findings = useRecords('finding');
  const reports = useRecords('report');
  const projects = useRecords('project');
  const proposals = useRecords('proposal');
  const replies = useRecords('proposal-reply');
  const [trade, setTrade] = useState<Trade | 'any'>('any');
  const fits = (of: Trade | undefined) => trade === 'any' || of === undefined || of === trade;
  const shown = (findings ?? [])
    .filter(({ body }) => fits(tradeOf[body.part]))
    .sort((a, b) => urgency.indexOf(a.body.priority) - urgency.indexOf(b.body.priority));
  const standings = new Map(
    shown.map((one) => [
      one.revision.id,
      standingOf(one, proposals ?? [], replies ?? [], session.value?.member, Date.now()),
    ]),
  );
  const isRead = findings !== null && proposals !== null && replies !== null;
  const waits = ({ revision }: RecordOf<'finding'>): boolean =>
    standings.get(revision.id)?.waits === true;
  const card = (one: RecordOf<'finding'>) => (
    <FindingCard
      key={one.revision.id}
      finding={one}
      project={nameOf(one.body.project)}
      standing={standings.get(one.revision.id) as ReaderStanding}
    />
  );
  const sent = (reports ?? [])
    .filter(({ body }) => fits(body.trade))
    .sort((a, b) => Date.parse(b.body.at) - Date.parse(a.body.at));
  useKeptForOffline([
    ...sent.map(({ body }) => body.sha256),
    ...shown.flatMap(({ body }) => body.photos ?? []),
  ]);
  const nameOf = (id: string) =>
    projects?.find(({ revision }) => revision.id === id)?.body.name ?? '';
  return (
    <Page
      title={session.value?.groupName ?? ''}
      aside={
        <a class="back" href="/settings" aria-label={t().today.settings}>
          <svg class="icon" viewBox="0 0 24 24" aria-hidden="true">
            <path d="M4 7h9M17 7h3M4 17h3M11 17h9M15 4.5v5M9 14.5v5" />
          </svg>
        </a>
      }
    >
      {session.value?.hub === null && (
        <div class="row">
          <span class="soft small">{proposeWords().byFile}</span>
          <Button onClick={() => void sendOwnLog(store, 'mine')}>{proposeWords().sendFile}</Button>
          <LinkButton href="/file">{proposeWords().openFile}</LinkButton>
        </div>
      )}
      {session.value?.revoked && <Notice tone="warn">{t().today.revoked}</Notice>}
      {isRead && shown.length > 0 && <h2>{proposeWords().waiting(shown.filter(waits).length)}</h2>}
      <Choice<Trade | 'any'>
        label={words.mine}
        options={[
          { value: 'any', label: d().report.board.any },
          ...trades.map((value) => ({ value, label: terms().trades[value] })),
        ]}
        value={trade}
        onChange={setTrade}
      />
      {isRead && shown.filter(waits).map(card)}
      <h2>{words.reports}</h2>
      {reports === null ? (
        <p class="soft">{t().loading}</p>
      ) : sent.length === 0 ? (
        <p>{words.noReports}</p>
      ) : (
        <ul class="plain-list stack">
          {sent.map(({ body, revision }) => (
            <li class="sheet" key={revision.id}>
              <h3>{body.title}</h3>
              <p class="soft small">
                {words.sentAt(formatDateTime(body.at), languagesOf(body.languages))}
              </p>
              <LinkButton href={`/report/${revision.id}`}>
                {words.open}
                <span class="hidden-words">{saidOf('', body.title)}</span>
              </LinkButton>
            </li>
          ))}
        </ul>
      )}
      <h2>{words.findings}</h2>
      {!isRead ? (
        <p class="soft">{t().loading}</p>
      ) : shown.length === 0 ? (
        <p>{findings.length === 0 ? words.noFindings : d().report.board.noneShown}</p>
      ) : (
        partIds.map((part) => {
          const own = shown.filter((one) => one.body.part === part && !waits(one));
          return own.length === 0 ? null : (
            <section class="stack" key={part}>
              <h3>
                {[...new Set([terms().parts[part].name, terms().trades[tradeOf[part]]])].join(
                  ' · ',
                )}
              </h3>
              {own.map(card)}
            </section>
          );
        })
      )}
    </Page>
  );
};
