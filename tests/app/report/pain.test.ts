/** The answers to the question about pain reach every figure: evidence, verdict, report, terminal, CSV and JSON. */
import { describe, expect, it } from 'vitest';
import { reportFile } from '../../../app/report/file.tsx';
import { spokenIn, type Languages } from '../../../app/report/spoken.tsx';
import { jsonOf, tablesOf } from '../../../app/report/tables/index.ts';
import { languageFile } from '../../../app/terminal/languages.ts';
import { printedIn } from '../terminal/printed.ts';
import { viewOfHeads } from '../../../core/records/index.ts';
import {
  checkPanel,
  lookAtFeet,
  lookAtRounds,
  openProject,
  overviewOf,
  reportRounds,
  reviewProject,
  type RoundReport,
} from '../../../core/review/index.ts';
import { idOf } from '../../core/records/make.ts';
import * as make from '../../core/review/log-for-tests.ts';
import { PROJECT, record } from '../../core/review/log-for-tests.ts';

const ROUND = idOf(2);
const DAY_MS = 86_400_000;
const NOW = Date.UTC(2026, 5, 30);
const at = (day: number) => new Date(NOW - (40 - day) * DAY_MS).toISOString();

/** Eight testers of twelve runs whose feet bothered nowhere; what each answers on pain is given. */
const logOf = (pain: (tester: number, run: number) => Record<string, unknown> | undefined) => {
  const log = openProject(
    viewOfHeads([
      make.project(),
      make.round(ROUND, 1),
      ...Array.from({ length: 8 }, (_, n) => n).flatMap((n) => [
        make.pair(idOf(100 + n), ROUND, String(100 + n)),
        record(idOf(200 + n), 'tester', { code: `T${n}` }),
        make.handOut(idOf(300 + n), { pair: idOf(100 + n), tester: idOf(200 + n) }, at(0)),
        ...Array.from({ length: 12 }, (_, run) => {
          const given = pain(n, run);
          return make.run(
            idOf(1000 + 100 * n + run),
            { pair: idOf(100 + n), tester: idOf(200 + n) },
            at(1 + run),
            { feet: { answer: 'nothing' }, ...(given && { pain: given }) },
          );
        }),
      ]),
    ]),
    PROJECT,
    NOW,
  );
  if (!log) throw new Error('no project');
  return log;
};

const written = (log: ReturnType<typeof logOf>) => {
  const review = reviewProject(log);
  const looks = lookAtRounds(log, review);
  const [feet, panel] = [lookAtFeet(log), checkPanel(log)];
  const reports = reportRounds(log, review);
  const report = reports[0] as RoundReport;
  const languages = [
    spokenIn(languageFile('en'), report.names, 'km', 'UTC'),
  ] as unknown as Languages;
  return {
    review,
    pain: review.rounds[0]?.pain,
    rate: looks[0]?.verdict.items.find(({ what }) => what === 'allowed-rate'),
    overview: overviewOf(
      log,
      review,
      looks.map(({ verdict }) => verdict),
    ),
    terminal: ['en', 'zh'].map((id) => printedIn(log, id, true)),
    short: printedIn(log, 'en', false),
    html: reportFile({ report, languages, trade: null, photos: new Map() }, ''),
    csv: tablesOf({ log, review, reports, findings: [], feet, panel }),
    json: JSON.parse(jsonOf({ log, review, reports, findings: [], feet, panel })) as {
      rounds: { pain: unknown }[];
    },
  };
};

describe('six of eight testers with pain 4 of 10 after every second run', () => {
  const all = written(
    logOf((n, run) => ({ score: n < 6 && run % 2 === 1 ? 4 : 0, isNew: run === 1 })),
  );

  it('is proven across testers, and breaks the allowed rate', () => {
    expect(all.pain).toMatchObject({
      word: 'recurs-across-testers',
      asked: { runs: 96, testers: 8 },
      runs: 36,
      anyRuns: 36,
      cautionRuns: 6,
      testersOnce: 6,
      testersTwice: 6,
      most: 4,
      allowedRate: 0.01,
    });
    expect(all.pain?.eValue).toBeGreaterThan(1e6);
    expect(all.pain?.provenTesters).toHaveLength(6);
    expect(all.rate).toMatchObject({ word: 'does-not-hold', cells: [], pain: { runs: 36 } });
    expect(all.rate?.what === 'allowed-rate' && all.rate.upTo.pain).toBeGreaterThan(0.375);
    expect(all.overview.rounds[0]?.painRecurs).toBe(true);
  });

  it('is said in the terminal and in the report, and nobody reads that nothing was reported', () => {
    const [en, zh] = all.terminal;
    expect(en).toContain('6 of 8 testers had pain of 3 of 10 or more');
    expect(en).toContain('It was in 36 of 96 answers');
    expect(en).toMatch(/question about pain: .* in 36 of 96 answers .*: recurs across testers/);
    expect(en).not.toContain('None was reported');
    expect(en).toContain('not medical advice');
    expect(all.short).toContain('6 of 8 testers had pain of 3 of 10 or more');
    expect(all.short).toContain('not medical advice');
    expect(all.short).not.toContain('e-value');
    expect(zh).toContain('96 次回答中出现 36 次');
    expect(all.html).toContain('6 of 8 testers had pain of 3 of 10 or more');
  });

  it('stands in the tables and in the JSON', () => {
    const table = all.csv.find(({ name }) => name === 'pain');
    const row = Object.fromEntries(
      (table?.columns ?? []).map((column, n) => [column, table?.rows[0]?.[n]]),
    );
    expect(row).toMatchObject({ evidence: 'recurs-across-testers', runs: 36, runs_asked: 96 });
    expect(all.json.rounds[0]?.pain).toMatchObject({ word: 'recurs-across-testers', runs: 36 });
  });
});

describe('other answers on pain', () => {
  it('leave a log without any as it was', () => {
    const all = written(logOf(() => undefined));
    expect(all.pain).toBeNull();
    expect(all.rate).toMatchObject({ word: 'not-known-yet', pain: null });
    expect(all.terminal[0]).toContain('Nobody answered the question about pain.');
  });

  it('count from 3 of 10 on, or with a sign from 1 on', () => {
    const pains = [{ score: 2 }, { score: 3 }, { score: 1, signs: ['limp'] }, { score: 0 }];
    const { pain } = written(logOf((n, run) => (n === 0 ? pains[run] : undefined)));
    expect(pain).toMatchObject({ asked: { runs: 4, testers: 1 }, anyRuns: 3, runs: 2 });
  });

  it('of one tester alone are proven for that tester and not across testers', () => {
    const { pain, rate } = written(
      logOf((n, run) => ({ score: n === 3 && run % 2 === 1 ? 6 : 0 })),
    );
    expect(pain).toMatchObject({
      word: 'recurs-for-one-tester',
      provenTesters: [{ tester: idOf(203) }],
    });
    expect(rate?.word).toBe('not-known-yet');
  });

  it('that all say none are called not seen only where such silence would be rare', () => {
    const silent = (runs: number) =>
      written(logOf((_, run) => (run < runs ? { score: 0 } : undefined))).pain;
    // Four of eight prone at 20 %: two silent runs of each come in 0.8^8 = 17 % of tests.
    expect(silent(2)?.silenceChance).toBeCloseTo(0.8 ** 8, 9);
    expect(silent(2)?.word).toBe('too-few-runs');
    expect(silent(4)?.word).toBe('not-seen');
  });
});
