import { p } from '../../words/index.ts';
import { Plan } from './plan.tsx';
import { PlaceHead } from '../frame/place.tsx';
import type { PlaceProps } from '../desk-state.ts';

export const PlanPlace = (props: PlaceProps) => (
  <>
    <PlaceHead headline={p().frame.places.testers} />
    <Plan {...props} />
  </>
);
