/** The readings of a gauge study, by operator, trial and part: typed, or pasted as a block. */
import { gridKey, operatorOf, withBlock, type GaugeDraft } from '../../drafts/gauge.ts';
import { clauses, d, terms } from '../../words/index.ts';
import { Cell, placeOf, useCells } from '../parts/cells.tsx';

const count = (many: number) => Array.from({ length: many }, (_, at) => at);

export const GaugeGrid = (props: {
  readonly draft: GaugeDraft;
  readonly onChange: (draft: GaugeDraft) => void;
  readonly onFail: () => void;
  /** What is wrong with a cell, by its key. */
  readonly cellErrors: ReadonlyMap<string, string>;
  /** Of the name of an operator, by place from 0. */
  readonly nameErrors: ReadonlyMap<number, string>;
}) => {
  const words = d().blueprint;
  const { draft, onChange } = props;
  const { size, names, cells } = draft;
  const paste = async (at: { readonly row: number; readonly part: number }, text: string) => {
    // The reader of tables is fetched with the first block.
    const { blockOf } = await import('../../drafts/cell-block.ts');
    onChange(withBlock(draft, at, blockOf(text)));
  };
  const grid = useCells({
    rows: size.operators * size.trials,
    columns: size.parts + 1,
    onPaste: ({ row, column }, text) => {
      // The first column holds names, which are typed.
      paste({ row, part: Math.max(0, column - 1) }, text).catch(props.onFail);
    },
  });
  const operatorName = (at: number) => operatorOf(draft, at, words);
  return (
    <div class="table-wrap">
      <table class="cells grid" aria-label={words.grid} {...grid.on}>
        <thead>
          <tr>
            <th scope="col">{words.operators}</th>
            <th scope="col">{words.trials}</th>
            {count(size.parts).map((part) => (
              <th scope="col" key={part}>
                {clauses(words.part(part + 1), terms().units[draft.unit])}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {count(size.operators).flatMap((operator) =>
            count(size.trials).map((trial) => {
              const row = operator * size.trials + trial;
              return (
                <tr key={`${operator} ${trial}`}>
                  {trial === 0 ? (
                    <Cell
                      title={words.operators}
                      label={words.operatorName(operator + 1)}
                      error={props.nameErrors.get(operator)}
                    >
                      {(ids) => (
                        <input
                          class="input"
                          autocomplete="off"
                          placeholder={words.operator(operator + 1)}
                          {...ids}
                          {...placeOf({ row, column: 0 })}
                          value={names[operator] ?? ''}
                          onInput={(event) =>
                            onChange({
                              ...draft,
                              names: { ...names, [operator]: event.currentTarget.value },
                            })
                          }
                        />
                      )}
                    </Cell>
                  ) : (
                    <td>
                      <span class="soft">{operatorName(operator)}</span>
                    </td>
                  )}
                  <th scope="row">{words.trial(trial + 1)}</th>
                  {count(size.parts).map((part) => {
                    const key = gridKey(operator, trial, part);
                    return (
                      <Cell
                        key={part}
                        kind="figure"
                        title={words.part(part + 1)}
                        label={words.cell(operatorName(operator), trial + 1, words.part(part + 1))}
                        error={props.cellErrors.get(key)}
                      >
                        {(ids) => (
                          <input
                            class="input"
                            inputMode="decimal"
                            autocomplete="off"
                            {...ids}
                            {...placeOf({ row, column: part + 1 })}
                            value={cells[key] ?? ''}
                            onInput={(event) =>
                              onChange({
                                ...draft,
                                cells: { ...cells, [key]: event.currentTarget.value },
                              })
                            }
                          />
                        )}
                      </Cell>
                    );
                  })}
                </tr>
              );
            }),
          )}
        </tbody>
      </table>
    </div>
  );
};
