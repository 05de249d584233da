/** Testers: the list, and behind it a page for each of them. */
import type { RecordId } from '../../../core/records/index.ts';
import type { PlaceProps } from '../desk-state.ts';
import { NEW } from '../start/guide.ts';
import { TesterList } from './tester-list.tsx';
import { TesterPage } from './tester-page.tsx';
import '../people/people.css';
import '../people/lanes.css';
import './testers.css';

export const TestersPlace = ({ rest: [tester], ...tab }: PlaceProps) =>
  tester === undefined || tester === NEW ? (
    <TesterList {...tab} isAdding={tester === NEW} />
  ) : (
    <TesterPage {...tab} tester={tester as RecordId} />
  );
