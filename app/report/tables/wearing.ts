/** What testers logged, record by record: runs with all that was said in them, rankings, damage; and who they are. */
import {
  ownRecords,
  runStates,
  type FeetLook,
  type ProjectLog,
} from '../../../core/review/index.ts';
import { twoSidedIds } from '../../../core/foot/index.ts';
import { isDayOnly, type Run } from '../../../core/records/index.ts';
import { markColumnOf } from './mark-columns.ts';
import { km, tableOf, type Table } from './table.ts';
import type { Names } from './written.ts';

/** Testers are codes: their names stay in the group. */
export const testersTable = ({ records, spans, everyRun }: ProjectLog, feet: FeetLook): Table => {
  const involved = new Set<string>([
    ...spans.map(({ tester }) => tester),
    ...everyRun.map(({ body }) => body.tester),
  ]);
  const sizes = new Map(feet.testers.map(({ tester, size }) => [tester, size]));
  return tableOf(
    'testers',
    records.tester.filter(({ revision }) => involved.has(revision.id)),
    {
      tester: ({ body }) => body.code,
      foot_length_left_mm: ({ body }) => body.footLengthMm?.left,
      foot_length_right_mm: ({ body }) => body.footLengthMm?.right,
      foot_width_left_mm: ({ body }) => body.footWidthMm?.left,
      foot_width_right_mm: ({ body }) => body.footWidthMm?.right,
      ball_girth_left_mm: ({ body }) => body.ballGirthMm?.left,
      ball_girth_right_mm: ({ body }) => body.ballGirthMm?.right,
      size_by_5_mm: ({ revision }) => sizes.get(revision.id)?.by5.sizeMm,
      mass_kg: ({ body }) => body.massKg,
      height_m: ({ body }) => body.heightM,
      foot_strike: ({ body }) => body.footStrike,
      runs: ({ revision }) => everyRun.filter(({ body }) => body.tester === revision.id).length,
    },
  );
};

export const handOutsTable = (log: ProjectLog, { pair, tester }: Names): Table =>
  tableOf('hand-outs', ownRecords(log.records['hand-out'], log.id), {
    pair: ({ body }) => pair(body.pair),
    tester: ({ body }) => tester(body.tester),
    from: ({ body }) => body.from,
    until: ({ body }) => body.until,
    blind: ({ body }) => body.blind,
  });

const complaintsIn = ({ feet }: Run) => (feet?.answer === 'complaints' ? feet.complaints : []);

/** Every share of a run on a surface, the largest first: `road 0.6 trail 0.4`. */
const sharesOf = ({ surfaces }: Run): string =>
  Object.entries(surfaces ?? {})
    .filter(([, share]) => share > 0)
    .sort(([, a], [, b]) => b - a)
    .map(([surface, share]) => `${surface} ${Number(share.toFixed(3))}`)
    .join(' ');

/** One column a question, so that the table can be brought in again. */
const markColumns = Object.fromEntries(
  twoSidedIds.map((id) => [
    markColumnOf(id),
    ({ body }: { readonly body: Run }) => body.comfort2?.[id],
  ]),
);

/** Every run on record, whether or not it counts. */
export const runsTable = (log: ProjectLog, { round, pair, tester }: Names): Table => {
  const states = runStates(log);
  const roundOf = new Map(log.records.pair.map(({ revision, body }) => [revision.id, body.round]));
  return tableOf('runs', log.everyRun, {
    run: ({ revision }) => revision.id,
    tester: ({ body }) => tester(body.tester),
    pair: ({ body }) => pair(body.pair),
    round: ({ body }) => round(roundOf.get(body.pair)),
    started_at: ({ body }) => body.startedAt,
    day_only: ({ body }) => isDayOnly(body),
    distance_km: ({ body }) => km(body.distanceM),
    distance_from: ({ body }) => body.distanceFrom,
    duration_s: ({ body }) => body.durationS,
    surface: ({ body }) => sharesOf(body).split(' ')[0],
    surface_shares: ({ body }) => sharesOf(body),
    ground: ({ body }) => body.ground,
    temperature_c: ({ body }) => body.temperatureC,
    sock: ({ body }) => body.sock,
    comfort_overall_of_100: ({ body }) => body.comfort?.overall,
    ...markColumns,
    first_impression: ({ body }) => body.firstImpression === true,
    feet_asked: ({ body }) => body.feet !== undefined,
    complaints: ({ body }) => (body.feet ? complaintsIn(body).length : undefined),
    pain_of_10: ({ body }) => body.pain?.score,
    pain_new: ({ body }) => body.pain?.isNew,
    pain_signs: ({ body }) => body.pain?.signs?.join(' '),
    pain_where: ({ body }) => body.pain?.where,
    pain_over: ({ body }) => body.pain?.over,
    words: ({ body }) => body.words,
    worn_despite_stop: ({ body }) => body.wornDespiteStop,
    photos: ({ body }) =>
      (body.photos?.length ?? 0) +
      complaintsIn(body).reduce((sum, { photos }) => sum + (photos?.length ?? 0), 0),
    track_km: ({ body }) => body.track && km(body.track.distanceM),
    track_moving_s: ({ body }) => body.track?.movingS,
    track_climb_m: ({ body }) => body.track?.climbM,
    track_steps_per_shoe: ({ body }) => body.track?.stepsPerShoe,
    state: ({ revision }) => states.of(revision.id).state,
    odd: ({ revision }) => states.of(revision.id).odd.join(' '),
    corrected_at: ({ body }) => body.correctedBy?.at,
    corrected_why: ({ body }) => body.correctedBy?.why,
    brought_in_at: ({ body }) => body.broughtIn?.at,
  });
};

export const runComfortTable = ({ everyRun }: ProjectLog): Table =>
  tableOf(
    'run-comfort',
    everyRun.flatMap(({ revision, body }) =>
      Object.entries(body.comfort ?? {}).map(([attribute, score]) => ({
        run: revision.id,
        attribute,
        score,
      })),
    ),
    {
      run: ({ run }) => run,
      attribute: ({ attribute }) => attribute,
      score_of_100: ({ score }) => score,
    },
  );

/** Marks on the lines with the good point in the middle, run by run. */
export const runTwoSidedTable = ({ everyRun }: ProjectLog): Table =>
  tableOf(
    'run-comfort-two-sided',
    everyRun.flatMap(({ revision, body }) =>
      Object.entries(body.comfort2 ?? {}).map(([attribute, mark]) => ({
        run: revision.id,
        attribute,
        mark,
      })),
    ),
    {
      run: ({ run }) => run,
      attribute: ({ attribute }) => attribute,
      mark: ({ mark }) => mark,
    },
  );

export const runComplaintsTable = ({ everyRun }: ProjectLog): Table =>
  tableOf(
    'run-complaints',
    everyRun.flatMap(({ revision, body }) =>
      complaintsIn(body).map((one) => ({ run: revision.id, one })),
    ),
    {
      run: ({ run }) => run,
      foot: ({ one }) => one.foot,
      zone: ({ one }) => one.zone,
      kind: ({ one }) => one.kind,
      severity_of_10: ({ one }) => one.severity,
      from_km: ({ one }) => (one.fromM === undefined ? undefined : km(one.fromM)),
      skin: ({ one }) => one.skin,
      words: ({ one }) => one.words,
      photos: ({ one }) => one.photos?.length ?? 0,
    },
  );

export const rankingsTable = (log: ProjectLog, { pair, tester }: Names): Table =>
  tableOf(
    'rankings',
    ownRecords(log.records.ranking, log.id).flatMap(({ body }) =>
      body.order.flatMap((same, place) => same.map((one) => ({ ...body, pair: one, place }))),
    ),
    {
      tester: (one) => tester(one.tester),
      at: ({ at }) => at,
      pair: (one) => pair(one.pair),
      place: ({ place }) => place + 1,
      words: (one) => one.words,
    },
  );

export const damagesTable = (log: ProjectLog, { pair, tester }: Names): Table =>
  tableOf('damage-reports', ownRecords(log.records['damage-report'], log.id), {
    pair: ({ body }) => pair(body.pair),
    tester: ({ body }) => tester(body.tester),
    at: ({ body }) => body.at,
    damage: ({ body }) => body.what,
    foot: ({ body }) => body.foot,
    words: ({ body }) => body.words,
    photos: ({ body }) => body.photos?.length ?? 0,
  });
