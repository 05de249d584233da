/** A question and its answer stand together, a message with what was written back; and what was read is known. */
import { describe, expect, it } from 'vitest';
import type { AskedAbout, Revision } from '../../../core/records/index.ts';
import {
  answerSets,
  asks,
  asksAbout,
  exchangesOf,
  hangsOn,
  isUnread,
  readKey,
  wordFrom,
  type Exchange,
} from '../../../core/talk/index.ts';
import { idOf } from '../records/make.ts';
import { DAY_MS, day, NOW, said, view } from './said.ts';

const [ADA, BEN] = [idOf(201), idOf(202)];
const [PAIR, RUN] = [idOf(101), idOf(1000)];
const about: AskedAbout = { record: { id: RUN, kind: 'run' }, pair: PAIR, zone: 'U8' };
const question = (n: number, days: number, more: Readonly<Record<string, unknown>> = {}) =>
  said(idOf(300 + n), 'question', days, { tester: ADA, ask: 'sock-or-shoe', ...more });
const answer = (n: number, days: number, more: Readonly<Record<string, unknown>>) =>
  said(idOf(400 + n), 'answer', days, { tester: ADA, ...more });
const of = (...revisions: readonly Revision[]) => exchangesOf(view(...revisions));
const only = (...revisions: readonly Revision[]): Exchange => {
  const [one, ...others] = of(...revisions);
  expect(others).toEqual([]);
  return one as Exchange;
};

describe('exchanges', () => {
  it('hold a question with the answer that stands, the latest word first', () => {
    const found = of(
      question(1, -9, { about }),
      question(2, -5),
      answer(1, -1, { question: idOf(301), option: 'sock' }),
      answer(2, -8, { question: idOf(301), option: 'shoe' }),
    );
    expect(found).toMatchObject([
      {
        ...{ kind: 'question', open: false, about, tester: ADA },
        startMs: NOW - 9 * DAY_MS,
        lastMs: NOW - DAY_MS,
        answer: { body: { option: 'sock' } },
      },
      { kind: 'question', open: true, answer: null, about: {} },
    ]);
  });

  it('put a message together with what leads wrote back to its tester, and to nobody else', () => {
    const reply = (n: number, days: number, tester: string) =>
      said(idOf(500 + n), 'reply', days, { tester, about: idOf(401), words: `word ${n}` });
    const one = only(
      answer(1, -3, { pair: PAIR, words: 'The lace frays' }),
      reply(1, -1, ADA),
      reply(2, -2, ADA),
      reply(3, -2, BEN),
    );
    expect(one).toMatchObject({ kind: 'message', about: { pair: PAIR }, lastMs: NOW - DAY_MS });
    if (one.kind === 'message')
      expect(one.replies.map(({ body }) => body.words)).toEqual(['word 2', 'word 1']);
  });

  it('hang on what they are about', () => {
    const one = only(question(1, -1, { about }));
    for (const subject of [
      {},
      { record: RUN },
      { pair: PAIR },
      { tester: ADA },
      { zone: 'U8' },
      { pair: PAIR, tester: ADA },
    ] as const)
      expect(hangsOn(one, subject)).toBe(true);
    for (const subject of [
      { record: PAIR },
      { pair: RUN },
      { tester: BEN },
      { zone: 'U10' },
      { pair: PAIR, tester: BEN },
    ] as const)
      expect(hangsOn(one, subject)).toBe(false);
  });

  it('are to be read once something came, until it was read or a month has gone', () => {
    const unread = (one: Exchange, read: readonly string[] = [], nowMs = NOW) =>
      isUnread(one, new Set(read), nowMs);
    expect(unread(only(question(1, -1)))).toBe(false);
    const answered = only(question(1, -2), answer(1, -1, { question: idOf(301), option: 'sock' }));
    const word = wordFrom(answered);
    expect(unread(answered)).toBe(true);
    expect(unread(answered, [word ? readKey(word) : ''])).toBe(false);
    expect(unread(answered, [], NOW + 30 * DAY_MS)).toBe(false);
    expect(unread(only(answer(1, -1, { pair: PAIR, words: 'The lace frays' })))).toBe(true);
  });

  it('have nothing to read where a question was skipped without a word', () => {
    const skipped = (more: object) =>
      only(
        question(1, -2),
        answer(1, -1, { question: idOf(301), option: 'skipped', at: day(-1), ...more }),
      );
    expect(wordFrom(skipped({}))).toBeNull();
    expect(wordFrom(skipped({ words: 'Not now' }))).not.toBeNull();
  });
});

describe('the ready-made questions about something', () => {
  it('leave no gap in their words', () => {
    expect(asksAbout({})).toEqual(
      Object.keys(asks).filter((ask) => asks[ask as keyof typeof asks].about === 'anything'),
    );
    expect(asksAbout({ pair: PAIR })).toContain('still-running');
    expect(asksAbout({ pair: PAIR })).not.toContain('really-distance');
    const ofRun = asksAbout(about);
    expect(ofRun).toContain('really-distance');
    expect(ofRun).not.toContain('damage-now');
    // Which score?
    expect(ofRun).not.toContain('score-meant');
    expect(asksAbout({ ...about, attribute: 'overall' })).toContain('score-meant');
    const damage: AskedAbout = { record: { id: RUN, kind: 'damage-report' }, pair: PAIR };
    expect(asksAbout(damage)).toContain('damage-now');
  });

  it('a question in own words offers at most so much that it fits a record', () => {
    for (const options of Object.values(answerSets)) expect(options.length).toBeLessThan(5);
  });
});
