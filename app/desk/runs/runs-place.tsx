import { p } from '../../words/index.ts';
import { ToAsk } from '../to-ask.tsx';
import { PlaceHead } from '../frame/place.tsx';
import type { PlaceProps } from '../desk-state.ts';

export const RunsPlace = (props: PlaceProps) => (
  <>
    <PlaceHead headline={p().frame.places.runs} />
    <ToAsk {...props} />
  </>
);
