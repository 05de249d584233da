import { p } from '../../words/index.ts';
import { Overview } from '../overview.tsx';
import { PlaceHead } from '../frame/place.tsx';
import type { PlaceProps } from '../desk-state.ts';

export const SheetPlace = (props: PlaceProps) => (
  <>
    <PlaceHead headline={p().frame.places.sheet} />
    <Overview {...props} />
  </>
);
