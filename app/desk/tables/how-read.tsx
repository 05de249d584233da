/** The second step: what the table holds, which column is what, and how it writes days, numbers and units. */
import type { RecordId } from '../../../core/records/index.ts';
import { columnsOf, tableKinds, type Column, type TableKind } from '../../drafts/tables/columns.ts';
import { openQuestions, type Choice } from '../../drafts/tables/table.ts';
import { waysFor, type Way, type Ways } from '../../drafts/tables/ways.ts';
import { Notice } from '../../parts/controls/controls.tsx';
import { Field } from '../../parts/controls/controls.tsx';
import { locale, p } from '../../words/index.ts';
import type { TabProps } from '../desk-state.ts';
import { Select, type Option } from '../parts/options.tsx';

const Choose = (props: {
  readonly label: string;
  readonly value: string;
  readonly options: readonly Option[];
  readonly error?: string | undefined;
  readonly onChange: (value: string) => void;
}) => (
  <Field label={props.label} error={props.error}>
    {(ids) => (
      <Select
        class="input"
        {...ids}
        value={props.value}
        options={props.options}
        onChoose={props.onChange}
      />
    )}
  </Field>
);

/** What can be chosen for a way, besides nothing. */
const optionsOf = (way: Way, review: TabProps['review']): readonly Option[] =>
  way === 'round'
    ? review.rounds.map(({ id, name }) => ({ value: id, label: name }))
    : Object.entries<string>(p().tables.options[way]).map(([value, label]) => ({ value, label }));

const typedWay = (way: Way, value: string): Partial<Ways> =>
  way === 'comfort'
    ? { comfort: value === '10' ? 10 : 100 }
    : way === 'round'
      ? { round: value as RecordId }
      : { [way]: value };

export const KindSelect = (props: {
  readonly kind: TableKind | null;
  readonly onKind: (kind: TableKind) => void;
}) => {
  const words = p().tables;
  return (
    <Choose
      label={words.kind}
      value={props.kind ?? ''}
      options={[
        ...(props.kind === null ? [{ value: '', label: words.choose }] : []),
        ...tableKinds.map((kind) => ({ value: kind, label: words.kinds[kind] })),
      ]}
      onChange={(value) => props.onKind(value as TableKind)}
    />
  );
};

/** A column that another head had before is taken from it: no two heads are the same column. */
const withColumn = (
  columns: Choice['columns'],
  at: number,
  column: Column | null,
): Choice['columns'] =>
  columns.map((one, other) => (other === at ? column : one === column ? null : one));

export const HowRead = (props: {
  readonly head: readonly string[];
  readonly choice: Choice;
  readonly review: TabProps['review'];
  readonly onColumns: (columns: Choice['columns']) => void;
  readonly onWays: (ways: Partial<Ways>) => void;
}) => {
  const { head, choice, review } = props;
  const { kind, columns, ways } = choice;
  const words = p().tables;
  const open = openQuestions(choice);
  const names = new Intl.ListFormat(locale()).format(
    open.columns.map((column) => words.columns[column]),
  );
  return (
    <>
      <div class="table-ways">
        {waysFor(kind, columns).map((way) => (
          <Choose
            key={way}
            label={words.ways[way]}
            value={String(ways[way] ?? '')}
            options={[
              ...(ways[way] === null ? [{ value: '', label: words.choose }] : []),
              ...optionsOf(way, review),
            ]}
            error={open.ways.includes(way) ? words.sayWay : undefined}
            onChange={(value) => props.onWays(typedWay(way, value))}
          />
        ))}
      </div>
      <details class="how-sure" open={open.columns.length > 0}>
        <summary>
          {words.columnsRead(columns.filter((column) => column !== null).length, head.length)}
        </summary>
        <div class="table-ways">
          {head.map((title, at) => (
            <Choose
              key={`${at} ${title}`}
              label={title === '' ? String(at + 1) : title}
              value={columns[at] ?? ''}
              options={[
                { value: '', label: words.notRead },
                ...columnsOf(kind).map((column) => ({
                  value: column,
                  label: words.columns[column],
                })),
              ]}
              onChange={(value) =>
                props.onColumns(withColumn(columns, at, value === '' ? null : (value as Column)))
              }
            />
          ))}
        </div>
      </details>
      {open.columns.length > 0 && (
        <Notice tone="danger" live>
          {words.missingColumns(names)}
        </Notice>
      )}
    </>
  );
};
