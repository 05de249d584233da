/**
 * Which of two revisions of one record came later?
 *
 * A stamp is a hybrid logical clock as text that sorts as it compares:
 * `mmmmmmmmmmmm-cccc-dddddddddddddddd`, 12 hex digits of milliseconds, 4 of a counter, 16 of the
 * device. Rules of S. Kulkarni et al., "Logical physical clocks", OPODIS 2014, with three choices:
 *  - no clock, however wrong, makes a device lose or refuse an entry: drift bounds the clock, never the data;
 *  - an edit is stamped after what it edits ({@link stampAfter}), so it wins whatever the clocks say;
 *  - nothing here throws: a full counter borrows a millisecond.
 */
import type { $brand } from 'zod/v4/core';

export type Stamp = string & $brand<'Stamp'>;
export type DeviceId = string & $brand<'DeviceId'>;

/** What a device remembers of its clock: the greatest time and counter it gave or took. */
export interface Clock {
  readonly device: DeviceId;
  readonly ms: number;
  readonly count: number;
}

export const STAMP_PATTERN = /^[0-7][0-9a-f]{11}-[0-9a-f]{4}-[0-9a-f]{16}$/;
export const DEVICE_PATTERN = /^[0-9a-f]{16}$/;

/** A received stamp moves the device's clock only if it lies no further ahead than this. */
export const MAX_CLOCK_DRIFT_MS = 5 * 60_000;

const MAX_COUNT = 0xffff;
/** Stamps hold milliseconds below 2^47 (year 6429): the one bound, and a syntactic one. */
const MAX_MS = 2 ** 47 - 1;

const hex = (value: number, digits: number): string => value.toString(16).padStart(digits, '0');

const later = (ms: number, count: number): { ms: number; count: number } =>
  count < MAX_COUNT ? { ms, count: count + 1 } : { ms: ms + 1, count: 0 };

const stampOf = (ms: number, count: number, device: DeviceId): Stamp =>
  `${hex(ms, 12)}-${hex(count, 4)}-${device}` as Stamp;

/** A clock that has given no stamp yet. */
export const newClock = (device: DeviceId): Clock => ({ device, ms: 0, count: 0 });

/** The parts of a stamp: milliseconds since 1970, counter, device. */
export const stampParts = (stamp: Stamp): Clock => ({
  ms: Number.parseInt(stamp.slice(0, 12), 16),
  count: Number.parseInt(stamp.slice(13, 17), 16),
  device: stamp.slice(18) as DeviceId,
});

/** The next stamp of this device, greater than every stamp it gave or took before. */
export const nextStamp = (clock: Clock, nowMs: number): { clock: Clock; stamp: Stamp } => {
  const now = Math.min(Math.max(0, Math.floor(nowMs)), MAX_MS);
  const next = now > clock.ms ? { ms: now, count: 0 } : later(clock.ms, clock.count);
  return { clock: { ...clock, ...next }, stamp: stampOf(next.ms, next.count, clock.device) };
};

/**
 * The stamp of an edit: greater than `head`, the stamp of what is edited, even where that lies years
 * ahead. The device's own clock does not follow a far head.
 */
export const stampAfter = (
  clock: Clock,
  nowMs: number,
  head: Stamp,
): { clock: Clock; stamp: Stamp } => {
  const next = nextStamp(clock, nowMs);
  if (next.stamp > head) return next;
  const { ms, count } = stampParts(head);
  const after = later(ms, count);
  return { clock: next.clock, stamp: stampOf(after.ms, after.count, clock.device) };
};

/** The device's clock after it has taken a revision with this stamp. */
export const clockAfterReceiving = (clock: Clock, nowMs: number, stamp: Stamp): Clock => {
  const { ms, count } = stampParts(stamp);
  if (ms > nowMs + MAX_CLOCK_DRIFT_MS) return clock;
  if (ms < clock.ms || (ms === clock.ms && count <= clock.count)) return clock;
  return { ...clock, ms, count };
};
