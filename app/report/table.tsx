/** A table of sentences: every cell said in each language, a cell that is the same said once. */
import { joined, Say, type Languages, type Spoken } from './spoken.tsx';

type Cell = (spoken: Spoken) => string;

export const Table = (props: {
  readonly languages: Languages;
  /** What the table is, for a screen reader. */
  readonly title: Cell;
  readonly columns: readonly Cell[];
  /** The first cell of each heads its row. */
  readonly rows: readonly (readonly Cell[])[];
}) => {
  const { languages, title, columns, rows } = props;
  return (
    <div class="table-wrap" tabIndex={0} role="region" aria-label={joined(languages, title)}>
      <table>
        <thead>
          <tr>
            {columns.map((column, at) => (
              <th scope="col" key={at}>
                <Say in={languages} of={column} />
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((cells, row) => (
            <tr key={row}>
              {cells.map((cell, at) =>
                at === 0 ? (
                  <th scope="row" key={at}>
                    <Say in={languages} of={cell} />
                  </th>
                ) : (
                  <td key={at}>
                    <Say in={languages} of={cell} />
                  </td>
                ),
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
};
