/** A track of 50,000 points read and measured, against a general-purpose XML reader and the same geodesic sums. */
import { XMLParser } from 'fast-xml-parser';
import geodesic from 'geographiclib-geodesic';
import { measureTrack, readGpx, writeGpx } from '../../core/track/index.ts';
import { seeded } from '../seeded.ts';
import { fixAt, START_MS, trackOf } from '../core/track/tracks.ts';
import type { BenchRow } from './row.ts';

const POINTS = 50_000;

interface Parsed {
  readonly gpx: {
    readonly trk: {
      readonly trkseg: {
        readonly trkpt: readonly { readonly lat: number; readonly lon: number }[];
      };
    };
  };
}

export const trackRow: BenchRow = {
  name: `a track of ${POINTS.toLocaleString('en')} points read and measured`,
  peerName: 'fast-xml-parser 5.12.1, checked for well-formedness, and the same geodesic sums',
  setUp() {
    const random = seeded(3);
    let [east, north, heading] = [0, 0, 0];
    const text = writeGpx(
      trackOf(
        Array.from({ length: POINTS }, (_, at) => {
          heading += (random() - 0.5) * 0.05;
          east += 3 * Math.cos(heading);
          north += 3 * Math.sin(heading);
          return {
            ...fixAt(east, north, START_MS + 1000 * at),
            eleM: 500 + (at % 50),
            cadence: 85,
          };
        }),
      ),
    );
    const parser = new XMLParser({
      ignoreAttributes: false,
      attributeNamePrefix: '',
      parseAttributeValue: true,
    });
    const { WGS84, DISTANCE } = { ...geodesic.Geodesic };
    return Promise.resolve({
      ours() {
        const read = readGpx(text);
        if (!read.ok) throw new Error(read.problem.why);
        return measureTrack(read.track).distanceM;
      },
      peer() {
        const { gpx } = parser.parse(text, true) as Parsed;
        const points = gpx.trk.trkseg.trkpt;
        let sum = 0;
        for (const [at, point] of points.entries()) {
          const before = points[at - 1];
          if (before)
            sum += WGS84.Inverse(before.lat, before.lon, point.lat, point.lon, DISTANCE)
              .s12 as number;
        }
        return sum;
      },
      check(ours, peer) {
        const ratio = (ours as number) / (peer as number);
        if (Math.abs(ratio - 1) > 0.005) throw new Error(`distances differ: ${ratio}`);
      },
    });
  },
};
