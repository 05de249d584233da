/** Simulated panels: does the agreement of a panel exist whatever the scores, and do its intervals cover the truth? */
import { panelAgreement, type AgreementAnswer } from '../../core/panel/index.ts';
import type { Interval } from '../../core/statistics/index.ts';
import { idOf } from '../core/records/make.ts';
import { seeded } from '../seeded.ts';

export interface PanelDesign {
  readonly rounds: number;
  readonly testers: number;
  /** Share of the spread of one tester's score that comes from the rounds: the true ICC(2,1). */
  readonly icc: number;
  /** Share of the rest that comes from the testers' own levels. */
  readonly levels: number;
}

/** How scores are drawn. */
export const shapes = [
  'normal',
  'heavy tails',
  'tens',
  'one constant tester',
  'all constant',
  'all alike',
] as const;
export type Shape = (typeof shapes)[number];

const MIDDLE = 60;
const SPREAD = 12;

/** Standard normal numbers (Box GEP & Muller ME 1958). */
const normalFrom = (random: () => number) => (): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

/** One panel's scores, a row a round. */
export const drawPanel = (
  { rounds, testers, icc, levels }: PanelDesign,
  shape: Shape,
  random: () => number,
): number[][] => {
  const normal = normalFrom(random);
  // Student's t with two degrees of freedom: its variance is not finite.
  const heavy = () => normal() / Math.sqrt(-Math.log(1 - random()));
  const draw = shape === 'heavy tails' ? heavy : normal;
  const of = (share: number) => Math.sqrt(share) * SPREAD;
  const byRound = Array.from({ length: rounds }, () => of(icc) * draw());
  const byTester = Array.from({ length: testers }, () => of((1 - icc) * levels) * draw());
  return byRound.map((round) =>
    byTester.map((tester, at) => {
      const own = of((1 - icc) * (1 - levels)) * draw();
      if (shape === 'all constant') return MIDDLE + tester;
      if (shape === 'all alike') return MIDDLE + round + tester;
      if (shape === 'one constant tester' && at === 0) return MIDDLE;
      const score = MIDDLE + round + tester + own;
      return shape === 'tens' ? 10 * Math.round(score / 10) : score;
    }),
  );
};

/** What the review says of these scores, each given in two sessions. */
export const agreementOf = (scores: readonly (readonly number[])[]): AgreementAnswer =>
  panelAgreement(
    scores.flatMap((row, round) =>
      row.flatMap((score, tester) =>
        [-1, 1].map((session) => ({
          tester: idOf(tester),
          round: idOf(100 + round),
          pair: idOf(200 + round),
          score: score + session,
        })),
      ),
    ),
    scores.map((_, round) => idOf(100 + round)),
  );

/** Every number of rounds and testers that the sweep looks at. */
export const sizes = [2, 3, 4, 5, 6].flatMap((rounds) =>
  [3, 4, 5, 6, 7, 8, 9, 10, 11, 12].map((testers) => ({ rounds, testers })),
);

/** What is wrong with the answers to so many panels of all sizes, shapes and true correlations; empty: nothing. */
export const sweepPanels = (panels: number, seed: number): readonly string[] => {
  const random = seeded(seed);
  const wrong: string[] = [];
  for (let at = 0; at < panels; at++) {
    const design: PanelDesign = {
      ...(sizes[at % sizes.length] as (typeof sizes)[number]),
      icc: [0, 0.3, 0.6, 0.9][Math.floor(random() * 4)] as number,
      levels: [0, 0.3, 0.7][Math.floor(random() * 3)] as number,
    };
    const shape = shapes[Math.floor(random() * shapes.length)] as Shape;
    const scores = drawPanel(design, shape, random);
    const say = (what: string) =>
      wrong.push(`${what}: ${shape}, ${JSON.stringify(scores).slice(0, 200)}`);
    try {
      const answer = agreementOf(scores);
      if (!answer.ok) continue;
      const { one, oneLevelled, panel } = answer.agreement;
      for (const { icc, lower, upper } of [one, oneLevelled, panel]) {
        if (![icc, lower, upper].every((value) => Math.abs(value) <= 1)) say('beyond ±1');
        if (!(lower <= upper)) say('lower above upper');
      }
    } catch (error) {
      say(String(error));
    }
  }
  return wrong;
};

/** In which share of panels with an answer the interval holds the truth: one score, after levels, the panel's mean. */
export const coverageOf = (
  design: PanelDesign,
  panels: number,
  seed: number,
  shape: Shape = 'normal',
): { readonly one: number; readonly oneLevelled: number; readonly panel: number } => {
  const random = seeded(seed);
  const { icc, levels, testers } = design;
  const own = (1 - icc) * (1 - levels);
  const truth = {
    one: icc,
    oneLevelled: icc / (icc + own),
    panel: (testers * icc) / (1 + (testers - 1) * icc),
  };
  const held = { one: 0, oneLevelled: 0, panel: 0 };
  let answered = 0;
  const holds = ({ lower, upper }: Interval, value: number) => lower <= value && value <= upper;
  for (let at = 0; at < panels; at++) {
    const answer = agreementOf(drawPanel(design, shape, random));
    if (!answer.ok) continue;
    answered++;
    for (const which of ['one', 'oneLevelled', 'panel'] as const)
      if (holds(answer.agreement[which], truth[which])) held[which]++;
  }
  return {
    one: held.one / answered,
    oneLevelled: held.oneLevelled / answered,
    panel: held.panel / answered,
  };
};
