import { p } from '../../words/index.ts';
import { Verdict } from '../verdict.tsx';
import { PlaceHead } from '../frame/place.tsx';
import type { PlaceProps } from '../desk-state.ts';

export const VerdictPlace = (props: PlaceProps) => (
  <>
    <PlaceHead headline={p().frame.places.verdict} />
    <Verdict {...props} />
  </>
);
