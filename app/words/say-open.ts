/** Why is an item of a verdict still open, and what rules it out, in sentences? */
import type { SpreadCause, VerdictItem } from '../../core/review/index.ts';
import { chanceOf } from './figures.ts';
import { cellTitle, type Speaker } from './say-complaint.ts';

/** More complaints than this in one line nobody reads. */
const MOST_NAMED = 6;

/** Why further checks would hardly settle it. */
export const spreadLine = (cause: SpreadCause, speaker: Speaker): string => {
  const words = speaker.desk.verdict;
  switch (cause.by) {
    case 'pairs':
      return words.pairsDiffer;
    case 'pair':
      return words.onePairDiffers(speaker.pair(cause.pair));
    case 'reading':
      return words.oneReadingDiffers(speaker.pair(cause.pair), speaker.distance(cause.distance));
  }
};

/** Whether complaints grow: what is shown, what is not ruled out, and what silence at the brief's distance tells. */
export const growthLines = (
  item: Omit<Extract<VerdictItem, { what: 'complaints' }>, 'word' | 'what'>,
  speaker: Speaker,
): string[] => {
  const words = speaker.desk.verdict;
  const { growing, open, tested, pairsThere, runsThere, testersThere, silenceChance } = item;
  const named = (cells: typeof open) =>
    speaker.desk.joined.apart(
      [...cells].slice(0, MOST_NAMED).map((cell) => cellTitle(cell, speaker)),
    );
  return [
    ...(growing.length > 0 ? [words.growing(named(growing))] : [words.noneGrows(tested)]),
    ...(open.length > 0 ? [words.mayGrow(named(open), Math.max(0, open.length - MOST_NAMED))] : []),
    runsThere === 0
      ? words.nobodyThere
      : words.askedThere(
          runsThere,
          testersThere,
          pairsThere,
          chanceOf(silenceChance, speaker.number),
        ),
  ];
};
