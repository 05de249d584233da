/** What is only on this phone, why, and both ways to get it to the group. */
import { Button, Notice, Page } from '../parts/controls/controls.tsx';
import { formatDateTime } from '../parts/format.ts';
import { sendOwnLog } from '../parts/send-file.ts';
import { settings } from '../parts/settings.ts';
import { session, store, syncStatus, unsent } from '../parts/state.ts';
import type { DamagedAttachment } from '../store/index.ts';
import { saidOf, t } from '../words/index.ts';

/** The entry that shows a damaged photo or track; a run can be opened from here. */
const ShownBy = ({ sha256, shownBy }: DamagedAttachment) => {
  if (!shownBy) return <>{sha256.slice(0, 8)}</>;
  const said = t().unsent.savedAt(formatDateTime(Number.parseInt(shownBy.stamp.slice(0, 12), 16)));
  return shownBy.kind === 'run' ? <a href={`/runs/${shownBy.id}`}>{said}</a> : <>{said}</>;
};

export const UnsentScreen = () => {
  const words = t();
  const now = unsent.value;
  const status = syncStatus.value;
  const hub = session.value?.hub;
  return (
    <Page title={words.unsent.title} back={{ href: '/', label: words.back }}>
      {now && (
        <section class="sheet">
          {now.revisions === 0 && now.attachments === 0 ? (
            now.damaged.length === 0 && <p>{hub ? words.unsent.none : words.unsent.noHub}</p>
          ) : (
            <>
              {now.revisions > 0 && <p>{words.unsent.some(now.revisions)}</p>}
              {now.attachments > 0 && <p>{words.unsent.photos(now.attachments)}</p>}
              {now.attachments > 0 && settings.value.photos === 'unmetered' && (
                <p class="soft">{words.unsent.photosHeld}</p>
              )}
              {now.oldestMs !== null && (
                <p class="soft">{words.unsent.since(formatDateTime(now.oldestMs))}</p>
              )}
            </>
          )}
          {hub && (
            <>
              <p class="soft" role="status">
                {words.unsent.states[status.state]}
              </p>
              <Button kind="main" onClick={() => void store.sync({ attachmentsNow: true })}>
                {words.unsent.syncNow}
              </Button>
            </>
          )}
        </section>
      )}
      <section class="stack">
        <p class="soft">{words.unsent.asFileHint}</p>
        <Button onClick={() => void sendOwnLog(store, 'mine')}>{words.unsent.asFile}</Button>
      </section>
      {now && now.damaged.length > 0 && (
        <Notice tone="warn">
          <h2>{words.unsent.damagedTitle(now.damaged.length)}</h2>
          <p>{words.unsent.damagedHint}</p>
          <ul>
            {now.damaged.map((one) => (
              <li key={one.sha256}>
                <ShownBy {...one} />
                <Button kind="quiet" onClick={() => void store.giveUpDamaged(one.sha256)}>
                  {words.unsent.giveUp}
                </Button>
              </li>
            ))}
          </ul>
        </Notice>
      )}
      {now && now.refused.length > 0 && (
        <Notice tone="warn">
          <h2>{words.unsent.refusedTitle}</h2>
          <p>{words.unsent.refusedHint}</p>
          <ul>
            {now.refused.map(({ hash, revision, why, field }) => (
              <li key={hash}>
                {saidOf(revision.kind, `${words.unsent.refused[why]}${field ? ` (${field})` : ''}`)}
              </li>
            ))}
          </ul>
        </Notice>
      )}
    </Page>
  );
};
