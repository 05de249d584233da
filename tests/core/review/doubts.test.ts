/** What a lead may ask a tester about, with which questions, and what was asked already. */
import { describe, expect, it } from 'vitest';
import { viewOfHeads, type Revision } from '../../../core/records/index.ts';
import {
  doubtsOf,
  openProject,
  outlyingScores,
  reviewProject,
  unaskedDoubts,
  type Doubt,
} from '../../../core/review/index.ts';
import { asksFor } from '../../../core/talk/index.ts';
import { loggedRun } from '../../../core/mileage/index.ts';
import { seeded } from '../../seeded.ts';
import { idOf } from '../records/make.ts';
import * as make from './log-for-tests.ts';
import { own, PROJECT, record } from './log-for-tests.ts';

const ROUND = idOf(2);
const DAY_MS = 86_400_000;
const NOW = Date.UTC(2026, 5, 30);
const daysAgo = (days: number) => new Date(NOW - days * DAY_MS).toISOString();
const worn = (n: number) => ({ pair: idOf(100 + n), tester: idOf(200 + n) });
const base = (n = 2) => [
  make.project(),
  make.round(ROUND, 1),
  ...Array.from({ length: n }, (_, at) => [
    make.pair(idOf(101 + at), ROUND, String(101 + at)),
    record(idOf(201 + at), 'tester', { code: `T0${at + 1}` }),
    make.handOut(idOf(301 + at), worn(at + 1), daysAgo(60)),
  ]).flat(),
];
const run = (id: number, n: number, days: number, more: Record<string, unknown> = {}) =>
  make.run(idOf(1000 + id), worn(n), daysAgo(days), {
    ...{ durationS: 3600, feet: { answer: 'nothing' }, comfort: { overall: 70 } },
    ...more,
  });
const rub = {
  feet: { answer: 'complaints', complaints: [{ foot: 'left', zone: 'U8', kind: 'rubbing' }] },
};
const question = (id: number, days: number, more: Record<string, unknown>) =>
  own(idOf(500 + id), 'question', { tester: idOf(201), at: daysAgo(days), ...more });

const doubts = (...revisions: readonly Revision[]): readonly Doubt[] => {
  const records = viewOfHeads(revisions);
  expect(records.leftOut).toEqual([]);
  const log = openProject(records, PROJECT, NOW);
  if (!log) throw new Error('no project');
  return doubtsOf(log, reviewProject(log));
};
const quiet = [run(1, 1, 1), run(2, 2, 1)];

describe('doubts', () => {
  it('there are none where all is as it should be', () => {
    expect(doubts(...base(), ...quiet)).toEqual([]);
  });

  it.each([
    ['distance', { distanceM: 212_000, durationS: undefined }, 'really-distance'],
    ['pace', { durationS: 600 }, 'really-pace'],
    ['unknown-pair', { pair: idOf(199) }, 'really-pair'],
    ['not-handed-out', { pair: idOf(102) }, 'really-pair'],
  ] as const)('a run that waits for its %s is asked about by that', (why, more, ask) => {
    const [one, ...rest] = doubts(...base(), ...quiet, run(3, 1, 2, more));
    expect(one).toMatchObject({ kind: 'odd-run', tester: idOf(201), asks: [ask], asked: [] });
    expect(one).toMatchObject({ about: { record: { id: idOf(1003), kind: 'run' } } });
    expect(one).toHaveProperty('whys', expect.arrayContaining([why]));
    expect(rest).toEqual([]);
  });

  it('pain that stands comes first, and is none once a lead answered it', () => {
    const pain = run(3, 1, 2, { pain: { score: 6, isNew: true, signs: ['limp'] } });
    const all = doubts(...base(), ...quiet, pain, run(4, 2, 3, { durationS: 600 }));
    expect(all.map(({ kind }) => kind)).toEqual(['pain', 'odd-run']);
    expect(all[0]).toMatchObject({ score: 6, tester: idOf(201) });
    expect(all[0]?.asks[0]).toBe('pain-now');
    expect(new Set(all[0]?.asks)).toEqual(new Set(asksFor('pain')));
    const answered = own(idOf(400), 'reply', {
      ...{ about: idOf(1003), tester: idOf(201), at: daysAgo(1), advice: 'go-on' },
    });
    expect(doubts(...base(), ...quiet, pain, answered)).toEqual([]);
  });

  it('damage that stands, silence and missing answers', () => {
    const damage = own(idOf(600), 'damage-report', {
      ...{ ...worn(1), at: daysAgo(1), what: 'sole-peeling' },
    });
    expect(doubts(...base(), ...quiet, damage)).toMatchObject([
      { kind: 'damage', about: { record: { id: idOf(600), kind: 'damage-report' } } },
    ]);
    const stop = own(idOf(601), 'stop-use', {
      ...{ pairs: [worn(1).pair], reason: 'The sole peels off', from: daysAgo(1) },
    });
    expect(doubts(...base(), ...quiet, damage, stop)).toEqual([]);
    expect(doubts(...base(), run(1, 1, 1), run(2, 2, 10))).toMatchObject([
      { kind: 'silence', days: 9, tester: idOf(202), about: { pair: idOf(102) } },
    ]);
    const missing = [
      run(3, 1, 4, { feet: undefined }),
      run(4, 1, 2, { feet: undefined }),
      run(5, 2, 3, { comfort: undefined }),
      // Long ago, nobody remembers.
      run(6, 2, 30, { comfort: undefined, feet: undefined }),
    ];
    expect(doubts(...base(), ...quiet, ...missing)).toMatchObject([
      {
        missing: 'feet',
        runs: 2,
        about: { record: { id: idOf(1004) } },
        asks: ['feet-unanswered'],
      },
      { missing: 'comfort', runs: 1, tester: idOf(202), asks: ['comfort-unanswered'] },
    ]);
  });

  it('an early sign is asked of each who reported it, about their latest run', () => {
    const all = doubts(
      ...base(),
      ...quiet,
      run(3, 1, 5, rub),
      run(4, 1, 3, rub),
      run(5, 2, 4, rub),
    );
    const early = all.filter(({ kind }) => kind === 'early-sign');
    expect(early).toMatchObject([
      { zone: 'U8', complaint: 'rubbing', runs: 2, tester: idOf(201) },
      { zone: 'U8', complaint: 'rubbing', runs: 1, tester: idOf(202) },
    ]);
    expect(early[0]?.about).toEqual({
      ...{ record: { id: idOf(1004), kind: 'run' }, pair: idOf(101) },
      ...{ zone: 'U8', complaint: 'rubbing' },
    });
    expect(early[0]?.asks).toEqual(asksFor('early-sign', 'rubbing'));
  });

  it('what was asked is asked no more; what was withdrawn can be asked again', () => {
    const odd = [...base(), ...quiet, run(3, 1, 2, { durationS: 600 })];
    const about = { record: { id: idOf(1003), kind: 'run' } };
    const asked = doubts(...odd, question(1, 1, { ask: 'really-pace', about }));
    expect(asked).toMatchObject([{ kind: 'odd-run', asks: [], asked: [idOf(501)] }]);
    expect(unaskedDoubts(asked)).toEqual([]);
    // In the lead's own words as well.
    expect(unaskedDoubts(doubts(...odd, question(1, 1, { words: 'So fast?', about })))).toEqual([]);
    for (const other of [
      { ask: 'really-pace', about, withdrawn: daysAgo(0) },
      { ask: 'really-pace', about, tester: idOf(202) },
      { ask: 'really-pace', about: { record: { id: idOf(1001), kind: 'run' } } },
      { ask: 'pain-now', about },
      { words: 'How are you?' },
    ])
      expect(
        unaskedDoubts(doubts(...odd, question(1, 1, other))),
        JSON.stringify(other),
      ).toHaveLength(1);
  });

  it('an early sign is known by its zone, whichever run was asked about; the other questions stay', () => {
    const signs = [...base(), ...quiet, run(3, 1, 5, rub), run(4, 1, 3, rub)];
    const about = { record: { id: idOf(1003), kind: 'run' }, zone: 'U8', complaint: 'rubbing' };
    const [one] = doubts(...signs, question(1, 4, { ask: 'sock-or-shoe', about }));
    expect(one).toMatchObject({ kind: 'early-sign', asked: [idOf(501)] });
    expect(one?.asks).toEqual(
      asksFor('early-sign', 'rubbing').filter((ask) => ask !== 'sock-or-shoe'),
    );
  });

  it('who ran again and fell silent again is asked again', () => {
    const silent = [...base(), run(1, 1, 1), run(2, 2, 10)];
    const ask = (days: number) =>
      question(1, days, { tester: idOf(202), ask: 'still-running', about: { pair: idOf(102) } });
    expect(unaskedDoubts(doubts(...silent, ask(5)))).toEqual([]);
    expect(unaskedDoubts(doubts(...silent, ask(20)))).toHaveLength(1);
  });
});

describe('a score that may have slipped', () => {
  const attributes = ['overall', 'heel-cushioning', 'toe-room'] as const;
  /** One tester's runs in one pair with scores around their own mean. */
  const scored = (random: () => number, spread: number, slip: number | null) => {
    const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
    const level = 40 + 40 * random();
    const runs = Array.from({ length: 12 }, (_, at) => {
      const score = (by: number) => Math.min(100, Math.max(0, level + spread * normal() + by));
      const comfort = Object.fromEntries(
        attributes.map((one) => [
          one,
          score(slip !== null && at === 7 && one === 'overall' ? slip : 0),
        ]),
      );
      return run(at, 1, 12 - at, { comfort });
    });
    return viewOfHeads(runs).run.map(loggedRun);
  };
  const found = (times: number, spread: number, slip: number | null) => {
    const random = seeded(20261217);
    let flagged = 0;
    let hit = 0;
    for (let n = 0; n < times; n++) {
      const all = outlyingScores(scored(random, spread, slip), attributes, () => true);
      flagged += all.length;
      hit += all.some((one) => one.run === idOf(1007) && one.attribute === 'overall') ? 1 : 0;
    }
    return { perRun: flagged / times / 12, hit: hit / times };
  };

  it.each([4, 8, 12])('is one in two hundred right runs at most, spread %i', (spread) => {
    expect(found(400, spread, null).perRun).toBeLessThanOrEqual(0.005);
  });

  it('is found where the line was dragged the wrong way', () => {
    const { hit } = found(200, 6, -70);
    expect(hit).toBeGreaterThan(0.35);
    // Of a tester whose level leaves room for it: 60 points and more.
    const steady = Array.from({ length: 10 }, (_, at) =>
      run(at, 1, 10 - at, { comfort: { overall: at === 4 ? 8 : 70 + (at % 4) } }),
    );
    expect(
      outlyingScores(viewOfHeads(steady).run.map(loggedRun), ['overall'], () => true),
    ).toMatchObject([{ run: idOf(1004), attribute: 'overall', score: 8 }]);
  });

  it('is no first impression, and none of a pair worn a few times', () => {
    const few = (more: Record<string, unknown>, n: number) =>
      viewOfHeads(
        Array.from({ length: n }, (_, at) =>
          run(at, 1, n - at, { comfort: { overall: at === 0 ? 5 : 80 }, ...(at === 0 && more) }),
        ),
      ).run.map(loggedRun);
    expect(outlyingScores(few({}, 10), ['overall'], () => true)).toHaveLength(1);
    expect(outlyingScores(few({ firstImpression: true }, 10), ['overall'], () => true)).toEqual([]);
    expect(outlyingScores(few({}, 4), ['overall'], () => true)).toEqual([]);
  });
});
