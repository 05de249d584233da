/** A specialist's answer as it is typed: what it reads into, and everything that is wrong with it at once. */
import { describe, expect, it } from 'vitest';
import {
  changeUnitsOf,
  directionsOf,
  draftOfChange,
  emptyChangeForm,
  readChange,
  whatCanMove,
  withMoved,
} from '../../../app/drafts/change.ts';
import {
  draftOfProposal,
  newProposal,
  proposalTroubles,
  readProposal,
  type ProposalDraft,
} from '../../../app/drafts/proposal.ts';
import { toInstant } from '../../../app/parts/instant.ts';
import {
  proposalSchema,
  changeDirections,
  changeUnits,
  changeRangeOf,
  structuredChangeSchema,
  type Finding,
  type Proposal,
  type StructuredChange,
} from '../../../core/records/index.ts';
import { idOf } from '../../core/records/make.ts';

const nowMs = new Date('2026-11-30T09:00').getTime();
const place = { project: idOf(1), finding: idOf(2) };
const written = { nowMs, language: 'zh' };
const write = (value: number) => String(value).replace('.', ',');

const asked: StructuredChange = {
  part: 'upper-pattern',
  line: 'collar',
  side: 'lateral',
  foot: 'left',
  direction: 'lower',
  by: { amount: 3.5, unit: 'mm' },
};
const withChange: Pick<Finding, 'part' | 'change' | 'wantedMm'> = {
  part: 'upper-pattern',
  change: asked,
};
const inWords: typeof withChange = {
  part: 'last',
  wantedMm: -2 as Finding['wantedMm'],
};

const read = (
  typed: Partial<ProposalDraft>,
  finding = withChange,
  before: Proposal | null = null,
) => {
  const begun = before ? draftOfProposal(before, finding, write) : newProposal(finding, write);
  return readProposal({ ...begun, ...typed }, finding, place, written, before);
};
const bodyOf = (...args: Parameters<typeof read>): Proposal => {
  const got = read(...args);
  if (!got.ok) throw new Error(JSON.stringify(got.troubles));
  expect(proposalSchema.safeParse(got.body).success).toBe(true);
  return got.body;
};
const fieldsOf = (...args: Parameters<typeof read>) => {
  const got = read(...args);
  return got.ok ? [] : got.troubles.map(({ field }) => field);
};

describe('a change in a form', () => {
  it('reads back to itself, and keeps what a newer app wrote', () => {
    const newer = { ...asked, drawing: 'x' } as StructuredChange;
    expect(readChange(draftOfChange(newer, write), newer)).toEqual(newer);
    const dimension: StructuredChange = {
      part: 'last',
      dimension: { measure: 'dimension', site: 'toe of the house' },
      direction: 'more',
    };
    expect(readChange(draftOfChange(dimension, write), null)).toEqual(dimension);
  });

  it('is offered only directions and units that go with what moves', () => {
    expect(directionsOf('line collar')).not.toContain('less');
    expect(directionsOf('mass shoe')).toEqual(['more', 'less']);
    expect(directionsOf('')).toEqual(changeDirections);
    expect(changeUnitsOf('mass shoe')).toEqual(['g', '%']);
    expect(changeUnitsOf('')).toEqual(changeUnits);
    const moved = withMoved(draftOfChange(asked, write), 'hardness heel-centre');
    expect(moved).toMatchObject({ direction: '', unit: 'asker-c', amount: '3,5' });
    expect(withMoved(draftOfChange(asked, write), 'line tongue').direction).toBe('lower');
  });

  it('each thing that can move makes a change that a record may hold', () => {
    for (const what of whatCanMove)
      for (const direction of directionsOf(what))
        for (const unit of changeUnitsOf(what)) {
          const { least, most } = changeRangeOf(unit);
          for (const amount of [least, most]) {
            const form = { ...emptyChangeForm('last'), what, direction, unit };
            const change = readChange({ ...form, amount: String(amount) }, null);
            expect(structuredChangeSchema.safeParse(change).success, `${what} ${unit}`).toBe(true);
          }
          const form = { ...emptyChangeForm('last'), what, direction, unit };
          expect(readChange({ ...form, amount: String(most + 1) }, null)).toBeNull();
          expect(readChange({ ...form, amount: '0' }, null)).toBeNull();
        }
  });
});

describe('an answer', () => {
  it('can do as asked, by a day', () => {
    expect(bodyOf({ answer: 'can', sampleDay: '2026-12-04' })).toEqual({
      ...place,
      at: toInstant(nowMs),
      answer: 'can',
      sampleAt: toInstant(new Date('2026-12-04T12:00').getTime()),
    });
  });

  it('another way is begun with what was asked, to be changed', () => {
    const { change } = newProposal(withChange, write);
    const body = bodyOf({
      answer: 'other',
      change: { ...change, amount: '1,5' },
      words: ' 里布接缝在那里 ',
      photos: ['a'.repeat(64)],
    });
    expect(body.change).toEqual({ ...asked, by: { amount: 1.5, unit: 'mm' } });
    expect(body).toMatchObject({
      words: '里布接缝在那里',
      language: 'zh',
      photos: ['a'.repeat(64)],
    });
  });

  it('says no more than was said: a size alone that the finding began with is no change', () => {
    expect(newProposal(inWords, write).change).toMatchObject({ part: 'last', amount: '2' });
    expect(bodyOf({ answer: 'can' }, inWords)).not.toHaveProperty('change');
    // Where something was asked for as a structure, a plain yes repeats nothing of it.
    expect(bodyOf({ answer: 'can' })).not.toHaveProperty('change');
    const { change } = newProposal(inWords, write);
    expect(
      bodyOf({ answer: 'can', change: { ...change, direction: 'less' } }, inWords).change,
    ).toEqual({ part: 'last', direction: 'less', by: { amount: 2, unit: 'mm' } });
  });

  it('that it cannot be done carries neither change nor day', () => {
    const body = bodyOf({ answer: 'cannot', words: 'The seam is there.', sampleDay: '2020-01-01' });
    expect(body).toEqual({
      ...place,
      at: toInstant(nowMs),
      answer: 'cannot',
      words: 'The seam is there.',
      language: 'zh',
    });
  });

  it('everything that is wrong is said at once', () => {
    const { change } = newProposal(withChange, write);
    expect(fieldsOf({})).toEqual(['answer']);
    expect(fieldsOf({ answer: 'cannot' })).toEqual(['words']);
    expect(
      fieldsOf({
        answer: 'other',
        change: { ...change, direction: '', amount: 'two' },
        sampleDay: '2026-11-29',
      }),
    ).toEqual(['direction', 'amount', 'sampleDay']);
    expect(fieldsOf({ answer: 'other', change: emptyChangeForm('last') })).toEqual(['words']);
    expect(fieldsOf({ answer: 'can', sampleDay: '2026-11-30' })).toEqual([]);
    expect(fieldsOf({ answer: 'can', sampleDay: 'soon' })).toEqual(['sampleDay']);
    for (const amount of ['0', '-2', '201', '0.05'])
      expect(fieldsOf({ answer: 'other', change: { ...change, amount } }), amount).toEqual([
        'amount',
      ]);
  });

  it('a corrected one keeps the day it named and what a newer app wrote, and loses what was emptied', () => {
    const before = {
      ...place,
      at: '2026-10-01T08:00:00+02:00',
      answer: 'other',
      change: { ...asked, drawing: 'x' },
      sampleAt: '2026-10-20T12:00:00+02:00',
      words: 'as it was',
      language: 'en',
      photos: ['b'.repeat(64)],
      later: 1,
    } as Proposal;
    const same = bodyOf({}, withChange, before);
    expect(same).toEqual({ ...before, at: toInstant(nowMs) });
    expect(bodyOf({ words: '新写的' }, withChange, before).language).toBe('zh');
    const less = bodyOf(
      { answer: 'can', words: '', photos: [], sampleDay: '' },
      withChange,
      before,
    );
    expect(less).toEqual({ ...place, at: toInstant(nowMs), answer: 'can', later: 1 });
    expect(
      proposalTroubles(
        { ...draftOfProposal(before, withChange, write), sampleDay: '2026-10-21' },
        withChange,
        nowMs,
        before,
      ),
    ).toEqual([{ field: 'sampleDay', why: 'past' }]);
  });
});
