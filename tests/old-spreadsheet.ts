/**
 * A lead's old spreadsheet, invented: 12 testers, 20 pairs, 20 hand-outs and 300 runs, as a spreadsheet with decimal
 * commas writes them, with ten mistakes planted. The same in every process.
 */
import { seeded } from './seeded.ts';

export interface Planted {
  readonly table: 'pairs' | 'runs';
  /** As the spreadsheet counts, the head included. */
  readonly line: number;
  readonly column: string;
  readonly why: string;
  /** What stands in the cell, and what should. */
  readonly typed: string;
  readonly right: string;
}

const two = (value: number): string => String(value).padStart(2, '0');

const TESTERS = 12;
const PAIRS = 20;
const RUNS = 300;

const testerCode = (at: number): string => `A${two(at + 1)}`;
const pairCode = (at: number): string => `W-${two(at + 1)}`;

/** Days of 2026 from 2 March on, day first. */
const dayOf = (nth: number): string => {
  const at = new Date(Date.UTC(2026, 2, 2 + nth));
  return `${two(at.getUTCDate())}/${two(at.getUTCMonth() + 1)}/${at.getUTCFullYear()}`;
};

/** On this day the first eight testers change to the pairs 13 to 20. */
const CHANGE = 42;

const csv = (rows: readonly (readonly string[])[]): string =>
  rows.map((row) => row.join(';')).join('\r\n') + '\r\n';

const testers = (random: () => number) =>
  Array.from({ length: TESTERS }, (_, at) => {
    const left = 250 + Math.floor(random() * 40);
    return [
      testerCode(at),
      `Runner ${at + 1}`,
      String(left),
      String(left + (at % 3)),
      '70,5',
      '1,78',
    ];
  });

const pairs = () =>
  Array.from({ length: PAIRS }, (_, at) => [
    pairCode(at),
    at % 2 === 0 ? '42,5' : '43',
    at === 4 ? '3,5' : '',
  ]);

const handOuts = () => [
  ...Array.from({ length: TESTERS }, (_, at) => [
    pairCode(at),
    testerCode(at),
    dayOf(0),
    at < 8 ? dayOf(CHANGE - 1) : '',
  ]),
  ...Array.from({ length: 8 }, (_, at) => [pairCode(12 + at), testerCode(at), dayOf(CHANGE), '']),
];

/** Start, distance and time of a run that somebody can have run. */
const runs = (random: () => number): string[][] =>
  Array.from({ length: RUNS }, (_, at) => {
    const tester = at % TESTERS;
    const nth = Math.floor(at / TESTERS);
    const day = nth * 3;
    const pair = day >= CHANGE && tester < 8 ? 12 + tester : tester;
    const metres = 5000 + Math.floor(random() * 120) * 100;
    const seconds = Math.round((metres / 1000) * (285 + random() * 120));
    const [h, m, s] = [Math.floor(seconds / 3600), Math.floor((seconds % 3600) / 60), seconds % 60];
    return [
      dayOf(day),
      `${two(6 + Math.floor(random() * 12))}:${two(Math.floor(random() * 60))}`,
      testerCode(tester),
      pairCode(pair),
      (metres / 1000).toFixed(1).replace('.', ','),
      `${h}:${two(m)}:${two(s)}`,
      ['Road', 'Trail', 'Gravel'][at % 3] ?? '',
      String(40 + Math.floor(random() * 50)),
      at % 7 === 0 ? 'The tongue slides to the outside; felt from km 4 on'.replace(';', ',') : '',
    ];
  });

const RUN_HEAD = [
  'Date',
  'Start',
  'Tester',
  'Pair',
  'Distance (km)',
  'Time',
  'Surface',
  'Comfort',
  'Notes',
];
const AT = { date: 0, tester: 2, pair: 3, distance: 4, time: 5 } as const;

const plant = (
  rows: string[][],
  line: number,
  column: keyof typeof AT,
  typed: string,
  why: string,
): Planted => {
  const row = rows[line - 2] as string[];
  const right = row[AT[column]] as string;
  row[AT[column]] = typed;
  return { table: 'runs', line, column, why, typed, right };
};

/** The tables as CSV, and what is wrong in them. */
export const oldSpreadsheet = () => {
  const random = seeded(16);
  const people = testers(random);
  const shoes = pairs();
  const worn = runs(random);
  const right = shoes[6]?.[1] ?? '';
  (shoes[6] as string[])[1] = '2700';
  const planted: Planted[] = [
    { table: 'pairs', line: 8, column: 'size', why: 'out-of-range', typed: '2700', right },
    plant(worn, 12, 'pair', 'W-99', 'unknown-pair'),
    plant(worn, 35, 'date', '08/03/2062', 'future'),
    plant(worn, 61, 'distance', '12o', 'no-number'),
    plant(worn, 90, 'time', '0:04:10', 'pace'),
    plant(worn, 118, 'tester', 'A99', 'unknown-tester'),
    plant(worn, 152, 'distance', '', 'missing'),
    // Hours and seconds the wrong way round.
    plant(worn, 187, 'time', '37:41:00', 'pace'),
    plant(worn, 224, 'pair', 'W-14', 'with-another'),
  ];
  worn[RUNS - 1] = [...(worn[99] as string[])];
  planted.push({
    table: 'runs',
    line: RUNS + 1,
    column: 'date',
    why: 'twice',
    typed: worn[99]?.[0] ?? '',
    right: '',
  });
  return {
    planted,
    tables: {
      testers: csv([['Code', 'Name', 'Left', 'Right', 'Weight (kg)', 'Height (m)'], ...people]),
      pairs: csv([['Pair', 'Size EU', 'Carried in (km)'], ...shoes]),
      'hand-outs': csv([['Pair', 'Tester', 'Handed out', 'Returned'], ...handOuts()]),
      runs: csv([RUN_HEAD, ...worn]),
    },
  };
};
