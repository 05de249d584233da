/** The report as a file: whole in every language, standing alone, and the sheet of a trade with nothing but its own. */
import { XMLValidator } from 'fast-xml-parser';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { tradeOf, trades } from '../../../core/foot/index.ts';
import type { RecordId } from '../../../core/records/index.ts';
import type { RoundReport } from '../../../core/review/index.ts';
import { fileName, reportFile } from '../../../app/report/file.tsx';
import { spokenIn, type Languages } from '../../../app/report/spoken.tsx';
import { languageFile } from '../../../app/terminal/languages.ts';
import { readDemo } from './demo-report.ts';

const { reports } = readDemo();
const first = reports[0] as RoundReport;
const styles = ['parts/tokens', 'parts/foot-map/foot-map', 'parts/charts/charts', 'report/report']
  .map((file) => readFileSync(new URL(`../../../app/${file}.css`, import.meta.url), 'utf8'))
  .join('\n');

const speak = (ids: readonly string[], report: RoundReport): Languages =>
  ids.map((id) => spokenIn(languageFile(id), report.names, 'km', 'UTC')) as unknown as Languages;

const PHOTO = 'a'.repeat(64);
const MISSING = 'b'.repeat(64);
/** The demo's first round with a finding for every trade, one of them with all that a finding can hold. */
const full: RoundReport = {
  ...first,
  zonesByKind: { ...first.zonesByKind, pressure: first.zones },
  findings: [
    ...first.findings,
    {
      id: '01a05f6a-5800-720a-ab2f-d0dfac63ab00' as RecordId,
      body: {
        project: first.project.id,
        round: first.round.id,
        title: 'Foam <b>loses</b> "height" & bounce',
        part: 'midsole-foam',
        priority: 'high',
        wanted: '<script>alert(1)</script>',
        source: 'wear',
        state: 'asked-for',
        evidence: {
          until: '2026-05-01T10:00:00+02:00',
          lines: ['Falls by 1.2 mm.'],
          place: { measure: 'stack-height', site: 'heel-centre', unit: 'mm' },
        },
        outcome: {
          round: first.round.id,
          verdict: 'no-different',
          until: '2026-06-01T10:00:00+02:00',
          lines: ['As before.'],
        },
        photos: [PHOTO, MISSING],
      },
    },
    {
      id: '01a05f6a-5800-720a-ab2f-d0dfac63ab01' as RecordId,
      body: {
        project: first.project.id,
        round: first.round.id,
        title: 'Ball is narrow',
        part: 'last',
        priority: 'low',
        state: 'open',
        kind: 'pressure',
        zone: 'P4',
        evidence: {
          until: '2026-05-01T10:00:00+02:00',
          lines: ['Two of eight.'],
          complaint: {
            word: 'early-sign',
            askedRuns: 172,
            askedTesters: 8,
            runs: 9,
            testersOnce: 3,
            testersTwice: 2,
            left: 4,
            right: 5,
            eValue: 2.5,
          },
        },
      },
    },
  ],
};

const file = (
  ids: readonly string[],
  trade: (typeof trades)[number] | null = null,
  report = full,
): string =>
  reportFile(
    {
      report,
      languages: speak(ids, report),
      trade,
      photos: new Map([[PHOTO, 'data:image/png;base64,iVBORw0KGgo=']]),
    },
    styles,
  );

const bodyOf = (html: string): string => html.slice(html.indexOf('<body>'));

describe.each([[['en']], [['zh']], [['en', 'zh']], [['zh', 'en']]])('a report in %s', (ids) => {
  const html = file(ids);

  it('has every section in each language', () => {
    for (const id of ids) {
      const { sections } = languageFile(id).desk.report;
      for (const key of Object.keys(sections) as (keyof typeof sections)[]) {
        if (key === 'carried' || key === 'damages') continue;
        expect(bodyOf(html), key).toContain(sections[key]);
      }
    }
  });

  it('is well formed: every element that is opened is closed', () => {
    // As XML, but for the elements that HTML leaves open by themselves.
    const xml = html
      .replace('<!doctype html>', '')
      .replace(/<style>[^]*?<\/style>/, '')
      .replace(/<(meta|img|br)([^>]*?)\/?>/g, '<$1$2/>');
    expect(XMLValidator.validate(xml, { allowBooleanAttributes: true })).toBe(true);
  });

  it('needs nothing from outside and runs nothing', () => {
    expect(html).toContain(
      `content="default-src 'none'; style-src 'unsafe-inline'; img-src data:"`,
    );
    expect(html).not.toMatch(/<(script|iframe|object|embed|link|base|form)\b/i);
    expect(html).not.toMatch(/\son\w+=/i);
    expect(html).not.toMatch(/@import|url\((?!#|['"]?data:)/i);
    for (const [, , address = ''] of bodyOf(html).matchAll(/\s(src|href|xlink:href)="([^"]*)"/g))
      expect(address).toMatch(/^(data:|#)/);
    expect(html.replace(/ xmlns="[^"]*"/g, '')).not.toMatch(/https?:\/\//);
  });

  it('shows what people typed as text', () => {
    expect(html).toContain('Foam &lt;b>loses&lt;/b> &quot;height&quot; &amp; bounce');
    expect(html).toContain('&lt;script>alert(1)&lt;/script>');
  });

  it('draws each map with hatching, and each curve with its limit', () => {
    // The opened shoe, the map that proves the first row, one map a trade, and the two of the appendix.
    const left = bodyOf(html).match(/data-foot="left"/g) ?? [];
    expect(left.length).toBeGreaterThanOrEqual(2 + 1 + trades.length + 2);
    expect(html).toContain('foot-map-hatch');
    expect(html.match(/class="limit"/g)?.length).toBeGreaterThanOrEqual(3);
  });

  it('refers to each pattern by an id that is there once', () => {
    const named = [...html.matchAll(/\bid="([^"]+)"/g)].map(([, id]) => id);
    expect(new Set(named).size).toBe(named.length);
    for (const [, id] of html.matchAll(/url\(#([^)]+)\)/g)) expect(named).toContain(id);
  });

  it('shows the photos it has and says which it has not', () => {
    expect(html).toContain('src="data:image/png;base64,iVBORw0KGgo="');
    for (const id of ids) expect(html).toContain(languageFile(id).desk.report.photosLeftOut(1));
  });
});

describe('the sheet of a trade', () => {
  it.each(trades)('of %s holds the findings of its parts and no others', (trade) => {
    const html = file(['en', 'zh'], trade);
    for (const { body } of full.findings) {
      const title = body.title
        .replaceAll('&', '&amp;')
        .replaceAll('"', '&quot;')
        .replaceAll('<', '&lt;');
      expect(html.includes(title), body.title).toBe(tradeOf[body.part] === trade);
    }
    if (!full.findings.some(({ body }) => tradeOf[body.part] === trade))
      expect(html).toContain('No change is asked of you');
  });

  it('draws the map of the complaint, with its zone outlined on both feet, and says the counts in each language', () => {
    const html = file(['en', 'zh'], 'last');
    expect(html).toContain('data-view="sole"');
    expect(html.match(/class="foot-map-picked"/g)).toHaveLength(2);
    for (const id of ['en', 'zh'])
      expect(html).toContain(languageFile(id).desk.report.frozenTesters(2, 3, 8));
  });

  it('draws the curves of its trade, and none on a sheet that has none', () => {
    expect(bodyOf(file(['en'], 'foam')).match(/class="median"/g)).toHaveLength(4);
    expect(bodyOf(file(['en'], 'last'))).not.toContain('class="median"');
  });
});

describe('what the report says of the data', () => {
  it('says who was not asked, and that it is not the same as no complaint', () => {
    const unasked: RoundReport = {
      ...first,
      zones: { left: [], right: [] },
      round: {
        ...first.round,
        complaints: { ...first.round.complaints, asked: { runs: 0, testers: 0 }, cells: [] },
      },
    };
    const html = file(['en'], null, unasked);
    expect(html).toContain(languageFile('en').desk.complaints.nobodyAsked);
    expect(html).not.toContain(languageFile('en').desk.complaints.none);
    expect(bodyOf(html)).not.toMatch(/foot-map-zone"[^>]*data-level="0"[^>]*aria/);
  });

  it('gives the same text for the same log', () => {
    expect(file(['zh'])).toBe(file(['zh']));
  });

  it('carries earlier findings to the round that carries their change, with its name', () => {
    const second = reports[1] as RoundReport;
    const own = first.findings.filter(({ body }) => body.carriedBy === second.round.id);
    expect(own.length).toBeGreaterThan(0);
    expect(second.carried).toEqual(own);
    expect(file(['en'], null, second)).toContain(
      languageFile('en').desk.report.shownBy(first.round.name),
    );
  });
});

describe('the name of the file', () => {
  it('says project, round, trade and languages in what every system takes', () => {
    const named = fileName({ report: first, trade: 'foam' }, ['en', 'zh'], 'html');
    expect(named).toMatch(/^[\p{L}\p{N}_+-]+\.html$/u);
    expect(named).toContain('foam_en+zh');
  });
});

/** One look at the tree itself, so that the checks above are not blind to a document that is empty. */
it('holds what to do, the sheets of the trades and the figures in that order', () => {
  const html = bodyOf(file(['en']));
  const titles = [...html.matchAll(/<h2 class="page-title">([^<]+)<\/h2>/g)].map(
    ([, text]) => text?.split(':')[0],
  );
  const { paper, desk } = languageFile('en');
  expect(titles).toEqual([
    paper.care.title,
    ...trades.map((trade) => paper.for[trade]),
    paper.appendix.split(':')[0],
  ]);
  const headings = [
    ...html.slice(html.indexOf('class="appendix"')).matchAll(/<h2>([^<]+)<\/h2>/g),
  ].map(([, text]) => text);
  const { sections } = desk.report;
  expect(headings).toEqual([
    sections.brief,
    sections.sample,
    sections.changes,
    sections.verdict,
    sections.findings,
    sections.maps,
    desk.pain.title,
    sections.recurring,
    sections.comfort,
    sections.wear,
    sections.deviations,
    sections.reading,
    sections.methods,
  ]);
});
