/**
 * How the sole of a left foot is drawn, seen from above: its outline, cut into zones by the cut lines.
 *
 * The outline is our own. It is looked at as one looks at one's own feet: toes up, the medial side of
 * the left foot to the right.
 */
import { flatten, reversed, type Curve, type Point, type Stretch } from './geometry.ts';
import { soleCuts, type CrossCut, type ZoneCode } from './zones.ts';

/** The back of the heel and the tip of the toes: where the medial and the lateral edge meet. */
const heel: Point = [103, 468];
const toe: Point = [128, 12];

const medialCurves: readonly Curve[] = [
  [
    [144, 468],
    [171, 440],
    [170, 396],
  ],
  [
    [169, 350],
    [156, 318],
    [157, 276],
  ],
  [
    [158, 228],
    [188, 192],
    [188, 136],
  ],
  [
    [188, 82],
    [170, 12],
    [128, 12],
  ],
];

const lateralCurves: readonly Curve[] = [
  [
    [62, 468],
    [36, 440],
    [35, 396],
  ],
  [
    [34, 350],
    [27, 322],
    [24, 280],
  ],
  [
    [21, 240],
    [12, 222],
    [12, 186],
  ],
  [
    [12, 98],
    [54, 12],
    [128, 12],
  ],
];

/** From heel to toe. */
const medialEdge = /* @__PURE__ */ flatten(heel, medialCurves);
const lateralEdge = /* @__PURE__ */ flatten(heel, lateralCurves);

const yAt = (length: number): number => heel[1] + length * (toe[1] - heel[1]);

/** The point of an edge at a height. Edges rise all the way, so there is one. */
const edgeAt = (edge: readonly Point[], y: number): number => {
  for (let index = 1; index < edge.length; index += 1) {
    const [x0, y0] = edge[index - 1] as Point;
    const [x1, y1] = edge[index] as Point;
    if (y >= y1) return y0 === y1 ? x0 : x0 + ((x1 - x0) * (y0 - y)) / (y0 - y1);
  }
  return toe[0];
};

/** Where a share of foot length and a share of the width there, from the medial side, lie in the drawing. */
export const solePoint = (length: number, width: number): Point => {
  const y = yAt(length);
  const medial = edgeAt(medialEdge, y);
  return [medial + width * (edgeAt(lateralEdge, y) - medial), y];
};

const lengthOf = (cut: CrossCut, width: number): number => {
  for (let index = 1; index < cut.length; index += 1) {
    const [w0, l0] = cut[index - 1] as readonly [number, number];
    const [w1, l1] = cut[index] as readonly [number, number];
    if (width <= w1) return l0 + ((l1 - l0) * (width - w0)) / (w1 - w0);
  }
  throw new RangeError(`A cross cut ends before width ${width}`);
};

/** Widths at which every cross cut has a corner, so that neighbours share each corner. */
const grid = /* @__PURE__ */ Array.from({ length: 101 }, (_, index) => index / 100);

const crossLine = (cut: CrossCut, from: number, to: number): Point[] =>
  [from, ...grid.filter((width) => width > from && width < to), to].map((width) =>
    solePoint(lengthOf(cut, width), width),
  );

const sideSteps = 40;

/** A line along a constant share of the width; close steps at its ends, where the outline turns. */
const sideLine = (width: number, from: number, to: number): Point[] =>
  Array.from({ length: sideSteps + 1 }, (_, step) => {
    const eased = (1 - Math.cos((Math.PI * step) / sideSteps)) / 2;
    return solePoint(from + (to - from) * eased, width);
  });

const outlineStretch = (edge: readonly Point[], from: Point, to: Point): Point[] => [
  from,
  ...edge.filter(([, y]) => y < from[1] && y > to[1]),
  to,
];

/** A side of a cell from its rear to its front. */
const side = (width: number, rear: CrossCut, front: CrossCut): Stretch => {
  const from = lengthOf(rear, width);
  const to = lengthOf(front, width);
  if (width !== 0 && width !== 1) return { points: sideLine(width, from, to), outer: false };
  const edge = width === 0 ? medialEdge : lateralEdge;
  return {
    points: outlineStretch(edge, solePoint(from, width), solePoint(to, width)),
    outer: true,
  };
};

/** What lies between two cross cuts and two widths, walked with its outside to the right. */
const cell = (rear: CrossCut, front: CrossCut, medial: number, lateral: number): Stretch[] => [
  side(medial, rear, front),
  { points: crossLine(front, medial, lateral), outer: false },
  reversed(side(lateral, rear, front)),
  reversed({ points: crossLine(rear, medial, lateral), outer: false }),
];

const heelEnd: CrossCut = [
  [0, 0],
  [1, 0],
];
const toeEnd: CrossCut = [
  [0, 1],
  [1, 1],
];

/** The edges of the nine zones, each walked with its outside to the right. */
export const soleStretches = (): readonly (readonly [ZoneCode, readonly Stretch[]])[] => {
  const { heelFront, ballRear, ballFront, heelMiddle, waistMiddle } = soleCuts;
  const { ballMedial, ballLateral, toes } = soleCuts;
  return [
    ['P1', cell(ballFront, toeEnd, 0, toes)],
    ['P2', cell(ballFront, toeEnd, toes, 1)],
    ['P3', cell(ballRear, ballFront, 0, ballMedial)],
    ['P4', cell(ballRear, ballFront, ballMedial, ballLateral)],
    ['P5', cell(ballRear, ballFront, ballLateral, 1)],
    ['P6', cell(heelFront, ballRear, 0, waistMiddle)],
    ['P7', cell(heelFront, ballRear, waistMiddle, 1)],
    ['P8', cell(heelEnd, heelFront, 0, heelMiddle)],
    ['P9', cell(heelEnd, heelFront, heelMiddle, 1)],
  ];
};

/** The whole sole, walked from the heel along the medial side. */
export const soleOutline = (): readonly Point[] => [
  ...medialEdge,
  ...[...lateralEdge].reverse().slice(1, -1),
];

/** The footprint inside, so that toes, ball, arch and heel are recognised: it takes no taps. */
export const solePrint: readonly string[] = [
  'M103 451C78 451 57 428 56 394C55 356 56 330 51 296C46 256 28 224 29 186C30 150 46 122 76 108C112 92 170 98 172 146C173 190 139 226 138 276C137 318 151 352 150 392C149 428 129 451 103 451Z',
  'M151 90C138 90 133 78 135 60C137 42 145 33 154 35C165 38 171 54 169 68C167 82 161 90 151 90Z',
  'M113 82C104 82 100 73 101 61C102 50 108 43 115 44C122 45 126 55 125 65C124 75 120 82 113 82Z',
  'M88 89C80 89 75 82 76 71C77 60 82 54 88 55C95 56 98 64 97 73C96 82 94 89 88 89Z',
  'M65 101C58 102 54 96 54 86C54 77 59 71 64 72C70 73 73 80 72 88C71 96 70 100 65 101Z',
  'M46 118C41 119 37 113 38 105C39 97 43 92 47 93C52 94 54 101 53 107C52 113 50 117 46 118Z',
];
