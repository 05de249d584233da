/** Round against round: who is compared with whom, what is said of it, and what is not. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Complaint, RecordId } from '../../../core/records/index.ts';
import {
  benchChanges,
  compareCell,
  compareCells,
  FALSE_BETTER,
  FALSE_WORSE,
  orderAnswers,
  reportsOf,
  type AnsweredRun,
  type CellComparison,
  type FirstReading,
} from '../../../core/rounds/index.ts';

const FELT = { kind: 'heel-slip', zone: 'U10' } as const;
const slip: Complaint = { foot: 'left', ...FELT };

/** Runs of testers, each a text of its asked runs: `x` reported it, `.` did not. */
const wore = (own: Readonly<Record<string, string>>, felt: readonly Complaint[] = [slip]) =>
  Object.entries(own).flatMap(([tester, runs]) =>
    [...runs].map((mark, at): AnsweredRun => ({
      run: `${tester}-${at}` as RecordId,
      tester: tester as RecordId,
      startMs: at,
      complaints: mark === 'x' ? felt : [],
    })),
  );

const compare = (
  earlier: Readonly<Record<string, string>>,
  later: Readonly<Record<string, string>>,
  allowed = 0.05,
): CellComparison => {
  const [first, second] = [orderAnswers(wore(earlier)), orderAnswers(wore(later))];
  return compareCell(
    {
      earlier: { answers: first, reports: reportsOf(first, FELT) },
      later: { answers: second, reports: reportsOf(second, FELT) },
    },
    allowed,
  );
};

const each = (testers: readonly string[], runs: string) =>
  Object.fromEntries(testers.map((tester) => [tester, runs]));
const eight = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'];

describe('the answers of a round', () => {
  const runs = wore({ a: '.x', b: 'x' }, [slip, { foot: 'right', zone: 'U9', kind: 'heel-slip' }]);

  it('are numbered within the tester by their start, whatever order they come in', () => {
    const [one, other] = [orderAnswers(runs), orderAnswers(runs.toReversed())];
    expect(other).toEqual(one);
    expect([...one.asked]).toEqual([
      ['a', 2],
      ['b', 1],
    ]);
    expect([...reportsOf(one, FELT)]).toEqual([
      ['b', [0]],
      ['a', [1]],
    ]);
  });

  it('count a kind anywhere once a run, in however many zones it was felt', () => {
    const anywhere = reportsOf(orderAnswers(runs), { kind: 'heel-slip', zone: null });
    expect(anywhere.get('a' as RecordId)).toEqual([1]);
    expect(reportsOf(orderAnswers(runs), { kind: 'rubbing', zone: null }).size).toBe(0);
  });
});

describe('a complaint in two rounds', () => {
  it('is better where all of five testers who wore both have it less: 1 of 32', () => {
    const five = eight.slice(0, 5);
    const found = compare(each(five, 'xx..'), each(five, '...x'));
    expect(found).toMatchObject({ verdict: 'better', basis: 'same-testers', why: null });
    expect(found.same?.pBetter).toBe(FALSE_BETTER);
    expect(found.change).toMatchObject({ change: -0.25, upper: -0.25 });
    // Nothing bounds the fall itself with five: all that is possible.
    expect(found.change?.lower).toBe(-1);
    expect(compare(each(five.slice(1), 'xx..'), each(five.slice(1), '....')).verdict).not.toBe(
      'better',
    );
  });

  it('is worse where all of six have it more, not yet with five', () => {
    const six = eight.slice(0, 6);
    const found = compare(each(six, '....'), each(six, 'x.x.'));
    expect(found).toMatchObject({ verdict: 'worse', basis: 'same-testers' });
    expect(found.same?.pWorse).toBe(FALSE_WORSE);
    expect(compare(each(six.slice(1), '....'), each(six.slice(1), 'x.x.')).verdict).toBe(
      'too-little',
    );
  });

  it('is mended only where the brief’s rate is shown to be kept: that takes many clean runs', () => {
    const twelve = [...eight, 'i', 'j', 'k', 'l'];
    const before = each(twelve, 'xx..xx..xx..');
    expect(compare(before, each(twelve, '............')).verdict).toBe('mended');
    const few = compare(before, each(twelve, '......'));
    expect(few.verdict).toBe('better');
    expect(few.laterUpTo).toBeGreaterThan(0.05);
    expect(few.settle?.runs).toBe(3);
    // What is said to settle it, does.
    expect(compare(before, each(twelve, '.........')).verdict).toBe('mended');
    expect(compare(before, each(twelve, '........')).verdict).toBe('better');
    expect(compare(before, each(twelve, '...........x'), 0.01).verdict).toBe('better');
  });

  it('is no different only where a change within half of the earlier share is shown', () => {
    const twenty = Array.from({ length: 20 }, (_, at) => `t${at}`);
    const alike = Object.fromEntries(
      twenty.map((tester, at) => [tester, at % 2 ? 'xxxx....xxxx....' : 'x.x..x.x..x.x.x.']),
    );
    const turned = Object.fromEntries(
      twenty.map((tester, at) => [tester, at % 4 < 2 ? 'xxxx....xxxx....' : 'x.x..x.x..x.x...']),
    );
    const found = compare(alike, turned);
    expect(found.verdict).toBe('no-different');
    expect(found.margin).toBe(0.15);
    // A fall by more than the margin is never shown to be none.
    expect(compare(alike, each(twenty, 'x...............')).verdict).toBe('better');
    // Equal counts of a few testers prove nothing, though each difference is exactly zero.
    const same = compare(each(eight, '.x'), each(eight, 'x.'));
    expect(same).toMatchObject({ verdict: 'too-little', why: 'too-few-changed' });
    expect(same.change?.lower).toBeLessThan(0);
    expect(same.change?.upper).toBeGreaterThan(0);
  });

  it('says why there is too little: nobody asked and nothing reported are not the same', () => {
    expect(compare({}, each(eight, '....')).why).toBe('nobody-asked-earlier');
    expect(compare(each(eight, 'x...'), {}).why).toBe('nobody-asked-later');
    expect(compare(each(eight, '....'), each(eight, '....')).why).toBe('never-reported');
    expect(compare({ a: 'xxxx' }, { a: '....' })).toMatchObject({
      why: 'too-few-testers',
      basis: 'none',
      change: null,
    });
    const mixed = compare(
      Object.fromEntries(eight.map((one, at) => [one, at % 2 ? 'xx..' : '....'])),
      Object.fromEntries(eight.map((one, at) => [one, at % 2 ? '....' : 'xx..'])),
    );
    expect(mixed.why).toBe('not-decided');
  });

  it('compares as many first runs of one round as of the other, and counts all', () => {
    const found = compare(each(eight, 'xxxx............'), each(eight, '....'));
    expect(found.same).toMatchObject({
      earlier: { runs: 32, reported: 32, reporters: 8, testers: 8 },
      later: { runs: 32, reported: 0 },
      change: -1,
      onlyEarlier: 8,
      onlyLater: 0,
    });
    expect(found.earlier).toEqual({ testers: 8, reporters: 8, runs: 128, reported: 32 });
    expect(found.byTester[0]).toEqual({
      tester: 'a',
      earlier: { x: 4, n: 16 },
      later: { x: 0, n: 4 },
      first: { earlier: { x: 4, n: 4 }, later: { x: 0, n: 4 } },
    });
  });

  it('takes all testers of both rounds where fewer than five wore both, and keeps the rest apart', () => {
    const [before, after] = [
      each(['a', 'b', 'c', 'd', 'e', 'f'], 'xx.x.x.x'),
      each(['e', 'f', 'g', 'h', 'i', 'j'], '........'),
    ];
    const found = compare(before, after);
    expect(found).toMatchObject({
      verdict: 'better',
      basis: 'all-testers',
      onlyOne: { earlier: { testers: 4, reported: 20 }, later: { testers: 4, reported: 0 } },
    });
    expect(found.same?.earlier.testers).toBe(2);
    expect(found.byTester.filter(({ later }) => later === null)).toHaveLength(4);
    // One with a single asked run is counted, and not compared.
    expect(compare({ ...before, k: 'x' }, after).change).toEqual(found.change);
  });

  it('turns round with its rounds, but for the tails', () => {
    const runs = fc.array(fc.boolean(), { minLength: 2, maxLength: 6 });
    fc.assert(
      fc.property(fc.array(fc.tuple(runs, runs), { minLength: 5, maxLength: 9 }), (panel) => {
        const text = (own: readonly boolean[]) => own.map((x) => (x ? 'x' : '.')).join('');
        const of = (side: 0 | 1) =>
          Object.fromEntries(panel.map((own, at) => [`t${at}`, text(own[side])]));
        const [there, back] = [compare(of(0), of(1)), compare(of(1), of(0))];
        expect(back.same?.change).toBeCloseTo(-(there.same?.change as number), 12);
        expect(back.same?.pBetter).toBeCloseTo(there.same?.pWorse as number, 12);
        if (there.verdict === 'worse') expect(['better', 'mended']).toContain(back.verdict);
        const { lower, upper, change } = there.change as NonNullable<CellComparison['change']>;
        expect(lower).toBeLessThanOrEqual(change);
        expect(upper).toBeGreaterThanOrEqual(change);
      }),
      { numRuns: 40 },
    );
  });
});

describe('new complaints', () => {
  const rub: Complaint = { foot: 'left', kind: 'rubbing', zone: 'U8' };
  const never = () => ({ earlier: false, later: false });
  const cells = (
    earlier: Readonly<Record<string, string>>,
    later: Readonly<Record<string, string>>,
    recurs = never,
  ) => compareCells(orderAnswers(wore(earlier, [rub])), orderAnswers(wore(later, [rub])), recurs);

  it('are proved where enough of the same testers have them more', () => {
    expect(cells(each(eight, '....'), each(eight, 'x.x.'))).toMatchObject([
      { zone: 'U8', kind: 'rubbing', word: 'proved', p: 1 / 256, adjustedP: 1 / 256 },
    ]);
    expect(cells(each(eight, 'x.x.'), each(eight, '....'))[0]?.word).toBeNull();
  });

  it('are worth a look where two testers have them twice and nobody had before, though asked', () => {
    const two = { ...each(eight, '....'), a: '.xx.', b: 'x..x' };
    expect(cells(each(eight, '....'), two)).toMatchObject([{ word: 'look', p: null }]);
    expect(cells(each(eight, '....'), { ...two, b: 'x...' })[0]?.word).toBeNull();
    expect(cells({}, two)[0]?.word).toBeNull();
  });

  it('are worth a look where they recur now by proof and did not before', () => {
    const some = { ...each(eight, '....'), a: 'xxx.' };
    const before = { ...each(eight, '....'), a: 'x...' };
    expect(cells(before, some)[0]?.word).toBeNull();
    expect(cells(before, some, () => ({ earlier: false, later: true }))[0]?.word).toBe('look');
    expect(cells(before, some, () => ({ earlier: true, later: true }))[0]?.word).toBeNull();
  });

  it('hold their p-values together: one of many at 1 in 32 is no proof', () => {
    const zones = ['U1', 'U2', 'U3', 'U4', 'U5', 'U6', 'U7', 'U8'] as const;
    const five = eight.slice(0, 5);
    const round = (marks: readonly string[]) =>
      orderAnswers(
        five.flatMap((tester) =>
          [0, 1, 2, 3].map((at): AnsweredRun => ({
            run: `${tester}-${at}` as RecordId,
            tester: tester as RecordId,
            startMs: at,
            complaints: zones
              .filter((_, zone) => marks[zone]?.[at] === 'x')
              .map((zone) => ({ ...rub, zone })),
          })),
        ),
      );
    const quiet = round(zones.map((_, at) => (at === 0 ? '....' : 'xx..')));
    const loud = round(zones.map((_, at) => (at === 0 ? 'x...' : '....')));
    const [top] = compareCells(quiet, loud, never);
    expect(top).toMatchObject({ zone: 'U1', p: 1 / 32, adjustedP: 8 / 32, word: 'look' });
  });
});

describe('first bench checks', () => {
  const reading = (
    pair: string,
    value: number,
    measure: FirstReading['measure'] = 'mass',
  ): FirstReading => ({ pair: pair as RecordId, measure, site: 'shoe', unit: 'g', value });

  // Welch's test of the two groups of the sleep data (Student, Biometrika 1908;6:1-25) by t.test of R:
  // difference 1.58, 95 % −0.2055 to 3.3655, p .0794.
  const first = [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0, 2];
  const second = [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4];

  it('are the difference of two means of pairs, both shoes of a pair as one', () => {
    const [found] = benchChanges(
      first.flatMap((value, at) => [reading(`a${at}`, value - 1), reading(`a${at}`, value + 1)]),
      second.map((value, at) => reading(`b${at}`, value)),
    );
    expect(found?.difference).toBeCloseTo(1.58, 10);
    expect(found?.interval?.lower).toBeCloseTo(-0.2055, 4);
    expect(found?.interval?.upper).toBeCloseTo(3.3655, 4);
    expect(found).toMatchObject({ differs: false, earlier: { n: 10 }, later: { n: 10 } });
  });

  it('say no interval of one pair, and nothing of what one round was not measured for', () => {
    expect(benchChanges([reading('a', 250)], [reading('b', 260)])).toMatchObject([
      { difference: 10, interval: null, differs: null },
    ]);
    expect(benchChanges([reading('a', 250)], [])).toEqual([]);
    const tread = [reading('a', 3, 'tread-depth')];
    expect(benchChanges(tread, tread)).toEqual([]);
  });
});
