/**
 * Which zones a foot has, what they are called, and where they begin and end.
 *
 * Nine zones of the sole (P) and ten of the upper (U), the same for both feet. The cut lines join
 * published plantar masks (forefoot 51-81 % of foot length: Forghany et al., J Foot Ankle Res 2018)
 * with the last maker's landmarks; the synthesis is common practice, no source. They are data: a
 * group that cuts elsewhere changes numbers, not code.
 */

/** The same words in each language that Pairlog speaks. */
export type Words = { readonly en: string; readonly zh: string };

export const zoneCodes = [
  'P1',
  'P2',
  'P3',
  'P4',
  'P5',
  'P6',
  'P7',
  'P8',
  'P9',
  'U1',
  'U2',
  'U3',
  'U4',
  'U5',
  'U6',
  'U7',
  'U8',
  'U9',
  'U10',
] as const;
export type ZoneCode = (typeof zoneCodes)[number];

export const footViews = ['sole', 'upper'] as const;
export type FootView = (typeof footViews)[number];

/** From … to, as shares of 1. */
export type Span = readonly [from: number, to: number];

/** The part of the upper's surface that a zone lies on; on the sole the width says it. */
export type UpperSurface =
  'front' | 'dorsum' | 'medial-wall' | 'lateral-wall' | 'collar-edge' | 'top-edge' | 'below-collar';

/**
 * Where a zone lies. `length`: share of foot length from the back of the heel. `width` (sole):
 * share of the width at that place, from the medial side. `surface` (upper).
 */
export type Boundary =
  | { readonly length: Span; readonly width: Span }
  | { readonly length: Span; readonly surface: UpperSurface };

export const rollUpIds = [
  'forefoot',
  'midfoot',
  'rearfoot',
  'forepart-upper',
  'midfoot-upper',
  'rear-upper',
] as const;
export type RollUpId = (typeof rollUpIds)[number];

export type Zone = {
  readonly code: ZoneCode;
  readonly view: FootView;
  /** Short, as a tester reads it. */
  readonly name: Words;
  /** The parts of the shoe there, in the words of the trade. */
  readonly trade: Words;
  /** The parts of the foot there. */
  readonly anatomy: Words;
  readonly boundary: Boundary;
  readonly rollUp: RollUpId;
};

const sole = (
  code: ZoneCode,
  rollUp: RollUpId,
  length: Span,
  width: Span,
  name: Words,
  trade: Words,
  anatomy: Words,
): Zone => ({ code, view: 'sole', name, trade, anatomy, boundary: { length, width }, rollUp });

const upper = (
  code: ZoneCode,
  rollUp: RollUpId,
  length: Span,
  surface: UpperSurface,
  name: Words,
  trade: Words,
  anatomy: Words,
): Zone => ({ code, view: 'upper', name, trade, anatomy, boundary: { length, surface }, rollUp });

/** Every zone by its code. */
export const zones: Readonly<Record<ZoneCode, Zone>> = {
  P1: /* @__PURE__ */ sole(
    'P1',
    'forefoot',
    [0.81, 1],
    [0, 0.35],
    { en: 'big toe', zh: '大脚趾' },
    { en: 'forepart, big-toe pad', zh: '前掌大趾位' },
    { en: 'hallux', zh: '拇趾' },
  ),
  P2: /* @__PURE__ */ sole(
    'P2',
    'forefoot',
    [0.81, 1],
    [0.35, 1],
    { en: 'lesser toes', zh: '二至五趾' },
    { en: 'forepart', zh: '前掌小趾位' },
    { en: 'toes 2 to 5', zh: '第二至第五趾' },
  ),
  P3: /* @__PURE__ */ sole(
    'P3',
    'forefoot',
    [0.6, 0.81],
    [0, 0.3],
    { en: 'medial ball', zh: '前掌内侧' },
    { en: 'ball, medial forefoot', zh: '前掌内侧（第一跖趾位）' },
    { en: 'first metatarsal head', zh: '第一跖骨头' },
  ),
  P4: /* @__PURE__ */ sole(
    'P4',
    'forefoot',
    [0.6, 0.81],
    [0.3, 0.81],
    { en: 'central ball', zh: '前掌中部' },
    { en: 'forefoot, tread', zh: '前掌中部' },
    { en: 'metatarsal heads 2 to 4', zh: '第二至第四跖骨头' },
  ),
  P5: /* @__PURE__ */ sole(
    'P5',
    'forefoot',
    [0.55, 0.76],
    [0.81, 1],
    { en: 'lateral ball', zh: '前掌外侧' },
    { en: 'lateral forefoot', zh: '前掌外侧（第五跖趾位）' },
    { en: 'fifth metatarsal head', zh: '第五跖骨头' },
  ),
  P6: /* @__PURE__ */ sole(
    'P6',
    'midfoot',
    [0.31, 0.6],
    [0, 0.5],
    { en: 'medial arch', zh: '足弓内侧' },
    { en: 'arch, shank, medial sidewall', zh: '内腰、腰窝、中底内侧墙' },
    { en: 'medial longitudinal arch', zh: '内侧纵弓' },
  ),
  P7: /* @__PURE__ */ sole(
    'P7',
    'midfoot',
    [0.31, 0.55],
    [0.5, 1],
    { en: 'lateral midfoot', zh: '中足外侧' },
    { en: 'lateral waist', zh: '外腰' },
    { en: 'cuboid, base of fifth metatarsal', zh: '骰骨、第五跖骨基底' },
  ),
  P8: /* @__PURE__ */ sole(
    'P8',
    'rearfoot',
    [0, 0.31],
    [0, 0.5],
    { en: 'medial heel', zh: '后跟内侧' },
    { en: 'medial rearfoot, post side', zh: '后跟内侧（支撑侧）' },
    { en: 'medial calcaneus', zh: '跟骨内侧' },
  ),
  P9: /* @__PURE__ */ sole(
    'P9',
    'rearfoot',
    [0, 0.31],
    [0.5, 1],
    { en: 'lateral heel', zh: '后跟外侧' },
    { en: 'lateral rearfoot, landing bevel', zh: '后跟外侧（着地斜角）' },
    { en: 'lateral calcaneus', zh: '跟骨外侧' },
  ),
  U1: /* @__PURE__ */ upper(
    'U1',
    'forepart-upper',
    [0.9, 1],
    'front',
    { en: 'toe tip', zh: '鞋头前端' },
    { en: 'toe cap, toe bumper, toe spring', zh: '鞋头片、防撞头、鞋头翘度' },
    { en: 'tips and nails of the toes', zh: '趾尖、趾甲' },
  ),
  U2: /* @__PURE__ */ upper(
    'U2',
    'forepart-upper',
    [0.65, 0.9],
    'medial-wall',
    { en: 'medial toe box', zh: '鞋头内侧' },
    { en: 'toe box, medial mudguard', zh: '鞋头内侧、内侧护片' },
    { en: 'bunion area, first toe joint', zh: '拇囊区、第一跖趾关节内侧' },
  ),
  U3: /* @__PURE__ */ upper(
    'U3',
    'forepart-upper',
    [0.6, 0.85],
    'lateral-wall',
    { en: 'lateral toe box', zh: '鞋头外侧' },
    { en: 'toe box, lateral mudguard', zh: '鞋头外侧、外侧护片' },
    { en: 'little toe, fifth toe joint', zh: '小趾、第五跖趾关节外侧' },
  ),
  U4: /* @__PURE__ */ upper(
    'U4',
    'forepart-upper',
    [0.6, 0.78],
    'dorsum',
    { en: 'vamp flex line', zh: '前帮弯折线' },
    { en: 'vamp, toe break, overlay edge', zh: '前帮、弯折位、贴片边缘' },
    { en: 'top of the toe joints', zh: '跖趾关节背侧' },
  ),
  U5: /* @__PURE__ */ upper(
    'U5',
    'midfoot-upper',
    [0.38, 0.6],
    'dorsum',
    { en: 'instep', zh: '脚背' },
    { en: 'throat, eyestay, tongue, laces', zh: '鞋喉、眼片、鞋舌、鞋带' },
    { en: 'instep: navicular, first ray, talus', zh: '足背：舟骨、第一跖列、距骨' },
  ),
  U6: /* @__PURE__ */ upper(
    'U6',
    'midfoot-upper',
    [0.3, 0.6],
    'medial-wall',
    { en: 'medial midfoot wall', zh: '鞋身内腰' },
    { en: 'medial quarter, saddle', zh: '内侧后帮、内腰鞍片' },
    { en: 'medial midfoot, navicular side', zh: '中足内侧、舟骨侧' },
  ),
  U7: /* @__PURE__ */ upper(
    'U7',
    'midfoot-upper',
    [0.3, 0.6],
    'lateral-wall',
    { en: 'lateral midfoot wall', zh: '鞋身外腰' },
    { en: 'lateral quarter, saddle', zh: '外侧后帮、外腰鞍片' },
    { en: 'lateral midfoot, base of fifth metatarsal', zh: '中足外侧、第五跖骨基底' },
  ),
  U8: /* @__PURE__ */ upper(
    'U8',
    'rear-upper',
    [0.12, 0.35],
    'collar-edge',
    { en: 'ankle bones', zh: '脚踝' },
    { en: 'collar, topline', zh: '鞋领口、鞋口线' },
    { en: 'medial and lateral malleolus', zh: '内踝、外踝' },
  ),
  U9: /* @__PURE__ */ upper(
    'U9',
    'rear-upper',
    [0, 0.06],
    'top-edge',
    { en: 'Achilles tendon', zh: '跟腱' },
    { en: 'heel tab, heel notch, back collar', zh: '后领、后领凹口、后提片' },
    { en: 'Achilles tendon', zh: '跟腱' },
  ),
  U10: /* @__PURE__ */ upper(
    'U10',
    'rear-upper',
    [0, 0.25],
    'below-collar',
    { en: 'heel cup', zh: '后跟杯' },
    { en: 'heel counter, foxing, backstay', zh: '后套（港宝）、后护片、后包片' },
    { en: 'back and sides of the heel bone', zh: '跟骨后部及两侧' },
  ),
};

/** Groups of zones for tests that go from coarse to fine. */
export const rollUps: Readonly<
  Record<RollUpId, { readonly name: Words; readonly zones: readonly ZoneCode[] }>
> = {
  forefoot: { name: { en: 'forefoot', zh: '前掌' }, zones: ['P1', 'P2', 'P3', 'P4', 'P5'] },
  midfoot: { name: { en: 'midfoot', zh: '中足' }, zones: ['P6', 'P7'] },
  rearfoot: { name: { en: 'rearfoot', zh: '后跟' }, zones: ['P8', 'P9'] },
  'forepart-upper': {
    name: { en: 'forepart of the upper', zh: '鞋面前段' },
    zones: ['U1', 'U2', 'U3', 'U4'],
  },
  'midfoot-upper': {
    name: { en: 'midfoot of the upper', zh: '鞋面中段' },
    zones: ['U5', 'U6', 'U7'],
  },
  'rear-upper': { name: { en: 'rear of the upper', zh: '鞋面后段' }, zones: ['U8', 'U9', 'U10'] },
};

/** The zones of one view, in the order of their codes. */
export const zonesOfView = (view: FootView): readonly ZoneCode[] =>
  zoneCodes.filter((code) => zones[code].view === view);

/** A cut across the sole: where it runs in the length, at shares of the width from the medial side. */
export type CrossCut = readonly (readonly [width: number, length: number])[];

/**
 * The lines that cut the whole sole into its nine zones. The boxes of the table above leave two
 * corners free, because the line of the ball runs obliquely (first joint 72.5 %, fifth 63.5 % of
 * length); the cross cuts share these corners between the neighbours (judgement, no source).
 */
export const soleCuts = {
  heelFront: [
    [0, 0.31],
    [1, 0.31],
  ] as CrossCut,
  ballRear: [
    [0, 0.6],
    [0.5, 0.6],
    [0.81, 0.55],
    [1, 0.55],
  ] as CrossCut,
  ballFront: [
    [0, 0.81],
    [0.81, 0.81],
    [1, 0.76],
  ] as CrossCut,
  /** Lengthwise cuts as shares of the width from the medial side. */
  heelMiddle: 0.5,
  waistMiddle: 0.5,
  ballMedial: 0.3,
  ballLateral: 0.81,
  toes: 0.35,
} as const;
