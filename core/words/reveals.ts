/**
 * Does a question tell what was changed? It warns where its words are those of the round's list of changes, in either
 * language. Words of the foot, of what is felt and of everyday speech tell nothing by themselves.
 */
import { stemmer } from 'stemmer';
import { fold } from './fold.ts';
import {
  hitsIn,
  joinedHits,
  searchable,
  wantedIn,
  withTwin,
  type Hit,
  type Wanted,
} from './search.ts';

/** A change as far as its words go. */
export interface ToldChange {
  readonly what: string;
  readonly part?: string | undefined;
  readonly structured?: { readonly part: string; readonly line?: string | undefined } | undefined;
}

export interface Revealed {
  /** Where in the list the change stands whose words are used; null: the words say that something was changed. */
  readonly change: number | null;
  /** The words of the question that tell it, as they were written. */
  readonly words: readonly string[];
  readonly hits: readonly Hit[];
}

/** Everyday words, the foot, and what is felt: a question cannot do without them. Common practice, no source. */
const plainEnglish =
  `a about after again all also am an and any are as at be been before both but by can could did do does down each
  either ever every feel felt for from get got had has have he her here him his how i if in into is it its just kg km
  last left less like little lot made make many may me mean min mm more most much my new next no none not now of off on
  one only or other our out over own percent per put right run runs same see she shoe shoes should side since small so
  some still such than that the their them then there these they thing this those through time times to today too two
  under until up upper use used very was way we well were what when where which while who why will with would yes
  yesterday you your
  ankle arch ball big bone foot feet forefoot heel instep leg midfoot nail toe
  ache bad bite blister burn cold comfort damp dry good grip hard hot hurt itch numb pain press pressure problem
  rub slide slip soft sore stop swell tight loose warm wet
  day days distance kilometre kilometer metre meter month morning evening night minute pace pair pairs sample test
  tester week start end`
    .trim()
    .split(/\s+/);
const plainStems: ReadonlySet<string> = new Set(plainEnglish.map((word) => stemmer(word)));

const plainChinese = `这双 那双 样鞋 鞋子 这个 那个 什么 怎么 怎样 哪里 哪个 哪只 哪边 是否 还是 还有 还会 没有 有没 现在 之前 之后 以后 以前
  今天 昨天 一次 几次 每次 跑步 跑完 开始 公里 千米 毫米 厘米 公斤 分钟 小时 时候 左脚 右脚 左侧 右侧 左边 右边 两侧 双脚 内侧 外侧
  大脚趾 小脚趾 大趾 小趾 脚趾 脚踝 踝骨 后跟 脚后跟 前掌 前脚掌 足弓 脚背 脚面 脚跟 足跟 脚底 跟腱 感觉 舒服 不舒服 疼痛 还疼
  摩擦 磨脚 压迫 压脚 打滑 水泡 紧绷 发麻 问题 地方 原因 情况 位置 试穿 测试 轮次 你们 我们 他们 可以 需要 一点 有点 比较 同样 一样
  明显 觉得 袜子 处理 部分 其他 左右 上面 下面 里面 外面`;

/** Signs of grammar: two that stand beside each other across them are no word. */
const GRAMMAR = /[的了吗呢吧是不在和与或就也都还很太再这那你我它其把被从到向往由为]/u;

/** Each two neighbouring signs: the platform cuts 眼片 and its like into single signs. */
const chinesePairs = (text: string): readonly string[] =>
  [...fold(text).text.matchAll(/\p{Script=Han}+/gu)].flatMap(([run]) => {
    const signs = [...run];
    return signs.slice(1).map((sign, at) => `${signs[at] ?? ''}${sign}`);
  });

const isTellingPair = (pair: string): boolean =>
  !GRAMMAR.test(pair) && !plainChinese.includes(pair);

/** Says by itself that something is not as it was. */
const saysChange =
  /\b(?:changed|modified|redesign\w*|re-?worked|replaced|altered|swapped|improved (?:shoe|sample|version|pair)|new (?:version|shoe|upper|midsole|outsole|foam|last|lining|collar|tongue)|we (?:made|moved|cut|lowered|raised|widened|narrowed|softened|stiffened))\b|改了|改过|改动|修改|改进|改良|换了|换成|更换|新版|新款|加厚了|减薄了|加宽了|收窄了/g;

/** Figures say nothing without their thing: "after 3 km" is not "3 mm lower". */
const isFigure = (word: string): boolean => /^\p{Nd}+$/u.test(word);

const isTelling = (word: string, stem: string): boolean =>
  word.length > 2 && !isFigure(word) && !plainStems.has(stem);

/** Two signs as they are looked for, with the English word of the same thing. */
const asChinese = (pair: string): Wanted => withTwin({ kind: 'chinese', stem: pair, word: pair });

/** What a change says, the ids of its part and line as words. */
const textOf = ({ what, part, structured }: ToldChange): string =>
  [what, part, structured?.part, structured?.line]
    .flatMap((one) => (one === undefined ? [] : [one.replaceAll('-', ' ')]))
    .join(' ');

/**
 * What of a question tells a tester what was changed; empty: nothing that this can see. It warns, and forbids nothing.
 * @param changes of the rounds whose pairs the tester wears, or of those that a finding is about
 */
export const revealsChange = (
  question: string,
  changes: readonly ToldChange[],
): readonly Revealed[] => {
  const text = searchable(question);
  const said = (hits: readonly Hit[]) => [
    ...new Set(hits.map(([from, to]) => question.slice(from, to))),
  ];
  const byChange = changes.flatMap((change, at): readonly Revealed[] => {
    const told = textOf(change);
    const latin = wantedIn(told).filter(
      ([own]) => own?.kind === 'latin' && isTelling(own.word, own.stem),
    );
    const pairs = chinesePairs(told).filter(isTellingPair).map(asChinese);
    const hits = joinedHits([...latin, ...pairs].flatMap((one) => hitsIn(text, [one]) ?? []));
    return hits.length === 0 ? [] : [{ change: at, words: said(hits), hits }];
  });
  const folded = fold(question);
  const bare = [...folded.text.matchAll(saysChange)].map(({ 0: word, index }): Hit => [
    folded.at(index),
    folded.at(index + word.length),
  ]);
  return bare.length === 0
    ? byChange
    : [...byChange, { change: null, words: said(bare), hits: bare }];
};
