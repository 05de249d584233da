/**
 * Who was asked, and who reported what where, in one pass over the runs.
 *
 * A run counts as asked only if the feet question was answered. Testers get numbers, so that 200,000 runs
 * are counted in whole numbers; nothing else of Pairlog sees them.
 */
import { complaintKinds, zoneCodes, type ComplaintKind, type ZoneCode } from '../foot/index.ts';
import type { FeetAnswer } from './feet-answer.ts';
import type { RecordId } from '../records/index.ts';

/** One run that reported a cell: whose, on which feet, how bad. */
export interface CellTally {
  readonly zone: ZoneCode;
  readonly kind: ComplaintKind;
  /** Reporting runs in the order of the answers, as places in the answers. */
  readonly runs: number[];
  /** 1 left, 2 right, 3 both; one for each reporting run. */
  readonly feet: number[];
  /** Greatest severity of each reporting run, −1 where none was given. */
  readonly severities: number[];
}

export interface Tally {
  /** Testers by their number. */
  readonly testers: readonly RecordId[];
  /** Runs asked of each tester. */
  readonly asked: readonly number[];
  /** The tester's number of each answer. */
  readonly testerOf: Int32Array;
  readonly cells: readonly CellTally[];
}

const zoneAt = new Map(zoneCodes.map((zone, at) => [zone, at]));
const kindAt = new Map(complaintKinds.map((kind, at) => [kind, at]));

/** Counts the answers of one set of runs. */
export const tallyAnswers = (answers: readonly FeetAnswer[]): Tally => {
  const numbers = new Map<RecordId, number>();
  const testers: RecordId[] = [];
  const asked: number[] = [];
  const testerOf = new Int32Array(answers.length);
  const cells = new Array<CellTally | undefined>(zoneCodes.length * complaintKinds.length);
  for (let run = 0; run < answers.length; run++) {
    const { tester, complaints } = answers[run] as FeetAnswer;
    let number = numbers.get(tester);
    if (number === undefined) {
      number = testers.push(tester) - 1;
      numbers.set(tester, number);
      asked.push(0);
    }
    testerOf[run] = number;
    asked[number] = (asked[number] as number) + 1;
    for (const { zone, kind, foot, severity } of complaints) {
      const key =
        (zoneAt.get(zone) as number) * complaintKinds.length + (kindAt.get(kind) as number);
      const cell = (cells[key] ??= { zone, kind, runs: [], feet: [], severities: [] });
      const side = foot === 'left' ? 1 : 2;
      const last = cell.runs.length - 1;
      if (cell.runs[last] === run) {
        cell.feet[last] = (cell.feet[last] as number) | side;
        cell.severities[last] = Math.max(cell.severities[last] as number, severity ?? -1);
      } else {
        cell.runs.push(run);
        cell.feet.push(side);
        cell.severities.push(severity ?? -1);
      }
    }
  }
  return { testers, asked, testerOf, cells: cells.filter((cell) => cell !== undefined) };
};
