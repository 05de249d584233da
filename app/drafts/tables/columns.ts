/** Which kind of record does a table hold, and what stands in which column? Read from its head; pure. */
import { twoSidedIds, type TwoSidedId } from '../../../core/foot/index.ts';

/** What can be brought in, in the order in which a test needs it. */
export const tableKinds = ['testers', 'pairs', 'hand-outs', 'runs'] as const;
export type TableKind = (typeof tableKinds)[number];

/** The columns of each kind; in brackets no row can be read without them. */
const words = {
  testers: '[code] name length length-left length-right width girth mass height',
  pairs: '[code] [size] round carried',
  'hand-outs': '[pair] [tester] [from] until blind',
  runs: '[tester] [pair] [date] [distance] clock time surface ground temperature sock comfort pain words',
} as const;

/** The words of a text, without their brackets. */
type Words<Text extends string> = Text extends `${infer First} ${infer Rest}`
  ? Words<First> | Words<Rest>
  : Text extends `[${infer Word}]`
    ? Word
    : Text;

/** A comfort question whose good point is in the middle, and its column among those of a run. */
export type MarkColumn = `mark-${TwoSidedId}`;
export type Column = Words<(typeof words)[TableKind]> | MarkColumn;

export const markColumns = twoSidedIds.map((id) => ({ id, column: `mark-${id}` as const }));

const listed = (kind: TableKind): readonly string[] => [
  ...words[kind].split(' '),
  ...(kind === 'runs' ? markColumns.map(({ column }) => column) : []),
];

export const columnsOf = (kind: TableKind): readonly Column[] =>
  listed(kind).map((word) => word.replace(/[[\]]/g, '') as Column);

export const neededOf = (kind: TableKind): readonly Column[] =>
  listed(kind).flatMap((word) => (word.startsWith('[') ? [word.slice(1, -1) as Column] : []));

/** A unit that a head names. */
export type HeadUnit =
  'km' | 'mi' | 'm' | 'min' | 'h' | 's' | 'mm' | 'cm' | 'F' | 'C' | 'eu' | 'uk' | 'us' | 'ten';

const UNITS: readonly (readonly [HeadUnit, RegExp])[] = [
  ['km', /^(?:km|kms|kilomet(?:er|re)s?|公里|千米)$/],
  ['mi', /^(?:mi|miles?|英里)$/],
  ['min', /^(?:min|mins|minutes?|分钟?)$/],
  ['h', /^(?:h|hrs?|hours?|小时)$/],
  ['s', /^(?:s|secs?|seconds?|秒)$/],
  ['mm', /^(?:mm|mondo|mondopoint|millimet(?:er|re)s?|毫米)$/],
  ['cm', /^(?:cm|厘米)$/],
  ['m', /^(?:m|met(?:er|re)s?|米)$/],
  ['F', /^(?:°?f|℉|华氏度?)$/],
  ['C', /^(?:°?c|℃|摄氏度?)$/],
  ['eu', /^(?:eu|eur|欧码)$/],
  ['uk', /^(?:uk|英码)$/],
  ['us', /^(?:us|美码)$/],
  ['ten', /^(?:10)$/],
];

/** Units that say nothing that is read, and words between. */
const FILLERS = /^(?:kg|公斤|千克|of|in|the|for|a|100|0|h?mm?ss|hh)$/;

const unitOf = (token: string): HeadUnit | null =>
  UNITS.find(([, names]) => names.test(token))?.[0] ?? null;

export interface ReadHead {
  /** Letters, digits and Chinese characters alone, in lower case, without the unit. */
  readonly name: string;
  readonly unit: HeadUnit | null;
}

const HAN_UNIT = /(公里|千米|英里|分钟|小时|毫米|厘米|欧码|英码|美码)$/;

/** What a head says, and in which unit: `Distance (km)`, `distance_km`, `距离（公里）`. */
export const readHead = (head: string): ReadHead => {
  const plain = head.normalize('NFKC').toLowerCase().replace(HAN_UNIT, ' $1');
  const tokens = plain.split(/[^\p{L}\p{N}°℃℉]+/u).filter((token) => token !== '');
  let unit: HeadUnit | null = null;
  const names: string[] = [];
  for (const token of tokens) {
    const named = unitOf(token);
    if (named !== null) unit ??= named;
    else if (!FILLERS.test(token)) names.push(token);
  }
  return { name: names.join(''), unit };
};

/** Heads as spreadsheets of such tests have them; of the same column in any order. Judgement, no source. */
const HEADS: Readonly<Record<string, RegExp>> = {
  tester:
    /^(?:testers?|testercode|codetester|testerid|runner|wearer|试穿员|试穿员代号|试穿人|测试员|跑者|跑步者)$/,
  pair: /^(?:pairs?|paircode|pairno|pairid|shoes?|sample|samplecode|label|样鞋|样鞋代号|鞋号|鞋|编号)$/,
  code: /^(?:code|no|id|number|代号|编号|代码)$/,
  name: /^(?:name|fullname|testername|姓名|名字)$/,
  length: /^(?:length|footlength|foot|feet|脚长|足长)$/,
  'length-left': /^(?:left|l|footlengthleft|leftfoot|leftfootlength|lengthleft|左脚长?|左足长?)$/,
  'length-right':
    /^(?:right|r|footlengthright|rightfoot|rightfootlength|lengthright|右脚长?|右足长?)$/,
  width: /^(?:width|footwidth|脚宽|足宽)$/,
  girth: /^(?:girth|ballgirth|脚围|跖围|掌围)$/,
  mass: /^(?:mass|weight|bodyweight|bodymass|体重)$/,
  height: /^(?:height|bodyheight|身高)$/,
  size: /^(?:size|shoesize|尺码|鞋码|码数)$/,
  round: /^(?:rounds?|build|轮次?|第几轮)$/,
  carried: /^(?:carried|carriedin|before|distancebefore|worn|已跑|此前距离|此前公里)$/,
  from: /^(?:from|since|handedout|handedouton|out|start|发放日?|发放日期|发出|开始|自)$/,
  until: /^(?:until|to|returned|returnedon|back|end|归还日?|归还日期|收回|结束|至)$/,
  blind: /^(?:blind|盲测|盲)$/,
  date: /^(?:date|day|rundate|startedat|日期|跑步日期|时间日期)$/,
  clock: /^(?:clock|starttime|start|timeofday|startedatclock|开始时间|出发时间|钟点)$/,
  distance: /^(?:distance|dist|length|距离|跑量|里程)$/,
  time: /^(?:time|duration|movingtime|runtime|elapsed|用时|时长|时间|耗时)$/,
  surface: /^(?:surfaces?|groundtype|路面|场地)$/,
  ground: /^(?:ground|wet|conditions|地面|干湿)$/,
  temperature: /^(?:temperature|temp|气温|温度)$/,
  sock: /^(?:socks?|袜子?)$/,
  comfort: /^(?:comfort|overall|overallcomfort|comfortoverall|score|舒适度?|整体舒适度?)$/,
  pain: /^(?:pain|painscore|疼痛|疼痛评分)$/,
  words: /^(?:words?|notes?|comments?|remarks?|feedback|留言|备注|评语|反馈|原话)$/,
};

/**
 * Names of the two-sided questions. A head must say that it is one of those, because older tables score the same things
 * from bad to good, and the two are never mixed: `heel cushioning two-sided`, `后跟缓震（双向）`.
 */
const MARKS: Readonly<Record<TwoSidedId, string>> = {
  'heel-cushioning': 'heelcushioning|后跟缓震',
  'forefoot-cushioning': 'forefootcushioning|前掌缓震',
  'fit-length': 'fitlength|length|长度',
  'toe-room': 'toeroom|鞋头空间',
  'ball-width': 'ballwidth|widthatball|跖围处宽度|跖围宽度',
  arch: 'arch|足弓',
  'midfoot-hold': 'midfoothold|中足包裹',
  'heel-hold': 'heelhold|后跟包裹',
  flexibility: 'flexibility|flexibilityforefoot|前掌弯折性|弯折性',
  stability: 'stability|稳定性',
  ventilation: 'ventilation|透气性',
};
const TWO_SIDED = '(?:twosided|mark|双向|标记)(?:to)?';

/** Other names of a kind's own code. */
const OWN_CODE: Readonly<Partial<Record<TableKind, string>>> = { testers: 'tester', pairs: 'pair' };

/** What a head means if it is a unit alone. */
const BY_UNIT: Readonly<Partial<Record<HeadUnit, Column>>> = { km: 'distance', mi: 'distance' };

const isMark = (column: Column, name: string): boolean =>
  markColumns.some(
    (one) => one.column === column && new RegExp(`^(?:${MARKS[one.id]})${TWO_SIDED}$`).test(name),
  );

const isHead = (kind: TableKind, column: Column, name: string): boolean =>
  isMark(column, name) ||
  HEADS[column]?.test(name) === true ||
  (column === 'code' && HEADS[OWN_CODE[kind] ?? '']?.test(name) === true);

/** The column of each head for a kind; null: it is none, or an earlier head is that column. */
export const columnsIn = (head: readonly string[], kind: TableKind): readonly (Column | null)[] => {
  const taken = new Set<Column>();
  const own = columnsOf(kind);
  return head.map((one) => {
    const { name, unit } = readHead(one);
    const column =
      name === '' && unit !== null
        ? BY_UNIT[unit]
        : own.find((candidate) => isHead(kind, candidate, name));
    if (column === undefined || !own.includes(column) || taken.has(column)) return null;
    taken.add(column);
    return column;
  });
};

/** `bench`: a table of bench readings, which has its own reader; null: no kind's needed columns are all there. */
export const kindOf = (head: readonly string[]): TableKind | 'bench' | null => {
  const names = new Set(head.map((one) => readHead(one).name));
  const has = (pattern: RegExp) => [...names].some((name) => pattern.test(name));
  if (has(/^(?:measure|测量项目|项目)$/) && has(/^(?:value|读数|数值)$/)) return 'bench';
  const whole = tableKinds
    .map((kind) => ({ kind, columns: columnsIn(head, kind).filter((column) => column !== null) }))
    .filter(({ kind, columns }) => neededOf(kind).every((column) => columns.includes(column)));
  return whole.toSorted((a, b) => b.columns.length - a.columns.length)[0]?.kind ?? null;
};
