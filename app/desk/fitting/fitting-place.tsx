/** Fit trials: the sessions of a shoe, and a page for each; what they want moved goes into a finding. */
import type { PlaceProps } from '../desk-state.ts';
import { AskPage } from './ask-page.tsx';
import { FittingHome } from './fitting-home.tsx';
import { SessionPage } from './session-page.tsx';
import './fitting.css';

export const FittingPlace = (props: PlaceProps) => {
  const [session, what, key] = props.rest;
  if (session === undefined) return <FittingHome {...props} />;
  if (what === 'ask' && key !== undefined)
    return <AskPage {...props} session={session} moved={key} />;
  return <SessionPage {...props} session={session} />;
};
