/** Take in a file: first what is in it, then, if the person agrees, into the log. */
import { useEffect, useState } from 'preact/hooks';
import { lazy, useLocation } from 'preact-iso';
import { Button, Field, Notice, Page } from '../parts/controls/controls.tsx';
import { showToast } from '../parts/controls/toast.tsx';
import { session, store, useRecords } from '../parts/state.ts';
import { takeSharedFiles } from '../parts/shared-files.ts';
import { entryWords, fileWords, ownWords, t } from '../words/index.ts';
import { latePart } from '../parts/late.tsx';
import { isOtherTrack, isPhoto } from './own/shared-photo.ts';
import { byLastWorn } from './card-order.ts';
import { Preview } from './file-preview.tsx';
import { heldPairs } from './own-mileage.ts';
import { holdSharedTrack, isTrackFile } from './track/shared-track.ts';
import type { FilePreview, FileProblem } from '../store/index.ts';

const PhotoToEntry = latePart(async () => (await import('./own/photo-to-entry.tsx')).PhotoToEntry);
const WaitsInFile = lazy(async () => (await import('./waits-in-file.tsx')).WaitsInFile);

interface Opened {
  /** What the file is called. */
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly preview: FilePreview | null;
  readonly problem: FileProblem | null;
}

const openBytes = async (name: string, bytes: Uint8Array): Promise<Opened> => {
  const preview = await store.previewFile(bytes);
  return preview.ok
    ? { name, bytes, preview: preview.value, problem: null }
    : { name, bytes, preview: null, problem: preview };
};

const problemInWords = (problem: FileProblem, name: string): string => {
  const words = fileWords();
  if (problem.why === 'not-a-bundle' && !/\.pairlog$/i.test(name))
    return ownWords().shared.otherFile(name);
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
      ? [...heldPairs(member, pairs, handOuts, runs, Date.now())].sort(byLastWorn)
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
  /** A track or a photo, or a track in a format that is not read here. */
  const [shared, setShared] = useState<{ readonly file: File; readonly isTrack: boolean } | null>(
    null,
  );

  useEffect(() => {
    void takeSharedFiles().then(async ([shared]) => {
      if (shared) await choose(shared);
    });
  }, []);

  const choose = async (file: File | undefined) => {
    if (!file) return;
    setChosen(new Set());
    setOpened(null);
    const isTrack = !isPhoto(file) && (await isTrackFile(file));
    setShared(isTrack || isPhoto(file) || isOtherTrack(file) ? { file, isTrack } : null);
    if (!isTrack && !isPhoto(file) && !isOtherTrack(file))
      setOpened(await openBytes(file.name, new Uint8Array(await file.arrayBuffer())));
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
      (preview.setsUp !== null && preview.setsUp.role !== 'lead') ||
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
      {shared?.isTrack && <TrackToPair track={shared.file} />}
      {shared && isPhoto(shared.file) && <PhotoToEntry file={shared.file} />}
      {shared && isOtherTrack(shared.file) && (
        <Notice tone="warn" live>
          {ownWords().shared.otherTrack(shared.file.name)}
        </Notice>
      )}
      {opened?.problem && (
        <Notice tone="danger" live>
          {problemInWords(opened.problem, opened.name)}
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
