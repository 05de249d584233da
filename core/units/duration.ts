/** How is a duration written? */
import type { Seconds } from './quantity.ts';

/** A duration as `h:mm:ss`, or `m:ss` below one hour; rounded to the second. */
export const formatDuration = (duration: Seconds): string => {
  const whole = Math.round(duration);
  const two = (n: number) => String(n).padStart(2, '0');
  const h = Math.floor(whole / 3600);
  const m = Math.floor((whole % 3600) / 60);
  return h > 0 ? `${h}:${two(m)}:${two(whole % 60)}` : `${m}:${two(whole % 60)}`;
};
