/** What the dictionary names in invented sentences, and what it leaves alone: denied, over, of another shoe. */
import { describe, expect, it } from 'vitest';
import { mentionsIn } from '../../../core/words/index.ts';

const named = (text: string): readonly string[] =>
  mentionsIn(text).map(({ zone, kind }) => `${zone ?? '-'} ${kind ?? '-'}`);

describe('the dictionary names', () => {
  it.each([
    ['My heel slips on every climb.', ['U10 heel-slip']],
    ['Heels lift a little', ['U10 heel-slip']],
    ['Toes went numb after an hour.', ['P2 numbness']],
    ['The laces bite into the top of my foot.', ['U5 lace-bite']],
    ['The collar is high, it rubs.', ['U8 rubbing']],
    ['No trouble, only the arch digs in a bit.', ['P6 arch-pressure']],
    ['I slipped on wet leaves twice.', ['- slipping']],
    ['The tongue slides to the outside.', ['U5 -']],
    ['Hits hard at the outside of the heel.', ['P9 harsh']],
    ['后跟一直往上提。', ['U10 heel-slip']],
    ['小脚趾被压得难受。', ['U3 pressure']],
    ['左脚踝骨磨红了。', ['U8 rubbing']],
    ['大脚趾发麻，别的都好。', ['P1 numbness']],
    ['下坡时后跟踩到底了。', ['P9 bottoming-out']],
    ['鞋舌往外跑偏。', ['U5 -']],
  ] as const)('%s', (text, mentions) => {
    expect(named(text)).toEqual(mentions);
  });
});

describe('the dictionary leaves alone', () => {
  it.each([
    'No heel slip.',
    'No heel slip or hot spots today.',
    'The heel never slipped, not even uphill.',
    "It doesn't rub any more.",
    'Nothing pinches.',
    'Heel slip? None.',
    'The rubbing at the collar is gone.',
    'My old pair rubbed at the heel.',
    'I expected heel slip.',
    'Good grip on wet gravel.',
    'The heel feels great.',
    'A smooth ride, nothing to report.',
    '没有掉跟。',
    '后跟不打滑了。',
    '脚踝不磨。',
    '以前那双磨脚。',
    '湿碎石路上抓地不错。',
    '今天很轻快。',
    '',
  ])('%s', (text) => {
    expect(named(text)).toEqual([]);
  });
});
