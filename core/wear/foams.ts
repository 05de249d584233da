/**
 * What was known of a foam's wear before the first check? Published changes at 500 km with their spread
 * where there are any; else wide judgement, labelled so.
 *
 * Sources are named at each entry. Two rules hold for all: nothing measured on an ageing machine is taken as
 * road wear (Wang L et al., Footwear Sci 2010;2:141-147: machines overstate it), and the change may have
 * either sign (Wang L, Hong Y & Li JX, J Sports Sci 2012;30:1787-1792: a polyurethane got softer).
 */
import type { FoamId } from '../foot/index.ts';
import { scaleOf, type WearKind, type WearScale } from './series.ts';

/** Whether figures stand in a publication, or only somebody's judgement speaks for them. */
export type Basis = 'published' | 'judgement';

/**
 * Where a change that was known beforehand is from; each language says it (`app/words`, `desk.wear.sources`).
 * - `cook-1985`: Cook SD, Kester MA & Brunet ME, Am J Sports Med 1985;13:248-253: 80 % at 241 km and 70 % at 805 km kept
 *   when worn; wide, for Hennig EM, Footwear Sci 2011;3:71-81 saw little change;
 * - `wang-2010-2012`: Wang L et al., Footwear Sci 2010;2:141-147: peak +4.88 % at 500 km (95 % interval 3.40 to 6.36), 15
 *   shoes worn; and `wang-2012`; wide, for few models were measured;
 * - `wang-2012`: Wang L, Hong Y & Li JX, J Sports Sci 2012;30:1787-1792: EVA 921.1 (SD 20.1) to 968.0 (SD 25.9) N, PU 972.9
 *   to 909.6 N at 200 km;
 * - `brueckner-2010`: Brückner K et al., Procedia Eng 2010;2:2789-2793: PU changes less than EVA, no figure;
 * - `lippa-2019`: below the 1.2 to 1.8 mm of machine ageing, Lippa N et al., Proc IMechE P 2019, doi
 *   10.1177/1754337118824001;
 * - `not-of-foam`: no published change with distance for this foam;
 * - `not-worn`: no published change with distance in shoes worn by runners; `not-worn-tread`: half a millimetre in 100 km is
 *   assumed.
 */
export const priorSources = [
  'cook-1985',
  'wang-2010-2012',
  'wang-2012',
  'brueckner-2010',
  'lippa-2019',
  'not-of-foam',
  'not-worn',
  'not-worn-tread',
] as const;
export type PriorSource = (typeof priorSources)[number];

/** The mean change of a round at 500 km: of the logarithm on a ratio scale, else in the kind's unit. */
export interface KnownChange {
  readonly basis: Basis;
  readonly source: PriorSource;
  readonly mean: number;
  readonly sd: number;
}

/** The size of a standard deviation that is itself not known, with the reason for it. */
export interface KnownSpread {
  readonly basis: Basis;
  readonly source: string;
  readonly size: number;
}

/** What is known of one kind of reading before the first check; it fits no other kind. */
export interface WearPrior<Kind extends WearKind> {
  readonly kind: Kind;
  readonly scale: WearScale;
  readonly change: KnownChange;
  /** Between the changes of pairs: half-normal of this size. */
  readonly pairSpread: KnownSpread;
  /** Between the starts of pairs: half of Student's t with 4 degrees of freedom, of this size. */
  readonly startSpread: KnownSpread;
  /** Of one check, operator, gauge and temperature included: lognormal around this size. */
  readonly checkError: KnownSpread;
  /** Mean value when new with its standard deviation, where a blueprint gives it. */
  readonly start?: { readonly value: number; readonly sd: number };
}

const published = (mean: number, sd: number, source: PriorSource): KnownChange => ({
  mean,
  sd,
  basis: 'published',
  source,
});
const judged = (mean: number, sd: number, source: PriorSource): KnownChange => ({
  mean,
  sd,
  basis: 'judgement',
  source,
});

const energyAbsorbed: Readonly<Record<FoamId, KnownChange>> = {
  eva: published(-0.3, 0.12, 'cook-1985'),
  pu: judged(-0.2, 0.2, 'brueckner-2010'),
  peba: judged(-0.3, 0.25, 'not-of-foam'),
  tpu: judged(-0.2, 0.2, 'not-of-foam'),
  other: judged(-0.25, 0.25, 'not-of-foam'),
};

const impactPeak: Readonly<Record<FoamId, KnownChange>> = {
  eva: published(0.048, 0.05, 'wang-2010-2012'),
  pu: published(0, 0.05, 'wang-2012'),
  peba: judged(0.03, 0.08, 'not-of-foam'),
  tpu: judged(0.03, 0.08, 'not-of-foam'),
  other: judged(0.03, 0.08, 'not-of-foam'),
};

/** Changes that no publication tells apart by foam. */
const anyFoam = {
  'stack-height mm': judged(-1, 0.8, 'lippa-2019'),
  'tread-depth mm': judged(-2.5, 1.5, 'not-worn-tread'),
  'hardness asker-c': judged(0, 4, 'not-worn'),
  'hardness shore-a': judged(0, 4, 'not-worn'),
  'mass g': judged(0, 0.02, 'not-worn'),
  'energy-returned J': judged(-0.05, 0.1, 'not-worn'),
  'energy-returned %': judged(-0.05, 0.1, 'not-worn'),
} as const;

const changeOf = (kind: WearKind, foam: FoamId): KnownChange => {
  if (kind === 'energy-absorbed J' || kind === 'energy-absorbed %') return energyAbsorbed[foam];
  if (kind === 'impact-peak N') return impactPeak[foam];
  return anyFoam[kind];
};

const byJudgement = (size: number): KnownSpread => ({
  size,
  basis: 'judgement',
  source: 'no published figure for whole shoes',
});

/** Spreads by kind: of changes between pairs, of starts between pairs, of one check. */
const spreads: Readonly<Record<WearKind, readonly [KnownSpread, KnownSpread, KnownSpread]>> = {
  'stack-height mm': [byJudgement(0.4), byJudgement(0.5), byJudgement(0.3)],
  'tread-depth mm': [byJudgement(1), byJudgement(0.3), byJudgement(0.2)],
  'hardness asker-c': [byJudgement(1.5), byJudgement(2), byJudgement(1)],
  'hardness shore-a': [byJudgement(1.5), byJudgement(2), byJudgement(1)],
  'mass g': [byJudgement(0.01), byJudgement(0.02), byJudgement(0.003)],
  'impact-peak N': [
    {
      size: 0.027,
      basis: 'published',
      source: 'Wang L et al., Footwear Sci 2010: 2.7 points between pairs, from the interval',
    },
    {
      size: 0.022,
      basis: 'published',
      source: 'Wang L, Hong Y & Li JX, J Sports Sci 2012: 2.2 % between new shoes',
    },
    byJudgement(0.02),
  ],
  'energy-absorbed J': [byJudgement(0.09), byJudgement(0.03), byJudgement(0.02)],
  'energy-absorbed %': [byJudgement(0.09), byJudgement(0.03), byJudgement(0.02)],
  'energy-returned J': [byJudgement(0.04), byJudgement(0.03), byJudgement(0.02)],
  'energy-returned %': [byJudgement(0.04), byJudgement(0.03), byJudgement(0.02)],
};

/**
 * What is known of a kind of reading on a foam before the first check.
 * @param start mean value when new with its standard deviation, where a blueprint gives it
 */
export const wearPrior = <Kind extends WearKind>(
  kind: Kind,
  foam: FoamId,
  start?: { readonly value: number; readonly sd: number },
): WearPrior<Kind> => {
  const [pairSpread, startSpread, checkError] = spreads[kind];
  return {
    kind,
    scale: scaleOf(kind),
    change: changeOf(kind, foam),
    pairSpread,
    startSpread,
    checkError,
    ...(start ? { start } : {}),
  };
};
