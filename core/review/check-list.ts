/**
 * What was measured on the bench, check by check, and does each reading count? All of them, so that a reading that a
 * lead set aside stays in sight, with the reason; it is in no figure.
 */
import type { Reading, RecordId, RecordOf } from '../records/index.ts';
import { groupBy } from '../statistics/index.ts';
import type { Metres } from '../units/index.ts';
import { distanceOf } from './check-distance.ts';
import { uncertaintyOf } from './gauges.ts';
import type { ProjectLog } from './project-log.ts';
import type { ReadingPlace } from './standing/rulings.ts';

/** Whether a reading counts; `waits`: it stays out until the lead decides. */
export type ReadingStanding =
  | { readonly state: 'counts' }
  | { readonly state: 'waits' }
  | {
      readonly state: 'set-aside';
      readonly decision: RecordId;
      readonly why: string;
      readonly at: string;
    };

export interface ListedReading extends ReadingPlace, Pick<Reading, 'value' | 'gauge'> {
  readonly standing: ReadingStanding;
}

export interface ListedCheck {
  readonly id: RecordId;
  readonly pair: RecordId;
  readonly round: RecordId;
  readonly at: string;
  readonly distanceM: Metres;
  readonly distanceFrom: 'shop' | 'runs';
  readonly operator: string | null;
  readonly readings: readonly ListedReading[];
}

/** A reading of one check beside those of the same place of the pair before it. */
export interface ComparedReading extends ListedReading {
  /** Standard uncertainty, in the reading's unit; null: not known. */
  readonly uncertainty: number | null;
  /** Same measure, site, foot and unit, earliest first. */
  readonly earlier: readonly {
    readonly check: RecordId;
    readonly at: string;
    readonly distanceM: Metres;
    readonly value: number;
    readonly standing: ReadingStanding;
  }[];
}

export interface CheckLook extends Omit<ListedCheck, 'readings'> {
  readonly readings: readonly ComparedReading[];
}

const keyOf = ({ measure, site, foot, unit }: ReadingPlace): string =>
  `${measure} ${site} ${foot} ${unit}`;

/** Where each reading of the project stands, by its check and place. */
const standings = ({ standing }: ProjectLog) => {
  const found = new Map<string, ReadingStanding>();
  const keyed = (record: RecordId, place: ReadingPlace) => `${record} ${keyOf(place)}`;
  for (const one of standing.waiting)
    if (one.about === 'reading' && !one.counts && one.subject.reading)
      found.set(keyed(one.subject.record, one.subject.reading), { state: 'waits' });
  for (const one of standing.decided)
    if (one.about === 'reading' && one.ruling === 'set-aside' && one.subject.reading)
      found.set(keyed(one.subject.record, one.subject.reading), {
        state: 'set-aside',
        decision: one.decision,
        why: one.why,
        at: one.at,
      });
  return (record: RecordId, place: ReadingPlace): ReadingStanding =>
    found.get(keyed(record, place)) ?? { state: 'counts' };
};

/** Every check of the project's pairs, latest first. */
export const listChecks = (log: ProjectLog): readonly ListedCheck[] => {
  const pairs = new Map(log.pairs.map((pair) => [pair.id, pair]));
  const standingOf = standings(log);
  return log.everyCheck
    .flatMap(({ body, revision: { id } }: RecordOf<'bench-check'>): ListedCheck[] => {
      const pair = pairs.get(body.pair);
      if (!pair) return [];
      return [
        {
          id,
          pair: body.pair,
          round: pair.round,
          at: body.at,
          ...distanceOf(body, pair.curve),
          operator: body.operator ?? null,
          readings: body.readings.map(({ measure, site, foot, unit, value, gauge }) => ({
            measure,
            site,
            foot,
            unit,
            value,
            ...(gauge !== undefined && { gauge }),
            standing: standingOf(id, { measure, site, foot, unit }),
          })),
        },
      ];
    })
    .sort((a, b) => Date.parse(b.at) - Date.parse(a.at) || (a.id < b.id ? 1 : -1));
};

/** One check, each of its readings beside the pair's earlier ones; null where there is no such check. */
export const lookAtCheck = (log: ProjectLog, id: RecordId): CheckLook | null => {
  const all = listChecks(log);
  const check = all.find((one) => one.id === id);
  const body = log.everyCheck.find(({ revision }) => revision.id === id)?.body;
  if (!check || !body) return null;
  const before = all.filter(
    (one) => one.pair === check.pair && Date.parse(one.at) < Date.parse(check.at),
  );
  const byPlace = groupBy(
    before.toReversed().flatMap((one) => one.readings.map((reading) => ({ one, reading }))),
    ({ reading }) => keyOf(reading),
  );
  return {
    ...check,
    readings: check.readings.map((reading, at) => {
      const whole = body.readings[at];
      const known = whole ? uncertaintyOf(whole, log.gauges) : null;
      return {
        ...reading,
        uncertainty: known && Math.hypot(known.repeatable, known.lasting),
        earlier: (byPlace.get(keyOf(reading)) ?? []).map(({ one, reading: own }) => ({
          check: one.id,
          at: one.at,
          distanceM: one.distanceM,
          value: own.value,
          standing: own.standing,
        })),
      };
    }),
  };
};
