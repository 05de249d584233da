/** Whose words are they that name a place of the shoe? */
import { describe, expect, it } from 'vitest';
import { isWordOfTrade, trades } from '../../../core/foot/index.ts';

const tradesOf = (one: Parameters<typeof isWordOfTrade>[0]) =>
  trades.filter((trade) => isWordOfTrade(one, trade));

describe('words about a zone', () => {
  it('that name a kind are those trades’ that are asked first about it', () => {
    expect(tradesOf({ zone: 'P9', kind: 'bottoming-out' }).toSorted()).toEqual(['foam', 'tooling']);
    expect(tradesOf({ zone: 'P9', kind: 'pain' })).toEqual([]);
  });

  it('that name none are the trades’ that most of its usual complaints point to', () => {
    expect(tradesOf({ zone: 'U5', kind: null })).toContain('upper');
    expect(tradesOf({ zone: 'U5', kind: null })).not.toContain('foam');
    expect(tradesOf({ zone: 'P9', kind: null })).toContain('foam');
    expect(tradesOf({ zone: 'P9', kind: null })).not.toContain('upper');
  });
});
