/** The whole review as JSON. */
import type { Written } from './written.ts';

/** Version of the JSON below; grows when a field changes its meaning. */
const DATA_VERSION = 1;

/** What the endings of names mean, and the scales that have no ending: for who reads the file without this code. */
const UNITS = {
  '…M': 'metres',
  '…Mm': 'millimetres',
  '…Ms': 'milliseconds since 1970-01-01T00:00:00Z',
  '…KN': 'kilonewtons, summed over all steps of a shoe',
  '…H': 'hours',
  share: '0 to 1',
  'chance, risk, p, adjustedP': 'probability, 0 to 1',
  comfort: 'points, 0 to 100',
  'twoSided, twoSidedChanges':
    'marks, -100 (too little) to 100 (too much), 0 is just right; closer: points of 100; cost: points of comfort',
  severity: '0 to 10',
  'bench, deviations, sides, gauges': 'in the unit named beside them',
  'wear[].kind': 'measure and unit; values in that unit',
  'wear[].x, distance, at, greatest, reach':
    'metres, or metres of the reference runner of the dose',
  'wear[].change, difference':
    'the unit of the kind; for mass, impact peaks and energies the ratio to the value when new',
};

/**
 * The whole review as JSON, with what each round was looked at for and the findings.
 * `{ format: "pairlog-review", v, asOf, units, …review, rounds: [{ …round, cells, wear, verdict, influence, against, layers }],
 * findings, feet, panel }`
 */
export const jsonOf = ({ review, reports, findings: list, feet, panel }: Written): string =>
  JSON.stringify(
    {
      format: 'pairlog-review',
      v: DATA_VERSION,
      asOf: new Date(review.nowMs).toISOString(),
      units: UNITS,
      ...review,
      // Testers are codes: their names stay in the group.
      testers: review.testers.map(({ name: _name, ...tester }) => tester),
      rounds: review.rounds.map((round, at) => ({
        ...round,
        cells: reports[at]?.looks,
        wear: reports[at]?.wear,
        verdict: reports[at]?.verdict,
        influence: reports[at]?.influence,
        against: reports[at]?.against,
        layers: reports[at]?.layers,
      })),
      findings: list.map(({ id, body }) => ({ id, ...body })),
      feet,
      panel,
    },
    null,
    2,
  );
