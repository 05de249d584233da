/** The screen's language for what is to be different in a shoe: the same at the desk and at the specialist's. */
import type { StructuredChange } from '../../core/records/index.ts';
import { d, t, talkWords, terms } from '../words/index.ts';
import { siteName } from '../words/say-place.ts';
import { changeInWords } from '../words/say-talk.ts';
import { formatNumber } from './format.ts';

/** A structured change as one line, such as "Collar line: 2 mm lower, lateral side, left". */
export const sayChange = (change: StructuredChange): string =>
  changeInWords(change, {
    talk: talkWords(),
    glossary: terms(),
    number: formatNumber,
    foot: (foot) => t().foot[foot],
    site: (site) => siteName(site, { desk: d() }),
    of: d().joined.of,
    clauses: d().joined.clauses,
  });
