/** How does a text read without its case, accents and widths, and where in the original does each sign of that stand? */

export interface Folded {
  /** Lower case, no accents, half-width letters and figures. */
  readonly text: string;
  /** For each position of `text` and its end: the position in the original. */
  readonly at: (position: number) => number;
}

/** Folds a text for search: NFKD without marks, lower case (Unicode Standard Annex 15). */
export const fold = (original: string): Folded => {
  if (/^[\0-\x7f]*$/.test(original))
    return { text: original.toLowerCase(), at: (position) => position };
  let text = '';
  const starts: number[] = [];
  let position = 0;
  for (const sign of original) {
    const plain = sign.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();
    for (let n = 0; n < plain.length; n++) starts.push(position);
    text += plain;
    position += sign.length;
  }
  return { text, at: (one) => starts[one] ?? original.length };
};
