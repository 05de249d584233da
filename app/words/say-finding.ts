/** What does a finding ask for, and on what evidence, in a reader's language? The same for board, report and specialist. */
import { tradeOf } from '../../core/foot/index.ts';
import type { Finding, RecordId } from '../../core/records/index.ts';
import { wantedSize } from './figures.ts';
import { cellTitle, type Speaker } from './say-complaint.ts';
import {
  evidenceInWords,
  writtenLines,
  type SaidEvidence,
  type WrittenLines,
} from './say-evidence.ts';

export interface SaidFinding {
  /** Zone and kind in the reader's language; null where the finding names none, or its title says the same. */
  readonly about: string | null;
  readonly part: string;
  readonly urgency: string;
  readonly source: string | null;
  /** What is asked for; `wanted` says so before it. */
  readonly wish: string | null;
  readonly wanted: string | null;
  readonly carriedBy: string | null;
  /** Until when its evidence goes; null where none was frozen. */
  readonly frozen: string | null;
  /** Null where none was frozen. */
  readonly evidence: SaidEvidence | null;
  readonly outcome: { readonly title: string; readonly written: WrittenLines } | null;
}

/** Words and size in one: "raise the collar, +3 mm". */
const wantedOf = ({ wanted, wantedMm }: Finding, { desk, number }: Speaker): string =>
  desk.joined.clauses(
    [wanted ?? '', wantedMm === undefined ? '' : `${wantedSize(wantedMm, number)}\u00a0mm`].filter(
      (one) => one !== '',
    ),
  );

/**
 * A finding in words.
 * @param roundName null where the reader does not know the rounds
 * @param date writes an instant as a day
 */
export const findingInWords = (
  finding: Finding,
  speaker: Speaker,
  roundName: (id: RecordId) => string | null,
  date: (instant: string) => string,
): SaidFinding => {
  const { desk, glossary } = speaker;
  const words = desk.report;
  const { kind, zone, part, source, evidence, outcome, damage } = finding;
  const about = kind && zone ? cellTitle({ kind, zone }, speaker) : null;
  const wanted = wantedOf(finding, speaker);
  const carrier = finding.carriedBy === undefined ? null : roundName(finding.carriedBy);
  const known = damage
    ? ('damage' as const)
    : (source ?? (evidence?.complaint ? 'complaint' : undefined));
  return {
    about: about === finding.title ? null : about,
    part: words.part(glossary.parts[part].name, glossary.trades[tradeOf[part]]),
    urgency: words.urgency(
      desk.finding.priorities[finding.priority],
      desk.finding.states[finding.state],
    ),
    source: known === undefined ? null : words.sources[known],
    wish: wanted === '' ? null : wanted,
    wanted: wanted === '' ? null : words.wanted(wanted),
    carriedBy: carrier === null ? null : words.carriedBy(carrier),
    frozen: evidence ? desk.finding.frozen(date(evidence.until)) : null,
    evidence: evidence ? evidenceInWords(evidence, speaker) : null,
    outcome: outcome
      ? {
          title: words.outcome(
            roundName(outcome.round),
            glossary.changeVerdicts[outcome.verdict].name,
            date(outcome.until),
          ),
          written: writtenLines(outcome.lines, outcome.language, speaker),
        }
      : null,
  };
};
