/** Thanks as a lead sends them: to whom, with or without the change, and with words that name nobody else. */
import { describe, expect, it } from 'vitest';
import { newThanks, readThanks, testerNamed, thanked } from '../../../app/drafts/thanks.ts';
import { readBody } from '../../../core/records/index.ts';
import type { ThanksDue } from '../../../core/review/index.ts';
import { idOf } from '../../core/records/make.ts';

const [ADA, BEN, CY, PROJECT] = [idOf(201), idOf(202), idOf(203), idOf(1)];
const change = { part: 'upper-pattern', line: 'collar', direction: 'lower' } as const;
const due = (tester: ThanksDue['tester'], more: Partial<ThanksDue> = {}): ThanksDue => ({
  ...{ tester, finding: idOf(700), result: 'mended', zone: 'U8', kind: 'rubbing' },
  ...{ runs: 3, change, withheld: null, ...more },
});
const all = [due(ADA), due(BEN), due(CY, { withheld: { why: 'blind-open', untilMs: null } })];
const testers = [
  { id: ADA, code: 'T01', name: 'Ada' },
  { id: BEN, code: 'T02', name: '小林' },
  { id: CY, code: 'T03', name: undefined },
];
const made = { project: PROJECT, at: '2026-06-30T00:00:00+00:00', language: 'en' };
const begin = newThanks({ blind: 0 });

describe('a draft of thanks', () => {
  it('goes to everybody who may be told, and makes a record for each that can be read', () => {
    const read = readThanks(begin, all, testers, made);
    if (!read.ok) throw new Error('not read');
    expect(read.bodies.map(({ tester }) => tester)).toEqual([ADA, BEN]);
    for (const body of read.bodies) {
      expect(readBody('thanks', body).ok).toBe(true);
      expect(body).toMatchObject({ result: 'mended', runs: 3, change });
      expect(body).not.toHaveProperty('words');
    }
  });

  it('keeps the change to itself while anybody wears the shoe blind, unless the lead tells it', () => {
    const careful = newThanks({ blind: 1 });
    const told = (tellChange: boolean) => {
      const read = readThanks({ ...careful, tellChange }, all, testers, made);
      return read.ok && read.bodies.some((body) => 'change' in body);
    };
    expect(careful.tellChange).toBe(false);
    expect(begin.tellChange).toBe(true);
    expect(told(careful.tellChange)).toBe(false);
    expect(told(true)).toBe(true);
  });

  it('carries the lead’s own words, with their language', () => {
    const read = readThanks({ ...begin, words: ' You were right. ' }, all, testers, made);
    expect(read.ok && read.bodies[0]).toMatchObject({ words: 'You were right.', language: 'en' });
  });

  it('tells both what is wrong at once: nobody chosen, another tester named', () => {
    const draft = { ...begin, leftOut: new Set([ADA, BEN]), words: 'As t02 said' };
    expect(thanked(all, draft)).toEqual([]);
    expect(readThanks(draft, all, testers, made)).toEqual({
      ok: false,
      troubles: [{ field: 'testers' }, { field: 'words', named: 'T02' }],
    });
  });
});

describe('a tester in the lead’s words', () => {
  const named = (words: string, readers = [ADA, BEN]) => testerNamed(words, testers, readers);
  it('is found by code or name, as a word of its own', () => {
    expect(named('T01 and T02 told us')).toBe('T01');
    expect(named('thanks to ada!')).toBe('Ada');
    expect(named('小林也这么说')).toBe('小林');
    expect(named('Canada, and T011')).toBeNull();
    expect(named('')).toBeNull();
  });

  it('may be the one who alone reads them', () => {
    expect(named('Thank you, Ada', [ADA])).toBeNull();
    expect(named('Thank you, Ada', [BEN])).toBe('Ada');
  });

  it('is found where the code has signs that patterns know', () => {
    const odd = [{ id: ADA, code: 'A-1', name: 'Jo (senior)' }];
    expect(testerNamed('so says Jo (senior).', odd, [BEN])).toBe('Jo (senior)');
    expect(testerNamed('Joseph', odd, [BEN])).toBeNull();
  });
});
