/** On which devices is this member signed in? Each can be signed out from any other. */
import { useEffect, useState } from 'preact/hooks';
import type { DeviceId, Devices } from '../../core/records/index.ts';
import { Button } from '../parts/controls/controls.tsx';
import { formatDateTime } from '../parts/format.ts';
import { session, store } from '../parts/state.ts';
import { saidOf, t } from '../words/index.ts';

export const OwnDevices = () => {
  const words = t().settings.devices;
  const [devices, setDevices] = useState<Devices | null>(null);
  const [own, setOwn] = useState<DeviceId | null>(null);
  const read = async () => {
    setOwn(await store.device());
    const answer = await (await store.hub())?.devices();
    if (answer?.ok) setDevices(answer.value.devices);
  };
  useEffect(() => {
    void read();
  }, []);
  const signOut = async (device: DeviceId) => {
    if (!window.confirm(device === own ? words.askOwn : words.ask)) return;
    await (await store.hub())?.revoke(device);
    await read();
  };
  const mine = (devices ?? []).filter(
    ({ member, revoked }) => member === session.value?.member && !revoked,
  );
  return (
    <>
      <h3>{words.title}</h3>
      {devices === null ? (
        <p class="soft">{words.needsHub}</p>
      ) : (
        <ul class="plain-list stack">
          {mine.map(({ device, name, seenAt }) => (
            <li key={device} class="row row-apart">
              <span>
                {name} {device === own && <span class="soft">({words.thisOne})</span>}
                <br />
                <span class="soft small">{words.seen(formatDateTime(seenAt))}</span>
              </span>
              <Button
                kind="quiet"
                aria-label={saidOf(words.signOut, name)}
                onClick={() => void signOut(device)}
              >
                {words.signOut}
              </Button>
            </li>
          ))}
        </ul>
      )}
    </>
  );
};
