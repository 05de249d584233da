/** A kept photo as a small picture that opens large; says so where it is not on this device yet. */
import { useEffect, useState } from 'preact/hooks';
import type { Sha256 } from '../../../core/records/index.ts';
import { store } from '../state.ts';
import { t } from '../../words/index.ts';
import './photos.css';

type Found = { readonly url: string } | 'missing' | null;

const usePhoto = (sha256: Sha256): Found => {
  const [found, setFound] = useState<Found>(null);
  useEffect(() => {
    let url: string | null = null;
    let current = true;
    void store.attachment(sha256).then((photo) => {
      if (!current) return;
      if (!photo) return setFound('missing');
      url = URL.createObjectURL(new Blob([photo.bytes.slice()], { type: photo.mediaType }));
      setFound({ url });
    });
    return () => {
      current = false;
      if (url !== null) URL.revokeObjectURL(url);
    };
  }, [sha256]);
  return found;
};

export const PhotoView = ({ sha256, label }: { sha256: Sha256; label: string }) => {
  const found = usePhoto(sha256);
  if (found === null) return <span class="photo photo-empty" aria-hidden="true" />;
  if (found === 'missing') return <span class="photo photo-empty small">{t().photo.missing}</span>;
  return (
    <a class="photo" href={found.url} target="_blank" rel="noreferrer">
      <img src={found.url} alt={label} />
    </a>
  );
};

/** Photos in a row, each named by what it shows and its place in the row. */
export const PhotoRow = ({ photos, label }: { photos: readonly string[]; label: string }) =>
  photos.length === 0 ? null : (
    <span class="photos">
      {photos.map((sha256, at) => (
        <PhotoView
          key={sha256}
          sha256={sha256 as Sha256}
          label={`${t().photo.of(label)}${photos.length > 1 ? ` ${at + 1}` : ''}`}
        />
      ))}
    </span>
  );
