/** Ways of known length, run at a steady speed and seen by a receiver every so many seconds. */
import type { TrackPoint } from '../../../core/track/index.ts';
import { errorsOf, fixAt, START_MS } from './tracks.ts';

/** East and north, metres, after so many metres of the way. */
export type Way = (alongM: number) => readonly [east: number, north: number];

/** Corners joined by straight lines, walked over and over again by their own shifts. */
const alongLines = (corners: readonly (readonly [number, number])[]): Way => {
  const marks = [0];
  for (const [at, [x, y]] of corners.slice(1).entries()) {
    const [fromX, fromY] = corners[at] as readonly [number, number];
    marks.push((marks[at] as number) + Math.hypot(x - fromX, y - fromY));
  }
  return (alongM) => {
    let [low, high] = [0, marks.length - 1];
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if ((marks[middle] as number) <= alongM) low = middle;
      else high = middle;
    }
    const [[x, y], [toX, toY]] = [corners[low], corners[high]] as [
      readonly [number, number],
      readonly [number, number],
    ];
    const [from, to] = [marks[low], marks[high]] as [number, number];
    const share = (alongM - from) / (to - from);
    return [x + share * (toX - x), y + share * (toY - y)];
  };
};

const LONGEST_M = 12_000;

/** Headings (radians) by the metre, summed to a way of 10 cm lines. */
const byHeading = (headingAt: (alongM: number) => number): Way => {
  const corners: [number, number][] = [[0, 0]];
  let [x, y] = [0, 0];
  for (let at = 0; at < LONGEST_M * 10; at++) {
    const heading = headingAt((at + 0.5) / 10);
    x += Math.sin(heading) / 10;
    y += Math.cos(heading) / 10;
    corners.push([x, y]);
  }
  return alongLines(corners);
};

/** Blocks of 60 to 140 m, each corner a right angle to the left or to the right. */
const city = (): Way => {
  const corners: [number, number][] = [[0, 0]];
  let [x, y, along, heading] = [0, 0, 0, 0];
  for (let at = 0; along < LONGEST_M; at++) {
    const block = 60 + ((at * 47) % 81);
    x += block * Math.sin(heading);
    y += block * Math.cos(heading);
    along += block;
    corners.push([x, y]);
    heading += ((at * at + at) % 3 === 0 ? 1 : -1) * (Math.PI / 2);
  }
  return alongLines(corners);
};

/** A track of 400 m: straights of 84.39 m, bends of 36.5 m (World Athletics, Track and Field Facilities Manual, from memory), rounded up to 400 m a lap. */
const track = (): Way => {
  const bend = 200 - 84.39;
  return byHeading((along) => {
    const [laps, rest] = [Math.floor(along / 200), along % 200];
    return Math.PI * (laps + Math.max(0, rest - 84.39) / bend);
  });
};

/** Bends of a trail: two waves of heading, 70 and 190 m long. */
const trail = (): Way =>
  byHeading(
    (along) =>
      1 * Math.sin((2 * Math.PI * along) / 70) + 0.9 * Math.sin((2 * Math.PI * along) / 190),
  );

/** Legs of 90 m up a slope, each turned back by 150 degrees on an arc of 5 m. */
const switchbacks = (): Way => {
  const [leg, turn] = [90, (150 * Math.PI) / 180];
  const arc = 5 * turn;
  return byHeading((along) => {
    const [at, rest] = [Math.floor(along / (leg + arc)), along % (leg + arc)];
    const share = Math.max(0, rest - leg) / arc;
    return turn * (at % 2 === 0 ? share : 1 - share);
  });
};

export const SHAPES: Readonly<Record<string, Way>> = {
  straight: (along) => [0.6 * along, 0.8 * along],
  city: city(),
  track: track(),
  trail: trail(),
  switchbacks: switchbacks(),
};

export interface Seen {
  readonly lengthM: number;
  readonly everyS: number;
  readonly mps?: number;
  /** Where on the way it starts: other fixes of the same way. */
  readonly fromM?: number;
  /** Independent errors of each fix, in each axis, metres. */
  readonly whiteM?: number;
  /** Errors that last: first-order autoregressive, as those of real receivers, metres and seconds. */
  readonly lastingM?: number;
  readonly lastingS?: number;
  readonly random?: () => number;
}

/** The fixes of a run along a way. The length is that of the way between the first and the last of them. */
export const seenOn = (
  way: Way,
  { lengthM, everyS, mps = 3, fromM = 0, ...noise }: Seen,
): { readonly fixes: readonly TrackPoint[]; readonly lengthM: number } => {
  const { whiteM = 0, lastingM = 0, lastingS = 30, random = () => 0.5 } = noise;
  const count = Math.floor(lengthM / (mps * everyS));
  const keeps = Math.exp(-everyS / lastingS);
  let [lastingX, lastingY] = lastingM > 0 ? errorsOf(random, lastingM) : [0, 0];
  const fixes = Array.from({ length: count + 1 }, (_, at) => {
    const [east, north] = way(fromM + at * mps * everyS);
    const [whiteX, whiteY] = whiteM > 0 ? errorsOf(random, whiteM) : [0, 0];
    if (lastingM > 0 && at > 0) {
      const [x, y] = errorsOf(random, lastingM * Math.sqrt(1 - keeps * keeps));
      [lastingX, lastingY] = [keeps * lastingX + x, keeps * lastingY + y];
    }
    return fixAt(
      east + whiteX + lastingX,
      north + whiteY + lastingY,
      START_MS + 1000 * at * everyS,
    );
  });
  return { fixes, lengthM: count * mps * everyS };
};
