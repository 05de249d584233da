/** Every number of every schema has ends, so that a new field cannot forget them. */
import { describe, expect, it } from 'vitest';
import * as z from 'zod/mini';
import * as wire from '../../../core/records/wire.ts';
import { bundleEndSchema, bundleHeaderSchema } from '../../../core/records/bundle.ts';
import {
  bodySchemas,
  bundleJsonSchema,
  kinds,
  measures,
  numberFields,
  rangeAt,
  rangeOf,
  ranges,
  readBody,
  revisionSchema,
  unitsOf,
} from '../../../core/records/index.ts';

const isSchema = (value: unknown): value is z.ZodMiniType =>
  typeof value === 'object' && value !== null && '_zod' in value;

/** Whatever comes in from outside, by name. */
const schemas: readonly (readonly [string, z.ZodMiniType])[] = [
  ...Object.entries(bodySchemas),
  ['revision', revisionSchema],
  ['bundle header', bundleHeaderSchema],
  ['bundle end', bundleEndSchema],
  ...Object.entries(wire).flatMap(([name, value]) =>
    isSchema(value) ? [[name, value] as const] : [],
  ),
];

describe('the numbers of all schemas', () => {
  it('have a least and a greatest value', () => {
    const open = schemas.flatMap(([name, schema]) =>
      numberFields(schema)
        .filter(({ least, most }) => least === null || most === null)
        .map(({ path }) => `${name} ${path.join('.')}`),
    );
    expect(open).toEqual([]);
    // The walk finds them wherever they stand.
    expect(numberFields(bodySchemas.project).map(({ path }) => path.join('.'))).toContain(
      'brief.feet.lengthMm.*',
    );
    expect(schemas.flatMap(([, schema]) => numberFields(schema)).length).toBeGreaterThan(120);
  });

  it('are found open where a schema forgets an end', () => {
    const forgetful = z.looseObject({
      a: z.optional(z.array(z.union([z.literal('x'), z.number().check(z.minimum(0))]))),
      b: z.partialRecord(z.enum(['x']), z.nullable(z.int())),
    });
    expect(numberFields(forgetful)).toEqual([
      { path: ['a', '*'], least: 0, most: null },
      { path: ['b', '*'], least: null, most: null },
    ]);
  });

  it('show them in the JSON Schema', () => {
    const withoutEnds: string[] = [];
    const walk = (value: unknown, path: string): void => {
      if (typeof value !== 'object' || value === null) return;
      const { type, minimum, maximum } = value as Record<string, unknown>;
      if ((type === 'number' || type === 'integer') && !('const' in value))
        if (typeof minimum !== 'number' || typeof maximum !== 'number') withoutEnds.push(path);
      for (const [key, inner] of Object.entries(value)) walk(inner, `${path}/${key}`);
    };
    const schema = bundleJsonSchema();
    walk(schema, '');
    expect(withoutEnds).toEqual([]);
    expect(JSON.stringify(schema)).toContain(`"maximum":${ranges.footLengthMm.most}`);
  });
});

describe('a figure that cannot be', () => {
  const brief = {
    ...{ runner: 'neutral', use: 'tempo', surfaces: ['road'], distanceM: 400_000 },
    ...{ allowedRate: { complaint: 0.05, pain: 0.01 }, limits: [], attributes: ['overall'] },
  };

  it('is refused with its field and what is allowed there', () => {
    const feet = { lengthMm: [250, 1e8] };
    const read = readBody('project', { name: 'Test', brief: { ...brief, feet } });
    expect(read).toEqual({
      ok: false,
      problems: [{ field: 'brief.feet.lengthMm.1', expected: 'a number from 100 to 400' }],
    });
    expect(rangeAt('project', 'brief.feet.lengthMm.1')).toEqual({
      least: 100,
      most: 400,
      unit: 'mm',
    });
    expect(rangeAt('project', 'brief.feet')).toBeNull();
    expect(rangeAt('weather', 'x')).toBeNull();
  });

  it('is refused in a reading where nothing measures so much, in any unit', () => {
    const at = '2026-05-01T07:30:00+02:00';
    const id = '0197a3b0-0000-7000-8000-000000000000';
    const check = (value: number) =>
      readBody('bench-check', {
        ...{ project: id, pair: id, at },
        readings: [{ measure: 'hardness', site: 'heel', foot: 'left', unit: 'asker-c', value }],
      }).ok;
    expect([50, 500, 1e100, -1e100, 1e308, NaN].map(check)).toEqual([
      true,
      // Hardly a hardness, but the record can be read: the reading alone is asked about.
      true,
      false,
      false,
      false,
      false,
    ]);
  });

  it('has a range for every measure in each of its units, within what a record holds', () => {
    for (const measure of measures)
      for (const unit of unitsOf[measure]) {
        const range = rangeOf(measure, unit);
        expect(range.unit).toBe(unit);
        expect(range.least).toBeGreaterThanOrEqual(ranges.benchFigure.least);
        expect(range.most).toBeLessThanOrEqual(ranges.benchFigure.most);
        expect(range.least).toBeLessThan(range.most);
      }
    expect(rangeOf('hardness')).toEqual({ least: 0, most: 100, unit: 'asker-c' });
    expect(rangeOf('stack-height', 'kPa').unit).toBe('kPa');
    expect(kinds.length).toBeGreaterThan(0);
  });
});
