/** The words of the printed report: each first sentence in both languages, a lead's own words, no statistics before the appendix. */
import { renderToStaticMarkup } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { tradeData, trades, tradesOfComplaint } from '../../../core/foot/index.ts';
import type { DecisionHeadline } from '../../../core/headlines/index.ts';
import type { RecordId } from '../../../core/records/index.ts';
import type { Callout, ReportedFinding, RoundReport } from '../../../core/review/index.ts';
import { ReportDocument } from '../../../app/report/document.tsx';
import { Own } from '../../../app/report/own-words.tsx';
import { headlineOf } from '../../../app/report/sheet.tsx';
import { sureWords } from '../../../app/report/acts-table.tsx';
import { suits, untapped } from '../../../app/report/sheet-words.tsx';
import { wrapped } from '../../../app/report/shoe-picture.tsx';
import { spokenIn, type Languages } from '../../../app/report/spoken.tsx';
import { languageFile } from '../../../app/terminal/languages.ts';
import { readDemo } from './demo-report.ts';

const { reports } = readDemo();
const first = reports[0] as RoundReport;
const speak = (...ids: readonly string[]): Languages =>
  ids.map((id) => spokenIn(languageFile(id), first.names, 'km', 'UTC')) as unknown as Languages;

const row = { act: 'change' } as Extract<DecisionHeadline, { case: 'change' }>['change'][number];
const cases: readonly (readonly [DecisionHeadline, string, string])[] = [
  [
    { case: 'nobody-ran', claims: 'nothing' },
    'Nobody has run in this round yet. Nothing to decide.',
    '本轮还没有人跑过，暂无可决定的事项。',
  ],
  [
    { case: 'change', claims: 'fails', change: [row], look: [], open: 0 },
    'Change the collar and tread. Keep the rest.',
    '请修改领口和花纹。其余保持不变。',
  ],
  [
    { case: 'change', claims: 'nothing', change: [row], look: ['x' as never], open: 2 },
    'Look at pair 963 first. Change the collar and tread. Keep testing the rest.',
    '请先查看样鞋 963。请修改领口和花纹。其余尚无定论，继续试穿。',
  ],
  [
    { case: 'look', claims: 'nothing', look: ['x' as never], open: 3 },
    'Look at pair 963 first. 3 limits still open.',
    '请先查看样鞋 963。还有 3 项限值尚无定论。',
  ],
  [
    { case: 'fails', claims: 'fails', what: 'structure', open: 0 },
    'The round fails: pairs come apart. Find the cause first.',
    '本轮不达标：样鞋损坏。请先找原因。',
  ],
  [
    { case: 'watch', claims: 'nothing', watch: [row], open: 1 },
    'Nothing is proved yet. Watch the collar and tread.',
    '目前没有已证实的问题，请留意领口和花纹。',
  ],
  [
    { case: 'keep', claims: 'holds', limits: 7 },
    'Keep it as it is: all 7 limits hold.',
    '保持不变：7 项限值全部达标。',
  ],
  [
    { case: 'go-on', claims: 'nothing', open: 1 },
    'Change nothing yet. Keep testing: 1 limit open.',
    '暂不修改，继续试穿：还有 1 项限值尚无定论。',
  ],
];

describe('the first sentence', () => {
  it.each(cases)('of %j', (h, english, chinese) => {
    const said = (id: string, names: readonly string[]) => {
      const [{ paper, list }] = speak(id);
      return paper.headline(h, { isProved: false, names, pairs: ['963'], list });
    };
    expect(said('en', ['collar', 'tread'])).toBe(english);
    expect(said('zh', ['领口', '花纹'])).toBe(chinese);
  });
});

const documentOf = (report: RoundReport, trade: (typeof trades)[number] | null, ...ids: string[]) =>
  renderToStaticMarkup(
    <ReportDocument report={report} languages={speak(...ids)} trade={trade} photos={new Map()} />,
  );
/** What stands before the appendix. */
const acted = (html: string) => html.slice(0, html.indexOf('class="appendix"'));

describe('what is read before the appendix', () => {
  it.each(reports.map((report, at) => [at + 1, report] as const))(
    'of round %i has no word of statistics, whole or by trade',
    (_, report) => {
      for (const trade of [null, ...trades]) {
        const html = acted(documentOf(report, trade, 'en', 'zh'));
        expect(html.length).toBeGreaterThan(1000);
        expect(html).not.toMatch(/e-value|e 值|\bp [<=]|interval|区间|adjusted|Wilson|Kendall/);
        expect(html).not.toMatch(/undefined|NaN|\[object/);
      }
    },
  );

  it('begins with what to do and says whose eyes it is for', () => {
    const html = documentOf(first, null, 'en');
    expect(html).toContain('Change the heel cup and midsole foam. Keep testing the rest.');
    expect(html).toContain('Confidential: for the people building this shoe.');
    expect(html.match(/class="stamp stamp-/g)?.length).toBe(first.verdict.items.length);
  });

  it('holds a trade’s own curves, comfort, complaints, words and pairs where it has no finding', () => {
    const bare: RoundReport = { ...first, findings: [], carried: [] };
    for (const trade of trades) {
      const html = acted(documentOf(bare, trade, 'en'));
      const curves = bare.curves.filter(({ kind }) => tradeData(trade).wear.includes(kind));
      expect(html.match(/class="curve whole"/g)?.length ?? 0, trade).toBe(curves.length);
      expect(html, trade).toContain('Pair by pair');
      expect(html, trade).toContain('How it feels');
    }
    expect(acted(documentOf(bare, 'foam', 'en'))).toContain('Bottoming out, outer heel');
    expect(acted(documentOf(bare, 'last', 'en'))).toContain('The heel lifts on every climb');
  });

  it('names as trades of a complaint those of its first suspects', () => {
    expect(tradesOfComplaint('bottoming-out', 'P9')).toEqual(['tooling', 'foam']);
    expect(tradesOfComplaint('noise', 'P9')).toEqual(['tooling', 'foam']);
    expect(tradesOfComplaint('pain', 'P9')).toEqual([]);
  });
});

describe('the sheet of a trade', () => {
  const last = reports.at(-1) as RoundReport;
  const sheet = (report: RoundReport, trade: (typeof trades)[number], ...ids: string[]) =>
    acted(documentOf(report, trade, ...ids))
      .replace(/<[^>]+>/g, '|')
      .replaceAll(/[|]+/g, '|');

  it('tells the foam developer how much goes by where, whether it lasts, which pair most, what is next', () => {
    const html = sheet(last, 'foam', 'en');
    const look = last.curves.find(({ kind }) => kind === 'energy-absorbed J');
    const [start, now] = [look?.curve?.[0]?.median ?? NaN, look?.atGreatest?.median ?? NaN];
    // Of the values as they are written, so that a reader who divides them gets the same.
    const fall = 1 - Number(now.toFixed(2)) / Number(start.toFixed(2));
    expect(html).toMatch(new RegExp(`\\|−${Math.round(100 * fall)}.%\\|`));
    expect(html).toMatch(
      /too far to tell.{0,9}at least 70.% of new, not reached before 343.km.{0,9}open/,
    );
    expect(html).toMatch(
      /Most change in energy absorbed \(centre of the heel\): pair 926 −17.% at 163.km/,
    );
    expect(html).toMatch(
      /Energy absorbed, centre of the heel\|−15.% at 172.km\. That is clear: −\d\d.% to −\d\d.% on a new pair\. The limit of −30.% is not reached before 343.km\.\|Stack height, centre of the heel\|−0\.69.mm at 172.km\. That is clear: −\d\.\d\d.mm to −\d\.\d\d.mm on a new pair\. The limit of 34.mm is not reached before 343.km\.\|Measure pairs 360, 637 and 926 at 390.km\.\|The soonest check that can settle whether a new pair lasts to 600.km: [^|]*\|360: about 11 Dec 2026\|637: about 13 Dec 2026\|926: about 15 Dec 2026\|limit still open\|/,
    );
    // Differences are of the values as they are written: 35.63 → 35.03.
    expect(html).toMatch(/pair 360 −0\.60.mm at 166.km/);
    expect(html).toMatch(/nothing beyond about twice the farthest one \(343.km\)/);
    expect(html).toContain('one number for all sizes, here 255 to 290 mm');
    expect(html).not.toContain('Testers are not asked whether it is too soft or too firm');
    const unasked = { ...last, round: { ...last.round, twoSided: [] } };
    expect(sheet(unasked, 'foam', 'en')).toContain(
      'Testers are not asked whether it is too soft or too firm',
    );
    expect(html).toMatch(/Reported by nobody in 131 runs: .*harsh landing/);
  });

  it('tells the pattern cutter on which foot, from where on, how many, and what the last change did', () => {
    const html = sheet(last, 'upper', 'en');
    expect(html).toMatch(
      /Rubbing, collar\|7 \/ 8\|10 \/ 131\|10 \/ 183\|10 \/ 0\|first run\|4\.5.km \(10 runs\)\|likely/,
    );
    expect(html).toContain('Recurs in this round?');
    expect(html).toMatch(/Keep it as it is\..*the change worked: better/);
    expect(html).toContain('likely to recur');
    expect(html).toContain('Counted: the 131 of 135 runs');
    expect(html).toContain('57 of 172 runs in Round 1, 1 of 131 in Round 3');
    expect(html).toMatch(
      /Changed with Round 3 by the material developer \(upper material\):\|Mudguard film cut back/,
    );
    expect(html).toMatch(/Your change with Round 2 \(upper pattern\):\|Collar 3 mm higher/);
    expect(html).toContain(
      'None of your own parts was changed; by others: upper material (material developer) and midsole foam (foam compounder).',
    );
    expect(sheet(last, 'upper', 'zh')).toContain(
      '你自己的部件没有改动；别人改了：帮面材料（材料开发）和中底发泡材料（发泡配方工程师）。',
    );
    expect(html).toMatch(/Tongue and eyestay: written, not tapped as a complaint\|+“?The tongue/);
    const second = sheet(reports[1] as RoundReport, 'upper', 'en');
    expect(second).toMatch(/Collar 3 mm higher.*Did it work\?.*better/);
    // Each of the first complaints has words of its own, however many the first one has.
    expect(second).toMatch(
      /In their own words.*Pressure, outer toe box\|.*Hot spot, middle of the forefoot\|.*Rubbing, collar\|+“?(Collar|The left collar)/,
    );
    expect(sheet(first, 'upper', 'en')).toContain('First round: no earlier change to judge.');
  });

  it('marks what a tester wrote in a language that its reader does not read, and nothing else', () => {
    expect(sheet(last, 'foam', 'en')).toMatch(
      /后跟外侧有点触底。\|+ \|*\(written in Chinese\)\|+ \|*\(no translation; our word list finds: Bottoming out, outer heel\)/,
    );
    expect(sheet(last, 'upper', 'en')).not.toContain('our word list');
    expect(sheet(last, 'upper', 'zh')).toMatch(
      /collar rubs[^“”]*（非译文；词表从中找到：领口磨脚）/,
    );
    // Somebody reads it.
    expect(sheet(last, 'foam', 'en', 'zh')).not.toContain('our word list');
    expect(sheet(last, 'upper', 'en')).not.toContain('written in');
    expect(sheet(last, 'foam', 'zh')).toMatch(/后跟外侧有点触底。\|+ \|*T03/);
    // Said once above where all are foreign: of the words of testers, and of those of changes.
    const chinese = sheet(last, 'upper', 'zh');
    expect(chinese.match(/试穿员跑后所写，以下均为外文原文。\|/g)).toHaveLength(1);
    expect(chinese.match(/改动为修改者所写，均为外文原文。/g)).toHaveLength(1);
    expect(chinese).not.toContain('（外文原文）');
    expect(sheet(last, 'upper', 'en', 'zh')).not.toMatch(/on the outside\.\|+ \|*（外文原文）/);
  });

  it('says in a row of its own what is too much or too little, until a finding speaks of it', () => {
    expect(sheet(last, 'foam', 'en')).toMatch(
      /Heel cushioning: too soft\|4 of 8 testers\|No change is written down yet\.\|.*?clear\|.*Forefoot cushioning: too soft\|2 of 8 testers\|.*likely/,
    );
    const [finding] = first.findings as [ReportedFinding];
    const evidence = {
      ...{ until: '2026-11-01T10:00:00Z', lines: [] },
      twoSided: { attribute: 'heel-cushioning' },
    } as unknown as ReportedFinding['body']['evidence'];
    const told = sheet(
      { ...last, findings: [{ ...finding, body: { ...finding.body, evidence } }] },
      'foam',
      'en',
    );
    expect(told).not.toContain('Heel cushioning: too soft|');
    expect(told).toContain('Forefoot cushioning: too soft|');
  });

  it('says on the first page what its sheets call clear, and no more that nothing is proved', () => {
    const page = (report: RoundReport, id: string) =>
      documentOf(report, null, id)
        .replace(/<[^>]+>/g, '|')
        .replaceAll(/[|]+/g, '|');
    const said = page(last, 'en');
    expect(said).toContain(
      '|Heel cushioning: too soft for 4 of 8 testers, clear. Watch the left collar and outer heel.|',
    );
    expect(said).toContain(
      '|Heel cushioning: too soft|4 of 8 testers, clear|No change is written down yet.|–|Foam|–|',
    );
    expect(page(last, 'zh')).toContain('后跟缓震：8 名试穿员中 4 名觉得太软，明确。请留意');
    // What comes apart goes first.
    expect(page(reports[1] as RoundReport, 'en')).toContain('|Look at pair 963 first. Change');
    const unasked = { ...last, round: { ...last.round, twoSided: [] } };
    expect(page(unasked, 'en')).toContain('|Nothing is proved yet. Watch the left collar');
  });

  it('says what the numbers on the drawn shoe are', () => {
    expect(sheet(last, 'upper', 'en')).toContain('Left shoe: collar 7 of 8. Right shoe: nobody.');
    expect(sheet(last, 'upper', 'zh')).toContain('左鞋：领口 8 名中 7 名。右鞋：无人。');
  });

  it('leaves to the lead what only the lead can mend, and to the appendix of the whole the rules of limits', () => {
    for (const trade of trades) {
      const html = documentOf(last, trade, 'en');
      expect(html).not.toContain('could not be read');
      expect(html).not.toContain('Structure: 90');
      expect(html.includes('A limit holds if a new pair keeps it'), trade).toBe(
        trade === 'foam' || trade === 'tooling',
      );
    }
    expect(documentOf({ ...last, leftOut: 1 }, null, 'en')).toContain('could not be read');
  });

  it('says who is asked where a complaint points to several', () => {
    expect(sheet(first, 'last', 'en')).toContain('Asked of the pattern engineer.');
    expect(sheet(first, 'upper', 'en')).not.toContain('Asked of the');
  });

  it('says in Chinese all of it, with Latin names set apart', () => {
    for (const trade of trades)
      for (const report of reports)
        expect(sheet({ ...report, said: [], findings: [], carried: [] }, trade, 'zh')).not.toMatch(
          /[\u3400-\u9fff]Round|Round \d[\u3400-\u9fff]/,
        );
  });
});

describe('pain, numbness, blisters and damage', () => {
  const care = (report: RoundReport, id = 'en') =>
    (/<section class="care.*?<\/section>/s.exec(documentOf(report, null, id))?.[0] ?? '')
      .replace(/<[^>]+>/g, '|')
      .replaceAll(/[|]+/g, '|');
  it('stand in one table with where, how many, how bad and what holds now, and with the cautions', () => {
    const blister = { zone: 'U8', kind: 'rubbing', skin: 'blister', testers: 2, runs: 3 } as const;
    const damaged = reports.find(({ damages }) => damages.length > 0) as RoundReport;
    const said = care({ ...damaged, skin: [blister] });
    const { testers, runs } = damaged.round.complaints.asked;
    expect(said).toContain(`Blister|Rubbing, collar|2 / ${testers}|3 / ${runs}|`);
    expect(said).toMatch(/Sole peels off\|pair 963, [^|]+\|–\|–\|–\|do not wear the pair/);
    expect(said).toMatch(/sees a doctor or physiotherapist.*not medical advice/);
    expect(care({ ...damaged, skin: [blister] }, 'zh')).toMatch(/水泡\|领口磨脚\|.*不是医疗建议/);
    expect(documentOf({ ...damaged, skin: [blister] }, 'upper', 'en')).toContain(
      'blister after 3 runs',
    );
  });
  it('say who must not run until the lead has answered', () => {
    const { pain } = first.round;
    if (!pain) throw new Error('the demo asks about pain');
    const hurt = { ...pain, runs: 2, testersOnce: 1, most: 6 };
    const [tester] = Object.entries(first.names.testers).flatMap(([id, code]) =>
      code === 'T01' ? [id as RecordId] : [],
    ) as [RecordId];
    const said = (hurting: readonly RecordId[]) =>
      care({ ...first, round: { ...first.round, pain: hurt }, hurting });
    expect(said([tester])).toMatch(
      /6 of 10\|T01: not to run in the pair until the lead has answered/,
    );
    expect(said([])).toContain('answered, or over');
  });
  it('are said to be silent by how many answered', () => {
    const cells = first.round.complaints.cells.filter(
      ({ kind }) => kind !== 'numbness' && kind !== 'pain',
    );
    const silent: RoundReport = {
      ...first,
      ...{ skin: [], damages: [] },
      round: {
        ...first.round,
        pain: first.round.pain && { ...first.round.pain, runs: 0 },
        complaints: { ...first.round.complaints, cells },
      },
    };
    expect(care(silent)).toMatch(
      /no numbness, blister or broken skin in \d+ runs; nothing came apart/,
    );
    const unasked = { ...silent.round.complaints, asked: { runs: 0, testers: 0 } };
    const empty = { ...silent, round: { ...silent.round, pain: null, complaints: unasked } };
    expect(care(empty)).toContain('That is not the same as no pain.');
  });
});

describe('the first line of a sheet', () => {
  const bare = (report: RoundReport): RoundReport => ({ ...report, findings: [], carried: [] });
  const nothingFelt = (report: RoundReport): RoundReport => ({
    ...report,
    round: { ...report.round, complaints: { ...report.round.complaints, cells: [] } },
  });
  const leaning = bare(reports.at(-1) as RoundReport);
  const last = { ...leaning, round: { ...leaning.round, twoSided: [] } };
  const unmeasured = { ...last, settles: last.settles.map(() => null) };
  const cases = [
    [
      'a check is due and something is felt',
      last,
      'No change is asked of you yet. Measure three pairs at 390 km, from about 11 Dec 2026. Watch: bottoming out, outer heel.',
      '目前不要求修改。请在 390 km 时测量 3 双样鞋，约 2026年12月11日起。请留意：后跟外侧触底。',
    ],
    [
      'something is clearly too soft as well',
      leaning,
      'No change is asked of you yet. Heel cushioning: too soft for 4 of 8 testers, clear. Measure three pairs at 390 km, from about 11 Dec 2026.',
      '目前不要求修改。后跟缓震：8 名试穿员中 4 名觉得太软，明确。请在 390 km 时测量 3 双样鞋，约 2026年12月11日起。',
    ],
    [
      'a check is due and nothing is felt',
      nothingFelt(last),
      'No change is asked of you yet. Measure three pairs at 390 km, from about 11 Dec 2026.',
      '目前不要求修改。请在 390 km 时测量 3 双样鞋，约 2026年12月11日起。',
    ],
    [
      'no check is due',
      unmeasured,
      'No change is asked of you yet. Watch: bottoming out, outer heel.',
      '目前不要求修改。请留意：后跟外侧触底。',
    ],
    [
      'nothing is due or felt',
      nothingFelt(unmeasured),
      'No change is asked of you yet.',
      '目前不要求修改。',
    ],
  ] as const;
  it.each(cases)('says what is asked where %s', (_, report, english, chinese) => {
    const said = (id: string) => {
      const languages = speak(id);
      return headlineOf({ report, languages, trade: 'foam', photos: new Map() }, languages[0]);
    };
    expect(said('en').replaceAll('\u00a0', ' ')).toBe(english);
    expect(said('zh').replaceAll('\u00a0', ' ')).toBe(chinese);
  });
});

describe('how sure a row of a sheet is', () => {
  const felt = { what: 'complaint' } as Callout;
  const wear = { what: 'wear' } as Callout;
  const earlier = first.round.id;
  const better = { what: 'better', verdict: 'better', changes: [{}] } as unknown as Callout;
  const mended = { ...better, verdict: 'mended' } as Callout;
  const byNone = { ...better, changes: [], earlier } as Callout;
  const mendedByNone = { ...byNone, verdict: 'mended' } as Callout;
  it.each([
    [felt, 'clear', 'clear: it recurs', '已证实会反复'],
    [felt, 'one-tester', 'clear for one tester', '只对一人证实'],
    [felt, 'likely', 'likely to recur', '很可能反复'],
    [felt, 'too-early', 'too early to tell if it recurs', '是否反复，为时尚早'],
    [wear, 'open', 'limit still open', '限值尚无定论'],
    [wear, 'fails', 'fails', '不达标'],
    [wear, 'holds', 'holds', '达标'],
    [better, 'open', 'the change worked: better', '改动有效：有改善'],
    [mended, 'holds', 'the change worked: mended', '改动有效：已解决'],
    [byNone, 'open', 'better than in Round 1', '比 Round 1 有改善'],
    [mendedByNone, 'holds', 'mended since Round 1', 'Round 1 之后已解决'],
    [null, 'asked', 'asked for by the lead', '负责人提出'],
  ] as const)('says of what: %o, %s', (callout, sure, english, chinese) => {
    expect(sureWords({ callout, sure }, speak('en')[0])).toBe(english);
    expect(sureWords({ callout, sure }, speak('zh')[0])).toBe(chinese);
  });
});

describe('words about a place where nothing was tapped', () => {
  const said = (text: string, ...felt: RoundReport['said'][number]['felt']) =>
    ({ run: text, text, felt }) as unknown as RoundReport['said'][number];
  const tongue = said('The tongue slides to the outside.');
  it('stand by place, for the trades that are looked at first there', () => {
    const found = untapped([tongue, said('Rain all day.')], 'upper', new Set());
    expect(found).toEqual([{ zone: 'U5', shown: [tongue] }]);
    expect(untapped([tongue], 'foam', new Set())).toEqual([]);
  });
  it('are said once, and not where they stand under a complaint or name what was tapped', () => {
    expect(untapped([tongue, tongue], 'upper', new Set())[0]?.shown).toHaveLength(1);
    expect(untapped([tongue], 'upper', new Set([tongue.text]))).toEqual([]);
    const tapped = said(tongue.text, { zone: 'U5', kind: 'rubbing', foot: 'left' });
    expect(untapped([tapped], 'upper', new Set())).toEqual([]);
  });
});

describe('the appendix', () => {
  it('says in Chinese where what was known beforehand is from, and no English sentence', () => {
    const html = documentOf(first, null, 'zh');
    expect(html).toContain('跑者穿着的鞋随里程的变化没有发表过，假定每 100 km 半毫米');
    expect(html).not.toMatch(/no published|kept when worn|machine ageing/);
  });
});

describe('words that suit a complaint', () => {
  const rubbing = { zone: 'U8', kind: 'rubbing' } as const;
  const felt = [
    { ...rubbing, foot: 'left' as const },
    { zone: 'U10' as const, kind: 'heel-slip' as const, foot: 'left' as const },
  ];
  it('name it, or nothing that is known; and are of a run in which it was tapped', () => {
    expect(suits({ text: 'The collar rubs.', felt }, rubbing)).toBe(0);
    expect(suits({ text: 'Rain all day.', felt }, rubbing)).toBe(1);
    expect(suits({ text: 'My heel slips.', felt }, rubbing)).toBeNull();
    expect(suits({ text: 'The collar is hard.', felt }, rubbing)).toBe(1);
    expect(suits({ text: 'Rain all day.', felt: felt.slice(0, 1) }, rubbing)).toBe(0);
    expect(suits({ text: 'My heel slips.', felt: felt.slice(0, 1) }, rubbing)).toBeNull();
    expect(suits({ text: 'The collar rubs.', felt: felt.slice(1) }, rubbing)).toBeNull();
  });
});

describe('a lead’s own words', () => {
  const finding = (more: Partial<ReportedFinding['body']>): ReportedFinding['body'] => ({
    ...(first.findings[0] as ReportedFinding).body,
    title: 'Heel slips',
    evidence: { until: '2026-05-01T10:00:00Z', lines: [], language: 'en' },
    ...more,
  });
  const shown = (body: ReportedFinding['body'], ...ids: string[]) =>
    renderToStaticMarkup(<Own of={body} field="title" in={speak(...ids)} />);

  it('stand as they are for a reader of their language', () => {
    expect(shown(finding({}), 'en')).toBe('Heel slips');
  });

  it('are marked for a reader of another', () => {
    expect(shown(finding({}), 'zh')).toBe('英语原文： Heel slips'.replace('： ', '： '));
    expect(shown(finding({}), 'en', 'zh')).toContain('（英语原文）');
  });

  it('are given in the other language where the finding has them', () => {
    const both = finding({ otherWords: { language: 'zh', title: '后跟打滑' } });
    expect(shown(both, 'zh')).toBe('后跟打滑');
    expect(shown(both, 'en', 'zh')).toContain('后跟打滑');
    expect(shown(both, 'en', 'zh')).not.toContain('原文');
  });

  it('are known to be in the other language where only that was noted', () => {
    const both = finding({ evidence: undefined, otherWords: { language: 'zh', title: '打滑' } });
    expect(shown(both, 'zh')).toBe('打滑');
    expect(shown(both, 'en')).toBe('Heel slips');
    expect(shown(both, 'en', 'zh')).toMatch(/Heel slips.*打滑/);
  });

  it('say that they are as written where nobody noted the language', () => {
    const old = finding({ evidence: undefined });
    expect(shown(old, 'zh')).toContain('（外文原文）');
    expect(shown(old, 'en')).toBe('Heel slips');
    expect(shown({ ...old, title: '后跟打滑' }, 'en')).toContain('(written in Chinese)');
    expect(shown({ ...old, title: 'かかとが滑る' }, 'en')).not.toContain('Chinese');
  });
});

describe('titles beside the shoe', () => {
  it('break at blanks and between Chinese signs, and lose nothing', () => {
    expect(wrapped('Hot spot, middle of the forefoot', 126).join(' ')).toBe(
      'Hot spot, middle of the forefoot',
    );
    const chinese = wrapped('前掌中部局部发热而且磨脚很厉害', 126);
    expect(chinese.length).toBe(2);
    expect(chinese.join('')).toBe('前掌中部局部发热而且磨脚很厉害');
  });
});
