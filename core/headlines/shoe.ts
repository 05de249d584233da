/**
 * What does the shoe do to the feet, in one sentence? One rule each for complaints, one zone, comfort and arrival. What
 * is said of a round is what its runs prove of it; pain comes first.
 */
import { surenessOf, type Sureness } from '../complaints/index.ts';
import type { ComfortAttributeId, Side, TwoSidedId } from '../foot/index.ts';
import type { Foot, Measure, RecordId } from '../records/index.ts';
import type {
  ArrivalDimension,
  AttributeLook,
  PairSummary,
  ReviewSummary,
  RoundFelt,
  ShoeLook,
  TwoSidedLook,
  ZoneLook,
} from '../review/index.ts';
import type { FeltName } from './sheet.ts';
import type { Claim } from './stamp.ts';

/** A round with who reported something, of whom. */
export interface HeadlineCount {
  readonly round: RecordId;
  readonly testers: number;
  readonly askedTesters: number;
}

export type ShoeHeadline = { readonly claims: Claim } & (
  | { readonly case: 'no-round' | 'not-asked' }
  /** Pain that no lead has answered. */
  | { readonly case: 'pain'; readonly testers: readonly RecordId[] }
  | ({ readonly case: 'recurs'; readonly felt: FeltName; readonly more: number } & HeadlineCount)
  | {
      readonly case: 'one-tester';
      readonly felt: FeltName;
      readonly testers: readonly RecordId[];
      readonly round: RecordId;
      readonly more: number;
    }
  /** The last rounds, at most three, of as many testers each; one where they differ in that. */
  | { readonly case: 'watch'; readonly felt: FeltName; readonly counts: readonly HeadlineCount[] }
  | { readonly case: 'single-reports'; readonly round: RecordId; readonly complaints: number }
  | { readonly case: 'nothing'; readonly round: RecordId; readonly runs: number }
);

/** How sure a complaint is in one round. */
export const sureIn = ({ word, testers }: Pick<RoundFelt, 'word' | 'testers'>): Sureness | null =>
  word === null ? null : surenessOf(word, testers);

const feltOf = ({ zone, kind }: FeltName): FeltName => ({ zone, kind });

const countOf = ({ round, testers, askedTesters }: HeadlineCount): HeadlineCount => ({
  round,
  testers,
  askedTesters,
});

/** Rounds that are told beside each other in one sentence. */
const MOST_COUNTS = 3;

/** The counts up to a round, as far back as the same number of testers was asked and anybody felt it. */
const courseTo = (rounds: readonly RoundFelt[], latest: RecordId): readonly HeadlineCount[] => {
  const until = rounds.slice(0, rounds.findIndex(({ round }) => round === latest) + 1);
  const asked = until.at(-1)?.askedTesters;
  const from = until.findLastIndex(
    ({ askedTesters, testers }) => askedTesters !== asked || testers === 0,
  );
  return until
    .slice(from + 1)
    .slice(-MOST_COUNTS)
    .map(countOf);
};

/** @returns what the complaints of the latest round with answers say */
export const shoeHeadline = (
  { latest, complaints }: ShoeLook,
  { rounds, pains }: Pick<ReviewSummary, 'pains'> & { readonly rounds: readonly unknown[] },
): ShoeHeadline => {
  const open = pains.filter(({ stands, answer }) => stands && answer === null);
  if (open.length > 0)
    return {
      case: 'pain',
      claims: 'nothing',
      testers: [...new Set(open.map(({ tester }) => tester))],
    };
  if (rounds.length === 0) return { case: 'no-round', claims: 'nothing' };
  if (latest === null) return { case: 'not-asked', claims: 'nothing' };
  const now = complaints.flatMap((one) => {
    const felt = one.rounds.find(({ round }) => round === latest);
    const sure = felt && sureIn(felt);
    return felt && sure ? [{ one, felt, sure }] : [];
  });
  const of = (wanted: Sureness) => now.filter(({ sure }) => sure === wanted);
  const [clear] = of('clear');
  if (clear)
    return {
      case: 'recurs',
      claims: 'clear',
      felt: feltOf(clear.one),
      ...countOf(clear.felt),
      more: of('clear').length - 1,
    };
  const [alone] = of('one-tester');
  if (alone)
    return {
      case: 'one-tester',
      claims: 'one-tester',
      felt: feltOf(alone.one),
      testers: alone.one.surest.round === latest ? alone.one.proved : [],
      round: latest,
      more: of('one-tester').length - 1,
    };
  const [likely] = of('likely').sort((a, b) => b.felt.testers - a.felt.testers);
  if (likely)
    return {
      case: 'watch',
      claims: 'likely',
      felt: feltOf(likely.one),
      counts: courseTo(likely.one.rounds, latest),
    };
  if (now.length > 0)
    return { case: 'single-reports', claims: 'too-early', round: latest, complaints: now.length };
  const runs = complaints[0]?.rounds.find(({ round }) => round === latest)?.askedRuns ?? 0;
  return { case: 'nothing', claims: 'nothing', round: latest, runs };
};

export type ZoneHeadline = { readonly claims: Claim } & (
  | { readonly case: 'not-asked' }
  | { readonly case: 'nothing'; readonly runs: number; readonly testers: number }
  | ({ readonly case: 'recurs'; readonly felt: FeltName } & HeadlineCount)
  /** Proved in an earlier round, and less in the latest. */
  | {
      readonly case: 'recurred';
      readonly felt: FeltName;
      readonly before: HeadlineCount;
      readonly now: HeadlineCount;
    }
  | {
      readonly case: 'one-tester';
      readonly felt: FeltName;
      readonly testers: readonly RecordId[];
      readonly round: RecordId;
    }
  /** Several reported it, and one of them nearly always. */
  | {
      readonly case: 'mostly-one';
      readonly felt: FeltName;
      readonly tester: RecordId;
      readonly runs: number;
      readonly of: number;
    }
  | ({ readonly case: 'likely'; readonly felt: FeltName } & HeadlineCount)
  | { readonly case: 'few'; readonly felt: FeltName; readonly reports: number }
  /** Of no kind in particular: counts alone. */
  | ({ readonly case: 'any' } & HeadlineCount)
);

/** @returns what the runs say of one zone, over both feet */
export const zoneHeadline = (look: ZoneLook): ZoneHeadline => {
  const { rounds, zone, kind, mostly, allReports } = look;
  const asked = rounds.filter(({ askedRuns }) => askedRuns > 0);
  const now = asked.at(-1);
  if (!now) return { case: 'not-asked', claims: 'nothing' };
  const told = asked.filter(({ runs }) => runs > 0);
  const most = told.reduce(
    (best, one) => (one.testers >= best.testers ? one : best),
    told[0] ?? now,
  );
  if (told.length === 0)
    return {
      case: 'nothing',
      claims: 'nothing',
      runs: asked.reduce((sum, { askedRuns }) => sum + askedRuns, 0),
      testers: look.allTesters,
    };
  if (kind === null) return { case: 'any', claims: 'nothing', ...countOf(most) };
  const felt = { zone, kind };
  const clear = asked.findLast(({ word }) => word === 'recurs-across-testers');
  if (clear === now) return { case: 'recurs', claims: 'clear', felt, ...countOf(now) };
  if (clear)
    return { case: 'recurred', claims: 'clear', felt, before: countOf(clear), now: countOf(now) };
  const alone = asked.findLast(({ word }) => word === 'recurs-for-one-tester');
  if (mostly)
    return {
      case: 'mostly-one',
      claims: alone ? 'one-tester' : 'nothing',
      felt,
      ...mostly,
    };
  if (alone)
    return {
      case: 'one-tester',
      claims: 'one-tester',
      felt,
      testers: alone.proved,
      round: alone.round,
    };
  const likely = asked.findLast((one) => sureIn(one) === 'likely');
  return likely
    ? { case: 'likely', claims: 'likely', felt, ...countOf(likely) }
    : { case: 'few', claims: 'too-early', felt, reports: allReports };
};

export type ComfortHeadline = { readonly claims: Claim } & (
  | { readonly case: 'not-scored' }
  /** One round: how it stands. */
  | { readonly case: 'score'; readonly mean: number; readonly round: RecordId }
  /** Overall comfort, the latest against the round before. */
  | {
      readonly case: 'better' | 'worse' | 'same' | 'open';
      readonly mean: number;
      readonly before: number;
      readonly round: RecordId;
      readonly earlier: RecordId;
    }
  /** Overall does not decide, and another attribute got clearly worse. */
  | {
      readonly case: 'attribute-worse';
      readonly attribute: ComfortAttributeId;
      readonly by: number;
    }
  /** Testers who answered in both rounds lie further from just right. */
  | { readonly case: 'further'; readonly attribute: TwoSidedId; readonly testers: number }
  /** Too little or too much of something in the latest round: of how many who were asked. */
  | {
      readonly case: 'too';
      readonly attribute: TwoSidedId;
      readonly side: Exclude<Side, 'right'>;
      readonly testers: number;
      readonly asked: number;
    }
  /** Only two-sided questions were answered, and none of them tells. */
  | { readonly case: 'none-off'; readonly round: RecordId }
);

type OfTwoSided = Extract<ComfortHeadline, { readonly case: 'further' | 'too' | 'none-off' }>;

/** What the two-sided questions of the latest round say, by how sure it is. */
const twoSidedCases = (look: readonly TwoSidedLook[], round: RecordId | undefined) => {
  const latest = look.flatMap(({ rounds }) => rounds.filter((one) => one.round === round));
  const further = latest
    .flatMap(({ change }) => (change?.word === 'worse' ? [change] : []))
    .sort((a, b) => a.closer - b.closer)[0];
  const off = latest.flatMap(({ attribute, word, sure, counts, mean, adjustedP }) =>
    word === 'low' || word === 'high'
      ? [{ attribute, side: word, sure, testers: counts[word], asked: mean.n, adjustedP }]
      : [],
  );
  const tooOf = (wanted: 'clear' | 'likely'): OfTwoSided | null => {
    const [most] = off
      .filter(({ sure }) => sure === wanted)
      .sort((a, b) => b.testers / b.asked - a.testers / a.asked || a.adjustedP - b.adjustedP);
    if (!most) return null;
    const { attribute, side, testers, asked } = most;
    return { case: 'too', claims: wanted, attribute, side, testers, asked };
  };
  return {
    further: further
      ? ({
          case: 'further',
          claims: 'clear',
          attribute: further.attribute,
          testers: further.testers,
        } satisfies OfTwoSided)
      : null,
    clear: tooOf('clear'),
    likely: tooOf('likely'),
    noneOff:
      round === undefined || latest.length === 0
        ? null
        : ({ case: 'none-off', claims: 'nothing', round } satisfies OfTwoSided),
  };
};

/** The latest round with an answer, by the order of the rounds. */
const latestOf = (order: readonly RecordId[], ...answered: readonly (RecordId | undefined)[]) =>
  order.findLast((round) => answered.includes(round));

/** What got clearly worse in the latest scored round, overall comfort aside. */
const worseIn = (look: readonly AttributeLook[], round: RecordId) =>
  look
    .flatMap(({ attribute, rounds }) => {
      const last = rounds.at(-1);
      return last?.round === round && last.change?.word === 'worse'
        ? [{ attribute, by: -last.change.difference }]
        : [];
    })
    .sort((a, b) => b.by - a.by)[0];

/**
 * How comfortable the latest answered round is, against the one before: what got worse first, then what is clearly off
 * the good point, then overall comfort, then what is likely off it.
 * @param order of the rounds
 */
export const comfortHeadline = (
  look: readonly AttributeLook[],
  twoSided: readonly TwoSidedLook[],
  order: readonly RecordId[],
): ComfortHeadline => {
  const main = look.find(({ attribute }) => attribute === 'overall') ?? look[0];
  const now = main?.rounds.at(-1);
  const before = main?.rounds.at(-2);
  const marked = latestOf(order, ...twoSided.map(({ rounds }) => rounds.at(-1)?.round));
  const latest = latestOf(order, now?.round, marked);
  const off = twoSidedCases(twoSided, latest);
  if (!main || !now?.wear || now.round !== latest)
    return (
      off.further ??
      off.clear ??
      off.likely ??
      off.noneOff ?? { case: 'not-scored', claims: 'nothing' }
    );
  const { change, round } = now;
  const mean = now.wear.mean;
  const worse = worseIn(look, round);
  const word = change?.word ?? 'open';
  if (worse && word !== 'worse') return { case: 'attribute-worse', claims: 'clear', ...worse };
  const isDecided = word === 'better' || word === 'worse' || word === 'no-relevant';
  const first =
    word === 'worse' ? null : (off.further ?? off.clear ?? (isDecided ? null : off.likely));
  if (first) return first;
  if (!before?.wear) return { case: 'score', claims: 'nothing', mean, round };
  return {
    case: word === 'no-relevant' ? 'same' : word,
    claims: isDecided ? 'clear' : 'nothing',
    mean,
    before: before.wear.mean,
    round,
    earlier: before.round,
  };
};

export type ArrivalHeadline = { readonly claims: Claim } & (
  | { readonly case: 'not-measured' }
  | { readonly case: 'all-in'; readonly pairs: number }
  | {
      readonly case: 'one-out';
      readonly pair: RecordId;
      readonly measure: Measure;
      readonly site: string;
      readonly foot: Foot;
      readonly measured: number;
    }
  | { readonly case: 'out'; readonly pairs: readonly RecordId[]; readonly measured: number }
  | { readonly case: 'undecided'; readonly pairs: number; readonly measured: number }
);

/** @returns how many of the measured pairs lie outside of the blueprint's tolerance */
export const arrivalHeadline = (
  pairs: readonly Pick<PairSummary, 'id' | 'outOfTolerance'>[],
  dimensions: readonly ArrivalDimension[],
): ArrivalHeadline => {
  const judged = pairs.filter(({ outOfTolerance }) => outOfTolerance.judged > 0);
  const measured = judged.length;
  if (measured === 0) return { case: 'not-measured', claims: 'nothing' };
  const out = judged.filter(({ outOfTolerance: { proved, outside } }) => proved + outside > 0);
  const claims: Claim = out.some(({ outOfTolerance }) => outOfTolerance.proved > 0)
    ? 'clear'
    : 'likely';
  const [only] = out;
  if (only && out.length === 1) {
    const found = dimensions.flatMap(({ measure, site, rounds }) =>
      rounds.flatMap(({ points }) =>
        points.flatMap(({ pair, foot, word }) =>
          pair === only.id && (word === 'not-conforming' || word === 'outside')
            ? [{ measure, site, foot }]
            : [],
        ),
      ),
    )[0];
    if (found) return { case: 'one-out', claims, pair: only.id, ...found, measured };
  }
  if (out.length > 0) return { case: 'out', claims, pairs: out.map(({ id }) => id), measured };
  const undecided = judged.filter(({ outOfTolerance }) => outOfTolerance.undecided > 0).length;
  return undecided > 0
    ? { case: 'undecided', claims: 'too-early', pairs: undecided, measured }
    : { case: 'all-in', claims: 'nothing', pairs: measured };
};
