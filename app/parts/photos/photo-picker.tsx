/** Takes photos from the camera or the gallery into an answer, and out of it again. */
import { useId, useState } from 'preact/hooks';
import type { Sha256 } from '../../../core/records/index.ts';
import { Button } from '../controls/controls.tsx';
import { store } from '../state.ts';
import { saidOf, t } from '../../words/index.ts';
import { PhotoView } from './photo-view.tsx';
import { shrinkPhoto } from './shrink-photo.ts';

/** As many as a record may show. */
const MOST = 12;

export const PhotoPicker = (props: {
  /** What the photos show, for those who do not see them. */
  readonly label: string;
  readonly photos: readonly string[];
  readonly onChange: (photos: readonly string[]) => void;
}) => {
  const words = t();
  const id = useId();
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);

  const add = async (files: readonly File[]) => {
    setBusy(true);
    setTrouble(null);
    const photos = [...props.photos];
    for (const file of files.slice(0, MOST - photos.length)) {
      const photo = await shrinkPhoto(file);
      const kept = photo && (await store.putAttachment(photo.bytes, photo.mediaType));
      if (!kept) setTrouble(words.photo.unreadable(file.name));
      else if (!kept.ok)
        setTrouble(kept.why === 'storage-full' ? words.photo.full : words.log.lost);
      else if (!photos.includes(kept.value)) photos.push(kept.value);
    }
    setBusy(false);
    if (photos.length > props.photos.length) props.onChange(photos);
  };
  const remove = (sha256: string) => {
    props.onChange(props.photos.filter((one) => one !== sha256));
    void store.dropAttachment(sha256 as Sha256);
  };

  return (
    <div class="field">
      {props.photos.length > 0 && (
        <ul class="plain-list photos">
          {props.photos.map((sha256, at) => {
            const name = `${words.photo.of(props.label)} ${at + 1}`;
            return (
              <li key={sha256} class="stack">
                <PhotoView sha256={sha256 as Sha256} label={name} />
                <Button
                  kind="quiet"
                  aria-label={saidOf(words.remove, name)}
                  onClick={() => remove(sha256)}
                >
                  {words.remove}
                </Button>
              </li>
            );
          })}
        </ul>
      )}
      {props.photos.length < MOST && (
        <>
          <input
            id={id}
            class="hidden-words file-input"
            type="file"
            accept="image/*"
            multiple
            disabled={busy}
            aria-label={words.photo.addOf(props.label)}
            onChange={(event) => {
              const input = event.currentTarget;
              void add([...(input.files ?? [])]).then(() => {
                input.value = '';
              });
            }}
          />
          <label class="button" for={id}>
            <svg class="icon" viewBox="0 0 24 24" aria-hidden="true">
              <path d="M4 8h3l2-3h6l2 3h3v11H4z" />
              <circle cx="12" cy="13" r="3.5" />
            </svg>
            {busy ? words.loading : words.photo.add}
          </label>
        </>
      )}
      {trouble && (
        <p class="field-error" role="alert">
          {trouble}
        </p>
      )}
    </div>
  );
};
