/**
 * One round of sync: pull all, push the outbox, pull again.
 *
 * Contracts:
 *  - revisions, receipts and cursor of one page are applied together or not at all;
 *  - the outbox is cleared by a revision seen again in the feed, never by the push answer alone: a hub
 *    restored from a backup between the two would have forgotten it while the cursor still fits;
 *  - a receipt for a revision that this device does not hold comes from a copy of it (a cloned phone): the
 *    page is asked for again with the revisions whole;
 *  - a revision that the hub already had behind the cursor needs no receipt: it is settled;
 *  - a hub whose past changed is recognised by the cursor's chain: the device starts over and offers
 *    all it holds;
 *  - one bad revision never stops the others.
 */
import {
  MAX_PUSH_BYTES,
  MAX_PUSH_REVISIONS,
  parseCursor,
  parseRevision,
  type PullAnswer,
  type PushAnswer,
  type Revision,
} from '../../core/records/index.ts';
import type { HubOutcome, HubProblem } from './hub-client.ts';

export interface Page {
  readonly revisions: readonly Revision[];
  readonly receipts: PullAnswer['receipts'];
  readonly next: string | null;
  readonly hubNow: number;
}

export type PushVerdict = PushAnswer['verdicts'][number];

/** What a round needs of the device. */
export interface DeviceSide {
  cursor(): Promise<string | null>;
  /** One transaction: revisions in, receipts and returned revisions out of the outbox, cursor on. */
  takePage(page: Page): Promise<void>;
  /** The cursor is dropped and everything that this member may send is back in the outbox. */
  startOver(): Promise<void>;
  /** The next part of the outbox after this revision, in a fixed order. */
  unsent(after: Revision | null, limit: number): Promise<readonly Revision[]>;
  /** Whether any of these revisions of its own name is not held here. */
  lacksAny(receipts: PullAnswer['receipts']): Promise<boolean>;
  /** Takes revisions out of the outbox that the hub is known to keep. */
  settle(revisions: readonly Revision[]): Promise<void>;
  /** Moves refused revisions from the outbox to where they are shown. */
  setAside(refused: readonly { revision: Revision; verdict: PushVerdict }[]): Promise<void>;
}

/** What a round needs of the hub. */
export interface HubSide {
  pull(cursor: string | null, ownWhole: boolean): Promise<HubOutcome<PullAnswer>>;
  push(revisions: readonly Revision[]): Promise<HubOutcome<PushAnswer>>;
}

export type RoundOutcome =
  | {
      readonly ok: true;
      readonly pulled: number;
      readonly pushed: number;
      readonly refused: number;
    }
  | ({ readonly ok: false } & HubProblem);

/** A hub may be restored while a round runs, but not for ever. */
const MAX_RESETS = 3;

const readWhole = (value: unknown): readonly Revision[] => {
  const parsed = parseRevision(value);
  return parsed.ok ? [parsed.revision] : [];
};

/** Runs one round. Safe to stop at any await and to run again. */
export const syncRound = async (device: DeviceSide, hub: HubSide): Promise<RoundOutcome> => {
  let pulled = 0;
  /** An answer of the hub with its revisions checked; those that are none are left out. */
  const pull = async (cursor: string | null, ownWhole: boolean) => {
    const answer = await hub.pull(cursor, ownWhole);
    return answer.ok ? { ...answer, whole: answer.value.revisions.flatMap(readWhole) } : answer;
  };
  const pullAll = async (): Promise<({ ok: false } & HubProblem) | null> => {
    let ownWhole = false;
    /** The next page, on its way and checked while this one is written. */
    let ahead: ReturnType<typeof pull> | null = null;
    for (let resets = 0; ;) {
      const answer: Awaited<ReturnType<typeof pull>> = await (ahead ??
        pull(await device.cursor(), ownWhole));
      ahead = null;
      if (!answer.ok) {
        const isReset = answer.why === 'hub-error' && answer.code === 'reset';
        if (!isReset || ++resets > MAX_RESETS) return answer;
        await device.startOver();
        continue;
      }
      const { receipts, next, more, hubNow } = answer.value;
      const { whole } = answer;
      if (!ownWhole && (await device.lacksAny(receipts))) {
        ownWhole = true;
        continue;
      }
      if (more) ahead = pull(next, ownWhole);
      await device.takePage({ revisions: whole, receipts, next, hubNow });
      pulled += whole.length;
      if (!more) return null;
    }
  };

  // Pull first: it is what notices a hub that was rolled back.
  const before = await pullAll();
  if (before) return before;

  let pushed = 0;
  let refused = 0;
  let last: Revision | null = null;
  for (;;) {
    const unsent = await device.unsent(last, MAX_PUSH_REVISIONS);
    if (unsent.length === 0) break;
    const batch = withinBytes(unsent);
    const answer = await hub.push(batch);
    if (!answer.ok) return answer;
    const setAside = batch.flatMap((revision, at) => {
      const verdict = answer.value.verdicts[at];
      return verdict?.verdict === 'refused' ? [{ revision, verdict }] : [];
    });
    if (setAside.length > 0) await device.setAside(setAside);
    const seq = parseCursor((await device.cursor()) ?? '')?.seq ?? 0;
    const settled = batch.filter((_, at) => {
      const verdict = answer.value.verdicts[at];
      return verdict?.verdict === 'known' && verdict.seq !== undefined && verdict.seq <= seq;
    });
    if (settled.length > 0) await device.settle(settled);
    refused += setAside.length;
    pushed += batch.length - setAside.length;
    last = batch.at(-1) as Revision;
  }
  if (pushed > 0) {
    const after = await pullAll();
    if (after) return after;
  }
  return { ok: true, pulled, pushed, refused };
};

/** As many revisions from the front as one push may carry; at least one. */
const withinBytes = (revisions: readonly Revision[]): readonly Revision[] => {
  let bytes = 64;
  let count = 0;
  for (const revision of revisions) {
    // A character of JSON takes at most three bytes of UTF-8; most take one.
    bytes += new TextEncoder().encode(JSON.stringify(revision)).length + 1;
    if (count > 0 && bytes > MAX_PUSH_BYTES) break;
    count++;
  }
  return revisions.slice(0, count);
};
