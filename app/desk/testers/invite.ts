/** Getting a tester's phone in: by a code of the hub, or by a file. */
import type { RecordId } from '../../../core/records/index.ts';
import { showToast } from '../../parts/controls/toast.tsx';
import { sendFile } from '../../parts/send-file.ts';
import { store } from '../../parts/state.ts';
import { d } from '../../words/index.ts';
import type { Invite } from '../parts/invite-card.tsx';
import { keepInvite } from '../plan/kept-invites.ts';

/** Hands over a file with what a tester may see. */
export const sendHandOutFile = async (tester: RecordId): Promise<void> => {
  const { name, bytes } = await store.exportFile({ tester });
  await sendFile(name, bytes);
};

/** Asks the hub for a code; null where there is none, after saying so. */
export const inviteTester = async (tester: RecordId, code: string): Promise<Invite | null> => {
  // The hub must know the tester before it can invite them.
  await store.sync();
  const hub = await store.hub();
  const made = await hub?.invite('tester', tester);
  if (made?.ok) {
    await keepInvite({ tester, ...made.value }, Date.now()).catch(() => {});
    return { ...made.value, role: 'tester', tester: code };
  }
  showToast({ text: hub ? d().trouble : d().testers.needsHub });
  return null;
};
