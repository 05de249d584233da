/** One finding as its specialist reads it: what is so, where on the shoe, what is asked, what was said; and their answer. */
import { useState } from 'preact/hooks';
import type { RecordId, RecordOf } from '../../core/records/index.ts';
import { storyOf } from '../../core/talk/index.ts';
import { sayChange } from '../parts/change-speaker.ts';
import { Button, Notice, Page } from '../parts/controls/controls.tsx';
import { showToast } from '../parts/controls/toast.tsx';
import { FindingStory } from '../parts/finding-story.tsx';
import { formatDate } from '../parts/format.ts';
import { PhotoRow } from '../parts/photos/photo-view.tsx';
import { SaidLines } from '../parts/said-lines.tsx';
import { session, store, unsent, useRecords } from '../parts/state.ts';
import { d, proposeWords, t } from '../words/index.ts';
import { findingInWords } from '../words/say-finding.ts';
import { AnswerForm } from './answer-form.tsx';
import { inOwnLanguage, readerSpeaker } from './say-reader.ts';
import { FindingPicture } from './finding-picture.tsx';
import { canAnswer, canCorrect, standingOf, type ReaderStanding } from './standing.ts';
import './reader.css';

export const FindingScreen = ({ id }: { readonly id: string }) => {
  const findings = useRecords('finding');
  const proposals = useRecords('proposal');
  const replies = useRecords('proposal-reply');
  const projects = useRecords('project');
  const quotes = useRecords('quote');
  const back = { href: '/', label: t().back };
  if (!findings || !proposals || !replies || !projects || !quotes)
    return (
      <Page title={proposeWords().finding} back={back}>
        <p class="soft">{t().loading}</p>
      </Page>
    );
  const finding = findings.find(({ revision }) => revision.id === id);
  if (!finding) return <Page title={t().notFound} back={back} children={null} />;
  const standing = standingOf(finding, proposals, replies, session.value?.member, Date.now());
  const project = projects.find(({ revision }) => revision.id === finding.body.project);
  return (
    <Opened
      key={id}
      finding={finding}
      standing={standing}
      project={project?.body.name ?? ''}
      quotes={quotes.filter(
        ({ body }) => body.finding === (id as RecordId) && body.sent !== undefined,
      )}
    />
  );
};

interface OpenedProps {
  readonly finding: RecordOf<'finding'>;
  readonly standing: ReaderStanding;
  readonly project: string;
  readonly quotes: readonly RecordOf<'quote'>[];
}

const Opened = (props: OpenedProps) => {
  const { finding, standing, project } = props;
  const body = inOwnLanguage(finding.body);
  const said = findingInWords(body, readerSpeaker(), () => null, formatDate);
  return (
    <Page title={body.title} wide back={{ href: '/', label: t().back }}>
      <p class="soft">{[project, said.part].filter(Boolean).join(' · ')}</p>
      <div class="reader-finding">
        <div class="stack">
          <FindingPicture body={body} />
          <Photos body={body} />
          <Quotes {...props} />
          {said.evidence && (
            <details>
              <summary>{said.frozen}</summary>
              <SaidLines {...said.evidence} />
            </details>
          )}
        </div>
        <div class="stack">
          <Asked body={body} standing={standing} urgency={said.urgency} />
          <Answer finding={{ ...finding, body }} standing={standing} />
          <Said finding={finding} standing={standing} />
        </div>
      </div>
    </Page>
  );
};

const Photos = ({ body }: { readonly body: OpenedProps['finding']['body'] }) =>
  (body.photos ?? []).length === 0 ? null : (
    <section class="stack" aria-label={proposeWords().photos}>
      <PhotoRow photos={body.photos ?? []} label={body.title} />
    </section>
  );

const Quotes = ({ quotes }: OpenedProps) =>
  quotes.length === 0 ? null : (
    <section class="stack">
      <h2>{d().report.reader.quotes}</h2>
      <ul class="plain-list">
        {quotes.map(({ revision, body }) => (
          <li key={revision.id}>
            <q>{body.words}</q>
          </li>
        ))}
      </ul>
    </section>
  );

/** What is asked of the reader, in words and in figures. */
const Asked = (props: {
  readonly body: OpenedProps['finding']['body'];
  readonly standing: ReaderStanding;
  readonly urgency: string;
}) => {
  const { body, standing, urgency } = props;
  const words = proposeWords();
  const said = findingInWords(body, readerSpeaker(), () => null, formatDate);
  return (
    <section class="sheet reader-asked" aria-label={words.asks}>
      <h2>{words.asks}</h2>
      {body.change && (
        <p class="reader-wish">
          <b>{sayChange(body.change)}</b>
        </p>
      )}
      {said.wish !== null && <p class={body.change ? undefined : 'reader-wish'}>{said.wish}</p>}
      {!body.change && said.wish === null && <p>{words.nothingAsked}</p>}
      {body.due !== undefined && (
        <p>
          {words.by(formatDate(body.due))}
          {standing.late && <b class="reader-late"> {words.late}</b>}
        </p>
      )}
      <p class="soft small">{urgency}</p>
    </section>
  );
};

/** The reader's answer: to be written, corrected, or taken back while it waits. */
const Answer = (props: Pick<OpenedProps, 'finding' | 'standing'>) => {
  const { finding, standing } = props;
  const words = proposeWords();
  const [open, setOpen] = useState(false);
  const own = canCorrect(standing) ? standing.own?.proposal : undefined;
  if (open && (own || canAnswer(standing)))
    return <AnswerForm finding={finding} of={own} close={() => setOpen(false)} />;
  const takeBack = async (id: RecordId) => {
    const gone = await store.erase(id);
    showToast(
      gone.ok
        ? {
            text: words.takenBack,
            action: { label: t().undo, run: () => void store.restore(id) },
          }
        : { text: d().trouble },
    );
  };
  return (
    <>
      {standing.again && <Notice tone="warn">{words.askedAgain}</Notice>}
      {canAnswer(standing) && (
        <Button kind="main" big onClick={() => setOpen(true)}>
          {words.answerIt}
        </Button>
      )}
      {own && (
        <div class="row">
          <Button onClick={() => setOpen(true)}>{words.correct}</Button>
          <Button kind="quiet" onClick={() => void takeBack(own.revision.id)}>
            {words.takeBack}
          </Button>
        </div>
      )}
      {own && (unsent.value?.revisions ?? 0) > 0 && <p class="soft">{words.unsentNow}</p>}
    </>
  );
};

const Said = ({ finding, standing }: Pick<OpenedProps, 'finding' | 'standing'>) => {
  const words = proposeWords();
  const wrote = new Set(standing.standing.map(({ proposal }) => proposal.revision.author));
  const who = (author: RecordId) =>
    author === session.value?.member
      ? words.you
      : wrote.has(author)
        ? words.otherSpecialist
        : words.lead;
  return (
    <section class="stack" aria-label={words.said}>
      <h2>{words.said}</h2>
      <FindingStory
        finding={finding.body}
        items={storyOf(finding, standing.standing)}
        who={who}
        round={null}
      />
    </section>
  );
};
