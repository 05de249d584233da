/** A lead corrects a run on its tester's behalf: the run as it was said, filled in, and the reason. */
import { useState } from 'preact/hooks';
import type { RecordId, Run } from '../../../core/records/index.ts';
import { formOfRun, runOfForm, withAnswer, type RunFormError } from '../../drafts/run.ts';
import { askedOfComfort } from '../../drafts/two-sided.ts';
import { parseDecimal } from '../../../core/units/index.ts';
import { Field } from '../../parts/controls/controls.tsx';
import { toInstant } from '../../parts/instant.ts';
import { settings } from '../../parts/settings.ts';
import { session } from '../../parts/state.ts';
import { clauses, entryWords, p, saidOf, terms } from '../../words/index.ts';
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

/** A score as it is typed; null where that is none. @param least of the line; the most is 100 */
const scoreOf = (typed: string, least: number): number | null => {
  const score = parseDecimal(typed);
  return score === null ? null : Math.min(100, Math.max(least, score));
};

/** One question as a figure: a lead copies it from somewhere, and does not point at it on a line. */
const Figure = (props: {
  readonly label: string;
  readonly hint: readonly string[];
  readonly least: number;
  readonly value: number | undefined;
  readonly onChange: (value: number | null) => void;
}) => (
  <Field label={props.label} hint={clauses(...props.hint)}>
    {(ids) => (
      <input
        class="input"
        type="number"
        min={props.least}
        max={100}
        step="any"
        {...ids}
        value={props.value === undefined ? '' : Math.round(10 * props.value) / 10}
        onInput={(event) => props.onChange(scoreOf(event.currentTarget.value, props.least))}
      />
    )}
  </Field>
);

/** Each question on the line on which the run answered it; unanswered ones as they are asked today. */
const CorrectComfort = ({ form, change, review }: CorrectProps) => {
  const [{ oneSided, twoSided }] = useState(() =>
    askedOfComfort(review.project.brief, form.comfort),
  );
  return (
    <fieldset class="field">
      <legend class="label">{p().runs.form.comfort}</legend>
      <div class="correct-scores">
        {(['overall', ...oneSided] as const).map((attribute) => {
          const { name, low, high } = terms().attributes[attribute];
          return (
            <Figure
              key={attribute}
              label={name}
              hint={[saidOf('0', low), saidOf('100', high)]}
              least={0}
              value={form.comfort[attribute]}
              onChange={(value) => change({ comfort: withAnswer(form.comfort, attribute, value) })}
            />
          );
        })}
        {twoSided.map((question) => {
          const { name, low, high } = terms().twoSided[question];
          return (
            <Figure
              key={question}
              label={name}
              hint={[
                saidOf('−100', low),
                saidOf('0', entryWords().twoSided.right),
                saidOf('100', high),
              ]}
              least={-100}
              value={form.comfort2[question]}
              onChange={(value) => change({ comfort2: withAnswer(form.comfort2, question, value) })}
            />
          );
        })}
      </div>
    </fieldset>
  );
};
