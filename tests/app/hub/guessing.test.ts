/** Can a code be guessed? Counted at the hub's own door, with the clock in our hands. */
import { describe, expect, it } from 'vitest';
import { randomBytes } from 'node:crypto';
import { createHub } from '../../../app/hub/app.ts';
import { createGuesses } from '../../../app/hub/guesses.ts';
import { forwardedFor } from '../../../app/hub/forwarded-for.ts';
import { addressKey, networkKey } from '../../../app/hub/rate-limit.ts';
import { makeGroup } from '../../../app/hub/store/groups.ts';
import { addInvite, newInviteCode } from '../../../app/hub/store/members.ts';
import { INVITE_HOURS } from '../../../core/records/index.ts';
import { openDatabase } from '../../../app/hub/store/database.ts';
import { idOf } from '../../core/records/make.ts';
import { OWN_PAGE } from './as-browser.ts';

const HOUR_MS = 3_600_000;
const group = idOf(900);

/** A hub with open invites, at whose door anyone may knock from any address. */
const door = async (openInvites = 0) => {
  const { db } = await openDatabase({ file: ':memory:' });
  const clock = { ms: Date.UTC(2026, 5, 1) };
  let address = '192.0.2.1';
  await makeGroup(db, group, 'Group', clock.ms);
  const app = createHub({
    db,
    now: () => clock.ms,
    random: (bytes) => randomBytes(bytes),
    addressOf: () => address,
  });
  const codes = Array.from({ length: openInvites }, () => newInviteCode(randomBytes));
  for (const code of codes) await addInvite(db, group, code, 'lead', null, clock.ms);
  return {
    clock,
    codes,
    close: () => db.destroy(),
    async knock(from: string, code: string, path = 'join') {
      address = from;
      const answer = await app.request(`/v1/${path}`, {
        method: 'POST',
        headers: { ...OWN_PAGE, cookie: `pairlog-return=${randomBytes(8).toString('hex')}` },
        body: JSON.stringify({
          code,
          token: randomBytes(32).toString('base64url'),
          device: randomBytes(8).toString('hex'),
        }),
      });
      return answer.status;
    },
  };
};

/** How many of so many guesses an hour, spread evenly over two hours, are looked at in the second one. */
const lookedAtPerHour = async (guesses: number, from: (guess: number) => string) => {
  const { clock, knock, close } = await door(3);
  let lookedAt = 0;
  for (let hour = 0; hour < 2; hour++)
    for (let guess = 0; guess < guesses; guess++) {
      clock.ms += HOUR_MS / guesses;
      const status = await knock(from(guess), newInviteCode(randomBytes));
      expect([403, 429]).toContain(status);
      if (hour === 1 && status === 403) lookedAt++;
    }
  await close();
  return lookedAt;
};

describe('guessing a code', () => {
  it('from one address gets twenty looks in ten minutes', async () => {
    const looks = await lookedAtPerHour(600, () => '192.0.2.7');
    expect(looks).toBeGreaterThan(60);
    expect(looks).toBeLessThanOrEqual(120);
  });

  it('from one household of IPv6 gets no more than from one address', async () => {
    const looks = await lookedAtPerHour(600, (n) => `2001:db8:1:2:${(n % 65_536).toString(16)}::1`);
    expect(looks).toBeLessThanOrEqual(120);
  });

  it('from many addresses of one network gets three hundred looks an hour', async () => {
    const looks = await lookedAtPerHour(1200, (n) => `198.51.100.${n % 250}`);
    expect(looks).toBeGreaterThan(200);
    expect(looks).toBeLessThanOrEqual(300);
  });

  it('from any number of networks finds none in a lifetime', () => {
    const guesses = createGuesses();
    const [days, networks] = [4, 30_000];
    let looks = 0;
    for (let day = 0; day < days; day++)
      for (let hour = 0; hour < 24; hour++)
        // In each hour some of the networks try until nothing of theirs is looked at any more.
        for (let n = hour; n < networks; n += 24) {
          const address = `${10 + (n >> 16)}.${(n >> 8) & 255}.${n & 255}.7`;
          while (guesses.takeCode(address, (day * 24 + hour) * HOUR_MS)) looks++;
        }
    const perDay = looks / days;
    expect(perDay).toBeGreaterThan(60_000);
    expect(perDay).toBeLessThanOrEqual(20_000 * 3 + 24 * 300);
    // A hundred codes are open all the time, of 32^10 = 2^50; the first hit comes at this mean.
    const years = 32 ** 10 / 100 / perDay / 365.25;
    expect(years).toBeGreaterThan(400_000);
    // The chance that any of a thousand invites is hit while it is open.
    expect((1000 * perDay * INVITE_HOURS) / 24 / 32 ** 10).toBeLessThan(2e-7);
    console.log(
      `guesses looked at in a day: ${perDay}; with 100 open invites the first hit comes after ${Math.round(years).toLocaleString('en')} years in the mean`,
    );
  });

  it('does not close the door for the group: a right code comes in from any other network', async () => {
    const { clock, codes, knock, close } = await door(6);
    const guess = (from: string) => knock(from, newInviteCode(randomBytes));
    for (let n = 0; n < 400; n++) await guess(`198.51.100.${n % 200}`);
    expect(await guess('198.51.100.201')).toBe(429);
    for (const [at, from] of ['203.0.113.5', '2001:db8:9:1::5', '192.0.2.1'].entries()) {
      // Mistyped twice, then right; and a second device of the same house.
      expect([await guess(from), await guess(from)]).toEqual([403, 403]);
      expect(await knock(from, codes[2 * at] as string)).toBe(200);
      expect(await knock(from, codes[2 * at + 1] as string)).toBe(200);
      expect([await guess(from), await guess(from)]).toEqual([403, 429]);
    }
    clock.ms += HOUR_MS;
    expect(await guess('203.0.113.5')).toBe(403);
    await close();
  });

  it.each([
    ['192.0.2.7', '192.0.2.7', '192.0.2'],
    ['::ffff:192.0.2.7', '192.0.2.7', '192.0.2'],
    ['2001:db8:1:2:3::4', '2001:db8:1:2', '2001:db8:1'],
    ['2001:db8::1', '2001:db8:0:0', '2001:db8:0'],
    ['fe80::1%eth0', 'fe80:0:0:0', 'fe80:0:0'],
    ['unknown', 'unknown', 'unknown'],
  ])('from %s is counted for %s, of the network %s', (address, key, network) => {
    expect(addressKey(address)).toBe(key);
    expect(networkKey(address)).toBe(network);
  });

  it('by the way of a cleared device counts too', async () => {
    const { knock, close } = await door();
    const statuses: number[] = [];
    for (let at = 0; at < 24; at++)
      statuses.push(await knock('192.0.2.9', '', at % 2 === 0 ? 'return' : 'join'));
    // Half of them are no code at all, which is not looked up and so no guess.
    for (let at = 0; at < 24; at++) statuses.push(await knock('192.0.2.9', '', 'return'));
    expect(statuses.filter((status) => status === 403)).toHaveLength(20);
    expect(statuses.at(-1)).toBe(429);
    await close();
  });

  it('is counted before it is looked at, so many at once are no way around', async () => {
    const { knock, close } = await door();
    const statuses = await Promise.all(
      Array.from({ length: 100 }, () => knock('192.0.2.77', newInviteCode(randomBytes), 'join')),
    );
    expect(statuses.filter((status) => status === 403)).toHaveLength(20);
    expect(statuses.filter((status) => status === 429)).toHaveLength(80);
    await close();
  });

  it('does not lock out a group that joins from one office', async () => {
    const { codes, knock, close } = await door(60);
    for (const code of codes) expect(await knock('192.0.2.8', code)).toBe(200);
    await close();
  });

  it('draws each of the 32 letters as often as the others', () => {
    const counts = new Map<string, number>();
    for (let at = 0; at < 3200; at++)
      for (const letter of newInviteCode(randomBytes))
        counts.set(letter, (counts.get(letter) ?? 0) + 1);
    expect(counts.size).toBe(32);
    // 1,000 of each are expected, with a standard deviation of 31: six of them.
    for (const count of counts.values()) expect(Math.abs(count - 1000)).toBeLessThan(190);
  });
});

describe('whom a proxy names', () => {
  // An address that changes with its port would be a new guesser each time.
  it.each([
    ['203.0.113.7', '203.0.113.7'],
    ['203.0.113.7:51234', '203.0.113.7'],
    ['198.51.100.1, 203.0.113.7', '203.0.113.7'],
    ['2001:db8::1', '2001:db8::1'],
    ['[2001:db8::1]', '2001:db8::1'],
    ['[2001:db8::1]:443', '2001:db8::1'],
    ['', null],
    ['unknown', null],
    ['203.0.113.7:x', null],
    ['203.0.113.7, ', null],
  ])('is read from %j', (header, address) => {
    expect(forwardedFor(header)).toBe(address);
  });
});
