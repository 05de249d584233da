/**
 * How well does the dictionary do on 200 invented sentences a language? They were written by somebody who did not write the
 * dictionary and did not see it; the dictionary was not tuned on them. A mention is right where zone and kind are both as
 * the sentence means them; where it names one of the two, where that one is right.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { mentionsIn, type Mention } from '../../../core/words/index.ts';

interface Sentence {
  readonly text: string;
  readonly means: readonly Mention[];
}

const sentencesIn = (language: string): readonly Sentence[] =>
  JSON.parse(
    readFileSync(new URL(`./sentences-${language}.json`, import.meta.url), 'utf8'),
  ) as readonly Sentence[];

type Key = (mention: Mention) => string | null;

/** Mentions by what is compared of them: `found` of `named` are right, and `missed` were not named. */
const score = (sentences: readonly Sentence[], key: Key) => {
  let [right, named, meant] = [0, 0, 0];
  for (const { text, means } of sentences) {
    const keys = (some: readonly Mention[]) => new Set(some.flatMap((one) => key(one) ?? []));
    const [said, wanted] = [keys(mentionsIn(text)), keys(means)];
    named += said.size;
    meant += wanted.size;
    right += [...said].filter((one) => wanted.has(one)).length;
  }
  return { right, named, meant };
};

/** What is compared: the whole mention, its kind alone, its zone alone, or only whether anything is named. */
const measures: Readonly<Record<string, Key>> = {
  whole: ({ zone, kind }) => `${zone} ${kind}`,
  kind: ({ kind }) => kind,
  zone: ({ zone }) => zone,
  anything: () => 'something',
};

/** In percent, a little under what was measured when the dictionary was done. */
const floors = {
  en: {
    whole: { precision: 47, recall: 45 },
    kind: { precision: 68, recall: 62 },
    zone: { precision: 63, recall: 48 },
    anything: { precision: 77, recall: 75 },
  },
  zh: {
    whole: { precision: 47, recall: 46 },
    kind: { precision: 64, recall: 61 },
    zone: { precision: 75, recall: 55 },
    anything: { precision: 76, recall: 72 },
  },
} as const;

describe.each(['en', 'zh'] as const)('the dictionary on the sentences in %s', (language) => {
  const sentences = sentencesIn(language);

  it('has 200 of them', () => {
    expect(sentences).toHaveLength(200);
  });

  it.each(['whole', 'kind', 'zone', 'anything'] as const)('by %s', (measure) => {
    const { right, named, meant } = score(sentences, measures[measure] as Key);
    const [precision, recall] = [(100 * right) / named, (100 * right) / meant];
    console.log(
      `${language}, ${measure}: precision ${precision.toFixed(0)} % (${right} of ${named} named), ` +
        `recall ${recall.toFixed(0)} % (${right} of ${meant} meant)`,
    );
    const floor = floors[language][measure];
    expect(precision).toBeGreaterThanOrEqual(floor.precision);
    expect(recall).toBeGreaterThanOrEqual(floor.recall);
  });
});
