/** What the place of questions says first, in both languages. */
import { describe, expect, it } from 'vitest';
import { places as english } from '../../../app/words/places/en/index.ts';
import { places as chinese } from '../../../app/words/places/zh/index.ts';
import { askHeadline, type AskFacts } from '../../../core/headlines/index.ts';
import { idOf } from '../records/make.ts';
import { sayForTests, sayInChinese } from './say.ts';

const doubt = (kind: AskFacts['toAsk'][number]['kind'], tester: number) => ({
  kind,
  tester: idOf(tester),
});
const quiet: AskFacts = { toAsk: [], waiting: 0, unread: 0 };
const pain = doubt('pain', 11);
const odd = [doubt('odd-run', 2), doubt('silence', 2), doubt('silence', 3)];

describe('the first line of what is to be asked', () => {
  it.each([
    ['pain alone', { toAsk: [pain] }, 'Ask T11 about the pain.'],
    [
      'pain first, whatever was answered',
      { toAsk: [pain, ...odd], unread: 2 },
      'Ask T11 about the pain first, then 3 things more.',
    ],
    [
      'pain of several, each once',
      { toAsk: [pain, pain, doubt('pain', 12)] },
      'Ask 2 testers about the pain.',
    ],
    ['answers', { unread: 1 }, '1 new answer to read.'],
    [
      'answers, then the rest',
      { unread: 2, toAsk: odd },
      '2 new answers to read, 3 things to ask.',
    ],
    ['things to ask', { toAsk: odd, waiting: 4 }, '3 things to ask 2 testers.'],
    ['one thing', { toAsk: [doubt('silence', 9)] }, '1 thing to ask T9.'],
    ['what waits', { waiting: 1 }, '1 question waits for an answer.'],
    ['nothing', {}, 'Nothing to ask right now.'],
  ] satisfies [string, Partial<AskFacts>, string][])('%s', (_, facts, said) => {
    const headline = askHeadline({ ...quiet, ...facts });
    const words = english.ask.headline(headline, sayForTests);
    expect(words).toBe(said);
    expect(words.split(/\s+/).length).toBeLessThanOrEqual(12);
    expect(headline.claims).toBe('nothing');
    const inChinese = chinese.ask.headline(headline, sayInChinese);
    expect(inChinese).toMatch(/。$/);
    expect(inChinese).not.toMatch(/ {2}|undefined|[\u3400-\u9fff][A-Za-z0-9]/);
  });
});
