/** The reader's language. A specialist has no testers, pairs or rounds: no name of theirs is ever asked for. */
import type { Finding } from '../../core/records/index.ts';
import { formatDistance, formatNumber } from '../parts/format.ts';
import { isForeign, languageIn } from '../words/figures.ts';
import { d, locale, t, terms } from '../words/index.ts';
import type { Speaker } from '../words/say-complaint.ts';

export const readerSpeaker = (): Speaker => ({
  desk: d(),
  glossary: terms(),
  number: formatNumber,
  distance: formatDistance,
  tester: () => '?',
  pair: () => '?',
  round: () => '?',
  foot: (foot) => t().foot[foot],
  language: (tag) => languageIn(tag, locale()),
});

/** The finding with its title and wish in the reader's language, where the lead gave them in it. */
export const inOwnLanguage = (finding: Finding): Finding => {
  const { otherWords: other } = finding;
  if (!other || isForeign(other.language, [locale()])) return finding;
  return {
    ...finding,
    ...(other.title !== undefined && { title: other.title }),
    ...(other.wanted !== undefined && { wanted: other.wanted }),
  };
};
