import { p } from '../../words/index.ts';
import { Testers } from '../testers.tsx';
import { PlaceHead } from '../frame/place.tsx';
import type { PlaceProps } from '../desk-state.ts';

export const TestersPlace = (props: PlaceProps) => (
  <>
    <PlaceHead headline={p().frame.places.testers} />
    <Testers {...props} />
  </>
);
