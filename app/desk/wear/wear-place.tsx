import { p } from '../../words/index.ts';
import { Bench } from '../bench/bench.tsx';
import { PlaceHead } from '../frame/place.tsx';
import type { PlaceProps } from '../desk-state.ts';

export const WearPlace = (props: PlaceProps) => (
  <>
    <PlaceHead headline={p().frame.places.wear} />
    <Bench {...props} />
  </>
);
