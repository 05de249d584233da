/** The day of the run: today unless said otherwise; of another day the hour where the tester knows it. */
import { useEffect, useId, useRef, useState } from 'preact/hooks';
import { Field } from '../../parts/controls/controls.tsx';
import { formatDay } from '../../parts/format.ts';
import { useShown } from '../../parts/loaded.ts';
import { toLocalMinute } from '../../parts/instant.ts';
import { t } from '../../words/index.ts';
import {
  dayOf,
  onDay,
  recentDays,
  shownStart,
  typedStart,
  withHour,
  type RunDay,
} from './run-day.ts';
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
  /** The day was chosen from the list, so its hour alone is left to say; else both stand in one field. */
  const [isListed, setListed] = useState(form.isHourMade);
  const asksHour = isListed && before.includes(day);
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
          onChange={(event) => {
            const chosen = event.currentTarget.value as RunDay;
            setListed(chosen !== 'other');
            onChange(onDay(chosen, form, nowMs));
          }}
        >
          {options.map(([value, label]) => (
            <option key={value} value={value}>
              {label}
            </option>
          ))}
        </select>
      </div>
      {asksHour ? (
        <Field label={words.whenKnown} error={props.error}>
          {(ids) => (
            <input
              class="input"
              type="time"
              {...ids}
              value={form.isHourMade ? '' : shownStart(form).slice(11)}
              onInput={(event) => onChange(withHour(event.currentTarget.value, day, form, nowMs))}
            />
          )}
        </Field>
      ) : (
        day !== 'now' && (
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
        )
      )}
    </div>
  );
};
