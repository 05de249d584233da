/** Take in a file: first what is in it, then, if the person agrees, into the log. */
import { useEffect, useState } from 'preact/hooks';
import { lazy, useLocation } from 'preact-iso';
import { Button, Field, Notice, Page } from '../parts/controls/controls.tsx';
import { showToast } from '../parts/controls/toast.tsx';
import { session, store, useRecords } from '../parts/state.ts';
import { takeSharedFiles } from '../parts/shared-files.ts';
import { entryWords, fileWords, t } from '../words/index.ts';
import { byTurn } from './card-order.ts';
import { Preview } from './file-preview.tsx';
import { heldPairs } from './own-mileage.ts';
import { holdSharedTrack, isTrackFile } from './track/shared-track.ts';
import type { FilePreview, FileProblem } from '../store/index.ts';

const WaitsInFile = lazy(async () => (await import('./waits-in-file.tsx')).WaitsInFile);

interface Opened {
  readonly bytes: Uint8Array;
  readonly preview: FilePreview | null;
  readonly problem: FileProblem | null;
}

const openBytes = async (bytes: Uint8Array): Promise<Opened> => {
  const preview = await store.previewFile(bytes);
  return preview.ok
    ? { bytes, preview: preview.value, problem: null }
    : { bytes, preview: null, problem: preview };
};

const problemInWords = (problem: FileProblem): string => {
  const words = fileWords();
  return problem.why === 'other-group' && problem.groupName !== null && session.value
    ? words.otherGroup(problem.groupName, session.value.groupName)
    : words.wrong[problem.why];
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
      <h2>{entryWords().track.choosePair}</h2>
      {held.map(({ pair }) => (
        <Button key={pair.revision.id} big onClick={() => go(pair.revision.id)}>
          {pair.body.code}
        </Button>
      ))}
    </section>
  );
};

export const OpenFile = () => {
  const words = fileWords();
  const { route } = useLocation();
  const [chosen, setChosen] = useState<ReadonlySet<string>>(new Set());
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
    else {
      setChosen(new Set());
      setOpened(await openBytes(new Uint8Array(await file.arrayBuffer())));
    }
  };
  const toggle = (key: string) =>
    setChosen(
      (before) => new Set([...before, key].filter((one) => one !== key || !before.has(key))),
    );
  const take = async () => {
    if (!opened) return;
    const taken = await store.importFile(opened.bytes, [...chosen]);
    if (!taken.ok) return setOpened({ ...opened, preview: null, problem: taken });
    showToast({ text: words.taken(taken.value.fresh) });
    route(session.value?.role === 'lead' ? '/desk' : '/', true);
  };
  const preview = opened?.preview;
  const takes =
    preview &&
    (preview.taken.entries > 0 ||
      preview.setsUp?.role === 'tester' ||
      preview.asked.some(({ key }) => chosen.has(key)));
  return (
    <Page title={words.title} back={{ href: '/', label: t().back }}>
      <Field label={words.choose}>
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
          {problemInWords(opened.problem)}
        </Notice>
      )}
      {preview && (
        <section class="sheet" aria-live="polite">
          <Preview preview={preview} chosen={chosen} onToggle={toggle} />
          {session.value?.role === 'lead' && <WaitsInFile fresh={preview.fresh} />}
          {takes && (
            <Button kind="main" onClick={() => void take()}>
              {words.take}
            </Button>
          )}
        </section>
      )}
    </Page>
  );
};
