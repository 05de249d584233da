/** Dimensions pasted from a spreadsheet: what can be read is added, each mistake is told by its cell. */
import { useState } from 'preact/hooks';
import type { DimensionCell, DimensionTable } from '../../drafts/dimension-table.ts';
import type { DimensionDraft } from '../../drafts/round.ts';
import { Button, Field, Notice } from '../../parts/controls/controls.tsx';
import { d, t, terms } from '../../words/index.ts';
import { sayRange } from '../parts/in-range.ts';
import { Some } from '../parts/some.tsx';

const cellInWords = ({ line, column, why, range }: DimensionCell): string => {
  const words = d().blueprint.pasteDimensions;
  const what = range ? sayRange(range) : words.troubles[why];
  return d().bench.lineTrouble(line, words.columns[column], what);
};

export const PasteDimensions = (props: {
  readonly onAdd: (dimensions: readonly DimensionDraft[]) => void;
}) => {
  const words = d().blueprint.pasteDimensions;
  const [text, setText] = useState('');
  const [table, setTable] = useState<DimensionTable | null>(null);
  const [failed, setFailed] = useState(false);
  const read = async (typed: string) => {
    // The reader of tables is fetched with the first table.
    const { readDimensionTable } = await import('../../drafts/dimension-table.ts');
    const names = {
      measures: terms().measures,
      units: terms().units,
      sites: d().blueprint.sites,
      feet: { both: d().blueprint.both, left: t().left, right: t().right },
    };
    setTable(typed.trim() === '' ? null : readDimensionTable(typed, names));
  };
  const take = (typed: string) => {
    setText(typed);
    setFailed(false);
    read(typed).catch(() => setFailed(true));
  };
  return (
    <>
      <Field label={words.label} hint={words.hint}>
        {(ids) => (
          <textarea
            class="input"
            rows={3}
            {...ids}
            value={text}
            onInput={(event) => take(event.currentTarget.value)}
          />
        )}
      </Field>
      {failed && (
        <Notice tone="danger" live>
          {d().trouble}
        </Notice>
      )}
      {table && table.troubles.length > 0 && (
        <Notice tone="danger" live>
          <ul>
            <Some of={table.troubles} step={20}>
              {(one) => <li key={`${one.line} ${one.column}`}>{cellInWords(one)}</li>}
            </Some>
          </ul>
        </Notice>
      )}
      {table && table.dimensions.length > 0 && (
        <div class="row">
          <Button
            onClick={() => {
              props.onAdd(table.dimensions);
              take('');
            }}
          >
            {words.add(table.dimensions.length)}
          </Button>
        </div>
      )}
    </>
  );
};
