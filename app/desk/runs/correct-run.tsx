/** A lead corrects a run on its tester's behalf: the run as it was said, filled in, and the reason. */
import { useState } from 'preact/hooks';
import type { RecordId, Run } from '../../../core/records/index.ts';
import { formOfRun, runOfForm, withScore, type RunFormError } from '../../drafts/run.ts';
import { parseDecimal } from '../../../core/units/index.ts';
import { Field } from '../../parts/controls/controls.tsx';
import { toInstant } from '../../parts/instant.ts';
import { settings } from '../../parts/settings.ts';
import { session } from '../../parts/state.ts';
import { clauses, p, saidOf, terms } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { OpenForm, SmallForm, TextField } from '../parts/form-parts.tsx';
import { CorrectDay } from './correct-day.tsx';
import { CorrectFeet } from './correct-feet.tsx';
import type { CorrectProps } from './correct-props.ts';
import { saveCorrection } from './save-correction.ts';

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

/** A score as it is typed; null where that is none. */
const scoreOf = (typed: string): number | null => {
  const score = parseDecimal(typed);
  return score === null ? null : Math.min(100, Math.max(0, score));
};

/** A lead copies a figure from somewhere: it is typed, not pointed at on a line. */
const CorrectComfort = ({ form, change, review }: CorrectProps) => (
  <fieldset class="field">
    <legend class="label">{p().runs.form.comfort}</legend>
    <div class="correct-scores">
      {review.project.brief.attributes.map((attribute) => {
        const { name, low, high } = terms().attributes[attribute];
        const score = form.comfort[attribute];
        return (
          <Field key={attribute} label={name} hint={clauses(saidOf('0', low), saidOf('100', high))}>
            {(ids) => (
              <input
                class="input"
                type="number"
                min={0}
                max={100}
                step="any"
                {...ids}
                value={score === undefined ? '' : Math.round(10 * score) / 10}
                onInput={(event) =>
                  change({
                    comfort: withScore(form.comfort, attribute, scoreOf(event.currentTarget.value)),
                  })
                }
              />
            )}
          </Field>
        );
      })}
    </div>
  </fieldset>
);
