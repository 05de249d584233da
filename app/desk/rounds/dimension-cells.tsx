/** The cells of one dimension: what and where, how much, what is allowed, in which unit, on which foot. */
import { useState } from 'preact/hooks';
import type { ComponentChildren } from 'preact';
import { measures, unitsOf, type Foot, type MeasureUnit } from '../../../core/records/index.ts';
import type { DimensionTrouble } from '../../drafts/dimension-reading.ts';
import {
  dimensionColumns,
  siteOf,
  withFoot,
  withMeasure,
  withUnit,
  type DimensionColumn,
} from '../../drafts/dimension-rows.ts';
import type { DimensionDraft } from '../../drafts/round.ts';
import { clauses, d, t, terms } from '../../words/index.ts';
import { Cell, placeOf } from '../parts/cells.tsx';
import { sayRange } from '../parts/in-range.ts';

/** The list of the names of places, one for all rows. */
export const SITES = 'dimension-sites';

const troubleInWords = (trouble: DimensionTrouble): string => {
  const words = d().blueprint.table;
  switch (trouble.why) {
    case 'missing':
      return d().missing;
    case 'site':
      return d().bench.siteHint;
    case 'number':
      return d().wrongNumber;
    case 'below-minus':
      return words.belowMinus;
    case 'unknown':
      return words.unknown(trouble.word);
    case 'range':
      return sayRange(trouble.range);
    case 'twice':
      return words.twice(trouble.first + 1);
  }
};

/** A list to choose from; a word that was pasted and is not in it stands there until something is chosen. */
const ChoiceCell = <T extends string>(props: {
  readonly value: T | '';
  readonly word: string | undefined;
  readonly options: readonly { readonly value: T; readonly label: string }[];
  readonly onChange: (value: T) => void;
  readonly attributes: object;
}) => (
  <select
    class="input"
    {...props.attributes}
    value={props.word === undefined ? props.value : ''}
    onChange={(event) => props.onChange(event.currentTarget.value as T)}
  >
    {(props.value === '' || props.word !== undefined) && (
      <option value="">{props.word ?? d().none}</option>
    )}
    {props.options.map(({ value, label }) => (
      <option key={value} value={value}>
        {label}
      </option>
    ))}
  </select>
);

/** The name of a place; any other word may stand there too. It is understood as it is typed, and shown so once it is left. */
export const SiteInput = (props: {
  readonly site: string;
  readonly sites: Readonly<Record<string, string>>;
  readonly onChange: (site: string) => void;
  readonly attributes: object;
}) => {
  const { site, sites } = props;
  const [typed, setTyped] = useState<string | null>(null);
  return (
    <input
      class="input"
      list={SITES}
      autocomplete="off"
      maxLength={80}
      {...props.attributes}
      value={typed ?? sites[site] ?? site}
      onInput={(event) => {
        setTyped(event.currentTarget.value);
        props.onChange(siteOf(event.currentTarget.value, sites));
      }}
      onBlur={() => setTyped(null)}
    />
  );
};

export const DimensionCells = (props: {
  readonly at: number;
  readonly row: DimensionDraft;
  readonly sites: Readonly<Record<string, string>>;
  readonly wrong: readonly DimensionTrouble[];
  readonly onChange: (row: DimensionDraft) => void;
}) => {
  const words = d().blueprint.table;
  const { at, row, sites, wrong, onChange } = props;
  const { measure } = row;
  const unitName = row.unit === '' ? null : terms().units[row.unit];
  /** @param kind how wide; @param inUnit its label says the unit too */
  const cell = (
    column: DimensionColumn,
    kind: 'figure' | 'wide' | 'short',
    control: (attributes: object) => ComponentChildren,
  ) => {
    const trouble = wrong.find(({ field }) => field === column);
    const title = words.columns[column];
    const inUnit = kind === 'figure' && unitName !== null ? clauses(title, unitName) : title;
    return (
      <Cell
        title={inUnit}
        label={words.cell(inUnit, at + 1)}
        kind={kind}
        error={trouble && troubleInWords(trouble)}
      >
        {(ids) =>
          control({ ...ids, ...placeOf({ row: at, column: dimensionColumns.indexOf(column) }) })
        }
      </Cell>
    );
  };
  const figure = (column: 'nominal' | 'lower' | 'upper' | 'leftRight') =>
    cell(column, 'figure', (attributes) => (
      <input
        class="input"
        inputMode="decimal"
        autocomplete="off"
        maxLength={40}
        {...attributes}
        value={row[column]}
        onInput={(event) => onChange({ ...row, [column]: event.currentTarget.value })}
      />
    ));
  return (
    <>
      {cell('measure', 'wide', (attributes) => (
        <ChoiceCell
          value={measure}
          word={row.notKnown?.measure}
          options={measures.map((value) => ({ value, label: terms().measures[value] }))}
          onChange={(value) => onChange(withMeasure(row, value))}
          attributes={attributes}
        />
      ))}
      {cell('site', 'wide', (attributes) => (
        <SiteInput
          site={row.site}
          sites={sites}
          onChange={(site) => onChange({ ...row, site })}
          attributes={attributes}
        />
      ))}
      {figure('nominal')}
      {figure('lower')}
      {figure('upper')}
      {cell('unit', 'short', (attributes) => (
        <ChoiceCell<MeasureUnit>
          value={row.unit}
          word={row.notKnown?.unit}
          options={(measure === '' ? [] : unitsOf[measure]).map((value) => ({
            value,
            label: terms().units[value],
          }))}
          onChange={(unit) => onChange(withUnit(row, unit))}
          attributes={attributes}
        />
      ))}
      {cell('foot', 'short', (attributes) => (
        <ChoiceCell<Foot | 'both'>
          value={row.foot}
          word={row.notKnown?.foot}
          options={[
            { value: 'both', label: d().blueprint.both },
            { value: 'left', label: t().left },
            { value: 'right', label: t().right },
          ]}
          onChange={(foot) => onChange(withFoot(row, foot))}
          attributes={attributes}
        />
      ))}
      {figure('leftRight')}
    </>
  );
};
