/** `npm run review` on the demo, its sums against SQL over the same lines, and its errors. */
import { execFile } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import SQLite from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import {
  newClock,
  readBundle,
  sealRevision,
  stampAfter,
  stampParts,
  unpackBundle,
  writeBundle,
  type Revision,
} from '../../../core/records/index.ts';
import type { Review } from '../../../core/review/index.ts';
import { idOf } from '../../core/records/make.ts';
import * as make from '../../core/review/log-for-tests.ts';
import { own, record } from '../../core/review/log-for-tests.ts';

const root = fileURLToPath(new URL('../../..', import.meta.url));
const demo = 'demo-data/wear-test.pairlog';
const scratch = mkdtempSync(join(tmpdir(), 'pairlog-review-'));

const review = (...args: string[]): Promise<{ code: number; out: string; err: string }> =>
  new Promise((done) => {
    execFile(
      process.execPath,
      ['--import', 'tsx', 'app/terminal/review.ts', ...args],
      { cwd: root, maxBuffer: 32 * 1024 * 1024 },
      (error, out, err) => done({ code: error ? Number(error.code) : 0, out, err }),
    );
  });

const demoText = (): string => {
  const unpacked = unpackBundle(readFileSync(join(root, demo)));
  if (!unpacked.ok) throw new Error(unpacked.why);
  return unpacked.text;
};

describe('the review of the demo', () => {
  it('has the kilometres of each pair that plain SQL finds in the same lines', async () => {
    const { code, out } = await review(demo, '--json');
    expect(code).toBe(0);
    const answer = JSON.parse(out) as Review;
    const db = new SQLite(':memory:');
    db.exec('create table line (json text)');
    const insert = db.prepare('insert into line values (?)');
    for (const line of demoText().trim().split('\n')) insert.run(line);
    // The current state of a record is its greatest (stamp, hash); the demo holds no run twice.
    const rows = db
      .prepare(
        `with revision as (
           select json, json_extract(json, '$.id') id,
                  row_number() over (partition by json_extract(json, '$.id')
                    order by json_extract(json, '$.stamp') desc, json_extract(json, '$.hash') desc) place
           from line where json_extract(json, '$.id') is not null),
         head as (select json from revision where place = 1 and json_extract(json, '$.body') is not null),
         run as (select json_extract(json, '$.body.pair') pair, json_extract(json, '$.body.distanceM') m
           from head where json_extract(json, '$.kind') = 'run')
         select json_extract(pair.json, '$.body.code') code,
                coalesce(json_extract(pair.json, '$.body.carriedInM'), 0) + coalesce(sum(run.m), 0) m
         from head pair left join run on run.pair = json_extract(pair.json, '$.id')
         where json_extract(pair.json, '$.kind') = 'pair' group by 1`,
      )
      .all() as { code: string; m: number }[];
    expect(rows).toHaveLength(24);
    expect(
      Object.fromEntries(answer.pairs.map(({ code: name, totalM }) => [name, totalM])),
    ).toEqual(Object.fromEntries(rows.map(({ code: name, m }) => [name, m])));
  });

  it('prints the same figures as tables in both languages', async () => {
    const english = await review(demo);
    expect(english.out).toContain('24 pairs, 12 testers in the group (12 have run)');
    expect(english.out).toContain('U10 heel cup');
    expect(english.out).toContain('── Round 3 against Round 2 ──');
    expect(english.out).toContain('Round 2: 6 of 8 testers, 50 of 183 asked runs');
    const chinese = await review(demo, '--lang', 'zh');
    expect(chinese.out).toContain('24 双，组内 12 名试穿员（12 名跑过）');
    expect(chinese.out).toContain('后套');
    expect(chinese.out).toContain('── Round 3 对比 Round 2 ──');
  });

  it('says the answer first, and the statistics only behind --how-sure', async () => {
    const statistics = /e-value|\bp [\d<]|adjusted p|95 %|interval/;
    const [short, long] = [await review(demo), await review(demo, '--how-sure')];
    const [name, headline] = short.out.split('\n');
    expect(name).toBe('Demo trainer K1 (invented)');
    expect(headline).toBe(
      'Pressure at the lateral toe box and heel slip at the heel cup are better. Nothing is settled yet.',
    );
    expect(short.out).toContain('Tread depth likely fails first, at about 490 km of 600 km.');
    expect(short.out).not.toMatch(statistics);
    expect(long.out.split('\n').slice(0, 2)).toEqual([name, headline]);
    expect(long.out).toMatch(/e-value > 1.000.000/);
    expect(long.out).toContain('interval');
    const chinese = await review(demo, '--language', 'zh');
    expect(chinese.out).not.toMatch(/e 值|p 值|95 %|置信|校正/);
  });
});

describe('the review without pairs out of tolerance', () => {
  it('leaves out the one pair that is, and says so', async () => {
    const all = await review(demo);
    expect(all.out).toMatch(/^229 .*2 dimensions (proved|read) out/m);
    const less = await review(demo, '--without-out-of-tolerance');
    expect(less.out).toContain('Read without the 1 pair out of tolerance: 229.');
    expect(less.out).toContain('23 pairs, ');
    expect(less.out).not.toMatch(/^229 /m);
  });
});

describe('files instead of text', () => {
  const at = (name: string) => join(scratch, name);

  it('writes the report of a round in two languages, the figures as tables, and JSON', async () => {
    const { code, out } = await review(
      ...[demo, '--report', at('r.html'), '--language', 'en+zh', '--round', '1'],
      ...['--trade', 'upper', '--csv', at('csv'), '--json', at('r.json')],
    );
    expect(code).toBe(0);
    expect(out).toContain(`Written: ${at('r.html')}`);
    const html = readFileSync(at('r.html'), 'utf8');
    expect(html).toContain('Round 1: sheet for upper');
    expect(html).toContain('致版师');
    expect(html).toContain('Heel slips in the heel cup');
    for (const name of readdirSync(at('csv')))
      expect(out).toContain(`Written: ${at(`csv/${name}`)}`);
    expect(readFileSync(at('csv/findings.csv'), 'utf8')).toContain('Heel slips in the heel cup');
    expect(readFileSync(at('csv/dictionary.csv'), 'utf8')).toContain(
      'runs,duration_s,How long the run took,跑步用时,s,0,864000,',
    );
    expect(JSON.parse(readFileSync(at('csv/dictionary.json'), 'utf8'))).toMatchObject({
      format: 'pairlog-dictionary',
    });
    expect(JSON.parse(readFileSync(at('r.json'), 'utf8'))).toMatchObject({
      format: 'pairlog-review',
      v: 1,
    });
  });

  it('refuses a round, a trade, languages or a place that are not there, and writes nothing', async () => {
    const wrong = [
      ['--report', at('no.html'), '--round', '9'],
      ['--report', at('no.html'), '--trade', 'sales'],
      ['--report', at('no.html'), '--language', 'en+xx'],
    ];
    const answers = await Promise.all(wrong.map((args) => review(demo, ...args)));
    expect(answers.map(({ code }) => code)).toEqual(wrong.map(() => 1));
    expect(existsSync(at('no.html'))).toBe(false);
    // The bundle itself is never taken for the file to write.
    expect(await review('--json', demo)).toMatchObject({ code: 1 });
  });
});

describe('what cannot be right', () => {
  const [round, pair, other, tester] = [idOf(2), idOf(10), idOf(11), idOf(20)];
  const odd = make.run(idOf(50), { pair, tester }, '2026-05-04T18:00:00Z', { distanceM: 500_000 });
  const aside = make.run(idOf(51), { pair, tester }, '2026-05-05T18:00:00Z');
  const revisions = [
    make.project(),
    make.round(round, 1),
    make.pair(pair, round, '637'),
    make.pair(other, round, '640'),
    record(tester, 'tester', { code: 'T01' }),
    make.handOut(idOf(30), { pair, tester }, '2026-05-01T08:00:00Z'),
    make.run(idOf(52), { pair, tester }, '2026-05-06T18:00:00Z'),
    odd,
    aside,
    own(idOf(60), 'decision', {
      record: aside.id,
      recordKind: 'run',
      judged: aside.stamp,
      ruling: 'set-aside',
      why: 'worn by a friend',
      at: '2026-05-07T08:00:00Z',
    }),
    own(idOf(61), 'stop-use', { pairs: [pair], reason: 'plate', from: '2026-05-20T00:00:00Z' }),
  ];
  const file = join(scratch, 'odd.pairlog');
  writeFileSync(file, writeBundle({ madeAt: '2026-06-01T00:00:00Z' }, revisions));

  it('stands in the JSON with its reason, and in no figure', async () => {
    const answer = JSON.parse((await review(file, '--json')).out) as Review & {
      rounds: { influence: unknown }[];
    };
    expect(answer.size).toMatchObject({ runs: 1, distanceM: 10_000 });
    expect(answer.waiting).toMatchObject([
      { about: 'run', counts: false, whys: [{ why: 'distance' }], distanceM: 500_000 },
    ]);
    expect(answer.decided).toMatchObject([{ ruling: 'set-aside', why: 'worn by a friend' }]);
    expect(answer.rounds[0]?.influence).toMatchObject({
      decisive: [{ who: 'pair', id: pair, word: 'not-known-yet' }],
    });
  });

  it('is printed in both languages, and who alone decides the verdict', async () => {
    const { out } = await review(file);
    expect(out).toContain('── In no figure until you decide ──');
    expect(out).toContain('T01, pair 637, 500.0 km, 2026-05-04T18:00:00Z\n  implausible distance');
    expect(out).toContain(': worn by a friend');
    expect(out).toContain('Without pair 637 this would be open.');
    const chinese = (await review(file, '--language', 'zh')).out;
    expect(chinese).toContain('── 在你决定之前不计入任何数字 ──');
    expect(chinese).toContain('如果不算 637 这双鞋，就还没有定论。');
  });

  it('is counted in the report as not in its figures', async () => {
    const report = join(scratch, 'odd.html');
    await review(file, '--report', report);
    const text = readFileSync(report, 'utf8');
    expect(text).toContain('Not in these figures: 1 that waits for a decision, 1 set aside');
    expect(text).toContain('Without pair 637 this would be open.');
  });
});

describe('a bad file', () => {
  const written = (name: string, text: string) => {
    const file = join(scratch, name);
    writeFileSync(file, text);
    return file;
  };

  it('is refused with exit code 2, naming line and field', async () => {
    const lines = demoText().split('\n');
    lines[3] = (lines[3] as string).replace('"stamp":"', '"stamp":"z');
    const { code, err } = await review(written('field.pairlog', lines.join('\n')));
    expect(code).toBe(2);
    expect(err).toContain('line 4: stamp');
  });

  it('with a record that cannot be read is reviewed without it, and says which and why', async () => {
    const bundle = readBundle(demoText());
    const revisions = bundle.revisions.map(({ revision }) => revision);
    const tester = revisions.find(({ kind }) => kind === 'tester') as Revision;
    const { device } = stampParts(tester.stamp);
    const edit = (from: Revision, mm: number) =>
      sealRevision(
        {
          ...{ id: from.id, kind: from.kind, author: from.author, sv: 1 },
          body: { ...from.body, footLengthMm: { left: mm, right: 265 } },
        },
        stampAfter(newClock(device), 0, from.stamp).stamp,
        from.stamp,
      );
    const impossible = edit(tester, 26_500);
    const write = (name: string, more: readonly Revision[]) =>
      written(name, writeBundle({ madeAt: bundle.header?.madeAt ?? '' }, [...revisions, ...more]));
    const { code, out, err } = await review(write('unread.pairlog', [impossible]));
    expect(code).toBe(0);
    const called = `Tester ${String(tester.body?.['code'])}`;
    expect(err).toMatch(
      new RegExp(`line \\d+: ${called}: Foot length, left: Must be from 100 to 400 mm`),
    );
    expect(out).toContain('One record cannot be read');
    expect(out).toContain(`${called}\n- Foot length, left: Must be from 100 to 400 mm.`);
    // Corrected, it is no trouble any more.
    const again = await review(write('corrected.pairlog', [impossible, edit(impossible, 265)]));
    expect(again).toMatchObject({ code: 0, err: '' });
    expect(again.out).not.toContain('cannot be read');
  });

  it('that ends early is said to end early', async () => {
    const text = demoText();
    const { code, err } = await review(written('cut.pairlog', text.slice(0, text.length / 2)));
    expect(code).toBe(2);
    expect(err).toMatch(/line \d+: the file ends early/);
  });

  it('that is no bundle, or not there, says so', async () => {
    expect(await review('package.json')).toMatchObject({ code: 2 });
    expect(await review('nowhere.pairlog')).toMatchObject({ code: 2 });
  });

  it('is not needed for a wrong call: that is exit code 1', async () => {
    expect(await review()).toMatchObject({ code: 1 });
    expect(await review(demo, '--project', 'Another')).toMatchObject({ code: 1 });
    expect(await review(demo, '--lang', 'xx')).toMatchObject({ code: 1 });
  });
});

describe('the schema', () => {
  it('is a JSON Schema with a definition for every kind', async () => {
    const { code, out } = await review('--schema');
    expect(code).toBe(0);
    const schema = JSON.parse(out) as { $defs: Record<string, unknown> };
    expect(Object.keys(schema.$defs)).toEqual(
      expect.arrayContaining(['run', 'pair', 'round', 'end']),
    );
  });
});
