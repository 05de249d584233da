/**
 * The figures and the records of a project as tables for a spreadsheet: one CSV file a subject. Codes of pairs and
 * testers and words of the code, so that a program reads them the same in every language; distances in kilometres as on
 * the screens. The dictionary says what each column means.
 */
import type { Kind } from '../../../core/records/index.ts';
import { benchTable, deviationsTable } from './bench.ts';
import { comfortTable, complaintsTable, twoSidedChangesTable, twoSidedTable } from './felt.ts';
import {
  loadsTable,
  preferencesTable,
  sidesTable,
  surfacesTable,
  wearCurvesTable,
  wearTable,
} from './figures.ts';
import { fitAnswersTable, fitSessionsTable, fitTrialsTable, fitWantedTable } from './fitting.ts';
import { findingsTable } from './findings.ts';
import {
  acknowledgementsTable,
  blueprintTable,
  briefTable,
  checksTable,
  decisionsTable,
  gaugeReadingsTable,
  gaugesTable,
  lastsTable,
  plansTable,
  quotesTable,
  repliesTable,
  reportsTable,
  roundChangesTable,
  stopsTable,
} from './making.ts';
import { painTable } from './pain.ts';
import { pairsTable } from './pairs.ts';
import { roundsTable } from './rounds.ts';
import type { Table } from './table.ts';
import {
  answersTable,
  proposalRepliesTable,
  proposalsTable,
  questionsTable,
  thanksTable,
} from './talking.ts';
import { changesTable, verdictsTable } from './verdicts.ts';
import {
  damagesTable,
  handOutsTable,
  rankingsTable,
  runComfortTable,
  runComplaintsTable,
  runsTable,
  runTwoSidedTable,
  testersTable,
} from './wearing.ts';
import { namesOf, type Written } from './written.ts';

export { jsonOf } from './json.ts';
export type { Table } from './table.ts';
export type { Written } from './written.ts';

/** The table in which each kind of record stands; null: its bytes are no table, and the record that shows it counts it. */
export const tableOfKind = {
  project: 'brief',
  round: 'rounds',
  pair: 'pairs',
  tester: 'testers',
  'hand-out': 'hand-outs',
  run: 'runs',
  ranking: 'rankings',
  'damage-report': 'damage-reports',
  'bench-check': 'checks',
  'gauge-study': 'gauge-studies',
  'hand-out-plan': 'hand-out-plans',
  finding: 'findings',
  report: 'reports-sent',
  'stop-use': 'stop-use-notices',
  acknowledgement: 'notices-read',
  reply: 'replies',
  decision: 'decisions',
  quote: 'quotes',
  question: 'questions',
  answer: 'answers',
  proposal: 'proposals',
  'proposal-reply': 'proposal-replies',
  thanks: 'thanks',
  'fit-session': 'fit-sessions',
  'fit-trial': 'fit-trials',
  attachment: null,
} as const satisfies Readonly<Record<Kind, string | null>>;

/** What is on record, whether or not it counts. */
const recordTables = (written: Written): readonly Table[] => {
  const { log, review, findings, feet } = written;
  const names = namesOf(written);
  return [
    briefTable(log),
    lastsTable(log),
    roundChangesTable(log),
    blueprintTable(log),
    testersTable(log, feet),
    handOutsTable(log, names),
    plansTable(log, names),
    runsTable(log, names),
    runComfortTable(log),
    runTwoSidedTable(log),
    runComplaintsTable(log),
    rankingsTable(log, names),
    damagesTable(log, names),
    checksTable(log, names),
    gaugesTable(log),
    gaugeReadingsTable(log),
    findingsTable(findings, names.round),
    stopsTable(log, names),
    acknowledgementsTable(log, names),
    repliesTable(log, names),
    decisionsTable(log, review),
    quotesTable(log, names, findings),
    questionsTable(log, names),
    answersTable(log, names),
    proposalsTable(log, findings),
    proposalRepliesTable(log, findings),
    thanksTable(log, names, findings),
    fitSessionsTable(log, names),
    fitTrialsTable(log, names),
    fitAnswersTable(log),
    fitWantedTable(log),
    reportsTable(log, names),
  ];
};

/** Every figure of the review; what waits or was set aside is in none. */
export const figureTables = (written: Written): readonly Table[] => {
  const { review, reports } = written;
  const names = namesOf(written);
  const { round, pair } = names;
  return [
    roundsTable(review),
    pairsTable(review, round),
    surfacesTable(review),
    loadsTable(review),
    complaintsTable(review),
    painTable(review),
    comfortTable(review),
    twoSidedTable(review),
    twoSidedChangesTable(review),
    preferencesTable(review, names),
    benchTable(review, round, pair),
    deviationsTable(review, round, pair),
    sidesTable(review, names),
    wearTable(reports),
    wearCurvesTable(reports),
    verdictsTable(reports),
    changesTable(reports, round),
  ];
};

/** Every table of a project. */
export const tablesOf = (written: Written): readonly Table[] => [
  ...recordTables(written),
  ...figureTables(written),
];
