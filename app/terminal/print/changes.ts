/** What did the changes from one round to the next do? */
import type { RoundComparison } from '../../../core/review/index.ts';
import {
  benchLine,
  changeTitle,
  comparisonLines,
  feltTitle,
  knewLine,
  orderLine,
  riseLine,
} from '../../words/say-change.ts';
import { comfortChangeInWords } from '../../words/say-comfort.ts';
import { heading, type Printing } from './printed.ts';

/** What the changes from one round to the next did. */
export const changesOf = (found: RoundComparison, { speaker }: Printing): string => {
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
  const rises = found.cells.flatMap((cell) =>
    cell.word === null
      ? []
      : [`  ${joined.of(words.newWords[cell.word], riseLine(cell, speaker))}`],
  );
  const bench = found.bench.map((change) => `  ${benchLine(change, speaker)}`);
  return [
    heading(words.against(later, earlier)),
    words.worn(both, earlier, onlyEarlier, later, onlyLater),
    ...(order ? [order] : []),
    ...(knew ? [knew] : []),
    ...(found.changes.length === 0 ? [words.noChanges] : []),
    ...found.changes.flatMap((change) => {
      const title = changeTitle(change, speaker);
      if (!change.found || !change.mends) return [title, `  ${words.mendsNothing}`];
      return [
        joined.of(title, glossary.changeVerdicts[change.found.verdict].name),
        ...[
          words.mends(feltTitle(change.mends, speaker)),
          ...comparisonLines(change.found, found, speaker),
        ].map((line) => `  ${line}`),
      ];
    }),
    words.newTitle,
    ...(rises.length > 0 ? rises : [`  ${words.nothingNew}`]),
    ...(comfortLines.length > 0 ? comfortLines : [words.noComfort]),
    ...(bench.length > 0 ? [words.bench, ...bench] : [words.noBench]),
    ...(found.measuredLate > 0 ? [`  ${words.measuredLate(found.measuredLate)}`] : []),
  ].join('\n');
};
