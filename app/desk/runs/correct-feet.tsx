/** What was felt in the run that is corrected: complaints, one row each, and pain. */
import { complaintKinds, zonesOfView, type ZoneCode } from '../../../core/foot/index.ts';
import { feet, painSigns } from '../../../core/records/index.ts';
import type { ComplaintForm, RunForm } from '../../drafts/run.ts';
import { Button, Choice, Choices, Field } from '../../parts/controls/controls.tsx';
import { settings } from '../../parts/settings.ts';
import { p, saidOf, t, terms } from '../../words/index.ts';
import { SelectField, TextField } from '../parts/form-parts.tsx';
import type { CorrectProps } from './correct-props.ts';
import { MaybeSelect } from './maybe-select.tsx';

const zones: readonly ZoneCode[] = [...zonesOfView('upper'), ...zonesOfView('sole')];
const ten = Array.from({ length: 11 }, (_, at) => [String(at), String(at)] as const);

const newComplaint = (): ComplaintForm => ({
  foot: 'left',
  zone: zones[0] as ZoneCode,
  kind: null,
  severity: null,
  from: '',
  skin: null,
  photos: [],
});

const ComplaintRow = (
  props: CorrectProps & {
    readonly one: ComplaintForm;
    readonly nth: number;
  },
) => {
  const { form, one, nth, wrong } = props;
  const words = p().runs.form;
  const change = (part: Partial<ComplaintForm>) =>
    props.change({
      complaints: form.complaints.map((other, at) => (at === nth ? { ...other, ...part } : other)),
    });
  return (
    <fieldset class="correct-complaint">
      <legend class="hidden-words">{`${p().runs.columns.complaints} ${nth + 1}`}</legend>
      <SelectField
        label={words.foot}
        value={one.foot}
        options={feet.map((value) => ({ value, label: t().foot[value] }))}
        onChange={(foot) => change({ foot })}
      />
      <SelectField
        label={words.zone}
        value={one.zone}
        options={zones.map((value) => ({ value, label: terms().zones[value].name }))}
        onChange={(zone) => change({ zone })}
      />
      <MaybeSelect
        label={words.kind}
        value={one.kind}
        options={complaintKinds.map((kind) => [kind, terms().kinds[kind].name] as const)}
        error={one.kind === null ? wrong('kind') : undefined}
        onChange={(kind) => change({ kind })}
      />
      <MaybeSelect
        label={words.severity}
        value={one.severity === null ? null : String(one.severity)}
        options={ten}
        onChange={(severity) => change({ severity: severity === null ? null : Number(severity) })}
      />
      <TextField
        label={words.from(settings.value.distance)}
        value={one.from}
        onInput={(from) => change({ from })}
        error={one.from === '' ? undefined : wrong('from')}
        numeric
        required={false}
      />
      <SelectField
        label={words.skin}
        value={one.skin ?? 'whole'}
        options={[
          { value: 'whole', label: words.skinWhole },
          { value: 'blister', label: p().runs.skin.blister },
          { value: 'broken', label: p().runs.skin.broken },
        ]}
        onChange={(skin) => change({ skin: skin === 'whole' ? null : skin })}
      />
      <Button
        kind="quiet"
        aria-label={saidOf(words.removeComplaint, terms().zones[one.zone].name)}
        onClick={() => props.change({ complaints: form.complaints.filter((_, at) => at !== nth) })}
      >
        {words.removeComplaint}
      </Button>
    </fieldset>
  );
};

const answers = ['unasked', 'nothing', 'something'] as const;

export const CorrectFeet = (props: CorrectProps) => {
  const { form, change, wrong } = props;
  const words = p().runs.form;
  const add = () => change({ complaints: [...form.complaints, newComplaint()] });
  return (
    <div class="stack">
      <Choice
        label={words.feet}
        options={answers.map((value) => ({ value, label: words.feetAnswers[value] }))}
        value={form.feet ?? 'unasked'}
        onChange={(answer) =>
          change({
            feet: answer === 'unasked' ? null : answer,
            ...(answer === 'something' &&
              form.complaints.length === 0 && { complaints: [newComplaint()] }),
          })
        }
      />
      {form.feet === 'something' && (
        <>
          {form.complaints.map((one, nth) => (
            <ComplaintRow key={nth} {...props} one={one} nth={nth} />
          ))}
          {wrong('where') && (
            <p class="field-error" role="alert" tabIndex={-1} aria-invalid>
              {wrong('where')}
            </p>
          )}
          <Button kind="quiet" onClick={add}>
            {words.addComplaint}
          </Button>
        </>
      )}
      <MaybeSelect
        label={words.pain}
        value={form.pain === null ? null : String(form.pain)}
        options={ten}
        onChange={(pain) => change({ pain: pain === null ? null : Number(pain) })}
      />
      {form.pain !== null && form.pain > 0 && <PainFields form={form} change={change} />}
      <Field label={words.words}>
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

const PainFields = ({ form, change }: Pick<CorrectProps, 'form' | 'change'>) => {
  const words = p().runs.form;
  const isNew: Readonly<Record<'yes' | 'no', RunForm['painIsNew']>> = { yes: true, no: false };
  return (
    <>
      <MaybeSelect<'yes' | 'no'>
        label={words.painIsNew}
        value={form.painIsNew === null ? null : form.painIsNew ? 'yes' : 'no'}
        options={[
          ['yes', words.yes],
          ['no', words.no],
        ]}
        onChange={(answer) => change({ painIsNew: answer === null ? null : isNew[answer] })}
      />
      <Choices
        label={words.painSigns}
        options={painSigns.map((value) => ({ value, label: terms().painSigns[value] }))}
        values={new Set(form.painSigns)}
        onToggle={(sign) =>
          change({
            painSigns: form.painSigns.includes(sign)
              ? form.painSigns.filter((one) => one !== sign)
              : [...form.painSigns, sign],
          })
        }
      />
    </>
  );
};
