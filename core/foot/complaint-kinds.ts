/**
 * What a complaint can be, in the trade's kinds: for which zones each is plausible and offered first,
 * and which count as pain.
 *
 * A blister or broken skin is no kind: it is a second answer beside the kind (the record's `skin`), so
 * that a hot spot that became a blister stays one complaint. The special words of a zone (arch
 * pressure, lace bite) replace plain pressure there, so that one feeling is not counted under two
 * names. Plausibility: common practice, no source.
 */
import { zoneCodes, type ZoneCode } from './zones.ts';

export const complaintKinds = [
  'heel-slip',
  'hot-spot',
  'rubbing',
  'pressure',
  'toe-bang',
  'lace-bite',
  'numbness',
  'arch-pressure',
  'bottoming-out',
  'harsh',
  'unstable',
  'harsh-edge',
  'overheating',
  'too-tight',
  'too-loose',
  'slipping',
  'stiff',
  'catching',
  'noise',
  'debris',
  'pain',
] as const;
export type ComplaintKind = (typeof complaintKinds)[number];

export type KindOfComplaint = {
  readonly id: ComplaintKind;
  /** Counts against the allowed rate for pain (1 % of runs by default) instead of that for complaints. */
  readonly painLike: boolean;
  /** Offered first for these zones. */
  readonly first: readonly ZoneCode[];
  /** Plausible for these as well; `all` for every zone. */
  readonly also: readonly ZoneCode[] | 'all';
};

const kind = (
  id: ComplaintKind,
  first: readonly ZoneCode[],
  also: readonly ZoneCode[] | 'all',
  painLike = false,
): KindOfComplaint => ({ id, painLike, first, also });

/** Every kind by its id. Pain-like: pain and numbness (judgement, no source). */
export const kindsOfComplaint: Readonly<Record<ComplaintKind, KindOfComplaint>> = {
  'heel-slip': /* @__PURE__ */ kind('heel-slip', ['U10', 'U9'], ['U8', 'P8', 'P9']),
  'hot-spot': /* @__PURE__ */ kind(
    'hot-spot',
    ['P1', 'P2', 'P3', 'P4', 'P5', 'P6', 'P8', 'P9', 'U2', 'U3'],
    'all',
  ),
  rubbing: /* @__PURE__ */ kind(
    'rubbing',
    ['U2', 'U3', 'U4', 'U5', 'U6', 'U7', 'U8', 'U9', 'U10', 'P6'],
    'all',
  ),
  pressure: /* @__PURE__ */ kind(
    'pressure',
    ['P3', 'P4', 'P5', 'P7', 'U2', 'U3', 'U4', 'U6', 'U7', 'U8', 'U9', 'U10'],
    ['P1', 'P2', 'P8', 'P9', 'U1'],
  ),
  'toe-bang': /* @__PURE__ */ kind('toe-bang', ['U1'], ['P1', 'P2']),
  'lace-bite': /* @__PURE__ */ kind('lace-bite', ['U5'], []),
  numbness: /* @__PURE__ */ kind(
    'numbness',
    ['P1', 'P2', 'P3', 'P4', 'P5', 'U4', 'U5'],
    'all',
    true,
  ),
  'arch-pressure': /* @__PURE__ */ kind('arch-pressure', ['P6'], []),
  'bottoming-out': /* @__PURE__ */ kind(
    'bottoming-out',
    ['P3', 'P4', 'P8', 'P9'],
    ['P1', 'P2', 'P5', 'P6', 'P7'],
  ),
  harsh: /* @__PURE__ */ kind('harsh', ['P4', 'P5', 'P7', 'P8', 'P9'], ['P1', 'P2', 'P3', 'P6']),
  unstable: /* @__PURE__ */ kind(
    'unstable',
    ['P6', 'P7', 'P8', 'P9', 'U10'],
    ['P3', 'P4', 'P5', 'U6', 'U7', 'U8'],
  ),
  'harsh-edge': /* @__PURE__ */ kind(
    'harsh-edge',
    ['U8', 'U9', 'U6', 'U7', 'P6', 'P7'],
    ['P2', 'P3', 'P5', 'P8', 'P9', 'U1', 'U2', 'U3', 'U4', 'U5', 'U10'],
  ),
  overheating: /* @__PURE__ */ kind(
    'overheating',
    ['U4', 'P4'],
    ['P1', 'P2', 'P3', 'P5', 'P6', 'P7', 'U1', 'U2', 'U3', 'U5', 'U6', 'U7', 'U10'],
  ),
  'too-tight': /* @__PURE__ */ kind(
    'too-tight',
    ['U1', 'U2', 'U3', 'U4', 'U5', 'U6', 'U7'],
    ['U8', 'U9', 'U10', 'P1', 'P2', 'P3', 'P4', 'P5', 'P6', 'P7'],
  ),
  'too-loose': /* @__PURE__ */ kind(
    'too-loose',
    ['U1', 'U4', 'U5', 'U6', 'U7', 'U8', 'U10'],
    ['U2', 'U3', 'U9'],
  ),
  slipping: /* @__PURE__ */ kind(
    'slipping',
    ['P1', 'P2', 'P3', 'P4', 'P5', 'P9'],
    ['P6', 'P7', 'P8'],
  ),
  stiff: /* @__PURE__ */ kind('stiff', ['U4', 'P3', 'P4'], ['P1', 'P2', 'P5', 'P6', 'P7']),
  catching: /* @__PURE__ */ kind(
    'catching',
    ['U1', 'P1', 'P2'],
    ['P3', 'P4', 'P5', 'P7', 'P8', 'P9'],
  ),
  noise: /* @__PURE__ */ kind(
    'noise',
    [],
    ['P1', 'P2', 'P3', 'P4', 'P5', 'P6', 'P7', 'P8', 'P9', 'U4', 'U5', 'U10'],
  ),
  debris: /* @__PURE__ */ kind(
    'debris',
    ['U8'],
    ['U4', 'U5', 'U9', 'P1', 'P2', 'P3', 'P4', 'P5', 'P6', 'P7', 'P8', 'P9'],
  ),
  pain: /* @__PURE__ */ kind('pain', [], 'all', true),
};

/** Complaints of heat and wet; sweat has no kind of its own, and a hot spot is friction. */
export const heatKinds: readonly ComplaintKind[] = ['overheating'];

/**
 * The kinds to offer for a zone: those that belong there first, then the plausible ones. Each list is
 * in the order of `complaintKinds`. `first` is empty for no zone.
 */
export const kindsForZone = (
  zone: ZoneCode,
): { readonly first: readonly ComplaintKind[]; readonly also: readonly ComplaintKind[] } => {
  const first = complaintKinds.filter((id) => kindsOfComplaint[id].first.includes(zone));
  const also = complaintKinds.filter((id) => {
    const { also: zones } = kindsOfComplaint[id];
    return !first.includes(id) && (zones === 'all' || zones.includes(zone));
  });
  return { first, also };
};

/** True where a kind can sensibly be felt in a zone; a log may hold other combinations. */
export const isPlausible = (id: ComplaintKind, zone: ZoneCode): boolean => {
  const { first, also } = kindsOfComplaint[id];
  return first.includes(zone) || also === 'all' || also.includes(zone);
};

/** Every plausible pair of zone and kind: the cells that a review looks over. */
export const plausibleCells = (): readonly (readonly [ZoneCode, ComplaintKind])[] =>
  zoneCodes.flatMap((zone) =>
    complaintKinds.filter((id) => isPlausible(id, zone)).map((id) => [zone, id] as const),
  );
