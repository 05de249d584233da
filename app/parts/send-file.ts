/** How does a file leave this device: by the system's share sheet where there is one, else as a download. */
import type { Store } from '../store/index.ts';

/** Hands the file over; resolves when the person has shared, saved or waved it away. */
export const sendFile = async (name: string, bytes: Uint8Array): Promise<void> => {
  const file = new File([new Uint8Array(bytes)], name, { type: 'application/octet-stream' });
  if (navigator.canShare?.({ files: [file] })) {
    try {
      await navigator.share({ files: [file] });
      return;
    } catch (error) {
      // Waved away by the person: nothing went wrong. Anything else falls back to a download.
      if (error instanceof DOMException && error.name === 'AbortError') return;
    }
  }
  const link = document.createElement('a');
  link.href = URL.createObjectURL(file);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
};

/** Hands the member's own part of the log out as a file. */
export const sendOwnLog = async (
  from: Pick<Store, 'exportFile'>,
  what: 'mine' | 'about-me',
): Promise<void> => {
  const { name, bytes } = await from.exportFile(what);
  await sendFile(name, bytes);
};
