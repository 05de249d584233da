/** What did the changes from one round to the next do? */
import { isAbsent, type RoundComparison } from '../../../core/review/index.ts';
import { arrivalLines } from '../../words/say-arrival.ts';
import {
  benchLine,
  changeTitle,
  comparisonLines,
  countLines,
  feltTitle,
  knewLine,
  orderLine,
  riseLine,
} from '../../words/say-change.ts';
import { comfortChangeInWords } from '../../words/say-comfort.ts';
import { moveInWords } from '../../words/say-two-sided.ts';
import { behind, heading, type Printing } from './printed.ts';

/** What the changes from one round to the next did. */
export const changesOf = (found: RoundComparison, printing: Printing, headline: string): string => {
  const { speaker } = printing;
  const { changes: words, comfort, joined } = speaker.desk;
  const { glossary } = speaker;
  const [earlier, later] = [speaker.round(found.earlier), speaker.round(found.later)];
  const { both, onlyEarlier, onlyLater } = found.testers;
  const knew = knewLine(found, speaker);
  const order = orderLine(found, speaker);
  const comfortLines = (
    [
      ['same', words.comfortSame],
      ['onlyOne', words.comfortOne],
    ] as const
  ).flatMap(([who, title]) => {
    const lines = found.comfort[who].map(
      (change) =>
        `  ${joined.aside(
          joined.of(
            glossary.attributes[change.attribute].name,
            comfortChangeInWords(change, speaker),
          ),
          joined.of(comfort.by[change.by], String(change.testers)),
        )}`,
    );
    return lines.length > 0 ? [title, ...lines] : [];
  });
  const moves = found.twoSided.map(
    (change) =>
      `  ${joined.of(glossary.twoSided[change.attribute].name, moveInWords(change, speaker))}`,
  );
  const rises = found.cells.flatMap((cell) =>
    cell.word === null
      ? []
      : [
          `  ${joined.of(
            words.newWords[cell.word],
            riseLine(printing.howSure ? cell : { ...cell, adjustedP: null }, speaker),
          )}`,
        ],
  );
  const bench = found.bench.map((change) => `  ${benchLine(change, speaker)}`);
  return [
    heading(words.against(later, earlier)),
    headline,
    words.worn(both, earlier, onlyEarlier, later, onlyLater),
    ...(order ? [order] : []),
    ...(knew ? [knew] : []),
    ...(found.changes.length === 0 ? [words.noChanges] : []),
    ...found.changes.flatMap((change) => {
      const title = changeTitle(change, speaker);
      const arrived = arrivalLines(change, speaker).map((line) => `  ${line}`);
      if (!change.found || !change.mends) return [title, ...arrived, `  ${words.mendsNothing}`];
      return [
        isAbsent(change.arrival)
          ? title
          : joined.of(title, glossary.changeVerdicts[change.found.verdict].name),
        ...arrived,
        ...[
          words.mends(feltTitle(change.mends, speaker)),
          ...(printing.howSure
            ? comparisonLines(change.found, found, speaker)
            : countLines(change.found, found, speaker)),
        ].map((line) => `  ${line}`),
      ];
    }),
    words.newTitle,
    ...(rises.length > 0 ? rises : [`  ${words.nothingNew}`]),
    ...behind(printing, [
      ...(comfortLines.length > 0 ? comfortLines : [words.noComfort]),
      ...(moves.length > 0 ? [comfort.twoSided.movedTitle(earlier, later), ...moves] : []),
      ...(bench.length > 0 ? [words.bench, ...bench] : [words.noBench]),
    ]),
    ...(found.measuredLate > 0 ? [`  ${words.measuredLate(found.measuredLate)}`] : []),
  ].join('\n');
};
