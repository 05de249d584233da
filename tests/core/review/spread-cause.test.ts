/** "The pairs differ" is said where they do, and not where one number makes it look so. */
import { describe, expect, it } from 'vitest';
import { languageFile } from '../../../app/terminal/languages.ts';
import { printingOf } from '../../../app/terminal/print/printed.ts';
import { itemInWords } from '../../../app/words/say-verdict.ts';
import { viewOfHeads, type Revision } from '../../../core/records/index.ts';
import { openProject, reviewProject, verdictOf } from '../../../core/review/index.ts';
import { metres } from '../../../core/units/index.ts';
import { idOf, stampAt } from '../records/make.ts';
import * as make from './log-for-tests.ts';
import { own, PROJECT } from './log-for-tests.ts';

const ROUND = idOf(2);
const DAY_MS = 86_400_000;
const START = Date.UTC(2026, 4, 1);
const at = (day: number) => new Date(START + day * DAY_MS).toISOString();
const KM = [0, 100, 200, 300, 400, 500];

/** A pair for each way of losing height, checked six times up to the brief's 500 km. */
const wearOf = (
  pairs: readonly ((km: number) => number)[],
  limit: number,
  more: readonly Revision[] = [],
) => {
  const log = openProject(
    viewOfHeads([
      make.project({
        distanceM: 500_000,
        limits: [
          {
            measure: 'stack-height',
            site: 'heel',
            bound: 'at-least',
            value: limit,
            basis: 'reading',
          },
        ],
      }),
      make.round(ROUND, 1, { foam: 'eva' }),
      ...pairs.flatMap((height, n) => [
        make.pair(idOf(10 + n), ROUND, `${100 + n}`),
        ...KM.map((km, check) =>
          own(idOf(1000 + 10 * n + check), 'bench-check', {
            pair: idOf(10 + n),
            at: at(check),
            distanceM: 1000 * km,
            restedH: 30,
            temperatureC: 23,
            readings: [
              {
                measure: 'stack-height',
                site: 'heel',
                foot: 'left',
                unit: 'mm',
                value: height(km),
              },
            ],
          }),
        ),
      ]),
      ...more,
    ]),
    PROJECT,
    START + 100 * DAY_MS,
  );
  if (!log) throw new Error('no project');
  const review = reviewProject(log);
  const [round] = review.rounds;
  if (!round) throw new Error('no round');
  const item = verdictOf(log, round).items.find(({ what }) => what === 'wear');
  if (item?.what !== 'wear') throw new Error('no item');
  const { speaker } = printingOf(review, languageFile('en'), true);
  return { item, lines: itemInWords(item, metres(500_000), speaker).lines.join('\n') };
};

const falls =
  (by: number, start = 36) =>
  (km: number) =>
    Number((start - (by * Math.log1p(km / 50)) / Math.log1p(10) + 0.02 * Math.sin(km)).toFixed(3));

describe('why it is still open', () => {
  it('is the pairs where they differ, each by itself', () => {
    const { item, lines } = wearOf(
      [0.5, 1.2, 1.9, 2.6, 3.3, 4].map((by) => falls(by)),
      33.8,
    );
    expect(item).toMatchObject({ word: 'not-known-yet', spread: { by: 'pairs' } });
    expect(lines).toContain('how much pairs differ');
  });

  it('is one reading where a digit is wrong, and not the pairs', () => {
    const typed = (km: number) => (km === 300 ? 345 : falls(1.5)(km));
    // As long as nobody decided, such a reading counts in no figure.
    const counted = own(idOf(3000), 'decision', {
      record: idOf(1053),
      recordKind: 'bench-check',
      judged: stampAt(1),
      ruling: 'counted',
      why: 'The lead took it for right.',
      at: at(6),
    });
    const { item, lines } = wearOf(
      [1.4, 1.5, 1.5, 1.6, 1.55].map((by) => falls(by)).concat(typed),
      33,
      [counted],
    );
    expect(item.word).toBe('not-known-yet');
    expect(lines).not.toMatch(/pairs differ/);
    expect(item.spread).toEqual({ by: 'reading', pair: idOf(15), distance: 300_000 });
    expect(lines).toContain('pair 105 at 300');
  });

  it('is one pair where that alone wears otherwise', () => {
    const { item, lines } = wearOf(
      [1.4, 1.5, 1.5, 1.6, 1.55, 6].map((by) => falls(by)),
      33.5,
    );
    expect(item).toMatchObject({ word: 'not-known-yet' });
    expect(lines).not.toMatch(/pairs differ/);
    expect(item.spread).toEqual({ by: 'pair', pair: idOf(15) });
  });
});
