/** What is good to know and quick to skip: ground, air, sock, words, photos. */
import { useState } from 'preact/hooks';
import { grounds, socks } from '../../../core/records/index.ts';
import { Choice, Field } from '../../parts/controls/controls.tsx';
import { LimitedField } from '../../parts/controls/limited-field.tsx';
import { latePart } from '../../parts/late.tsx';
import { settings } from '../../parts/settings.ts';
import { entryWords, t, terms } from '../../words/index.ts';
import type { RunForm, RunFormError } from '../../drafts/run.ts';

// Comes when the part is unfolded.
const PhotoPicker = latePart(
  async () => (await import('../../parts/photos/photo-picker.tsx')).PhotoPicker,
);

export const MorePart = (props: {
  readonly form: RunForm;
  readonly errors: ReadonlySet<RunFormError>;
  readonly onChange: (part: Partial<RunForm>) => void;
}) => {
  const words = t();
  const said = entryWords();
  const { form, errors, onChange } = props;
  const [open, setOpen] = useState(false);
  return (
    <details class="stack" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary class="button button-quiet">{words.log.more}</summary>
      <div class="stack">
        <Choice
          label={words.log.ground}
          options={grounds.map((value) => ({ value, label: terms().grounds[value] }))}
          value={form.ground}
          onChange={(ground) => onChange({ ground })}
        />
        <Field
          label={words.log.temperature(`°${settings.value.temperature}`)}
          error={errors.has('temperature') ? said.wrongTemperature : null}
        >
          {(ids) => (
            <input
              class="input"
              autocomplete="off"
              {...ids}
              value={form.temperature}
              onInput={(event) => onChange({ temperature: event.currentTarget.value })}
            />
          )}
        </Field>
        <Choice
          label={words.log.sock}
          options={socks.map((value) => ({ value, label: terms().socks[value] }))}
          value={form.sock}
          onChange={(sock) => onChange({ sock })}
        />
        <LimitedField
          label={words.log.words}
          rows={3}
          most={4000}
          value={form.words}
          onInput={(text) => onChange({ words: text })}
        />
        {open && (
          <PhotoPicker
            label={words.log.title}
            photos={form.photos}
            onChange={(photos) => onChange({ photos: [...photos] })}
          />
        )}
      </div>
    </details>
  );
};
