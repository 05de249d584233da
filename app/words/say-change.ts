/** What did a change do, in sentences? The same at the desk, in the terminal and in a finding. */
import type { Finding, RecordId } from '../../core/records/index.ts';
import {
  isAbsent,
  type ComparedChange,
  type ProposedOutcome,
  type RoundComparison,
} from '../../core/review/index.ts';
import type {
  BenchChange,
  CellComparison,
  CellRise,
  Felt,
  RoundCount,
  ShareChange,
} from '../../core/rounds/index.ts';
import { percentOf, setPercentOf, signed } from './figures.ts';
import { arrivalLine } from './say-arrival.ts';
import { cellTitle, pOf, type Speaker } from './say-complaint.ts';
import { placeName } from './say-place.ts';
import { twoSidedOutcomeLines } from './say-two-sided.ts';

/** The two rounds that are compared. */
export type RoundNames = Pick<RoundComparison, 'earlier' | 'later'>;

/** The complaint as a heading; of any zone where none is named. */
export const feltTitle = ({ kind, zone }: Felt, speaker: Speaker): string =>
  zone === null
    ? speaker.desk.changes.anywhere(speaker.glossary.kinds[kind].name)
    : cellTitle({ zone, kind }, speaker);

/** The part and what is different. */
export const changeTitle = (
  { part, what }: Pick<ComparedChange, 'part' | 'what'>,
  { desk, glossary }: Pick<Speaker, 'desk' | 'glossary'>,
): string => desk.joined.of(glossary.parts[part].name, what);

/** A change of a share in points of 100, with its sign. */
const pointsOf = (change: number, { number }: Speaker): string =>
  signed(100 * change, (size) => number(size, size < 9.95 ? 1 : 0));

/** A change of a share with its interval, short, as a table has it. */
export const pointsInWords = ({ change, lower, upper }: ShareChange, speaker: Speaker): string =>
  `${pointsOf(change, speaker)} (${pointsOf(lower, speaker)} … ${pointsOf(upper, speaker)})`;

const withPoints = (change: number, speaker: Speaker): string =>
  speaker.desk.changed.points(pointsOf(change, speaker));

const intervalOf = ({ lower, upper }: ShareChange, speaker: Speaker): string =>
  speaker.desk.changed.interval(pointsOf(lower, speaker), pointsOf(upper, speaker));

const countLine = (round: RecordId, count: RoundCount, speaker: Speaker): string => {
  const { changed } = speaker.desk;
  const { testers, reporters, runs, reported } = count;
  return runs === 0
    ? changed.nobodyAsked(speaker.round(round))
    : changed.count(
        speaker.round(round),
        reporters,
        testers,
        reported,
        runs,
        percentOf(reported / runs, speaker.number),
      );
};

/** The sentences that the verdict rests on: counts of both rounds, then the change, then what is open. */
/** How many had it before and after, in both rounds. */
export const countLines = (
  found: Pick<CellComparison, 'earlier' | 'later'>,
  { earlier, later }: RoundNames,
  speaker: Speaker,
): string[] => [countLine(earlier, found.earlier, speaker), countLine(later, found.later, speaker)];

export const comparisonLines = (
  found: CellComparison,
  { earlier, later }: RoundNames,
  speaker: Speaker,
): string[] => {
  const { changed } = speaker.desk;
  const { same, onlyOne, basis, change, verdict, why, settle } = found;
  const only = ({ testers, reported, runs }: RoundCount) =>
    testers === 0 ? changed.nobody : changed.onlyCount(testers, reported, runs);
  const falls = (same?.change ?? 0) <= 0;
  return [
    ...countLines(found, { earlier, later }, speaker),
    ...(same && basis === 'same-testers'
      ? [
          changed.same(
            same.earlier.testers,
            same.earlier.runs,
            withPoints(same.change, speaker),
            intervalOf(same, speaker),
          ),
          ...(same.changed > 0
            ? [changed.flips(same.changed, pOf(falls ? same.pBetter : same.pWorse, speaker), falls)]
            : []),
          ...(same.onlyEarlier + same.onlyLater > 0
            ? [changed.reporters(same.onlyEarlier, same.onlyLater, pOf(same.pTesters, speaker))]
            : []),
        ]
      : []),
    ...(basis === 'all-testers' && change
      ? [
          changed.panels(withPoints(change.change, speaker), intervalOf(change, speaker)),
          ...(same
            ? [
                changed.same(
                  same.earlier.testers,
                  same.earlier.runs,
                  withPoints(same.change, speaker),
                  intervalOf(same, speaker),
                ),
              ]
            : []),
        ]
      : []),
    ...(onlyOne.earlier.testers + onlyOne.later.testers > 0
      ? [
          changed.onlyOne(
            speaker.round(earlier),
            only(onlyOne.earlier),
            speaker.round(later),
            only(onlyOne.later),
            onlyOne.change &&
              changed.withInterval(
                withPoints(onlyOne.change.change, speaker),
                intervalOf(onlyOne.change, speaker),
              ),
          ),
        ]
      : []),
    ...(verdict === 'mended' || verdict === 'better'
      ? [
          changed.allowed(
            percentOf(found.laterUpTo, speaker.number),
            setPercentOf(found.allowed, speaker.number),
          ),
        ]
      : []),
    ...(settle ? [changed.settle(settle.runs, settle.testers)] : []),
    ...(verdict === 'no-different' || why === 'not-decided'
      ? [changed.margin(changed.points(speaker.number(100 * found.margin, 1)))]
      : []),
    ...(why ? [changed.why[why]] : []),
  ];
};

/** Who knew what was changed, and how much that alone can do; null where all was blind. */
export const knewLine = (
  { earlier, later, knew }: Pick<RoundComparison, 'earlier' | 'later' | 'knew'>,
  speaker: Speaker,
): string | null => {
  const names = (testers: readonly RecordId[]) =>
    speaker.desk.joined.names(testers.map(speaker.tester).sort());
  return knew.earlier.length + knew.later.length === 0
    ? null
    : speaker.desk.changes.knew(
        speaker.round(earlier),
        names(knew.earlier),
        speaker.round(later),
        names(knew.later),
      );
};

/** Whether everybody wore the earlier round first, which a change cannot be told from; null where some did not. */
export const orderLine = (
  { earlier, testers, beganWith }: Pick<RoundComparison, 'earlier' | 'testers' | 'beganWith'>,
  { desk, round }: Speaker,
): string | null =>
  testers.both > 0 && beganWith.later === 0 ? desk.changes.oneOrder(round(earlier)) : null;

/** A complaint that came with the round, or may have. */
export const riseLine = (rise: CellRise, speaker: Speaker): string => {
  const { changed, changes } = speaker.desk;
  const count = ({ reporters, reported, runs }: RoundCount) =>
    runs === 0 ? changed.nobody : changed.onlyCount(reporters, reported, runs);
  return changes.newLine(
    cellTitle(rise, speaker),
    count(rise.earlier),
    count(rise.later),
    rise.adjustedP === null ? null : pOf(rise.adjustedP, speaker),
  );
};

/** Decimals of a bench reading as the shop reads it. */
const decimalsOf = ({ unit }: Pick<BenchChange, 'unit'>): number => (unit === 'mm' ? 2 : 1);

/** The figures of one measure and site, each as text. */
export const benchTexts = (change: BenchChange, speaker: Speaker) => {
  const { glossary, number, desk } = speaker;
  const { unit, earlier, later, difference, interval, differs } = change;
  const write = (value: number) => number(value, decimalsOf(change));
  const mean = (of: BenchChange['earlier']) =>
    desk.joined.aside(`${write(of.mean)} ${glossary.units[unit]}`, desk.changes.ofPairs(of.n));
  return {
    place: placeName(change, speaker),
    earlier: mean(earlier),
    later: mean(later),
    difference: `${signed(difference, write)}${interval ? ` (${signed(interval.lower, write)} … ${signed(interval.upper, write)})` : ''}`,
    word: desk.changes.benchWords[differs === null ? 'single' : differs ? 'differs' : 'open'],
  };
};

/** One measure and site of both rounds, in a sentence. */
export const benchLine = (change: BenchChange, speaker: Speaker): string => {
  const { place, earlier, later, difference, word } = benchTexts(change, speaker);
  return speaker.desk.changes.benchLine(place, earlier, later, difference, word);
};

/**
 * A proposed outcome as a finding keeps it, its sentences frozen in the speaker's language.
 * @param finding the round that showed it
 * @param until the instant of the proposal, as ISO 8601 text
 * @param language the speaker's, by its tag
 */
export const outcomeOf = (
  proposed: ProposedOutcome,
  { round }: Pick<Finding, 'round'>,
  until: string,
  language: string,
  speaker: Speaker,
): NonNullable<Finding['outcome']> => ({
  round: proposed.round,
  verdict: proposed.verdict,
  until,
  language,
  lines: [
    ...(proposed.arrival ? [arrivalLine(proposed.arrival, speaker)] : []),
    ...(isAbsent(proposed.arrival) ? [speaker.desk.arrival.absent] : []),
    ...(proposed.of === 'complaint'
      ? [
          ...(isAbsent(proposed.arrival)
            ? []
            : [speaker.glossary.changeVerdicts[proposed.verdict].meaning]),
          ...comparisonLines(proposed.found, { earlier: round, later: proposed.round }, speaker),
        ]
      : twoSidedOutcomeLines(proposed, { earlier: round, later: proposed.round }, speaker)),
  ],
});
