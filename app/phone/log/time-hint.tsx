/** Under distance and time: how a time is typed and, as soon as one is, what was understood. */
import {
  formatDuration,
  metres,
  pace,
  parseDecimal,
  readDuration,
  seconds,
  toMetres,
  type DistanceUnit,
} from '../../../core/units/index.ts';
import { entryWords } from '../../words/index.ts';

const two = (part: number): string => String(part).padStart(2, '0');

/** A typed time, and the pace it makes with the typed distance, in words; empty while there is none. */
const understood = (time: string, distance: string, unit: DistanceUnit): string => {
  const read = readDuration(time);
  if (!read || read.h + read.m + read.s === 0) return '';
  const { h, m, s } = read;
  const typed = parseDecimal(distance) ?? 0;
  const perUnit = pace(
    typed > 0 ? toMetres(typed, unit) : metres(0),
    seconds(3600 * h + 60 * m + s),
    unit,
  );
  return entryWords().understood(
    h === 0 ? '' : String(h),
    h === 0 ? String(m) : two(m),
    two(s),
    perUnit === null ? '' : formatDuration(perUnit),
    unit,
  );
};

/** Both lie in one place, so that nothing moves when the one takes the other's. */
export const TimeHint = (props: {
  readonly time: string;
  readonly distance: string;
  readonly unit: DistanceUnit;
}) => {
  const said = understood(props.time, props.distance, props.unit);
  return (
    <p class="either small">
      <span class={said === '' ? 'soft' : 'unseen'} aria-hidden={said !== ''}>
        {entryWords().timeHint}
      </span>
      <span role="status">{said}</span>
    </p>
  );
};
