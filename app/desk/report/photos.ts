/** Photos as addresses that a file can hold. */
import { useEffect, useState } from 'preact/hooks';
import type { Sha256 } from '../../../core/records/index.ts';
import { store } from '../../parts/state.ts';

const asAddress = (bytes: Uint8Array, mediaType: string): Promise<string> =>
  new Promise((done, fail) => {
    const reader = new FileReader();
    reader.onload = () => done(reader.result as string);
    reader.onerror = () => fail(reader.error ?? new Error('a photo could not be read'));
    reader.readAsDataURL(new Blob([bytes.slice()], { type: mediaType }));
  });

/** data: addresses by SHA-256 of the photos that are here or at the hub; null until all were asked for. */
export const usePhotoAddresses = (
  photos: readonly string[],
): ReadonlyMap<string, string> | null => {
  const [found, setFound] = useState<{
    readonly of: string;
    readonly addresses: ReadonlyMap<string, string>;
  } | null>(null);
  const of = photos.join();
  useEffect(() => {
    let current = true;
    const read = async (sha256: string): Promise<readonly [string, string][]> => {
      const photo = await store.attachment(sha256 as Sha256);
      return photo ? [[sha256, await asAddress(photo.bytes, photo.mediaType)]] : [];
    };
    void Promise.all((of === '' ? [] : of.split(',')).map((one) => read(one).catch(() => []))).then(
      (all) => current && setFound({ of, addresses: new Map(all.flat()) }),
    );
    return () => {
      current = false;
    };
  }, [of]);
  return found?.of === of ? found.addresses : null;
};
