import type { PlaceProps } from '../desk-state.ts';
import { NEW } from '../start/guide.ts';
import { InvitesPage } from './invites-page.tsx';
import { PlanPage } from './plan-page.tsx';
import { SlipsPage } from './slips-page.tsx';
import './plan.css';

export const PlanPlace = ({ rest, ...props }: PlaceProps) =>
  rest[0] === 'slips' ? (
    <SlipsPage {...props} />
  ) : rest[0] === 'invites' ? (
    <InvitesPage {...props} />
  ) : (
    <PlanPage {...props} isMaking={rest[0] === NEW} />
  );
