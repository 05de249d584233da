/** What my lead and I said about a run or a pair; open questions are answered here too. On a pair's page I can write. */
import { useState } from 'preact/hooks';
import type { RecordId, RecordOf } from '../../../core/records/index.ts';
import {
  exchangesOf,
  hangsOn,
  writtenMs,
  type Exchange,
  type TalkSubject,
} from '../../../core/talk/index.ts';
import { messageAbout } from '../../drafts/answer.ts';
import { MOST_WORDS } from '../../drafts/question.ts';
import { tapInWords, type AskedThing } from '../../parts/asked.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { LimitedField } from '../../parts/controls/limited-field.tsx';
import { showToast } from '../../parts/controls/toast.tsx';
import { formatDateTime } from '../../parts/format.ts';
import { session, store, useStored } from '../../parts/state.ts';
import { t, talkWords } from '../../words/index.ts';
import { AnswerTaps } from './question-card.tsx';
import { aboutInWords, readThing, sayQuestion } from './say-question.ts';
import { writer } from './writer.ts';
import './talk.css';

/** At most so many stand there. */
const MOST = 20;

interface Told {
  readonly exchange: Exchange;
  readonly thing: AskedThing;
}

const Entry = ({ told, isHere }: { readonly told: Told; readonly isHere: boolean }) => {
  const words = talkWords().phone;
  const { exchange, thing } = told;
  const about = isHere ? '' : aboutInWords(thing);
  if (exchange.kind === 'message')
    return (
      <li class="talk-entry">
        <p class="soft small">{words.wrote(formatDateTime(exchange.startMs))}</p>
        <p class="talk-text">{exchange.message.body.words}</p>
        {exchange.replies.map(({ revision, body }) => (
          <div key={revision.id} class="talk-back">
            <p class="soft small">{words.replied(formatDateTime(body.at))}</p>
            <p class="talk-text">{body.words}</p>
          </div>
        ))}
      </li>
    );
  const { question, answer, open } = exchange;
  const { words: own, language, ask } = question.body;
  return (
    <li class="talk-entry">
      <p class="soft small">{words.asked(formatDateTime(exchange.startMs))}</p>
      {about !== '' && <p class="soft small">{about}</p>}
      <p class="talk-text" lang={own === undefined ? undefined : language}>
        <strong>{sayQuestion(question, thing)}</strong>
      </p>
      {open && <AnswerTaps question={question} onAnswered={() => undefined} />}
      {answer && (
        <div class="talk-back">
          <p class="soft small">{words.said(formatDateTime(writtenMs(answer)))}</p>
          {answer.body.option && <p>{tapInWords(answer.body.option, ask)}</p>}
          {answer.body.words && <p class="talk-text">{answer.body.words}</p>}
        </div>
      )}
      {!open && !answer && <p class="soft small">{words.withdrawn}</p>}
    </li>
  );
};

const Thread = ({
  subject,
  isHere,
}: {
  readonly subject: TalkSubject;
  readonly isHere: boolean;
}) => {
  const told = useStored(
    async (from): Promise<readonly Told[]> => {
      const [question, answer, reply] = await Promise.all([
        from.list('question'),
        from.list('answer'),
        from.list('reply'),
      ]);
      const own = exchangesOf({ question, answer, reply }).filter((one) => hangsOn(one, subject));
      return Promise.all(
        own
          .slice(0, MOST)
          .map(async (exchange) => ({ exchange, thing: await readThing(from, exchange) })),
      );
    },
    ['question', 'answer', 'reply', 'run', 'pair'],
    [JSON.stringify(subject)],
  );
  if (!told || told.length === 0) return null;
  return (
    <section class="sheet">
      <h2>{talkWords().phone.thread}</h2>
      <ul class="plain-list stack">
        {told.map((one) => (
          <Entry
            key={
              one.exchange.kind === 'question'
                ? one.exchange.question.revision.id
                : one.exchange.message.revision.id
            }
            told={one}
            isHere={isHere}
          />
        ))}
      </ul>
    </section>
  );
};

export const RunTalk = ({ run }: { readonly run: RecordId }) => (
  <Thread subject={{ record: run }} isHere />
);

/** A message to the lead about the pair, unasked. */
const Write = ({ pair }: { readonly pair: RecordOf<'pair'> }) => {
  const words = talkWords().phone;
  const [typed, setTyped] = useState('');
  const [isOpen, setOpen] = useState(false);
  const [tried, setTried] = useState(false);
  const me = writer();
  if (!me) return null;
  const close = () => {
    setOpen(false);
    setTried(false);
  };
  if (!isOpen)
    return (
      <Button kind="quiet" onClick={() => setOpen(true)}>
        {words.write}
      </Button>
    );
  const read = messageAbout(pair, typed, me);
  const send = async () => {
    setTried(true);
    if (!read.ok) return;
    const saved = await store.save('answer', read.body);
    if (!saved.ok) return showToast({ text: words.notSaved });
    const { id } = saved.value.revision;
    setTyped('');
    close();
    showToast({
      text: words.written,
      action: { label: t().undo, run: () => void store.erase(id) },
    });
  };
  return (
    <form
      class="sheet"
      noValidate
      aria-label={words.write}
      onSubmit={(event) => {
        event.preventDefault();
        void send();
      }}
    >
      <LimitedField
        label={words.writeAbout(pair.body.code)}
        rows={3}
        most={MOST_WORDS}
        value={typed}
        onInput={setTyped}
        error={tried && !read.ok ? words.writeMissing : null}
      />
      <p class="soft small">{words.writeHint}</p>
      <div class="row">
        <Button submit>{words.send}</Button>
        <Button kind="quiet" onClick={close}>
          {words.cancel}
        </Button>
      </div>
    </form>
  );
};

export const PairTalk = ({ pair }: { readonly pair: RecordOf<'pair'> }) => (
  <>
    <Thread subject={{ pair: pair.revision.id }} isHere={false} />
    {session.value?.role === 'tester' && <Write pair={pair} />}
  </>
);
