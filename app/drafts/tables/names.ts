/** Words of surfaces, grounds and socks as spreadsheets write them, in both languages; pure. */
import type { TwoSidedId } from '../../../core/foot/index.ts';
import { grounds, socks, surfaces, type Run, type Surface } from '../../../core/records/index.ts';

type Ground = NonNullable<Run['ground']>;
type Sock = NonNullable<Run['sock']>;

/** Each name in lower case with what it means; the ids themselves are among them. */
const namesOf = <T extends string>(
  ids: readonly T[],
  more: Readonly<Record<T, string>>,
): ReadonlyMap<string, T> =>
  new Map(
    ids.flatMap((id) => [id, ...more[id].split(', ')].map((name): [string, T] => [name, id])),
  );

export const surfaceNames = namesOf<Surface>(surfaces, {
  road: 'asphalt, tarmac, pavement, street, 公路, 马路, 柏油, 柏油路, 路面, 水泥路',
  track: 'running track, tartan, 田径跑道, 跑道, 田径场, 塑胶跑道',
  treadmill: '跑步机',
  gravel: 'path, 碎石, 碎石路, 砂石路',
  trail: 'forest, 越野, 越野小径, 山路, 林道',
  grass: '草地',
  sand: 'beach, 沙地, 沙滩',
  snow: '雪, 雪地',
});

export const groundNames = namesOf<Ground>(grounds, {
  dry: '干, 干燥',
  damp: 'moist, 潮, 潮湿',
  wet: 'rain, 湿, 湿滑, 雨',
  mud: 'muddy, 泥, 泥泞',
  'snow-ice': 'snow, ice, snow or ice, 冰雪, 雪, 冰',
});

export const sockNames = namesOf<Sock>(socks, {
  none: 'no, 不穿, 无',
  thin: '薄',
  medium: 'normal, 中, 中等',
  thick: '厚',
});

export const yesNo: ReadonlyMap<string, 'yes' | 'no'> = new Map(
  (
    [
      ['yes', 'yes, y, true, 1, x, 是, 对, 盲'],
      ['no', 'no, n, false, 0, 否, 不'],
    ] as const
  ).flatMap(([id, names]) => names.split(', ').map((name): [string, 'yes' | 'no'] => [name, id])),
);

/** What is too little, and too much, of each two-sided question, as people write it. */
const ends: Readonly<Record<TwoSidedId, readonly [low: string, high: string]>> = {
  'heel-cushioning': ['too soft, 太软, 软', 'too firm, too hard, 太硬, 硬'],
  'forefoot-cushioning': ['too soft, 太软, 软', 'too firm, too hard, 太硬, 硬'],
  'fit-length': ['too short, 太短, 短', 'too long, 太长, 长'],
  'toe-room': ['too tight, too little, 太挤, 挤', 'too roomy, too much, 太空, 空'],
  'ball-width': ['too narrow, 太窄, 窄', 'too wide, 太宽, 宽'],
  arch: ['too flat, too low, 太平, 平', 'too high, 太顶, 顶'],
  'midfoot-hold': ['too loose, 太松, 松', 'too tight, 太紧, 紧'],
  'heel-hold': ['slips, too loose, 不跟脚, 掉跟', 'grips too hard, too tight, 太卡, 卡'],
  flexibility: ['too stiff, 太僵, 僵', 'too bendy, too soft, 太软塌, 软塌'],
  stability: ['too wobbly, 太晃, 晃', 'too controlling, 管得太死'],
  ventilation: ['too hot, 太闷, 闷', 'too cold, 太凉, 凉'],
};
const RIGHT = /^(?:just right|right|ok|good|正好|合适|刚好)$/;
/** How far off words lie: the middle of what the line calls "a little", "too" and "far too". */
const DEGREES: readonly (readonly [RegExp, number])[] = [
  [/^(?:a little |a bit |slightly |略|有点)| a little$/, 28],
  [/^(?:far |much |非常)| a lot$/, 88],
  [/^/, 58],
];

/** The mark that words say, -100 to 100; null: they say none. @param text in lower case */
export const markOfWords = (question: TwoSidedId, text: string): number | null => {
  if (RIGHT.test(text)) return 0;
  const [pattern, far] = DEGREES.find(([one]) => one.test(text)) ?? [/^/, 0];
  const end = text.replace(pattern, '');
  const side = ends[question].findIndex((names) => names.split(', ').includes(end));
  return side < 0 ? null : side === 0 ? -far : far;
};
