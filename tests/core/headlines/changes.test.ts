/** What two rounds say first: a case each, in both languages, and never more than is proved. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  changesHeadline,
  changesStamp,
  findingHeadline,
  type ChangesFacts,
  type ChangesHeadline,
} from '../../../core/headlines/index.ts';
import { complaintKinds, zoneCodes } from '../../../core/foot/index.ts';
import { changeVerdicts } from '../../../core/records/index.ts';
import type { ComfortMove, FeltMove, MoveWord } from '../../../core/review/index.ts';
import { changes as en, type ChangesSay } from '../../../app/words/places/en/changes.ts';
import { changes as zh } from '../../../app/words/places/zh/changes.ts';
import { idOf } from '../records/make.ts';

const [earlier, later] = [idOf(1), idOf(2)];
const count = { testers: 8, reporters: 4, runs: 100, reported: 20 };
const felt = (kind: string, word: MoveWord, asked = true): FeltMove =>
  ({ zone: 'U10', kind, earlier: count, later: count, word, asked }) as FeltMove;
const facts = (
  moves: readonly FeltMove[],
  more: {
    comfort?: readonly ComfortMove[];
    testers?: { both: number; onlyEarlier: number; onlyLater: number };
    changes?: readonly object[];
    twoSided?: readonly { readonly attribute: string; readonly word: string }[];
  } = {},
): ChangesFacts =>
  ({
    felt: moves,
    comfort: more.comfort ?? [],
    comparison: {
      earlier,
      later,
      changes: more.changes ?? [],
      twoSided: more.twoSided ?? [],
      testers: more.testers ?? { both: 4, onlyEarlier: 4, onlyLater: 4 },
    },
  }) as unknown as ChangesFacts;
const heelHold: ComfortMove = { attribute: 'heel-hold', earlier: 70, later: 55, word: 'worse' };

const say = (language: 'en' | 'zh'): ChangesSay =>
  ({
    round: (id: unknown) => (id === later ? 'Round 2' : 'Round 1'),
    list: (names: readonly string[]) => names.join(language === 'en' ? ' and ' : '、'),
    upper: (text: string) => text.charAt(0).toUpperCase() + text.slice(1),
    moved: (one: { kind?: string; attribute?: string }) =>
      ({
        'heel-slip': { en: 'Heel slip', zh: '后跟滑动' },
        pressure: { en: 'Toe pressure', zh: '脚趾压迫' },
        'heel-hold': { en: 'Heel hold', zh: '后跟包裹' },
      })[(one.kind ?? one.attribute) as 'pressure'][language],
  }) as unknown as ChangesSay;
it('a question further from just right is worse, and is named once on whichever line it was asked', () => {
  const further = { attribute: 'heel-hold', word: 'worse' };
  const both = facts([], { comfort: [heelHold], twoSided: [further] });
  expect(changesHeadline(both)).toEqual({
    claims: 'worse',
    case: 'worse',
    worse: [{ attribute: 'heel-hold' }],
  });
  expect(changesHeadline(facts([], { twoSided: [further] })).case).toBe('worse');
  expect(changesHeadline(facts([], { twoSided: [{ ...further, word: 'better' }] })).case).toBe(
    'nothing-moved',
  );
});

const said = (h: ChangesHeadline) => [en.headline(h, say('en')), zh.headline(h, say('zh'))];

describe('two rounds say first', () => {
  it.each<[string, ChangesFacts | null, string, string]>([
    [
      'one round',
      null,
      'Comparing takes two rounds. There are not two yet.',
      '要有两轮才能比较，目前还不到两轮。',
    ],
    [
      'nobody ran in the later one',
      facts([], { testers: { both: 0, onlyEarlier: 4, onlyLater: 0 } }),
      'Nobody has run in Round 2 yet: nothing to compare.',
      'Round 2还没有人跑过，暂时无法比较。',
    ],
    [
      'nobody ran in the earlier one',
      facts([], { testers: { both: 0, onlyEarlier: 0, onlyLater: 4 } }),
      'Nobody has run in Round 1 yet: nothing to compare.',
      'Round 1还没有人跑过，暂时无法比较。',
    ],
    [
      'better, and something to ask about',
      facts([felt('heel-slip', 'better'), felt('pressure', 'look', false)]),
      'Heel slip is better; toe pressure is not settled.',
      '后跟滑动有改善；脚趾压迫尚无定论。',
    ],
    [
      'better, nothing else',
      facts([felt('heel-slip', 'better'), felt('pressure', 'too-little', false)]),
      'Heel slip is better. Nothing else is clearly worse.',
      '后跟滑动有改善，其他方面没有明显变差。',
    ],
    [
      'mended and not settled',
      facts([felt('heel-slip', 'mended'), felt('pressure', 'too-little')]),
      'Heel slip is mended; toe pressure is not settled.',
      '后跟滑动已解决；脚趾压迫尚无定论。',
    ],
    [
      'two mended',
      facts([felt('heel-slip', 'mended'), felt('pressure', 'mended')]),
      'Heel slip and toe pressure are mended. Nothing else is clearly worse.',
      '后跟滑动、脚趾压迫已解决，其他方面没有明显变差。',
    ],
    [
      'one mended and one better is better',
      facts([felt('heel-slip', 'mended'), felt('pressure', 'better')]),
      'Heel slip and toe pressure are better. Nothing else is clearly worse.',
      '后跟滑动、脚趾压迫有改善，其他方面没有明显变差。',
    ],
    [
      'better and worse',
      facts([felt('heel-slip', 'better'), felt('pressure', 'worse', false)]),
      'Heel slip is better, but toe pressure is worse.',
      '后跟滑动有改善，但脚趾压迫变差。',
    ],
    [
      'worse',
      facts([felt('pressure', 'worse')], { comfort: [heelHold] }),
      'Toe pressure and heel hold are clearly worse.',
      '脚趾压迫、后跟包裹明显变差。',
    ],
    [
      'no different',
      facts([felt('heel-slip', 'no-different')]),
      'Heel slip is no different: the change did not help.',
      '后跟滑动没有变化：改动没有起作用。',
    ],
    [
      'too early',
      facts([felt('heel-slip', 'too-little'), felt('pressure', 'no-different')]),
      'Too early to tell whether heel slip got better.',
      '后跟滑动有没有改善，还看不出来。',
    ],
    [
      'meant anywhere on the foot',
      facts([], {
        changes: [{ mends: { kind: 'heel-slip', zone: null }, found: { verdict: 'better' } }],
      }),
      'Heel slip is better. Nothing else is clearly worse.',
      '后跟滑动有改善，其他方面没有明显变差。',
    ],
    [
      'nothing moved',
      facts([felt('pressure', 'too-little', false)]),
      'Nothing is clearly better or worse in Round 2.',
      'Round 2没有明显变好或变差的地方。',
    ],
  ])('%s', (_, given, english, chinese) => {
    const headline = changesHeadline(given);
    expect(said(headline)).toEqual([english, chinese]);
    expect(english.split(/\s+/).length).toBeLessThanOrEqual(12);
    expect(headline.claims === 'nothing' || headline.claims === changesStamp(given)).toBe(true);
  });

  it('claims what is proved of everything that it names, and leaves out nothing that is worse', () => {
    const move = fc.record({
      zone: fc.constantFrom(...zoneCodes),
      kind: fc.constantFrom(...complaintKinds),
      earlier: fc.constant(count),
      later: fc.constant(count),
      word: fc.constantFrom<MoveWord>(...changeVerdicts, 'look'),
      asked: fc.boolean(),
    }) as fc.Arbitrary<FeltMove>;
    fc.assert(
      fc.property(
        fc.uniqueArray(move, { maxLength: 8, selector: ({ zone, kind }) => `${zone} ${kind}` }),
        fc.boolean(),
        (moves, colder) => {
          const given = facts(moves, { comfort: colder ? [heelHold] : [] });
          const headline = changesHeadline(given);
          const wordOf = (one: object) =>
            moves.find(
              (other) =>
                'kind' in one &&
                'zone' in one &&
                other.zone === one.zone &&
                other.kind === one.kind,
            );
          if (headline.claims !== 'nothing') expect(headline.claims).toBe(changesStamp(given));
          if ('better' in headline)
            for (const one of headline.better) {
              expect(wordOf(one)?.asked).toBe(true);
              expect(['better', 'mended']).toContain(wordOf(one)?.word);
              if (headline.case === 'mended') expect(wordOf(one)?.word).toBe('mended');
            }
          const isWorse = colder || moves.some(({ word }) => word === 'worse');
          expect('worse' in headline).toBe(isWorse);
        },
      ),
    );
  });
});

describe('a finding says', () => {
  const worn = (round: unknown) => round === later;
  const outcome = {
    round: later,
    verdict: 'better' as const,
    until: '2026-11-01T00:00:00Z',
    lines: ['x'],
  };
  it.each([
    [{ state: 'closed', outcome, carriedBy: later }, 'outcome', 'better'],
    [{ state: 'closed', carriedBy: later }, 'closed', 'nothing'],
    [{ state: 'open' }, 'no-round', 'nothing'],
    [{ state: 'asked-for', carriedBy: earlier }, 'asked', 'nothing'],
    [{ state: 'carried-out', carriedBy: later }, 'judge', 'nothing'],
  ] as const)('%j: %s', (finding, which, claims) => {
    expect(findingHeadline(finding as never, worn)).toMatchObject({ case: which, claims });
  });

  it('in both languages', () => {
    expect(en.said.outcome('Round 2', en.stamps.better, '1 Nov')).toBe(
      'Round 2 makes this change: better, as of 1 Nov.',
    );
    expect(zh.said.judge('第 2 轮')).toBe('第 2 轮已改动，有效吗？');
    expect(en.said['no-round']()).toBe('No round makes this change yet.');
  });

  it('nothing that sounds as if it were still to come, once it is closed', () => {
    for (const words of [en, zh])
      for (const say of [words.noRound, words.noOutcome, words.nothingWanted]) {
        expect(say(false)).toMatch(/\byet\b|还没有|尚未/);
        expect(say(true)).not.toMatch(/\byet\b|还没有|尚未/);
      }
  });
});
