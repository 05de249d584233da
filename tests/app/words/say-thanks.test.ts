/** What a tester reads of what came of their report, in both languages, and what it never says. */
import { describe, expect, it } from 'vitest';
import { languageFile, languages } from '../../../app/terminal/languages.ts';
import type { ChangeSpeaker } from '../../../app/words/say-talk.ts';
import { thanksInWords } from '../../../app/words/say-thanks.ts';
import { thanksResults } from '../../../core/records/index.ts';
import { revealsChange } from '../../../core/words/index.ts';

const change = {
  ...({ part: 'upper-pattern', line: 'collar', direction: 'lower' } as const),
  by: { amount: 2, unit: 'mm' } as const,
};

describe.each(languages)('thanks in %s', (id) => {
  const { talk, glossary, desk } = languageFile(id);
  const speaker: ChangeSpeaker = {
    talk,
    glossary,
    number: (value) => String(value),
    foot: (foot) => foot,
    site: (site) => site,
    of: (what, said) => desk.joined.of(what, said),
    clauses: (parts) => desk.joined.clauses(parts),
  };
  const facts = { zone: 'U8', kind: 'rubbing', runs: 7 } as const;

  it('name complaint and result, each result in words of its own', () => {
    const all = thanksResults.map((result) => thanksInWords({ ...facts, result }, speaker));
    for (const { told, lines, words } of all) {
      expect(told).toContain('7');
      expect(told).toContain(glossary.zones.U8.name);
      expect(lines).toHaveLength(2);
      expect(words).toBeNull();
    }
    expect(new Set(all.map(({ title }) => title)).size).toBe(thanksResults.length);
    expect(new Set(all.map(({ lines }) => lines[0])).size).toBe(thanksResults.length);
  });

  it('tell the change only where it is in the record', () => {
    const without = thanksInWords({ ...facts, result: 'mended' }, speaker);
    const told = thanksInWords({ ...facts, result: 'mended', change }, speaker);
    expect(told.lines[1]).toContain(id === 'en' ? 'Collar line: 2 mm lower' : '领口线：降低 2 mm');
    // Nothing but that line names what the round changed.
    const changes = [{ what: glossary.parts['upper-pattern'].name, structured: change }];
    const parts = (lines: readonly string[]) =>
      lines.flatMap((line) => revealsChange(line, changes).filter((one) => one.change !== null));
    expect(parts(without.lines)).toEqual([]);
    expect(parts(told.lines)).not.toEqual([]);
  });

  it('stand without a complaint or a count', () => {
    expect(thanksInWords({ result: 'better' }, speaker).told).toBeNull();
    const { told } = thanksInWords({ ...facts, runs: undefined, result: 'better' }, speaker);
    expect(told).not.toMatch(/undefined|null|\d/);
    const once = thanksInWords({ ...facts, runs: 1, result: 'better' }, speaker).told;
    if (id === 'en') expect(once).toBe('You reported this on 1 run: rubbing, ankle bones.');
  });
});
