/** A track as a GPX 1.1 file with nothing in it but places, elevations, times and cadences. */
import type { Track, TrackPoint } from './track.ts';

/** Seven decimals of a degree are a centimetre. */
const degrees = (value: number): string => String(Number(value.toFixed(7)));

const time = (ms: number): string => {
  // By arithmetic, because this room knows no clock: days since 1970 to a date, Howard Hinnant's algorithm.
  const days = Math.floor(ms / 86_400_000);
  const rest = ms - days * 86_400_000;
  const shifted = days + 719_468;
  const era = Math.floor(shifted / 146_097);
  const ofEra = shifted - era * 146_097;
  const yearOfEra = Math.floor(
    (ofEra - Math.floor(ofEra / 1460) + Math.floor(ofEra / 36_524) - Math.floor(ofEra / 146_096)) /
      365,
  );
  const ofYear =
    ofEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const part = Math.floor((5 * ofYear + 2) / 153);
  const day = ofYear - Math.floor((153 * part + 2) / 5) + 1;
  const month = part < 10 ? part + 3 : part - 9;
  const year = yearOfEra + era * 400 + (month <= 2 ? 1 : 0);
  const two = (value: number) => String(value).padStart(2, '0');
  const seconds = rest / 1000;
  const clock = [seconds / 3600, (seconds / 60) % 60].map((value) => two(Math.floor(value)));
  const milli = rest % 1000;
  const fraction = milli === 0 ? '' : `.${String(milli).padStart(3, '0')}`;
  return `${year}-${two(month)}-${two(day)}T${clock.join(':')}:${two(Math.floor(seconds % 60))}${fraction}Z`;
};

const pointOf = ({ lat, lon, eleM, timeMs, cadence }: TrackPoint): string =>
  `<trkpt lat="${degrees(lat)}" lon="${degrees(lon)}">` +
  (eleM === null ? '' : `<ele>${Number(eleM.toFixed(2))}</ele>`) +
  (timeMs === null ? '' : `<time>${time(timeMs)}</time>`) +
  (cadence === null ? '' : `<extensions><cad>${cadence}</cad></extensions>`) +
  '</trkpt>';

export const writeGpx = ({ segments }: Track): string =>
  '<?xml version="1.0" encoding="UTF-8"?>\n' +
  '<gpx version="1.1" creator="Pairlog" xmlns="http://www.topografix.com/GPX/1/1"><trk>\n' +
  segments.map((segment) => `<trkseg>\n${segment.map(pointOf).join('\n')}\n</trkseg>\n`).join('') +
  '</trk></gpx>\n';
