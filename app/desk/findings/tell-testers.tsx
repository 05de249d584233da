/**
 * Testers hear what came of their reports, where a lead sends it: to whom, in the very words that each will read, who
 * must not know yet and why, and who has been thanked.
 */
import { useState } from 'preact/hooks';
import type { RecordId, RecordOf } from '../../../core/records/index.ts';
import type { ThanksDue, ThanksLook, Withheld } from '../../../core/review/index.ts';
import { groupBy } from '../../../core/statistics/index.ts';
import { revealsChange } from '../../../core/words/index.ts';
import {
  newThanks,
  readThanks,
  thanked,
  type NamedTester,
  type ThanksDraft,
  type ThanksTrouble,
} from '../../drafts/thanks.ts';
import { changeSpeaker } from '../../parts/change-speaker.ts';
import { LimitedField } from '../../parts/controls/limited-field.tsx';
import { showToast } from '../../parts/controls/toast.tsx';
import { formatDate } from '../../parts/format.ts';
import { toInstant } from '../../parts/instant.ts';
import { settings } from '../../parts/settings.ts';
import { store } from '../../parts/state.ts';
import { comma, d, listed, p, saidOf, t, talkWords } from '../../words/index.ts';
import { changeInWords } from '../../words/say-talk.ts';
import { thanksInWords, toldInThanks } from '../../words/say-thanks.ts';
import { namesIn, useWork } from '../desk-state.ts';
import { HowSure } from '../frame/how-sure.tsx';
import { linksOf } from '../frame/route.ts';
import { labelOf, SmallForm } from '../parts/form-parts.tsx';
import { Some } from '../parts/some.tsx';
import type { FindingProps } from './finding-props.ts';
import './thanks.css';

/** At first so many testers; a press shows more. */
const FIRST = 12;

/** Those who were thanked for this finding; the latest first. */
const sentFor = ({ records, finding }: FindingProps): readonly RecordOf<'thanks'>[] =>
  records.thanks
    .filter(({ body }) => body.finding === finding.revision.id)
    .sort((a, b) => Date.parse(b.body.at) - Date.parse(a.body.at));

export const TellTesters = (props: FindingProps) => {
  const { review, records, finding } = props;
  const answer = useWork((desk) => desk.thanks(review.project.id, finding.revision.id), records, [
    finding.revision.id,
  ]);
  const words = p().thanks;
  const look = answer?.look;
  const sent = sentFor(props);
  if (!look || look.due.length + sent.length === 0) return null;
  const free = look.due.filter(({ withheld }) => withheld === null);
  const held = look.due.filter(({ withheld }) => withheld !== null);
  return (
    <section class="paper thanks-part" aria-label={words.title}>
      <h2>{words.title}</h2>
      {!look.allowed && look.due.length > 0 && (
        <p>
          {words.off} <a href={linksOf(review.project.id).place('brief')}>{words.toBrief}</a>
        </p>
      )}
      {look.allowed && free.length > 0 && (
        // Begun anew once some were thanked, or the outcome is another.
        <Form key={`${free[0]?.result} ${look.blind}`} {...props} look={look} free={free} />
      )}
      {look.allowed && free.length === 0 && held.length > 0 && (
        <p>{sent.length > 0 ? words.nobodyElse : words.nobodyYet}</p>
      )}
      {look.allowed && held.length > 0 && <HeldBack {...props} held={held} />}
      {sent.length > 0 && <Sent {...props} sent={sent} />}
    </section>
  );
};

/** Thanks that were just sent, taken back. */
const undo = async (ids: readonly RecordId[]) => {
  const erased = await store.saveAll(ids.map((id) => ({ id, body: null })));
  showToast({ text: erased.ok ? p().thanks.undone : d().trouble });
};

const Form = (
  props: FindingProps & { readonly look: ThanksLook; readonly free: readonly ThanksDue[] },
) => {
  const { review, records, look, free } = props;
  const words = p().thanks;
  const [draft, setDraft] = useState<ThanksDraft>(() => newThanks(look));
  /** Sending was tried: from then on each field says what is wrong with it. */
  const [tried, setTried] = useState(false);
  const change = (part: Partial<ThanksDraft>) => setDraft((now) => ({ ...now, ...part }));
  const [first] = free;
  if (!first) return null;
  const say = changeSpeaker();
  const testers = records.tester.map(({ revision, body }): NamedTester => ({
    id: revision.id,
    code: body.code,
    name: body.name,
  }));
  const read = readThanks(draft, free, testers, {
    project: review.project.id,
    at: toInstant(review.nowMs),
    language: settings.value.language,
  });
  const troubles: readonly ThanksTrouble[] = tried && !read.ok ? read.troubles : [];
  const naming = troubles.find((one) => one.field === 'words');
  const send = async () => {
    setTried(true);
    if (!read.ok) return '';
    const at = toInstant(Date.now());
    const saved = await store.saveAll(
      read.bodies.map((body) => ({ kind: 'thanks', body: { ...body, at } })),
    );
    if (!saved.ok) return d().trouble;
    const ids = saved.value.map(({ id }) => id);
    showToast({
      text: words.sent(ids.length),
      action: { label: t().undo, run: () => void undo(ids) },
    });
    setDraft(newThanks(look));
    setTried(false);
    return null;
  };
  return (
    <>
      <p>{words.offer(free.length)}</p>
      <SmallForm save={send} label={words.send(thanked(free, draft).length)}>
        <fieldset class="field thanks-whom">
          <legend class="label">{words.whom}</legend>
          <ul class="plain-list">
            <Some of={free} step={FIRST}>
              {(one) => (
                <Whom key={one.tester} {...props} one={one} draft={draft} change={change} />
              )}
            </Some>
          </ul>
          {troubles.some(({ field }) => field === 'testers') && (
            <p class="field-error" aria-invalid tabIndex={-1}>
              {words.nobodyChosen}
            </p>
          )}
        </fieldset>
        {first.change && (
          <label class="thanks-tick">
            <input
              type="checkbox"
              class="tick"
              checked={draft.tellChange}
              onChange={() => change({ tellChange: !draft.tellChange })}
            />
            <span>{words.tellChange(changeInWords(first.change, say))}</span>
          </label>
        )}
        {look.blind > 0 && <p class="small soft">{words.blind(look.blind)}</p>}
        <LimitedField
          label={labelOf(words.own, true)}
          rows={2}
          most={500}
          value={draft.words}
          onInput={(own) => change({ words: own })}
          error={naming ? words.names(naming.named) : null}
        />
        <p class="small soft">{words.ownHint}</p>
        <Revealed draft={draft} look={look} />
        <Letter draft={draft} one={first} />
      </SmallForm>
    </>
  );
};

/** A tester with their own first sentence, which is the only one that differs. */
const Whom = (
  props: FindingProps & {
    readonly one: ThanksDue;
    readonly draft: ThanksDraft;
    readonly change: (part: Partial<ThanksDraft>) => void;
  },
) => {
  const { one, draft, change } = props;
  const code = namesIn(props.review, props.records).tester(one.tester);
  const isIn = !draft.leftOut.has(one.tester);
  const toggle = () => {
    const leftOut = new Set(draft.leftOut);
    if (isIn) leftOut.add(one.tester);
    else leftOut.delete(one.tester);
    change({ leftOut });
  };
  return (
    <li>
      <label class="thanks-tick">
        <input type="checkbox" class="tick" checked={isIn} onChange={toggle} />
        <span>
          <b>{code}</b> {toldInThanks(one, changeSpeaker())}
        </span>
      </label>
    </li>
  );
};

/** The lead's words are those of the round's list of changes, though the change is not to be told. */
const Revealed = ({ draft, look }: { readonly draft: ThanksDraft; readonly look: ThanksLook }) => {
  const said = draft.tellChange
    ? []
    : revealsChange(draft.words, look.changes).flatMap(({ words }) => words);
  return said.length === 0 ? null : (
    <p class="notice notice-warn">{p().thanks.reveals(listed([...new Set(said)]))}</p>
  );
};

/** What they read. */
const Letter = ({ draft, one }: { readonly draft: ThanksDraft; readonly one: ThanksDue }) => {
  const { change, ...facts } = one;
  const own = draft.words.trim();
  const said = thanksInWords(
    { ...facts, ...(draft.tellChange && change && { change }), ...(own !== '' && { words: own }) },
    changeSpeaker(),
  );
  return (
    <figure class="thanks-letter">
      <figcaption class="small soft">{p().thanks.reads}</figcaption>
      <blockquote>
        <p>
          <b>{said.title}</b>
        </p>
        {said.told !== null && <p>{said.told}</p>}
        {said.lines.map((line) => (
          <p key={line}>{line}</p>
        ))}
        {said.words !== null && <p class="thanks-own">{said.words}</p>}
      </blockquote>
    </figure>
  );
};

const whyHeld = ({ why, untilMs }: Withheld): string =>
  p().thanks.withheld[why](untilMs === null ? null : formatDate(untilMs));

/** Who must not know yet, by why and until when: most of a panel waits for the same day. */
const HeldBack = (props: FindingProps & { readonly held: readonly ThanksDue[] }) => {
  const names = namesIn(props.review, props.records);
  const links = linksOf(props.review.project.id);
  const byReason = groupBy(props.held, ({ withheld }) => (withheld ? whyHeld(withheld) : ''));
  return (
    <div class="thanks-later">
      <h3>{p().thanks.later(props.held.length)}</h3>
      <ul class="plain-list">
        {[...byReason].map(([reason, held]) => (
          <li key={reason}>
            {saidOf(reason, '')}
            {held.map(({ tester }, at) => (
              <span key={tester}>
                {at > 0 && comma()}
                <a href={links.tester(tester)}>{names.tester(tester)}</a>
              </span>
            ))}
          </li>
        ))}
      </ul>
    </div>
  );
};

const Sent = (props: FindingProps & { readonly sent: readonly RecordOf<'thanks'>[] }) => {
  const { sent } = props;
  const words = p().thanks;
  const names = namesIn(props.review, props.records);
  const testers = new Set(sent.map(({ body }) => body.tester)).size;
  return (
    <HowSure title={words.thanked(testers)}>
      <ul class="plain-list">
        <Some of={sent} step={FIRST}>
          {({ revision, body }) => (
            <li key={revision.id}>
              <b>{names.tester(body.tester)}</b> {talkWords().thanks.titles[body.result]}{' '}
              <span class="soft">{words.thankedOn(formatDate(body.at))}</span>
            </li>
          )}
        </Some>
      </ul>
    </HowSure>
  );
};
