/** How this device is spoken to, what it keeps, and taking everything back. */
import { useState } from 'preact/hooks';
import { isToTakeBack } from '../../core/records/index.ts';
import { Button, Choice, Notice, Page } from '../parts/controls/controls.tsx';
import { changeSettings, settings, type Settings } from '../parts/settings.ts';
import { sendOwnLog } from '../parts/send-file.ts';
import { session, store, useStored } from '../parts/state.ts';
import { BACKUP_DAYS_SETTING } from '../store/index.ts';
import { languages, nameOfLanguage, t } from '../words/index.ts';
import { NoticeSettings } from './notices/notice-settings.tsx';
import { turnNoticesOff } from './notices/subscription.ts';
import { OwnDevices } from './own-devices.tsx';

const set = (change: Partial<Settings>) => void changeSettings(store, change);

/** Erases for good everything that this member wrote, what the group noted of them, and what leads wrote to them. */
const takeBackAll = async (): Promise<boolean> => {
  const caller = session.value;
  if (!caller) return false;
  for (const head of await store.heads())
    if (isToTakeBack(caller, head) && !(await store.eraseForGood(head.id)).ok) return false;
  await turnNoticesOff(store).catch((error: unknown) => console.error(error));
  return true;
};

export const SettingsScreen = () => {
  const words = t();
  const { language, distance, temperature, sizes, theme, photos, privateM, trackTimes } =
    settings.value;
  const persisted = useStored(async () => (await navigator.storage?.persisted?.()) ?? false, []);
  const backupDays = useStored(
    async (from) => {
      const days = await from.setting(BACKUP_DAYS_SETTING);
      return typeof days === 'number' ? days : null;
    },
    ['session'],
  );
  const [asked, setAsked] = useState<boolean | null>(null);
  const [takenBack, setTakenBack] = useState(false);
  return (
    <Page title={words.settings.title} back={{ href: '/', label: words.back }}>
      <Choice
        label={words.settings.language}
        options={languages.map((value) => ({ value, label: nameOfLanguage(value) }))}
        value={language}
        onChange={(value) => set({ language: value })}
      />
      <Choice
        label={words.settings.distance}
        options={[
          { value: 'km', label: words.settings.km },
          { value: 'mi', label: words.settings.mi },
        ]}
        value={distance}
        onChange={(value) => set({ distance: value })}
      />
      <Choice
        label={words.settings.temperature}
        options={[
          { value: 'C', label: '°C' },
          { value: 'F', label: '°F' },
        ]}
        value={temperature}
        onChange={(value) => set({ temperature: value })}
      />
      <Choice
        label={words.settings.sizes}
        options={[
          { value: 'eu', label: 'EU' },
          { value: 'uk', label: 'UK' },
          { value: 'us', label: words.settings.usMen },
          { value: 'us-women', label: words.settings.usWomen },
          { value: 'mondopoint', label: words.settings.mondopoint },
        ]}
        value={sizes}
        onChange={(value) => set({ sizes: value })}
      />
      <Choice
        label={words.settings.theme}
        options={(['system', 'light', 'dark'] as const).map((value) => ({
          value,
          label: words.settings.themes[value],
        }))}
        value={theme}
        onChange={(value) => set({ theme: value })}
      />
      <div class="field">
        <Choice
          label={words.settings.photos}
          options={(['any', 'unmetered'] as const).map((value) => ({
            value,
            label: words.settings.photosOver[value],
          }))}
          value={photos}
          onChange={(value) => set({ photos: value })}
        />
        <p class="soft small">{words.settings.photosHint}</p>
      </div>
      <div class="field">
        <Choice
          label={words.settings.privateEnds}
          options={['300', '500', '1000', '2000'].map((value) => ({ value, label: `${value} m` }))}
          value={String(privateM)}
          onChange={(value) => set({ privateM: Number(value) })}
        />
        <p class="soft small">{words.settings.privateEndsHint}</p>
      </div>
      <Choice
        label={words.settings.trackTimes}
        options={(['exact', 'minutes'] as const).map((value) => ({
          value,
          label: words.settings.trackTimesKept[value],
        }))}
        value={trackTimes}
        onChange={(value) => set({ trackTimes: value })}
      />
      <NoticeSettings />
      <section class="sheet">
        <h2>{words.settings.storage}</h2>
        <p>{(asked ?? persisted) ? words.settings.persisted : words.settings.notPersisted}</p>
        {!(asked ?? persisted) && (
          <Button
            onClick={() => void navigator.storage?.persist?.().then((granted) => setAsked(granted))}
          >
            {words.settings.askPersist}
          </Button>
        )}
        <h3>{words.settings.install}</h3>
        <p class="soft">{words.settings.installHint}</p>
        <a class="button" href="/install">
          {words.settings.installHow}
        </a>
      </section>
      <a class="button" href="/unsent">
        {words.settings.unsent}
      </a>
      <a class="button" href="/file">
        {words.settings.file}
      </a>
      {session.value && (
        <section class="sheet">
          <h2>{words.settings.you}</h2>
          <p>{words.settings.member(session.value.groupName)}</p>
          {session.value.hub && <OwnDevices />}
          <h3>{words.settings.exportMine}</h3>
          <Button onClick={() => void sendOwnLog(store, 'about-me')}>
            {words.settings.exportMine}
          </Button>
          <h3>{words.settings.takeBackAll}</h3>
          <p class="soft">{words.settings.takeBackAllHint}</p>
          {takenBack && (
            <Notice live>
              {words.settings.takenBack}{' '}
              {backupDays === null
                ? words.settings.backupsUnknown
                : words.settings.backupsHold(backupDays)}
            </Notice>
          )}
          <Button
            kind="danger"
            onClick={() => {
              if (window.confirm(words.settings.takeBackAllAsk))
                void takeBackAll().then(setTakenBack);
            }}
          >
            {words.settings.takeBackAll}
          </Button>
        </section>
      )}
    </Page>
  );
};
