/** Two rounds as one story: what was asked about beforehand, what only rose, what arrived on the samples. */
import { describe, expect, it } from 'vitest';
import { viewOfHeads, type Revision } from '../../../core/records/index.ts';
import {
  arrivedAnswer,
  lookAtChanges,
  openProject,
  reviewProject,
} from '../../../core/review/index.ts';
import { changesHeadline, changesStamp } from '../../../core/headlines/index.ts';
import { idOf } from '../records/make.ts';
import * as make from './log-for-tests.ts';
import { own, PROJECT, record } from './log-for-tests.ts';

const [FIRST, SECOND] = [idOf(2), idOf(3)];
const TESTERS = [1, 2, 3, 4, 5, 6, 7, 8];
const testerId = (n: number) => idOf(10 + n);
const pairId = (round: number, n: number) => idOf(20 + 10 * round + n);
const NOW = Date.UTC(2026, 5, 1);

const felt = (...named: readonly (readonly [string, string])[]) =>
  named.length === 0
    ? { answer: 'nothing' }
    : {
        answer: 'complaints',
        complaints: named.map(([zone, kind]) => ({ foot: 'left', zone, kind })),
      };
const SLIP = ['U10', 'heel-slip'] as const;
const PRESS = ['U3', 'pressure'] as const;

const dimension = (site: string, nominal: number) => ({
  measure: 'dimension',
  site,
  unit: 'mm',
  nominal,
  lower: -3,
  upper: 3,
});

/** Each tester wears both rounds, six runs each: slip in the first, pressure in the second. */
const log = (more: readonly Revision[] = [], changes: readonly object[] = []) => [
  make.project(),
  make.round(FIRST, 1, {
    blueprint: [dimension('heel-cup-width', 66), dimension('back-height', 70)],
  }),
  make.round(SECOND, 2, {
    changes,
    blueprint: [dimension('heel-cup-width', 63), dimension('back-height', 72)],
  }),
  ...TESTERS.flatMap((n) => [
    record(testerId(n), 'tester', { code: `T0${n}` }),
    ...([0, 1] as const).flatMap((round) => [
      make.pair(pairId(round, n), round === 0 ? FIRST : SECOND, `${round + 1}0${n}`),
      make.handOut(
        idOf(100 + 10 * round + n),
        { pair: pairId(round, n), tester: testerId(n) },
        `2026-0${round + 3}-01T00:00:00Z`,
        { until: `2026-0${round + 3}-28T00:00:00Z` },
      ),
      own(idOf(120 + 10 * round + n), 'bench-check', {
        pair: pairId(round, n),
        at: `2026-0${round + 3}-01T00:00:00Z`,
        readings: [
          {
            measure: 'dimension',
            site: 'heel-cup-width',
            foot: 'left',
            value: 66 - 3 * round + n / 20,
            unit: 'mm',
          },
        ],
      }),
      ...[0, 1, 2, 3, 4, 5].map((run) =>
        make.run(
          idOf(140 + 50 * round + 6 * n + run),
          { pair: pairId(round, n), tester: testerId(n) },
          `2026-0${round + 3}-${String(2 + 3 * run).padStart(2, '0')}T07:00:00Z`,
          { feet: round === 0 ? felt(SLIP) : felt(PRESS) },
        ),
      ),
    ]),
  ]),
  ...more,
];

const look = (revisions: readonly Revision[]) => {
  const opened = openProject(viewOfHeads(revisions), PROJECT, NOW);
  if (!opened) throw new Error('no project');
  const review = reviewProject(opened);
  const [first, second] = review.rounds;
  if (!first || !second) throw new Error('no rounds');
  return lookAtChanges(opened, first, second);
};
const finding = own(idOf(250), 'finding', {
  round: FIRST,
  title: 'Heel slips',
  part: 'last',
  kind: 'heel-slip',
  zone: 'U10',
  priority: 'high',
  carriedBy: SECOND,
  state: 'carried-out',
});

describe('two rounds as one story', () => {
  it('judges by itself what was asked about beforehand, and calls worse only what is proved over all', () => {
    const { felt: moves } = look(log());
    const slip = moves.find(({ kind }) => kind === 'heel-slip');
    const pressure = moves.find(({ kind }) => kind === 'pressure');
    // The first round proves heel slip, so that it is asked about without a word in the list of changes.
    expect(slip).toMatchObject({ asked: true, word: 'better' });
    expect(pressure).toMatchObject({ asked: false, word: 'worse' });
    expect(moves[0]?.kind).toBe('heel-slip');
    const story = look(log());
    expect(changesHeadline(story)).toMatchObject({
      case: 'mixed',
      better: [{ zone: 'U10', kind: 'heel-slip' }],
      worse: [{ zone: 'U3', kind: 'pressure' }],
    });
    expect(changesStamp(story)).toBe('mixed');
  });

  it('names the findings whose change the later round carries, with what the log says of them', () => {
    const written = {
      round: SECOND,
      verdict: 'no-different',
      until: '2026-05-01T00:00:00Z',
      lines: ['x'],
    };
    const other = own(idOf(251), 'finding', { ...finding.body, carriedBy: undefined, title: 'x' });
    expect(look(log([finding, other])).findings).toEqual([
      {
        id: finding.id,
        title: 'Heel slips',
        carriedBy: SECOND,
        written: null,
        found: 'better',
        arrival: null,
      },
    ]);
    const judged = own(finding.id, 'finding', { ...finding.body, outcome: written });
    expect(look(log([judged])).findings[0]).toMatchObject({
      written: 'no-different',
      found: 'better',
    });
  });

  it('asks of a complaint what the list of changes says it mends', () => {
    const { felt: moves } = look(
      log([], [{ part: 'last', what: 'x', mends: { kind: 'pressure', zone: 'U3' } }]),
    );
    expect(moves.find(({ kind }) => kind === 'pressure')).toMatchObject({
      asked: true,
      word: 'worse',
    });
  });
});

describe('whether a change arrived', () => {
  it('is told of each dimension that the blueprint changed', () => {
    const { arrivals } = look(log());
    expect(arrivals.map(({ site, wanted, word }) => [site, wanted, word])).toEqual([
      ['heel-cup-width', -3, 'arrived'],
      ['back-height', 2, 'not-measured'],
    ]);
    expect(arrivedAnswer(arrivals)).toBe('partly');
  });

  it('is not known where nothing that was wanted is measured, and no where it went the other way', () => {
    const { arrivals } = look(log());
    const [cup, back] = arrivals;
    if (!cup || !back) throw new Error('no arrivals');
    expect(arrivedAnswer([back])).toBe('not-measured');
    expect(arrivedAnswer([])).toBe('not-asked');
    expect(arrivedAnswer([{ ...cup, word: 'not' }])).toBe('no');
    expect(arrivedAnswer([{ ...cup, word: 'open' }])).toBe('open');
    expect(arrivedAnswer([cup, { ...cup, word: 'not' }])).toBe('partly');
    expect(arrivedAnswer([cup])).toBe('yes');
  });
});
