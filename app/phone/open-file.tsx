/** Take in a file: first what is in it, then, if the person agrees, into the log. */
import { useEffect, useState } from 'preact/hooks';
import { lazy, useLocation } from 'preact-iso';
import { Button, Field, Notice, Page } from '../parts/controls/controls.tsx';
import { showToast } from '../parts/controls/toast.tsx';
import { session, store, useRecords } from '../parts/state.ts';
import { takeSharedFiles } from '../parts/shared-files.ts';
import { t } from '../words/index.ts';
import { byTurn } from './card-order.ts';
import { heldPairs } from './own-mileage.ts';
import { holdSharedTrack, isTrackFile } from './track/shared-track.ts';
import type { FilePreview, FileProblem } from '../store/index.ts';

const WaitsInFile = lazy(async () => (await import('./waits-in-file.tsx')).WaitsInFile);

interface Opened {
  readonly bytes: Uint8Array;
  readonly preview: FilePreview | null;
  readonly problem: FileProblem['why'] | null;
}

const openBytes = async (bytes: Uint8Array): Promise<Opened> => {
  const preview = await store.previewFile(bytes);
  return preview.ok
    ? { bytes, preview: preview.value, problem: null }
    : { bytes, preview: null, problem: preview.why };
};

/** A track belongs to a run in a pair: straight on where only one is held, else the person says which. */
const TrackToPair = ({ track }: { track: File }) => {
  const words = t();
  const { route } = useLocation();
  const pairs = useRecords('pair');
  const handOuts = useRecords('hand-out');
  const runs = useRecords('run');
  const member = session.value?.member;
  const held =
    pairs && handOuts && runs && member
      ? [...heldPairs(member, pairs, handOuts, runs, Date.now())].sort(byTurn)
      : null;
  const go = (pair: string) => {
    holdSharedTrack(track);
    route(`/log/${pair}`);
  };
  const only = held?.length === 1 ? held[0]?.pair.revision.id : undefined;
  useEffect(() => {
    if (only) go(only);
    // Once it is known that there is one pair only.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [only]);
  if (held === null) return <p class="soft">{words.loading}</p>;
  if (held.length === 0) return <p>{words.today.noPairs}</p>;
  return (
    <section class="stack" aria-live="polite">
      <h2>{words.track.choosePair}</h2>
      {held.map(({ pair }) => (
        <Button key={pair.revision.id} big onClick={() => go(pair.revision.id)}>
          {pair.body.code}
        </Button>
      ))}
    </section>
  );
};

export const OpenFile = () => {
  const words = t();
  const { route } = useLocation();
  const [opened, setOpened] = useState<Opened | null>(null);
  const [track, setTrack] = useState<File | null>(null);

  useEffect(() => {
    void takeSharedFiles().then(async ([shared]) => {
      if (shared) await choose(shared);
    });
  }, []);

  const choose = async (file: File | undefined) => {
    if (!file) return;
    if (await isTrackFile(file)) setTrack(file);
    else setOpened(await openBytes(new Uint8Array(await file.arrayBuffer())));
  };
  const take = async () => {
    if (!opened) return;
    const taken = await store.importFile(opened.bytes);
    if (!taken.ok) return setOpened({ ...opened, preview: null, problem: taken.why });
    showToast({ text: words.file.taken(taken.value.fresh) });
    route(session.value?.role === 'lead' ? '/desk' : '/', true);
  };
  const fresh = opened?.preview?.authors.reduce((sum, author) => sum + author.fresh, 0) ?? 0;
  const known = opened?.preview?.authors.reduce((sum, author) => sum + author.known, 0) ?? 0;
  return (
    <Page title={words.file.title} back={{ href: '/', label: words.back }}>
      <Field label={words.file.choose}>
        {(ids) => (
          <input
            class="input"
            type="file"
            {...ids}
            onChange={(event) => void choose(event.currentTarget.files?.[0])}
          />
        )}
      </Field>
      {track && <TrackToPair track={track} />}
      {opened?.problem && (
        <Notice tone="danger" live>
          {words.file.wrong[opened.problem]}
        </Notice>
      )}
      {opened?.preview && (
        <section class="sheet" aria-live="polite">
          <h2>{opened.preview.header.groupName ?? ''}</h2>
          <p>{words.file.contains(fresh, known)}</p>
          {session.value?.role === 'lead' && <WaitsInFile fresh={opened.preview.fresh} />}
          {opened.preview.problems.length > 0 && (
            <p>{words.file.problems(opened.preview.problems.length)}</p>
          )}
          <Button kind="main" onClick={() => void take()}>
            {words.file.take}
          </Button>
        </section>
      )}
    </Page>
  );
};
