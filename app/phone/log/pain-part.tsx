/** The pain question of every run, and the caution that it may call for, once it was read. */
import type { Ref } from 'preact';
import { painSigns } from '../../../core/records/index.ts';
import { Choice, Choices, Notice, Ten } from '../../parts/controls/controls.tsx';
import { t, terms } from '../../words/index.ts';
import { CautionWords } from './caution-bar.tsx';
import { cautionIn } from '../../drafts/run-pain.ts';
import type { RunForm } from '../../drafts/run.ts';

export const PainPart = (props: {
  readonly form: RunForm;
  /** Where the questions beside the pain stand. */
  readonly place: Ref<HTMLDivElement>;
  readonly onChange: (part: Partial<RunForm>) => void;
}) => {
  const words = t();
  const { form, onChange } = props;
  return (
    <section class="stack" aria-label={words.log.pain}>
      <Ten
        label={words.log.pain}
        ends={words.log.painEnds}
        value={form.pain}
        onChange={(pain) => onChange({ pain })}
      />
      {form.pain !== null && form.pain > 0 && (
        <div class="stack" ref={props.place}>
          <Choice
            label={words.log.painNew}
            options={[
              { value: 'yes', label: words.log.yes },
              { value: 'no', label: words.log.no },
            ]}
            value={form.painIsNew === null ? null : form.painIsNew ? 'yes' : 'no'}
            onChange={(answer) => onChange({ painIsNew: answer === 'yes' })}
          />
          <Choices
            label={words.log.painSigns}
            options={painSigns.map((value) => ({ value, label: terms().painSigns[value] }))}
            values={new Set(form.painSigns)}
            onToggle={(sign) =>
              onChange({
                painSigns: form.painSigns.includes(sign)
                  ? form.painSigns.filter((one) => one !== sign)
                  : [...form.painSigns, sign],
              })
            }
          />
          {cautionIn(form) === 'read' && (
            <Notice tone="danger">
              <CautionWords />
            </Notice>
          )}
        </div>
      )}
    </section>
  );
};
