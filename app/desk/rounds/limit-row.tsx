/** One limit of the brief as it is typed, and the question about one that makes no sense. */
import { useId } from 'preact/hooks';
import { measures, unitsOf } from '../../../core/records/index.ts';
import type { LimitDoubt } from '../../drafts/limit-doubts.ts';
import type { LimitDraft } from '../../drafts/project.ts';
import { Button, Notice } from '../../parts/controls/controls.tsx';
import { formatNumber } from '../../parts/format.ts';
import { sitesFor, withMeasureOfLimit, type KnownSite } from '../../drafts/limit-sites.ts';
import { clauses, d, p, t, terms } from '../../words/index.ts';
import { Select } from '../parts/options.tsx';
import { SiteInput } from './dimension-cells.tsx';

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

/** What the choice of a site holds besides sites, whose words have no space. */
const [EVERY, OTHER] = [' every', ' other'] as const;

/** The sites of the measure by name, all of them at once, or a word of one's own. */
const SiteOfLimit = (props: {
  readonly limit: LimitDraft;
  readonly known: readonly KnownSite[];
  readonly onChange: (part: Partial<LimitDraft>) => void;
  readonly ids: object;
}) => {
  const { limit, known, onChange, ids } = props;
  const words = d().brief;
  const { sites } = d().blueprint;
  const isTyped = limit.isTyped === true;
  const choices = sitesFor(limit.measure, known, isTyped ? '' : limit.site);
  const choose = (value: string) =>
    onChange({
      isTyped: value === OTHER || undefined,
      site: value === EVERY || value === OTHER ? '' : value,
    });
  return (
    <>
      <Select
        class="input"
        aria-label={d().bench.site}
        {...(isTyped ? {} : ids)}
        value={isTyped ? OTHER : limit.site === '' ? EVERY : limit.site}
        options={[
          ...choices.map((value) => ({ value, label: sites[value] ?? value })),
          { value: EVERY, label: p().brief.everySite },
          { value: OTHER, label: words.otherSite },
        ]}
        onChoose={choose}
      />
      {isTyped && (
        <SiteInput
          site={limit.site}
          sites={sites}
          onChange={(site) => onChange({ site })}
          attributes={{ ...ids, 'aria-label': words.siteName, required: true }}
        />
      )}
    </>
  );
};

export interface LimitErrors {
  readonly site?: string;
  readonly value?: string;
}

export const LimitRow = (props: {
  readonly limit: LimitDraft;
  /** Place among the limits, from 0. */
  readonly at: number;
  /** Where the shoe is measured already. */
  readonly known: readonly KnownSite[];
  readonly errors: LimitErrors;
  readonly doubt: LimitDoubt | null;
  readonly onChange: (part: Partial<LimitDraft>) => void;
  readonly onRemove: () => void;
  readonly onSure: () => void;
}) => {
  const { limit, at, known, errors, doubt, onChange, onRemove, onSure } = props;
  const words = d().brief;
  const id = useId();
  const unit = terms().units[unitsOf[limit.measure][0]];
  const wrong = (field: keyof LimitErrors) =>
    errors[field] !== undefined && {
      'aria-describedby': `${id}-${field}`,
      'aria-invalid': true as const,
    };
  return (
    <fieldset class="limit-row">
      <legend class="hidden-words">{`${words.value} ${at + 1}`}</legend>
      <div class="limit-sentence">
        <Select
          class="input"
          aria-label={d().bench.reading}
          value={limit.measure}
          options={wearing.map((value) => ({ value, label: terms().measures[value] }))}
          onChoose={(measure) => onChange(withMeasureOfLimit(limit, measure, known))}
        />
        <SiteOfLimit limit={limit} known={known} onChange={onChange} ids={wrong('site') || {}} />
        <Select
          class="input"
          aria-label={words.bound}
          value={limit.bound}
          options={options(words.bounds)}
          onChoose={(bound) => onChange({ bound })}
        />
        <span class="limit-figure">
          <input
            class="input"
            aria-label={clauses(words.value, limit.basis === 'share-of-new' ? '%' : unit)}
            inputMode="decimal"
            autocomplete="off"
            maxLength={20}
            required
            {...wrong('value')}
            value={limit.value}
            onInput={(event) => onChange({ value: event.currentTarget.value })}
          />
          <Select
            class="input"
            aria-label={words.basis}
            value={limit.basis}
            options={options({ 'share-of-new': words.ofNew, reading: unit })}
            onChoose={(basis) => onChange({ basis })}
          />
        </span>
        <Button kind="quiet" onClick={onRemove}>
          {t().remove}
        </Button>
      </div>
      {(['site', 'value'] as const).map(
        (field) =>
          errors[field] !== undefined && (
            <p key={field} class="field-error" id={`${id}-${field}`}>
              {errors[field]}
            </p>
          ),
      )}
      {doubt && (
        <div role="group" tabIndex={-1} data-ask>
          <Notice tone="warn" live>
            <div class="row">
              <span>{doubtInWords(doubt, unit)}</span>
              <Button onClick={onSure}>{d().waiting.isRight}</Button>
            </div>
          </Notice>
        </div>
      )}
    </fieldset>
  );
};
