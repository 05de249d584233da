/** Numbers and times as people type them, on keypads with and without a colon, in English and Chinese. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  formatDuration,
  parseDecimal,
  parseDuration,
  plainText,
  readDuration,
  seconds,
} from '../../../core/units/index.ts';

const fullWidth = (text: string): string =>
  text.replace(/[!-~]/g, (one) => String.fromCharCode(one.charCodeAt(0) + 0xfee0));

describe('a typed number', () => {
  it('takes a comma or a point before the decimals', () => {
    expect(parseDecimal(' 12,4 ')).toBe(12.4);
    expect(parseDecimal('12.40')).toBe(12.4);
    expect(parseDecimal('.5')).toBe(0.5);
  });

  it.each([
    ['１０．５', 10.5],
    ['12。5', 12.5],
    ['　７　', 7],
    ['\u00a07\u202f', 7],
    ['−5', -5],
    ['–5', -5],
    ['－３', -3],
    ['＋３', 3],
  ])('reads %j as %d', (text, value) => {
    expect(parseDecimal(text)).toBe(value);
  });

  // A superscript is no digit of the number, and a Chinese comma no decimal one.
  it.each(['', '1,000.5', '12 km', '1e3', 'NaN', '--1', '0x1', '12²', '①', '1，5', '−'])(
    'refuses %j',
    (text) => {
      expect(parseDecimal(text)).toBeNull();
    },
  );

  it('is the same in full-width characters and with every minus sign', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -1_000_000, max: 1_000_000 }),
        fc.integer({ min: 0, max: 3 }),
        fc.constantFrom('-', '−', '‐', '‑', '–', '—', '－', '﹣'),
        (whole, digits, minus) => {
          const plain = (whole / 1000).toFixed(digits);
          expect(parseDecimal(plain.replace('-', minus))).toBe(Number(plain));
          expect(parseDecimal(fullWidth(plain))).toBe(Number(plain));
        },
      ),
    );
  });

  it('never throws, and makes plain text of plain text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (text) => {
        parseDecimal(text);
        expect(plainText(plainText(text))).toBe(plainText(text));
      }),
    );
  });
});

describe('a typed time', () => {
  it.each([
    // Digits alone.
    ['7530', '75:30'],
    ['9000', '90:00'],
    ['5230', '52:30'],
    ['930', '9:30'],
    ['0930', '9:30'],
    ['10500', '1:05:00'],
    ['010500', '1:05:00'],
    ['75', '75:00'],
    ['45', '45:00'],
    // With colons.
    ['75:30', '75:30'],
    ['1:05:00', '1:05:00'],
    ['1:2:3', '1:02:03'],
    ['1 : 05 : 00', '1:05:00'],
    ['52:30.87', '52:30'],
    ['１：０５：００', '1:05:00'],
    // On keypads without a colon.
    ['1.05.00', '1:05:00'],
    ['1-05-00', '1:05:00'],
    ['1 05 00', '1:05:00'],
    ['1,05,00', '1:05:00'],
    ['1−05−00', '1:05:00'],
    ['75.30', '75:30'],
    ['75,30', '75:30'],
    ['75-30', '75:30'],
    ['75 30', '75:30'],
    ['７５３０', '75:30'],
    // With units.
    ['1h15', '1:15:00'],
    ['1h15m', '1:15:00'],
    ['1H05', '1:05:00'],
    ['1 h 15 min', '1:15:00'],
    ['1 h 15 min 30 s', '1:15:30'],
    ['1hr 5min', '1:05:00'],
    ['2 hours and 5 minutes', '2:05:00'],
    ['75m30', '75:30'],
    ['75m30s', '75:30'],
    ['75\' 30"', '75:30'],
    ['75′30″', '75:30'],
    ['75’ 30”', '75:30'],
    ["75'30''", '75:30'],
    ["75'30", '75:30'],
    ['90 min', '90:00'],
    ['4500 s', '1:15:00'],
    ['1.5 h', '1:30:00'],
    ['1,5h', '1:30:00'],
    ['75.5 min', '1:15:30'],
    ['1小时15分', '1:15:00'],
    ['1小时15分30秒', '1:15:30'],
    ['1个小时零5分钟', '1:05:00'],
    ['75分30秒', '75:30'],
    ['75分30', '75:30'],
    ['７５分３０秒', '75:30'],
    ['1 小时，15 分', '1:15:00'],
  ])('%j is %s', (text, meant) => {
    const read = readDuration(text);
    const two = (part: number) => String(part).padStart(2, '0');
    expect(read && `${read.h > 0 ? `${read.h}:${two(read.m)}` : read.m}:${two(read.s)}`).toBe(
      meant,
    );
  });

  it.each([
    // Seconds past 59, and minutes past 59 after hours.
    ...['1:60', '1:2:60', '1:75:30', '7575', '17530', '1h75', '75m75'],
    // May be two times: 75 min 3 s or 75 min 30 s or 75.3 min.
    ...['75.3', '75,3', '75 3', '75-3', '75.300'],
    // Not a time.
    ...['', 'abc', '-5', '1:2:3:4', '1.05-00', 'h', '15 h 30 h', '5 min 1 h', '30 s 5', '1.5 h 5'],
    ...['1 1 1 1', '1234567', '5 km', '12:5 pm'],
  ])('refuses %j', (text) => {
    expect(parseDuration(text)).toBeNull();
  });

  it('reads back every duration in every form that is offered', () => {
    const two = (part: number) => String(part).padStart(2, '0');
    const forms = (h: number, m: number, s: number): string[] => {
      const under = [two(m), two(s)] as const;
      const withHours = [
        [h, ...under].join(':'),
        [h, ...under].join('.'),
        [h, ...under].join('-'),
        [h, ...under].join(' '),
        `${h}h${m}m${s}`,
        `${h} h ${under[0]} min ${under[1]} s`,
        `${h} 小时 ${under[0]} 分 ${under[1]} 秒`,
        `${h}小时${m}分${s}秒`,
        `${h} hours and ${m} minutes and ${s} seconds`,
        ...(h <= 99 ? [`${h}${under.join('')}`] : []),
        ...(s === 0 ? [`${h}h${m}`, `${h} h ${m} min`, `${h}小时${m}分`] : []),
      ];
      const minutes = 60 * h + m;
      const withoutHours = [
        `${minutes}:${under[1]}`,
        `${minutes}.${under[1]}`,
        `${minutes} ${under[1]}`,
        `${minutes}m${s}`,
        `${minutes}' ${s}"`,
        `${minutes} min ${under[1]} s`,
        `${minutes} 分 ${under[1]} 秒`,
        ...(minutes <= 99 ? [`${minutes}${under[1]}`] : []),
      ];
      return [
        formatDuration(seconds(3600 * h + 60 * m + s)),
        `${3600 * h + 60 * m + s} s`,
        ...(h > 0 ? withHours : []),
        ...(minutes <= 999 && (minutes > 9 || m > 0) ? withoutHours : []),
      ];
    };
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 27 }),
        fc.integer({ min: 1, max: 59 }),
        fc.integer({ min: 0, max: 59 }),
        (h, m, s) => {
          for (const form of forms(h, m, s))
            for (const typed of [form, fullWidth(form), ` ${form} `])
              expect([typed, parseDuration(typed)]).toEqual([typed, 3600 * h + 60 * m + s]);
        },
      ),
    );
  });

  it('never throws, and never reads what is no time of at most six figures', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (text) => {
        const read = parseDuration(text);
        if (read !== null) expect(Number.isInteger(read) && read >= 0).toBe(true);
      }),
    );
  });
});
