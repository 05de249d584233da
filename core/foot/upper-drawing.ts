/**
 * How the upper of a left foot is drawn: from above, with its walls folded out, so that each zone can
 * be tapped. Toes up, the medial side to the right, as one looks at one's own feet.
 *
 * Borders are named curves that neighbouring zones share, so that zones meet without gap or overlap.
 * The drawing is our own; small zones (toe tip, Achilles) are larger than life for the thumb.
 */
import { flatten, reversed, type Curve, type Point, type Stretch } from './geometry.ts';
import type { ZoneCode } from './zones.ts';

const line = (start: Point, curves: readonly Curve[], outer = false): Stretch => ({
  points: flatten(start, curves),
  outer,
});

// Corners, medial (m) and lateral (l), from the toe to the heel.
const toe: Point = [123, 19];
const capM: Point = [171, 76];
const capL: Point = [37, 92];
const boxM: Point = [182, 178];
const boxL: Point = [18, 194];
const heelM: Point = [163, 334];
const heelL: Point = [36, 334];
const heel: Point = [103, 462];
const vampM: Point = [138, 70];
const vampL: Point = [78, 75];
const throatM: Point = [133, 190];
const throatL: Point = [66, 197];
const collarM: Point = [134, 290];
const collarL: Point = [62, 290];
const sideM: Point = [144, 340];
const sideL: Point = [52, 340];
const tabM: Point = [133, 391];
const tabL: Point = [63, 391];

/** The edges of the ten zones, each walked with its outside to the right. */
export const upperStretches = (): readonly (readonly [ZoneCode, readonly Stretch[]])[] => {
  // The outline, clockwise as seen: up the lateral side, down the medial one.
  const outLateralHeel = line(
    heel,
    [
      [
        [64, 462],
        [40, 434],
        [40, 392],
      ],
      [[40, 370], [37, 352], heelL],
    ],
    true,
  );
  const outLateralWaist = line(heelL, [[[32, 290], [18, 240], boxL]], true);
  const outLateralBox = line(boxL, [[[18, 152], [23, 118], capL]], true);
  const outLateralCap = line(capL, [[[55, 58], [86, 19], toe]], true);
  const outMedialCap = line(toe, [[[150, 19], [165, 44], capM]], true);
  const outMedialBox = line(capM, [[[178, 109], [185, 142], boxM]], true);
  const outMedialWaist = line(boxM, [[[179, 228], [162, 276], heelM]], true);
  const outMedialHeel = line(
    heelM,
    [
      [
        [164, 352],
        [166, 372],
        [166, 392],
      ],
      [[166, 434], [142, 462], heel],
    ],
    true,
  );

  // Borders inside.
  const capLateral = line(capL, [[[52, 86], [66, 79], vampL]]);
  const capFront = line(vampL, [[[98, 68], [118, 67], vampM]]);
  const capMedial = line(vampM, [[[150, 72], [161, 74], capM]]);
  const vampLateral = line(vampL, [[[69, 112], [65, 158], throatL]]);
  const vampMedial = line(vampM, [[[144, 106], [142, 150], throatM]]);
  const throat = line(throatL, [[[72, 164], [126, 158], throatM]]);
  const quarterLateral = line(boxL, [[[34, 193], [51, 194], throatL]]);
  const quarterMedial = line(throatM, [[[148, 184], [166, 179], boxM]]);
  const eyestayLateral = line(throatL, [[[62, 228], [61, 262], collarL]]);
  const eyestayMedial = line(throatM, [[[137, 226], [137, 262], collarM]]);
  const tongue = line(collarL, [
    [
      [67, 286],
      [74, 287],
      [78, 294],
    ],
    [
      [84, 316],
      [112, 316],
      [118, 294],
    ],
    [[122, 287], [129, 286], collarM],
  ]);
  const collarLateral = line(collarL, [[[57, 308], [53, 324], sideL]]);
  const collarMedial = line(collarM, [[[139, 308], [143, 324], sideM]]);
  const rearLateral = line(sideL, [[[50, 362], [53, 382], tabL]]);
  const rearMedial = line(sideM, [[[146, 362], [143, 382], tabM]]);
  const cupLateral = line(heelL, [[[39, 338], [45, 340], sideL]]);
  const cupMedial = line(sideM, [[[151, 340], [158, 338], heelM]]);
  const tabFront = line(tabL, [
    [
      [74, 382],
      [86, 377],
      [98, 377],
    ],
    [[110, 377], [122, 382], tabM],
  ]);
  const tabRear = line(tabL, [
    [
      [65, 411],
      [69, 427],
      [79, 431],
    ],
    [
      [87, 436],
      [109, 436],
      [117, 431],
    ],
    [[127, 427], [131, 411], tabM],
  ]);

  const clockwise: readonly (readonly [ZoneCode, readonly Stretch[]])[] = [
    [
      'U1',
      [outLateralCap, outMedialCap, ...[capLateral, capFront, capMedial].map(reversed).reverse()],
    ],
    ['U2', [capMedial, outMedialBox, reversed(quarterMedial), reversed(vampMedial)]],
    ['U3', [outLateralBox, capLateral, vampLateral, reversed(quarterLateral)]],
    ['U4', [capFront, vampMedial, reversed(throat), reversed(vampLateral)]],
    ['U5', [throat, eyestayMedial, reversed(tongue), reversed(eyestayLateral)]],
    [
      'U6',
      [
        quarterMedial,
        outMedialWaist,
        reversed(cupMedial),
        reversed(collarMedial),
        reversed(eyestayMedial),
      ],
    ],
    ['U7', [outLateralWaist, quarterLateral, eyestayLateral, collarLateral, reversed(cupLateral)]],
    [
      'U8',
      [
        tongue,
        collarMedial,
        rearMedial,
        reversed(tabFront),
        reversed(rearLateral),
        reversed(collarLateral),
      ],
    ],
    ['U9', [tabFront, reversed(tabRear)]],
    [
      'U10',
      [
        outLateralHeel,
        cupLateral,
        rearLateral,
        tabRear,
        reversed(rearMedial),
        cupMedial,
        outMedialHeel,
      ],
    ],
  ];
  return clockwise.map(([zone, stretches]) => [zone, stretches.map(reversed).reverse()]);
};

/** What makes it a shoe, without taking taps: each kind is drawn in its own manner. */
export type Decoration = {
  readonly kind: 'line' | 'stitch' | 'mesh' | 'opening' | 'inside' | 'lace' | 'eyelet';
  readonly d: string;
};

export const upperDecorations: readonly Decoration[] = [
  // The collar opening with the sockliner in its depth.
  {
    kind: 'opening',
    d: 'M78 294C84 316 112 316 118 294C127 314 131 338 127 352C124 366 113 371 98 371C83 371 72 366 69 352C65 338 69 314 78 294Z',
  },
  {
    kind: 'inside',
    d: 'M82 322C75 340 75 350 79 355C83 361 90 363 98 363C106 363 113 361 117 355C121 350 121 340 114 322C108 327 88 327 82 322Z',
  },
  // Mesh of the vamp.
  { kind: 'mesh', d: 'M86 90C98 84 116 83 130 87' },
  { kind: 'mesh', d: 'M82 104C96 97 118 96 134 101' },
  { kind: 'mesh', d: 'M79 118C94 111 120 110 136 115' },
  // The flex lines of the toe break.
  { kind: 'line', d: 'M76 137C94 128 120 127 137 134' },
  { kind: 'line', d: 'M74 151C92 142 122 140 138 148' },
  // Toe cap and mudguards.
  { kind: 'stitch', d: 'M41 98C54 91 67 84 80 80C98 74 118 72 138 76C150 77 160 79 168 81' },
  { kind: 'stitch', d: 'M60 190C60 158 63 122 71 90' },
  { kind: 'stitch', d: 'M139 183C147 150 149 112 144 82' },
  // Eyestay, tongue and the seams of the quarters.
  {
    kind: 'line',
    d: 'M82 292C78 262 78 226 82 200C86 186 112 182 117 197C121 224 121 262 114 292',
  },
  { kind: 'stitch', d: 'M60 206C56 240 55 264 56 286' },
  { kind: 'stitch', d: 'M140 200C143 236 143 262 140 286' },
  // Collar, heel counter, pull loop.
  { kind: 'stitch', d: 'M68 302C59 322 57 346 60 360C62 372 69 379 79 380' },
  { kind: 'stitch', d: 'M128 302C137 322 139 346 136 360C134 372 127 379 117 380' },
  { kind: 'line', d: 'M87 381V414C87 422 109 422 109 414V381' },
  { kind: 'stitch', d: 'M46 348C46 404 62 448 101 450C140 448 155 404 154 348' },
  // Five bars of lace with their eyelets, and the bow.
  { kind: 'lace', d: 'M72 206C88 198 110 196 126 201' },
  { kind: 'lace', d: 'M70 224C88 216 112 215 128 220' },
  { kind: 'lace', d: 'M69 242C88 234 112 234 129 239' },
  { kind: 'lace', d: 'M68 260C88 252 112 252 129 258' },
  { kind: 'lace', d: 'M69 278C88 270 112 270 128 276' },
];
