/** The day of the run: today unless said otherwise, and the hour as soon as it is another. */
import { useEffect, useId, useRef } from 'preact/hooks';
import { Field } from '../../parts/controls/controls.tsx';
import { formatDay } from '../../parts/format.ts';
import { useShown } from '../../parts/loaded.ts';
import { toLocalMinute } from '../../parts/instant.ts';
import { t } from '../../words/index.ts';
import { dayOf, onDay, recentDays, shownStart, typedStart, type RunDay } from './run-day.ts';
import type { RunForm } from '../../drafts/run.ts';

export const DayPart = (props: {
  readonly form: RunForm;
  readonly error: string | null;
  readonly onChange: (part: Partial<RunForm>) => void;
}) => {
  const words = t().log;
  const id = useId();
  const { form, onChange } = props;
  const nowMs = Date.now();
  const day = dayOf(form, nowMs);
  const [today, ...before] = recentDays(nowMs);
  // The first formatter of dates is slow to make, and most log the run of just now.
  const isShown = useShown();
  const started = useRef<HTMLInputElement>(null);
  const isTyped = day === 'other' && shownStart(form) === '';
  useEffect(() => {
    if (isTyped) started.current?.focus();
  }, [isTyped]);
  const options: readonly (readonly [RunDay | undefined, string])[] = [
    ['now', words.today],
    [today, words.earlier],
    ...before
      .map((one, at) => ({ one, at }))
      .filter(({ one, at }) => isShown || at === 0 || one === day)
      .map(({ one, at }) => [one, at === 0 ? words.yesterday : formatDay(one)] as const),
    ['other', words.otherDay],
  ];
  return (
    <div class="stack">
      <div class="field">
        <label class="hidden-words" for={id}>
          {words.day}
        </label>
        <select
          class="input"
          id={id}
          value={day}
          onChange={(event) => onChange(onDay(event.currentTarget.value as RunDay, form, nowMs))}
        >
          {options.map(([value, label]) => (
            <option key={value} value={value}>
              {label}
            </option>
          ))}
        </select>
      </div>
      {day !== 'now' && (
        <Field label={words.when} error={props.error}>
          {(ids) => (
            <input
              class="input"
              type="datetime-local"
              max={toLocalMinute(nowMs)}
              ref={started}
              {...ids}
              value={shownStart(form)}
              onInput={(event) => onChange(typedStart(event.currentTarget.value))}
            />
          )}
        </Field>
      )}
    </div>
  );
};
