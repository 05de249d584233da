/** A photo was shared into the app: which run does it belong to, or does it show damage? */
import { useState } from 'preact/hooks';
import { useLocation } from 'preact-iso';
import { editBody, type RecordOf, type Sha256 } from '../../../core/records/index.ts';
import { Button, Notice } from '../../parts/controls/controls.tsx';
import { showToast } from '../../parts/controls/toast.tsx';
import { formatStart, formatDistance } from '../../parts/format.ts';
import { shrinkPhoto } from '../../parts/photos/shrink-photo.ts';
import { session, store, useStored } from '../../parts/state.ts';
import { ownWords, t } from '../../words/index.ts';
import { heldPairs } from '../own-mileage.ts';
import { holdSharedPhoto } from './shared-photo.ts';

/** So many of the latest runs are offered: a photo is sent soon after the run. */
const MOST_RUNS = 3;

export const PhotoToEntry = ({ file }: { readonly file: File }) => {
  const words = ownWords().shared;
  const { route } = useLocation();
  const [trouble, setTrouble] = useState<string | null>(null);
  const member = session.value?.member;
  const found = useStored(
    async (from) => {
      const [pairs, handOuts, runs] = await Promise.all([
        from.list('pair'),
        from.list('hand-out'),
        from.list('run'),
      ]);
      const held = member ? heldPairs(member, pairs, handOuts, runs, Date.now()) : [];
      const latest = held
        .flatMap(({ ownRuns, pair }) => ownRuns.map((run) => ({ run, code: pair.body.code })))
        .sort((a, b) => Date.parse(b.run.body.startedAt) - Date.parse(a.run.body.startedAt));
      return { held, latest: latest.slice(0, MOST_RUNS) };
    },
    ['pair', 'hand-out', 'run'],
    [member],
  );

  /** The photo in the device's store; null: it could not be, and the person was told why. */
  const keep = async (): Promise<Sha256 | null> => {
    const photo = await shrinkPhoto(file);
    const kept = photo && (await store.putAttachment(photo.bytes, photo.mediaType));
    if (kept?.ok) return kept.value;
    setTrouble(
      !kept
        ? t().photo.unreadable(file.name)
        : kept.why === 'storage-full'
          ? t().photo.full
          : t().log.lost,
    );
    return null;
  };
  const toRun = async ({ body, revision }: RecordOf<'run'>) => {
    const photo = await keep();
    if (!photo) return;
    // The tester saves it anew, so a lead's marks go.
    const { correctedBy: _, broughtIn: __, ...own } = body;
    const photos = [...new Set([...(body.photos ?? []), photo])];
    const saved = await store.save('run', editBody<'run'>(own, { photos }), revision.id);
    if (!saved.ok) return setTrouble(t().log.lost);
    showToast({ text: words.photoAdded });
    route(`/run/${revision.id}`, true);
  };
  const toDamage = async (pair: string) => {
    const photo = await keep();
    if (!photo) return;
    holdSharedPhoto(photo);
    route(`/damage/${pair}`, true);
  };

  if (found === null) return <p class="soft">{t().loading}</p>;
  return (
    <section class="stack" aria-live="polite">
      <h2>{words.photoTitle}</h2>
      {found.held.length === 0 && <p>{words.photoNone}</p>}
      {found.latest.map(({ run, code }) => (
        <Button key={run.revision.id} onClick={() => void toRun(run)}>
          {words.photoRun(formatDistance(run.body.distanceM), code, formatStart(run.body))}
        </Button>
      ))}
      {found.held.map(({ pair }) => (
        <Button key={pair.revision.id} onClick={() => void toDamage(pair.revision.id)}>
          {words.photoDamage(pair.body.code)}
        </Button>
      ))}
      {trouble && (
        <Notice tone="danger" live>
          {trouble}
        </Notice>
      )}
    </section>
  );
};
