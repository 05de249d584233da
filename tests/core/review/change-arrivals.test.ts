/** Changes in figures against the samples of a project: what arrived, what is asked for, what is withheld, what else differs. */
import { describe, expect, it } from 'vitest';
import { changesHeadline, changesStamp } from '../../../core/headlines/index.ts';
import { viewOfHeads, type Revision } from '../../../core/records/index.ts';
import {
  calloutsOf,
  changeArrivals,
  isAbsent,
  lookAtChanges,
  openProject,
  overviewOf,
  proposeOutcome,
  reviewProject,
  verdictOf,
} from '../../../core/review/index.ts';
import { idOf } from '../records/make.ts';
import * as make from './log-for-tests.ts';
import { own, PROJECT, record } from './log-for-tests.ts';

const [FIRST, SECOND] = [idOf(2), idOf(3)];
const TESTERS = [1, 2, 3, 4, 5, 6, 7, 8];
const testerId = (n: number) => idOf(10 + n);
const pairId = (round: number, n: number) => idOf(20 + 10 * round + n);
const NOW = Date.UTC(2026, 5, 1);
const SITE = 'collar-height-lateral';

const SLIP = {
  answer: 'complaints',
  complaints: [{ foot: 'left', zone: 'U10', kind: 'heel-slip' }],
};
const collar = {
  part: 'upper-pattern',
  what: 'Collar higher',
  mends: { kind: 'heel-slip', zone: 'U10' },
  structured: {
    part: 'upper-pattern',
    line: 'collar',
    side: 'lateral',
    direction: 'higher',
    by: { amount: 3, unit: 'mm' },
  },
};

/** What pairs are off by, nought on average: each round in an order of its own. */
const OFF = [0.3, -0.2, 0.1, -0.3, 0.2, -0.1, 0.05, -0.05];
const off = (round: number, n: number): number => OFF[(n + 3 * round) % OFF.length] ?? 0;

interface Built {
  /** What the collar measures in each round, mm; null: nobody measured it. */
  readonly heights?: readonly [number | null, number | null];
  readonly changes?: readonly object[];
  /** Whether anybody has run in it. */
  readonly worn?: boolean;
  readonly second?: object;
  readonly more?: readonly Revision[];
  readonly mass?: readonly [number, number];
}

/** Eight sizes in each round, a pair each; heel slip in the first round alone. */
const log = ({
  heights = [60, 63],
  changes = [collar],
  worn = true,
  second = {},
  more = [],
  mass,
}: Built) => [
  make.project(),
  make.round(FIRST, 1, {
    last: { name: 'L07', sizeMm: 270, ballWidthMm: 97 },
    layers: [{ zone: 'U3', count: 2 }],
  }),
  make.round(SECOND, 2, { changes, ...second }),
  ...TESTERS.flatMap((n) => [
    record(testerId(n), 'tester', { code: `T0${n}` }),
    ...([0, 1] as const).flatMap((round) => {
      const height = heights[round];
      const readings = [
        ...(height === null
          ? []
          : [
              {
                measure: 'dimension',
                site: SITE,
                value: height + n + off(round, n),
                unit: 'mm',
              },
            ]),
        ...(mass
          ? [{ measure: 'mass', site: 'shoe', value: mass[round] + n + off(round, n), unit: 'g' }]
          : []),
      ];
      return [
        make.pair(pairId(round, n), round === 0 ? FIRST : SECOND, `${round + 1}0${n}`, {
          sizeMm: 250 + 5 * n,
        }),
        ...(readings.length === 0
          ? []
          : [
              own(idOf(120 + 10 * round + n), 'bench-check', {
                pair: pairId(round, n),
                at: `2026-0${round + 3}-01T00:00:00Z`,
                readings: readings.map((one) => ({ ...one, foot: 'left' })),
              }),
            ]),
        ...(worn
          ? [
              make.handOut(
                idOf(100 + 10 * round + n),
                { pair: pairId(round, n), tester: testerId(n) },
                `2026-0${round + 3}-01T00:00:00Z`,
                { until: `2026-0${round + 3}-28T00:00:00Z` },
              ),
              ...[0, 1, 2, 3, 4, 5].map((run) =>
                make.run(
                  idOf(140 + 50 * round + 6 * n + run),
                  { pair: pairId(round, n), tester: testerId(n) },
                  `2026-0${round + 3}-${String(2 + 3 * run).padStart(2, '0')}T07:00:00Z`,
                  { feet: round === 0 ? SLIP : { answer: 'nothing' } },
                ),
              ),
            ]
          : []),
      ];
    }),
  ]),
  ...more,
];

const open = (built: Built) => {
  const opened = openProject(viewOfHeads(log(built)), PROJECT, NOW);
  if (!opened) throw new Error('no project');
  return opened;
};
const look = (built: Built) => {
  const opened = open(built);
  const [first, second] = reviewProject(opened).rounds;
  if (!first || !second) throw new Error('no rounds');
  return lookAtChanges(opened, first, second);
};
const arrivalOf = (built: Built) => {
  const [only] = changeArrivals(open(built), SECOND);
  if (!only) throw new Error('the change is in figures');
  return only;
};

describe('a change in figures', () => {
  it('arrived where the samples of the same sizes are as much higher', () => {
    const { word, places } = arrivalOf({});
    expect(word).toBe('arrived');
    expect(places).toHaveLength(1);
    expect(places[0]).toMatchObject({ site: SITE, wanted: 3 });
    expect(places[0]?.measured?.difference).toBeCloseTo(3, 6);
    expect(places[0]?.measured).toMatchObject({ earlier: { n: 8 }, later: { n: 8 } });
  });

  it.each([
    ['partly', 60.7],
    ['not', 60],
    ['not', 58],
    ['beyond', 66],
  ] as const)('%s where the later round measures %s', (word, later) => {
    expect(arrivalOf({ heights: [60, later] }).word).toBe(word);
  });

  it('is held against the drawing where the round before was not measured', () => {
    const drawn = {
      measure: 'dimension',
      site: SITE,
      unit: 'mm',
      nominal: 64,
      lower: -2,
      upper: 2,
    };
    const first = make.round(FIRST, 1, {
      last: { name: 'L07', sizeMm: 270 },
      blueprint: [drawn],
    });
    const revisions = log({ heights: [null, 63] }).map((one) => (one.id === FIRST ? first : one));
    const opened = openProject(viewOfHeads(revisions), PROJECT, NOW);
    const place = opened && changeArrivals(opened, SECOND)[0]?.places[0];
    // One pair alone is of the size that the drawing is of.
    expect(place).toMatchObject({
      word: 'not-measured',
      measured: { against: 'nominal', sizes: [270] },
    });
  });

  it('in words alone says nothing, and of the first round neither', () => {
    const { structured: _structured, ...words } = collar;
    expect(changeArrivals(open({ changes: [words] }), SECOND)).toEqual([null]);
    const revisions = log({}).map((one) =>
      one.id === FIRST ? make.round(FIRST, 1, { changes: [collar] }) : one,
    );
    const opened = openProject(viewOfHeads(revisions), PROJECT, NOW);
    expect(opened && changeArrivals(opened, FIRST)).toEqual([null]);
  });

  it('that nothing on the bench tells has no place', () => {
    const saddle = {
      ...collar,
      structured: { ...collar.structured, line: 'saddle', side: undefined },
    };
    expect(arrivalOf({ changes: [saddle] })).toMatchObject({ word: 'not-measured', places: [] });
  });
});

describe('what is asked of the lead', () => {
  const steps = (built: Built) => {
    const opened = open(built);
    const review = reviewProject(opened);
    const verdicts = review.rounds.map((round) => verdictOf(opened, round));
    return overviewOf(opened, review, verdicts).next.filter(
      ({ step }) => step === 'measure-change',
    );
  };

  it('is to measure each change on the new pairs that can tell', () => {
    expect(steps({ heights: [60, null], worn: false })).toEqual([
      {
        step: 'measure-change',
        round: SECOND,
        at: 0,
        change: collar.structured,
        pairs: TESTERS.map((n) => pairId(1, n)),
        count: 8,
      },
    ]);
    // Nobody measured either: both rounds can still be.
    expect(steps({ heights: [null, null], worn: false })[0]?.count).toBe(16);
  });

  it('is nothing where it is settled, or no new pair is left', () => {
    expect(steps({ worn: false })).toEqual([]);
    expect(steps({ heights: [60, null], worn: true })).toEqual([]);
  });
});

describe('a change that is not in the shoe', () => {
  const absent: Built = { heights: [60, 60.05] };
  const finding = own(idOf(250), 'finding', {
    round: FIRST,
    title: 'Heel slips',
    part: 'upper-pattern',
    kind: 'heel-slip',
    zone: 'U10',
    priority: 'high',
    carriedBy: SECOND,
    state: 'carried-out',
  });

  it('is not called the reason of anything: the headline says so, the stamp stays open', () => {
    const story = look(absent);
    expect(isAbsent(story.comparison.changes[0]?.arrival ?? null)).toBe(true);
    expect(changesHeadline(story)).toEqual({
      claims: 'too-little',
      case: 'not-in-shoe',
      better: [{ zone: 'U10', kind: 'heel-slip' }],
      named: [{ zone: 'U10', kind: 'heel-slip' }],
    });
    expect(changesStamp(story)).toBe('too-little');
    expect(changesHeadline(look({}))).toMatchObject({ case: 'better' });
  });

  it('is not named beside what got better on the sheet', () => {
    const changesOf = (built: Built) => {
      const opened = open(built);
      const review = reviewProject(opened);
      const verdicts = review.rounds.map((round) => verdictOf(opened, round));
      return calloutsOf(opened, review, verdicts).flatMap((one) =>
        one.what === 'better' ? [one.changes.map(({ what }) => what)] : [],
      );
    };
    expect(changesOf(absent)).toEqual([[]]);
    expect(changesOf({})).toEqual([['Collar higher']]);
  });

  it('leaves the outcome of its finding open', () => {
    const opened = open({ ...absent, more: [finding] });
    const body = opened.records.finding[0]?.body;
    expect(body && proposeOutcome(opened, body, finding.id)).toMatchObject({
      verdict: 'too-little',
      arrival: { word: 'not' },
    });
    expect(look({ ...absent, more: [finding] }).findings[0]).toMatchObject({
      found: 'too-little',
      arrival: { word: 'not' },
    });
    expect(look({ more: [finding] }).findings[0]).toMatchObject({ found: 'better' });
  });

  it('that was made from the finding goes before others that name the complaint', () => {
    const made = { ...collar, finding: finding.id };
    const other = {
      ...collar,
      structured: { ...collar.structured, by: { amount: 0.05, unit: 'mm' } },
    };
    const opened = open({ heights: [60, 63], changes: [made, other], more: [finding] });
    const body = opened.records.finding[0]?.body;
    expect(body && proposeOutcome(opened, body, finding.id)?.arrival?.word).toBe('arrived');
    expect(body && proposeOutcome(opened, body, null)?.arrival?.word).not.toBe('not');
  });

  it('does not hide what other changes, said in words, were to mend', () => {
    const { structured: _structured, ...words } = collar;
    expect(changesHeadline(look({ ...absent, changes: [collar, words] }))).toMatchObject({
      case: 'better',
    });
  });
});

describe('differences that nobody listed', () => {
  it('are found of last, layers and readings; what a change names is not among them', () => {
    const second = {
      last: { name: 'L08', sizeMm: 270, ballWidthMm: 98 },
      layers: [{ zone: 'U3', count: 3 }],
    };
    const { found, same } = look({ second, mass: [250, 259] }).differences;
    expect(found).toMatchObject([
      { of: 'last', earlier: 'L07', later: 'L08' },
      { of: 'last-size', field: 'ballWidthMm', earlier: 97, later: 98 },
      { of: 'layers', zone: 'U3', earlier: 2, later: 3 },
      { of: 'reading', measure: 'mass', measured: { sizes: TESTERS.map((n) => 250 + 5 * n) } },
    ]);
    expect(same).toBe(0);
    const last = { part: 'last', what: 'Wider' };
    expect(look({ second, changes: [collar, last] }).differences.found.map(({ of }) => of)).toEqual(
      ['layers'],
    );
  });

  it('are none where the samples are alike, whatever sizes they are', () => {
    const { found, same } = look({
      heights: [60, 60.01],
      changes: [],
      mass: [250, 250],
    }).differences;
    expect(found).toEqual([]);
    expect(same).toBe(2);
  });
});
