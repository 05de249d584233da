/**
 * Can this phone be told something while Pairlog is closed (Push API), and does its tester want that? The browser gives
 * it an address at a push service, and the hub keeps that: until it is turned off, signed out, or everything taken back.
 */
import * as z from 'zod/mini';
import type { HubClient, Session, Store } from '../../store/index.ts';

export type NoticeState =
  | 'on'
  | 'off'
  /** The person said no to the browser, and only there can it be said otherwise. */
  | 'blocked'
  /** On iOS only what was put on the home screen can be told. */
  | 'home-screen'
  | 'no-support'
  | 'no-hub'
  | 'revoked';

/** Under this name the device keeps what its tester wants. */
const KEY = 'notices';

const wishSchema = z.object({
  on: z.boolean(),
  /** Whether the card that offers it was answered. */
  asked: z.boolean(),
});
export type NoticeWish = z.infer<typeof wishSchema>;

type From = Pick<Store, 'setting' | 'saveSetting' | 'session' | 'hub'>;

export const readWish = async (from: Pick<Store, 'setting'>): Promise<NoticeWish> => {
  const read = z.safeParse(wishSchema, await from.setting(KEY));
  return read.success ? read.data : { on: false, asked: false };
};

const keepWish = (from: From, on: boolean): Promise<void> =>
  from.saveSetting(KEY, { on, asked: true } satisfies NoticeWish);

/** The tester does not want it for now; Settings still has it. */
export const declineNotices = (from: From): Promise<void> => keepWish(from, false);

/** The app's registration, of a page or of the worker itself. */
const registration = async (): Promise<ServiceWorkerRegistration | undefined> =>
  (globalThis as { registration?: ServiceWorkerRegistration }).registration ??
  (await navigator.serviceWorker?.getRegistration());

/** Whether the page runs in a tab of a browser that can do it on the home screen alone. Only Safari on iOS has the field. */
const isTabOnIos = (): boolean => (navigator as { standalone?: boolean }).standalone === false;

const isSupported = (): boolean => 'PushManager' in globalThis && 'Notification' in globalThis;

/** How it stands on this device. */
export const noticeState = (session: Session | null, wish: NoticeWish): NoticeState => {
  if (!session?.hub) return 'no-hub';
  if (session.revoked) return 'revoked';
  if (!isSupported()) return isTabOnIos() ? 'home-screen' : 'no-support';
  if (Notification.permission === 'denied') return 'blocked';
  return wish.on && Notification.permission === 'granted' ? 'on' : 'off';
};

const bytesOf = (base64url: string): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(atob(base64url.replaceAll('-', '+').replaceAll('_', '/')), (one) =>
    one.charCodeAt(0),
  );

const isFor = ({ options }: PushSubscription, key: Uint8Array): boolean => {
  const own = options.applicationServerKey;
  return own !== null && new Uint8Array(own).every((byte, at) => byte === key[at]);
};

/** An address that the hub's key can write to. One that was made for another key takes nothing from this hub. */
const subscribe = async (key: string): Promise<PushSubscription> => {
  const applicationServerKey = bytesOf(key);
  // A first visit may not have its worker yet.
  const { pushManager } = (await registration()) ?? (await navigator.serviceWorker.ready);
  const known = await pushManager.getSubscription();
  if (known && isFor(known, applicationServerKey)) return known;
  await known?.unsubscribe();
  return pushManager.subscribe({ userVisibleOnly: true, applicationServerKey });
};

type Address = NonNullable<Parameters<HubClient['wakeAt']>[0]>;

/** Tells the hub where this phone is reached. @returns whether that came about */
const sayAddress = async (hub: HubClient | null): Promise<boolean> => {
  const said = await hub?.wake();
  if (!hub || !said?.ok) return false;
  const address = (await subscribe(said.value.key)).toJSON() as Address;
  return (await hub.wakeAt(address)).ok;
};

/** Asks the person, the browser and the hub, in this order. To be called by a press: browsers ask at no other time. */
export const turnNoticesOn = async (from: From): Promise<'on' | 'blocked' | 'failed'> => {
  if ((await Notification.requestPermission()) !== 'granted') return 'blocked';
  const isOn = await sayAddress(await from.hub()).catch((error: unknown) => {
    console.error(error);
    return false;
  });
  if (!isOn) return 'failed';
  await keepWish(from, true);
  return 'on';
};

const endHere = async (): Promise<void> => {
  await (await (await registration())?.pushManager?.getSubscription())?.unsubscribe();
};

/** Ends it here, and at the hub where that can be reached; where not, the push service tells the hub at its next try. */
export const turnNoticesOff = async (from: From): Promise<void> => {
  await keepWish(from, false);
  await endHere();
  await (await from.hub())?.wakeAt(null);
};

/**
 * At a start, and when the browser changes the address: the hub is told where the phone is reached now (one that was
 * restored knows no address). A phone that was signed out is reached no more.
 */
export const keepNoticesOn = async (from: From): Promise<void> => {
  const [session, wish] = await Promise.all([from.session(), readWish(from)]);
  const state = noticeState(session, wish);
  if (state === 'revoked') await endHere();
  else if (state === 'on') await sayAddress(await from.hub());
};
