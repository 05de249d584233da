import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { encodingOfXml, gpxReader, readGpx, writeGpx } from '../../../core/track/index.ts';
import { seeded } from '../../seeded.ts';

/** `PAIRLOG_FUZZ=100000` for the long run. */
const FUZZED = Number(process.env['PAIRLOG_FUZZ'] ?? 20_000);

const folder = new URL('../../reference/gpx/', import.meta.url);
const sample = (name: string) => readFileSync(new URL(name, folder), 'utf8');

const gpx = (inside: string, head = '') =>
  `<?xml version="1.0"?>${head}<gpx version="1.1" creator="test" xmlns="http://www.topografix.com/GPX/1/1"><trk><trkseg>${inside}</trkseg></trk></gpx>`;
const good = '<trkpt lat="1" lon="2"/>';

const why = (text: string) => {
  const outcome = readGpx(text);
  return outcome.ok ? 'ok' : outcome.problem.why;
};

describe('points by the GPX 1.1 schema', () => {
  const { cases } = JSON.parse(sample('trkpt_validity.json')) as {
    cases: { id: string; xml: string; valid: boolean }[];
  };
  it.each(cases)('$id', ({ id, xml, valid }) => {
    const outcome = readGpx(gpx(good + xml));
    if (!outcome.ok) throw new Error(outcome.problem.why);
    // Many devices write 180° east, which the schema excludes: it is read as −180.
    const taken = valid || id === 'bad_lon_180';
    expect(outcome.track.segments[0]).toHaveLength(taken ? 2 : 1);
    expect(outcome.track.skippedPoints).toBe(taken ? 0 : 1);
  });
});

describe('reading', () => {
  it('takes prefixes, a mark at the start, CDATA and decoys for what they are', () => {
    const outcome = readGpx(sample('prefixed_ns_bom_cdata.gpx'));
    if (!outcome.ok) throw new Error(outcome.problem.why);
    expect(outcome.track.name).toBe('5 < 6 & "été"');
    expect(outcome.track.segments.map((segment) => segment.length)).toEqual([11]);
    expect(outcome.track.segments[0]?.[0]).toMatchObject({ lat: 19.43, lon: -99.13, eleM: 2240.5 });
  });

  it('finds a cadence in foreign extensions, at any depth', () => {
    const outcome = readGpx(
      gpx(
        '<trkpt lat="1" lon="2"><extensions><x:all xmlns:x="urn:x"><x:hr>150</x:hr><x:cad>86</x:cad></x:all></extensions></trkpt>',
      ),
    );
    expect(outcome).toMatchObject({ ok: true, track: { segments: [[{ cadence: 86 }]] } });
  });

  it('takes an empty elevation as none, and a time without a zone as UTC', () => {
    const outcome = readGpx(
      gpx('<trkpt lat="1" lon="2"><ele></ele><time>2026-05-01T06:00:00</time></trkpt>'),
    );
    expect(outcome).toMatchObject({
      track: { segments: [[{ eleM: null, timeMs: Date.UTC(2026, 4, 1, 6) }]] },
    });
  });

  it('gives the same whatever the pieces', () => {
    const text = sample('hill_two_peaks.gpx');
    const whole = readGpx(text);
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 4000 }), (size) => {
        const reader = gpxReader();
        for (let at = 0; at < text.length; at += size) reader.write(text.slice(at, at + size));
        expect(reader.end()).toEqual(whole);
      }),
      { numRuns: 30 },
    );
  });

  it('reads what it writes', () => {
    for (const name of ['midnight_leapday_fractional.gpx', 'hill_two_peaks.gpx']) {
      const outcome = readGpx(sample(name));
      if (!outcome.ok) throw new Error(outcome.problem.why);
      const again = readGpx(writeGpx(outcome.track));
      expect(again).toMatchObject({ ok: true, track: { segments: outcome.track.segments } });
    }
  });

  it('knows the encoding by mark or first line', () => {
    const bytes = (text: string) => new TextEncoder().encode(text);
    expect(encodingOfXml(bytes('<?xml version="1.0" encoding="ISO-8859-1"?>'))).toBe('ISO-8859-1');
    expect(encodingOfXml(bytes('<gpx/>'))).toBe('utf-8');
    expect(encodingOfXml(new Uint8Array([0xff, 0xfe, 0x3c, 0]))).toBe('utf-16le');
    expect(encodingOfXml(new Uint8Array([0, 0x3c, 0, 0x67]))).toBe('utf-16be');
  });
});

describe('hostile files end in a clear error', () => {
  it('entity bombs and external entities: no document type is taken', () => {
    const bomb = '<!DOCTYPE gpx [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;&a;">]>';
    expect(why(gpx(good, bomb))).toBe('doctype');
    expect(why(gpx(good, '<!DOCTYPE gpx SYSTEM "file:///etc/passwd">'))).toBe('doctype');
    expect(why(gpx('<trkpt lat="1" lon="2"><name>&boom;</name></trkpt>'))).toBe('broken-xml');
  });

  it('deep nesting, truncation, other XML, no XML, nothing', () => {
    expect(why(`<gpx>${'<x>'.repeat(100_000)}`)).toBe('too-deep');
    expect(why(gpx(good).slice(0, -20))).toBe('broken-xml');
    expect(why('<kml><Placemark/></kml>')).toBe('not-gpx');
    expect(why('\u0000\u0001\u0002 binary')).toBe('broken-xml');
    expect(why('')).not.toBe('ok');
    expect(why(gpx(''))).toBe('no-points');
  });

  it('says where', () => {
    const outcome = readGpx(`<gpx>\n<trk>\n</wrong>`);
    expect(outcome).toMatchObject({ ok: false, problem: { why: 'broken-xml', line: 3 } });
  });

  it('200 MB of points or of one text stop at the limit, with what is kept bounded', () => {
    const stream = (piece: string) => {
      const reader = gpxReader();
      reader.write('<gpx version="1.1"><trk><trkseg>');
      let fed = 0;
      while (fed < 200_000_000 && reader.write(piece)) fed += piece.length;
      const outcome = reader.end();
      return { fed, why: outcome.ok ? 'ok' : outcome.problem.why };
    };
    const points = stream(good.repeat(2000));
    expect(points.why).toMatch(/too-many-points|too-large/);
    expect(points.fed).toBeLessThan(60_000_000);
    const name = gpxReader();
    name.write('<gpx><trk><name>');
    while (name.write('x'.repeat(60_000)));
    expect(name.end()).toMatchObject({ ok: false, problem: { why: 'too-large' } });
  });

  it(`${FUZZED} damaged files: a result or an error, never a throw`, () => {
    const random = seeded(4);
    const seeds = [
      gpx(good + good),
      gpx('<trkpt lat="1" lon="2"><ele>5</ele><time>2026-05-01T06:00:00Z</time></trkpt>'),
      `<gpx><trk><name><![CDATA[a & b]]></name><trkseg>${good}</trkseg></trk></gpx>`,
    ];
    const noise = [
      '<',
      '>',
      '&',
      '"',
      ']]>',
      '<!--',
      '<![CDATA[',
      '\u0000',
      'é',
      '</trkpt>',
      '=',
      ' ',
    ];
    const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)] as T;
    let read = 0;
    for (let run = 0; run < FUZZED; run++) {
      let text = pick(seeds);
      for (let hit = 0; hit < 1 + random() * 4; hit++) {
        const at = Math.floor(random() * text.length);
        const cut = random() < 0.5 ? at : at + Math.floor(random() * 20);
        text = text.slice(0, at) + (random() < 0.6 ? pick(noise) : '') + text.slice(cut);
      }
      if (readGpx(text).ok) read++;
    }
    expect(read).toBeGreaterThan(0);
    expect(read).toBeLessThan(FUZZED);
  }, 180_000);
});
