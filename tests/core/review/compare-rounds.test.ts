/** Two rounds of one log: changes with what they were meant to mend, who knew, comfort, bench, and findings. */
import { describe, expect, it } from 'vitest';
import { languageFile } from '../../../app/terminal/languages.ts';
import type { Speaker } from '../../../app/words/say-complaint.ts';
import {
  changeTitle,
  comparisonLines,
  feltTitle,
  knewLine,
  outcomeOf,
} from '../../../app/words/say-change.ts';
import { findingSchema, viewOfHeads, type Revision } from '../../../core/records/index.ts';
import {
  compareComplaint,
  compareRounds,
  openProject,
  proposeOutcome,
  reviewProject,
  type Hands,
  type ProposedOutcome,
} from '../../../core/review/index.ts';
import { idOf } from '../records/make.ts';
import * as make from './log-for-tests.ts';
import { own, PROJECT, record } from './log-for-tests.ts';

const ROUNDS = [idOf(2), idOf(3), idOf(4)] as const;
const NOW = Date.UTC(2026, 5, 1);
const TESTERS = [1, 2, 3, 4, 5, 6];
const testerId = (n: number) => idOf(10 + n);
const pairId = (round: number, n: number) => idOf(20 + 10 * round + n);

const changes = [
  [],
  [{ part: 'last', what: 'Heel drawn in', mends: { kind: 'heel-slip', zone: 'U10' } }],
  [
    { part: 'lacing', what: 'One more eyelet', mends: { kind: 'heel-slip' } },
    { part: 'outsole', what: 'Softer rubber' },
  ],
];

const slip = {
  answer: 'complaints',
  complaints: [{ foot: 'left', zone: 'U10', kind: 'heel-slip' }],
};
const nothing = { answer: 'nothing' };

/** Each tester wears the first two rounds, four runs each; half of the runs of the first slip. */
const log = (more: readonly Revision[] = [], blind: (tester: number) => boolean = () => true) => {
  const revisions = [
    make.project(),
    ...ROUNDS.map((id, at) => make.round(id, at + 1, { changes: changes[at] })),
    ...TESTERS.flatMap((n) => [
      record(testerId(n), 'tester', { code: `T0${n}` }),
      ...([0, 1] as const).flatMap((round) => [
        make.pair(pairId(round, n), ROUNDS[round], `${round + 1}0${n}`),
        make.handOut(
          idOf(100 + 10 * round + n),
          { pair: pairId(round, n), tester: testerId(n) },
          `2026-0${round + 3}-01T00:00:00Z`,
          { until: `2026-0${round + 3}-28T00:00:00Z`, blind: round === 0 || blind(n) },
        ),
        own(idOf(120 + 10 * round + n), 'bench-check', {
          pair: pairId(round, n),
          at: `2026-0${round + 3}-01T00:00:00Z`,
          readings: [
            { measure: 'mass', site: 'shoe', foot: 'left', value: 250 + 10 * round + n, unit: 'g' },
          ],
          ...(round === 1 && n === 6 && { distanceM: 90_000 }),
        }),
        ...[0, 1, 2, 3].map((run) =>
          make.run(
            idOf(150 + 40 * round + 6 * run + n),
            { pair: pairId(round, n), tester: testerId(n) },
            `2026-0${round + 3}-0${run + 2}T07:00:00Z`,
            {
              comfort: { overall: 50 + 20 * round + n },
              feet: round === 0 && run % 2 === 0 ? slip : nothing,
            },
          ),
        ),
      ]),
    ]),
    ...more,
  ];
  const opened = openProject(viewOfHeads(revisions), PROJECT, NOW);
  if (!opened) throw new Error('no project');
  return opened;
};

const compare = (opened = log(), hands: Hands = 'all', later = 1) => {
  const { rounds } = reviewProject(opened);
  const [from, to] = [rounds[0], rounds[later]];
  if (!from || !to) throw new Error('no round');
  return compareRounds(opened, from, to, hands);
};

const spoken = languageFile('en');
const speaker: Speaker = {
  desk: spoken.desk,
  glossary: spoken.glossary,
  number: (value, most) => String(Number(value.toFixed(most))),
  distance: (distance) => `${distance} m`,
  tester: (id) => `T0${TESTERS.find((n) => testerId(n) === id) ?? '?'}`,
  pair: () => '?',
  round: (id) => `R${ROUNDS.findIndex((round) => round === id) + 1}`,
  foot: (foot) => foot,
  language: (tag) => tag,
};

describe('two rounds against each other', () => {
  it('say of each change what it did to what it was meant to mend', () => {
    const found = compare();
    expect(found.testers).toEqual({ both: 6, onlyEarlier: 0, onlyLater: 0 });
    expect(found.changes).toMatchObject([
      {
        what: 'Heel drawn in',
        mends: { kind: 'heel-slip', zone: 'U10' },
        found: {
          verdict: 'better',
          basis: 'same-testers',
          earlier: { testers: 6, runs: 24, reported: 12 },
          later: { testers: 6, runs: 24, reported: 0 },
          allowed: 0.05,
        },
      },
    ]);
    expect(found.cells).toMatchObject([{ kind: 'heel-slip', word: null }]);
  });

  it('over several rounds take the changes of all of them, and none of nothing', () => {
    const found = compare(log(), 'all', 2);
    expect(found.changes.map(({ round, found: own }) => [round, own?.why])).toEqual([
      [ROUNDS[1], 'nobody-asked-later'],
      [ROUNDS[2], 'nobody-asked-later'],
      [ROUNDS[2], undefined],
    ]);
    expect(found.changes[1]?.mends).toEqual({ kind: 'heel-slip', zone: null });
  });

  it('name who knew what was changed, and can be read without them', () => {
    const opened = log([], (tester) => tester !== 2 && tester !== 5);
    const all = compare(opened);
    expect(all.knew).toEqual({ earlier: [], later: [testerId(2), testerId(5)].sort() });
    expect(all.changes[0]?.found?.later.testers).toBe(6);
    expect(knewLine(all, speaker)).toContain('R2: T02, T05');
    expect(knewLine(all, speaker)).toContain('14.6');
    const blind = compare(opened, 'blind-only');
    expect(blind.testers).toEqual({ both: 4, onlyEarlier: 2, onlyLater: 0 });
    expect(blind.changes[0]?.found).toMatchObject({
      basis: 'all-testers',
      earlier: { testers: 6 },
      later: { testers: 4 },
    });
    expect(blind.knew).toEqual(all.knew);
    expect(knewLine(compare(), speaker)).toBeNull();
  });

  it('pair the comfort of those who wore both, and keep the others apart', () => {
    expect(compare().comfort).toMatchObject({
      same: [{ attribute: 'overall', difference: 20, by: 'same-testers', testers: 6 }],
      onlyOne: [],
    });
    const blind = compare(
      log([], (tester) => tester > 2),
      'blind-only',
    );
    expect(blind.comfort.same[0]).toMatchObject({ testers: 4 });
  });

  it('compare first bench checks of new pairs, and count those that were not new', () => {
    const { bench, measuredLate } = compare();
    expect(bench).toMatchObject([{ measure: 'mass', earlier: { n: 6 }, later: { n: 5 } }]);
    // Means of 251 to 256 and of 261 to 265.
    expect(bench[0]?.difference).toBeCloseTo(9.5, 12);
    expect(measuredLate).toBe(1);
  });
});

describe('what came of a finding', () => {
  const finding = {
    round: ROUNDS[0],
    carriedBy: ROUNDS[1],
    kind: 'heel-slip',
    zone: 'U10',
  } as const;

  it('is proposed from the round that carried it, and can be kept in the finding', () => {
    const opened = log();
    const proposed = proposeOutcome(opened, finding) as ProposedOutcome;
    expect(proposed).toMatchObject({ round: ROUNDS[1], verdict: 'better', untilMs: NOW });
    expect(proposed).toMatchObject({
      of: 'complaint',
      found: compareComplaint(opened, ROUNDS[0], ROUNDS[1], finding),
    });
    const outcome = outcomeOf(proposed, finding, '2026-06-01T00:00:00Z', 'en', speaker);
    expect(
      findingSchema.safeParse({
        project: PROJECT,
        title: 'Heel slips',
        part: 'last',
        priority: 'high',
        state: 'carried-out',
        ...finding,
        outcome,
      }),
    ).toMatchObject({ success: true });
    expect(outcome.lines.slice(1, 4)).toEqual([
      'R1: 6 of 6 testers, 12 of 24 asked runs (50\u00a0%).',
      'R2: 0 of 6 testers, 0 of 24 asked runs (0\u00a0%).',
      '6 testers wore both. Over their first runs, 24 of each round in all, the share of runs with it changed by −50 percentage points (95 % interval −76 to −21).',
    ]);
  });

  it('is not proposed without a complaint, a round that carries it, or a later round', () => {
    const opened = log();
    const { kind: _kind, ...noKind } = finding;
    const { carriedBy: _carriedBy, ...noRound } = finding;
    expect(proposeOutcome(opened, noKind)).toBeNull();
    expect(proposeOutcome(opened, noRound)).toBeNull();
    expect(proposeOutcome(opened, { ...finding, carriedBy: ROUNDS[0] })).toBeNull();
    expect(proposeOutcome(opened, { ...finding, carriedBy: idOf(77) })).toBeNull();
  });
});

describe('the sentences', () => {
  it('never say zero where nobody was asked', () => {
    const [first] = compare(log(), 'all', 2).changes;
    if (!first?.found || !first.mends) throw new Error('no comparison');
    const lines = comparisonLines(first.found, { earlier: ROUNDS[0], later: ROUNDS[2] }, speaker);
    expect(lines).toContain('R3: nobody was asked.');
    expect(lines.join(' ')).not.toContain('R3: 0');
    expect(changeTitle(first, speaker)).toBe('last: Heel drawn in');
    expect(feltTitle({ kind: 'heel-slip', zone: null }, speaker)).toContain('in any zone');
  });

  it('are there in every language, with the same figures', () => {
    const [change] = compare().changes;
    if (!change?.found) throw new Error('no comparison');
    const rounds = { earlier: ROUNDS[0], later: ROUNDS[1] };
    const zh = languageFile('zh');
    const figures = (lines: readonly string[]) =>
      lines.map((line) => (line.match(/[−+]?\d+(\.\d+)?/g) ?? []).sort());
    const chinese = comparisonLines(change.found, rounds, {
      ...speaker,
      desk: zh.desk,
      glossary: zh.glossary,
    });
    expect(figures(chinese)).toEqual(figures(comparisonLines(change.found, rounds, speaker)));
  });
});
