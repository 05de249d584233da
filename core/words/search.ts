/**
 * Which texts hold the words that are looked for, and where in them?
 *
 * English words are compared by their stem (Porter, An algorithm for suffix stripping, Program 14, 1980) or by how they
 * begin; Chinese is cut into words by the platform and each word is found wherever it stands, because the same word is
 * cut differently in another sentence. All words that are looked for must be there.
 */
import { stemmer } from 'stemmer';
import { fold, type Folded } from './fold.ts';
import { twinOf } from './twins.ts';

/** From … to, in the text as it was written. */
export type Hit = readonly [from: number, to: number];

/** A text made ready to be searched. */
export interface Searchable {
  readonly folded: Folded;
  /** Latin words with their stems. */
  readonly words: readonly {
    readonly from: number;
    readonly word: string;
    readonly stem: string;
  }[];
}

interface Term {
  readonly kind: 'latin' | 'chinese';
  /** A stem and the word itself, or a Chinese word. */
  readonly stem: string;
  readonly word: string;
}

/** One word that is looked for, in either language. */
export type Wanted = readonly Term[];

/** Shorter beginnings of a word are found as a whole word only. */
const LEAST_BEGINNING = 3;

const LATIN = /[\p{Script=Latin}\p{Nd}]+/gu;
const CHINESE = /\p{Script=Han}+/gu;

const stems = new Map<string, string>();
/** Each word is stemmed once: the same few thousand come in every text. */
const stemOf = (word: string): string => {
  const known = stems.get(word);
  if (known !== undefined) return known;
  const stem = stemmer(word);
  stems.set(word, stem);
  return stem;
};

export const searchable = (text: string): Searchable => {
  const folded = fold(text);
  const words = [...folded.text.matchAll(LATIN)].map(({ 0: word, index }) => ({
    from: index,
    word,
    stem: stemOf(word),
  }));
  return { folded, words };
};

/** A platform that cannot cut a run of Chinese signs gives it as one. */
const cut = (run: string): readonly string[] =>
  typeof Intl.Segmenter === 'function'
    ? [...new Intl.Segmenter('zh', { granularity: 'word' }).segment(run)].map(
        ({ segment }) => segment,
      )
    : [run];

/** A run of Chinese signs as words. Words of the shoe stay whole: a platform may cut 鞋舌 into 鞋 and 舌. */
const chineseWords = (run: string): readonly string[] => {
  const words: string[] = [];
  for (const word of cut(run)) {
    const both = `${words.at(-1) ?? ''}${word}`;
    if (words.length > 0 && twinOf(both) !== null) words[words.length - 1] = both;
    else words.push(word);
  }
  return words;
};

/** A word with the same in the other language. */
export const withTwin = (term: Term): Wanted => {
  const twin = twinOf(term.stem);
  if (twin === null) return [term];
  const kind = term.kind === 'latin' ? 'chinese' : 'latin';
  return [term, { kind, stem: kind === 'latin' ? stemOf(twin) : twin, word: twin }];
};

/** The words of a search; none where it holds none. */
export const wantedIn = (search: string): readonly Wanted[] => {
  const { text } = fold(search);
  const latin = [...text.matchAll(LATIN)].map(([word]): Term => ({
    kind: 'latin',
    stem: stemOf(word),
    word,
  }));
  const chinese = [...text.matchAll(CHINESE)]
    .flatMap(([run]) => chineseWords(run))
    .map((word): Term => ({ kind: 'chinese', stem: word, word }));
  return [...latin, ...chinese].map(withTwin);
};

/** What a search finds beside what was typed: the twins of its words. */
export const alsoFound = (wanted: readonly Wanted[]): readonly string[] =>
  wanted.flatMap(([, ...twins]) => twins.map(({ word }) => word));

const latinHits = ({ folded, words }: Searchable, { stem, word }: Term): Hit[] =>
  words
    .filter(
      (one) => one.stem === stem || (word.length >= LEAST_BEGINNING && one.word.startsWith(word)),
    )
    .map((one) => [folded.at(one.from), folded.at(one.from + one.word.length)]);

const chineseHits = ({ folded }: Searchable, { word }: Term): Hit[] => {
  const hits: Hit[] = [];
  for (let from = folded.text.indexOf(word); from >= 0; from = folded.text.indexOf(word, from + 1))
    hits.push([folded.at(from), folded.at(from + word.length)]);
  return hits;
};

const hitsOf = (text: Searchable, wanted: Wanted): readonly Hit[] =>
  wanted.flatMap((term) =>
    term.kind === 'latin' ? latinHits(text, term) : chineseHits(text, term),
  );

/** Sorted, and those that touch as one. */
export const joinedHits = (hits: readonly Hit[]): readonly Hit[] => {
  const all: [number, number][] = [];
  for (const [from, to] of hits.toSorted((a, b) => a[0] - b[0])) {
    const last = all.at(-1);
    if (last && from <= last[1]) last[1] = Math.max(last[1], to);
    else all.push([from, to]);
  }
  return all;
};

/** Where the words stand; null where one of them is missing. Nothing looked for: found, without a hit. */
export const hitsIn = (text: Searchable, wanted: readonly Wanted[]): readonly Hit[] | null => {
  const found: Hit[] = [];
  for (const one of wanted) {
    const hits = hitsOf(text, one);
    if (hits.length === 0) return null;
    found.push(...hits);
  }
  return joinedHits(found);
};

/**
 * Whether texts hold the words of a search between them; a search without a word finds nothing.
 * @returns asks of several texts of one thing; one that is not there says nothing
 */
export const textFinder = (
  search: string,
): ((texts: readonly (string | undefined)[]) => boolean) => {
  const wanted = wantedIn(search);
  return (texts) =>
    wanted.length > 0 && hitsIn(searchable(texts.filter(Boolean).join('\n')), wanted) !== null;
};
