/** One limit of the brief as it is typed, and the question about one that makes no sense. */
import { measures, unitsOf } from '../../../core/records/index.ts';
import type { LimitDoubt } from '../../drafts/limit-doubts.ts';
import type { LimitDraft } from '../../drafts/project.ts';
import { Button, Notice } from '../../parts/controls/controls.tsx';
import { formatNumber } from '../../parts/format.ts';
import { clauses, d, t, terms } from '../../words/index.ts';
import { SelectField, TextField } from '../parts/form-parts.tsx';

/** A dimension of the blueprint does not wear. */
const wearing = measures.filter((measure) => measure !== 'dimension');

const options = <T extends string>(names: Readonly<Record<T, string>>) =>
  (Object.entries(names) as [T, string][]).map(([value, label]) => ({ value, label }));

/** @param unit of the measure */
const doubtInWords = (doubt: LimitDoubt, unit: string): string => {
  const words = d().brief.doubts;
  const write = (value: number) => formatNumber(value, 2);
  switch (doubt.what) {
    case 'share-typed':
      return words['share-typed'](write(doubt.typed), write(doubt.meant));
    case 'above-drawn':
    case 'below-drawn':
      return words[doubt.what](`${write(doubt.typed)} ${unit}`, `${write(doubt.drawn)} ${unit}`);
    case 'above-new':
    case 'below-new':
    case 'never-reached':
      return words[doubt.what](write(doubt.typed));
  }
};

export const LimitRow = (props: {
  readonly limit: LimitDraft;
  /** Place among the limits, from 0. */
  readonly at: number;
  readonly error: string | undefined;
  readonly doubt: LimitDoubt | null;
  readonly onChange: (part: Partial<LimitDraft>) => void;
  readonly onRemove: () => void;
  readonly onSure: () => void;
}) => {
  const { limit, at, error, doubt, onChange, onRemove, onSure } = props;
  const words = d().brief;
  const unit = terms().units[unitsOf[limit.measure][0]];
  return (
    <fieldset class="field-row reading">
      <legend class="hidden-words">{`${words.value} ${at + 1}`}</legend>
      <SelectField
        label={d().bench.reading}
        value={limit.measure}
        options={wearing.map((value) => ({ value, label: terms().measures[value] }))}
        onChange={(measure) => onChange({ measure })}
      />
      <TextField
        label={d().bench.site}
        optional={words.everySite}
        value={limit.site}
        onInput={(site) => onChange({ site })}
      />
      <SelectField
        label={words.limits}
        value={limit.bound}
        options={options(words.bounds)}
        onChange={(bound) => onChange({ bound })}
      />
      <TextField
        label={clauses(words.value, limit.basis === 'share-of-new' ? '%' : unit)}
        value={limit.value}
        onInput={(value) => onChange({ value })}
        error={error}
        numeric
      />
      <SelectField
        label={terms().measures[limit.measure]}
        value={limit.basis}
        options={options(words.bases)}
        onChange={(basis) => onChange({ basis })}
      />
      {doubt && (
        <div class="limit-ask" role="group" tabIndex={-1} data-ask>
          <Notice tone="warn" live>
            <div class="row">
              <span>{doubtInWords(doubt, unit)}</span>
              <Button onClick={onSure}>{d().waiting.isRight}</Button>
            </div>
          </Notice>
        </div>
      )}
      <Button kind="quiet" onClick={onRemove}>
        {t().remove}
      </Button>
    </fieldset>
  );
};
