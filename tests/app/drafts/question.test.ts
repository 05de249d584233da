/** What a lead types of a question becomes a record that the tester reads as it was meant; and back again. */
import { describe, expect, it } from 'vitest';
import {
  ASKS_OWN,
  beginQuestion,
  chooseAsk,
  chooseTester,
  MOST_WORDS,
  offeredOptions,
  readQuestion,
  withdrawn,
  type QuestionDraft,
} from '../../../app/drafts/question.ts';
import { readBody, type AskId } from '../../../core/records/index.ts';
import { asks, optionsOf } from '../../../core/talk/index.ts';
import { idOf } from '../../core/records/make.ts';

const [ADA, BEN, PAIR] = [idOf(201), idOf(202), idOf(101)];
const say = (ask: AskId) => `ready-made ${ask}`;
const facts = {
  ...{ project: idOf(1), at: '2026-06-01T08:00:00+02:00', language: 'zh', say },
  about: { record: { id: idOf(1000), kind: 'run' as const }, pair: PAIR },
};
const begun = beginQuestion(ADA, 'sock-or-shoe', say);
const typed = (more: Partial<QuestionDraft>): QuestionDraft => ({ ...begun, ...more });
const bodyOf = (draft: QuestionDraft, more: Partial<typeof facts> = {}) => {
  const read = readQuestion(draft, { ...facts, ...more });
  if (!read.ok) throw new Error(JSON.stringify(read.troubles));
  expect(readBody('question', read.body)).toMatchObject({ ok: true });
  return read.body;
};

describe('a question to a tester', () => {
  it('is ready-made where its words were not touched: the tester reads it in their language', () => {
    const { project, at, about } = facts;
    expect(bodyOf(begun)).toEqual({ project, tester: ADA, at, about, ask: 'sock-or-shoe' });
    expect(bodyOf(typed({ words: `  ${say('sock-or-shoe')} ` }))).not.toHaveProperty('words');
  });

  it('keeps what was changed of the words, in the language of the lead, with the same taps', () => {
    const body = bodyOf(typed({ words: ' Was it the thin sock? ' }));
    expect(body).toMatchObject({ words: 'Was it the thin sock?', language: 'zh' });
    expect(optionsOf(body)).toEqual(optionsOf({ ask: 'sock-or-shoe' }));
  });

  it('in own words offers what was chosen to tap, or nothing', () => {
    const own = typed({ ask: '', words: 'How is it going?', answers: 'words' });
    expect(bodyOf(own)).not.toHaveProperty('options');
    expect(bodyOf(own)).not.toHaveProperty('ask');
    expect(offeredOptions(own)).toEqual([]);
    const tapped = typed({ ...own, answers: 'yes-no' });
    expect(bodyOf(tapped).options).toEqual(['yes', 'no', 'partly']);
    expect(offeredOptions(tapped)).toEqual(['yes', 'no', 'partly']);
  });

  it('what the form shows to tap is what the tester gets, for every question and choice', () => {
    for (const ask of [...(Object.keys(asks) as AskId[]), ''] as const)
      for (const answers of [ASKS_OWN, 'words', 'yes-no', 'foot', 'now', 'change'] as const) {
        const draft = typed({ ask, answers, words: 'How is it?' });
        const always = ['dont-know', 'skipped'];
        expect(optionsOf(bodyOf(draft))).toEqual([...offeredOptions(draft), ...always]);
      }
  });

  it('is about nothing where it is asked in general', () => {
    expect(bodyOf(begun, { about: {} as typeof facts.about })).not.toHaveProperty('about');
  });

  it('says everything that is missing at once', () => {
    expect(readQuestion(typed({ tester: '', words: ' ' }), facts)).toEqual({
      ok: false,
      troubles: { tester: 'missing', words: 'missing' },
    });
    expect(readQuestion(typed({ words: 'a'.repeat(MOST_WORDS + 1) }), facts)).toEqual({
      ok: false,
      troubles: { words: 'too-long' },
    });
    expect(readQuestion(typed({ words: 'a'.repeat(MOST_WORDS) }), facts).ok).toBe(true);
  });
});

describe('the draft of a question', () => {
  it('takes the words of the question that is chosen', () => {
    const next = chooseAsk(begun, 'pain-now', say);
    expect(next).toEqual({ ...begun, ask: 'pain-now', words: say('pain-now') });
    expect(chooseAsk(begun, '', say)).toMatchObject({ ask: '', words: '', answers: 'words' });
  });

  it('keeps what was typed where it becomes the lead’s own', () => {
    const next = chooseAsk(typed({ words: 'Was it the thin sock?' }), '', say);
    expect(next).toMatchObject({ ask: '', words: 'Was it the thin sock?' });
    expect(chooseAsk(next, '', say).words).toBe('Was it the thin sock?');
  });

  it('says the pair of whoever is asked instead, and leaves what was typed', () => {
    const of = (code: string) => (ask: AskId) => `${ask} ${code}`;
    const draft = beginQuestion(ADA, 'still-running', of('637'));
    const saying = { before: of('637'), now: of('988') };
    expect(chooseTester(draft, BEN, saying)).toEqual({
      ...draft,
      tester: BEN,
      words: 'still-running 988',
    });
    const own = { ...draft, words: 'Still going?' };
    expect(chooseTester(own, BEN, saying)).toEqual({ ...own, tester: BEN });
  });
});

describe('a question that is withdrawn', () => {
  it('says when, keeps the rest, and can be asked again', () => {
    const body = { ...bodyOf(begun), later: 'kept' };
    const gone = withdrawn(body, facts.at);
    expect(gone).toEqual({ ...body, withdrawn: facts.at });
    expect(withdrawn(gone, null)).toEqual(body);
  });
});
