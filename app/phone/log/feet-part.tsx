/** The feet question: "nothing bothered me" is an answer, "something did" opens the foot map. */
import { useRef } from 'preact/hooks';
import type { DistanceUnit } from '../../../core/units/index.ts';
import { Button, Choice } from '../../parts/controls/controls.tsx';
import { latePart } from '../../parts/late.tsx';
import { saidOf, t, terms } from '../../words/index.ts';
import {
  closeComplaint,
  type ComplaintForm,
  type RunForm,
  type RunFormError,
} from '../../drafts/run.ts';

// The map and its editor are drawn only for those whom something bothered.
const ComplaintEditor = latePart(
  async () => (await import('./complaint-editor.tsx')).ComplaintEditor,
);

const PhotoRow = latePart(async () => (await import('../../parts/photos/photo-view.tsx')).PhotoRow);

const inWords = (one: ComplaintForm): string => {
  const words = t();
  const zone = terms().zones[one.zone].name;
  const kind = one.kind ? terms().kinds[one.kind].name : '…';
  return words.complaint.says(words.foot[one.foot], zone, kind);
};

export const FeetPart = (props: {
  readonly form: RunForm;
  readonly unit: DistanceUnit;
  readonly errors: ReadonlySet<RunFormError>;
  readonly onChange: (part: Partial<RunForm>) => void;
}) => {
  const words = t();
  const { form, errors, onChange } = props;
  const asked = useRef(false);
  return (
    <section class="stack" aria-label={words.log.feet}>
      <h2>{words.log.feet}</h2>
      <Choice
        hideLabel
        label={words.log.feet}
        options={[
          { value: 'nothing', label: words.log.nothing },
          { value: 'something', label: words.log.something },
        ]}
        value={form.feet}
        onChange={(feet) => {
          asked.current = true;
          onChange({ feet });
        }}
      />
      {form.feet === 'something' && (
        <>
          {form.complaints.length > 0 && (
            <ul class="plain-list stack">
              {form.complaints.map((one, at) => (
                <li class="row row-apart" key={`${one.foot} ${one.zone} ${one.kind}`}>
                  <span class="grow">
                    {inWords(one)}
                    {one.severity !== null && ` · ${one.severity}`}
                    {one.photos.length > 0 && <PhotoRow photos={one.photos} label={inWords(one)} />}
                  </span>
                  <Button
                    kind="quiet"
                    aria-label={saidOf(words.remove, inWords(one))}
                    onClick={() =>
                      onChange({ complaints: form.complaints.filter((_, other) => other !== at) })
                    }
                  >
                    {words.remove}
                  </Button>
                </li>
              ))}
            </ul>
          )}
          {errors.has('from') && <p class="field-error">{words.complaint.wrongFrom}</p>}
          {errors.has('where') && (
            <p class="field-error" role="alert" tabIndex={-1} aria-invalid>
              {words.complaint.wrongWhere}
            </p>
          )}
          <ComplaintEditor
            complaints={form.complaints}
            unit={props.unit}
            open={form.openComplaint}
            asked={asked.current}
            wrongKind={errors.has('kind') ? words.complaint.wrongKind : null}
            onOpen={(openComplaint) => onChange({ openComplaint })}
            onDone={() => onChange(closeComplaint(form))}
          />
        </>
      )}
    </section>
  );
};
