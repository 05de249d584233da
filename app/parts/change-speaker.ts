/** The screen's language for what is to be different in a shoe: the same at the desk, at the specialist's and on the phone. */
import type { StructuredChange } from '../../core/records/index.ts';
import { d, t, talkWords, terms } from '../words/index.ts';
import { siteName } from '../words/say-place.ts';
import { changeInWords, type ChangeSpeaker } from '../words/say-talk.ts';
import { formatNumber } from './format.ts';

export const changeSpeaker = (): ChangeSpeaker => ({
  talk: talkWords(),
  glossary: terms(),
  number: formatNumber,
  foot: (foot) => t().foot[foot],
  site: (site) => siteName(site, { desk: d() }),
  of: d().joined.of,
  clauses: d().joined.clauses,
});

/** A structured change as one line, such as "Collar line: 2 mm lower, lateral side, left". */
export const sayChange = (change: StructuredChange): string =>
  changeInWords(change, changeSpeaker());
