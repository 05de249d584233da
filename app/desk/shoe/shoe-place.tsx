/** The shoe on the feet: complaints, comfort, arrival, and a page for each zone. */
import type { PlaceProps } from '../desk-state.ts';
import { ArrivalPart } from './arrival-part.tsx';
import { ComfortPart } from './comfort-part.tsx';
import { ComplaintsPart } from './complaints-part.tsx';
import { ZonePage } from './zone-page.tsx';
import './shoe.css';
import './felt-list.css';
import './zone.css';
import './comfort.css';
import './arrival.css';

export const ShoePlace = (props: PlaceProps) => {
  const [part] = props.rest;
  if (part === 'comfort') return <ComfortPart {...props} />;
  if (part === 'arrival') return <ArrivalPart {...props} />;
  if (part === 'zones') return <ZonePage {...props} />;
  return <ComplaintsPart {...props} />;
};
