/**
 * Which complaints recur, and how sure is that, however often one looks?
 *
 * For each zone and kind two claims are weighed against the brief's allowed rate per asked run: at least
 * two testers are above it, and this one tester is. Their e-values (`core/statistics/rate-evidence.ts`,
 * with sources) stay valid at every reading. Over all cells of a round the false discovery rate of each
 * claim is held at 10 % by e-BH, whatever the dependence between cells: complaints of one run come in
 * bunches (Wang R & Ramdas A, False discovery rate control with e-values, J R Stat Soc B
 * 2022;84:822-852). Looking after every run changes nothing: the reading at which one acts is a stopping
 * time. That is said of one reading of all cells. Findings that were each frozen at a reading of their own are
 * not held together by it.
 *
 * What it leans on: each run with the chance of a complaint at most the allowed one, whatever came before. A
 * complaint that lingers from run to run, or a question answered mainly when something hurts, breaks that;
 * `tests/calibrate` says by how much, and the screens say it too.
 *
 * Every combination of zone and kind is a hypothesis. Those that cannot sensibly be felt there
 * (`isPlausible`) share a twentieth of the error, so that they cost the others nearly nothing: prior
 * weights, fixed before any run. For claims on one tester, each tester of the panel is a hypothesis too;
 * who tests must not be decided by what was complained of.
 */
import {
  complaintKinds,
  isPlausible,
  kindsOfComplaint,
  plausibleCells,
  zoneCodes,
  type ComplaintKind,
  type ZoneCode,
} from '../foot/index.ts';
import type { RecordId } from '../records/index.ts';
import {
  clusteredFromSums,
  eBenjaminiHochberg,
  eValueOf,
  evidenceOverUnits,
  logUnitEvidence,
  wilson,
  type ClusteredShare,
  type Interval,
} from '../statistics/index.ts';
import { countTally, type Asked, type ComplaintCell } from './counts.ts';
import type { FeetAnswer } from './feet-answer.ts';
import { chanceOfSilence, SILENCE_LEVEL } from './silence.ts';
import { tallyAnswers } from './tally.ts';

/** What the log says about a cell; nothing else is shown as proof. */
export const evidenceWords = [
  /** At least two testers are above the allowed rate. */
  'recurs-across-testers',
  /** Named testers are above it; whether another is, is open. A question of that foot's fit. */
  'recurs-for-one-tester',
  /** Reported in two runs or more, and not proven. */
  'early-sign',
  /** Reported in one run. */
  'seen-once',
  /** No report, and so long a silence would be rare were it there (`silence.ts`). */
  'not-seen',
  /** No report, and so few asked runs that this says little, or that a report in each would be no proof. */
  'too-few-runs',
] as const;
export type EvidenceWord = (typeof evidenceWords)[number];

/** Share of asked runs in which a complaint is still accepted, from the brief. */
export interface AllowedRate {
  readonly complaint: number;
  readonly pain: number;
}

/** Share of proven claims that may be false, on average. */
export const FALSE_DISCOVERY_RATE = 0.1;

/** Share of that which the cells that cannot sensibly be felt have among them. */
const IMPLAUSIBLE_SHARE = 0.05;

const CELLS = zoneCodes.length * complaintKinds.length;
const PLAUSIBLE = plausibleCells().length;

/** ln of a cell's prior weight; the weights of all cells sum to their number. */
const logWeight = (kind: ComplaintKind, zone: ZoneCode): number =>
  Math.log(
    isPlausible(kind, zone)
      ? ((1 - IMPLAUSIBLE_SHARE) * CELLS) / PLAUSIBLE
      : (IMPLAUSIBLE_SHARE * CELLS) / (CELLS - PLAUSIBLE),
  );

/** What the runs of a round prove of one complaint, and how sure its shares are. */
export interface Proof {
  readonly word: EvidenceWord;
  readonly allowedRate: number;
  /** E-value that at least two testers are above the allowed rate; compare with `needed`. */
  readonly eValue: number;
  /** What the e-value must reach by itself. */
  readonly needed: number;
  /** Share of the testers asked who reported it once, and twice, with Wilson's interval: one vote a tester. */
  readonly shareOnce: Interval;
  readonly shareTwice: Interval;
  /** Share of asked runs that reported it, the tester as the unit. */
  readonly runShare: ClusteredShare;
  /** Testers who are each proven to be above the allowed rate, strongest first. */
  readonly provenTesters: readonly { readonly tester: RecordId; readonly eValue: number }[];
}

/** The counts of one cell of a round, and what they prove; `needed` is less with each cell that is proven. */
export interface WeighedCell extends ComplaintCell, Proof {}

/** What holds for every cell of a round that nobody reported. */
export interface Unreported {
  readonly word: 'not-seen' | 'too-few-runs';
  /** Share of testers who might still have it: Wilson's upper limit of 0 of the testers asked. */
  readonly testersUpTo: number;
  /** Chance of such silence were half of the testers prone to it (`silence.ts`), 0 to 1. */
  readonly silenceChance: number;
}

/** Who was asked in a round, and what was reported. */
export interface RoundComplaints {
  readonly asked: Asked;
  /** Cells with a report: proven first, then by e-value, then by zone and kind. */
  readonly cells: readonly WeighedCell[];
  readonly unreported: { readonly complaint: Unreported; readonly pain: Unreported };
}

/** The rate that a kind is held against. */
export const allowedRateOf = (kind: ComplaintKind, allowed: AllowedRate): number =>
  kindsOfComplaint[kind].painLike ? allowed.pain : allowed.complaint;

/**
 * Counts and weighs the answers of one round. The order of the answers never changes anything.
 * @param answers of every run of the round whose feet question was answered
 * @param panel those who are to be asked: who got a pair of the round; testers asked belong to it anyway
 */
export const weighComplaints = (
  answers: readonly FeetAnswer[],
  allowed: AllowedRate,
  panel: Iterable<RecordId> = [],
): RoundComplaints => {
  const tally = tallyAnswers(answers);
  const { asked, cells: counted } = countTally(tally, answers);
  const known = new Set(tally.testers);
  const waiting = [...new Set(panel)].filter((tester) => !known.has(tester));
  const trials = [...tally.asked, ...waiting.map(() => 0)];
  const judges = {
    complaint: evidenceOverUnits(trials, allowed.complaint),
    pain: evidenceOverUnits(trials, allowed.pain),
  };
  const squaredTrials = tally.asked.reduce((sum, n) => sum + n * n, 0);

  const weighed = counted.map((cell) => {
    const judge = kindsOfComplaint[cell.kind].painLike ? judges.pain : judges.complaint;
    const reporters = cell.byTester.map((own) => ({ x: own.reported, n: own.asked }));
    return { cell, logE: judge(reporters), bonus: logWeight(cell.kind, cell.zone) };
  });
  const across = eBenjaminiHochberg(
    weighed.map(({ logE, bonus }) => logE + bonus),
    CELLS,
    FALSE_DISCOVERY_RATE,
  );
  const single = provenTesters(counted, allowed, trials.length);
  const plausible = Math.log(PLAUSIBLE / (1 - IMPLAUSIBLE_SHARE) / FALSE_DISCOVERY_RATE);

  const cells = weighed.map(({ cell, logE, bonus }, at): WeighedCell => {
    const proven = single[at] as WeighedCell['provenTesters'];
    return {
      ...cell,
      word: across[at] ? 'recurs-across-testers' : wordOf(cell, proven.length > 0),
      allowedRate: allowedRateOf(cell.kind, allowed),
      eValue: eValueOf(logE),
      needed: CELLS / FALSE_DISCOVERY_RATE / Math.exp(bonus),
      shareOnce: wilson(cell.testersOnce, asked.testers),
      shareTwice: wilson(cell.testersTwice, asked.testers),
      runShare: runShareOf(cell, asked, squaredTrials),
      provenTesters: proven,
    };
  });
  const unreportedBy = (kind: keyof AllowedRate): Unreported => {
    const silenceChance = chanceOfSilence(tally.asked, allowed[kind]);
    const canBeProven = judges[kind](tally.asked.map((n) => ({ x: n, n }))) >= plausible;
    return {
      word: canBeProven && silenceChance <= SILENCE_LEVEL ? 'not-seen' : 'too-few-runs',
      testersUpTo: asked.testers > 0 ? wilson(0, asked.testers).upper : 1,
      silenceChance,
    };
  };
  return {
    asked,
    cells: cells.sort(byStrength),
    unreported: { complaint: unreportedBy('complaint'), pain: unreportedBy('pain') },
  };
};

const wordOf = (cell: ComplaintCell, oneProven: boolean): EvidenceWord =>
  oneProven ? 'recurs-for-one-tester' : cell.runs > 1 ? 'early-sign' : 'seen-once';

const byStrength = (a: WeighedCell, b: WeighedCell): number =>
  evidenceWords.indexOf(a.word) - evidenceWords.indexOf(b.word) ||
  b.eValue - a.eValue ||
  b.testersOnce - a.testersOnce ||
  b.runs - a.runs ||
  (a.zone === b.zone ? (a.kind < b.kind ? -1 : 1) : a.zone < b.zone ? -1 : 1);

/** Σ (x − share · n)² over all testers, from the reporters' counts and Σ n² of all. */
const runShareOf = (
  { runs, byTester }: ComplaintCell,
  asked: Asked,
  squaredTrials: number,
): ClusteredShare => {
  const share = runs / asked.runs;
  let squares = share * share * squaredTrials;
  for (const { reported, asked: n } of byTester)
    squares += reported * reported - 2 * share * reported * n;
  return clusteredFromSums({
    units: asked.testers,
    x: runs,
    n: asked.runs,
    squares: Math.max(0, squares),
  });
};

/** The testers of each cell who are themselves above the allowed rate: e-BH over cells and testers. */
const provenTesters = (
  cells: readonly ComplaintCell[],
  allowed: AllowedRate,
  testers: number,
): WeighedCell['provenTesters'][] => {
  // Nothing below the threshold with every hypothesis rejected can ever be proven.
  const candidates: { at: number; tester: RecordId; logE: number; weighted: number }[] = [];
  for (const [at, { kind, zone, byTester }] of cells.entries()) {
    const rate = allowedRateOf(kind, allowed);
    const bonus = logWeight(kind, zone);
    for (const { tester, reported, asked } of byTester) {
      const logE = logUnitEvidence(reported, asked, rate);
      const weighted = logE + bonus;
      if (weighted >= -Math.log(FALSE_DISCOVERY_RATE))
        candidates.push({ at, tester, logE, weighted });
    }
  }
  const proven = eBenjaminiHochberg(
    candidates.map(({ weighted }) => weighted),
    CELLS * testers,
    FALSE_DISCOVERY_RATE,
  );
  const found: { tester: RecordId; eValue: number; logE: number }[][] = cells.map(() => []);
  for (const [index, { at, tester, logE }] of candidates.entries())
    if (proven[index]) found[at]?.push({ tester, eValue: eValueOf(logE), logE });
  return found.map((list) =>
    list
      .sort((a, b) => b.logE - a.logE || (a.tester < b.tester ? -1 : 1))
      .map(({ tester, eValue }) => ({ tester, eValue })),
  );
};
