/** A specialist's front page: the findings of their trade with the change that is wanted, and the reports. */
import { useEffect, useState } from 'preact/hooks';
import { partIds, tradeOf, trades, type Trade } from '../../core/foot/index.ts';
import type { RecordOf, Sha256 } from '../../core/records/index.ts';
import { Choice, LinkButton, Notice, Page } from '../parts/controls/controls.tsx';
import { formatDate, formatDateTime, formatDistance, formatNumber } from '../parts/format.ts';
import { PhotoRow } from '../parts/photos/photo-view.tsx';
import { SaidLines } from '../parts/said-lines.tsx';
import { session, store, useRecords } from '../parts/state.ts';
import { languageIn } from '../words/figures.ts';
import { d, languages, locale, nameOfLanguage, saidOf, t, terms } from '../words/index.ts';
import type { Speaker } from '../words/say-complaint.ts';
import { findingInWords } from '../words/say-finding.ts';

/** The reader's language. A specialist has no testers, pairs or rounds: no name of theirs is ever asked for. */
const speaker = (): Speaker => ({
  desk: d(),
  glossary: terms(),
  number: formatNumber,
  distance: formatDistance,
  tester: () => '?',
  pair: () => '?',
  round: () => '?',
  foot: (foot) => t().foot[foot],
  language: (tag) => languageIn(tag, locale()),
});

const urgency = ['high', 'medium', 'low'] as const;

interface FindingCardProps {
  readonly body: RecordOf<'finding'>['body'];
  readonly project: string;
  readonly quotes: readonly RecordOf<'quote'>[];
}

const FindingCard = ({ body, project, quotes }: FindingCardProps) => {
  const words = d().report;
  const said = findingInWords(body, speaker(), () => null, formatDate);
  return (
    <article class="sheet">
      <h3>{body.title}</h3>
      <p class="soft small">{project}</p>
      {said.about !== null && <p>{said.about}</p>}
      <p>{[said.part, said.urgency].join(' ')}</p>
      {said.wanted !== null && (
        <p>
          <strong>{said.wanted}</strong>
        </p>
      )}
      <div>
        <p class="soft small">
          {[said.frozen ?? words.noEvidence, said.source].filter(Boolean).join(' · ')}
        </p>
        {said.evidence && <SaidLines {...said.evidence} />}
      </div>
      {said.outcome && (
        <div>
          <p>
            <strong>{said.outcome.title}</strong>
          </p>
          <SaidLines said={[]} written={said.outcome.written} />
        </div>
      )}
      {quotes.length > 0 && (
        <div>
          <p class="soft small">{words.reader.quotes}</p>
          <ul class="plain-list">
            {quotes.map(({ revision, body: { words: said } }) => (
              <li key={revision.id}>
                <q>{said}</q>
              </li>
            ))}
          </ul>
        </div>
      )}
      <PhotoRow photos={body.photos ?? []} label={body.title} />
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
  const quotes = useRecords('quote');
  const [trade, setTrade] = useState<Trade | 'any'>('any');
  const fits = (of: Trade | undefined) => trade === 'any' || of === undefined || of === trade;
  const shown = (findings ?? [])
    .filter(({ body }) => fits(tradeOf[body.part]))
    .sort((a, b) => urgency.indexOf(a.body.priority) - urgency.indexOf(b.body.priority));
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
      {session.value?.revoked && <Notice tone="warn">{t().today.revoked}</Notice>}
      <Choice<Trade | 'any'>
        label={words.mine}
        options={[
          { value: 'any', label: d().report.board.any },
          ...trades.map((value) => ({ value, label: terms().trades[value] })),
        ]}
        value={trade}
        onChange={setTrade}
      />
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
      {findings === null ? (
        <p class="soft">{t().loading}</p>
      ) : shown.length === 0 ? (
        <p>{findings.length === 0 ? words.noFindings : d().report.board.noneShown}</p>
      ) : (
        partIds.map((part) => {
          const own = shown.filter(({ body }) => body.part === part);
          return own.length === 0 ? null : (
            <section class="stack" key={part}>
              <h3>
                {[...new Set([terms().parts[part].name, terms().trades[tradeOf[part]]])].join(
                  ' · ',
                )}
              </h3>
              {own.map(({ body, revision }) => (
                <FindingCard
                  key={revision.id}
                  body={body}
                  project={nameOf(body.project)}
                  quotes={(quotes ?? []).filter(
                    (one) => one.body.finding === revision.id && one.body.sent !== undefined,
                  )}
                />
              ))}
            </section>
          );
        })
      )}
    </Page>
  );
};
