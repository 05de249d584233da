/** What waits for the lead's decision, runs and readings, and what was decided. */
import { waitingHeadline } from '../../../core/headlines/index.ts';
import { p } from '../../words/index.ts';
import type { PlaceProps } from '../desk-state.ts';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { Waiting } from '../waiting/waiting.tsx';

export const WaitingPlace = (props: PlaceProps) => (
  <>
    <PlaceHead
      headline={p().runs.waitingHeadline(waitingHeadline(props.review))}
      crumbs={[
        { words: p().frame.places.runs, href: linksOf(props.review.project.id).place('runs') },
      ]}
    />
    <Waiting {...props} />
  </>
);
