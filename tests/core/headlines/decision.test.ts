/** The report's first sentence: each case, and never more than the stamps beside it say. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  decisionHeadline,
  decisionRows,
  rowsOfTrade,
  type DecisionFacts,
} from '../../../core/headlines/index.ts';
import type { Callout, ReportedFinding } from '../../../core/review/index.ts';
import { idOf } from '../records/make.ts';
import { readDemo } from '../../app/report/demo-report.ts';

const { reports } = readDemo();

const complaint = (word: string, testers = 3): Callout =>
  ({
    what: 'complaint',
    zone: 'U10',
    kind: 'heel-slip',
    side: 'left',
    round: idOf(0),
    word,
    proved: [],
    rounds: 1,
    testers,
    askedTesters: 8,
    runs: 20,
    askedRuns: 100,
  }) as Callout;
const damage = {
  what: 'damage',
  zone: 'P9',
  side: 'right',
  pair: idOf(7),
  kind: 'other',
  damage: idOf(8),
} as Callout;
const better = {
  what: 'better',
  zone: 'U3',
  kind: 'pressure',
  side: 'right',
  verdict: 'better',
} as Callout;

const finding = (body: Partial<ReportedFinding['body']> = {}): ReportedFinding => ({
  id: idOf(9),
  body: {
    project: idOf(0),
    round: idOf(0),
    title: 'Something',
    part: 'lacing',
    priority: 'low',
    state: 'open',
    ...body,
  },
});

const words = ['holds', 'not-known-yet', 'does-not-hold'] as const;
type Word = (typeof words)[number];

const facts = (
  callouts: readonly Callout[],
  findings: readonly ReportedFinding[] = [],
  items: readonly Word[] = ['not-known-yet', 'holds'],
  runs = 10,
): DecisionFacts =>
  ({
    callouts,
    findings,
    wear: [],
    project: {},
    round: { size: { runs } },
    verdict: {
      round: idOf(0),
      word: items.includes('does-not-hold')
        ? 'does-not-hold'
        : items.includes('not-known-yet')
          ? 'not-known-yet'
          : 'holds',
      items: items.map((word) => ({ what: 'stop-use', word, pairs: [] })),
    },
  }) as unknown as DecisionFacts;

const say = (one: DecisionFacts) => decisionHeadline(one, decisionRows(one));

describe('what a round asks its makers to do', () => {
  it('decides nothing where nobody has run', () => {
    expect(say(facts([complaint('recurs-across-testers')], [], ['does-not-hold'], 0)).case).toBe(
      'nobody-ran',
    );
  });

  it('changes what is proved, and says that the rest is open', () => {
    expect(
      say(facts([complaint('recurs-across-testers')], [], ['does-not-hold', 'not-known-yet'])),
    ).toMatchObject({ case: 'change', claims: 'fails', open: 1, look: [] });
  });

  it('changes what a lead asked for, and claims nothing with it', () => {
    const asked = finding({ kind: 'heel-slip', zone: 'U10', wanted: 'Narrower' });
    const h = say(facts([complaint('early-sign')], [asked]));
    expect(h).toMatchObject({ case: 'change', claims: 'nothing' });
  });

  it('does not ask again for what is closed or judged', () => {
    const closed = finding({ wanted: 'Narrower', state: 'closed' });
    expect(decisionRows(facts([], [closed]))).toEqual([]);
  });

  it('names the pair that comes apart before what to change', () => {
    const one = facts([complaint('recurs-across-testers'), damage]);
    expect(decisionRows(one).map(({ act }) => act)).toEqual(['look', 'change']);
    expect(say(one)).toMatchObject({ case: 'change', look: [idOf(7)] });
    expect(say(facts([damage]))).toMatchObject({ case: 'look', look: [idOf(7)] });
  });

  it('says what fails where nothing drawn explains it', () => {
    expect(say(facts([], [], ['does-not-hold']))).toMatchObject({
      case: 'fails',
      claims: 'fails',
      what: 'stop-use',
    });
  });

  it('watches what is likely, keeps what is better, goes on where nothing shows', () => {
    expect(say(facts([complaint('early-sign'), better]))).toMatchObject({ case: 'watch' });
    expect(decisionRows(facts([better])).map(({ act }) => act)).toEqual(['keep']);
    expect(say(facts([]))).toMatchObject({ case: 'go-on', open: 1 });
    expect(say(facts([], [], ['holds', 'holds']))).toMatchObject({ case: 'keep', limits: 2 });
  });

  it('asks for a number only where the limit is proved to fail, or a lead gave one', () => {
    for (const report of reports)
      for (const { callout, amount } of decisionRows(report))
        if (callout?.what === 'wear') {
          const item = report.verdict.items.find(
            (one) => one.what === 'wear' && one.limit === callout.limit,
          );
          expect(amount !== null).toBe(item?.word === 'does-not-hold');
        }
  });

  it('never says more than the stamps', () => {
    const anyCallout = fc.oneof(
      fc
        .record({
          word: fc.constantFrom(
            'recurs-across-testers',
            'recurs-for-one-tester',
            'early-sign',
            'seen-once',
          ),
          testers: fc.integer({ min: 1, max: 8 }),
        })
        .map(({ word, testers }) => complaint(word, testers)),
      fc.constantFrom(damage, better),
    );
    const anyFinding = fc
      .record(
        {
          wanted: fc.constant('Do it'),
          state: fc.constantFrom('open', 'asked-for', 'carried-out', 'closed'),
          kind: fc.constant('heel-slip'),
        },
        { requiredKeys: ['state'] },
      )
      .map((body) => finding(body as Partial<ReportedFinding['body']>));
    fc.assert(
      fc.property(
        fc.array(anyCallout, { maxLength: 5 }),
        fc.array(anyFinding, { maxLength: 2 }),
        fc.array(fc.constantFrom(...words), { minLength: 1, maxLength: 6 }),
        (callouts, findings, items) => {
          const one = facts(callouts, findings, items);
          const h = say(one);
          if (h.claims === 'fails') expect(one.verdict.word).toBe('does-not-hold');
          if (h.case === 'keep') expect(one.verdict.word).toBe('holds');
          // A failing round is never watched, kept or simply tested on.
          if (one.verdict.word === 'does-not-hold')
            expect(['change', 'look', 'fails']).toContain(h.case);
          if (h.case === 'change') {
            expect(h.open).toBe(items.filter((word) => word === 'not-known-yet').length);
            for (const { sure, finding: own } of h.change)
              expect(sure === 'clear' || sure === 'fails' || own?.body.wanted !== undefined).toBe(
                true,
              );
          }
        },
      ),
    );
  });
});

describe('the rows of a trade', () => {
  const base = reports[0] as DecisionFacts;
  const rows = (callouts: readonly Callout[], findings: readonly ReportedFinding[] = []) =>
    decisionRows({ ...base, callouts, findings });
  const whats = (some: ReturnType<typeof rows>) =>
    some.map(({ callout, finding: own }) => callout?.what ?? own?.body.title);

  it('are what points to it and what is asked of it, and nothing else', () => {
    const asked = finding({ part: 'upper-material' });
    const peeled = { ...damage, kind: 'sole-peeling' } as Callout;
    const all = rows([complaint('early-sign'), peeled, better], [asked]);
    expect(whats(rowsOfTrade(all, 'last'))).toEqual(['complaint', 'better']);
    expect(whats(rowsOfTrade(all, 'tooling'))).toEqual(['damage']);
    expect(whats(rowsOfTrade(all, 'materials'))).toEqual(['Something', 'better']);
    expect(rowsOfTrade(all, 'foam')).toEqual([]);
  });

  it('stand on the sheet of each trade that a complaint points to, whoever is asked to change it', () => {
    const asked = finding({ part: 'upper-pattern', kind: 'heel-slip', zone: 'U10', wanted: 'x' });
    const all = rows([complaint('recurs-across-testers')], [asked]);
    for (const trade of ['upper', 'last'] as const)
      expect(rowsOfTrade(all, trade).map((row) => row.finding?.id)).toEqual([asked.id]);
  });

  it('of a measure go to who makes what is measured', () => {
    const wear = {
      what: 'wear',
      zone: 'P9',
      side: 'both',
      site: 'heel',
      limit: { measure: 'tread-depth' },
    };
    const all = rows([wear as unknown as Callout]);
    expect(rowsOfTrade(all, 'tooling')).toHaveLength(1);
    expect(rowsOfTrade(all, 'foam')).toHaveLength(0);
  });
});
