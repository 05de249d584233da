/** Words of the shoe and what is felt in it, in both languages: who looks for one finds the other. Common practice, no source. */
import { stemmer } from 'stemmer';

const twins: readonly (readonly [english: string, chinese: string])[] = [
  ['tongue', '鞋舌'],
  ['lace', '鞋带'],
  ['eyelet', '鞋眼'],
  ['collar', '领口'],
  ['ankle', '踝'],
  ['heel', '后跟'],
  ['toe', '趾'],
  ['forefoot', '前掌'],
  ['arch', '足弓'],
  ['instep', '脚背'],
  ['achilles', '跟腱'],
  ['insole', '鞋垫'],
  ['outsole', '大底'],
  ['midsole', '中底'],
  ['upper', '鞋面'],
  ['edge', '边'],
  ['sock', '袜'],
  ['blister', '水泡'],
  ['numb', '麻'],
  ['pain', '痛'],
  ['rub', '磨'],
  ['slip', '滑'],
  ['tight', '紧'],
  ['loose', '松'],
  ['grip', '抓地'],
  ['stone', '石'],
  ['noise', '响'],
  ['hot', '烫'],
  ['stiff', '硬'],
];

const byEnglish = new Map(twins.map(([english, chinese]) => [stemmer(english), chinese]));
const byChinese = new Map(twins.map(([english, chinese]) => [chinese, english]));

/** The same in the other language; null: not in the list. @param stem of an English word, or a Chinese word */
export const twinOf = (stem: string): string | null =>
  byEnglish.get(stem) ?? byChinese.get(stem) ?? null;
