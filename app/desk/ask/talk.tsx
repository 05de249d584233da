/** What was asked and what came back, as a thread on what it is about; and the way to ask. */
import { useEffect, useState } from 'preact/hooks';
import type { RecordOf } from '../../../core/records/index.ts';
import type { TalkItem } from '../../../core/review/index.ts';
import { isUnread, wordFrom, writtenMs, type TalkSubject } from '../../../core/talk/index.ts';
import { MOST_WORDS } from '../../drafts/question.ts';
import { typedLine } from '../../drafts/typed.ts';
import { questionInWords, tapInWords } from '../../parts/asked.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { LimitedField } from '../../parts/controls/limited-field.tsx';
import { formatDate, formatDateTime } from '../../parts/format.ts';
import { toInstant } from '../../parts/instant.ts';
import { p } from '../../words/index.ts';
import { namesIn, useWork, type TabProps } from '../desk-state.ts';
import { Mark } from '../frame/stamp.tsx';
import { saveFromForm, SmallForm, Unfold } from '../parts/form-parts.tsx';
import { Some } from '../parts/some.tsx';
import { AskForm, type Asking } from './ask-form.tsx';
import { aboutOf } from './about.ts';
import { DoubtRow, doubtKey } from './doubt-row.tsx';
import { askAgain, withdraw } from './send.ts';
import { markRead, useRead } from './talk-read.ts';
import './ask.css';

const DAY_MS = 86_400_000;
/** So many at a time. */
const STEP = 20;

type Item = TabProps & { readonly item: TalkItem };

/** Whether it was new when it was first shown here; it is read from then on. */
const useIsNew = ({ item, review }: Item): boolean => {
  const known = useRead();
  const [isNew, setNew] = useState(false);
  const unread = known !== null && isUnread(item, known, review.nowMs);
  const word = wordFrom(item);
  useEffect(() => {
    if (!unread || !word) return;
    setNew(true);
    markRead(word);
  }, [unread, word]);
  return isNew || unread;
};

const Words = ({ body }: { readonly body: RecordOf<'answer'>['body'] }) =>
  body.words === undefined ? null : <q lang={body.language}>{body.words}</q>;

const Question = (props: Item & { readonly item: { readonly kind: 'question' } & TalkItem }) => {
  const { item, review, records } = props;
  const words = p().ask;
  const names = namesIn(review, records);
  const { question, answer, about, run, open, startMs } = item;
  const { ask, withdrawn, words: own, language } = question.body;
  const tester = names.tester(item.tester);
  const pair = about.pair ? names.code(about.pair) : '';
  const said = questionInWords(question.body, { run, pair, about });
  return (
    <>
      <p class="talk-said" lang={own === undefined ? undefined : language}>
        {said}
      </p>
      {answer && (
        <p class="talk-answer">
          <span class="small soft">
            {words.answered(tester, formatDateTime(writtenMs(answer)))}
          </span>
          {answer.body.option && <strong>{tapInWords(answer.body.option, ask)}</strong>}
          <Words body={answer.body} />
        </p>
      )}
      {!answer && (
        <p class="talk-open small">
          <span>
            {withdrawn === undefined
              ? words.unanswered(Math.floor((review.nowMs - startMs) / DAY_MS))
              : words.withdrawn(formatDate(withdrawn))}
          </span>
          <span class="no-print">
            {open ? (
              <Button
                kind="quiet"
                aria-label={words.withdrawName(said)}
                onClick={() => void withdraw(question)}
              >
                {words.withdraw}
              </Button>
            ) : (
              <Button
                kind="quiet"
                aria-label={words.againName(said)}
                onClick={() => void askAgain(question, tester)}
              >
                {words.again}
              </Button>
            )}
          </span>
        </p>
      )}
    </>
  );
};

/** A few words back to a tester who wrote. */
const ReplyForm = (props: {
  readonly to: RecordOf<'answer'>;
  readonly label: string;
  readonly close: () => void;
}) => {
  const words = p().ask;
  const { to, close } = props;
  const [typed, setTyped] = useState('');
  const [tried, setTried] = useState(false);
  const said = typedLine(typed);
  const save = async () => {
    setTried(true);
    if (said === undefined) return '';
    const { project, tester } = to.body;
    const saved = await saveFromForm('reply', {
      ...{ project, tester, about: to.revision.id, at: toInstant(Date.now()), words: said },
    });
    if (typeof saved === 'string') return saved;
    close();
    return null;
  };
  return (
    <SmallForm save={save} label={props.label}>
      <LimitedField
        label={words.replyWords}
        rows={2}
        most={MOST_WORDS}
        value={typed}
        onInput={setTyped}
        error={tried && said === undefined ? words.replyMissing : null}
      />
    </SmallForm>
  );
};

const Message = (props: Item & { readonly item: { readonly kind: 'message' } & TalkItem }) => {
  const { item, review, records } = props;
  const words = p().ask;
  const { message, replies } = item;
  const label = words.reply(namesIn(review, records).tester(item.tester));
  return (
    <>
      <p class="talk-answer">
        <Words body={message.body} />
      </p>
      {replies.map(({ revision, body }) => (
        <p key={revision.id} class="talk-reply">
          <span class="small soft">{words.replied(formatDateTime(body.at))}</span>
          <span>{body.words}</span>
        </p>
      ))}
      <div class="no-print">
        <Unfold label={label}>
          {(close) => <ReplyForm to={message} label={label} close={close} />}
        </Unfold>
      </div>
    </>
  );
};

/** @param isHere it stands on the page of what it is about */
const TalkEntry = (props: Item & { readonly isHere: boolean }) => {
  const { item, review, records, isHere } = props;
  const words = p().ask;
  const isNew = useIsNew(props);
  const about = aboutOf(props, item);
  const say = item.kind === 'question' ? words.asked : words.wrote;
  return (
    <li class="talk-entry">
      <p class="talk-head small soft">
        {isNew && <Mark tone="open">{words.isNew}</Mark>}
        <span>
          {say(namesIn(review, records).tester(item.tester), formatDateTime(item.startMs))}
        </span>
        {!isHere && <a href={about.href}>{about.words}</a>}
      </p>
      {item.kind === 'question' ? (
        <Question {...props} item={item} />
      ) : (
        <Message {...props} item={item} />
      )}
    </li>
  );
};

const keyOf = (item: TalkItem): string =>
  (item.kind === 'question' ? item.question : item.message).revision.id;

export const TalkList = (
  props: TabProps & { readonly items: readonly TalkItem[]; readonly isHere?: boolean },
) => (
  <ul class="plain-list talk-list">
    <Some of={props.items} step={STEP}>
      {(item) => (
        <TalkEntry
          key={keyOf(item)}
          records={props.records}
          review={props.review}
          item={item}
          isHere={props.isHere ?? false}
        />
      )}
    </Some>
  </ul>
);

/**
 * The thread on the page of a run, a report, a pair, a zone or a tester, and the button that asks.
 * @param about absent: nobody can be asked about it
 */
export const TalkSection = (
  props: TabProps & {
    readonly subject: TalkSubject;
    readonly label: string;
    readonly asking: Omit<Asking, 'first'> | null;
    /** Everything in it is about this very record. */
    readonly isHere?: boolean;
  },
) => {
  const { subject, records, review, asking, label } = props;
  const words = p().ask;
  const name = JSON.stringify(subject);
  const talk = useWork((desk) => desk.talk(review.project.id, subject), records, [name]);
  if (!talk) return null;
  const canAsk = asking !== null && asking.testers.length > 0;
  // Of a pair or a zone they would be a list of their own: they stand where all of them do.
  const doubts = subject.zone === undefined && subject.pair === undefined ? talk.toAsk : [];
  const isTalk = talk.items.length + doubts.length > 0;
  if (!isTalk && !canAsk) return null;
  return (
    <section class="talk" aria-label={words.title}>
      {isTalk && <h2>{words.title}</h2>}
      {doubts.length > 0 && (
        <ul class="plain-list doubts">
          <Some of={doubts} step={STEP}>
            {(doubt) => (
              <DoubtRow
                key={doubtKey(doubt)}
                records={records}
                review={review}
                doubt={doubt}
                isHere={props.isHere ?? false}
              />
            )}
          </Some>
        </ul>
      )}
      {talk.items.length > 0 && (
        <TalkList {...props} items={talk.items} isHere={props.isHere ?? false} />
      )}
      {canAsk && (
        <div class="row no-print">
          <Unfold label={label}>
            {(close) => (
              <AskForm
                records={records}
                review={review}
                of={{ ...asking, first: [...new Set(talk.toAsk.flatMap(({ asks }) => asks))] }}
                name={name}
                close={close}
              />
            )}
          </Unfold>
        </div>
      )}
    </section>
  );
};
