/** What a session of fit trials says first, in both languages. */
import { describe, expect, it } from 'vitest';
import { places as english } from '../../../app/words/places/en/index.ts';
import { places as chinese } from '../../../app/words/places/zh/index.ts';
import { agreementOf, fittersIn } from '../../../core/fitting/index.ts';
import { fitHeadline } from '../../../core/headlines/index.ts';
import { fitPlaces } from '../../../core/foot/index.ts';
import type { FitAnswer } from '../../../core/records/index.ts';
import { says, trial } from '../fitting/made.ts';

const all = (fit: FitAnswer['fit']): FitAnswer[] => fitPlaces.map((place) => says(place, fit));
const headline = (...people: readonly (readonly FitAnswer[])[]) => {
  const fitters = fittersIn(people.map((standing, n) => trial(20 + n, standing)));
  const h = fitHeadline(agreementOf(fitters, 'both'), fitters.length);
  return [h, english.fitting.headline(h, String), chinese.fitting.headline(h, String)] as const;
};
const but = (...answers: FitAnswer[]): FitAnswer[] => [...all('right'), ...answers];

describe('the first line of a fit trial', () => {
  it('names where most say that it is off, and about how much they want', () => {
    const [h, en, zh] = headline(
      but(says('heel', 'much', 2)),
      but(says('heel', 'much', 3)),
      but(says('heel', 'much', 1)),
      but(says('heel', 'much')),
      all('right'),
      all('right'),
    );
    expect(h).toMatchObject({ case: 'off', place: 'heel', people: 4, of: 6, mm: 2, more: 0 });
    expect(en).toBe('4 of 6 say the heel is too loose; they want about 2 mm less.');
    expect(zh).toBe('6 人中 4 人说后跟太松，希望减少约 2 mm。');
  });

  it('takes the place that most are bothered by, then the one that is further off', () => {
    const three = [says('heel', 'much', 2), says('collar', 'much', 3)];
    const [h, en] = headline(but(...three), but(...three), but(...three));
    expect(h).toMatchObject({ place: 'collar', more: 1 });
    expect(en).toBe('3 of 3 say the collar is too high; they want about 3 mm less.');
    expect(headline(but(...three), but(...three), but(says('heel', 'much')))[0]).toMatchObject({
      place: 'heel',
      people: 3,
    });
  });

  it('asks for more where it is too tight, and for nothing where nobody said how far', () => {
    const tight = but(says('ball', 'little', 4));
    expect(headline(tight, tight, tight)[1]).toBe(
      '3 of 3 say the ball is too tight; they want about 4 mm more.',
    );
    const bare = but(says('length', 'little'));
    expect(headline(bare, bare, bare)[1]).toBe('3 of 3 say the shoe is too short.');
  });

  it('says nothing of one or two people, and that nobody was there', () => {
    expect(headline()[1]).toBe('Nobody has tried a pair on yet.');
    expect(headline(but(says('heel', 'much', 2)))[1]).toBe('1 person so far: too early to tell.');
    expect(headline(all('much'), all('much'))[2]).toBe('目前 2 人，还说不准。');
    expect(headline([], [], [])[0]).toMatchObject({ case: 'few' });
  });

  it('says where they disagree, and that it fits', () => {
    const [tight, loose] = [but(says('instep', 'little')), but(says('instep', 'much'))];
    expect(headline(tight, loose, tight, loose)[1]).toBe('They disagree about the instep.');
    const [, en, zh] = headline(all('right'), all('right'), all('right'));
    expect(en).toBe('It fits: most of 3 people want nothing moved.');
    expect(zh).toBe('合脚：3 人中多数不用改。');
  });

  it('has a clause for each place and side in both languages', () => {
    for (const place of fitPlaces)
      for (const side of ['little', 'much'] as const) {
        const said = {
          case: 'off',
          claims: 'nothing',
          place,
          side,
          people: 3,
          of: 4,
          mm: 2,
          more: 0,
        } as const;
        expect(english.fitting.headline(said, String)).toMatch(
          /^3 of 4 say the .+ is too \w+; they want about 2 mm (more|less)\.$/,
        );
        expect(chinese.fitting.headline(said, String)).toMatch(
          /^4 人中 3 人说.+太.，希望(增加|减少)约 2 mm。$/,
        );
      }
  });
});
