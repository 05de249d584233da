/** What was reported in a round, and what recurs. */
import type { CloserLook, RoundReview } from '../../../core/review/index.ts';
import { changeTitle } from '../../words/say-change.ts';
import {
  askedLines,
  cellLines,
  cellTitle,
  lookLines,
  suspectLine,
  evidenceName,
} from '../../words/say-complaint.ts';
import { painLines } from '../../words/say-pain.ts';
import { table } from '../table.ts';
import { behind, heading, type Printing } from './printed.ts';

/** Who was asked in a round, and every complaint with its counts. */
export const complaintsOf = (round: RoundReview, printing: Printing): string => {
  const { spoken, speaker } = printing;
  const { terminal: words, glossary } = spoken;
  const { asked, cells } = round.complaints;
  const lines = [heading(words.complaints(round.name))];
  if (round.changes.length > 0)
    lines.push(
      speaker.desk.joined.of(
        words.changes,
        speaker.desk.joined.apart(round.changes.map((change) => changeTitle(change, speaker))),
      ),
    );
  const pain = [
    speaker.desk.joined.of(
      speaker.desk.pain.title,
      round.pain ? evidenceName(round.pain, speaker) : speaker.desk.none,
    ),
    ...painLines(round.pain, speaker, printing.howSure).map((line) => `  ${line}`),
  ];
  lines.push(...askedLines(round, speaker));
  if (asked.runs === 0) return [...lines, ...pain].join('\n');
  if (cells.length === 0) return [...lines, words.noComplaint, ...pain].join('\n');
  lines.push(...pain);
  lines.push(
    '',
    table(
      [
        { title: words.zone },
        { title: words.complaint },
        { title: words.testersOnce, right: true },
        { title: words.testersTwice, right: true },
        { title: words.reportedRuns, right: true },
        { title: words.leftRight, right: true },
        { title: words.severity, right: true },
        { title: words.proof },
      ],
      cells.map((cell) => [
        `${cell.zone} ${glossary.zones[cell.zone].name}`,
        glossary.kinds[cell.kind].name,
        `${cell.testersOnce}/${asked.testers}`,
        String(cell.testersTwice),
        `${cell.runs}/${asked.runs}`,
        `${cell.byFoot.left}/${cell.byFoot.right}`,
        cell.severity ? `${cell.severity.mean.toFixed(1)} / ${cell.severity.most}` : '–',
        evidenceName(cell, speaker),
      ]),
    ),
  );
  return lines.join('\n');
};

/** What recurs, with how sure it is, and when and with whom it comes. */
export const recurringOf = (
  round: RoundReview,
  looks: readonly CloserLook[],
  printing: Printing,
): string[] =>
  behind(printing, looks).flatMap((look) => {
    const { speaker } = printing;
    const cell = round.complaints.cells.find(
      ({ zone, kind }) => zone === look.cell.zone && kind === look.cell.kind,
    );
    if (!cell) return [];
    return [
      [
        speaker.desk.joined.of(cellTitle(cell, speaker), evidenceName(cell, speaker)),
        ...[
          ...cellLines(cell, round.complaints, speaker),
          ...lookLines(look, speaker),
          suspectLine(cell, speaker),
        ].map((line) => `  ${line}`),
      ].join('\n'),
    ];
  });
