import { p } from '../../words/index.ts';
import { Pairs } from '../pairs.tsx';
import { PlaceHead } from '../frame/place.tsx';
import type { PlaceProps } from '../desk-state.ts';

export const PairsPlace = (props: PlaceProps) => (
  <>
    <PlaceHead headline={p().frame.places.pairs} />
    <Pairs {...props} />
  </>
);
