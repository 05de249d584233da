/** Chinese sentences keep a half-width space between a Chinese character and a Latin letter or a figure. */
import { describe, expect, it } from 'vitest';
import { desk } from '../../../app/words/languages/zh/desk/index.ts';
import { phone } from '../../../app/words/languages/zh/phone.ts';
import { unbrokenText } from '../../../app/words/places/zh/apart.ts';
import { places, shown } from '../../../app/words/places/zh/index.ts';

/** Every text of the places, those with names filled in by a round that is named in Latin letters. */
const texts = (value: unknown, path: string): [string, string][] => {
  if (typeof value === 'string') return [[path, value]];
  if (value === null || value === undefined) return [];
  if (typeof value === 'object')
    return Object.entries(value).flatMap(([key, own]) => texts(own, `${path}.${key}`));
  if (typeof value !== 'function') return [];
  return ['Round 1', 3].flatMap((about) => {
    try {
      const sentence = value as (...about: unknown[]) => unknown;
      return texts(sentence(about, about, about, about, about, about), `${path}(${about})`);
    } catch {
      // A sentence about a case: the headlines' own tests say it.
      return [];
    }
  });
};

describe('the Chinese words of the places', () => {
  it('set names and figures apart', () => {
    const all = texts(places, 'places');
    expect(all.length).toBeGreaterThan(500);
    expect(
      all.filter(([, text]) => /[\u3400-\u9fff][A-Za-z0-9]|[A-Za-z0-9][\u3400-\u9fff]/.test(text)),
    ).toEqual([]);
  });

  it('never end a line between a figure and what it counts, on a screen', () => {
    const split = texts(shown, 'shown').filter(([, text]) => /\d [\u3400-\u9fff]/.test(text));
    expect(split).toEqual([]);
    expect(shown.sheet.steps['ask-all']('2026年11月17日', 12)).toContain('（12\u00a0天）');
    expect(unbrokenText('最远 381 km，要求 600 km')).toBe('最远 381\u00a0km，要求 600\u00a0km');
  });

  it('call who runs in a shoe by one name', () => {
    const all = [...texts(places, 'places'), ...texts(desk, 'desk'), ...texts(phone, 'phone')];
    expect(all.filter(([, text]) => /试穿者|试鞋员|测试员|测试者/.test(text))).toEqual([]);
  });

  it('leave dates together', () => {
    expect(places.sheet.steps['ask-all']('2026年11月17日', 12)).toBe(
      '自 2026年11月17日起没有人记录（12 天）',
    );
  });

  it('stay lists where they are lists', () => {
    expect(places.shoe.levels).toHaveLength(5);
    expect(Array.isArray(places.shoe.levels)).toBe(true);
  });

  it('do so in headlines as well', () => {
    const say = { round: () => 'Round 3' } as unknown as Parameters<
      typeof places.sheet.headline
    >[1];
    const round = 'id' as never;
    expect(
      places.sheet.headline({ case: 'nothing-recurs', claims: 'nothing', round } as never, say),
    ).toBe('Round 3 目前没有反复出现的问题。');
  });
});
