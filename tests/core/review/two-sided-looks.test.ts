/** Marks from too little to too much where a tester, a place of wear and a finding are looked at: never mixed with scores. */
import { describe, expect, it } from 'vitest';
import {
  findingSchema,
  viewOfHeads,
  type Evidence,
  type RecordId,
} from '../../../core/records/index.ts';
import {
  feltCushioning,
  lookAtChanges,
  lookAtTester,
  openProject,
  proposeOutcome,
  reviewProject,
} from '../../../core/review/index.ts';
import { languageFile } from '../../../app/terminal/languages.ts';
import { outcomeOf } from '../../../app/words/say-change.ts';
import type { Speaker } from '../../../app/words/say-complaint.ts';
import { idOf } from '../records/make.ts';
import * as make from './log-for-tests.ts';
import { own, PROJECT, record } from './log-for-tests.ts';

const ROUNDS = [idOf(2), idOf(3)] as const;
const NOW = Date.UTC(2026, 5, 1);
const TESTERS = [1, 2, 3, 4, 5, 6];
const testerId = (n: number) => idOf(10 + n);
const pairId = (round: number, n: number) => idOf(20 + 10 * round + n);
const FINDING = idOf(900);

type Said = Readonly<Record<string, unknown>>;

/** Each tester wears both rounds, four runs of 40 km each. @param said what run `run` of tester `n` says */
const open = (said: (round: number, n: number, run: number) => Said, finding: Said = {}) => {
  const log = openProject(
    viewOfHeads([
      make.project({ attributes: ['overall', 'heel-cushioning'] }),
      ...ROUNDS.map((id, at) => make.round(id, at + 1)),
      ...TESTERS.flatMap((n) => [
        record(testerId(n), 'tester', { code: `T0${n}` }),
        ...[0, 1].flatMap((round) => [
          make.pair(pairId(round, n), ROUNDS[round] as RecordId, `${round + 1}0${n}`),
          make.handOut(
            idOf(100 + 10 * round + n),
            { pair: pairId(round, n), tester: testerId(n) },
            `2026-0${round + 3}-01T00:00:00Z`,
            { until: `2026-0${round + 3}-28T00:00:00Z` },
          ),
          ...[0, 1, 2, 3].map((run) =>
            make.run(
              idOf(150 + 40 * round + 6 * run + n),
              { pair: pairId(round, n), tester: testerId(n) },
              `2026-0${round + 3}-0${run + 2}T07:00:00Z`,
              { distanceM: 40_000, ...said(round, n, run) },
            ),
          ),
        ]),
      ]),
      own(FINDING, 'finding', {
        title: 'Heel too soft',
        part: 'midsole-foam',
        priority: 'high',
        state: 'carried-out',
        round: ROUNDS[0],
        carriedBy: ROUNDS[1],
        ...finding,
      }),
    ]),
    PROJECT,
    NOW,
  );
  if (!log) throw new Error('no project');
  return log;
};

/** The first round is marked too soft and scored 40 on the line of before; the second as given. */
const heel = (later: (n: number, run: number) => Said) =>
  open((round, n, run) =>
    round === 1
      ? later(n, run)
      : { comfort: { overall: 60 }, comfort2: { 'heel-cushioning': -44 - n } },
  );

const evidence: Evidence = {
  until: '2026-04-01T00:00:00Z',
  lines: ['Heel cushioning: too soft 6, just right 0, too firm 0.'],
  twoSided: {
    attribute: 'heel-cushioning',
    low: 6,
    right: 0,
    high: 0,
    word: 'low',
    sure: 'clear',
    cost: null,
  },
};
const finding = { round: ROUNDS[0], carriedBy: ROUNDS[1], evidence };

describe('a tester beside the others', () => {
  const log = open((round, n, run) => ({
    ...(run === 0 && { firstImpression: true }),
    ...(round === 0
      ? { comfort: { 'heel-cushioning': 10 * n } }
      : { comfort2: { 'heel-cushioning': run === 0 ? 100 : -10 * n, 'ball-width': 20 } }),
  }));
  const look = lookAtTester(log, reviewProject(log), testerId(4));

  it('has marks by themselves, first wearings left out, and so have the others', () => {
    expect(look?.marks).toEqual([
      {
        attribute: 'heel-cushioning',
        mean: -40,
        runs: 3,
        others: [1, 2, 3, 5, 6].map((n) => ({ tester: testerId(n), mean: -10 * n })),
      },
      {
        attribute: 'ball-width',
        mean: 20,
        runs: 3,
        others: [1, 2, 3, 5, 6].map((n) => ({ tester: testerId(n), mean: 20 })),
      },
    ]);
  });

  it('has the scores of the line of before as they were', () => {
    expect(look?.comfort).toMatchObject([{ attribute: 'heel-cushioning', mean: 40, runs: 3 }]);
  });
});

describe('how cushioning is felt over the distance', () => {
  // Everybody scores alike and marks five points softer a run, 12.5 per 100 km; what one strays the other strays back.
  const strays = (n: number, run: number) =>
    (n < 4 ? 1 : -1) * (1 + ((3 * Math.min(n, 7 - n) * run) % 5));
  const log = open((_round, n, run) => ({
    ...(run === 0 && { firstImpression: true }),
    comfort: { 'heel-cushioning': 70 },
    comfort2: { 'heel-cushioning': strays(n, run) - 5 * run },
  }));
  const felt = feltCushioning(log, ROUNDS[0]);

  it('is two curves where both lines were answered', () => {
    expect(felt.map(({ line, attribute }) => [line, attribute])).toEqual([
      ['mark', 'heel-cushioning'],
      ['score', 'heel-cushioning'],
    ]);
    const [marks, scores] = felt;
    expect(marks?.stretches.map(({ fromM, mean }) => [fromM, mean.mean, mean.n])).toEqual([
      [0, -5, 6],
      [50_000, -10, 6],
      [100_000, -15, 6],
    ]);
    expect(marks?.drift?.per100Km).toBeCloseTo(-12.5, 6);
    expect(scores?.stretches.map(({ mean }) => mean.mean)).toEqual([70, 70, 70]);
  });

  it('is none where nobody answered', () => {
    expect(
      feltCushioning(
        open(() => ({})),
        ROUNDS[0],
      ),
    ).toEqual([]);
  });
});

describe('what came of a finding on something too soft', () => {
  const { desk, glossary } = languageFile('en');
  const speaker: Speaker = {
    desk,
    glossary,
    number: (value, most) => String(Number(value.toFixed(most))),
    distance: (distance) => `${distance} m`,
    tester: () => '?',
    pair: () => '?',
    round: (id) => `R${ROUNDS.findIndex((round) => round === id) + 1}`,
    foot: (foot) => foot,
    language: (tag) => tag,
  };
  const right = heel((n, run) => ({
    comfort: { overall: 75 },
    comfort2: { 'heel-cushioning': (n % 2 ? 4 : -4) + (run % 2 ? 2 : -2) },
  }));

  it('is mended where testers came closer and it is just right now', () => {
    const proposed = proposeOutcome(right, finding);
    expect(proposed).toMatchObject({
      of: 'two-sided',
      verdict: 'mended',
      moved: { earlier: { low: 6, right: 0 }, later: { low: 0, right: 6 }, testers: 6 },
    });
    if (!proposed) throw new Error('nothing proposed');
    const outcome = outcomeOf(proposed, finding, '2026-06-01T00:00:00Z', 'en', speaker);
    expect(outcome.lines.slice(0, 3)).toEqual([
      'Heel cushioning: proved to be closer to just right, and just right now',
      'R1: too soft 6, just right 0, too firm 0',
      'R2: too soft 0, just right 6, too firm 0',
    ]);
    expect(
      findingSchema.safeParse({
        ...{ project: PROJECT, title: 'Heel too soft', part: 'midsole-foam' },
        ...{ priority: 'high', state: 'carried-out' },
        ...finding,
        outcome,
      }),
    ).toMatchObject({ success: true });
  });

  it('is better where they came closer and some still find it off', () => {
    const log = heel((n) => ({ comfort2: { 'heel-cushioning': n < 4 ? -18 : -22 } }));
    expect(proposeOutcome(log, finding)?.verdict).toBe('better');
  });

  it('is worse where it went past the middle and beyond', () => {
    const log = heel((n) => ({ comfort2: { 'heel-cushioning': 88 + n } }));
    expect(proposeOutcome(log, finding)).toMatchObject({
      verdict: 'worse',
      moved: { later: { high: 6 } },
    });
  });

  it('is no different where nothing moved', () => {
    const log = heel((n, run) => ({ comfort2: { 'heel-cushioning': -44 - n + (run % 2) } }));
    expect(proposeOutcome(log, finding)?.verdict).toBe('no-different');
  });

  it('has no ground in the line of before', () => {
    const log = heel(() => ({ comfort: { overall: 95, 'heel-cushioning': 100 } }));
    expect(proposeOutcome(log, finding)).toMatchObject({ verdict: 'too-little', moved: null });
  });

  it('is what stands at the finding in round against round', () => {
    const log = open(
      (round, n) => ({ comfort2: { 'heel-cushioning': round === 0 ? -44 - n : n % 2 ? 5 : -5 } }),
      { evidence },
    );
    const review = reviewProject(log);
    const [earlier, later] = review.rounds;
    if (!earlier || !later) throw new Error('no round');
    expect(lookAtChanges(log, earlier, later).findings).toMatchObject([
      { id: FINDING, written: null, found: 'mended' },
    ]);
  });
});
