/** A lead's question: answered by one tap where something is ready to be tapped, else in a few words; or skipped. */
import { useEffect, useRef, useState } from 'preact/hooks';
import type { AnswerOption, RecordOf } from '../../../core/records/index.ts';
import { alwaysOffered, answersTo, optionsOf } from '../../../core/talk/index.ts';
import { MOST_WORDS } from '../../drafts/question.ts';
import { tappedAnswer, wordedAnswer } from '../../drafts/answer.ts';
import { tapInWords } from '../../parts/asked.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { LimitedField } from '../../parts/controls/limited-field.tsx';
import { showToast } from '../../parts/controls/toast.tsx';
import { store, useStored } from '../../parts/state.ts';
import { t, talkWords } from '../../words/index.ts';
import { aboutInWords, readThing, sayQuestion } from './say-question.ts';
import { writer } from './writer.ts';
import './talk.css';

const SKIP: AnswerOption = 'skipped';

/** Words to a question, or beside what was tapped. */
const WordsForm = (props: {
  readonly question: RecordOf<'question'>;
  readonly before?: RecordOf<'answer'>;
  readonly onSaved: () => void;
}) => {
  const words = talkWords().phone;
  const { question, before, onSaved } = props;
  const [typed, setTyped] = useState(before?.body.words ?? '');
  const [tried, setTried] = useState(false);
  const me = writer();
  if (!me) return null;
  const read = wordedAnswer(question, typed, me, before?.body);
  const send = async () => {
    setTried(true);
    if (!read.ok) return;
    const saved = await store.save('answer', read.body, before?.revision.id);
    if (!saved.ok) return showToast({ text: words.notSaved });
    onSaved();
  };
  return (
    <form
      class="stack"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void send();
      }}
    >
      <LimitedField
        label={words.inWords}
        rows={2}
        most={MOST_WORDS}
        value={typed}
        onInput={setTyped}
        error={tried && !read.ok ? words.missing : null}
      />
      <Button submit>{words.send}</Button>
    </form>
  );
};

/** What can be tapped, in twos; skipping is less than an answer. */
export const AnswerTaps = (props: {
  readonly question: RecordOf<'question'>;
  readonly onAnswered: () => void;
}) => {
  const { question, onAnswered } = props;
  const { ask } = question.body;
  const options = optionsOf(question.body);
  const isWorded = options.length === alwaysOffered.length;
  const tap = async (option: AnswerOption) => {
    const me = writer();
    const saved = me && (await store.save('answer', tappedAnswer(question, option, me)));
    if (!saved?.ok) return showToast({ text: talkWords().phone.notSaved });
    onAnswered();
  };
  const button = (option: AnswerOption) => (
    <Button
      key={option}
      kind={option === SKIP || isWorded ? 'quiet' : 'plain'}
      onClick={() => void tap(option)}
    >
      {tapInWords(option, ask)}
    </Button>
  );
  return (
    <>
      {isWorded && <WordsForm question={question} onSaved={onAnswered} />}
      {!isWorded && (
        <div class="answer-taps">{options.filter((one) => one !== SKIP).map(button)}</div>
      )}
      <div class="row row-end">
        {(isWorded ? options : options.filter((one) => one === SKIP)).map(button)}
      </div>
    </>
  );
};

/** What was answered, with the way back and to a few words more. */
const Answered = (props: {
  readonly question: RecordOf<'question'>;
  readonly answer: RecordOf<'answer'>;
  readonly left: number;
  readonly onNext: () => void;
}) => {
  const words = talkWords().phone;
  const { question, answer, left, onNext } = props;
  const [isAdding, setAdding] = useState(false);
  const place = useRef<HTMLElement>(null);
  // The button that was tapped is gone: a person with a screen reader goes on from here.
  useEffect(() => place.current?.focus(), []);
  const { option, words: said } = answer.body;
  const isSkipped = option === SKIP;
  const undo = () => void store.erase(answer.revision.id).then(onNext);
  return (
    <section class="sheet question-answered" ref={place} tabIndex={-1} aria-label={words.answered}>
      <div class="row row-apart">
        <div class="stack question-said">
          <p class="soft">{words.answered}</p>
          {option && (
            <p class="question-words">
              {isSkipped ? words.skippedNow : tapInWords(option, question.body.ask)}
            </p>
          )}
          {said !== undefined && <p>{said}</p>}
        </div>
        <Button kind="quiet" onClick={undo}>
          {t().undo}
        </Button>
      </div>
      {isAdding && (
        <WordsForm question={question} before={answer} onSaved={() => setAdding(false)} />
      )}
      {!isAdding && (!isSkipped || left > 0) && (
        <div class="row row-apart">
          {!isSkipped && said === undefined && (
            <Button kind="quiet" onClick={() => setAdding(true)}>
              {words.addWords}
            </Button>
          )}
          {left > 0 && <Button onClick={onNext}>{words.next(left)}</Button>}
        </div>
      )}
    </section>
  );
};

export const QuestionCard = (props: {
  readonly question: RecordOf<'question'>;
  /** So many others wait. */
  readonly left: number;
  readonly onAnswered: () => void;
  readonly onNext: () => void;
}) => {
  const words = talkWords().phone;
  const { question, left, onAnswered, onNext } = props;
  const known = useStored(
    async (from) => ({
      thing: await readThing(from, question.body),
      answer: answersTo([question], await from.list('answer')).get(question.revision.id),
    }),
    ['answer', 'run', 'pair'],
    [question.revision.id],
  );
  if (!known) return null;
  const { thing, answer } = known;
  if (answer) return <Answered question={question} answer={answer} left={left} onNext={onNext} />;
  const about = aboutInWords(thing);
  const { language, words: own } = question.body;
  return (
    <section class="sheet question" aria-label={words.title}>
      <div class="row row-apart soft">
        <span>{words.title}</span>
        {left > 0 && <span>{words.nth(left + 1)}</span>}
      </div>
      <h2 class="question-words" lang={own === undefined ? undefined : language}>
        {sayQuestion(question, thing)}
      </h2>
      {about !== '' && <p class="soft small">{about}</p>}
      <AnswerTaps question={question} onAnswered={onAnswered} />
    </section>
  );
};
