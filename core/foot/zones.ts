/**
 * Which zones a foot has, and where they begin and end. What they are called: the glossary of each language.
 *
 * Nine zones of the sole (P) and ten of the upper (U), the same for both feet. The cut lines join
 * published plantar masks (forefoot 51-81 % of foot length: Forghany et al., J Foot Ankle Res 2018)
 * with the last maker's landmarks; the synthesis is common practice, no source. They are data: a
 * group that cuts elsewhere changes numbers, not code.
 */

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
  readonly boundary: Boundary;
  readonly rollUp: RollUpId;
};

const sole = (code: ZoneCode, rollUp: RollUpId, length: Span, width: Span): Zone => ({
  code,
  view: 'sole',
  boundary: { length, width },
  rollUp,
});

const upper = (code: ZoneCode, rollUp: RollUpId, length: Span, surface: UpperSurface): Zone => ({
  code,
  view: 'upper',
  boundary: { length, surface },
  rollUp,
});

/** Every zone by its code. */
export const zones: Readonly<Record<ZoneCode, Zone>> = {
  P1: /* @__PURE__ */ sole('P1', 'forefoot', [0.81, 1], [0, 0.35]),
  P2: /* @__PURE__ */ sole('P2', 'forefoot', [0.81, 1], [0.35, 1]),
  P3: /* @__PURE__ */ sole('P3', 'forefoot', [0.6, 0.81], [0, 0.3]),
  P4: /* @__PURE__ */ sole('P4', 'forefoot', [0.6, 0.81], [0.3, 0.81]),
  P5: /* @__PURE__ */ sole('P5', 'forefoot', [0.55, 0.76], [0.81, 1]),
  P6: /* @__PURE__ */ sole('P6', 'midfoot', [0.31, 0.6], [0, 0.5]),
  P7: /* @__PURE__ */ sole('P7', 'midfoot', [0.31, 0.55], [0.5, 1]),
  P8: /* @__PURE__ */ sole('P8', 'rearfoot', [0, 0.31], [0, 0.5]),
  P9: /* @__PURE__ */ sole('P9', 'rearfoot', [0, 0.31], [0.5, 1]),
  U1: /* @__PURE__ */ upper('U1', 'forepart-upper', [0.9, 1], 'front'),
  U2: /* @__PURE__ */ upper('U2', 'forepart-upper', [0.65, 0.9], 'medial-wall'),
  U3: /* @__PURE__ */ upper('U3', 'forepart-upper', [0.6, 0.85], 'lateral-wall'),
  U4: /* @__PURE__ */ upper('U4', 'forepart-upper', [0.6, 0.78], 'dorsum'),
  U5: /* @__PURE__ */ upper('U5', 'midfoot-upper', [0.38, 0.6], 'dorsum'),
  U6: /* @__PURE__ */ upper('U6', 'midfoot-upper', [0.3, 0.6], 'medial-wall'),
  U7: /* @__PURE__ */ upper('U7', 'midfoot-upper', [0.3, 0.6], 'lateral-wall'),
  U8: /* @__PURE__ */ upper('U8', 'rear-upper', [0.12, 0.35], 'collar-edge'),
  U9: /* @__PURE__ */ upper('U9', 'rear-upper', [0, 0.06], 'top-edge'),
  U10: /* @__PURE__ */ upper('U10', 'rear-upper', [0, 0.25], 'below-collar'),
};

/** Groups of zones for tests that go from coarse to fine. */
export const rollUps: Readonly<Record<RollUpId, { readonly zones: readonly ZoneCode[] }>> = {
  forefoot: { zones: ['P1', 'P2', 'P3', 'P4', 'P5'] },
  midfoot: { zones: ['P6', 'P7'] },
  rearfoot: { zones: ['P8', 'P9'] },
  'forepart-upper': {
    zones: ['U1', 'U2', 'U3', 'U4'],
  },
  'midfoot-upper': {
    zones: ['U5', 'U6', 'U7'],
  },
  'rear-upper': { zones: ['U8', 'U9', 'U10'] },
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
