/**
 * Which parts usually cause a complaint: the first suspects, then the second.
 *
 * Common practice, no source: a hint where to look, never a measured cause. Screens that show it say
 * so (`basis`).
 */
import type { ComplaintKind } from './complaint-kinds.ts';
import type { PartId } from './parts.ts';
import type { ZoneCode } from './zones.ts';

export type Suspects = {
  readonly first: readonly PartId[];
  readonly second: readonly PartId[];
  readonly basis: 'common-practice-no-source' | 'judgement-no-source';
};

const common = (first: readonly PartId[], second: readonly PartId[]): Suspects => ({
  first,
  second,
  basis: 'common-practice-no-source',
});

const byKind: Readonly<Record<ComplaintKind, Suspects>> = {
  'heel-slip': /* @__PURE__ */ common(
    ['last', 'upper-pattern', 'lacing'],
    ['upper-material', 'midsole-geometry', 'outsole', 'sockliner'],
  ),
  'hot-spot': /* @__PURE__ */ common(
    ['upper-pattern', 'upper-material', 'sockliner'],
    ['last', 'lacing'],
  ),
  rubbing: /* @__PURE__ */ common(['upper-pattern', 'upper-material'], ['last', 'lacing']),
  pressure: /* @__PURE__ */ common(
    ['last', 'upper-pattern', 'sockliner', 'lacing'],
    ['upper-material', 'midsole-foam', 'outsole'],
  ),
  'toe-bang': /* @__PURE__ */ common(
    ['last', 'upper-pattern', 'lacing'],
    ['midsole-geometry', 'sockliner'],
  ),
  'lace-bite': /* @__PURE__ */ common(['upper-pattern', 'upper-material', 'lacing'], ['last']),
  numbness: /* @__PURE__ */ common(
    ['last', 'midsole-foam', 'lacing'],
    ['upper-pattern', 'upper-material', 'midsole-geometry', 'sockliner'],
  ),
  'arch-pressure': /* @__PURE__ */ common(
    ['last', 'midsole-geometry', 'sockliner'],
    ['upper-pattern', 'midsole-foam'],
  ),
  'bottoming-out': /* @__PURE__ */ common(
    ['midsole-geometry', 'midsole-foam'],
    ['outsole', 'sockliner'],
  ),
  harsh: /* @__PURE__ */ common(['midsole-foam', 'outsole'], ['midsole-geometry', 'sockliner']),
  unstable: /* @__PURE__ */ common(
    ['upper-pattern', 'midsole-geometry', 'midsole-foam'],
    ['last', 'upper-material', 'outsole', 'lacing'],
  ),
  'harsh-edge': /* @__PURE__ */ common(
    ['upper-pattern', 'upper-material', 'midsole-geometry'],
    ['sockliner'],
  ),
  overheating: /* @__PURE__ */ common(['upper-material'], ['upper-pattern', 'sockliner']),
  'too-tight': /* @__PURE__ */ common(
    ['last', 'upper-pattern'],
    ['upper-material', 'sockliner', 'lacing'],
  ),
  'too-loose': /* @__PURE__ */ common(
    ['last', 'upper-pattern', 'upper-material', 'lacing'],
    ['sockliner'],
  ),
  slipping: /* @__PURE__ */ common(['outsole'], []),
  stiff: /* @__PURE__ */ common(
    ['midsole-geometry', 'outsole'],
    ['last', 'upper-pattern', 'midsole-foam'],
  ),
  noise: /* @__PURE__ */ common([], ['outsole', 'sockliner']),
  debris: /* @__PURE__ */ common([], ['upper-pattern', 'outsole']),
  catching: {
    first: ['outsole'],
    second: ['midsole-geometry', 'upper-pattern'],
    basis: 'judgement-no-source',
  },
  // Pain alone points at no part: a person has to look.
  pain: { first: [], second: [], basis: 'judgement-no-source' },
};

/** Pressure on the bunion and on the little toe: the toe shape of the last, and no sockliner. */
const toeBoxPressure: Suspects = /* @__PURE__ */ common(
  ['last', 'upper-pattern', 'upper-material'],
  ['lacing'],
);

const blister: Suspects = /* @__PURE__ */ common(
  ['upper-pattern', 'upper-material', 'sockliner'],
  ['last', 'midsole-geometry'],
);

/** Kinds whose end is a blister; with a blister they share its suspects. */
const frictional: readonly ComplaintKind[] = ['hot-spot', 'rubbing'];

/**
 * The usual suspects for a complaint. `blistered` where the skin had a blister or broke: rubbing and
 * hot spots then share the suspects of the blister. Empty lists: no part is usually responsible.
 */
export const suspectsOf = (
  kind: ComplaintKind,
  zone: ZoneCode,
  blistered: boolean = false,
): Suspects => {
  if (blistered && frictional.includes(kind)) return blister;
  if (kind === 'pressure' && (zone === 'U2' || zone === 'U3')) return toeBoxPressure;
  return byKind[kind];
};
