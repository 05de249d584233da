/** What did leads and a tester say to each other about one thing: each question with its answer, each message with what came back? */
import type { ZoneCode } from '../foot/index.ts';
import type { AskedAbout, RecordId, RecordOf } from '../records/index.ts';
import { groupBy } from '../statistics/index.ts';
import { answersTo, isOpen, writtenMs } from './questions.ts';

interface Between {
  readonly tester: RecordId;
  /** What it is about; a message at most about a pair. */
  readonly about: AskedAbout;
  /** When it began, milliseconds since 1970. */
  readonly startMs: number;
  /** When the last word of it was written. */
  readonly lastMs: number;
}

export type Exchange = Between &
  (
    | {
        readonly kind: 'question';
        readonly question: RecordOf<'question'>;
        readonly answer: RecordOf<'answer'> | null;
        /** It still asks for an answer. */
        readonly open: boolean;
      }
    /** A tester wrote without having been asked. */
    | {
        readonly kind: 'message';
        readonly message: RecordOf<'answer'>;
        /** Earliest first. */
        readonly replies: readonly RecordOf<'reply'>[];
      }
  );

export interface TalkRecords {
  readonly question: readonly RecordOf<'question'>[];
  readonly answer: readonly RecordOf<'answer'>[];
  readonly reply: readonly RecordOf<'reply'>[];
}

const asked = (
  question: RecordOf<'question'>,
  answer: RecordOf<'answer'> | undefined,
): Exchange => {
  const startMs = writtenMs(question);
  const { tester, about = {} } = question.body;
  return {
    ...{ kind: 'question', tester, about, startMs, question, answer: answer ?? null },
    // Whatever the clocks say, an answer is not older than its question.
    lastMs: answer ? Math.max(startMs, writtenMs(answer)) : startMs,
    open: isOpen(question, answer),
  };
};

const written = (message: RecordOf<'answer'>, toThis: readonly RecordOf<'reply'>[]): Exchange => {
  const startMs = writtenMs(message);
  const { tester, pair } = message.body;
  const replies = toThis
    .filter(({ body }) => body.tester === tester)
    .sort((a, b) => writtenMs(a) - writtenMs(b));
  return {
    ...{ kind: 'message', tester, about: pair === undefined ? {} : { pair }, startMs },
    ...{ message, replies, lastMs: Math.max(startMs, ...replies.map(writtenMs)) },
  };
};

const byId = (exchange: Exchange): RecordId =>
  (exchange.kind === 'question' ? exchange.question : exchange.message).revision.id;

/** All of it, the latest word first. */
export const exchangesOf = ({ question, answer, reply }: TalkRecords): readonly Exchange[] => {
  const answers = answersTo(question, answer);
  const replies = groupBy(reply, ({ body }) => body.about);
  return [
    ...question.map((one) => asked(one, answers.get(one.revision.id))),
    ...answer
      .filter(({ body }) => body.question === undefined)
      .map((one) => written(one, replies.get(one.revision.id) ?? [])),
  ].sort((a, b) => b.lastMs - a.lastMs || (byId(a) < byId(b) ? -1 : 1));
};

/** What an exchange hangs on; nothing: all of them. */
export interface TalkSubject {
  readonly record?: RecordId;
  readonly pair?: RecordId;
  readonly tester?: RecordId;
  readonly zone?: ZoneCode;
}

/** Whether it is about all that the subject names. */
export const hangsOn = (
  { tester, about }: Pick<Exchange, 'tester' | 'about'>,
  subject: TalkSubject,
): boolean =>
  (subject.record === undefined || about.record?.id === subject.record) &&
  (subject.pair === undefined || about.pair === subject.pair) &&
  (subject.tester === undefined || tester === subject.tester) &&
  (subject.zone === undefined || about.zone === subject.zone);

/** After so many days nobody is told of an answer any more: a new device has read none of them. Judgement, no source. */
const UNREAD_DAYS = 30;
const DAY_MS = 86_400_000;

/** What a lead has to read of an exchange; null: nothing came, or it was skipped without a word. */
export const wordFrom = (exchange: Exchange): RecordOf<'answer'> | null => {
  const word = exchange.kind === 'question' ? exchange.answer : exchange.message;
  return word?.body.option === 'skipped' && word.body.words === undefined ? null : word;
};

/** Names an answer as it stands: one that was changed is new. */
export const readKey = ({ revision }: RecordOf<'answer'>): string =>
  `${revision.id} ${revision.stamp}`;

/** Whether an exchange holds something to read. @param read the keys of what was read on this device */
export const isUnread = (exchange: Exchange, read: ReadonlySet<string>, nowMs: number): boolean => {
  const word = wordFrom(exchange);
  return (
    word !== null && nowMs - writtenMs(word) <= UNREAD_DAYS * DAY_MS && !read.has(readKey(word))
  );
};
