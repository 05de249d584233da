/** A track that came in by the share sheet or "open with", on its way to the form of a pair. */
let waiting: File | null = null;

export const holdSharedTrack = (file: File): void => {
  waiting = file;
};

/** Hands it over, once. */
export const takeSharedTrack = (): File | null => {
  const file = waiting;
  waiting = null;
  return file;
};

/** Whether a file is a track, by its name or by its first character. */
export const isTrackFile = async (file: File): Promise<boolean> =>
  /\.gpx$/i.test(file.name) || /^\uFEFF?\s*</.test(await file.slice(0, 64).text());
