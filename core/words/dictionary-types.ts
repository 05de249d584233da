/** What a dictionary of one language holds, and what it finds. */
import type { ComplaintKind, ZoneCode } from '../foot/index.ts';

/** What a text names: a complaint in a zone, or one of them alone. */
export interface Mention {
  readonly zone: ZoneCode | null;
  readonly kind: ComplaintKind | null;
}

/** A zone by what people call it; `under` where the sole of it is meant: its complaints are of landing and foam. */
export interface ZoneWords {
  readonly words: RegExp;
  readonly zone: ZoneCode;
  readonly inner?: ZoneCode;
  readonly outer?: ZoneCode;
  readonly under?: ZoneCode;
}

export interface KindWords {
  readonly words: RegExp;
  readonly kind: ComplaintKind;
  /** Named with it although the text says no other. */
  readonly zone?: ZoneCode;
  /** What else must stand in the clause. */
  readonly beside?: RegExp;
  /** What must not. */
  readonly unless?: RegExp;
}

/** All that the dictionary knows of a language; every expression is of folded text. */
export interface Dictionary {
  /** Ends a sentence, and ends a clause within one. */
  readonly sentence: RegExp;
  readonly clause: RegExp;
  readonly inner: RegExp;
  readonly outer: RegExp;
  /** Before a complaint, within `reach` signs: it is denied. */
  readonly denies: RegExp;
  readonly reach: number;
  /** After it, or anywhere in the clause: it is over, of another shoe, or only expected. */
  readonly over: RegExp;
  /** Begins the next clause and denies this one, as in "Heel slip? None." */
  readonly answersNo: RegExp;
  /** Something is wrong, whatever it is. */
  readonly trouble: RegExp;
  readonly zones: readonly ZoneWords[];
  /** The closer description first: of kinds whose words overlap the first one counts. */
  readonly kinds: readonly KindWords[];
}
