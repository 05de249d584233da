/**
 * What did the testers answer to the question after pain, and is it more than the brief allows?
 *
 * The question stands beside the zones: pain may have no zone, and a pain in a zone counts there. A run is asked
 * if the question was answered, 0 included. It counts from 3 of 10 on, or with a sign from 1 on: the line of the
 * caution (`caution.ts`), here whether the pain is new or not, because pain that comes back is no less.
 *
 * The claims are those of a cell (`evidence.ts`): at least two testers are above the allowed rate of pain, and this
 * one is. It is one question and no choice among zones, so each claim stands by itself: false in at most 5 % of
 * rounds, however often one looks (Ville's bound; for single testers by e-BH over the panel).
 */
import type { RecordId } from '../records/index.ts';
import {
  clusteredProportion,
  eBenjaminiHochberg,
  eValueOf,
  evidenceOverUnits,
  logUnitEvidence,
  wilson,
  type ClusteredShare,
} from '../statistics/index.ts';
import { isCautionDue } from './caution.ts';
import type { Asked, ComplaintCell } from './counts.ts';
import type { Proof } from './evidence.ts';
import { chanceOfSilence, SILENCE_LEVEL } from './silence.ts';

/** From this score of 10 on pain counts without a sign. */
export const PAIN_FROM = 3;

/** Chance of a false claim. */
const PAIN_LEVEL = 0.05;

/** One run's answer. */
export interface PainAnswer {
  readonly run: RecordId;
  readonly tester: RecordId;
  /** 0 to 10. */
  readonly score: number;
  /** Null: not answered. */
  readonly isNew: boolean | null;
  readonly signs: readonly unknown[];
}

/** What the answers of a round come to; counts and proof are those of a complaint without a zone. */
export interface RoundPain
  extends
    Proof,
    Pick<ComplaintCell, 'runs' | 'testersOnce' | 'testersTwice' | 'byTester' | 'runIds'> {
  readonly asked: Asked;
  /** Runs with any pain at all; `runs` are those whose pain counts. */
  readonly anyRuns: number;
  /** Runs whose pain called for the caution. */
  readonly cautionRuns: number;
  /** Greatest score. */
  readonly most: number;
  /** Chance of such silence were half of the testers prone; for who reads that none was reported. */
  readonly silenceChance: number;
}

const counts = ({ score, signs }: PainAnswer): boolean =>
  score >= PAIN_FROM || (score > 0 && signs.length > 0);

interface OfTester {
  readonly tester: RecordId;
  asked: number;
  reported: number;
}

const byTesterOf = (answers: readonly PainAnswer[]): OfTester[] => {
  const testers = new Map<RecordId, OfTester>();
  for (const answer of answers) {
    const { tester } = answer;
    const own = testers.get(tester) ?? { tester, asked: 0, reported: 0 };
    own.asked++;
    if (counts(answer)) own.reported++;
    testers.set(tester, own);
  }
  return [...testers.values()];
};

/**
 * Counts and weighs the answers of one round.
 * @param allowed share of runs in which the brief accepts pain
 * @param panel those who are to be asked; who answered belongs to it anyway
 * @returns null where nobody answered the question
 */
export const weighPain = (
  answers: readonly PainAnswer[],
  allowed: number,
  panel: Iterable<RecordId> = [],
): RoundPain | null => {
  const testers = byTesterOf(answers);
  if (testers.length === 0) return null;
  const known = new Set(testers.map(({ tester }) => tester));
  const waiting = [...new Set(panel)].filter((tester) => !known.has(tester));
  const asked = testers.map((own) => own.asked);
  const trials = [...asked, ...waiting.map(() => 0)];
  const judge = evidenceOverUnits(trials, allowed);
  const hurt = testers
    .filter(({ reported }) => reported > 0)
    .sort((a, b) => b.reported - a.reported || (a.tester < b.tester ? -1 : 1));
  const logE = judge(hurt.map((own) => ({ x: own.reported, n: own.asked })));
  const single = hurt.map((own) => logUnitEvidence(own.reported, own.asked, allowed));
  const isProven = eBenjaminiHochberg(single, trials.length, PAIN_LEVEL);
  const provenTesters = hurt
    .flatMap(({ tester }, at) => (isProven[at] ? [{ tester, logE: single[at] as number }] : []))
    .sort((a, b) => b.logE - a.logE || (a.tester < b.tester ? -1 : 1))
    .map((one) => ({ tester: one.tester, eValue: eValueOf(one.logE) }));
  const felt = answers.filter(counts);
  const needed = 1 / PAIN_LEVEL;
  const silenceChance = chanceOfSilence(asked, allowed);
  const canBeProven = judge(asked.map((n) => ({ x: n, n }))) >= Math.log(needed);
  const silent = canBeProven && silenceChance <= SILENCE_LEVEL ? 'not-seen' : 'too-few-runs';
  const testersTwice = hurt.filter(({ reported }) => reported >= 2).length;
  return {
    asked: { runs: answers.length, testers: testers.length },
    anyRuns: answers.filter(({ score }) => score > 0).length,
    runs: felt.length,
    cautionRuns: answers.filter(({ score, isNew, signs }) => isCautionDue(score, isNew, signs))
      .length,
    testersOnce: hurt.length,
    testersTwice,
    most: answers.reduce((most, { score }) => Math.max(most, score), 0),
    word:
      logE >= Math.log(needed)
        ? 'recurs-across-testers'
        : provenTesters.length > 0
          ? 'recurs-for-one-tester'
          : felt.length > 1
            ? 'early-sign'
            : felt.length === 1
              ? 'seen-once'
              : silent,
    allowedRate: allowed,
    eValue: eValueOf(logE),
    needed,
    shareOnce: wilson(hurt.length, testers.length),
    shareTwice: wilson(testersTwice, testers.length),
    runShare: clusteredProportion(
      testers.map(({ reported }) => reported),
      asked,
    ) as ClusteredShare,
    silenceChance,
    provenTesters,
    byTester: hurt.map(({ tester, asked: n, reported }) => ({ tester, asked: n, reported })),
    runIds: felt.map(({ run }) => run).sort(),
  };
};
