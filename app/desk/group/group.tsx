/** The group: its devices, more leads, and the log as a file. */
import { useEffect, useState } from 'preact/hooks';
import type { DeviceId, Devices } from '../../../core/records/index.ts';
import { Button, LinkButton } from '../../parts/controls/controls.tsx';
import { formatDateTime } from '../../parts/format.ts';
import { sendFile } from '../../parts/send-file.ts';
import { session, store, syncStatus } from '../../parts/state.ts';
import { d, saidOf, t, terms } from '../../words/index.ts';
import { Audit } from './audit.tsx';
import { InviteCard, type Invite } from '../parts/invite-card.tsx';
import type { DeskRecords } from '../worker/desk-work.ts';

const exportAll = async () => {
  const { name, bytes } = await store.exportFile('all');
  await sendFile(name, bytes);
};

/** Hands over a file that sets up a specialist's device, or brings it what is new. */
const exportForSpecialist = async () => {
  const { name, bytes } = await store.exportFile('specialist');
  await sendFile(name, bytes);
};

export const Group = ({ records }: { records: DeskRecords }) => {
  const words = d().group;
  const [devices, setDevices] = useState<Devices | null>(null);
  const [invite, setInvite] = useState<Invite | null>(null);
  const hasHub = Boolean(session.value?.hub);
  const readDevices = async () => {
    const answer = await (await store.hub())?.devices();
    if (answer?.ok) setDevices(answer.value.devices);
  };
  useEffect(() => {
    void readDevices();
  }, []);
  const revoke = async (device: DeviceId) => {
    await (await store.hub())?.revoke(device);
    await readDevices();
  };
  const inviteAs = async (role: 'lead' | 'specialist') => {
    const made = await (await store.hub())?.invite(role);
    if (made?.ok) setInvite({ ...made.value, role, tester: null });
  };
  const codes = new Map(records.tester.map(({ body, revision }) => [revision.id, body.code]));
  return (
    <>
      <p>{session.value?.groupName}</p>
      {hasHub ? (
        <>
          <div class="row">
            <Button onClick={() => void store.sync()}>{words.sync}</Button>
            <span class="soft" role="status">
              {t().unsent.states[syncStatus.value.state]}
            </span>
          </div>
          <h2>{words.devices}</h2>
          <div class="table-wrap" tabIndex={0} role="region" aria-label={words.devices}>
            <table>
              <thead>
                <tr>
                  <th scope="col">{words.device}</th>
                  <th scope="col">{words.role}</th>
                  <th scope="col">{words.seen}</th>
                  <th scope="col">{words.revoke}</th>
                </tr>
              </thead>
              <tbody>
                {(devices ?? []).map((device) => (
                  <tr key={device.device}>
                    <th scope="row">{device.name}</th>
                    <td>{`${terms().roles[device.role]} ${codes.get(device.member) ?? ''}`}</td>
                    <td>{formatDateTime(device.seenAt)}</td>
                    <td>
                      {device.revoked ? (
                        words.revoked
                      ) : (
                        <Button
                          kind="quiet"
                          aria-label={saidOf(
                            words.revoke,
                            `${device.name} ${codes.get(device.member) ?? ''}`,
                          )}
                          onClick={() => void revoke(device.device)}
                        >
                          {words.revoke}
                        </Button>
                      )}
                    </td>
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
          {invite && <InviteCard {...invite} />}
          <div class="row">
            <Button onClick={() => void inviteAs('lead')}>{words.inviteLead}</Button>
            <Button onClick={() => void inviteAs('specialist')}>{words.inviteSpecialist}</Button>
          </div>
          <p class="soft small">{words.specialistHint}</p>
          <Audit records={records} />
        </>
      ) : (
        <p>{words.noHub}</p>
      )}
      <h2>{words.files}</h2>
      <div class="row">
        <Button onClick={() => void exportAll()}>{words.exportAll}</Button>
        <Button onClick={() => void exportForSpecialist()}>{words.specialistFile}</Button>
        <LinkButton href="/file">{words.open}</LinkButton>
      </div>
      <p class="soft small">{words.specialistFileHint}</p>
    </>
  );
};
