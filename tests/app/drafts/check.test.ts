/** A check typed anew, or corrected: what is not touched stays as it was saved, and so do unknown fields. */
import { describe, expect, it } from 'vitest';
import {
  checkDraftOf,
  newCheckDraft,
  typedCheck,
  type CheckDraft,
} from '../../../app/drafts/check.ts';
import {
  beforeCorrection,
  correctionOf,
  decisionsKept,
} from '../../../app/drafts/check-correction.ts';
import { readBody, type BenchCheck, type RecordOf } from '../../../core/records/index.ts';
import { metres } from '../../../core/units/index.ts';
import { idOf, stampAt } from '../../core/records/make.ts';

const [project, pair, other] = [idOf(1), idOf(2), idOf(3)];
const reading = {
  measure: 'stack-height',
  site: 'heel-centre',
  foot: 'left',
  value: 35.81,
  unit: 'mm',
  gauge: 'calliper C2',
  uncertainty: 0.05,
} as const;

/** As it was saved, by a version that knows more fields than this one. */
const saved = {
  project,
  pair,
  at: '2026-09-06T02:00:37+02:00',
  distanceM: metres(172_340),
  temperatureC: 22.2,
  operator: 'Shop A',
  readings: [
    { ...reading, humidity: 40 },
    { ...reading, foot: 'right', value: 35.79, gauge: 'calliper C3' },
    { ...reading, measure: 'hardness', unit: 'asker-c', value: 44.66, uncertainty: undefined },
  ],
  weather: 'dry',
} as unknown as BenchCheck;

const typed = (draft: CheckDraft, before: BenchCheck | null = saved): BenchCheck => {
  const answer = typedCheck(draft, project, metres(5000), before);
  if ('troubles' in answer) throw new Error(JSON.stringify(answer.troubles));
  return answer.check;
};
const start = checkDraftOf(saved);
const put = (at: number, part: Partial<CheckDraft['readings'][number]>): CheckDraft => ({
  ...start,
  readings: start.readings.map((one, other_) => (other_ === at ? { ...one, ...part } : one)),
});

describe('a correction', () => {
  it('changes nothing that was not touched', () => {
    expect(JSON.parse(JSON.stringify(typed(start)))).toEqual(JSON.parse(JSON.stringify(saved)));
    expect(correctionOf(saved, typed(start), { by: other, at: saved.at, why: 'x' })).toBeNull();
  });

  it('keeps unknown fields of the check and of its readings when a value is corrected', () => {
    const after = typed(put(0, { value: '34,81' }));
    expect(after).toMatchObject({ weather: 'dry', at: saved.at, distanceM: 172_340 });
    expect(after.readings[0]).toEqual({ ...reading, value: 34.81, humidity: 40 });
    expect(after.readings.slice(1)).toEqual(
      JSON.parse(JSON.stringify(saved.readings.slice(1))) as unknown,
    );
  });

  it('takes a field out that was emptied, and drops a reading whose value was', () => {
    const after = typed({ ...put(0, { value: '', uncertainty: '' }), room: '', km: '' });
    expect(after.readings).toHaveLength(2);
    expect(after).not.toHaveProperty('temperatureC');
    expect(after).not.toHaveProperty('distanceM');
    expect(typed(put(1, { uncertainty: '' })).readings[1]).not.toHaveProperty('uncertainty');
  });

  it('leaves each reading its own gauge unless one is typed for its kind', () => {
    const [height, hard] = ['stack-height mm', 'hardness asker-c'];
    expect(start.gauges).toEqual({ [height]: '', [hard]: 'calliper C2' });
    const gauges = (draft: CheckDraft) => typed(draft).readings.map(({ gauge }) => gauge);
    expect(gauges({ ...start, operator: 'Shop B' })).toEqual([
      'calliper C2',
      'calliper C3',
      'calliper C2',
    ]);
    expect(gauges({ ...start, gauges: { ...start.gauges, [height]: 'calliper C9' } })).toEqual([
      'calliper C9',
      'calliper C9',
      'calliper C2',
    ]);
    expect(gauges({ ...start, gauges: { ...start.gauges, [hard]: 'durometer D1' } })).toEqual([
      'calliper C2',
      'calliper C3',
      'durometer D1',
    ]);
  });

  it('drops the gauge of a reading that becomes one of another kind', () => {
    const after = typed(put(0, { measure: 'mass', unit: 'g', value: '250' }));
    expect(after.readings[0]).not.toHaveProperty('gauge');
    expect(after.readings[1]).toHaveProperty('gauge', 'calliper C3');
  });

  it('says who corrected it, when and why, as the schema takes it', () => {
    const by = { by: other, at: '2026-11-18T10:00:00Z', why: 'The comma was misread.' };
    const after = correctionOf(saved, typed(put(0, { value: '34.81' })), by);
    expect(after?.correctedBy).toEqual(by);
    expect(readBody('bench-check', JSON.parse(JSON.stringify(after))).ok).toBe(true);
    expect(
      readBody('bench-check', {
        ...JSON.parse(JSON.stringify(after)),
        correctedBy: { ...by, why: '' },
      }).ok,
    ).toBe(false);
  });
});

describe('a new check', () => {
  const draft = newCheckDraft(Date.parse('2026-11-18T10:00:00Z'));
  const filled: CheckDraft = {
    ...draft,
    pair,
    gauges: { 'stack-height mm': 'calliper C2', 'hardness asker-c': 'durometer D1' },
    readings: [{ ...(draft.readings[0] as CheckDraft['readings'][number]), value: '36' }],
  };
  it('says everything that is missing or cannot be, each with its field', () => {
    const troublesOf = (one: CheckDraft) => {
      const read = typedCheck(one, project, metres(0), null);
      return 'troubles' in read ? read.troubles : [];
    };
    expect(troublesOf({ ...draft, at: '', km: 'far', room: '120' })).toMatchObject([
      { what: 'missing', field: 'pair' },
      { what: 'missing', field: 'at' },
      { what: 'number', field: 'km', value: null },
      { what: 'number', field: 'room', value: 120 },
      { what: 'missing', field: 'value' },
    ]);
    const [row] = filled.readings;
    if (!row) throw new Error('no row');
    const rows = [row, { ...row, value: '' }, { ...row, value: 'x', load: '-1' }];
    expect(troublesOf({ ...filled, readings: rows })).toMatchObject([
      { what: 'row', at: 2, field: 'value', value: null },
      { what: 'row', at: 2, field: 'load', value: -1 },
    ]);
    expect(troublesOf(filled)).toEqual([]);
  });
  it('holds nothing that was not typed; on arrival the pair has come as far as it was carried', () => {
    expect(typed(filled, null)).toEqual({
      project,
      pair,
      at: expect.stringMatching(/^2026-11-18T/) as string,
      readings: [
        {
          ...{ measure: 'stack-height', site: 'heel-centre', foot: 'left', value: 36, unit: 'mm' },
          gauge: 'calliper C2',
        },
      ],
    });
    expect(typed({ ...filled, arrival: true, km: 'x' }, null).distanceM).toBe(5000);
  });
});

describe('what was decided of a check', () => {
  const record = {
    kind: 'bench-check',
    body: saved,
    revision: { id: idOf(20), stamp: stampAt(5) },
  } as unknown as RecordOf<'bench-check'>;
  const decision = (foot: 'left' | 'right', judged = stampAt(5), at = 6) =>
    ({
      kind: 'decision',
      body: {
        ...{ project, record: idOf(20), recordKind: 'bench-check', judged, why: 'misread' },
        reading: { measure: 'stack-height', site: 'heel-centre', foot, unit: 'mm' },
        ...{ ruling: 'set-aside', at: saved.at },
      },
      revision: { id: idOf(30 + at), stamp: stampAt(at) },
    }) as unknown as RecordOf<'decision'>;

  it('holds on for readings that a correction leaves as they were, and for no other', () => {
    const after = { body: typed(put(0, { value: '34.81' })), stamp: stampAt(9) };
    const kept = decisionsKept([decision('left'), decision('right')], record, after);
    expect(kept).toHaveLength(1);
    expect(kept[0]).toMatchObject({
      judged: stampAt(9),
      ruling: 'set-aside',
      reading: { foot: 'right' },
    });
    expect(decisionsKept([decision('right', stampAt(4))], record, after)).toEqual([]);
  });

  it('is said anew in the order in which it was decided', () => {
    const after = { body: saved, stamp: stampAt(9) };
    const kept = decisionsKept(
      [{ ...decision('left', stampAt(5), 8) }, decision('left', stampAt(5), 7)],
      record,
      after,
    );
    expect(kept).toHaveLength(2);
  });
});

describe('before its correction', () => {
  it('a check stood as it was saved last without it', () => {
    const by = (at: string) => ({ by: other, at, why: 'x' });
    const bodies = [
      { stamp: stampAt(1), body: { n: 1 } },
      { stamp: stampAt(3), body: { n: 3, correctedBy: by('2026-11-02T00:00:00Z') } },
      { stamp: stampAt(2), body: { n: 2 } },
      { stamp: stampAt(4), body: null },
    ];
    expect(beforeCorrection(bodies, '2026-11-03T00:00:00Z')).toMatchObject({ n: 3 });
    expect(beforeCorrection(bodies, '2026-11-02T00:00:00Z')).toEqual({ n: 2 });
    expect(beforeCorrection([], '2026-11-02T00:00:00Z')).toBeNull();
  });
});
