/** Which sentences does a remark have, and is a quote part of what was said? */

const segmenters = new Map<string, Intl.Segmenter>();
const segmenterFor = (locale: string): Intl.Segmenter => {
  const known = segmenters.get(locale) ?? new Intl.Segmenter(locale, { granularity: 'sentence' });
  segmenters.set(locale, known);
  return known;
};

/**
 * The sentences of a text as the platform cuts it (UAX #29), in their order, each as it stands in the text.
 * @returns one where the text is a single sentence; none where it is empty
 */
export const sentencesOf = (text: string): readonly string[] =>
  [...segmenterFor(/\p{Script=Han}/u.test(text) ? 'zh' : 'en').segment(text)]
    .map(({ segment }) => segment.trim())
    .filter((sentence) => sentence !== '');

/** Whether a quote holds nothing but what was said: the whole text, or a part of it. */
export const isPartOf = (text: string, quoted: string): boolean => {
  const said = quoted.trim();
  return said !== '' && text.includes(said);
};
