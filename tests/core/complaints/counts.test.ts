import { describe, expect, it } from 'vitest';
import { countReports, countZones, isCautionDue } from '../../../core/complaints/index.ts';
import { countComplaints } from './count-complaints.ts';
import type { Complaint } from '../../../core/records/index.ts';
import { idOf } from '../records/make.ts';

const slip = (foot: 'left' | 'right', severity?: number): Complaint => ({
  foot,
  zone: 'U10',
  kind: 'heel-slip',
  ...(severity !== undefined && { severity }),
});
const answer = (run: number, tester: number, complaints: Complaint[] = []) => ({
  run: idOf(run),
  tester: idOf(tester),
  complaints,
});

describe('counting complaints', () => {
  const answers = [
    answer(1, 101, [slip('left', 4), slip('right', 6)]),
    answer(2, 101, [slip('left', 2)]),
    answer(3, 101),
    answer(4, 102, [slip('right')]),
    answer(5, 103),
  ];

  it('counts the runs that reported a cell, each once, in one pass', () => {
    const reported = countReports(answers);
    expect(reported({ zone: 'U10', kind: 'heel-slip' })).toBe(3);
    expect(reported({ zone: 'U10', kind: 'pressure' })).toBe(0);
  });

  it('counts runs and testers of those asked, each run once whatever the feet', () => {
    const { asked, cells } = countComplaints(answers);
    expect(asked).toEqual({ runs: 5, testers: 3 });
    expect(cells).toMatchObject([
      {
        zone: 'U10',
        kind: 'heel-slip',
        runs: 3,
        testersOnce: 2,
        testersTwice: 1,
        byFoot: { left: 2, right: 2 },
        severity: { mean: 4, most: 6, runs: 2 },
        byTester: [
          { tester: idOf(101), asked: 3, reported: 2 },
          { tester: idOf(102), asked: 1, reported: 1 },
        ],
      },
    ]);
  });

  it('tells "nobody was asked" from "nobody complained"', () => {
    expect(countComplaints([])).toEqual({ asked: { runs: 0, testers: 0 }, cells: [] });
    expect(countComplaints([answer(1, 101)])).toEqual({
      asked: { runs: 1, testers: 1 },
      cells: [],
    });
  });

  it('counts a tester once in a zone, over all kinds, for each foot', () => {
    const rubbing: Complaint = { foot: 'left', zone: 'U10', kind: 'rubbing' };
    const zones = countZones([answer(1, 101, [slip('left'), rubbing]), ...answers], 'left');
    expect(zones.get('U10')).toEqual({ zone: 'U10', runs: 3, testers: 1, testersTwice: 1 });
    expect(countZones(answers, 'right').get('U10')).toMatchObject({ runs: 2, testers: 2 });
  });
});

describe('the caution notice', () => {
  it.each([
    [null, null, [], false],
    [0, null, ['swelling'], false],
    [2, true, [], false],
    [3, true, [], true],
    [3, null, [], true],
    [5, false, [], false],
    [1, false, ['limp'], true],
  ] as const)('pain %s, new %s, signs %j: %s', (score, isNew, signs, due) => {
    expect(isCautionDue(score, isNew, signs)).toBe(due);
  });
});
