/** What to do next: a line a thing, each opening the record that it is about; what may hurt somebody first. */
import type { RecordId } from '../../../core/records/index.ts';
import type { NextStep } from '../../../core/review/index.ts';
import { sayChange } from '../../parts/change-speaker.ts';
import { formatDate } from '../../parts/format.ts';
import { comma, locale, p, terms } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { linksOf, type Links, type Place } from '../frame/route.ts';
import { NEW } from '../start/guide.ts';
import { NextChecks } from '../verdict/next-checks.tsx';
import { useUnread } from '../ask/talk-read.ts';

/** Of more things only the first are named; their list has the rest. */
const MOST_NAMED = 6;
const MOST_IN_LINE = 3;

/** Where each step is done when it is not about single records; what adds something opens its form. */
const placeOfStep: Readonly<Record<NextStep['step'], readonly [Place, ...string[]]>> = {
  'ask-about-pain': ['runs'],
  'look-at-damage': ['pairs'],
  'answer-damage': ['changes'],
  'measure-change': ['shoe', 'arrival'],
  'reach-about-stop-use': ['pairs'],
  'decide-what-counts': ['waiting'],
  'add-round': ['rounds', NEW],
  'add-pairs': ['pairs', NEW],
  'add-testers': ['testers', NEW],
  'measure-on-arrival': ['shoe'],
  'hand-out': ['pairs'],
  'set-up-phones': ['plan', 'invites'],
  'ask-all': ['testers'],
  'ask-the-silent': ['ask'],
  'write-findings': ['shoe'],
  'answer-proposals': ['changes'],
  'assign-findings': ['changes'],
  'judge-findings': ['changes'],
  'thank-testers': ['changes'],
  'set-limits': ['brief'],
  'settle-verdict': ['verdict'],
  'ask-testers': ['ask'],
  'ask-about-odd-runs': ['runs'],
};

const dangers: ReadonlySet<NextStep['step']> = new Set([
  'ask-about-pain',
  'look-at-damage',
  'answer-damage',
  'reach-about-stop-use',
]);

interface Subject {
  readonly name: string;
  readonly href: string;
}

const titleOf = (finding: RecordId, { records }: TabProps): string =>
  records.finding.find(({ revision }) => revision.id === finding)?.body.title ?? '';

/** What a step is about, each with the address of its record. */
const subjectsOf = (step: NextStep, props: TabProps, links: Links): readonly Subject[] => {
  const { review } = props;
  const names = namesIn(review, props.records);
  if (step.step === 'ask-about-pain')
    return review.pains
      .filter(({ tester }) => step.testers.includes(tester))
      .map(({ run, tester }) => ({ name: names.tester(tester), href: links.run(run) }));
  if (step.step === 'look-at-damage')
    return review.damages
      .filter(({ pair }) => step.pairs.includes(pair))
      .map(({ id, pair }) => ({ name: names.code(pair), href: links.damage(id) }));
  if (step.step === 'answer-damage')
    return review.damages
      .filter(({ id }) => step.damages.includes(id))
      .map(({ pair }) => ({ name: names.code(pair), href: links.place('changes') }));
  if (step.step === 'ask-about-odd-runs')
    return [...new Map(review.oddities.map((one) => [one.run, one])).values()]
      .filter(({ tester }) => step.testers.includes(tester))
      .map(({ run, tester }) => ({ name: names.tester(tester), href: links.run(run) }));
  if ('findings' in step)
    return step.findings.map((id) => ({ name: titleOf(id, props), href: links.finding(id) }));
  if ('testers' in step)
    return step.testers.map((id: RecordId) => ({ name: names.tester(id), href: links.tester(id) }));
  if ('pairs' in step)
    return step.pairs.map((id: RecordId) => ({ name: names.code(id), href: links.pair(id) }));
  if ('cells' in step)
    return step.cells.map(({ zone, kind }) => ({
      name: p().frame.feltTitle(terms().kinds[kind].name, terms().zones[zone].name),
      href: links.zone('left', zone),
    }));
  return [];
};

/** Whom or what a step names in its line: up to three by name, more by their number. */
const whomOf = (step: NextStep, subjects: readonly Subject[]): string => {
  const words = p().sheet;
  const names = [...new Set(subjects.map(({ name }) => name))];
  const isPairs = 'pairs' in step || step.step === 'answer-damage';
  if (names.length > MOST_IN_LINE)
    return isPairs ? words.pairs(names.length) : words.testers(names.length);
  const list = new Intl.ListFormat(locale(), { type: 'conjunction' }).format(names);
  return isPairs ? words.pairNamed(list) : list;
};

const titleOfStep = (step: NextStep, props: TabProps, subjects: readonly Subject[]): string => {
  const { steps } = p().sheet;
  if (step.step === 'ask-all') return steps['ask-all'](formatDate(step.sinceMs), step.days);
  if (step.step === 'measure-on-arrival')
    return steps['measure-on-arrival'](
      namesIn(props.review, props.records).round(step.round),
      step.count,
    );
  if (step.step === 'measure-change')
    return steps['measure-change'](sayChange(step.change), step.count);
  return steps[step.step](whomOf(step, subjects), step.count);
};

/** A step as a line: its words, where it leads, and what it is about. */
export const stepLine = (step: NextStep, props: TabProps, links: Links) => {
  const subjects = subjectsOf(step, props, links);
  const [only] = subjects;
  return {
    subjects,
    title: titleOfStep(step, props, subjects),
    href:
      step.step === 'measure-on-arrival' || step.step === 'measure-change'
        ? links.place('shoe', 'arrival')
        : subjects.length === 1 && only && step.step !== 'ask-testers'
          ? only.href
          : links.place(...placeOfStep[step.step]),
    danger: dangers.has(step.step),
  };
};

/** Of some steps there are several. */
const keyOf = (step: NextStep): string =>
  step.step === 'measure-change'
    ? `${step.round} ${step.at}`
    : 'round' in step
      ? step.round
      : step.step;

/** A step with what it is about. */
const StepItem = (props: TabProps & { readonly step: NextStep }) => {
  const { step, records, review } = props;
  const words = p().sheet;
  const { subjects, title, href, danger } = stepLine(step, props, linksOf(review.project.id));
  return (
    <li class={danger ? 'todo-danger' : undefined}>
      <a href={href}>{title}</a>
      {step.step === 'settle-verdict' && <NextChecks records={records} review={review} />}
      {subjects.length > 1 && (
        <span>
          {subjects.slice(0, MOST_NAMED).map(({ name, href: to }, at) => (
            <span key={`${name}${to}`}>
              {at > 0 && comma()}
              <a href={to}>{name}</a>
            </span>
          ))}
          {subjects.length > MOST_NAMED && ` ${words.more(subjects.length - MOST_NAMED)}`}
        </span>
      )}
    </li>
  );
};

export const Todo = (props: TabProps & { readonly next: readonly NextStep[] }) => {
  const { next, records, review } = props;
  const words = p().sheet;
  const unread = useUnread(props);
  const [urgent, later] = [true, false].map((isUrgent) =>
    next
      .filter(({ step }) => dangers.has(step) === isUrgent)
      .map((step) => <StepItem key={keyOf(step)} records={records} review={review} step={step} />),
  );
  return (
    <section class="paper todo" aria-label={words.next}>
      <h2>{words.next}</h2>
      {next.length + unread === 0 ? (
        <p>{words.nothingToDo}</p>
      ) : (
        <ol>
          {urgent}
          {unread > 0 && (
            <li>
              <a href={linksOf(review.project.id).place('ask')}>{p().ask.toRead(unread)}</a>
            </li>
          )}
          {later}
        </ol>
      )}
    </section>
  );
};
