/** What a tester taps or writes becomes a record about that tester. */
import { describe, expect, it } from 'vitest';
import { messageAbout, tappedAnswer, wordedAnswer } from '../../../app/drafts/answer.ts';
import { MOST_WORDS } from '../../../app/drafts/question.ts';
import { readBody, type RecordOf } from '../../../core/records/index.ts';
import { idOf } from '../../core/records/make.ts';

const [PROJECT, ADA] = [idOf(1), idOf(201)];
const me = { tester: ADA, at: '2026-06-01T08:00:00+02:00', language: 'en' };
const record = (kind: string, id: number, body: object) =>
  ({ kind, body: { project: PROJECT, ...body }, revision: { id: idOf(id) } }) as unknown;
const question = record('question', 300, { tester: ADA }) as RecordOf<'question'>;
const pair = record('pair', 101, { code: '637' }) as RecordOf<'pair'>;

describe('an answer', () => {
  it('is one tap', () => {
    const body = tappedAnswer(question, 'sock', me);
    const { at } = me;
    expect(body).toEqual({
      project: PROJECT,
      tester: ADA,
      at,
      question: idOf(300),
      option: 'sock',
    });
    expect(readBody('answer', body)).toMatchObject({ ok: true });
  });

  it('takes words, alone or beside what was tapped', () => {
    const alone = wordedAnswer(question, ' Only downhill. ', me);
    expect(alone).toMatchObject({
      ok: true,
      body: { question: idOf(300), words: 'Only downhill.', language: 'en' },
    });
    const tapped = { ...tappedAnswer(question, 'sock', me), later: 'kept' };
    const later = { ...me, at: '2026-06-02T08:00:00+02:00' };
    expect(wordedAnswer(question, 'Only downhill.', later, tapped)).toEqual({
      ok: true,
      body: { ...tapped, words: 'Only downhill.', language: 'en' },
    });
  });

  it('says what is wrong with the words', () => {
    expect(wordedAnswer(question, ' \n', me)).toEqual({ ok: false, why: 'missing' });
    const long = 'a'.repeat(MOST_WORDS + 1);
    expect(wordedAnswer(question, long, me)).toEqual({ ok: false, why: 'too-long' });
  });
});

describe('a message', () => {
  it('is about a pair and answers nothing', () => {
    const read = messageAbout(pair, 'The lace frays.', me);
    if (!read.ok) throw new Error(read.why);
    expect(read.body).toMatchObject({ tester: ADA, pair: idOf(101), words: 'The lace frays.' });
    expect(read.body).not.toHaveProperty('question');
    expect(readBody('answer', read.body)).toMatchObject({ ok: true });
  });
});
