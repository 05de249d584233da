import { p } from '../../words/index.ts';
import { FindingsBoard } from '../findings/findings.tsx';
import { Changes } from './changes.tsx';
import { PlaceHead } from '../frame/place.tsx';
import type { PlaceProps } from '../desk-state.ts';

export const ChangesPlace = (props: PlaceProps) => (
  <>
    <PlaceHead headline={p().frame.places.changes} />
    <Changes {...props} />
    <FindingsBoard {...props} />
  </>
);
