/** The table of a round's checks: what is measured down, the pairs across. */
import { useState } from 'preact/hooks';
import {
  cellKey,
  withPasted,
  type GridPair,
  type GridRow,
  type WrongCell,
} from '../../drafts/check-grid.ts';
import { Notice } from '../../parts/controls/controls.tsx';
import { clauses, d, p, t, terms } from '../../words/index.ts';
import { placeName } from '../../words/say-place.ts';
import type { TabProps } from '../desk-state.ts';
import { Cell, placeOf, useCells } from '../parts/cells.tsx';
import { sayRange } from '../parts/in-range.ts';
import { speakerOf } from '../parts/speaker.ts';

export const CheckGrid = (
  props: TabProps & {
    readonly name: string;
    readonly rows: readonly GridRow[];
    readonly pairs: readonly (GridPair & { readonly code: string })[];
    readonly values: Readonly<Record<string, string>>;
    readonly wrong: readonly WrongCell[];
    readonly tried: boolean;
    readonly onChange: (values: Readonly<Record<string, string>>) => void;
  },
) => {
  const { name, rows, pairs, values, wrong, tried, onChange } = props;
  const words = p().wear.checkTable;
  const speaker = speakerOf(props);
  const [said, setSaid] = useState('');
  const [failed, setFailed] = useState(false);
  const cells = useCells({
    rows: rows.length,
    columns: pairs.length,
    onPaste: (at, text) => {
      setFailed(false);
      // The reader of tables is fetched with the first block.
      import('../../drafts/cell-block.ts')
        .then(({ blockOf }) => {
          const pasted = withPasted(values, at, blockOf(text), rows, pairs);
          setSaid(pasted.beyond > 0 ? words.beyond(pasted.beyond) : d().blueprint.table.pasted);
          onChange(pasted.values);
        })
        .catch(() => setFailed(true));
    },
  });
  /** A figure that cannot be is told once its cell is left. */
  const errorAt = (row: number, column: number): string | undefined => {
    const one = wrong.find((cell) => cell.row === row && cell.column === column);
    const isActive = cells.active?.row === row && cells.active.column === column;
    if (!one || (isActive && !tried)) return undefined;
    return one.value === null ? d().wrongNumber : sayRange(one.range);
  };
  const of = (row: GridRow) => clauses(placeName(row, speaker), t()[row.foot]);
  return (
    <>
      <div class="table-wrap">
        <table class="cells grid check-grid" aria-label={name} {...cells.on}>
          <thead>
            <tr>
              <th scope="col">{words.place}</th>
              <th scope="col">{words.foot}</th>
              {pairs.map(({ id, code }) => (
                <th scope="col" key={id}>
                  {code}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map((row, at) => {
              const isFirst =
                rows[at - 1]?.measure !== row.measure || rows[at - 1]?.site !== row.site;
              return (
                <tr key={[row.measure, row.site, row.foot, row.unit].join(' ')}>
                  <th scope="row">
                    <span class={isFirst ? '' : 'hidden-words'}>
                      {clauses(placeName(row, speaker), terms().units[row.unit])}
                    </span>
                  </th>
                  <td>{t()[row.foot]}</td>
                  {pairs.map((pair, column) => {
                    const key = cellKey(pair.id, row);
                    return (
                      <Cell
                        key={pair.id}
                        kind="figure"
                        title={pair.code}
                        label={words.cell(of(row), pair.code)}
                        error={errorAt(at, column)}
                      >
                        {(ids) => (
                          <input
                            class="input"
                            inputMode="decimal"
                            autocomplete="off"
                            maxLength={20}
                            {...ids}
                            {...placeOf({ row: at, column })}
                            value={values[key] ?? ''}
                            onInput={(event) =>
                              onChange({ ...values, [key]: event.currentTarget.value })
                            }
                          />
                        )}
                      </Cell>
                    );
                  })}
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
      <p class="soft small" role="status">
        {said}
      </p>
      {failed && (
        <Notice tone="danger" live>
          {d().trouble}
        </Notice>
      )}
    </>
  );
};
