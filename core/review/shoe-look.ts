/**
 * What is felt where, round by round? Every zone and kind that any round reported, with what each round says of it,
 * who and since when: pain first, then what is proved or likely in the latest round, then what was in earlier ones.
 */
import { kindsOfComplaint, type ComplaintKind, type ZoneCode } from '../foot/index.ts';
import type { EvidenceWord, WeighedCell } from '../complaints/index.ts';
import { mileageBefore } from '../mileage/index.ts';
import type { RecordId } from '../records/index.ts';
import type { Metres } from '../units/index.ts';
import { latestAsked, sideOf, type Reported, type Side } from './callouts.ts';
import { isProven } from './closer-look.ts';
import type { ProjectLog } from './project-log.ts';
import type { Review, RoundReview } from './review-types.ts';

/** A complaint in one round; shares of asked runs. */
export interface RoundFelt extends Reported {
  readonly round: RecordId;
  /** Null: nobody reported it. */
  readonly word: EvidenceWord | null;
  readonly share: number | null;
  readonly interval: readonly [number, number] | null;
  readonly allowedRate: number | null;
}

/** The first run that reported a complaint. */
export interface FeltSince {
  readonly run: RecordId;
  readonly tester: RecordId;
  readonly pair: RecordId;
  readonly atMs: number;
  /** On the pair when that run began. */
  readonly pairM: Metres;
}

export interface ShoeComplaint {
  readonly zone: ZoneCode;
  readonly kind: ComplaintKind;
  readonly side: Side;
  /** Counts against the brief's rate for pain. */
  readonly painLike: boolean;
  /** One for each round, in their order. */
  readonly rounds: readonly RoundFelt[];
  /** The round that proves most of it, the latest of several. */
  readonly surest: RoundFelt & { readonly word: EvidenceWord };
  /** Testers for whom it is proved in that round. */
  readonly proved: readonly RecordId[];
  readonly since: FeltSince | null;
  /** Who made nearly all of the reports, where several testers made some. */
  readonly mostly: { readonly tester: RecordId; readonly runs: number; readonly of: number } | null;
}

export interface ShoeLook {
  /** The latest round in which anybody was asked; null: nobody was. */
  readonly latest: RecordId | null;
  readonly complaints: readonly ShoeComplaint[];
}

/** From this share of the reports on, they are nearly all one tester's. Judgement, no source. */
export const MOSTLY = 0.8;
/** Fewer reports than this are nobody's in particular. Judgement, no source. */
const LEAST_REPORTS = 5;

/** Who made nearly all of these reports; null where they are few, of one tester, or of several alike. */
export const mostlyOf = (
  reporters: Iterable<readonly [RecordId, number]>,
): ShoeComplaint['mostly'] => {
  const list = [...reporters];
  const of = list.reduce((sum, [, runs]) => sum + runs, 0);
  if (list.length < 2 || of < LEAST_REPORTS) return null;
  const [tester, runs] = list.reduce((most, one) => (one[1] > most[1] ? one : most));
  return runs >= MOSTLY * of ? { tester, runs, of } : null;
};

const keyOf = ({ zone, kind }: { readonly zone: ZoneCode; readonly kind: ComplaintKind }): string =>
  `${zone} ${kind}`;

const strength: Readonly<Record<EvidenceWord, number>> = {
  'recurs-across-testers': 4,
  'recurs-for-one-tester': 3,
  'early-sign': 2,
  'seen-once': 1,
  'not-seen': 0,
  'too-few-runs': 0,
};

const feltIn = (round: RoundReview, cell: WeighedCell | undefined): RoundFelt => ({
  round: round.id,
  word: cell?.word ?? null,
  testers: cell?.testersOnce ?? 0,
  askedTesters: round.complaints.asked.testers,
  runs: cell?.runs ?? 0,
  askedRuns: round.complaints.asked.runs,
  share: cell?.runShare.share ?? null,
  interval: cell ? [cell.runShare.lower, cell.runShare.upper] : null,
  allowedRate: cell?.allowedRate ?? null,
});

/** The first run of each zone and kind, in one pass over the runs. */
const firstReports = (log: ProjectLog): ReadonlyMap<string, FeltSince> => {
  const first = new Map<string, { startMs: number; since: () => FeltSince }>();
  for (const { id: pair, runs, curve } of log.pairs)
    for (const {
      id: run,
      tester,
      startMs,
      run: { feet },
    } of runs) {
      if (feet?.answer !== 'complaints') continue;
      for (const one of feet.complaints) {
        const known = first.get(keyOf(one));
        if (known && known.startMs <= startMs) continue;
        const since = () => ({
          run,
          tester,
          pair,
          atMs: startMs,
          pairM: mileageBefore(curve, startMs),
        });
        first.set(keyOf(one), { startMs, since });
      }
    }
  return new Map([...first].map(([key, { since }]) => [key, since()]));
};

/** Pain first; then by what the latest round says; then by the surest of all rounds. */
const rankOf = (latest: RecordId | null) => {
  const score = ({ rounds, surest, painLike }: ShoeComplaint): readonly number[] => {
    const now = rounds.find(({ round }) => round === latest);
    const word = now?.word ?? null;
    const told =
      word === null ? 0 : word === 'early-sign' && (now?.testers ?? 0) < 2 ? 1 : strength[word];
    return [
      painLike ? 1 : 0,
      told >= 2 ? told : 0,
      strength[surest.word],
      now?.testers ?? 0,
      surest.testers,
      surest.runs,
    ];
  };
  return (a: ShoeComplaint, b: ShoeComplaint): number => {
    const [of, other] = [score(a), score(b)];
    const at = of.findIndex((value, place) => value !== other[place]);
    return at < 0 ? (keyOf(a) < keyOf(b) ? -1 : 1) : (other[at] as number) - (of[at] as number);
  };
};

/** Looks at every complaint of a project. @param review of the same log */
export const lookAtShoe = (log: ProjectLog, review: Review): ShoeLook => {
  const cells = new Map<string, Map<RecordId, WeighedCell>>();
  for (const round of review.rounds)
    for (const cell of round.complaints.cells) {
      const known = cells.get(keyOf(cell)) ?? new Map<RecordId, WeighedCell>();
      cells.set(keyOf(cell), known.set(round.id, cell));
    }
  const since = firstReports(log);
  const latest = latestAsked(review)?.id ?? null;
  const complaints = [...cells].flatMap(([key, byRound]): ShoeComplaint[] => {
    const rounds = review.rounds.map((round) => feltIn(round, byRound.get(round.id)));
    const surest = rounds.reduce<RoundFelt | null>((best, one) => {
      if (one.word === null) return best;
      return best?.word && strength[best.word] > strength[one.word] ? best : one;
    }, null);
    const cell = surest && byRound.get(surest.round);
    if (!surest?.word || !cell) return [];
    const { zone, kind } = cell;
    const feet = { left: 0, right: 0 };
    const reporters = new Map<RecordId, number>();
    for (const { byFoot, byTester } of byRound.values()) {
      feet.left += byFoot.left;
      feet.right += byFoot.right;
      for (const { tester, reported } of byTester)
        reporters.set(tester, (reporters.get(tester) ?? 0) + reported);
    }
    return [
      {
        zone,
        kind,
        side: sideOf(feet),
        painLike: kindsOfComplaint[kind].painLike,
        rounds,
        surest: { ...surest, word: surest.word },
        proved: isProven(cell) ? cell.provenTesters.map(({ tester }) => tester) : [],
        since: since.get(key) ?? null,
        mostly: mostlyOf(reporters),
      },
    ];
  });
  return { latest, complaints: complaints.sort(rankOf(latest)) };
};
