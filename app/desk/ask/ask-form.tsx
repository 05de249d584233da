/** A question to a tester: ready-made or in the lead's words, what can be tapped, and a warning where it tells too much. */
import { useState } from 'preact/hooks';
import type { AskedAbout, AskId, RecordId } from '../../../core/records/index.ts';
import type { AskedRun } from '../../../core/review/index.ts';
import { answerSets, asksAbout, type AnswerSet } from '../../../core/talk/index.ts';
import {
  ASKS_OWN,
  beginQuestion,
  chooseAsk,
  chooseTester,
  MOST_WORDS,
  offeredOptions,
  readQuestion,
  type QuestionDraft,
  type QuestionTrouble,
} from '../../drafts/question.ts';
import { questionSchema } from '../../drafts/kept.ts';
import { askAbout, tapInWords } from '../../parts/asked.ts';
import { Field } from '../../parts/controls/controls.tsx';
import { useLimit } from '../../parts/controls/limited-field.tsx';
import { toInstant } from '../../parts/instant.ts';
import { settings } from '../../parts/settings.ts';
import { p } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { SelectField, SmallForm } from '../parts/form-parts.tsx';
import { useKept } from '../../parts/kept.tsx';
import { Reveals } from './reveals.tsx';
import { sendQuestion } from './send.ts';

/** Whom a question can go to, and what it would be about. */
export interface Asking {
  readonly testers: readonly RecordId[];
  readonly about: (tester: RecordId | '') => AskedAbout;
  readonly run: AskedRun | null;
  /** Ready-made questions that fit best: the first is filled in. */
  readonly first: readonly AskId[];
}

const setNames = Object.keys(answerSets) as AnswerSet[];
/** In the place of an id: the lead's own words. */
const OWN = 'own';

/** The ready-made questions that can be asked about it. */
const asksOf = ({ about, run }: Asking, tester: RecordId | ''): readonly AskId[] =>
  asksAbout(about(tester)).filter(
    // Nobody knows the pace of a run without its time.
    (ask) => ask !== 'really-pace' || run?.durationS !== undefined,
  );

const bestFor = (of: Asking, tester: RecordId | ''): AskId | undefined => {
  const fitting = asksOf(of, tester);
  return of.first.find((ask) => fitting.includes(ask));
};

const WordsField = (props: {
  readonly value: string;
  readonly hint: string;
  readonly error: string | undefined;
  readonly onInput: (words: string) => void;
}) => {
  const { limits, note } = useLimit(props.value, MOST_WORDS);
  return (
    <Field label={p().ask.form.words} hint={note ?? props.hint} error={props.error}>
      {(ids) => (
        <textarea
          class="input"
          rows={2}
          required
          {...ids}
          {...limits}
          value={props.value}
          onInput={(event) => props.onInput(event.currentTarget.value)}
        />
      )}
    </Field>
  );
};

/** What the tester will see to tap. */
const Answers = ({
  draft,
  onChoose,
}: {
  readonly draft: QuestionDraft;
  readonly onChoose: (answers: QuestionDraft['answers']) => void;
}) => {
  const words = p().ask.form;
  const { ask } = draft;
  const own = ask === '' ? [] : offeredOptions({ ...draft, answers: ASKS_OWN });
  return (
    <>
      <SelectField<QuestionDraft['answers']>
        label={words.answers}
        value={draft.answers}
        options={[
          ...(ask === ''
            ? []
            : [
                {
                  value: ASKS_OWN,
                  label: own.map((one) => tapInWords(one, ask)).join(' / '),
                } as const,
              ]),
          ...setNames.map((value) => ({ value, label: words.sets[value] })),
        ]}
        onChange={onChoose}
      />
      <p class="small soft">{words.always}</p>
    </>
  );
};

/** @param about changes with the tester */
export const AskForm = (
  props: TabProps & {
    readonly of: Asking;
    /** Its draft is kept under this. */
    readonly name: string;
    readonly close: () => void;
  },
) => {
  const { of, review, records, close } = props;
  const words = p().ask;
  const names = namesIn(review, records);
  const say = (ask: AskId, tester: RecordId | '' = draft.tester): string =>
    askAbout(ask, thingOf(tester));
  const thingOf = (tester: RecordId | '') => {
    const about = of.about(tester);
    return { run: of.run, pair: about.pair ? names.code(about.pair) : '', about };
  };
  const only = of.testers.length === 1 ? (of.testers[0] as RecordId) : '';
  const { draft, setDraft, done, ...kept } = useKept<QuestionDraft>({
    key: `question/${review.project.id}/${props.name}`,
    schema: questionSchema,
    begin: () => beginQuestion(only, bestFor(of, only) ?? '', (ask) => say(ask, only)),
  });
  const [tried, setTried] = useState(false);
  const about = of.about(draft.tester);
  const facts = {
    ...{ project: review.project.id, about, say: (ask: AskId) => say(ask) },
    ...{ at: toInstant(Date.now()), language: settings.value.language },
  };
  const answer = readQuestion(draft, facts);
  const troubles = tried && !answer.ok ? answer.troubles : {};
  const inWords = (trouble: QuestionTrouble | undefined, missing: string) =>
    trouble && (trouble === 'missing' ? missing : words.form.tooLong);
  const fitting = new Set(asksOf(of, draft.tester));
  const offered = [...new Set([...of.first, ...fitting])].filter((ask) => fitting.has(ask));
  const isReadyMade = draft.ask !== '' && draft.words.trim() === say(draft.ask).trim();
  const code = draft.tester === '' ? '' : names.tester(draft.tester);
  const save = async () => {
    setTried(true);
    if (!answer.ok) return '';
    const trouble = await sendQuestion(answer.body, code);
    if (trouble !== null) return trouble;
    await done();
    close();
    return null;
  };
  return (
    <SmallForm save={save} label={code === '' ? words.form.send : words.button(code)} kept={kept}>
      {of.testers.length !== 1 && (
        <SelectField
          label={words.form.tester}
          value={draft.tester}
          options={of.testers.map((value) => ({ value, label: names.tester(value) }))}
          onChange={(tester) =>
            setDraft((now) =>
              chooseTester(now, tester, {
                before: (ask) => say(ask, now.tester),
                now: (ask) => say(ask, tester),
              }),
            )
          }
          error={inWords(troubles.tester, words.form.missing.tester)}
        />
      )}
      <SelectField<AskId | typeof OWN>
        label={words.form.question}
        value={draft.ask === '' ? OWN : draft.ask}
        options={[
          ...offered.map((value) => ({ value, label: say(value) })),
          { value: OWN, label: words.form.own },
        ]}
        onChange={(ask) => setDraft((now) => chooseAsk(now, ask === OWN ? '' : ask, say))}
      />
      <WordsField
        value={draft.words}
        hint={isReadyMade ? words.form.readyMade : words.form.asTyped}
        error={inWords(troubles.words, words.form.missing.words)}
        onInput={(typed) => setDraft((now) => ({ ...now, words: typed }))}
      />
      {draft.tester !== '' && <Reveals {...props} tester={draft.tester} words={draft.words} />}
      <Answers draft={draft} onChoose={(answers) => setDraft((now) => ({ ...now, answers }))} />
    </SmallForm>
  );
};
