/**
 * `npm run calibrate`: the rules for complaints side by side, the intervals of wear against known truth, and
 * the verdicts on changes between rounds, over a grid of simulated wear tests, the agreement of panels, and what is said
 * of two-sided comfort, as
 * Markdown tables.
 * `-- --quick` for a first look, `-- --only changes` (or `arrivals`, `complaints`, `wear`, `limits`, `wrong-numbers`, `agreement`, `two-sided`)
 * for one of them.
 */
import { agreementRows, AGREEMENT_HEADER } from './agreement-table.ts';
import { sweepPanels } from './agreement.ts';
import { ARRIVAL_HEADER, arrivalRows } from './arrivals.ts';
import { changeRows, newRows, NEW_HEADER, CHANGE_HEADER } from './changes-table.ts';
import { FAULT_HEADER, faultRows, limitLines } from './limits-table.ts';
import { simulate, type RuleFigures, type Scenario } from './simulate.ts';
import {
  costLines,
  moveRows,
  MOVE_HEADER,
  nullRows,
  NULL_HEADER,
  powerRows,
  POWER_HEADER,
} from './two-sided-table.ts';
import {
  designs,
  scenarios,
  simulateWear,
  type Design,
  type Scenario as WearScenario,
} from './wear.ts';

const base: Scenario = {
  name: '',
  testers: 8,
  runs: 12,
  cells: 220,
  allowed: 0.05,
  background: 0.01,
  affected: 0,
  rate: 0,
  firstCellOnly: true,
};
const power = (affected: number, rate: number, more: Partial<Scenario> = {}): Scenario => {
  const scenario = { ...base, affected, rate, ...more };
  const { testers, runs, allowed } = scenario;
  const extras = [
    allowed === base.allowed ? '' : `, allowed ${percent(allowed)}`,
    scenario.badDays ? ', bad days' : '',
    scenario.linger ? `, half of the runs as the last` : '',
    scenario.differ ? ', testers differ' : '',
    scenario.joinLate ? ', joining late' : '',
  ].join('');
  return {
    ...scenario,
    name: `${affected} of ${testers} at ${percent(rate)}, ${runs} runs${extras}`,
  };
};
const nothing = (testers: number, runs: number, more: Partial<Scenario> = {}): Scenario => {
  const scenario = {
    ...base,
    testers,
    runs,
    background: base.allowed,
    firstCellOnly: false,
    ...more,
  };
  const extras = `${scenario.badDays ? ', bad days' : ''}${scenario.linger ? ', half of the runs as the last' : ''}${scenario.differ ? ', testers differ' : ''}${scenario.joinLate ? ', joining late' : ''}`;
  return {
    ...scenario,
    name: `nothing: all ${scenario.cells} cells at ${percent(scenario.background)}, ${testers} testers, ${runs} runs${extras}`,
  };
};

const percent = (share: number): string =>
  `${(100 * share).toFixed(share < 0.1 && share > 0 && (share * 100) % 1 !== 0 ? 1 : 0)} %`;
const shown = (share: number): string => `${(100 * share).toFixed(1)} %`;

const quick = process.argv.includes('--quick');
const POWER_TESTS = quick ? 2000 : 10_000;
const NULL_TESTS = quick ? 60 : 400;
const SEED = 20_260_501;
const onlyAt = process.argv.indexOf('--only');
const only = onlyAt < 0 ? null : process.argv[onlyAt + 1];
const wants = (part: string): boolean => only === null || only === part;

const nulls = [
  nothing(8, 12),
  nothing(8, 12, { background: 0.01 }),
  nothing(8, 12, { badDays: 0.2 }),
  nothing(8, 12, { differ: true }),
  nothing(8, 12, { joinLate: true }),
  nothing(8, 12, { linger: 0.5 }),
  nothing(8, 12, { background: 0.01, linger: 0.5 }),
  nothing(5, 12),
  nothing(20, 12),
  nothing(8, 40),
];
const powers = [
  power(2, 0.6),
  power(4, 0.4),
  power(6, 0.4),
  power(8, 0.2),
  power(2, 0.6, { runs: 20 }),
  power(4, 0.4, { runs: 6 }),
  power(4, 0.4, { badDays: 0.2 }),
  power(4, 0.4, { differ: true }),
  power(4, 0.4, { joinLate: true }),
  power(4, 0.3, { runs: 20 }),
  power(2, 0.6, { testers: 5 }),
  power(5, 0.4, { testers: 12 }),
  power(6, 0.4, { testers: 20 }),
  power(10, 0.4, { testers: 100, runs: 12 }),
  power(3, 0.3, { allowed: 0.01, background: 0.002 }),
  power(1, 0.8),
  power(1, 0.5),
];

const cell = ({ detectedEver, medianRun }: RuleFigures): string =>
  `${shown(detectedEver)}${medianRun === null ? '' : ` (run ${medianRun})`}`;

if (wants('complaints')) {
  console.log(
    `Seed ${SEED}; ${POWER_TESTS} tests a line for detection, ${NULL_TESTS} for false alarms; read after every run.\n`,
  );
  console.log(
    '| share of tests with any false "recurs across testers" | evidence | eyeball | classical, read daily | classical, read once |',
  );
  console.log('| --- | --- | --- | --- | --- |');
  for (const scenario of nulls) {
    const { evidence, eyeball, classicalDaily, classicalOnce } = simulate(
      scenario,
      NULL_TESTS,
      SEED,
    );
    console.log(
      `| ${scenario.name} | ${[evidence, eyeball, classicalDaily, classicalOnce].map(({ falseEver }) => shown(falseEver)).join(' | ')} |`,
    );
  }
  console.log(
    '\n| called "recurs across testers" by the last run (median run) | evidence | still so at the end | named one tester | eyeball | classical, read daily | classical, read once |',
  );
  console.log('| --- | --- | --- | --- | --- | --- | --- |');
  for (const scenario of powers) {
    const { evidence, eyeball, classicalDaily, classicalOnce } = simulate(
      scenario,
      POWER_TESTS,
      SEED,
    );
    console.log(
      `| ${scenario.name} | ${cell(evidence)} | ${shown(evidence.detectedAtEnd)} | ${scenario.affected === 1 ? shown(evidence.oneTester) : ''} | ${cell(eyeball)} | ${cell(classicalDaily)} | ${shown(classicalOnce.detectedEver)} |`,
    );
  }
}

if (wants('wear')) {
  const WEAR_ROUNDS = quick ? 100 : 1000;
  console.log(
    `\nWear: 90 % intervals against known truth, ${WEAR_ROUNDS} rounds a line; the goal is 500 km.\n`,
  );
  console.log(
    '| truth | checks | value of a new pair | distance to the limit | "holds" said wrongly | pairs named wrongly | outlying pair named |',
  );
  console.log('| --- | --- | --- | --- | --- | --- | --- |');
  for (const design of Object.keys(designs) as Design[])
    for (const scenario of Object.keys(scenarios) as WearScenario[]) {
      const { value, distance, wrongHolds, wronglyNamed, named } = simulateWear(
        scenario,
        design,
        WEAR_ROUNDS,
        SEED,
      );
      console.log(
        `| ${scenario} | ${design} | ${[value, distance, wrongHolds, wronglyNamed].map(shown).join(' | ')} | ${named === null ? '' : shown(named)} |`,
      );
    }
}

if (wants('changes')) {
  const CHANGE_TESTS = quick ? 300 : 2000;
  console.log(
    `\nChanges: ${CHANGE_TESTS} pairs of rounds a line; the brief allows 5 %; seed ${SEED}.\n`,
  );
  for (const line of CHANGE_HEADER) console.log(line);
  for (const row of changeRows(CHANGE_TESTS, SEED)) console.log(row);
  console.log();
  for (const line of NEW_HEADER) console.log(line);
  for (const row of newRows(quick ? 100 : 1000, SEED)) console.log(row);
}

if (wants('arrivals')) {
  const ARRIVALS = quick ? 500 : 5000;
  console.log(`\nArrived: ${ARRIVALS} pairs of rounds a line; seed ${SEED}.\n`);
  for (const line of [...ARRIVAL_HEADER, ...arrivalRows(ARRIVALS, SEED)]) console.log(line);
}

if (wants('limits')) {
  const LIMIT_TESTS = quick ? 40 : 400;
  console.log(`\nLimits of a proof: at least ${LIMIT_TESTS} tests a line; seed ${SEED}.\n`);
  for (const line of limitLines(LIMIT_TESTS, SEED)) console.log(line);
}

if (wants('wrong-numbers')) {
  const FAULT_ROUNDS = quick ? 20 : 100;
  console.log(
    `\nOne wrong number: ${FAULT_ROUNDS} rounds of six pairs a line, the same for each; the goal is 500 km.\n`,
  );
  for (const line of FAULT_HEADER) console.log(line);
  for (const row of faultRows(FAULT_ROUNDS, SEED)) console.log(row);
}

if (wants('agreement')) {
  const PANELS = 20_000;
  const wrong = sweepPanels(PANELS, SEED);
  console.log(
    `\nAgreement: ${PANELS} panels of every shape; answers that are wrong: ${wrong.length}.\n`,
  );
  for (const line of wrong.slice(0, 20)) console.log(line);
  const A_DESIGN = quick ? 300 : 2000;
  console.log(
    `95 % intervals, lowest and highest coverage over designs; ${A_DESIGN} panels a design; seed ${SEED}.\n`,
  );
  for (const line of AGREEMENT_HEADER) console.log(line);
  for (const row of agreementRows(A_DESIGN, SEED)) console.log(row);
}

if (wants('two-sided')) {
  const ROUNDS = quick ? 300 : 2000;
  console.log(`\nTwo-sided comfort: ${ROUNDS} rounds a line; seed ${SEED}.\n`);
  for (const line of [...NULL_HEADER, ...nullRows(ROUNDS, SEED), '']) console.log(line);
  for (const line of [...POWER_HEADER, ...powerRows(ROUNDS, SEED), '']) console.log(line);
  for (const line of [...MOVE_HEADER, ...moveRows(ROUNDS, SEED), '']) console.log(line);
  for (const line of costLines(10 * ROUNDS, SEED)) console.log(line);
}
