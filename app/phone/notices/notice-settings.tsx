/** Notices and reminders: on or off, and where this phone cannot do it, why and what would help. */
import { useState } from 'preact/hooks';
import { Button, Notice } from '../../parts/controls/controls.tsx';
import { session, store, useRecords, useStored } from '../../parts/state.ts';
import { noticeWords } from '../../words/index.ts';
import { sayPace } from './say-pace.ts';
import { looksWhileClosed, readReminders, turnReminders } from './reminders.ts';
import {
  noticeState,
  readWish,
  turnNoticesOff,
  turnNoticesOn,
  type NoticeState,
} from './subscription.ts';

const stateText = (state: NoticeState): string => {
  const words = noticeWords().settings;
  return {
    on: words.isOn,
    off: words.isOff,
    blocked: words.blocked,
    'home-screen': words.homeScreen,
    'no-support': words.noSupport,
    'no-hub': words.noHub,
    revoked: words.revoked,
  }[state];
};

const Notices = () => {
  const words = noticeWords().settings;
  const [changes, setChanges] = useState(0);
  const [failed, setFailed] = useState(false);
  const state = useStored(
    async (from) => noticeState(session.value, await readWish(from)),
    ['session'],
    [changes],
  );
  const turn = async (on: boolean) => {
    setFailed(on ? (await turnNoticesOn(store)) === 'failed' : false);
    if (!on) await turnNoticesOff(store);
    setChanges(changes + 1);
  };
  return (
    <section class="sheet">
      <h2>{words.title}</h2>
      {state && <p>{stateText(state)}</p>}
      <p class="soft small">{words.what}</p>
      {failed && (
        <Notice tone="warn" live>
          {words.failed}
        </Notice>
      )}
      {state === 'off' && <Button onClick={() => void turn(true)}>{words.turnOn}</Button>}
      {state === 'on' && <Button onClick={() => void turn(false)}>{words.turnOff}</Button>}
    </section>
  );
};

const Reminders = () => {
  const words = noticeWords().reminders;
  const runs = useRecords('run');
  const [changes, setChanges] = useState(0);
  const on = useStored(async (from) => ({ is: (await readReminders(from)).on }), [], [changes]);
  const looks = useStored(async () => ({ does: await looksWhileClosed() }), [], [changes]);
  const turn = (next: boolean) =>
    void turnReminders(store, next).then(() => setChanges(changes + 1));
  if (!on || !runs) return null;
  const own = runs.filter(({ body }) => body.tester === session.value?.member);
  return (
    <section class="sheet">
      <h2>{words.title}</h2>
      <p>{on.is ? words.isOn(sayPace(own)) : words.isOff(sayPace(own))}</p>
      <p class="soft small">{words.what}</p>
      {looks && <p class="soft small">{looks.does ? words.badge : words.onlyOpen}</p>}
      <Button onClick={() => turn(!on.is)}>{on.is ? words.turnOff : words.turnOn}</Button>
    </section>
  );
};

export const NoticeSettings = () =>
  session.value?.role === 'tester' ? (
    <>
      <Notices />
      <Reminders />
    </>
  ) : null;
