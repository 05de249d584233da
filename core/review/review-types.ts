/** What does the review of one project say? Plain JSON, so that screen, terminal and file say the same. */
import type {
  AttributeComfort,
  ComfortChange,
  RoundComplaints,
  RoundPain,
  TwoSidedChange,
  TwoSidedReview,
  ZoneCount,
} from '../complaints/index.ts';
import type { BySurface, PairLoad, RunOddity } from '../mileage/index.ts';
import type {
  Advice,
  Brief,
  Change,
  DamageReport,
  Dimension,
  Foot,
  LeftOut,
  Measure,
  MeasureUnit,
  RecordId,
  Round,
  Run,
} from '../records/index.ts';
import type { Metres, Millimetres } from '../units/index.ts';
import type { Combined, Conformity, LeftRight } from '../rounds/index.ts';
import type { GaugeReview } from './gauges.ts';
import type { Preference } from './preferences.ts';
import type { DecidedItem, WaitingItem } from './standing/standing.ts';
import type { PairTolerance } from './tolerance.ts';

/** How much evidence stands behind a figure. */
export interface EvidenceSize {
  readonly pairs: number;
  readonly testers: number;
  readonly runs: number;
  readonly distanceM: Metres;
}

export interface RoundReview {
  readonly id: RecordId;
  readonly name: string;
  readonly order: number;
  readonly stage: Round['stage'];
  readonly changes: readonly Change[];
  readonly size: EvidenceSize;
  /** Who was asked, what was reported, and what is proven of it. */
  readonly complaints: RoundComplaints;
  /** The answers to the question after pain; null where nobody answered it. */
  readonly pain: RoundPain | null;
  /** Zones with a report, over all kinds, by foot. */
  readonly zones: Readonly<Record<Foot, readonly ZoneCount[]>>;
  /** Comfort by attribute; first impressions apart from wear scores. */
  readonly comfort: readonly AttributeComfort[];
  /** Wear scores against the round before; empty for the first. */
  readonly comfortChanges: readonly ComfortChange[];
  /** Too little or too much: the questions whose good point is in the middle, without first wearings. */
  readonly twoSided: readonly TwoSidedReview[];
  /** The same against the round before, by testers who answered in both. */
  readonly twoSidedChanges: readonly TwoSidedChange[];
}

export interface PairReview {
  readonly id: RecordId;
  readonly code: string;
  readonly round: RecordId;
  readonly sizeMm: Millimetres;
  /** Carried-in distance plus every counted run. */
  readonly totalM: Metres;
  readonly carriedInM: Metres;
  readonly runs: number;
  /** Share of the distance that the brief asks of a pair; may pass 1. */
  readonly shareOfBrief: number;
  readonly bySurface: BySurface;
  /** Steps and force on each shoe, with how much of the distance they stand on. */
  readonly load: PairLoad;
  readonly byTester: readonly { readonly tester: RecordId; readonly distanceM: Metres }[];
  readonly byHandOut: readonly {
    /** Null: runs outside of every hand-out. */
    readonly handOut: RecordId | null;
    readonly distanceM: Metres;
  }[];
  /** What was on the pair at the end of each counted run, in the order of time. */
  readonly course: readonly {
    readonly atMs: number;
    readonly totalM: Metres;
    /** Steps in each shoe, as far as they are known. */
    readonly stepsPerShoe: number;
  }[];
  /** Who has the pair now; null where it is not out. */
  readonly holder: RecordId | null;
  /** For how many days the holder has been silent (`silence.ts`); null: they are not, or nobody has it. */
  readonly holderSilentDays: number | null;
  readonly lastRunMs: number | null;
  /** The stop-use notice that stands. */
  readonly stopUse: { readonly id: RecordId; readonly reason: string } | null;
  /** Its dimensions on arrival: proved or read out of the blueprint's tolerance, or undecided. */
  readonly outOfTolerance: PairTolerance;
}

export interface TesterReview {
  readonly id: RecordId;
  readonly code: string;
  readonly name: string | null;
  readonly runs: number;
  readonly distanceM: Metres;
  readonly lastRunMs: number | null;
  /** For how many days they have been silent although they hold a pair (`silence.ts`); null: they are not. */
  readonly silentDays: number | null;
}

/** The readings of one measure at one site of one shoe of a pair, over its distance. */
export interface BenchSeries {
  readonly pair: RecordId;
  readonly round: RecordId;
  readonly measure: Measure;
  readonly site: string;
  readonly foot: Foot;
  readonly unit: MeasureUnit;
  readonly points: readonly {
    readonly check: RecordId;
    readonly atMs: number;
    /** Distance on the pair at the check: the shop's figure if it gave one, else from the runs. */
    readonly distanceM: Metres;
    readonly distanceFrom: 'shop' | 'runs';
    readonly value: number;
  }[];
}

/** The readings of one dimension of one shoe on arrival, put together, against the blueprint. */
export interface Deviation
  extends
    Pick<Dimension, 'measure' | 'site' | 'unit' | 'nominal' | 'lower' | 'upper'>,
    Combined,
    Conformity {
  readonly pair: RecordId;
  readonly round: RecordId;
  readonly check: RecordId;
  readonly foot: Foot;
  /** value − nominal, in the reading's unit. */
  readonly deviation: number;
  /** Greatest difference of left and right that the blueprint allows; null: it names none. */
  readonly leftRight: number | null;
}

/** Left against right of one dimension of a pair on arrival. */
export interface SideDifference extends Pick<Dimension, 'measure' | 'site' | 'unit'>, LeftRight {
  readonly pair: RecordId;
  readonly round: RecordId;
}

/** What a lead answered a tester about one record, last. */
export interface LeadAnswer {
  readonly advice: Advice;
  readonly at: string;
  readonly words: string | null;
}

/** The whole test went quiet: nobody at all has logged for a while. */
export interface Quiet {
  /** End of the last run of anybody. */
  readonly sinceMs: number;
  /** Whole days since. */
  readonly days: number;
  /** Those who fell silent with the rest; not who was silent long before, or never logged a run. */
  readonly testers: readonly RecordId[];
}

export interface Review {
  readonly project: { readonly id: RecordId; readonly name: string; readonly brief: Brief };
  /** When the question was asked, milliseconds since 1970. */
  readonly nowMs: number;
  readonly size: EvidenceSize;
  /** The whole test went quiet (`silence.ts`); null: somebody ran, or single testers are silent. */
  readonly quiet: Quiet | null;
  /** Testers of the group, with or without a pair or a run of this project. */
  readonly groupTesters: number;
  /** By order. */
  readonly rounds: readonly RoundReview[];
  /** By round, then code. */
  readonly pairs: readonly PairReview[];
  /** By code; those who hold or held a pair or logged a run of this project. */
  readonly testers: readonly TesterReview[];
  /** What testers who ranked pairs of two rounds prefer; only rounds that were compared. */
  readonly preferences: readonly Preference[];
  readonly bench: readonly BenchSeries[];
  readonly deviations: readonly Deviation[];
  readonly sides: readonly SideDifference[];
  /** Latest first. */
  readonly gauges: readonly GaugeReview[];
  /** Null: all pairs are read. Else the pairs out of tolerance that were left out. */
  readonly without: readonly { readonly id: RecordId; readonly code: string }[] | null;
  readonly damages: readonly (Pick<DamageReport, 'pair' | 'tester' | 'what' | 'at'> & {
    readonly id: RecordId;
    readonly words: string | null;
    /** SHA-256 of each photo. */
    readonly photos: readonly string[];
    /** Null: no lead has answered it. */
    readonly answer: LeadAnswer | null;
    /** Whether it still keeps the pair from being worn. */
    readonly stands: boolean;
  })[];
  /** Runs whose pain calls for the caution notice: for the lead to ask about, latest first. */
  readonly pains: readonly {
    readonly run: RecordId;
    readonly tester: RecordId;
    readonly pair: RecordId;
    readonly at: string;
    readonly score: number;
    readonly signs: readonly string[];
    /** When the tester said that it is over. */
    readonly over: string | null;
    /** Null: no lead has answered it. */
    readonly answer: LeadAnswer | null;
    /** Whether it still keeps the tester out of the pair. */
    readonly stands: boolean;
  }[];
  /** What waits for the lead's decision: `counts` says whether it is in the figures meanwhile. */
  readonly waiting: readonly WaitingItem[];
  /** What the lead decided, as far as it holds; what was set aside is in no figure. Latest first. */
  readonly decided: readonly DecidedItem[];
  /** Odd runs that count, and repeats, each with whose it is: in the order to ask, overlaps last and once a run. */
  readonly oddities: readonly (RunOddity &
    Pick<Run, 'tester' | 'pair' | 'startedAt' | 'distanceM'>)[];
  /** Records that this version cannot read. They are kept and passed on, and count in no figure. */
  readonly leftOut: readonly LeftOut[];
}
