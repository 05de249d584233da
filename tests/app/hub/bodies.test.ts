/** The hub's quick way of reading a body says what the schemas say. */
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as z from 'zod/mini';
import { wrongField } from '../../../app/hub/bodies.ts';
import {
  bodySchemas,
  isKind,
  kinds,
  readBody,
  readBundle,
  unpackBundle,
  type Body,
  type Kind,
} from '../../../core/records/index.ts';
import { idOf, stampAt } from '../../core/records/make.ts';

const demo = unpackBundle(
  readFileSync(new URL('../../../demo-data/wear-test.pairlog', import.meta.url)),
);
if (!demo.ok) throw new Error(demo.why);

const at = '2026-05-01T07:30:00+02:00';
const sha256 = 'a'.repeat(64);
/** Bodies of the kinds that the demo has none of, and fields that its bodies leave out. */
const more: readonly (readonly [Kind, Body])[] = [
  ['ranking', { project: idOf(1), tester: idOf(2), at, question: 'comfort', order: [[idOf(3)]] }],
  ['report', { project: idOf(1), round: idOf(2), title: 'Round 2', at, languages: ['en'], sha256 }],
  ['acknowledgement', { project: idOf(1), tester: idOf(2), stopUse: idOf(3), at }],
  [
    'reply',
    { project: idOf(1), tester: idOf(2), about: idOf(3), at, advice: 'stay-out', words: 'Rest.' },
  ],
  [
    'bench-check',
    {
      ...{ project: idOf(1), pair: idOf(2), at },
      readings: [
        { measure: 'stack-height', site: 'heel-centre', foot: 'left', value: 30, unit: 'mm' },
      ],
      correctedBy: { by: idOf(4), at, why: 'The decimal point was in the wrong place.' },
    },
  ],
  [
    'decision',
    {
      ...{ project: idOf(1), record: idOf(3), recordKind: 'bench-check', at },
      reading: { measure: 'stack-height', site: 'heel-centre', foot: 'left', unit: 'mm' },
      ...{ judged: stampAt(7), ruling: 'set-aside', why: 'A decimal point was missed.' },
    },
  ],
  [
    'quote',
    {
      ...{ project: idOf(1), source: idOf(2), sourceKind: 'run', field: 'words', at },
      ...{ words: 'The tongue slides.', tester: idOf(3), finding: idOf(4), sent: at },
    },
  ],
  [
    'question',
    {
      ...{ project: idOf(1), tester: idOf(2), at, ask: 'sock-or-shoe', options: ['shoe', 'sock'] },
      about: { record: { id: idOf(3), kind: 'run' }, pair: idOf(4), foot: 'left', zone: 'U8' },
    },
  ],
  [
    'question',
    {
      ...{ project: idOf(1), tester: idOf(2), at, words: 'Which socks?', language: 'en' },
      ...{ about: { pair: idOf(4), complaint: 'rubbing', attribute: 'arch' }, withdrawn: at },
    },
  ],
  [
    'answer',
    { project: idOf(1), tester: idOf(2), at, question: idOf(3), option: 'sock', words: 'Wool.' },
  ],
  [
    'answer',
    { project: idOf(1), tester: idOf(2), at, pair: idOf(3), words: '鞋带断了。', language: 'zh' },
  ],
  [
    'proposal',
    {
      ...{ project: idOf(1), finding: idOf(2), at, answer: 'other', sampleAt: at, words: 'Seam.' },
      change: {
        ...{ part: 'upper-pattern', line: 'collar', side: 'lateral', foot: 'left' },
        ...{ direction: 'lower', by: { amount: 2, unit: 'mm' } },
      },
      ...{ photos: [sha256], language: 'en' },
    },
  ],
  [
    'proposal-reply',
    {
      ...{ project: idOf(1), finding: idOf(2), proposal: idOf(3), judged: stampAt(7), at },
      ...{ answer: 'accepted', words: 'Go.', language: 'en' },
    },
  ],
  [
    'thanks',
    {
      ...{ project: idOf(1), tester: idOf(2), finding: idOf(3), at, zone: 'U8', kind: 'rubbing' },
      ...{ result: 'mended', words: 'Thank you.', language: 'en' },
      change: {
        ...{ part: 'midsole-foam', direction: 'less', by: { amount: 3, unit: 'asker-c' } },
        dimension: { measure: 'hardness', site: 'heel-centre' },
        limit: { measure: 'hardness', site: 'heel-centre' },
      },
    },
  ],
  [
    'fit-session',
    { project: idOf(1), round: idOf(2), name: 'Lab', at, pairs: [idOf(3)], closed: at },
  ],
  [
    'fit-trial',
    {
      ...{ project: idOf(1), session: idOf(2), pair: idOf(3), at, fitter: 'F2', lacing: 'usual' },
      ...{ sock: 'thin', walked: 'stair', heel: [{ slip: 'lifts' }], pain: ['numbness'] },
      standing: [
        { place: 'length', fit: 'right' },
        { place: 'ball', foot: 'left', fit: 'little', mm: 2 },
      ],
      spots: [{ foot: 'right', zone: 'U8', what: 'rubs' }],
      wanted: [
        {
          ...{ part: 'upper-pattern', line: 'back-curve', direction: 'inward' },
          by: { amount: 2, unit: 'mm' },
        },
      ],
      words: 'The tongue slides.',
    },
  ],
  [
    'run',
    {
      ...{ project: idOf(1), pair: idOf(2), tester: idOf(3), startedAt: at, distanceM: 8000 },
      ...{ distanceFrom: 'track', surfaces: { road: 0.5, trail: 0.5 }, comfort: { overall: 70 } },
      feet: { answer: 'complaints', complaints: [{ foot: 'left', zone: 'P4', kind: 'rubbing' }] },
      pain: { score: 3, signs: ['limp'], over: at },
      track: { distanceM: 8010, paceByKmS: [300], fingerprint: 'x', attachment: sha256 },
      photos: [sha256],
    },
  ],
];

const bodiesByKind = new Map<Kind, Body[]>();
const add = (kind: Kind, body: Body) =>
  bodiesByKind.set(kind, [...(bodiesByKind.get(kind) ?? []), body]);
for (const { revision } of readBundle(demo.text).revisions)
  if (isKind(revision.kind) && revision.body) add(revision.kind, revision.body);
for (const [kind, body] of more) add(kind, body);

const anyBody = fc
  .constantFrom(...bodiesByKind.keys())
  .chain((kind) =>
    fc.constantFrom(...(bodiesByKind.get(kind) as Body[])).map((body) => ({ kind, body })),
  );

type Parent = Record<string | number, unknown>;

/** Every object and list in a value, itself first. */
const parentsIn = (value: unknown): Parent[] =>
  typeof value === 'object' && value !== null
    ? [value as Parent, ...Object.values(value).flatMap(parentsIn)]
    : [];

const oddValues: readonly unknown[] = [
  ...[undefined, null, true, '', 'x', 0, -1, 0.5, 1.5, 11, 101, 1e9, 2 ** 53, -0, NaN, Infinity],
  ...[
    [],
    {},
    [{}],
    [undefined],
    { answer: 'nothing' },
    { road: 1 },
    { road: 2 },
    { '1': 1 },
    idOf(9),
  ],
  ...[sha256, at, '2026-02-30T00:00:00Z', 'x'.repeat(201), 'x'.repeat(4001), '\u{1F45F}', 'left'],
  ...[JSON.parse('{"__proto__":1}') as unknown, Array.from({ length: 61 }, () => ({}))],
];

/** Puts an odd value somewhere into a body, or takes a field out. */
const change = (
  body: Body,
  picks: { where: number; key: number; name: string; value: unknown }[],
) => {
  const changed = structuredClone(body) as Parent;
  for (const { where, key, name, value } of picks) {
    const parents = parentsIn(changed);
    const parent = parents[where % parents.length] as Parent;
    const names = [...Object.keys(parent), name];
    const chosen = names[key % names.length] as string;
    if (value === 'out') delete parent[chosen];
    else parent[chosen] = structuredClone(value);
  }
  return changed as Body;
};

const asSchema = (kind: Kind, body: Body): string | null => {
  const read = readBody(kind, body);
  return read.ok ? null : (read.problems[0]?.field ?? '');
};

describe('the body of a revision, as the hub reads it', () => {
  it('has a schema that can be compiled and a sample here, whatever its kind', () => {
    for (const kind of kinds) {
      expect(() => z.compile<z.ZodMiniType>(bodySchemas[kind], { strict: true })).not.toThrow();
      expect(bodiesByKind.has(kind), kind).toBe(true);
    }
  });

  it('is taken where the schema takes it', () => {
    for (const [kind, bodies] of bodiesByKind)
      for (const body of bodies) expect(wrongField(kind, body)).toBeNull();
  });

  it('is refused at the field at which the schema refuses it', () => {
    const outcomes = { taken: 0, refused: 0 };
    const pick = fc.record({
      where: fc.nat(40),
      key: fc.nat(40),
      name: fc.constantFrom('words', 'photos', 'note', 'gravel', 'severity', 'isNew'),
      value: fc.oneof(fc.constantFrom('out', ...oddValues), fc.jsonValue({ maxDepth: 2 })),
    });
    fc.assert(
      fc.property(anyBody, fc.array(pick, { minLength: 1, maxLength: 3 }), (one, picks) => {
        const body = change(one.body, picks);
        const field = asSchema(one.kind, body);
        outcomes[field === null ? 'taken' : 'refused']++;
        expect(wrongField(one.kind, body)).toBe(field);
      }),
      { numRuns: 1500 },
    );
    // Neither answer is a rare one, or the comparison would show little.
    expect(Math.min(outcomes.taken, outcomes.refused)).toBeGreaterThan(150);
  });
});
