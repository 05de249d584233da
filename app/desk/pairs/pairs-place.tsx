/** Pairs: the list, and behind it a page for each pair and for each report of damage. */
import type { RecordId } from '../../../core/records/index.ts';
import type { PlaceProps } from '../desk-state.ts';
import { NEW } from '../start/guide.ts';
import { DamagePage } from './damage-page.tsx';
import { PairList } from './pair-list.tsx';
import { PairPage } from './pair-page.tsx';
import '../people/people.css';
import '../people/lanes.css';
import './pairs.css';

export const PairsPlace = ({ rest, ...tab }: PlaceProps) => {
  const [first, second] = rest;
  if (first === undefined || first === NEW) return <PairList {...tab} isAdding={first === NEW} />;
  return first === 'damage' && second !== undefined ? (
    <DamagePage {...tab} damage={second as RecordId} />
  ) : (
    <PairPage {...tab} pair={first as RecordId} />
  );
};
