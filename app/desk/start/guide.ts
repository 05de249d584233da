/** From one step of a shoe's start to the next: where each is done, and who moves on once it is. */
import { createContext } from 'preact';
import { useLocation } from 'preact-iso';
import { useContext } from 'preact/hooks';
import type { RecordId } from '../../../core/records/index.ts';
import { nextStep, type Start, type StartStep } from '../../../core/review/index.ts';
import { addressOf, type Place } from '../frame/route.ts';

/** What follows a place in its address where its form for something new is open. */
export const NEW = 'new';

interface Guide {
  readonly project: RecordId;
  /** Null: the first run is logged. */
  readonly start: Start | null;
}

/** The shoe whose places are shown, and how far it has come; null outside of every shoe. */
export const GuideContext = createContext<Guide | null>(null);

const placeOfStep: Readonly<Record<StartStep, readonly [Place, ...string[]]>> = {
  brief: ['brief'],
  round: ['rounds'],
  pairs: ['pairs'],
  testers: ['testers'],
  plan: ['plan'],
  invites: ['plan', 'invites'],
};

/** Where a step is done: with its form open, or, once it is done, at what came of it. */
export const addressOfStep = (
  project: RecordId,
  step: StartStep,
  { done, drawn }: Pick<Start, 'done' | 'drawn'>,
): string => {
  const isOpen = !done[step] && step !== 'invites' && !(step === 'plan' && drawn);
  return addressOf(project, ...placeOfStep[step], ...(isOpen ? [NEW] : []));
};

/** The step that a place belongs to; null: none. */
export const stepAt = (place: Place, rest: readonly string[]): StartStep | null =>
  place === 'plan' && rest[0] === 'invites'
    ? 'invites'
    : ((Object.keys(placeOfStep) as StartStep[]).find((step) => placeOfStep[step][0] === place) ??
      null);

/**
 * Goes where the next step is done, once this one is for the first time.
 * @returns a function to call after saving; it answers whether it went
 */
export const useMoveOn = (step: StartStep): (() => boolean) => {
  const guide = useContext(GuideContext);
  const { route } = useLocation();
  return () => {
    if (!guide?.start || guide.start.done[step]) return false;
    const next = nextStep(guide.start, step);
    if (next === null) return false;
    route(addressOfStep(guide.project, next, guide.start));
    return true;
  };
};
