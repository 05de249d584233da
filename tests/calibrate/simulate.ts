/**
 * Simulated wear tests, and three rules that read them: the evidence of `core/statistics/rate-evidence`
 * with e-BH, the plain eyeball rule (two testers, twice each), and a classical one (an exact binomial test
 * of the pooled runs of each cell with Benjamini and Hochberg's procedure, as if each run were a witness).
 */
import {
  benjaminiHochberg,
  binomialUpper,
  eBenjaminiHochberg,
  evidenceOverUnits,
  logUnitEvidence,
} from '../../core/statistics/index.ts';
import { seeded } from '../seeded.ts';

export interface Scenario {
  readonly name: string;
  readonly testers: number;
  readonly runs: number;
  readonly cells: number;
  /** The rate that the rules hold cells against. */
  readonly allowed: number;
  /** Rate per run of everyone in every other cell. */
  readonly background: number;
  /** In the first cell, so many testers have this rate. */
  readonly affected: number;
  readonly rate: number;
  /** Chance that a run is a bad day, on which every rate is doubled (and halved by as much on others). */
  readonly badDays?: number;
  /** A complaint lingers: with this chance a run is as the tester's last one, else it is drawn anew. */
  readonly linger?: number;
  /** Testers differ: in the background from never to the rate, of the affected by half of it either way. */
  readonly differ?: boolean;
  /** Testers come in over the first half of the runs, not all at once. */
  readonly joinLate?: boolean;
  /** Only the first cell is simulated; the others count as hypotheses that are never proven. */
  readonly firstCellOnly?: boolean;
}

export interface RuleFigures {
  /** Share of tests in which the first cell was called recurrent at some reading, and at the last. */
  readonly detectedEver: number;
  readonly detectedAtEnd: number;
  /** Run by which half of the tests had it; null where fewer had. */
  readonly medianRun: number | null;
  /** Share of tests with any other cell called recurrent at some reading. */
  readonly falseEver: number;
}

export interface Figures {
  readonly evidence: RuleFigures & {
    /** Share of tests in which the first cell named its one tester, and not "across", at the end. */
    readonly oneTester: number;
  };
  readonly eyeball: RuleFigures;
  readonly classicalDaily: RuleFigures;
  readonly classicalOnce: RuleFigures;
}

const LEVEL = 0.1;

class Tally {
  ever = 0;
  end = 0;
  falseEver = 0;
  readonly firsts: number[] = [];
  figures(tests: number): RuleFigures {
    const sorted = [...this.firsts].sort((a, b) => a - b);
    return {
      detectedEver: this.ever / tests,
      detectedAtEnd: this.end / tests,
      medianRun: sorted[Math.ceil(tests / 2) - 1] ?? null,
      falseEver: this.falseEver / tests,
    };
  }
}

/** Plays the scenario `tests` times; readings after every single run. */
export const simulate = (scenario: Scenario, tests: number, seed: number): Figures => {
  const { testers, runs, cells, allowed, background, affected, rate } = scenario;
  const random = seeded(seed);
  const simulated = scenario.firstCellOnly ? 1 : cells;
  const tallies = {
    evidence: new Tally(),
    eyeball: new Tally(),
    classicalDaily: new Tally(),
    classicalOnce: new Tally(),
  };
  let oneTester = 0;
  const x = Array.from({ length: simulated }, () => new Int32Array(testers));
  const runBefore = Array.from({ length: simulated }, () => new Int8Array(testers).fill(-1));
  const logE = new Float64Array(simulated);
  for (let test = 0; test < tests; test++) {
    for (const counts of x) counts.fill(0);
    for (const before of runBefore) before.fill(-1);
    logE.fill(0);
    const n = new Int32Array(testers);
    const differs = Array.from({ length: testers }, () => (scenario.differ ? random() : null));
    const ever = {
      evidence: [false, false],
      eyeball: [false, false],
      classicalDaily: [false, false],
    };
    type Rule = keyof typeof ever;
    const note = (rule: Rule, cell: number, run: number) => {
      const which = cell === 0 && affected > 0 ? 0 : 1;
      if (ever[rule][which]) return;
      ever[rule][which] = true;
      if (which === 0) tallies[rule].firsts.push(run);
    };
    const evidenceNow = (changed: readonly number[], whole: boolean) => {
      const asked = Array.from(n).filter((count) => count > 0 || !scenario.joinLate);
      const judge = evidenceOverUnits(asked, allowed);
      const of = (cell: number) => {
        const reporters = [];
        const own = x[cell] as Int32Array;
        for (let i = 0; i < testers; i++)
          if ((own[i] as number) > 0) reporters.push({ x: own[i] as number, n: n[i] as number });
        return judge(reporters);
      };
      for (const cell of whole ? x.keys() : changed) logE[cell] = of(cell);
    };
    for (let run = 1; run <= runs; run++)
      for (let i = 0; i < testers; i++) {
        if (scenario.joinLate && run <= Math.floor((i * runs) / (2 * testers))) continue;
        n[i] = (n[i] as number) + 1;
        const bad = scenario.badDays ?? 0;
        const factor = bad > 0 ? (random() < bad ? 2 : (1 - 2 * bad) / (1 - bad)) : 1;
        const changed: number[] = [];
        for (let cell = 0; cell < simulated; cell++) {
          const own = differs[i] ?? null;
          const p =
            factor *
            (cell === 0 && i < affected
              ? rate * (own === null ? 1 : 0.5 + own)
              : background * (own ?? 1));
          const before = runBefore[cell] as Int8Array;
          const lingers =
            scenario.linger !== undefined && before[i] !== -1 && random() < scenario.linger;
          const reported = lingers ? before[i] === 1 : random() < p;
          before[i] = reported ? 1 : 0;
          if (reported) {
            const own = x[cell] as Int32Array;
            own[i] = (own[i] as number) + 1;
            changed.push(cell);
          }
        }
        const last = run === runs && i === testers - 1;
        // A run without a report never raises a cell's evidence, so only changed cells can newly be proven.
        if (changed.length > 0 || last) {
          evidenceNow(changed, last);
          const most = changed.reduce((a, cell) => Math.max(a, logE[cell] as number), -Infinity);
          // Nothing is proven below the threshold of the case in which all are.
          if (most >= Math.log(1 / LEVEL) || last) {
            if (!last && simulated > 1) evidenceNow(changed, true);
            const proven = eBenjaminiHochberg(logE, cells, LEVEL);
            proven.forEach((is, cell) => is && note('evidence', cell, run));
            if (last) {
              if (proven[0]) tallies.evidence.end++;
              else if (affected === 1 && isNamed(x[0] as Int32Array, n, scenario)) oneTester++;
            }
          }
        }
        for (const cell of changed)
          if ((x[cell] as Int32Array).filter((count) => count >= 2).length >= 2)
            note('eyeball', cell, run);
        if (last && (x[0] as Int32Array).filter((count) => count >= 2).length >= 2)
          tallies.eyeball.end++;
        // The classical rule is read once a round of runs: reading it after each would be no kinder.
        if (i === testers - 1) {
          const total = n.reduce((a, b) => a + b, 0);
          const p = x.map((counts) =>
            binomialUpper(
              counts.reduce((a, b) => a + b, 0),
              total,
              allowed,
            ),
          );
          const all = [...p, ...new Array<number>(cells - simulated).fill(1)];
          const called = benjaminiHochberg(all).map((adjusted) => adjusted <= LEVEL);
          for (let cell = 0; cell < simulated; cell++)
            if (called[cell]) note('classicalDaily', cell, run);
          if (last) {
            if (called[0]) {
              tallies.classicalDaily.end++;
              tallies.classicalOnce.end++;
              tallies.classicalOnce.ever++;
            }
            if (called.some((is, cell) => is && (cell > 0 || affected === 0)))
              tallies.classicalOnce.falseEver++;
          }
        }
      }
    for (const rule of ['evidence', 'eyeball', 'classicalDaily'] as const) {
      if (ever[rule][0]) tallies[rule].ever++;
      if (ever[rule][1]) tallies[rule].falseEver++;
    }
  }
  return {
    evidence: { ...tallies.evidence.figures(tests), oneTester: oneTester / tests },
    eyeball: tallies.eyeball.figures(tests),
    classicalDaily: tallies.classicalDaily.figures(tests),
    classicalOnce: tallies.classicalOnce.figures(tests),
  };
};

/** Is exactly the first tester proven alone, over all cells and testers? */
const isNamed = (x: Int32Array, n: Int32Array, { allowed, cells, testers }: Scenario): boolean => {
  const logE = Array.from(x, (count, i) => logUnitEvidence(count, n[i] as number, allowed));
  const proven = eBenjaminiHochberg(logE, cells * testers, LEVEL);
  return proven[0] === true && !proven.some((is, i) => is && i > 0);
};
