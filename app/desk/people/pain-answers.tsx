/** Pain and damage that testers reported, each with the answer that goes to the tester's phone: go on, or stay out. */
import { useState } from 'preact/hooks';
import type { ComponentChildren } from 'preact';
import { advices, editBody, type Advice, type RecordId } from '../../../core/records/index.ts';
import type { LeadAnswer, ReviewSummary } from '../../../core/review/index.ts';
import { Choice, Field } from '../../parts/controls/controls.tsx';
import { formatDate, formatDateTime } from '../../parts/format.ts';
import { toInstant } from '../../parts/instant.ts';
import { PhotoRow } from '../../parts/photos/photo-view.tsx';
import { clauses, d, terms } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { labelOf, saveFromForm, SmallForm, Unfold } from '../parts/form-parts.tsx';
import { linksOf } from '../frame/route.ts';
import { Some } from '../parts/some.tsx';
import { damagesToAnswer } from '../../../core/headlines/index.ts';

/** What is answered: a run with pain, or a report of damage. */
interface Asked {
  readonly id: RecordId;
  readonly tester: RecordId;
  readonly answer: LeadAnswer | null;
  readonly stands: boolean;
}

const AnswerForm = (props: TabProps & { readonly about: Asked; readonly close: () => void }) => {
  const words = d().ask.answer;
  const { records, review, about, close } = props;
  const [advice, setAdvice] = useState<Advice | null>(about.answer?.advice ?? null);
  const [said, setSaid] = useState(about.answer?.words ?? '');
  const save = async () => {
    if (advice === null) return words.missing;
    const told = {
      at: toInstant(Date.now()),
      advice,
      words: said.trim() === '' ? undefined : said.trim(),
    };
    // An answer that is changed stays the same record, so that what was said before is its history.
    const before = records.reply
      .filter(({ body }) => body.about === about.id && body.advice !== undefined)
      .sort((a, b) => (a.revision.stamp < b.revision.stamp ? 1 : -1))[0];
    const { at } = told;
    const started = { project: review.project.id, tester: about.tester, about: about.id, at };
    const body = editBody<'reply'>(before?.body ?? started, told);
    const saved = await saveFromForm('reply', body, before?.revision.id);
    if (typeof saved === 'string') return saved;
    close();
    return null;
  };
  return (
    <SmallForm save={save}>
      <Choice
        label={words.advice}
        options={advices.map((value) => ({ value, label: words.advices[value] }))}
        value={advice}
        onChange={setAdvice}
      />
      <Field label={labelOf(words.words, true)}>
        {(ids) => (
          <textarea
            class="input"
            rows={2}
            maxLength={4000}
            {...ids}
            value={said}
            onInput={(event) => setSaid(event.currentTarget.value)}
          />
        )}
      </Field>
    </SmallForm>
  );
};

/** What was reported, what was answered, and the way to answer. */
const Item = (
  props: TabProps & {
    readonly about: Asked;
    readonly title: string;
    /** Where the record that is answered stands; absent: here. */
    readonly href?: string | undefined;
    readonly children?: ComponentChildren;
  },
) => {
  const words = d().ask.answer;
  const { about, href } = props;
  const title = href === undefined ? props.title : <a href={href}>{props.title}</a>;
  const tester = namesIn(props.review, props.records).tester(about.tester);
  const { answer } = about;
  return (
    <li class="stack">
      {about.stands ? <strong>{title}</strong> : <span>{title}</span>}
      {props.children}
      {answer && (
        <p>
          {words.given(words.advices[answer.advice], formatDateTime(answer.at))}
          {answer.words && ` ${words.quoted(answer.words)}`}
        </p>
      )}
      <div class="row">
        <Unfold label={answer ? words.change(tester) : words.give(tester)}>
          {(close) => <AnswerForm {...props} close={close} />}
        </Unfold>
      </div>
    </li>
  );
};

export const PainItem = (
  props: TabProps & {
    readonly of: ReviewSummary['pains'][number];
    /** It stands on the page of its own run. */
    readonly isHere?: boolean;
  },
) => {
  const words = d().ask;
  const { run, tester, pair, score, at, over, stands } = props.of;
  const names = namesIn(props.review, props.records);
  const say = stands ? words.pain : words.answer.pain;
  const title = say(names.tester(tester), score, names.pair(pair), formatDate(at));
  return (
    <Item
      {...props}
      about={{ ...props.of, id: run }}
      title={title}
      href={props.isHere ? undefined : linksOf(props.review.project.id).run(run)}
    >
      {over !== null && <p>{words.answer.over(names.tester(tester), formatDateTime(over))}</p>}
    </Item>
  );
};

export const DamageItem = (props: TabProps & { readonly of: ReviewSummary['damages'][number] }) => {
  const { tester, pair, what, at, photos, words: said } = props.of;
  const names = namesIn(props.review, props.records);
  const broke = terms().damages[what];
  const title = d().ask.damage(names.tester(tester), names.pair(pair), broke, formatDate(at));
  return (
    <Item
      {...props}
      about={props.of}
      title={title}
      href={linksOf(props.review.project.id).damage(props.of.id)}
    >
      {said && <p>{d().ask.answer.quoted(said)}</p>}
      <PhotoRow photos={photos} label={clauses(names.pair(pair), broke)} />
    </Item>
  );
};

/** Pain that is over and damage of pairs that may be worn again or were stopped, behind a fold: an answer can still be changed. */
export const Settled = (props: TabProps) => {
  const { pains, damages, pairs } = props.review;
  const open = new Set(damagesToAnswer(damages, pairs));
  const settled = [
    ...pains.flatMap((one) => (one.stands ? [] : [{ key: one.run, pain: one, damage: null }])),
    ...damages.flatMap((one) => (open.has(one) ? [] : [{ key: one.id, pain: null, damage: one }])),
  ];
  if (settled.length === 0) return null;
  return (
    <details>
      <summary class="button button-quiet">{d().ask.answer.settled(settled.length)}</summary>
      <ul>
        <Some of={settled} step={10}>
          {({ key, pain, damage }) =>
            pain ? (
              <PainItem key={key} {...props} of={pain} />
            ) : (
              damage && <DamageItem key={key} {...props} of={damage} />
            )
          }
        </Some>
      </ul>
    </details>
  );
};
