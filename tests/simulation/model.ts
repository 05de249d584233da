/**
 * Devices and a hub in memory that run the product's own code: stamps, seals, histories and the very
 * `syncRound` of the app. Only the tables are maps instead of databases.
 */
import type { HubOutcome } from '../../app/store/hub-client.ts';
import { syncRound, type DeviceSide, type HubSide } from '../../app/store/sync-round.ts';
import {
  addToHistory,
  clockAfterReceiving,
  FIRST_CHAIN,
  formatCursor,
  newClock,
  nextChain,
  nextStamp,
  parseCursor,
  saveDraft,
  sealRevision,
  type Clock,
  type DeviceId,
  type History,
  type PullAnswer,
  type PushAnswer,
  type RecordId,
  type Revision,
} from '../../core/records/index.ts';

/** Rules that a run may break on purpose, to show that the checks would notice. */
export interface Broken {
  /** The push answer alone clears the outbox. */
  readonly clearOnAnswer?: boolean;
  /** An edit is stamped by the clock alone, not after what it edits. */
  readonly noStampAfter?: boolean;
  /** The cursor is a plain number: a restored hub is not noticed. */
  readonly plainCursor?: boolean;
}

export type Random = () => number;

const keyOf = (revision: Pick<Revision, 'id' | 'stamp' | 'hash'>) =>
  `${revision.id} ${revision.stamp} ${revision.hash}`;

interface Row {
  readonly revision: Revision;
  readonly chain: string;
}

export class Hub {
  rows: Row[] = [];
  known = new Set<string>();

  /** Where the revision stood before, or null where it is new. */
  append(revision: Revision): number | null {
    const key = keyOf(revision);
    if (this.known.has(key)) return this.rows.findIndex((row) => keyOf(row.revision) === key) + 1;
    this.known.add(key);
    const chain = nextChain(this.rows.at(-1)?.chain ?? FIRST_CHAIN, revision.hash);
    this.rows.push({ revision, chain });
    return null;
  }

  backup = () => this.rows.slice();
  restore(rows: Row[]) {
    this.rows = rows.slice();
    this.known = new Set(rows.map(({ revision }) => keyOf(revision)));
  }

  pull(
    since: string | null,
    limit: number,
    device: Device,
    broken: Broken,
    ownWhole: boolean,
  ): HubOutcome<PullAnswer> {
    const cursor = since === null ? null : parseCursor(since);
    const seq = cursor?.seq ?? 0;
    const fits =
      broken.plainCursor === true || seq === 0 || this.rows[seq - 1]?.chain === cursor?.chain;
    if (!fits) return { ok: false, why: 'hub-error', code: 'reset', field: null };
    const scanned = this.rows.slice(seq, seq + limit);
    const visible = scanned.filter(({ revision }) => device.maySee(revision));
    const own = ownWhole
      ? []
      : visible.filter(({ revision }) => revision.stamp.endsWith(device.clock.device));
    const next = Math.max(seq, Math.min(seq + limit, this.rows.length));
    return {
      ok: true,
      value: {
        revisions: visible.filter((row) => !own.includes(row)).map(({ revision }) => revision),
        receipts: own.map(({ revision: { id, stamp, hash } }) => ({ id, stamp, hash })),
        next:
          next === 0
            ? null
            : formatCursor({ seq: next, chain: this.rows[next - 1]?.chain ?? FIRST_CHAIN }),
        more: next < this.rows.length,
        hubNow: 0,
      },
    };
  }
}

/** What a device keeps; copied whole when a phone is cloned. */
interface Kept {
  histories: Map<RecordId, History>;
  outbox: Map<string, Revision>;
  clock: Clock;
  cursor: string | null;
}

export class Device implements DeviceSide {
  readonly member: RecordId;
  readonly seesAll: boolean;
  readonly broken: Broken;
  skewMs: number;
  nowMs = 0;
  kept: Kept;

  constructor(member: RecordId, device: string, seesAll: boolean, skewMs: number, broken: Broken) {
    this.member = member;
    this.seesAll = seesAll;
    this.skewMs = skewMs;
    this.broken = broken;
    this.kept = {
      histories: new Map(),
      outbox: new Map(),
      clock: newClock(device as DeviceId),
      cursor: null,
    };
  }

  get clock(): Clock {
    return this.kept.clock;
  }
  private localMs = () => Math.max(0, this.nowMs + this.skewMs);

  /** A tester sees their own; records whose id ends in `f` are for everyone. */
  maySee = (revision: Revision): boolean =>
    this.seesAll || revision.author === this.member || revision.id.endsWith('f');

  save(id: RecordId, word: string, deleted: boolean): Revision {
    const before = this.kept.histories.get(id);
    const draft = {
      id,
      kind: 'run' as const,
      author: this.member,
      sv: 1,
      body: deleted ? null : { word },
      ...(deleted && { deleted: true as const }),
    };
    if (this.broken.noStampAfter) {
      const { clock, stamp } = nextStamp(this.kept.clock, this.localMs());
      const revision = sealRevision(draft, stamp, before?.head.stamp ?? null);
      this.kept.clock = clock;
      this.kept.histories.set(id, addToHistory(before, revision));
      this.kept.outbox.set(keyOf(revision), revision);
      return revision;
    }
    const saved = saveDraft(this.kept.clock, this.localMs(), before, draft);
    this.kept.clock = saved.clock;
    this.kept.histories.set(id, saved.history);
    this.kept.outbox.set(keyOf(saved.revision), saved.revision);
    return saved.revision;
  }

  take(revisions: readonly Revision[]): void {
    for (const revision of revisions) {
      const { id } = revision;
      this.kept.histories.set(id, addToHistory(this.kept.histories.get(id), revision));
      this.kept.clock = clockAfterReceiving(this.kept.clock, this.localMs(), revision.stamp);
    }
  }

  /** Everything held, oldest first within a record. */
  held = (): Revision[] =>
    [...this.kept.histories.values()].flatMap(({ head, older }) => [...older, head]);

  cursor = () => Promise.resolve(this.kept.cursor);
  takePage: DeviceSide['takePage'] = ({ revisions, receipts, next }) => {
    this.take(revisions);
    if (!this.broken.clearOnAnswer) {
      for (const receipt of receipts) this.kept.outbox.delete(keyOf(receipt));
      for (const revision of revisions) this.kept.outbox.delete(keyOf(revision));
    }
    this.kept.cursor = next;
    return Promise.resolve();
  };
  startOver = () => {
    for (const revision of this.held())
      if (this.seesAll || revision.author === this.member)
        this.kept.outbox.set(keyOf(revision), revision);
    this.kept.cursor = null;
    return Promise.resolve();
  };
  unsent: DeviceSide['unsent'] = (after) => {
    const from = after === null ? '' : keyOf(after);
    const keys = [...this.kept.outbox.keys()].sort().filter((key) => key > from);
    return Promise.resolve(keys.slice(0, 3).map((key) => this.kept.outbox.get(key) as Revision));
  };
  lacksAny: DeviceSide['lacksAny'] = (receipts) => {
    const held = new Set(this.held().map(keyOf));
    return Promise.resolve(receipts.some((receipt) => !held.has(keyOf(receipt))));
  };
  settle: DeviceSide['settle'] = (revisions) => {
    for (const revision of revisions) this.kept.outbox.delete(keyOf(revision));
    return Promise.resolve();
  };
  setAside = () => Promise.resolve();

  clone(): Device {
    const copy = new Device(this.member, '', this.seesAll, this.skewMs, this.broken);
    copy.kept = {
      histories: new Map(this.kept.histories),
      outbox: new Map(this.kept.outbox),
      clock: this.kept.clock,
      cursor: this.kept.cursor,
    };
    return copy;
  }
}

/** A network between a device and the hub that may lose requests and answers and deliver twice. */
export const hubOver = (hub: Hub, device: Device, random: Random, flaky: boolean): HubSide => {
  const lost = (share: number) => flaky && random() < share;
  const offline = { ok: false, why: 'offline' } as const;
  return {
    pull: async (cursor, ownWhole) => {
      if (lost(0.1)) return offline;
      const answer = hub.pull(
        cursor,
        1 + Math.floor(random() * 5),
        device,
        device.broken,
        ownWhole,
      );
      // Delivered twice: the same page is applied here and again by the round, as a retry would.
      if (answer.ok && lost(0.15) && !(await device.lacksAny(answer.value.receipts)))
        await device.takePage({
          ...answer.value,
          revisions: answer.value.revisions as Revision[],
        });
      return lost(0.1) ? offline : answer;
    },
    push: (revisions) => {
      if (lost(0.1)) return Promise.resolve(offline);
      const order = flaky && random() < 0.5 ? [...revisions].reverse() : revisions;
      const stood = new Map(order.map((revision) => [revision, hub.append(revision)]));
      if (lost(0.1)) for (const revision of revisions) hub.append(revision);
      if (device.broken.clearOnAnswer && !lost(0.15))
        for (const revision of revisions) device.kept.outbox.delete(keyOf(revision));
      const verdicts = revisions.map((revision): PushAnswer['verdicts'][number] => {
        const seq = stood.get(revision) ?? null;
        return seq === null ? { verdict: 'stored' } : { verdict: 'known', seq };
      });
      return Promise.resolve(lost(0.1) ? offline : { ok: true, value: { verdicts, hubNow: 0 } });
    },
  };
};

export const sync = (hub: Hub, device: Device, random: Random, flaky: boolean) =>
  syncRound(device, hubOver(hub, device, random, flaky));
