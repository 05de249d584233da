/** Instants between the records (ISO 8601 with offset) and the browser's date-and-time control. */

const two = (value: number): string => String(value).padStart(2, '0');

/** An instant as the browser's date-and-time control wants it: local, to the minute. */
export const toLocalMinute = (instant: string | number): string => {
  const at = new Date(instant);
  const day = `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
  return `${day}T${two(at.getHours())}:${two(at.getMinutes())}`;
};

/** The local day of an instant as the browser's date control wants it. */
export const toLocalDay = (instant: string | number): string => toLocalMinute(instant).slice(0, 10);

/** Local date and time with this device's offset then, as the records keep it. */
export const toInstant = (ms: number): string => {
  const minutes = -new Date(ms).getTimezoneOffset();
  const local = new Date(ms + minutes * 60_000).toISOString().slice(0, 19);
  const sign = minutes < 0 ? '-' : '+';
  const size = Math.abs(minutes);
  return `${local}${sign}${two(Math.floor(size / 60))}:${two(size % 60)}`;
};
