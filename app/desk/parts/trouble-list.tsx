/** What is wrong with a table that was pasted or read from a file: a line for each, a part of them at a time. */
import { Notice } from '../../parts/controls/controls.tsx';
import { Some } from './some.tsx';

export const TroubleList = ({ of }: { readonly of: readonly string[] }) =>
  of.length === 0 ? null : (
    <Notice tone="danger" live>
      <ul>
        <Some of={of} step={20}>
          {(said) => <li key={said}>{said}</li>}
        </Some>
      </ul>
    </Notice>
  );
