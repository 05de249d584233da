import fc from 'fast-check';
import { gzipSync } from 'node:zlib';
import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import {
  packBundle,
  readBundle,
  sealRevision,
  sha256OfBytes,
  unpackBundle,
  writeBundle,
  type Revision,
  type Sha256,
} from '../../../core/records/index.ts';
import { anyRevision, idOf, stampAt } from './make.ts';

const origin = { madeAt: '2026-05-01T07:30:00+02:00', group: idOf(900) };
const sample = (count: number): Revision[] =>
  Array.from({ length: count }, (_, at) =>
    sealRevision(
      { id: idOf(at), kind: 'run', author: idOf(99), sv: 1, body: { at } },
      stampAt(5000 + at),
      null,
    ),
  );

describe('a bundle', () => {
  it('gives back every revision it was written from', () => {
    fc.assert(
      fc.property(fc.array(anyRevision(5), { maxLength: 20 }), (revisions) => {
        const read = readBundle(writeBundle(origin, revisions));
        expect(read.problems).toEqual([]);
        expect(read.header).toMatchObject(origin);
        expect(read.revisions.map((r) => r.revision)).toEqual(revisions);
      }),
    );
  });

  it('carries unknown kinds, unknown fields and newer schemas untouched', () => {
    const strange = sealRevision(
      { id: idOf(1), kind: 'weather-mast', author: idOf(2), sv: 7, body: { wind: { ms: 3 } } },
      stampAt(1),
      null,
    );
    const { revisions, problems } = readBundle(writeBundle(origin, [strange]));
    expect(problems).toEqual([]);
    expect(revisions[0]?.revision).toEqual(strange);
  });

  it('reports a cut-off file and still gives the whole revisions before the cut', () => {
    const text = writeBundle(origin, sample(5));
    for (const share of [0.3, 0.6, 0.9]) {
      const cut = readBundle(text.slice(0, Math.floor(text.length * share)));
      expect(cut.problems.at(-1)?.why).toBe('cut-off');
      expect(cut.revisions.length).toBeLessThan(5);
    }
  });

  it('names the line of a revision that was changed', () => {
    const text = writeBundle(origin, sample(3)).replace('"at":1', '"at":9');
    const { problems, revisions } = readBundle(text);
    expect(problems).toEqual([
      { line: 3, why: 'hash-differs' },
      { line: 5, why: 'digest-differs' },
    ]);
    expect(revisions.map((r) => r.line)).toEqual([2, 4]);
  });

  it('notices a line that was taken out', () => {
    const lines = writeBundle(origin, sample(3)).split('\n');
    lines.splice(2, 1);
    expect(readBundle(lines.join('\n')).problems).toEqual([{ why: 'digest-differs', line: 4 }]);
  });

  it.each([
    ['', 'not-a-bundle'],
    ['{"format":"something-else","v":1}', 'not-a-bundle'],
    ['\u0000\u0001binary', 'not-a-bundle'],
    ['{"format":"pairlog-bundle","v":2}', 'newer-bundle'],
  ])('refuses %j as %s', (text, why) => {
    expect(readBundle(text).problems[0]).toMatchObject({ why, line: 1 });
  });

  it('takes a file that an editor gave a byte-order mark', () => {
    expect(readBundle(`\uFEFF${writeBundle(origin, sample(1))}`).header).not.toBeNull();
  });
});

describe('a bundle file', () => {
  const text = writeBundle(origin, sample(20));
  const photo = strToU8('not really a photo');
  const attachments = new Map<Sha256, Uint8Array>([[sha256OfBytes(photo), photo]]);

  it('comes back from plain text, gzip and zip', () => {
    expect(unpackBundle(strToU8(text))).toMatchObject({ ok: true, text });
    expect(unpackBundle(packBundle(text))).toMatchObject({ ok: true, text });
    const zip = unpackBundle(packBundle(text, attachments));
    expect(zip).toMatchObject({ ok: true, text });
    expect(zip.ok && zip.attachments.get(sha256OfBytes(photo))).toEqual(photo);
  });

  it('is the same for the same log', () => {
    expect(packBundle(text, attachments)).toEqual(packBundle(text, attachments));
    expect(packBundle(text)).toEqual(packBundle(text));
  });

  it('refuses a gzip that ends early', () => {
    const gzip = packBundle(text);
    expect(unpackBundle(gzip.subarray(0, gzip.length - 30))).toEqual({ ok: false, why: 'damaged' });
  });

  it('refuses an attachment whose bytes are not what its name says', () => {
    const forged = new Map([[sha256OfBytes(photo), strToU8('another')]]);
    expect(unpackBundle(packBundle(text, forged))).toEqual({
      ok: false,
      why: 'attachment-differs',
    });
  });

  it('leaves names alone that are not its own', () => {
    const zip = zipSync({ 'log.ndjson': strToU8(text), '../../etc/passwd': strToU8('x') });
    const unpacked = unpackBundle(zip);
    expect(unpacked.ok && unpacked.attachments.size).toBe(0);
  });

  it('says that a zip without a log is none of its own', () => {
    expect(unpackBundle(zipSync({ 'a.txt': strToU8('x') }))).toEqual({ ok: false, why: 'no-log' });
  });

  it('refuses a gzip that unpacks to more than a bundle may', () => {
    const bomb = gzipSync(new Uint8Array(520 * 1024 * 1024), { level: 1 });
    expect(unpackBundle(bomb)).toEqual({ ok: false, why: 'too-large' });
  });
});
