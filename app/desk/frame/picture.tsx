/** A drawing with its words: a title, the same as a list for a screen reader, and as a table that anybody can open. */
import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import { p } from '../../words/index.ts';
import { Some } from '../parts/some.tsx';
import { OnceOpened } from './once-opened.tsx';

export interface PictureTable {
  readonly head: readonly string[];
  readonly rows: readonly (readonly ComponentChildren[])[];
}

const Table = ({ table, says }: { readonly table: PictureTable; readonly says: string }) => (
  <div class="table-wrap" tabIndex={0} role="region" aria-label={says}>
    <table class="place-table">
      <thead>
        <tr>
          {table.head.map((cell) => (
            <th scope="col" key={cell}>
              {cell}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        <Some of={[...table.rows.entries()]} columns={table.head.length}>
          {([row, [first, ...cells]]) => (
            <tr key={row}>
              <th scope="row">{first}</th>
              {cells.map((cell, at) => (
                <td key={at}>{cell}</td>
              ))}
            </tr>
          )}
        </Some>
      </tbody>
    </table>
  </div>
);

export const Picture = (props: {
  readonly title?: ComponentChildren;
  /** What the drawing shows, in one sentence; the table has the rest. */
  readonly says: string;
  /** Asked for once the table is opened: with many points it is long. */
  readonly table?: () => PictureTable;
  readonly children: ComponentChildren;
}) => {
  const id = useId();
  const { title, says, table, children } = props;
  return (
    <figure class="picture" aria-label={says}>
      {title !== undefined && (
        <figcaption class="picture-title" id={id}>
          {title}
        </figcaption>
      )}
      {children}
      {table && (
        <OnceOpened title={p().frame.asTable} class="no-print">
          {() => <Table table={table()} says={says} />}
        </OnceOpened>
      )}
    </figure>
  );
};
