/** How far is it from here to there on the WGS84 ellipsoid? Karney, J Geod 2013;87:43-55, by GeographicLib. */
import geodesic from 'geographiclib-geodesic';

interface Place {
  readonly lat: number;
  readonly lon: number;
}

const { WGS84 } = geodesic.Geodesic;
const DISTANCE = geodesic.Geodesic.DISTANCE;

/** Length of the geodesic between two places, metres. */
export const geodesicDistance = (a: Place, b: Place): number =>
  a.lat === b.lat && a.lon === b.lon
    ? 0
    : (WGS84.Inverse(a.lat, a.lon, b.lat, b.lon, DISTANCE).s12 as number);

const RADIANS = Math.PI / 180;
const EQUATOR_M = 6_378_137;
const FLATTENING = 1 / 298.257223563;
const E2 = FLATTENING * (2 - FLATTENING);

/** East and north of `origin` in metres, on the plane that touches the ellipsoid there: for a few kilometres. */
export const toPlane = (origin: Place): ((place: Place) => { x: number; y: number }) => {
  const sine = Math.sin(origin.lat * RADIANS);
  const w = 1 - E2 * sine * sine;
  const alongMeridian = (EQUATOR_M * (1 - E2)) / (w * Math.sqrt(w));
  const alongParallel = (EQUATOR_M / Math.sqrt(w)) * Math.cos(origin.lat * RADIANS);
  return ({ lat, lon }) => {
    const around = ((lon - origin.lon + 540) % 360) - 180;
    return { x: around * RADIANS * alongParallel, y: (lat - origin.lat) * RADIANS * alongMeridian };
  };
};

/**
 * The distance between two near places, metres, on the plane that touches the ellipsoid halfway: 1e-6 of it up to
 * a kilometre, and many times as fast. For limits and shares, not for the length of a run.
 */
export const nearDistance = (a: Place, b: Place): number => {
  const { x, y } = toPlane({ lat: (a.lat + b.lat) / 2, lon: a.lon })(b);
  return Math.hypot(x, 2 * y);
};
