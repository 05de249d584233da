/** The shoe on the feet: complaints, comfort, arrival, and a page for each zone. */
import type { PlaceProps } from '../desk-state.ts';
import { ArrivalPart } from './arrival-part.tsx';
import { ComfortPart } from './comfort-part.tsx';
import { ComplaintsPart } from './complaints-part.tsx';
import { ZonePage } from './zone-page.tsx';
import './shoe.css';

export const ShoePlace = (props: PlaceProps) => {
  switch (props.rest[0]) {
    case 'comfort':
      return <ComfortPart {...props} />;
    case 'arrival':
      return <ArrivalPart {...props} />;
    case 'zones':
      return <ZonePage {...props} />;
    default:
      return <ComplaintsPart {...props} />;
  }
};
