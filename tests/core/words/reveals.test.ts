/** A question that tells what was changed is warned about; one that asks what is felt is not. */
import { describe, expect, it } from 'vitest';
import { revealsChange } from '../../../core/words/index.ts';

const english = [
  { what: 'Collar 3 mm lower on the lateral side', part: 'upper-pattern' },
  { what: 'Mudguard film cut back 6 mm from the little toe', part: 'upper-material' },
  { what: 'Foam of a new batch, density up by 6 %', part: 'midsole-foam' },
];
const chinese = [{ what: '鞋舌加厚，眼片后移 2 毫米' }, { what: '后套换成软一级' }];
const told = (question: string, changes: Parameters<typeof revealsChange>[1] = english) =>
  revealsChange(question, changes).map(({ change, words }) => [change, ...words]);

describe('a question', () => {
  it.each([
    ['Is the collar still too high?', [[0, 'collar']]],
    ['Do the collars rub?', [[0, 'collars']]],
    ['Can you feel the edge of the film now?', [[1, 'film']]],
    [
      'Is the FOAM firmer, and the mudguard shorter?',
      [
        [1, 'mudguard'],
        [2, 'FOAM'],
      ],
    ],
    ['Does the midsole bottom out?', [[2, 'midsole']]],
    ['领口还磨吗？', [[0, '领口']]],
  ] as const)('%s names the change', (question, words) => {
    expect(told(question)).toEqual(words);
  });

  it.each([
    ['鞋舌还会跑偏吗？', [[0, '鞋舌']]],
    ['Did the tongue slide?', [[0, 'tongue']]],
    [
      '眼片和后套感觉怎么样？',
      [
        [0, '眼片'],
        [1, '后套'],
      ],
    ],
  ] as const)('%s names a change that was written in Chinese', (question, words) => {
    expect(told(question, chinese)).toEqual(words);
  });

  it.each([
    'What rubbed the ankle on your 12 km on Sunday?',
    'Does it press on the little toe, 3 or 6 km into the run?',
    'Was it the sock?',
    'Is the heel still slipping?',
    'Which foot hurts more now?',
    'How many percent of your runs were on trail?',
    '踝骨那里还磨吗？',
    '小脚趾还压吗？跑到第几公里开始？',
    '是鞋还是袜子的原因？',
  ])('%s tells nothing', (question) => {
    expect(told(question)).toEqual([]);
    expect(told(question, chinese)).toEqual([]);
  });

  it.each([
    ['We lowered it: better?', 'We lowered'],
    ['Is it better since it was changed?', 'changed'],
    ['鞋子改过之后还疼吗？', '改过'],
    ['新版舒服一点吗？', '新版'],
  ])('%s says that something was changed, whatever the list', (question, words) => {
    expect(revealsChange(question, [])).toMatchObject([{ change: null, words: [words] }]);
  });

  it('names what is structured, though the words of the change do not', () => {
    const change = {
      what: '降低三毫米',
      structured: { part: 'upper-pattern', line: 'heel-counter' },
    };
    expect(told('Does the counter cut in?', [change])).toEqual([[0, 'counter']]);
  });

  it('marks the words where they stand', () => {
    const question = 'So: does the ＣＯＬＬＡＲ rub?';
    const [found] = revealsChange(question, english);
    expect(found?.hits.map(([from, to]) => question.slice(from, to))).toEqual(['ＣＯＬＬＡＲ']);
  });

  it('that is empty, or a list that is, says nothing', () => {
    expect(told('')).toEqual([]);
    expect(revealsChange('Is the collar too high?', [])).toEqual([]);
  });
});
