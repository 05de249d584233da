/** A lead corrects a run on its tester's behalf: the run as it was said, filled in, and the reason. */
import { useState } from 'preact/hooks';
import type { RecordId, Run } from '../../../core/records/index.ts';
import {
  formOfRun,
  runOfForm,
  withScore,
  type RunForm,
  type RunFormError,
} from '../../drafts/run.ts';
import { Field } from '../../parts/controls/controls.tsx';
import { Scale } from '../../parts/controls/scale.tsx';
import { toInstant } from '../../parts/instant.ts';
import { settings } from '../../parts/settings.ts';
import { session } from '../../parts/state.ts';
import { p, t, terms } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { OpenForm, SmallForm, TextField } from '../form-parts.tsx';
import { CorrectDay } from './correct-day.tsx';
import { CorrectFeet } from './correct-feet.tsx';
import { saveCorrection } from './save-correction.ts';

/** What each part of the form gets. */
export interface CorrectProps extends TabProps {
  readonly form: RunForm;
  readonly change: (part: Partial<RunForm>) => void;
  /** What is wrong with a field, in words. */
  readonly wrong: (field: RunFormError) => string | undefined;
}

/** As long as a reason may be, letters. */
const LONGEST_WHY = 500;

export const CorrectRun = (
  props: TabProps & { readonly id: RecordId; readonly run: Run; readonly close: () => void },
) => {
  const { review, records, id, run, close } = props;
  const words = p().runs;
  const [form, setForm] = useState(() => formOfRun(run, settings.value));
  const [why, setWhy] = useState('');
  const [errors, setErrors] = useState<ReadonlySet<RunFormError | 'why'>>(new Set());
  const tester = namesIn(review, records).tester(run.tester);
  const save = async () => {
    const by = session.value?.member;
    if (!by) return words.changedMeanwhile;
    const nowMs = Date.now();
    const outcome = runOfForm(form, {
      project: run.project,
      tester: run.tester,
      units: settings.value,
      nowMs,
      firstImpression: false,
      stopped: false,
      before: run,
      correctedBy: { by, at: toInstant(nowMs), why: why.trim() },
    });
    const found = new Set<RunFormError | 'why'>(outcome.ok ? [] : outcome.errors);
    if (why.trim() === '') found.add('why');
    setErrors(found);
    if (!outcome.ok || found.size > 0) return '';
    const trouble = await saveCorrection(id, run, outcome.run);
    if (trouble === null) close();
    return trouble;
  };
  const parts: CorrectProps = {
    ...props,
    form,
    change: (part) => setForm((now) => ({ ...now, ...part })),
    wrong: (field) => (errors.has(field) ? words.form.wrong[field] : undefined),
  };
  return (
    <OpenForm label={words.correctOf(tester)} close={close}>
      <p class="small soft">{words.correctHint(tester)}</p>
      <SmallForm save={save} label={words.saveCorrection}>
        <div class="correct-columns">
          <CorrectDay {...parts} />
          <CorrectComfort {...parts} />
          <CorrectFeet {...parts} />
        </div>
        <TextField
          label={words.why}
          value={why}
          onInput={setWhy}
          most={LONGEST_WHY}
          error={errors.has('why') ? words.whyMissing : undefined}
        />
      </SmallForm>
    </OpenForm>
  );
};

const CorrectComfort = ({ form, change, review }: CorrectProps) => {
  const words = t();
  return (
    <div class="stack">
      {review.project.brief.attributes.map((attribute) => {
        const { name, low, high } = terms().attributes[attribute];
        return (
          <Scale
            key={attribute}
            label={name}
            low={low}
            high={high}
            value={form.comfort[attribute] ?? null}
            onChange={(value) => change({ comfort: withScore(form.comfort, attribute, value) })}
            words={{ ...words.scale, unanswered: words.unanswered, clear: words.clear }}
          />
        );
      })}
      <Field label={p().runs.form.words}>
        {(ids) => (
          <textarea
            class="input"
            rows={3}
            maxLength={4000}
            {...ids}
            value={form.words}
            onInput={(event) => change({ words: event.currentTarget.value })}
          />
        )}
      </Field>
    </div>
  );
};
