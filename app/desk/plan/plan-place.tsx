import type { PlaceProps } from '../desk-state.ts';
import { InvitesPage } from './invites-page.tsx';
import { PlanPage } from './plan-page.tsx';
import { SlipsPage } from './slips-page.tsx';
import './plan.css';

export const PlanPlace = ({ rest, ...props }: PlaceProps) => {
  switch (rest[0]) {
    case 'slips':
      return <SlipsPage {...props} />;
    case 'invites':
      return <InvitesPage {...props} />;
    default:
      return <PlanPage {...props} />;
  }
};
