/** The feet answers of a large panel, invented and seeded: rounds of runs with about one complaint each. */
import type { FeetAnswer } from '../../core/complaints/index.ts';
import { plausibleCells } from '../../core/foot/index.ts';
import { newRecordId, type Complaint, type RecordId } from '../../core/records/index.ts';
import { seeded } from '../seeded.ts';

const START = 1_780_000_000_000;

/** @returns the answers of each round */
export const largePanel = (testers: number, runs: number, rounds: number): FeetAnswer[][] => {
  const random = seeded(5);
  const id = (at: number): RecordId => newRecordId(START + at, new Uint8Array(16).fill(at % 256));
  const people = Array.from({ length: testers }, (_, at) => id(at));
  const cells = plausibleCells();
  const complaint = (): Complaint => {
    // A third of the reports fall on a few cells, the rest anywhere.
    const at =
      random() < 0.33 ? Math.floor(random() * 6) * 29 : Math.floor(random() * cells.length);
    const [zone, kind] = cells[at % cells.length] as (typeof cells)[number];
    return {
      zone,
      kind,
      foot: random() < 0.5 ? 'left' : 'right',
      severity: 1 + Math.floor(random() * 9),
    };
  };
  return Array.from({ length: rounds }, (_, round) =>
    Array.from({ length: runs / rounds }, (_, at): FeetAnswer => {
      const complaints: Complaint[] = [];
      for (let chance = random(); chance < 0.6; chance = random()) complaints.push(complaint());
      return {
        run: id(1_000_000 * (round + 1) + at),
        tester: people[Math.floor(random() * testers)] as RecordId,
        complaints,
      };
    }),
  );
};
