/** A run's track in the open ocean, as a watch would write it: GPX 1.1, a point every five seconds. */

const METRES_PER_DEGREE = 111_195;

/**
 * A wavering line northwards from a point far from any land.
 * @param startMs start of the run, milliseconds since 1970
 */
export const oceanTrack = (startMs: number, distanceM: number, durationS: number): string => {
  const steps = Math.floor(durationS / 5);
  const points = Array.from({ length: steps + 1 }, (_, at) => {
    const along = (distanceM * at) / steps;
    const lat = -48.8 + along / METRES_PER_DEGREE;
    const lon = -123.4 + Math.sin(along / 400) * 0.0004;
    const time = new Date(startMs + at * 5000).toISOString().slice(0, 19) + 'Z';
    return `<trkpt lat="${lat.toFixed(6)}" lon="${lon.toFixed(6)}"><ele>2</ele><time>${time}</time></trkpt>`;
  });
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<gpx version="1.1" creator="invented" xmlns="http://www.topografix.com/GPX/1/1"><trk><trkseg>',
    ...points,
    '</trkseg></trk></gpx>',
    '',
  ].join('\n');
};
