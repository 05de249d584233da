/** The three parts of the place, as a row of links: where one is, and where else one can go. */
import type { RecordId } from '../../../core/records/index.ts';
import { p } from '../../words/index.ts';
import { linksOf } from '../frame/route.ts';

export type ShoePart = 'complaints' | 'comfort' | 'arrival';

export const ShoeParts = (props: { readonly project: RecordId; readonly at: ShoePart }) => {
  const words = p().shoe;
  const { place } = linksOf(props.project);
  return (
    <nav class="shoe-parts no-print" aria-label={words.parts}>
      {(['complaints', 'comfort', 'arrival'] as const).map((part) => (
        <a
          key={part}
          href={part === 'complaints' ? place('shoe') : place('shoe', part)}
          {...(part === props.at && { 'aria-current': 'page' as const })}
        >
          {words.part[part]}
        </a>
      ))}
      <a href={place('words')}>{p().words.title}</a>
    </nav>
  );
};
