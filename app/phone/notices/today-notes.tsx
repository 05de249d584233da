/**
 * What Today says that can wait until the first screen stands: that a run was due; a question that comes once a
 * fortnight; and, once a run is logged and the app is where it stays, the offer of notices and then of reminders.
 */
import { useEffect, useState } from 'preact/hooks';
import type { RecordOf } from '../../../core/records/index.ts';
import { Button, LinkButton, Notice } from '../../parts/controls/controls.tsx';
import { showToast } from '../../parts/controls/toast.tsx';
import { session, store, useRecords, useStored } from '../../parts/state.ts';
import { noticeWords, t } from '../../words/index.ts';
import type { HeldPair } from '../own-mileage.ts';
import { isInstalled, wasDeclined } from '../own/install.ts';
import { rankingDue } from '../ranking-due.ts';
import { followNotices } from './follow.ts';
import {
  changeReminders,
  dayOfRun,
  localTime,
  paceOf,
  readReminders,
  remindNow,
  turnReminders,
} from './reminders.ts';
import { sayPace } from './say-pace.ts';
import { declineNotices, noticeState, readWish, turnNoticesOn } from './subscription.ts';

export { FitToday } from '../fit/fit-today.tsx';
export { LeadsQuestion } from '../talk/leads-question.tsx';

export const RankingQuestion = ({ held }: { readonly held: readonly HeldPair[] }) => {
  const words = t().rank;
  const rankings = useRecords('ranking');
  const [later, setLater] = useState(false);
  const question = rankings && !later ? rankingDue(held, rankings, Date.now()) : null;
  return (
    question && (
      <Notice>
        <p>{words.ask}</p>
        <div class="row">
          <LinkButton href={`/rank/${question.project}`}>{words.answer}</LinkButton>
          <Button kind="quiet" onClick={() => setLater(true)}>
            {words.later}
          </Button>
        </div>
      </Notice>
    )
  );
};

const DueNotice = () => {
  const words = noticeWords().due;
  const tester = session.value?.member;
  const reminder = useStored(
    (from) => (tester ? remindNow(from, tester, Date.now()) : Promise.resolve(null)),
    ['run', 'hand-out', 'stop-use', 'reply', 'damage-report'],
  );
  const [closed, setClosed] = useState(false);
  if (!reminder || closed) return null;
  const { reminded } = reminder;
  const close = async () => {
    await changeReminders(store, { reminded: { ...reminded, closed: true } });
    setClosed(true);
  };
  return (
    <Notice>
      <p>
        <strong>{words.title(localTime(Date.now()).day - reminded.since)}</strong>
      </p>
      <p>{words.ask}</p>
      <div class="row">
        <Button kind="quiet" onClick={() => void close()}>
          {words.close}
        </Button>
      </div>
    </Notice>
  );
};

/**
 * That a run was due, where the tester wants to hear it.
 * @param saidAlready Today says already for how many days there was no run
 */
export const RunDue = (props: { readonly saidAlready: boolean }) => {
  // What is on the icon, and on the phone's list of notices, goes when it is read.
  useEffect(() => followNotices(store), []);
  return props.saidAlready ? null : <DueNotice />;
};

const Offer = (props: {
  readonly title: string;
  readonly children: preact.ComponentChildren;
  readonly error?: string | null;
  readonly yes: string;
  readonly no: string;
  readonly onYes: () => void;
  readonly onNo: () => void;
}) => (
  <Notice>
    <h2>{props.title}</h2>
    {props.children}
    {props.error && (
      <p class="field-error" role="alert">
        {props.error}
      </p>
    )}
    <div class="row">
      <Button onClick={props.onYes}>{props.yes}</Button>
      <Button kind="quiet" onClick={props.onNo}>
        {props.no}
      </Button>
    </div>
  </Notice>
);

const NoticesOffer = ({ answered }: { readonly answered: () => void }) => {
  const words = noticeWords();
  const [error, setError] = useState<string | null>(null);
  const turnOn = async () => {
    const outcome = await turnNoticesOn(store);
    if (outcome !== 'on')
      return setError(outcome === 'blocked' ? words.settings.blocked : words.settings.failed);
    showToast({ text: words.ask.isOn });
    answered();
  };
  return (
    <Offer
      title={words.ask.title}
      error={error}
      yes={words.ask.turnOn}
      no={words.ask.later}
      onYes={() => void turnOn()}
      onNo={() => void declineNotices(store).then(answered)}
    >
      <p>{words.ask.why}</p>
    </Offer>
  );
};

const RemindersOffer = (props: {
  readonly runs: readonly RecordOf<'run'>[];
  readonly answered: () => void;
}) => {
  const words = noticeWords().askReminders;
  const answer = async (on: boolean) => {
    await turnReminders(store, on);
    if (on) showToast({ text: words.isOn });
    props.answered();
  };
  return (
    <Offer
      title={words.title}
      yes={words.turnOn}
      no={words.no}
      onYes={() => void answer(true)}
      onNo={() => void answer(false)}
    >
      <p>{words.why(sayPace(props.runs))}</p>
    </Offer>
  );
};

/** What this device offers next; each is offered until it was answered, one at a time. */
const nextOffer = async (runs: readonly RecordOf<'run'>[]) => {
  const now = session.value;
  if (now?.role !== 'tester' || runs.length === 0) return 'nothing';
  // The home screen comes first: on some phones notices need it.
  if (!isInstalled() && !(await wasDeclined())) return 'nothing';
  const wish = await readWish(store);
  if (!wish.asked && noticeState(now, wish) === 'off') return 'notices';
  const { asked } = await readReminders(store);
  return !asked && paceOf(runs.map(dayOfRun)) !== null ? 'reminders' : 'nothing';
};

export const Offers = ({ runs }: { readonly runs: readonly RecordOf<'run'>[] }) => {
  const [answers, setAnswers] = useState(0);
  const answered = () => setAnswers(answers + 1);
  const own = runs.filter(({ body }) => body.tester === session.value?.member);
  const offer = useStored(() => nextOffer(own), ['session'], [answers, own.length]);
  if (offer === 'notices') return <NoticesOffer answered={answered} />;
  if (offer === 'reminders') return <RemindersOffer runs={own} answered={answered} />;
  return null;
};
