/** A photo that came in by the share sheet, on its way to the form of a damage report. Kept on the device already. */
import type { Sha256 } from '../../../core/records/index.ts';

let waiting: Sha256 | null = null;

export const holdSharedPhoto = (photo: Sha256): void => {
  waiting = photo;
};

/** Hands it over, once. */
export const takeSharedPhoto = (): Sha256 | null => {
  const photo = waiting;
  waiting = null;
  return photo;
};

/** Whether a file is a picture, by what the platform or its name says. */
export const isPhoto = ({ type, name }: File): boolean =>
  type.startsWith('image/') || /\.(jpe?g|png|webp|heic|heif|avif)$/i.test(name);

/** Whether a file is a recorded run in a format that is not read here, by its name. */
export const isOtherTrack = ({ name }: File): boolean => /\.(fit|tcx|kml|kmz)(\.gz)?$/i.test(name);
