/** A specialist answers a finding: can do, cannot, or another way; in figures where it can be, by a day, with a sketch. */
import { useState } from 'preact/hooks';
import { proposalAnswers, type RecordOf } from '../../core/records/index.ts';
import {
  asksForChange,
  draftOfProposal,
  newProposal,
  proposalTroubles,
  readProposal,
  type ProposalDraft,
  type ProposalTrouble,
} from '../drafts/proposal.ts';
import { keptProposalSchema } from '../drafts/kept-proposal.ts';
import { ChangeFields } from '../parts/change-fields.tsx';
import { sayChange } from '../parts/change-speaker.ts';
import { Button, Choice, Field, Notice } from '../parts/controls/controls.tsx';
import { showToast } from '../parts/controls/toast.tsx';
import { formatNumber } from '../parts/format.ts';
import { KeptNotice, useKept } from '../parts/kept.tsx';
import { PhotoPicker } from '../parts/photos/photo-picker.tsx';
import { settings } from '../parts/settings.ts';
import { store } from '../parts/state.ts';
import { d, proposeWords } from '../words/index.ts';

/** As long as the words of an answer may be. */
const MOST_WORDS = 4000;

export interface AnswerFormProps {
  readonly finding: RecordOf<'finding'>;
  /** The answer that is corrected; absent: a new one. */
  readonly of?: RecordOf<'proposal'> | undefined;
  readonly close: () => void;
}

const write = (value: number): string => formatNumber(value, 3);

export const AnswerForm = ({ finding, of, close }: AnswerFormProps) => {
  const words = proposeWords();
  const asked = finding.body;
  const before = of?.body ?? null;
  const kept = useKept<ProposalDraft>({
    key: of ? `proposal ${of.revision.id}` : `new proposal ${finding.revision.id}`,
    of: of?.revision.stamp,
    schema: keptProposalSchema,
    begin: () => (before ? draftOfProposal(before, asked, write) : newProposal(asked, write)),
  });
  const { draft, setDraft } = kept;
  /** Sending was tried: from then on each field says what is wrong with it. */
  const [tried, setTried] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  const [saving, setSaving] = useState(false);
  const change = (part: Partial<ProposalDraft>) => setDraft((now) => ({ ...now, ...part }));
  const troubles = tried ? proposalTroubles(draft, asked, Date.now(), before) : [];
  const wrong = <F extends ProposalTrouble['field']>(field: F) =>
    troubles.find((one): one is Extract<ProposalTrouble, { field: F }> => one.field === field);
  const send = async (form: HTMLFormElement) => {
    const place = { project: asked.project, finding: finding.revision.id };
    const written = { nowMs: Date.now(), language: settings.value.language };
    const read = readProposal(draft, asked, place, written, before);
    if (!read.ok) {
      setTried(true);
      // The first field that is wrong, once it says so.
      requestAnimationFrame(() =>
        form.querySelector<HTMLElement>('[aria-invalid], [data-wrong] input')?.focus(),
      );
      return;
    }
    setSaving(true);
    const saved = await store.save('proposal', read.body, of?.revision.id);
    setSaving(false);
    if (!saved.ok) return setTrouble(d().trouble);
    await kept.done();
    showToast({
      text: of ? words.corrected : navigator.onLine ? words.sent : words.sentLater,
    });
    close();
  };
  const { answer } = draft;
  return (
    <form
      class="sheet answer-form"
      aria-label={words.yourAnswer}
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        if (!saving) void send(event.currentTarget);
      }}
    >
      <KeptNotice {...kept} />
      <div {...(wrong('answer') && { 'data-wrong': '' })}>
        <Choice
          label={words.yourAnswer}
          options={proposalAnswers.map((value) => ({ value, label: words.answers[value] }))}
          value={answer === '' ? null : answer}
          onChange={(value) => change({ answer: value })}
        />
        {wrong('answer') && (
          <p class="field-error" role="alert">
            {words.errors.answer}
          </p>
        )}
      </div>
      {answer === 'can' && asked.change && <p>{sayChange(asked.change)}</p>}
      {answer !== '' && answer !== 'cannot' && asksForChange(draft, asked) && (
        <fieldset class="field">
          <legend class="label">{words.changeTitle[answer]}</legend>
          <p class="soft small">{words.changeHint}</p>
          <ChangeFields
            draft={draft.change}
            set={(next) => change({ change: next })}
            troubles={troubles}
          />
        </fieldset>
      )}
      {answer !== '' && answer !== 'cannot' && (
        <Field
          label={words.optional(words.sample)}
          error={wrong('sampleDay') && words.errors[wrong('sampleDay')?.why ?? 'none']}
        >
          {(ids) => (
            <input
              class="input"
              type="date"
              {...ids}
              value={draft.sampleDay}
              onInput={(event) => change({ sampleDay: event.currentTarget.value })}
            />
          )}
        </Field>
      )}
      {answer !== '' && (
        <>
          <Field
            label={answer === 'can' ? words.optional(words.words.can) : words.words[answer]}
            error={wrong('words') && words.errors[wrong('words')?.why ?? 'other']}
          >
            {(ids) => (
              <textarea
                class="input"
                rows={3}
                maxLength={MOST_WORDS}
                {...ids}
                value={draft.words}
                onInput={(event) => change({ words: event.currentTarget.value })}
              />
            )}
          </Field>
          <PhotoPicker
            label={words.sketch}
            photos={draft.photos}
            onChange={(photos) => change({ photos })}
          />
        </>
      )}
      {trouble !== null && (
        <Notice tone="danger" live>
          {trouble}
        </Notice>
      )}
      <Button kind="main" big submit disabled={saving}>
        {of ? words.correct : words.send}
      </Button>
      <Button kind="quiet" onClick={close}>
        {words.cancel}
      </Button>
    </form>
  );
};
