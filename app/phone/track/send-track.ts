/** What of a track leaves the phone: the way without its private ends. */
import { settings } from '../../parts/settings.ts';
import { store } from '../../parts/state.ts';
import type { TrackForm } from '../../drafts/run.ts';

/**
 * Keeps the cut track, to be sent with the run that names it.
 * @returns its SHA-256; null where the whole track is gone, or all of it lies near an end
 */
export const keepSentTrack = async (track: TrackForm): Promise<string | null> => {
  const [{ cutPrivateEnds, writeGpx }, { TRACK_TYPE, wholeTrack }] = await Promise.all([
    import('../../../core/track/index.ts'),
    import('./read-track.ts'),
  ]);
  const whole = await wholeTrack(store, track.whole);
  if (!whole) return null;
  const { privateM, trackTimes } = settings.value;
  const cut = cutPrivateEnds(whole, { privateM, coarseTimes: trackTimes === 'minutes' });
  if (cut.segments.length === 0) return null;
  const kept = await store.putAttachment(new TextEncoder().encode(writeGpx(cut)), TRACK_TYPE);
  return kept.ok ? kept.value : null;
};
