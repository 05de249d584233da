/** Words of surfaces, grounds and socks as spreadsheets write them, in both languages; pure. */
import { grounds, surfaces, type Run, type Surface } from '../../../core/records/index.ts';

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

export const sockNames = namesOf<Sock>(['none', 'thin', 'medium', 'thick'], {
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
