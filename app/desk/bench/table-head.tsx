/** The head of a table: what stands in each column; figures stand to the right. */
export interface HeadColumn {
  readonly title: string;
  readonly right?: true;
}

export const TableHead = ({ columns }: { readonly columns: readonly HeadColumn[] }) => (
  <thead>
    <tr>
      {columns.map(({ title, right }) => (
        <th key={title} scope="col" class={right && 'right'}>
          {title}
        </th>
      ))}
    </tr>
  </thead>
);
