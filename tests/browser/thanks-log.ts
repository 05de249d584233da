/** A small invented test for the thanks: two testers whose collar rubbed, of whom one knows what the next round changed. */
import { writeFile } from 'node:fs/promises';
import { writeBundle } from '../../core/records/index.ts';
import { idOf } from '../core/records/make.ts';
import * as make from '../core/review/log-for-tests.ts';
import { own, record } from '../core/review/log-for-tests.ts';

const DAY_MS = 86_400_000;
const [FIRST, SECOND] = [idOf(2), idOf(3)];
const [ADA, BEN] = [idOf(201), idOf(202)];
export const FINDING = idOf(700);
export const BEN_ID = BEN;

const rubs = {
  feet: {
    answer: 'complaints',
    complaints: [{ foot: 'right', zone: 'U8', kind: 'rubbing', severity: 4 }],
  },
  comfort: { overall: 55 },
};

/**
 * Writes it as a bundle of a group. Ada (T01) wears a pair of round 2 and knows the change; Ben (T02) wears his blind.
 * @param isChanged round 2 carries the lower collar already
 */
export const writeThanksLog = async (
  file: string,
  nowMs: number,
  isChanged = true,
): Promise<void> => {
  const daysAgo = (days: number) => new Date(nowMs - days * DAY_MS).toISOString();
  const collar = {
    ...{ part: 'upper-pattern', line: 'collar', direction: 'lower' },
    by: { amount: 2, unit: 'mm' },
  };
  const change = { part: 'upper-pattern', what: 'Collar lower', structured: collar };
  const runs = [50, 48, 46, 44].map((days, at) =>
    make.run(idOf(1001 + at), { pair: idOf(101), tester: ADA }, daysAgo(days), rubs),
  );
  const revisions = [
    make.project(),
    make.round(FIRST, 1, { name: 'Round 1' }),
    make.round(SECOND, 2, {
      name: 'Round 2',
      changes: isChanged ? [{ ...change, finding: FINDING }] : [],
    }),
    record(ADA, 'tester', { code: 'T01' }),
    record(BEN, 'tester', { code: 'T02' }),
    make.pair(idOf(101), FIRST, '101'),
    make.pair(idOf(102), FIRST, '102'),
    make.pair(idOf(111), SECOND, '111'),
    make.pair(idOf(112), SECOND, '112'),
    make.handOut(idOf(301), { pair: idOf(101), tester: ADA }, daysAgo(60), { until: daysAgo(20) }),
    make.handOut(idOf(302), { pair: idOf(102), tester: BEN }, daysAgo(60), { until: daysAgo(20) }),
    make.handOut(idOf(303), { pair: idOf(111), tester: ADA }, daysAgo(15), { blind: false }),
    make.handOut(idOf(304), { pair: idOf(112), tester: BEN }, daysAgo(15)),
    ...runs,
    make.run(idOf(1010), { pair: idOf(102), tester: BEN }, daysAgo(45), rubs),
    make.run(idOf(1011), { pair: idOf(111), tester: ADA }, daysAgo(3), {
      feet: { answer: 'nothing' },
      comfort: { overall: 80 },
    }),
    own(FINDING, 'finding', {
      ...{ round: FIRST, title: 'The collar rubs', part: 'upper-pattern', priority: 'high' },
      ...{ kind: 'rubbing', zone: 'U8', state: 'asked-for' },
    }),
  ];
  await writeFile(
    file,
    writeBundle(
      { madeAt: daysAgo(0), group: idOf(8), groupName: 'Thanks', by: idOf(9) },
      revisions,
    ),
  );
};
