/** Who is in the group, who may come in, and who did what? */
import type { Hono, MiddlewareHandler } from 'hono';
import { inviteRequest, recordIdSchema, revokeRequest } from '../../../core/records/index.ts';
import * as z from 'zod/mini';
import { bodyOf, fail, noteDone, type Env, type HubDeps } from '../answers.ts';
import { mayManage } from '../policy.ts';
import { auditOf } from '../store/audit.ts';
import {
  addInvite,
  devicesOf,
  memberOfDevice,
  newInviteCode,
  revokeDevice,
} from '../store/members.ts';

const AUDIT_PAGE = 200;

export const members = (api: Hono<Env>, member: MiddlewareHandler<Env>, deps: HubDeps): void => {
  const { db, now, random } = deps;

  api.post('/invite', member, async (c) => {
    const body = await bodyOf(c, inviteRequest);
    if (!body.ok) return body.answer;
    const device = c.get('device');
    const { role, tester } = body.value;
    if (!mayManage(device.caller)) return fail(c, 'not-allowed');
    if ((role === 'tester') !== (tester !== undefined)) return fail(c, 'bad-request', 'tester');
    const code = newInviteCode(random);
    const expiresAt = await addInvite(db, device.group, code, role, tester ?? null, now());
    await noteDone(deps, device, `invite ${role}`, tester ?? null);
    return c.json({ code, expiresAt });
  });

  api.get('/devices', member, async (c) => {
    const { group, caller } = c.get('device');
    const devices = await devicesOf(db, group);
    return c.json({
      devices: mayManage(caller) ? devices : devices.filter((d) => d.member === caller.member),
    });
  });

  api.post('/revoke', member, async (c) => {
    const body = await bodyOf(c, revokeRequest);
    if (!body.ok) return body.answer;
    const device = c.get('device');
    const target = body.value.device;
    const owner = await memberOfDevice(db, device.group, target);
    if (owner === null) return fail(c, 'not-found', 'device');
    if (!mayManage(device.caller) && owner !== device.caller.member) return fail(c, 'not-allowed');
    if (await revokeDevice(db, device.group, target))
      await noteDone(deps, device, 'revoke', target);
    return c.json({ revoked: target });
  });

  api.get('/audit', member, async (c) => {
    const { group, caller } = c.get('device');
    if (!mayManage(caller)) return fail(c, 'not-allowed');
    const before = c.req.query('before');
    if (before !== undefined && !z.safeParse(recordIdSchema, before).success)
      return fail(c, 'bad-request', 'before');
    return c.json({ entries: await auditOf(db, group, before ?? null, AUDIT_PAGE) });
  });
};
