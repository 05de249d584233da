/** The figures of the run that is corrected: how far, when, in which pair, on what. */
import { grounds, surfaces, type RecordId } from '../../../core/records/index.ts';
import { Choices, Field } from '../../parts/controls/controls.tsx';
import { settings } from '../../parts/settings.ts';
import { p, terms } from '../../words/index.ts';
import { namesIn } from '../desk-state.ts';
import { TextField } from '../parts/form-parts.tsx';
import type { CorrectProps } from './correct-props.ts';
import { MaybeSelect } from './maybe-select.tsx';

const socks = ['none', 'thin', 'medium', 'thick'] as const;

export const CorrectDay = (props: CorrectProps) => {
  const { form, change, wrong, review, records } = props;
  const words = p().runs.form;
  const names = namesIn(review, records);
  const { distance, temperature } = settings.value;
  return (
    <div class="stack">
      <div class="correct-two">
        <TextField
          label={words.distance(distance)}
          value={form.distance}
          onInput={(typed) => change({ distance: typed })}
          error={wrong('distance')}
          numeric
        />
        <TextField
          label={words.time}
          value={form.time}
          onInput={(time) => change({ time })}
          error={wrong('time')}
          required={false}
        />
      </div>
      <Field label={words.start} error={wrong('ahead') ?? wrong('start')}>
        {(ids) => (
          <input
            class="input"
            type="datetime-local"
            {...ids}
            value={form.start}
            // An empty start would be read as "just now".
            onInput={(event) =>
              change({ start: event.currentTarget.value || '?', isHourMade: false })
            }
          />
        )}
      </Field>
      <MaybeSelect<RecordId>
        label={words.pair}
        value={form.pair}
        options={review.pairs.map(({ id }) => [id, names.pair(id)] as const)}
        error={wrong('pair')}
        onChange={(pair) => change({ pair })}
      />
      <Choices
        label={words.surfaces}
        options={surfaces.map((value) => ({ value, label: terms().surfaces[value] }))}
        values={new Set(form.surfaces)}
        onToggle={(surface) =>
          change({
            surfaces: form.surfaces.includes(surface)
              ? form.surfaces.filter((one) => one !== surface)
              : [...form.surfaces, surface],
          })
        }
      />
      <div class="correct-two">
        <MaybeSelect
          label={words.ground}
          value={form.ground}
          options={grounds.map((one) => [one, terms().grounds[one]] as const)}
          onChange={(ground) => change({ ground })}
        />
        <MaybeSelect
          label={words.sock}
          value={form.sock}
          options={socks.map((one) => [one, terms().socks[one]] as const)}
          onChange={(sock) => change({ sock })}
        />
      </div>
      <TextField
        label={words.temperature(`°${temperature}`)}
        value={form.temperature}
        onInput={(typed) => change({ temperature: typed })}
        error={wrong('temperature')}
        required={false}
      />
    </div>
  );
};
