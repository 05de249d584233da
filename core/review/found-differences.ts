/**
 * What differs between two rounds that no list of changes and no drawing asked for: readings of new pairs, the last, the
 * layers? Stated as found: nobody said it should, so it is no verdict.
 *
 * A reading is found where it differs at a false discovery rate of 5 % over all places that nobody asked about (Benjamini & Hochberg
 * 1995); its interval is that of the place alone. Last and layers are as they are written down.
 */
import type { ZoneCode } from '../foot/index.ts';
import type { RecordId } from '../records/index.ts';
import {
  measuredAt,
  sampleDifference,
  usualGaugeError,
  type MeasuredAt,
  type SampleDifference,
} from '../rounds/index.ts';
import { benjaminiHochberg, groupBy } from '../statistics/index.ts';
import { placeKey } from '../wear/index.ts';
import { nominalAt, sampleReadings } from './change-arrivals.ts';
import type { ProjectLog } from './project-log.ts';

export type FoundDifference =
  | ({ readonly of: 'reading'; readonly measured: SampleDifference } & Pick<
      MeasuredAt,
      'measure' | 'site' | 'unit'
    >)
  | { readonly of: 'last'; readonly earlier: string; readonly later: string }
  | {
      readonly of: 'last-size';
      readonly field: (typeof lastSizes)[number];
      readonly earlier: number;
      readonly later: number;
    }
  | {
      readonly of: 'layers';
      readonly zone: ZoneCode;
      readonly earlier: number;
      readonly later: number;
    };

export interface FoundDifferences {
  /** Last and layers, then readings by measure and site. */
  readonly found: readonly FoundDifference[];
  /** Places that were read in both rounds and show no difference. */
  readonly same: number;
}

const FALSE_DISCOVERIES = 0.05;

/** What a build sets from the start, in the order in which it is said. */
const builtMeasures = ['dimension', 'stack-height', 'hardness', 'mass'] as const;

/** The lengths of a last that can differ, at one size. */
export const lastSizes = ['lengthMm', 'ballWidthMm', 'ballGirthMm'] as const;

type Build = ProjectLog['rounds'][number]['body'];

const lastsOf = ({ last: from }: Build, { last: to }: Build): FoundDifference[] => {
  if (!from || !to) return [];
  const sizes = lastSizes.flatMap((field): FoundDifference[] => {
    const [earlier, later] = [from[field], to[field]];
    return from.sizeMm !== to.sizeMm ||
      earlier === undefined ||
      later === undefined ||
      earlier === later
      ? []
      : [{ of: 'last-size', field, earlier, later }];
  });
  return from.name === to.name
    ? sizes
    : [{ of: 'last', earlier: from.name, later: to.name }, ...sizes];
};

const layersOf = (from: Build, to: Build): FoundDifference[] => {
  const before = new Map((from.layers ?? []).map(({ zone, count }) => [zone, count]));
  return (to.layers ?? []).flatMap(({ zone, count: later }): FoundDifference[] => {
    const earlier = before.get(zone);
    return earlier === undefined || earlier === later
      ? []
      : [{ of: 'layers', zone, earlier, later }];
  });
};

/**
 * @param asked places that a drawing changed, by `placeKey`
 * @returns what differs from the earlier round to the later one; nothing where one of them is not in the log
 */
export const foundDifferences = (
  log: ProjectLog,
  earlier: RecordId,
  later: RecordId,
  asked: ReadonlySet<string>,
): FoundDifferences => {
  const [from, to] = [earlier, later].map((id) =>
    log.rounds.find(({ revision }) => revision.id === id),
  );
  if (!from || !to) return { found: [], same: 0 };
  const changes = log.rounds
    .filter(({ body: { order } }) => order > from.body.order && order <= to.body.order)
    .flatMap(({ body }) => body.changes);
  const [before, after] = [sampleReadings(log, earlier), sampleReadings(log, later)];
  const listed = new Set([
    ...asked,
    ...changes.flatMap(({ structured }) =>
      structured ? measuredAt(structured, [...before, ...after]).map(placeKey) : [],
    ),
  ]);
  const byPlace = groupBy(before, placeKey);
  const read = [...groupBy(after, placeKey)].flatMap(([key, own]) => {
    const [one] = own;
    const others = byPlace.get(key);
    const order = builtMeasures.findIndex((measure) => measure === one?.measure);
    if (!one || !others || listed.has(key) || order < 0) return [];
    const { measure, site, unit } = one;
    const gauge = usualGaugeError(measure, site, others[0]?.value ?? null);
    const measured = sampleDifference(others, own, nominalAt(log, from, one), gauge);
    return measured && measured.against === 'round'
      ? [{ of: 'reading', measure, site, unit, measured, order } as const]
      : [];
  });
  const told = read.filter(({ measured }) => measured.p !== null);
  const adjusted = benjaminiHochberg(told.map(({ measured }) => measured.p ?? 1));
  const differ = told
    .filter((_, at) => (adjusted[at] ?? 1) <= FALSE_DISCOVERIES)
    .sort((a, b) => a.order - b.order || (a.site < b.site ? -1 : 1))
    .map(({ order: _order, ...one }) => one);
  const isListed = (part: string) => changes.some((one) => one.part === part);
  return {
    found: [
      ...(isListed('last') ? [] : lastsOf(from.body, to.body)),
      ...layersOf(from.body, to.body),
      ...differ,
    ],
    same: read.length - differ.length,
  };
};
