import { p } from '../../words/index.ts';
import { PlaceHead } from '../frame/place.tsx';
import { Waiting } from '../waiting/waiting.tsx';
import type { PlaceProps } from '../desk-state.ts';

export const WaitingPlace = (props: PlaceProps) => (
  <>
    <PlaceHead headline={p().frame.places.runs} />
    <Waiting {...props} />
  </>
);
