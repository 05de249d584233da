/** The six steps to the first run as cards: each with its question, what it leaves behind, and which one is next. */
import type { RecordId } from '../../../core/records/index.ts';
import { nextStep, startSteps, type Start, type StartStep } from '../../../core/review/index.ts';
import { LinkButton } from '../../parts/controls/controls.tsx';
import { clauses, p } from '../../words/index.ts';
import { newShoe } from '../frame/route.ts';
import type { DeskRecords } from '../worker/desk-work.ts';
import { addressOfStep } from './guide.ts';
import { StepPicture } from './start-pictures.tsx';
import { actOf, standOf } from './start-strip.tsx';
import './start.css';

const Card = (props: {
  readonly step: StartStep;
  readonly start: Start;
  readonly project: RecordId | null;
  readonly records: DeskRecords;
}) => {
  const { step, start, project, records } = props;
  const words = p().start;
  const { name, ask, leaves } = words.steps[step];
  const isDone = start.done[step];
  const isNext = nextStep(start) === step;
  const href = project === null ? newShoe() : addressOfStep(project, step, start);
  return (
    <li
      class="start-card"
      data-state={isDone ? 'done' : isNext ? 'next' : 'later'}
      {...(isNext && { 'aria-current': 'step' as const })}
    >
      <h2>
        <span class="start-number" aria-hidden="true">
          {isDone ? '✓' : startSteps.indexOf(step) + 1}
        </span>{' '}
        {isDone ? <a href={href}>{name}</a> : name}
        {isDone && <span class="hidden-words">{clauses('', words.isDone)}</span>}
      </h2>
      <p>{ask}</p>
      <div class="start-picture" aria-hidden="true">
        <StepPicture step={step} project={project} records={records} isDone={isDone} />
      </div>
      <p class="soft small">{standOf(step, start) ?? leaves}</p>
      {isNext && (
        <LinkButton kind="main" href={href}>
          {actOf(step, start)}
        </LinkButton>
      )}
    </li>
  );
};

/** @param props.project null: there is no shoe yet */
export const StartCards = (props: {
  readonly start: Start;
  readonly project: RecordId | null;
  readonly records: DeskRecords;
}) => (
  <ol class="start-cards" aria-label={p().start.guide} data-begun={props.project !== null}>
    {startSteps.map((step) => (
      <Card key={step} {...props} step={step} />
    ))}
  </ol>
);
