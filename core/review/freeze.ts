/**
 * Which figures are frozen with a finding, so that its evidence can be said in any language, later and without
 * the log? Those that the sentences of `app/words/say-evidence.ts` need, by code and name instead of id: who
 * reads a finding may have no pairs, testers and rounds. Six digits of a figure: more than any sentence says.
 */
import type { Association, AttributeComfort, ComfortChange } from '../complaints/index.ts';
import type { EvidenceFigures, Measure, MeasureUnit, RecordId } from '../records/index.ts';
import { metres, type Metres } from '../units/index.ts';
import type { Crossing, WearEstimate } from '../wear/index.ts';
import type { CloserLook } from './closer-look.ts';
import type { Deviation } from './review-types.ts';
import type { CellSummary, RoundSummary } from './summary.ts';
import type { WearLook } from './wear-look.ts';

type Frozen<K extends keyof EvidenceFigures> = Readonly<
  Required<{ [P in K]: NonNullable<EvidenceFigures[P]> }>
>;

const DIGITS = 6;
const kept = (value: number): number => Number(value.toPrecision(DIGITS));
const keptM = (value: Metres): Metres => metres(kept(value));

const interval = ({ lower, upper }: { readonly lower: number; readonly upper: number }) => ({
  lower: kept(lower),
  upper: kept(upper),
});
const estimate = ({ median, lower, upper, beyondChecks }: WearEstimate) => ({
  median: kept(median),
  ...interval({ lower, upper }),
  beyondChecks,
});
const crossing = (at: Crossing): Crossing => (at === 'beyond-checks' ? at : keptM(at));

/** Whether a complaint goes together with something: what is shown of it is a hint, never proof. */
export const isHint = ({ hint, goesWith }: Association): boolean => hint && goesWith !== 'neither';

/**
 * A complaint: its counts, how sure it is, and when and with whom it comes.
 * @param code of a tester
 */
export const freezeComplaint = (
  cell: CellSummary,
  { asked }: Pick<RoundSummary['complaints'], 'asked'>,
  { trend, onset, firstRepeat, associations }: Omit<CloserLook, 'cell'>,
  code: (tester: RecordId) => string,
): Frozen<'complaint'> => ({
  complaint: {
    word: cell.word,
    askedRuns: asked.runs,
    askedTesters: asked.testers,
    runs: cell.runs,
    testersOnce: cell.testersOnce,
    testersTwice: cell.testersTwice,
    left: cell.byFoot.left,
    right: cell.byFoot.right,
    eValue: kept(cell.eValue),
    weighed: {
      shareTwice: interval(cell.shareTwice),
      runShare: interval(cell.runShare),
      allowedRate: cell.allowedRate,
      severity: cell.severity && { mean: kept(cell.severity.mean), most: cell.severity.most },
      needed: kept(cell.needed),
      testers: cell.provenTesters.map(({ tester }) => code(tester)),
    },
    look: {
      trend: { word: trend.word, testers: trend.testers, adjustedP: kept(trend.adjustedP) },
      onset: onset && {
        medianM: keptM(onset.medianM),
        lowerM: keptM(onset.lowerM),
        upperM: keptM(onset.upperM),
        testers: onset.testers,
      },
      firstRepeat: {
        medianM: firstRepeat.medianM && keptM(firstRepeat.medianM),
        repeated: firstRepeat.repeated,
        testers: firstRepeat.testers,
      },
      hints: associations.filter(isHint).map(({ factor, goesWith, adjustedP, testers }) => ({
        factor,
        goesWith,
        adjustedP: kept(adjustedP),
        testers,
      })),
      asked: associations.length,
    },
  },
});

/** Of which readings a look at wear speaks. */
export const placeOf = ({ kind, site }: Pick<WearLook, 'kind' | 'site'>) => {
  const [measure, unit] = kind.split(' ') as [Measure, MeasureUnit];
  return { measure, unit, site };
};

/** The outlook of a new pair at the brief's distance. */
export const freezeWear = (look: WearLook, briefM: Metres): Frozen<'place' | 'wear'> => ({
  place: placeOf(look),
  wear: {
    briefM,
    basis: look.basis,
    direction: look.direction,
    foamKnown: look.foam !== null,
    atBrief: look.atBrief && {
      value: look.atBrief.value && estimate(look.atBrief.value),
      change: estimate(look.atBrief.change),
    },
    limits: look.limits.map(({ limit, hold, distance, tooFar }) => ({
      limit,
      hold: hold && { chance: kept(hold.chance), word: hold.word },
      distance: distance && {
        lower: crossing(distance.lower),
        median: crossing(distance.median),
        upper: crossing(distance.upper),
      },
      tooFar,
    })),
  },
});

/** Of more points only some are kept, evenly taken: the line looks the same. */
const MOST_DRAWN = 24;
const MOST_READINGS = 200;

const evenly = <T>(all: readonly T[], most: number): readonly T[] =>
  all.length <= most
    ? all
    : Array.from(
        { length: most },
        (_, at) => all[Math.round((at * (all.length - 1)) / (most - 1))] as T,
      );

/** What a curve is drawn from, for who has no checks; undefined: nothing tells a new pair's start. */
export const freezeCourse = ({
  points,
  curve,
}: Pick<WearLook, 'points' | 'curve'>): NonNullable<EvidenceFigures['wear']>['course'] =>
  curve === null
    ? undefined
    : {
        readings: evenly(points, MOST_READINGS).map(({ x, value }) => ({
          x: keptM(x),
          value: kept(value),
        })),
        curve: evenly(curve, MOST_DRAWN).map(({ x, median, lower, upper }) => ({
          x: keptM(x),
          median: kept(median),
          ...interval({ lower, upper }),
        })),
      };

/** A reading on arrival, of the pair with this code. */
export const freezeReading = (
  { measure, site, unit, foot, ...read }: Deviation,
  code: string,
): Frozen<'place' | 'reading'> => ({
  place: { measure, site, unit },
  reading: {
    pair: code,
    foot,
    value: kept(read.value),
    deviation: kept(read.deviation),
    lower: read.lower,
    upper: read.upper,
    word: read.word,
    risk: read.risk === null ? null : kept(read.risk),
    disagree: read.disagree,
  },
});

/** The score of an attribute in a round, and what changed from the round before; null where nobody scored it. */
export const freezeComfort = (
  { attribute, wear }: Pick<AttributeComfort, 'attribute' | 'wear'>,
  change: ComfortChange | undefined,
  rounds: { readonly earlier: string; readonly later: string },
): Frozen<'comfort'> | null =>
  wear && {
    comfort: {
      attribute,
      mean: kept(wear.mean),
      interval: wear.interval && interval(wear.interval),
      testers: wear.n,
      scores: wear.runs,
      change: change
        ? {
            ...rounds,
            difference: kept(change.difference),
            interval: change.interval && interval(change.interval),
            word: change.word,
          }
        : null,
    },
  };
