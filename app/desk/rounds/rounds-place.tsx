import { d } from '../../words/index.ts';
import { Rounds } from '../rounds.tsx';
import { PlaceHead } from '../frame/place.tsx';
import type { PlaceProps } from '../desk-state.ts';

export const RoundsPlace = (props: PlaceProps) => (
  <>
    <PlaceHead headline={d().tabs.rounds} />
    <Rounds {...props} />
  </>
);
