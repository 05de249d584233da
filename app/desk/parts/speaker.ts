/** The desk's language, and how its reader likes figures and names written, for the sentences that desk and terminal share. */
import { formatDistance, formatNumber } from '../../parts/format.ts';
import { languageIn } from '../../words/figures.ts';
import { d, locale, t, terms } from '../../words/index.ts';
import type { Speaker } from '../../words/say-complaint.ts';
import { namesIn, type TabProps } from '../desk-state.ts';

export const speakerOf = ({ review, records }: TabProps): Speaker => ({
  desk: d(),
  glossary: terms(),
  number: formatNumber,
  distance: formatDistance,
  foot: (foot) => t().foot[foot],
  language: (tag) => languageIn(tag, locale()),
  ...namesIn(review, records),
});
