/** Where each pair's row and each block of the plan's calendar stands. Pure. */
import { periodStartMs } from '../../../core/panel/index.ts';
import type { HandOutPlan, RecordId } from '../../../core/records/index.ts';
import { byCode } from '../../../core/review/index.ts';
import { isOutNow } from '../../drafts/hand-out.ts';
import type { DeskRecords } from '../worker/desk-work.ts';
import { datedPlaces, type DatedPlace } from './plan-facts.ts';
import { handedOut } from './settle-plan.ts';

const DAY_MS = 86_400_000;

export interface PlanBlock extends DatedPlace {
  /** Not so in the plan that stands. */
  readonly changed: boolean;
}

export interface PlanRow {
  readonly pair: RecordId;
  readonly round: RecordId;
  /** First of its round. */
  readonly leads: boolean;
  readonly blocks: readonly PlanBlock[];
  /** Who has it now by a hand-out that is not the plan's, until the plan begins for this pair. */
  readonly held: {
    readonly tester: RecordId;
    readonly fromMs: number;
    readonly untilMs: number;
  } | null;
}

export interface PlanRows {
  readonly fromMs: number;
  readonly untilMs: number;
  readonly rows: readonly PlanRow[];
}

/** What a block is told apart by: two plans with the same key say the same of it. */
const keyOf = ({ place, fromMs, untilMs }: DatedPlace): string =>
  [place.tester, place.pair, fromMs, untilMs].join(' ');

/**
 * A row for each pair of the plan: by round, then by size.
 * @param standing the plan as it is saved, where `plan` is only looked at
 */
export const planRows = (
  plan: HandOutPlan,
  standing: HandOutPlan,
  records: Pick<DeskRecords, 'hand-out' | 'pair'>,
  nowMs: number,
): PlanRows => {
  const dated = datedPlaces(plan, records, nowMs);
  const known = new Set(datedPlaces(standing, records, nowMs).map(keyOf));
  const ofPlan = new Set([...handedOut(plan, records).values()].map(({ revision }) => revision.id));
  const shown = new Set([...plan.places, ...standing.places].map(({ pair }) => pair));
  const rowsOf = (round: RecordId) =>
    records.pair
      .filter(({ body, revision }) => body.round === round && shown.has(revision.id))
      .sort((a, b) => a.body.sizeMm - b.body.sizeMm || byCode(a.body, b.body))
      .map(({ revision: { id } }, at): PlanRow => {
        const blocks = dated
          .filter(({ place }) => place.pair === id)
          .map((one) => ({ ...one, changed: !known.has(keyOf(one)) }));
        const now = records['hand-out'].find(
          ({ body, revision }) =>
            body.pair === id && !ofPlan.has(revision.id) && isOutNow(body, nowMs),
        );
        const untilMs = Math.min(
          now?.body.until === undefined ? Infinity : Date.parse(now.body.until),
          ...blocks.map(({ fromMs }) => fromMs).filter((ms) => ms > nowMs),
          Infinity,
        );
        return {
          ...{ pair: id, round, leads: at === 0, blocks },
          held: now
            ? {
                tester: now.body.tester,
                fromMs: Date.parse(now.body.from),
                untilMs: Number.isFinite(untilMs) ? untilMs : nowMs,
              }
            : null,
        };
      });
  const startMs = Date.parse(plan.from);
  const endMs = periodStartMs(plan, plan.periods);
  const isNear = nowMs > startMs - 28 * DAY_MS && nowMs < endMs + 28 * DAY_MS;
  return {
    fromMs: (isNear ? Math.min(nowMs, startMs) : startMs) - 4 * DAY_MS,
    untilMs: (isNear ? Math.max(nowMs, endMs) : endMs) + 2 * DAY_MS,
    rows: plan.rounds.flatMap(rowsOf),
  };
};
