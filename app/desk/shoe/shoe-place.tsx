import { p } from '../../words/index.ts';
import { Comfort } from '../comfort.tsx';
import { Complaints } from '../complaints/complaints.tsx';
import { PlaceHead } from '../frame/place.tsx';
import type { PlaceProps } from '../desk-state.ts';

export const ShoePlace = (props: PlaceProps) => (
  <>
    <PlaceHead headline={p().frame.places.shoe} />
    <Complaints {...props} />
    <Comfort {...props} />
  </>
);
