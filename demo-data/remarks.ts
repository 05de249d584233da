/** What the invented testers add in their own words. Two of them write Chinese. */
import type { Complaint } from '../core/records/index.ts';
import type { Dice } from './random.ts';

/** Testers (from 0) who write Chinese. */
const CHINESE = new Set([2, 9]);

type Sentences = Readonly<Record<'en' | 'zh', readonly string[]>>;

const byKind: Readonly<Partial<Record<Complaint['kind'], Sentences>>> = {
  'heel-slip': {
    en: [
      'The heel lifts on every climb, even with the last eyelet laced.',
      'My heels slip when I push off uphill.',
      'Heel slips again. A second pair of socks helps a little.',
      'Fine on the flat, but the heel comes up on the stairs to the bridge.',
    ],
    zh: ['上坡时后跟一直往上提，系紧最后一个鞋眼也没用。', '后跟打滑，穿厚一点的袜子好一些。'],
  },
  pressure: {
    en: [
      'The little toe of the right foot is squeezed by the edge of the film.',
      'Something stiff presses on my right little toe from the side.',
      'I can feel the mudguard edge with every step, right foot only.',
    ],
    zh: ['右脚小趾被挡泥膜的边压着。', '右脚小趾旁边有一条硬边，每一步都顶到。'],
  },
  rubbing: {
    en: [
      'The left collar rubs the ankle bone. It gets better once the pair is worn in.',
      'Collar scratches my left ankle on the outside.',
      'Left ankle is red after the run. The edge of the collar is hard.',
    ],
    zh: ['左脚踝骨被领口磨红了。', '领口外侧偏高，左脚踝一直在蹭。'],
  },
  'hot-spot': {
    en: [
      'It burns under the ball of the foot from about halfway. Same in my own shoes.',
      'Hot under the ball again. I get this in every shoe.',
      'Burning under the forefoot, both feet. I had to walk the last bit.',
    ],
    zh: ['前掌下面发烫，自己的鞋也这样。'],
  },
  'bottoming-out': {
    en: [
      'The heel feels flat by now. I notice the ground on downhills.',
      'Hits hard at the outside of the heel when I am tired.',
    ],
    zh: ['后跟感觉没有弹性了，下坡能踩到底。', '后跟外侧有点触底。'],
  },
  overheating: {
    en: ['Warm day. The forefoot was hot and the sock came out wet.'],
    zh: ['天热，前掌很闷，袜子湿透了。'],
  },
};

const tongue: Sentences = {
  en: [
    'The tongue slides to the outside after half an hour. I pull it back at every light.',
    'Fine otherwise, but the tongue is never where I left it.',
    'The tongue has wandered to the little-toe side again. Lacing one eyelet higher did not help.',
    'Soft tongue, I like it, but it does not stay in the middle.',
  ],
  zh: ['鞋舌跑半小时就往外侧滑，每个红灯都要拉回来。', '鞋舌总是跑偏。'],
};

/** Words that name a complaint which the tester did not tap. */
const untapped: Sentences = {
  en: [
    'Good run. The heel lifts a little on the way down.',
    'No trouble, only my toes went a bit numb at the end.',
    'All good. The collar rubbed a little at the start.',
  ],
  zh: ['总体不错，就是下坡时后跟有点打滑。', '挺好，最后两公里脚趾有点麻。'],
};

const content: Sentences = {
  en: [
    'Easy run by the canal. I forgot that I had them on.',
    'Quick and light today.',
    'Good grip on the wet gravel.',
    'A smooth ride, nothing to report.',
    'The laces came undone twice.',
    'They look good. My neighbour asked what they are.',
  ],
  zh: ['今天跑得很顺，没什么可说的。', '湿碎石路上抓地不错。', '鞋带松了两次。'],
};

export interface RemarkOn {
  /** Testers and rounds count from 0. */
  readonly tester: number;
  readonly round: number;
  readonly complaints: readonly Complaint[];
}

/** The words that a tester adds to a run, or null if they add none. */
export const remarkOn = (dice: Dice, { tester, round, complaints }: RemarkOn): string | null => {
  const language = CHINESE.has(tester) ? 'zh' : 'en';
  // The new tongue of round 3 wanders for every second tester; the log's foot has no tongue to tap.
  if (round === 2 && tester % 2 === 1 && dice.chance(0.22)) return dice.pick(tongue[language]);
  const told = complaints.find(({ kind }) => byKind[kind] !== undefined);
  if (told) return dice.chance(0.35) ? dice.pick((byKind[told.kind] as Sentences)[language]) : null;
  if (dice.chance(0.02)) return dice.pick(untapped[language]);
  return dice.chance(0.07) ? dice.pick(content[language]) : null;
};
