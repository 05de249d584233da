/** What a press on the list of what waits writes down, and how it is said in every language. */
import { describe, expect, it } from 'vitest';
import { correctedCheck, decisionsOn, usualReason } from '../../../../app/desk/waiting/decision.ts';
import { languageFile, languages } from '../../../../app/terminal/languages.ts';
import { decidedInWords, waitingInWords } from '../../../../app/words/say-waiting.ts';
import type { Speaker } from '../../../../app/words/say-complaint.ts';
import { readBody, viewOfHeads } from '../../../../core/records/index.ts';
import { openProject } from '../../../../core/review/index.ts';
import { idOf, stampAt } from '../../../core/records/make.ts';
import * as make from '../../../core/review/log-for-tests.ts';
import { own, PROJECT, record } from '../../../core/review/log-for-tests.ts';

const [ROUND, PAIR, OTHER, T1] = [idOf(2), idOf(10), idOf(11), idOf(20)];
const NOW = Date.UTC(2026, 5, 1);
const reading = (foot: 'left' | 'right', value: number) => ({
  measure: 'stack-height',
  site: 'heel',
  foot,
  unit: 'mm',
  value,
});
const check = own(idOf(40), 'bench-check', {
  pair: PAIR,
  at: '2026-05-02T12:00:00Z',
  readings: [reading('left', 285), reading('right', 28.4)],
});
const log = openProject(
  viewOfHeads([
    make.project(),
    make.round(ROUND, 1),
    make.pair(PAIR, ROUND, '637'),
    make.pair(OTHER, ROUND, '640'),
    record(T1, 'tester', { code: 'T01' }),
    make.handOut(idOf(30), { pair: OTHER, tester: T1 }, '2026-05-01T08:00:00Z'),
    make.run(idOf(50), { pair: PAIR, tester: T1 }, '2026-05-04T18:00:00Z', {
      distanceM: 400_000,
      durationS: 6000,
    }),
    check,
  ]),
  PROJECT,
  NOW,
);
const waiting = log?.standing.waiting ?? [];
const [odd, wrong] = waiting;

describe('a press on what waits', () => {
  it('saves a decision about the revision that was shown, with its reason and instant', () => {
    expect(waiting.map(({ about }) => about)).toEqual(['run', 'reading']);
    if (!odd || !wrong) throw new Error('nothing waits');
    const said = { project: PROJECT, ruling: 'set-aside', why: ' typed wrong ' } as const;
    const [ofRun] = decisionsOn(odd, said, NOW);
    const [ofReading] = decisionsOn(wrong, { ...said, ruling: 'counted' }, NOW);
    expect(ofRun).toMatchObject({
      record: idOf(50),
      recordKind: 'run',
      judged: stampAt(1),
      ruling: 'set-aside',
      why: 'typed wrong',
    });
    expect(Date.parse(ofRun?.at ?? '')).toBe(NOW);
    expect(ofRun).not.toHaveProperty('reading');
    expect(ofReading).toMatchObject({
      record: check.id,
      recordKind: 'bench-check',
      ruling: 'counted',
      reading: { measure: 'stack-height', site: 'heel', foot: 'left', unit: 'mm' },
    });
    for (const decision of [ofRun, ofReading]) expect(readBody('decision', decision).ok).toBe(true);
  });

  it('proposes a reason that fits', () => {
    const { reasons } = languageFile('en').desk.waiting;
    if (!odd || !wrong) throw new Error('nothing waits');
    expect(usualReason(odd, { ...languageFile('en').desk.waiting })).toBe(reasons['wrong-pair']);
    expect(usualReason(wrong, { ...languageFile('en').desk.waiting })).toBe(reasons.reading);
  });

  it('corrects one reading of a check, and refuses what cannot be', () => {
    const body = readBody('bench-check', check.body);
    if (!body.ok || wrong?.about !== 'reading') throw new Error('no check');
    expect(
      correctedCheck(body.body, wrong.reading, 28.5)?.readings.map(({ value }) => value),
    ).toEqual([28.5, 28.4]);
    expect(correctedCheck(body.body, wrong.reading, 285)).toBeNull();
  });
});

describe('what waits, in words', () => {
  const speakerIn = (language: string): Speaker => {
    const { desk, glossary, phone } = languageFile(language);
    return {
      desk,
      glossary,
      number: (value, most) => String(Number(value.toFixed(most))),
      distance: (distance) => `${distance / 1000} km`,
      tester: () => 'T01',
      pair: (id) => (id === PAIR ? '637' : '640'),
      round: () => 'R1',
      foot: (foot) => phone.foot[foot],
      language: (tag) => tag,
    };
  };
  const day = (at: string) => at.slice(0, 10);

  it('names tester, pair, figures and what speaks against it', () => {
    if (!odd || !wrong) throw new Error('nothing waits');
    const said = [odd, wrong].map((item) => waitingInWords(item, speakerIn('en'), day));
    expect(said).toEqual([
      {
        what: 'T01, pair 637, 400 km, 2026-05-04',
        why: [
          'implausible distance',
          'implausible pace, 0:15 per km',
          'the pair was not handed out to this tester then',
          'T01 had 640 then. Is it noted in the wrong pair?',
        ],
      },
      {
        what: 'Pair 637, Stack height, heel, left: 285 mm, 2026-05-02',
        why: [
          'Stack height can only be 1 to 100 mm.',
          'The other shoe here: 28.4 mm.',
          'Is it 28.5 mm?',
        ],
      },
    ]);
  });

  it('is said in every language without a hole', () => {
    for (const language of languages) {
      const speaker = speakerIn(language);
      const all = [
        ...waiting.flatMap((item) => {
          const { what, why } = waitingInWords(item, speaker, day);
          return [what, ...why];
        }),
        decidedInWords(
          {
            about: 'run',
            subject: { record: idOf(50), recordKind: 'run', judged: stampAt(1), reading: null },
            tester: T1,
            pair: PAIR,
            startedAt: '2026-05-04T18:00:00Z',
            distanceM: 400_000 as never,
            decision: idOf(60),
            ruling: 'set-aside',
            why: 'x',
            at: '2026-05-05T00:00:00Z',
          },
          speaker,
          day,
        ),
      ];
      expect(all.join(' ')).not.toMatch(/undefined|NaN|\[object/);
    }
  });
});
