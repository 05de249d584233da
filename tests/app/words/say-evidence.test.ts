/** Evidence of findings: frozen as figures, said in any language, readable whatever wrote it. */
import { describe, expect, it } from 'vitest';
import { readBody, type Evidence, type Finding } from '../../../core/records/index.ts';
import { freezeComfort, freezeComplaint, freezeWear } from '../../../core/review/index.ts';
import { spokenIn } from '../../../app/report/spoken.tsx';
import { languageFile } from '../../../app/terminal/languages.ts';
import { cellLines, lookLines, type Speaker } from '../../../app/words/say-complaint.ts';
import { languageIn } from '../../../app/words/figures.ts';
import { evidenceInWords, frozenEvidence, sayFigures } from '../../../app/words/say-evidence.ts';
import { findingInWords } from '../../../app/words/say-finding.ts';
import { wearOutlook } from '../../../app/words/say-wear.ts';
import { readDemo } from '../report/demo-report.ts';

const { reports, findings } = readDemo();
/** Who has only the finding: no pair, tester or round has a name. */
const speak = (id: string, names = { rounds: {}, pairs: {}, testers: {} }): Speaker =>
  spokenIn(languageFile(id), names, 'km', 'UTC').speaker;
const [english, chinese] = [speak('en'), speak('zh')];

const UNTIL = '2026-05-01T10:00:00+02:00';
const inEnglish = /\b(the|of|by|reported|testers|interval|comfort)\b/i;

describe('the findings of the demo', () => {
  const frozen = findings.flatMap(({ body }) => (body.evidence ? [body] : []));

  it('are of every source', () => {
    expect(frozen.map(({ source }) => source).sort()).toEqual([
      'blueprint',
      'comfort',
      'complaint',
      'wear',
    ]);
  });

  it('say all figures in the language of whoever reads, and keep only the lead’s own words', () => {
    for (const body of frozen) {
      const { said, written } = evidenceInWords(body.evidence as Evidence, chinese);
      expect(said.length, body.title).toBeGreaterThan(0);
      for (const line of said) expect(line).not.toMatch(inEnglish);
      expect(written.lines).toEqual(body.evidence?.own);
      expect(written.title).toContain('英语');
    }
  });

  it('say the same figures in both languages', () => {
    // The words of a language may hold figures of their own; those of the data stand in both.
    const figures = (lines: readonly string[]) =>
      new Set(lines.join(' ').match(/\d+\.\d+|\d{2,}/g) ?? []);
    for (const { evidence } of frozen) {
      const [one, two] = [english, chinese].map((speaker) =>
        figures(evidenceInWords(evidence as Evidence, speaker).said),
      );
      expect(two).toEqual(one);
    }
  });
});

describe('figures that are frozen', () => {
  const report = reports[1];
  if (!report) throw new Error('the demo has two rounds at least');
  const named = speak('en', report.names);

  it('say of a complaint what the screen says of it', () => {
    for (const look of report.looks) {
      const cell = report.round.complaints.cells.find(
        ({ zone, kind }) => zone === look.cell.zone && kind === look.cell.kind,
      );
      if (!cell) throw new Error('every look is of a cell');
      const figures = freezeComplaint(cell, report.round.complaints, look, named.tester);
      expect(sayFigures(JSON.parse(JSON.stringify(figures)) as typeof figures, english)).toEqual([
        expect.stringContaining(named.glossary.evidence[cell.word].meaning),
        ...cellLines(cell, report.round.complaints, named),
        ...lookLines(look, named),
      ]);
    }
  });

  it('say of wear what the screen says of it', () => {
    const { distanceM } = report.project.brief;
    for (const look of report.wear)
      expect(sayFigures(freezeWear(look, distanceM), english)).toEqual(
        wearOutlook({ ...look, foamKnown: look.foam !== null }, distanceM, named),
      );
  });

  it('are no more than a score where there is no round before', () => {
    const score = report.round.comfort.find(({ wear }) => wear);
    if (!score) throw new Error('the demo’s second round was scored');
    const rounds = { earlier: 'Round 1', later: 'Round 2' };
    const alone = freezeComfort(score, undefined, rounds);
    expect(alone && sayFigures(alone, english)).toHaveLength(1);
    const change = report.round.comfortChanges.find(
      ({ attribute }) => attribute === score.attribute,
    );
    const both = freezeComfort(score, change, rounds);
    expect(both && sayFigures(both, english)?.[1]).toContain('Round 2 against Round 1');
    expect(freezeComfort({ ...score, wear: null }, change, rounds)).toBeNull();
  });
});

describe('evidence that another version wrote', () => {
  const body = findings.find(({ body: { source } }) => source === 'wear')?.body as Finding;
  const evidence = body.evidence as Evidence;
  const before = (lines: readonly string[]): Evidence => ({ until: UNTIL, lines: [...lines] });

  it('is shown as it was written where it has sentences only', () => {
    const { said, written } = evidenceInWords(before(['Falls by 1.2 mm.']), chinese);
    expect(said).toEqual([]);
    expect(written.lines).toEqual(['Falls by 1.2 mm.']);
    expect(written.tag).toBeNull();
    expect(written.title).toBe(languageFile('zh').desk.report.asWritten(null));
  });

  it('says the counts of a complaint where no more was frozen, and keeps its sentences beside them', () => {
    const counts = {
      ...{ word: 'recurs-across-testers', askedRuns: 40, askedTesters: 8, runs: 12 },
      ...{ testersOnce: 5, testersTwice: 3, left: 0, right: 12, eValue: 80 },
    };
    const old = { ...before(['It came back.']), complaint: counts };
    const { said, written } = evidenceInWords(old, chinese);
    expect(said).toContain(languageFile('zh').desk.report.frozenTesters(3, 5, 8));
    expect(written.lines).toEqual(['It came back.']);
  });

  it('stays readable with words and fields that this version does not know, and is then as it was written', () => {
    const newer = {
      ...evidence,
      lines: ['It sinks in at once.'],
      wear: { ...evidence.wear, direction: 'sinks-in-at-once', more: 1 },
      weather: { rain: true },
    };
    const read = readBody('finding', { ...body, evidence: newer });
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    expect(read.body.evidence).toEqual(newer);
    const { said, written } = evidenceInWords(read.body.evidence as Evidence, english);
    expect(said).toEqual([]);
    expect(written.lines).toEqual(['It sinks in at once.']);
  });

  it('has all of it in sentences, for an app that knows no figures', () => {
    const { wear, place } = evidence;
    if (!wear || !place) throw new Error('the demo’s finding from wear has figures');
    const made = frozenEvidence({ wear, place }, ['Seen on the bench.'], UNTIL, 'en', english);
    expect(made?.lines).toEqual([
      ...(sayFigures({ wear, place }, english) ?? []),
      'Seen on the bench.',
    ]);
    expect(made?.own).toEqual(['Seen on the bench.']);
    expect(readBody('finding', { ...body, evidence: made }).ok).toBe(true);
    expect(frozenEvidence({}, [], UNTIL, 'en', english)).toBeUndefined();
  });

  it('names the language of an outcome’s words', () => {
    const outcome = {
      round: body.round,
      verdict: 'better' as const,
      until: UNTIL,
      lines: ['Hält.'],
      language: 'de',
    };
    const said = findingInWords({ ...body, outcome }, english, () => null, String);
    expect(said.outcome?.written).toMatchObject({ tag: 'de', lines: ['Hält.'] });
    expect(said.outcome?.written.title).toContain('German');
  });
});

describe('the name of a language', () => {
  it('is what readers call it, and the tag itself where that names none', () => {
    expect(languageIn('zh', 'en')).toBe('Chinese');
    for (const tag of ['en-a', 'zh-1', 'en-x']) expect(languageIn(tag, 'en')).toBe(tag);
  });
});
