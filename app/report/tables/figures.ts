/** Figures of the review that need a table of their own: wear against limits, left against right, preferences, loads. */
import type { Review, RoundReport } from '../../../core/review/index.ts';
import type { Crossing } from '../../../core/wear/index.ts';
import { km, tableOf, type Table } from './table.ts';
import type { Names } from './written.ts';

/** A distance, or the word for one beyond what the checks tell. */
const reached = (at: Crossing | undefined): string | number | undefined =>
  typeof at === 'number' ? km(at) : at;

export const wearTable = (reports: readonly RoundReport[]): Table =>
  tableOf(
    'wear-limits',
    reports.flatMap(({ round, wear }) =>
      wear.flatMap((look) => look.limits.map((outlook) => ({ round: round.name, look, outlook }))),
    ),
    {
      round: ({ round }) => round,
      measure: ({ outlook }) => outlook.limit.measure,
      site: ({ look }) => look.site,
      bound: ({ outlook }) => outlook.limit.bound,
      limit: ({ outlook }) => outlook.limit.value,
      limit_basis: ({ outlook }) => outlook.limit.basis,
      checks: ({ look }) => look.points.length,
      measured_to_km: ({ look }) => km(look.greatest),
      limit_reached_km_5: ({ outlook }) => reached(outlook.distance?.lower),
      limit_reached_km_50: ({ outlook }) => reached(outlook.distance?.median),
      limit_reached_km_95: ({ outlook }) => reached(outlook.distance?.upper),
      verdict: ({ outlook }) => outlook.hold?.word,
    },
  );

export const wearCurvesTable = (reports: readonly RoundReport[]): Table =>
  tableOf(
    'wear-curves',
    reports.flatMap(({ round, wear }) =>
      wear.flatMap((look) =>
        (look.curve ?? []).map((point) => ({ round: round.name, look, point })),
      ),
    ),
    {
      round: ({ round }) => round,
      measure: ({ look }) => look.kind.split(' ')[0],
      unit: ({ look }) => look.kind.split(' ')[1],
      site: ({ look }) => look.site,
      km: ({ point }) => km(point.x),
      median: ({ point }) => point.median,
      lower_90: ({ point }) => point.lower,
      upper_90: ({ point }) => point.upper,
    },
  );

export const sidesTable = ({ sides }: Review, { round, pair }: Names): Table =>
  tableOf('left-right', sides, {
    round: (one) => round(one.round),
    pair: (one) => pair(one.pair),
    measure: ({ measure }) => measure,
    site: ({ site }) => site,
    unit: ({ unit }) => unit,
    difference: ({ difference }) => Number(difference.toPrecision(12)),
    left_right_allowed: ({ allowed }) => allowed,
  });

export const preferencesTable = ({ preferences }: Review, { round }: Names): Table =>
  tableOf('preferences', preferences, {
    round: ({ first }) => round(first),
    against_round: ({ second }) => round(second),
    prefer_round: ({ preferFirst }) => preferFirst,
    prefer_against_round: ({ preferSecond }) => preferSecond,
    equal: ({ equal }) => equal,
    testers_who_knew: ({ unblinded }) => unblinded,
  });

export const surfacesTable = ({ pairs }: Review): Table =>
  tableOf(
    'pair-surfaces',
    pairs.flatMap(({ code, bySurface }) =>
      Object.entries(bySurface).map(([surface, distance]) => ({ code, surface, distance })),
    ),
    {
      pair: ({ code }) => code,
      surface: ({ surface }) => surface,
      km: ({ distance }) => km(distance),
    },
  );

export const loadsTable = ({ pairs }: Review): Table =>
  tableOf('pair-loads', pairs, {
    pair: ({ code }) => code,
    steps_per_shoe: ({ load }) => load.stepsPerShoe,
    load_kn: ({ load }) => load.loadKN,
    load_known_km: ({ load }) => km(load.loadKnownM),
    steps_by_cadence_km: ({ load }) => km(load.stepsFrom.cadence),
    steps_by_height_km: ({ load }) => km(load.stepsFrom['height-and-pace']),
    steps_unknown_km: ({ load }) => km(load.stepsFrom.unknown),
  });
