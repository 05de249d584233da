/** Take in a file: first what is in it, then, if the person agrees, into the log. */
import { useEffect, useState } from 'preact/hooks';
import { useLocation } from 'preact-iso';
import { Button, Field, Notice, Page } from '../parts/controls/controls.tsx';
import { showToast } from '../parts/controls/toast.tsx';
import { session, store } from '../parts/state.ts';
import { takeSharedFiles } from '../parts/shared-files.ts';
import { t } from '../words/index.ts';
import type { FilePreview, FileProblem } from '../store/index.ts';

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

export const OpenFile = () => {
  const words = t();
  const { route } = useLocation();
  const [opened, setOpened] = useState<Opened | null>(null);

  useEffect(() => {
    void takeSharedFiles().then(async ([shared]) => {
      if (shared) setOpened(await openBytes(new Uint8Array(await shared.arrayBuffer())));
    });
  }, []);

  const choose = async (file: File | undefined) => {
    if (file) setOpened(await openBytes(new Uint8Array(await file.arrayBuffer())));
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
      {opened?.problem && (
        <Notice tone="danger" live>
          {words.file.wrong[opened.problem]}
        </Notice>
      )}
      {opened?.preview && (
        <section class="sheet" aria-live="polite">
          <h2>{opened.preview.header.groupName ?? ''}</h2>
          <p>{words.file.contains(fresh, known)}</p>
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
