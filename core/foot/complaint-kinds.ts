/**
 * What a complaint can be, in the trade's kinds: for which zones each is plausible and offered first,
 * and which count as pain.
 *
 * A blister or broken skin is no kind: it is a second answer beside the kind (the record's `skin`), so
 * that a hot spot that became a blister stays one complaint. The special words of a zone (arch
 * pressure, lace bite) replace plain pressure there, so that one feeling is not counted under two
 * names. Plausibility: common practice, no source.
 */
import { zoneCodes, type Words, type ZoneCode } from './zones.ts';

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
  readonly name: Words;
  /** One line that tells it from its neighbours. */
  readonly meaning: Words;
  /** Counts against the allowed rate for pain (1 % of runs by default) instead of that for complaints. */
  readonly painLike: boolean;
  /** Offered first for these zones. */
  readonly first: readonly ZoneCode[];
  /** Plausible for these as well; `all` for every zone. */
  readonly also: readonly ZoneCode[] | 'all';
};

const kind = (
  id: ComplaintKind,
  name: Words,
  meaning: Words,
  first: readonly ZoneCode[],
  also: readonly ZoneCode[] | 'all',
  painLike = false,
): KindOfComplaint => ({ id, name, meaning, painLike, first, also });

/** Every kind by its id. Pain-like: pain and numbness (judgement, no source). */
export const kindsOfComplaint: Readonly<Record<ComplaintKind, KindOfComplaint>> = {
  'heel-slip': /* @__PURE__ */ kind(
    'heel-slip',
    { en: 'Heel slip', zh: '掉跟' },
    { en: 'the heel lifts out of the shoe', zh: '后跟在鞋内上下滑动' },
    ['U10', 'U9'],
    ['U8', 'P8', 'P9'],
  ),
  'hot-spot': /* @__PURE__ */ kind(
    'hot-spot',
    { en: 'Hot spot', zh: '局部发热' },
    { en: 'a burning spot, before a blister', zh: '局部灼热，水泡前兆' },
    ['P1', 'P2', 'P3', 'P4', 'P5', 'P6', 'P8', 'P9', 'U2', 'U3'],
    'all',
  ),
  rubbing: /* @__PURE__ */ kind(
    'rubbing',
    { en: 'Rubbing', zh: '磨脚' },
    { en: 'something moves against the skin', zh: '部件与皮肤摩擦' },
    ['U2', 'U3', 'U4', 'U5', 'U6', 'U7', 'U8', 'U9', 'U10', 'P6'],
    'all',
  ),
  pressure: /* @__PURE__ */ kind(
    'pressure',
    { en: 'Pressure', zh: '压迫' },
    { en: 'presses in one place, without movement', zh: '局部顶压，无相对移动' },
    ['P3', 'P4', 'P5', 'P7', 'U2', 'U3', 'U4', 'U6', 'U7', 'U8', 'U9', 'U10'],
    ['P1', 'P2', 'P8', 'P9', 'U1'],
  ),
  'toe-bang': /* @__PURE__ */ kind(
    'toe-bang',
    { en: 'Toe bang', zh: '顶趾' },
    { en: 'toes hit the front; black nails', zh: '脚趾撞鞋头、黑趾甲' },
    ['U1'],
    ['P1', 'P2'],
  ),
  'lace-bite': /* @__PURE__ */ kind(
    'lace-bite',
    { en: 'Lace bite', zh: '鞋带压脚背' },
    { en: 'laces or tongue press on the instep', zh: '鞋带或鞋舌压迫脚背' },
    ['U5'],
    [],
  ),
  numbness: /* @__PURE__ */ kind(
    'numbness',
    { en: 'Numbness', zh: '麻木' },
    { en: 'numb, or pins and needles', zh: '麻木或针刺感' },
    ['P1', 'P2', 'P3', 'P4', 'P5', 'U4', 'U5'],
    'all',
    true,
  ),
  'arch-pressure': /* @__PURE__ */ kind(
    'arch-pressure',
    { en: 'Arch pressure', zh: '顶足弓' },
    { en: 'the shoe pushes into the arch', zh: '鞋底顶压足弓' },
    ['P6'],
    [],
  ),
  'bottoming-out': /* @__PURE__ */ kind(
    'bottoming-out',
    { en: 'Bottoming out', zh: '踩到底' },
    { en: 'the foam gives way to the ground', zh: '中底被压到底，感到地面' },
    ['P3', 'P4', 'P8', 'P9'],
    ['P1', 'P2', 'P5', 'P6', 'P7'],
  ),
  harsh: /* @__PURE__ */ kind(
    'harsh',
    { en: 'Harsh landing', zh: '着地偏硬' },
    { en: 'too firm when landing', zh: '着地冲击偏硬' },
    ['P4', 'P5', 'P7', 'P8', 'P9'],
    ['P1', 'P2', 'P3', 'P6'],
  ),
  unstable: /* @__PURE__ */ kind(
    'unstable',
    { en: 'Unstable', zh: '不稳' },
    { en: 'rolls or tips to a side', zh: '左右摇晃、侧翻感' },
    ['P6', 'P7', 'P8', 'P9', 'U10'],
    ['P3', 'P4', 'P5', 'U6', 'U7', 'U8'],
  ),
  'harsh-edge': /* @__PURE__ */ kind(
    'harsh-edge',
    { en: 'Harsh edge', zh: '边缘硌脚' },
    { en: 'an edge or a lip is felt', zh: '能感到边缘或唇边' },
    ['U8', 'U9', 'U6', 'U7', 'P6', 'P7'],
    ['P2', 'P3', 'P5', 'P8', 'P9', 'U1', 'U2', 'U3', 'U4', 'U5', 'U10'],
  ),
  overheating: /* @__PURE__ */ kind(
    'overheating',
    { en: 'Overheating', zh: '闷热' },
    { en: 'hot or sweaty', zh: '闷热、出汗' },
    ['U4', 'P4'],
    ['P1', 'P2', 'P3', 'P5', 'P6', 'P7', 'U1', 'U2', 'U3', 'U5', 'U6', 'U7', 'U10'],
  ),
  'too-tight': /* @__PURE__ */ kind(
    'too-tight',
    { en: 'Too tight', zh: '过紧' },
    { en: 'squeezes the foot', zh: '挤脚' },
    ['U1', 'U2', 'U3', 'U4', 'U5', 'U6', 'U7'],
    ['U8', 'U9', 'U10', 'P1', 'P2', 'P3', 'P4', 'P5', 'P6', 'P7'],
  ),
  'too-loose': /* @__PURE__ */ kind(
    'too-loose',
    { en: 'Too loose', zh: '过松' },
    { en: 'the foot moves about', zh: '脚在鞋内晃动' },
    ['U1', 'U4', 'U5', 'U6', 'U7', 'U8', 'U10'],
    ['U2', 'U3', 'U9'],
  ),
  slipping: /* @__PURE__ */ kind(
    'slipping',
    { en: 'Poor grip', zh: '打滑' },
    { en: 'the outsole slips on the ground', zh: '大底在地面打滑' },
    ['P1', 'P2', 'P3', 'P4', 'P5', 'P9'],
    ['P6', 'P7', 'P8'],
  ),
  stiff: /* @__PURE__ */ kind(
    'stiff',
    { en: 'Stiff', zh: '偏硬难弯折' },
    { en: 'does not bend where the foot bends', zh: '弯折位不顺' },
    ['U4', 'P3', 'P4'],
    ['P1', 'P2', 'P5', 'P6', 'P7'],
  ),
  catching: /* @__PURE__ */ kind(
    'catching',
    { en: 'Catching', zh: '绊地' },
    { en: 'an edge or the toe catches the ground', zh: '鞋头或边缘绊到地面' },
    ['U1', 'P1', 'P2'],
    ['P3', 'P4', 'P5', 'P7', 'P8', 'P9'],
  ),
  noise: /* @__PURE__ */ kind(
    'noise',
    { en: 'Noise', zh: '异响' },
    { en: 'squeaks, clicks or slaps', zh: '吱响、咔哒或拍地声' },
    [],
    ['P1', 'P2', 'P3', 'P4', 'P5', 'P6', 'P7', 'P8', 'P9', 'U4', 'U5', 'U10'],
  ),
  debris: /* @__PURE__ */ kind(
    'debris',
    { en: 'Debris gets in', zh: '进异物' },
    { en: 'stones or sand in the shoe or the tread', zh: '石子或沙进入鞋内或花纹' },
    ['U8'],
    ['U4', 'U5', 'U9', 'P1', 'P2', 'P3', 'P4', 'P5', 'P6', 'P7', 'P8', 'P9'],
  ),
  pain: /* @__PURE__ */ kind(
    'pain',
    { en: 'Pain', zh: '疼痛' },
    { en: 'it hurts', zh: '疼痛' },
    [],
    'all',
    true,
  ),
};

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
