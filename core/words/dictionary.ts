/**
 * Which zones and complaints does a text name? A plain dictionary by language, clause by clause: a complaint that is
 * denied, of another shoe or only expected is not named, and a zone alone is named only where something is wrong with
 * it. What it finds is asked about and never counted. The words are common practice, no source; how well they do stands
 * in DEVELOPERS.md.
 */
import { isPlausible, type ComplaintKind, type ZoneCode } from '../foot/index.ts';
import { english } from './dictionary-en.ts';
import type { Dictionary, KindWords, Mention, ZoneWords } from './dictionary-types.ts';
import { chinese } from './dictionary-zh.ts';
import { fold } from './fold.ts';

/** Complaints of landing, of the foam and of the outsole: at the heel they are of the sole. */
const ofTheSole: ReadonlySet<ComplaintKind> = new Set<ComplaintKind>([
  'bottoming-out',
  'harsh',
  'slipping',
  'hot-spot',
  'unstable',
]);

interface Found<T> {
  readonly what: T;
  readonly from: number;
  readonly to: number;
}

/** Each place of the clause is taken once, by the first that matches it. */
const found = <T extends { readonly words: RegExp }>(
  clause: string,
  all: readonly T[],
): readonly Found<T>[] => {
  const taken: Found<T>[] = [];
  for (const what of all)
    for (const match of clause.matchAll(what.words)) {
      const [from, to] = [match.index, match.index + match[0].length];
      if (!taken.some((one) => from < one.to && to > one.from)) taken.push({ what, from, to });
    }
  return taken.toSorted((a, b) => a.from - b.from);
};

const sideOf = (zone: ZoneWords, clause: string, { inner, outer }: Dictionary): ZoneCode =>
  zone.inner && inner.test(clause)
    ? zone.inner
    : zone.outer && outer.test(clause)
      ? zone.outer
      : zone.zone;

const zoneFor = (
  kind: KindWords,
  zones: readonly Found<ZoneWords>[],
  at: number,
  clause: string,
  dictionary: Dictionary,
): ZoneCode | null => {
  const near = zones.toSorted((a, b) => Math.abs(a.from - at) - Math.abs(b.from - at));
  const choices = near.map(({ what }) => {
    const side = sideOf(what, clause, dictionary);
    return what.under && side === what.zone && ofTheSole.has(kind.kind) ? what.under : side;
  });
  if (kind.zone && (choices.length === 0 || kind.beside)) return kind.zone;
  return choices.find((zone) => isPlausible(kind.kind, zone)) ?? choices[0] ?? null;
};

const isDenied = (
  clause: string,
  { from }: Found<unknown>,
  { denies, reach }: Dictionary,
): boolean => denies.test(clause.slice(Math.max(0, from - reach), from));

const inClause = (
  clause: string,
  next: string,
  before: readonly Found<ZoneWords>[],
  dictionary: Dictionary,
): { readonly mentions: readonly Mention[]; readonly zones: readonly Found<ZoneWords>[] } => {
  const { over, answersNo, trouble } = dictionary;
  const zones = found(clause, dictionary.zones);
  if (over.test(clause) || answersNo.test(next)) return { mentions: [], zones: [] };
  const known = zones.length > 0 ? zones : before;
  const kinds = found(
    clause,
    dictionary.kinds.filter(
      ({ beside, unless }) => (beside?.test(clause) ?? true) && !unless?.test(clause),
    ),
  );
  const mentions = kinds
    .filter((one) => !isDenied(clause, one, dictionary))
    .map(({ what, from }): Mention => ({
      zone: zoneFor(what, known, from, clause, dictionary),
      kind: what.kind,
    }));
  if (kinds.length > 0 || !trouble.test(clause)) return { mentions, zones: known };
  const alone = known.map(({ what }): Mention => ({
    zone: sideOf(what, clause, dictionary),
    kind: null,
  }));
  return { mentions: alone.slice(0, 1), zones: known };
};

const inLanguage = (text: string, dictionary: Dictionary): readonly Mention[] =>
  text.split(dictionary.sentence).flatMap((sentence, at, all) => {
    let before: readonly Found<ZoneWords>[] = [];
    const clauses = sentence.split(dictionary.clause);
    return clauses.flatMap((clause, n) => {
      const next = clauses.slice(n + 1).find((one) => one.trim() !== '') ?? all[at + 1] ?? '';
      const { mentions, zones } = inClause(clause, next, before, dictionary);
      before = zones;
      return mentions;
    });
  });

/** What a text names, in either language, each once. */
export const mentionsIn = (text: string): readonly Mention[] => {
  const folded = fold(text).text.replaceAll('’', "'");
  const all = [english, chinese].flatMap((dictionary) => inLanguage(folded, dictionary));
  const each = new Map(all.map((one) => [`${one.zone} ${one.kind}`, one]));
  // A kind with its zone says the same as the kind alone, and more.
  return [...each.values()].filter(
    ({ zone, kind }) =>
      (zone !== null ||
        ![...each.values()].some((one) => one.kind === kind && one.zone !== null)) &&
      (kind !== null || ![...each.values()].some((one) => one.zone === zone && one.kind !== null)),
  );
};
