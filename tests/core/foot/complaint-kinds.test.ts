import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  complaintKinds,
  isPlausible,
  kindsForZone,
  kindsOfComplaint,
  partIds,
  plausibleCells,
  suspectsOf,
  zoneCodes,
} from '../../../core/foot/index.ts';

const zone = fc.constantFrom(...zoneCodes);
const kind = fc.constantFrom(...complaintKinds);

describe('kinds of complaint', () => {
  it('carry their own id', () => {
    for (const id of complaintKinds) expect(kindsOfComplaint[id].id).toBe(id);
  });

  it('offer some kinds first for every zone, and never one twice', () => {
    for (const code of zoneCodes) {
      const { first, also } = kindsForZone(code);
      expect(first.length, code).toBeGreaterThan(0);
      expect(first.length, code).toBeLessThan(also.length + 8);
      expect(new Set([...first, ...also]).size).toBe(first.length + also.length);
    }
  });

  it('agree on what is plausible, however it is asked', () => {
    const cells = new Set(plausibleCells().map(([code, id]) => `${code} ${id}`));
    fc.assert(
      fc.property(zone, kind, (code, id) => {
        const { first, also } = kindsForZone(code);
        const offered = first.includes(id) || also.includes(id);
        expect(isPlausible(id, code)).toBe(offered);
        expect(cells.has(`${code} ${id}`)).toBe(offered);
      }),
    );
    expect(cells.size).toBeGreaterThan(200);
  });

  it('name one feeling once: lace bite and arch pressure instead of pressure', () => {
    expect(isPlausible('pressure', 'U5')).toBe(false);
    expect(isPlausible('lace-bite', 'U5')).toBe(true);
    expect(isPlausible('pressure', 'P6')).toBe(false);
    expect(isPlausible('arch-pressure', 'P6')).toBe(true);
  });

  it('count pain and numbness as pain, and nothing else', () => {
    expect(complaintKinds.filter((id) => kindsOfComplaint[id].painLike)).toEqual([
      'numbness',
      'pain',
    ]);
  });
});

describe('suspects', () => {
  it('name each part at most once, and only parts that exist', () => {
    fc.assert(
      fc.property(kind, zone, fc.boolean(), (id, code, blistered) => {
        const { first, second } = suspectsOf(id, code, blistered);
        const all = [...first, ...second];
        expect(new Set(all).size).toBe(all.length);
        for (const part of all) expect(partIds).toContain(part);
      }),
    );
  });

  it('send heel slip to last, pattern and lacing, and slipping on the ground to the outsole', () => {
    expect(suspectsOf('heel-slip', 'U10').first).toEqual(['last', 'upper-pattern', 'lacing']);
    expect(suspectsOf('slipping', 'P4').first).toEqual(['outsole']);
  });

  it('look elsewhere for pressure on the little toe, and for a hot spot that blistered', () => {
    expect(suspectsOf('pressure', 'U3').first).not.toContain('sockliner');
    expect(suspectsOf('pressure', 'P3').first).toContain('sockliner');
    expect(suspectsOf('hot-spot', 'P1', true).second).toContain('midsole-geometry');
    expect(suspectsOf('hot-spot', 'P1').second).not.toContain('midsole-geometry');
  });

  it('claim no cause: every answer says that it has no source', () => {
    for (const id of complaintKinds) expect(suspectsOf(id, 'P4').basis).toMatch(/no-source$/);
  });

  it('leave pain to a person', () => {
    expect(suspectsOf('pain', 'P4')).toMatchObject({ first: [], second: [] });
  });
});
