/** Stamps, ids, hashes and canonical JSON against their published vectors. */
import { describe, expect, it } from 'vitest';
import {
  canonicalJson,
  clockAfterReceiving,
  newClock,
  newRecordId,
  nextStamp,
  RECORD_ID_PATTERN,
  sha256OfBytes,
  sha256OfText,
  stampParts,
  type Clock,
  type DeviceId,
  type Stamp,
} from '../../../core/records/index.ts';
import json from '../../reference/canonical-json.json' with { type: 'json' };
import traces from '../../reference/hybrid-clock.json' with { type: 'json' };
import sha from '../../reference/sha256.json' with { type: 'json' };
import uuid from '../../reference/uuidv7.json' with { type: 'json' };

const hexToBytes = (hex: string) =>
  Uint8Array.from(hex.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16));

describe('SHA-256', () => {
  // FIPS 180-4 and the NIST Cryptographic Algorithm Validation Program's byte vectors.
  it.each(sha.ascii)('of the text $msg', ({ msg, sha256 }) => {
    expect(sha256OfText(msg)).toBe(sha256);
  });
  it.each(sha.hex)('of the bytes $hex', ({ hex, sha256 }) => {
    expect(sha256OfBytes(hexToBytes(hex))).toBe(sha256);
  });
  it.each(sha.repeat)('of $count times "$char"', ({ char, count, sha256 }) => {
    expect(sha256OfText(char.repeat(count))).toBe(sha256);
  });
});

describe('canonical JSON', () => {
  // RFC 8785 and its reference suite.
  it.each(json.documents)('$name', ({ input, canonical, sha256 }) => {
    expect(canonicalJson(JSON.parse(input))).toBe(canonical);
    expect(sha256OfText(canonical)).toBe(sha256);
  });
  // RFC 8785, appendix B: IEEE 754 doubles and their JSON, null where there is none.
  it.each(json.numbers)('the number $ieeeHex', ({ ieeeHex, json: text }) => {
    const value = new DataView(hexToBytes(ieeeHex).buffer).getFloat64(0);
    if (text === null) expect(() => canonicalJson(value)).toThrow();
    else expect(canonicalJson(value)).toBe(text);
  });
});

describe('record ids', () => {
  // RFC 9562, appendix A.6 and the layout of section 5.7.
  it.each(uuid.vectors.filter(({ uuid: id }) => RECORD_ID_PATTERN.test(id)))(
    '$uuid is made at $unix_ts_ms',
    ({ uuid: id, unix_ts_ms }) => {
      const made = newRecordId(unix_ts_ms, new Uint8Array(16));
      expect(made.slice(0, 13)).toBe(id.slice(0, 13));
      expect(made).toMatch(RECORD_ID_PATTERN);
    },
  );
  it.each(uuid.invalid)('refuses %s', (line) => {
    expect(RECORD_ID_PATTERN.test(line.split(' ')[0] as string)).toBe(false);
  });
  it('sort by the time they were made', () => {
    const early = newRecordId(1_700_000_000_000, new Uint8Array(16).fill(255));
    const late = newRecordId(1_700_000_000_001, new Uint8Array(16));
    expect(early < late).toBe(true);
  });
});

describe('stamps', () => {
  // Traces by the send and receive rules of Kulkarni et al., "Logical physical clocks", OPODIS 2014.
  // Their receive event is "take the stamp, then stamp the event itself".
  it.each(traces.scenarios)('follow the trace: $name', ({ events }) => {
    const clocks = new Map<number, Clock>();
    const messages = new Map<string, Stamp>();
    for (const event of events) {
      let clock =
        clocks.get(event.node) ?? newClock(String(event.node).padStart(16, '0') as DeviceId);
      if (event.op === 'recv')
        clock = clockAfterReceiving(clock, event.pt, messages.get(event.msg as string) as Stamp);
      const next = nextStamp(clock, event.pt);
      clocks.set(event.node, next.clock);
      if (event.op === 'send') messages.set(event.msg as string, next.stamp);
      expect(stampParts(next.stamp)).toMatchObject({ ms: event.l, count: event.c });
    }
  });
});
