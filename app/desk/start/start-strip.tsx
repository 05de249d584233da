/** The slim line over a place while a shoe has no run: which step this is, what is done, and one link on. */
import type { RecordId } from '../../../core/records/index.ts';
import {
  isReady,
  nextStep,
  startSteps,
  type Start,
  type StartStep,
} from '../../../core/review/index.ts';
import { clauses, p } from '../../words/index.ts';
import type { Place } from '../frame/route.ts';
import { addressOfStep, NEW, stepAt } from './guide.ts';
import './start.css';

/** A shoe that is not saved yet: its brief comes first. */
export const nothingDone: Start = {
  done: { brief: false, round: false, pairs: false, testers: false, plan: false, invites: false },
  counts: { rounds: 0, pairs: 0, testers: 0, handOuts: 0, unheard: 0 },
  drawn: false,
};

/** What the button of a step does now. */
export const actOf = (step: StartStep, start: Start): string =>
  step === 'plan' && start.drawn ? p().start.agree : p().start.steps[step].act;

/** How a step stands, in words: what came of it, or what is missing; null where there is nothing to say. */
export const standOf = (step: StartStep, start: Start): string | null => {
  const words = p().start;
  if (start.done[step]) return words.done[step](start.counts);
  if (step === 'plan' && start.drawn) return words.drawn;
  return step === 'invites' && start.done.plan ? words.unheard(start.counts.unheard) : null;
};

/** The six steps in a row: those that are done are ticked, the one that the place belongs to is marked. */
const Row = ({ start, here }: { readonly start: Start; readonly here: StartStep | null }) => {
  const words = p().start;
  return (
    <ol class="start-row">
      {startSteps.map((step, at) => (
        <li
          key={step}
          data-state={start.done[step] ? 'done' : 'open'}
          {...(step === here && { 'aria-current': 'step' as const })}
        >
          <span class="start-number" aria-hidden="true">
            {start.done[step] ? '✓' : at + 1}
          </span>
          <span class="start-name">{words.steps[step].name}</span>
          {start.done[step] && <span class="hidden-words">{clauses('', words.isDone)}</span>}
        </li>
      ))}
    </ol>
  );
};

/** What stands at the end of the line: the link on, or, where the next step is being done, what comes after it. */
const Onward = (props: {
  readonly start: Start;
  readonly here: StartStep | null;
  /** The form of the next step is open below. */
  readonly isBeingDone: boolean;
  readonly project: RecordId | null;
}) => {
  const { start, here, isBeingDone, project } = props;
  const words = p().start;
  const next = nextStep(start);
  if (next === null) {
    if (project === null) return null;
    return (
      <span class="start-onward">
        {words.allDone}{' '}
        {here !== 'invites' && (
          <a href={addressOfStep(project, 'invites', start)}>{words.seeJoined}</a>
        )}
      </span>
    );
  }
  if (isBeingDone || project === null) {
    const after = nextStep(start, next);
    return (
      <span class="start-onward soft">
        {after === null ? words.thenRun : words.then(words.steps[after].name)}
      </span>
    );
  }
  const isStuck = here !== null && !start.done[here] && !isReady(start, here);
  return (
    <span class="start-onward">
      {here === null ? words.nothingLogged : standOf(here, start)}{' '}
      <span class="soft">{isStuck ? words.first : words.next}</span>{' '}
      <a href={addressOfStep(project, next, start)}>{actOf(next, start)}</a>
    </span>
  );
};

/** Whether the place is where the step is done, and not beside it. */
const isAtForm = (here: StartStep, { drawn }: Start, [first]: readonly string[]): boolean =>
  here === 'invites' || first === NEW || (here === 'plan' && drawn && first === undefined);

export const StartStrip = (props: {
  readonly start: Start;
  readonly project: RecordId | null;
  readonly place: Place;
  readonly rest: readonly string[];
}) => {
  const { start, project, place, rest } = props;
  const words = p().start;
  const here = stepAt(place, rest);
  const isNext = here !== null && here === nextStep(start);
  return (
    <section class="start-strip no-print" aria-label={words.guide}>
      <Row start={start} here={here} />
      <Onward
        start={start}
        here={here}
        project={project}
        isBeingDone={isNext && isAtForm(here, start, rest)}
      />
    </section>
  );
};
