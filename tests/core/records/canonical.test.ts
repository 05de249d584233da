/** The two ways of canonical JSON are one, and so are the two ways of telling a revision's shape. */
import canonicalize from 'canonicalize';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as z from 'zod/mini';
import {
  canonicalJson,
  parseRevision,
  parseRevisionJson,
  revisionSchema,
  sealRevision,
  withKeysInOrder,
  type Revision,
} from '../../../core/records/index.ts';
import { hashOfRevision } from '../../hash-of-revision.ts';
import { idOf, stampAt } from './make.ts';

const keys = fc.oneof(
  fc.constantFrom('b', 'a', 'B', 'é', 'ä', '\u{1F45F}', '\uFB33', '10', '9', '1a', '', '__proto__'),
  fc.string({ unit: 'binary', maxLength: 3 }),
);
const { json } = fc.letrec((tie) => ({
  json: fc.oneof(
    { maxDepth: 4 },
    fc.constantFrom<unknown>(
      null,
      true,
      false,
      -0,
      1e21,
      1e-7,
      0.1,
      '\\ud800',
      '\ud83d\udc5f',
      '\0',
    ),
    fc.double({ noNaN: true, noDefaultInfinity: true }),
    fc.string({ unit: 'binary', maxLength: 5 }),
    fc.array(tie('json'), { maxLength: 4 }),
    fc.uniqueArray(fc.tuple(keys, tie('json')), { maxLength: 5, selector: ([key]) => key }).map(
      // Through a text, as values come: only so does `__proto__` become a key like any other.
      (entries) =>
        JSON.parse(
          `{${entries.map(([k, v]) => `${JSON.stringify(k)}:${JSON.stringify(v)}`).join(',')}}`,
        ) as unknown,
    ),
  ),
}));

/** What a function gives, or that it throws. */
const outcome = (work: () => unknown): unknown => {
  try {
    return work();
  } catch {
    return 'throws';
  }
};

describe('canonical JSON', () => {
  it('is what the reference implementation writes, for any JSON', () => {
    fc.assert(
      fc.property(json, (value) => {
        expect(outcome(() => canonicalJson(value))).toBe(outcome(() => canonicalize(value)));
      }),
      { numRuns: 1500 },
    );
  });

  it('of halves of surrogate pairs and of no numbers is none', () => {
    for (const value of ['\ud800', ['\udc00'], { a: { '\ud800': 1 } }, Number.NaN, [Infinity]])
      expect(() => canonicalJson(value)).toThrow();
  });

  it('of a value with its keys in order is what JavaScript writes', () => {
    fc.assert(
      fc.property(json, (value) => {
        const ordered = withKeysInOrder(value);
        expect(ordered).toEqual(value);
        const canonical = outcome(() => canonicalJson(value));
        expect(outcome(() => canonicalJson(ordered))).toBe(canonical);
        // In order once, it is not copied again; what JavaScript orders itself is left as it is.
        expect(withKeysInOrder(ordered)).toBe(ordered);
        if (ordered !== value) expect([JSON.stringify(ordered), 'throws']).toContain(canonical);
      }),
      { numRuns: 800 },
    );
  });

  /** Lists or objects in each other, their keys in order or not, or such as the general way writes. */
  const nested = (levels: number, wrap: (inner: unknown) => unknown) => {
    let value: unknown = 1;
    for (let level = 0; level < levels; level++) value = wrap(value);
    return value;
  };
  it.each<[string, (inner: unknown) => unknown]>([
    ['objects in order', (inner) => ({ a: 0, b: inner })],
    ['objects out of order', (inner) => ({ b: inner, a: 0 })],
    ['objects with keys like numbers', (inner) => ({ b: inner, 1: 0 })],
    ['lists', (inner) => [0, inner]],
  ])('has 64 levels of %s at most: browsers keep fewer than parsers read', (_, wrap) => {
    expect(canonicalJson(nested(64, wrap))).toBe(canonicalize(nested(64, wrap)));
    for (const levels of [65, 4000])
      expect(() => canonicalJson(nested(levels, wrap))).toThrow('64 levels');
  });
});

describe('the shape of a revision', () => {
  const whole = sealRevision(
    { id: idOf(1), kind: 'run', author: idOf(2), sv: 1, body: { words: 'x' } },
    stampAt(5),
    stampAt(4),
  );
  const odd = fc.oneof(
    json,
    fc.constantFrom<unknown>(1, 0, 1.5, true, undefined, [], {}, 'run', '', stampAt(9), idOf(3)),
  );

  it('is told by the quick way as by the schema', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...Object.keys(whole), 'deleted', 'erased', 'note', '__proto__'),
        odd,
        (key, value) => {
          const changed: Record<string, unknown> = { ...whole };
          Object.defineProperty(changed, key, {
            value,
            enumerable: true,
            configurable: true,
            writable: true,
          });
          const rehashed =
            key === 'hash' ? changed : { ...changed, hash: outcome(() => hashOfRevision(changed)) };
          const parsed = parseRevision(rehashed);
          const schema = z.safeParse(revisionSchema, rehashed);
          // Whatever is taken is what the schema takes; what the schema takes falls at the hash or size alone.
          if (parsed.ok) expect(parsed.revision).toEqual(schema.data);
          else if (schema.success)
            expect(['hash-differs', 'too-large', 'not-a-revision']).toContain(parsed.problem.why);
        },
      ),
      { numRuns: 800 },
    );
  });

  it('is refused where its body has more levels than every device can keep', () => {
    const deep = `${'{"x":'.repeat(4000)}1${'}'.repeat(4000)}`;
    const revision = { ...whole, body: JSON.parse(deep) as unknown };
    expect(parseRevision(revision)).toEqual({
      ok: false,
      problem: { why: 'not-a-revision', field: 'body' },
    });
  });

  it('comes with its canonical JSON, from which the same revision is read', () => {
    const known = fc.record(
      {
        prev: fc.constantFrom(null, stampAt(4)),
        kind: fc.constantFrom('run', 'x', 'a-kind-of-tomorrow'),
        sv: fc.constantFrom(1, 2, 1_000_000),
        deleted: fc.constant(true),
        erased: fc.constant(true),
      },
      { requiredKeys: ['prev', 'kind', 'sv'] },
    );
    const unknown = fc.record(
      { zeta: json, alpha: json, hat: json, hi: json, '1': json },
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(fc.option(fc.record({ body: json })), known, fc.option(unknown), (...parts) => {
        const [body, fields, others] = parts;
        const open = { ...whole, ...fields, body, ...others, hash: '' };
        const hash = outcome(() => hashOfRevision(open));
        if (hash === 'throws') return;
        const revision = { ...open, hash } as unknown as Revision;
        const read = parseRevisionJson(revision);
        expect(read).toMatchObject({ ok: true, json: canonicalize(revision) });
        if (read.ok)
          expect(parseRevisionJson(JSON.parse(read.json))).toMatchObject({
            ok: true,
            json: read.json,
          });
      }),
      { numRuns: 600 },
    );
  });
});
