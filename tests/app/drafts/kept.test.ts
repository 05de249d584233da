/** Half-filled forms come back as they were left; one that another version wrote, or whose record moved on, does not. */
import { describe, expect, it } from 'vitest';
import { newCheckDraft } from '../../../app/drafts/check.ts';
import { newFinding } from '../../../app/drafts/finding.ts';
import { gridKey, newGaugeDraft } from '../../../app/drafts/gauge.ts';
import {
  checkSchema,
  findingSchema,
  gaugeSchema,
  handOutSchema,
  keptDraft,
  newFindingSchema,
  pairSchema,
  projectSchema,
  questionSchema,
  roundSchema,
  testerSchema,
} from '../../../app/drafts/kept.ts';
import type { KeptSchema } from '../../../app/drafts/kept-schema.ts';
import { draftOfProject, emptyLimit } from '../../../app/drafts/project.ts';
import { draftOfPractice, draftOfRound, emptyChange } from '../../../app/drafts/round.ts';
import { draftOfTester } from '../../../app/drafts/tester.ts';
import { practiceDimensions } from '../../../core/rounds/index.ts';
import { idOf } from '../../core/records/make.ts';

const round = {
  ...draftOfRound(null),
  changes: [{ ...emptyChange, kept: { part: 'last', what: 'x', newer: 1 } }],
  dimensions: practiceDimensions.map(draftOfPractice),
  layers: { U4: '3' },
};
const finding = newFinding('Heel slips', 'upper-pattern');
const drafts: readonly [string, KeptSchema<unknown>, unknown][] = [
  ['pair', pairSchema, { code: '4', size: '', carried: '1' }],
  ['tester', testerSchema, draftOfTester(null)],
  ['hand-out', handOutSchema, { pair: '', tester: idOf(2), since: null, blind: true }],
  [
    'gauge study',
    gaugeSchema,
    { ...newGaugeDraft, names: { 1: 'Lab' }, cells: { [gridKey(0, 0, 1)]: '5,' } },
  ],
  ['finding', findingSchema, finding],
  [
    'new finding',
    newFindingSchema,
    {
      finding,
      round: idOf(3),
      source: 'wear',
      key: '',
      lines: 'a',
      typed: { title: true, part: false },
    },
  ],
  ['round', roundSchema, round],
  [
    'question',
    questionSchema,
    { tester: idOf(2), ask: 'pain-now', words: 'How is it?', answers: 'own' },
  ],
  ['check', checkSchema, newCheckDraft(0)],
  ['project', projectSchema, { ...draftOfProject(null), limits: [emptyLimit] }],
];

describe('a form that was left', () => {
  it.each(drafts)('comes back as it was: %s', (_, schema, draft) => {
    // As the device's database keeps it.
    const value = structuredClone({ of: 'stamp', draft });
    expect(keptDraft(value, 'stamp', schema)).toEqual(draft);
  });

  it.each(drafts)(
    'does not where a field is missing or of another kind: %s',
    (_, schema, draft) => {
      const fields = draft as Record<string, unknown>;
      for (const field of Object.keys(fields)) {
        const { [field]: _gone, ...less } = fields;
        expect(keptDraft({ of: '', draft: less }, '', schema), field).toBeNull();
        expect(
          keptDraft({ of: '', draft: { ...fields, [field]: 7 } }, '', schema),
          field,
        ).toBeNull();
      }
    },
  );

  it('does not where the record was saved since, or nothing was kept', () => {
    const value = { of: 'stamp', draft: { code: '4', size: '', carried: '' } };
    expect(keptDraft(value, 'later stamp', pairSchema)).toBeNull();
    expect(keptDraft(undefined, '', pairSchema)).toBeNull();
    expect(keptDraft('4', '', pairSchema)).toBeNull();
  });
});
