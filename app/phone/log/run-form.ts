/** What stands in the half-filled form of a run, and which run does it make? Pure: no screen, no store. */
import * as z from 'zod/mini';
import {
  comfortAttributeIds,
  complaintKinds,
  zoneCodes,
  type ComfortAttributeId,
  type ZoneCode,
} from '../../../core/foot/index.ts';
import {
  feet,
  grounds,
  isIn,
  painSigns,
  ranges,
  recordIdSchema,
  surfaces,
  type Complaint,
  type Foot,
  type RecordId,
  type Run,
  type Surface,
} from '../../../core/records/index.ts';
import {
  formatDuration,
  fromCelsius,
  fromMetres,
  metres,
  parseDecimal,
  parseDuration,
  seconds,
  toCelsius,
  toMetres,
  type DistanceUnit,
  type Seconds,
  type TemperatureUnit,
} from '../../../core/units/index.ts';
import { callsForCaution } from '../../../core/complaints/pain-stands.ts';
import { sharesOf } from '../../../core/track/painting.ts';
import { toInstant, toLocalMinute } from '../../parts/instant.ts';
import { painOfForm } from './pain-answers.ts';

// A draft of an older version has no photos: it must still open.
const photosOfForm = z._default(z.array(z.string()), []);

const complaintForm = z.object({
  foot: z.enum(feet),
  zone: z.enum(zoneCodes),
  kind: z.nullable(z.enum(complaintKinds)),
  severity: z.nullable(z.number()),
  from: z.string(),
  skin: z.nullable(z.enum(['blister', 'broken'])),
  photos: photosOfForm,
});

const trackForm = z.object({
  /** SHA-256 of the whole file, which stays on this phone. */
  whole: z.string(),
  fingerprint: z.string(),
  distanceM: z.number(),
  startMs: z.nullable(z.number()),
  elapsedS: z.nullable(z.number()),
  movingS: z.nullable(z.number()),
  climbM: z.nullable(z.number()),
  stepsPerShoe: z.nullable(z.number()),
  paceByKmS: z.array(z.number()),
  distanceBy: z.enum(['smoothed', 'as-recorded']),
  stretches: z.array(z.object({ fromM: z.number(), toM: z.number(), surface: z.enum(surfaces) })),
  /** Whether it is sent, without its private ends. */
  send: z.boolean(),
});
export type TrackForm = z.infer<typeof trackForm>;

/** The complaint that is being described: `bothFeet` makes two of it. */
const openComplaintForm = z.extend(complaintForm, { bothFeet: z.boolean() });

/** A draft as it is kept while it is typed: text stays text until the run is saved. */
export const runFormSchema = z.object({
  pair: z.nullable(recordIdSchema),
  distance: z.string(),
  time: z.string(),
  /** Local date and time as the browser's control writes it; empty: now, less the run's time. */
  start: z.string(),
  surfaces: z.array(z.enum(surfaces)),
  track: z._default(z.nullable(trackForm), null),
  /** When the track says that the run began; a typed start counts before it. */
  startMs: z._default(z.nullable(z.number()), null),
  /** Whether the hour of `start` came with the choice of a day: nobody typed it. */
  isHourMade: z._default(z.boolean(), false),
  /** When something was last typed into the form. */
  touchedMs: z._default(z.nullable(z.number()), null),
  comfort: z.partialRecord(z.enum(comfortAttributeIds), z.number()),
  feet: z.nullable(z.enum(['nothing', 'something'])),
  complaints: z.array(complaintForm),
  openComplaint: z._default(z.nullable(openComplaintForm), null),
  pain: z.nullable(z.number()),
  painIsNew: z.nullable(z.boolean()),
  painSigns: z.array(z.enum(painSigns)),
  /** Whether the caution that these answers call for was read. */
  cautionRead: z._default(z.boolean(), false),
  ground: z.nullable(z.enum(grounds)),
  temperature: z.string(),
  sock: z.nullable(z.enum(['none', 'thin', 'medium', 'thick'])),
  words: z.string(),
  photos: photosOfForm,
  wornDespiteStop: z.string(),
});

export type RunForm = z.infer<typeof runFormSchema>;
export type ComplaintForm = z.infer<typeof complaintForm>;
export type OpenComplaint = z.infer<typeof openComplaintForm>;

export const openComplaint = (foot: Foot, zone: ZoneCode): OpenComplaint => ({
  foot,
  zone,
  kind: null,
  severity: null,
  from: '',
  skin: null,
  photos: [],
  bothFeet: false,
});

/** The form once the open complaint is described: one complaint, or the same on both feet. */
export const closeComplaint = (form: RunForm): RunForm => {
  if (!form.openComplaint?.kind) return form;
  const { bothFeet, ...one } = form.openComplaint;
  const sides: readonly Foot[] = bothFeet ? ['left', 'right'] : [one.foot];
  return {
    ...form,
    openComplaint: null,
    complaints: [...form.complaints, ...sides.map((foot) => ({ ...one, foot }))],
  };
};

/** A new form: the usual pair and surface are remembered, scores never are. */
export const emptyRunForm = (pair: RecordId | null, surface: Surface | null): RunForm => ({
  pair,
  distance: '',
  time: '',
  start: '',
  surfaces: surface ? [surface] : [],
  track: null,
  startMs: null,
  isHourMade: false,
  touchedMs: null,
  comfort: {},
  feet: null,
  complaints: [],
  openComplaint: null,
  pain: null,
  painIsNew: null,
  painSigns: [],
  cautionRead: false,
  ground: null,
  temperature: '',
  sock: null,
  words: '',
  photos: [],
  wornDespiteStop: '',
});

export interface FormUnits {
  readonly distance: DistanceUnit;
  readonly temperature: TemperatureUnit;
}

const trimmed = (value: number, digits: number): string => String(Number(value.toFixed(digits)));

/** The form that shows a saved run, to change it. */
export const formOfRun = (run: Run, units: FormUnits): RunForm => ({
  ...emptyRunForm(run.pair, null),
  distance: trimmed(fromMetres(run.distanceM, units.distance), 3),
  time: run.durationS === undefined ? '' : formatDuration(run.durationS),
  start: toLocalMinute(run.startedAt),
  surfaces: Object.entries(run.surfaces ?? {})
    .filter(([, share]) => share > 0)
    .map(([surface]) => surface as Surface),
  comfort: run.comfort ?? {},
  feet: !run.feet ? null : run.feet.answer === 'nothing' ? 'nothing' : 'something',
  complaints:
    run.feet?.answer === 'complaints'
      ? run.feet.complaints.map((complaint) => ({
          foot: complaint.foot,
          zone: complaint.zone,
          kind: complaint.kind,
          severity: complaint.severity ?? null,
          from:
            complaint.fromM === undefined
              ? ''
              : trimmed(fromMetres(complaint.fromM, units.distance), 3),
          skin: complaint.skin ?? null,
          photos: complaint.photos ?? [],
        }))
      : [],
  pain: run.pain?.score ?? null,
  painIsNew: run.pain?.isNew ?? null,
  painSigns: run.pain?.signs ?? [],
  // It was read when the run was saved, and stands on the card of the pair.
  cautionRead: callsForCaution(run.pain),
  ground: run.ground ?? null,
  temperature:
    run.temperatureC === undefined
      ? ''
      : trimmed(fromCelsius(run.temperatureC, units.temperature), 1),
  sock: run.sock ?? null,
  words: run.words ?? '',
  photos: run.photos ?? [],
  wornDespiteStop: run.wornDespiteStop ?? '',
});

export type RunFormError =
  | 'pair'
  | 'distance'
  | 'time'
  | 'start'
  | 'ahead'
  | 'temperature'
  | 'worn'
  | 'from'
  | 'where'
  | 'kind';

/** As long as a run's record can be, ten days. */
const LONGEST_S = 864_000;

const isDuration = (typed: Seconds | null): boolean =>
  typed !== null && typed > 0 && typed <= LONGEST_S;

/** A phone's clock may be so far behind. Judgement, no source. */
const SLOW_CLOCK_MS = 5 * 60_000;

export interface RunContext {
  readonly project: RecordId;
  readonly tester: RecordId;
  readonly units: FormUnits;
  readonly nowMs: number;
  /** By how much this phone's clock is known to be off, ms to add to it. */
  readonly clockOffMs?: number;
  readonly firstImpression: boolean;
  /** The reason of the stop-use notice that stands on the pair. */
  readonly stopped: boolean;
  /** SHA-256 of the track without its private ends, where the tester sends it. */
  readonly sentTrack?: string | null;
  /** The run that is changed: its fields that the form does not show stay as they were. */
  readonly before?: Run;
}

/** No run began later. A clock that is thought to be fast is asked about, and does not bar a start. */
const latestMs = ({ nowMs, clockOffMs = 0 }: RunContext): number =>
  nowMs + Math.max(0, clockOffMs) + SLOW_CLOCK_MS;

export type FormOutcome =
  | { readonly ok: true; readonly run: Run }
  | { readonly ok: false; readonly errors: ReadonlySet<RunFormError> };

/** The run that the form describes, or which of its fields are missing or wrong. */
export const runOfForm = (typed: RunForm, context: RunContext): FormOutcome => {
  const form = closeComplaint(typed);
  const errors = new Set<RunFormError>();
  const { units, before } = context;
  const distance = parseDecimal(form.distance);
  const distanceM =
    distance === null || distance <= 0 ? null : Math.round(toMetres(distance, units.distance));
  if (distanceM === null || !isIn(distanceM, ranges.distanceM)) errors.add('distance');
  const durationS = form.time.trim() === '' ? null : parseDuration(form.time);
  if (form.time.trim() !== '' && !isDuration(durationS)) errors.add('time');
  const startMs =
    form.start !== ''
      ? new Date(form.start).getTime()
      : (form.startMs ?? context.nowMs - (durationS ?? 0) * 1000);
  const keepsStart = before !== undefined && form.start === toLocalMinute(before.startedAt);
  if (!Number.isFinite(startMs)) errors.add('start');
  // What a track or the saved run says stands, whatever this phone's clock makes of it.
  else if (form.start !== '' && !keepsStart && startMs > latestMs(context)) errors.add('ahead');
  const degrees = form.temperature.trim() === '' ? null : parseDecimal(form.temperature);
  const temperatureC = degrees === null ? null : toCelsius(degrees, units.temperature);
  const wrongDegrees = temperatureC === null || !isIn(temperatureC, ranges.temperatureC);
  if (form.temperature.trim() !== '' && wrongDegrees) errors.add('temperature');
  if (context.stopped && form.wornDespiteStop.trim() === '') errors.add('worn');
  if (form.pair === null) errors.add('pair');
  if (form.feet === 'something') {
    if (form.openComplaint) errors.add('kind');
    else if (form.complaints.length === 0) errors.add('where');
  }
  const complaints = complaintsOf(form, distanceM ?? 0, units, errors);
  if (errors.size > 0 || distanceM === null || form.pair === null) return { ok: false, errors };

  const { track } = form;
  const isTracks = track !== null && Math.abs(track.distanceM - distanceM) <= ROUNDING_M;
  const painted =
    track && track.stretches.length > 0
      ? sharesOf(track.stretches, form.surfaces[0] ?? null, track.distanceM)
      : null;
  const share = 1 / form.surfaces.length;
  const run: Run = {
    ...before,
    project: context.project,
    pair: form.pair,
    tester: context.tester,
    startedAt: keepsStart ? before.startedAt : toInstant(startMs),
    distanceM: metres(isTracks ? track.distanceM : distanceM),
    distanceFrom: isTracks
      ? 'track'
      : before?.distanceM === distanceM
        ? before.distanceFrom
        : 'typed',
    otherDistanceM: track && !isTracks ? metres(track.distanceM) : before?.otherDistanceM,
    track: track ? trackOfForm(track, context.sentTrack ?? null) : before?.track,
    durationS: durationS === null ? undefined : durationS,
    surfaces: painted
      ? painted
      : keepsSurfaces(form, before)
        ? before?.surfaces
        : form.surfaces.length === 0
          ? undefined
          : Object.fromEntries(form.surfaces.map((surface) => [surface, share])),
    ground: form.ground ?? undefined,
    temperatureC: temperatureC ?? undefined,
    sock: form.sock ?? undefined,
    comfort: Object.keys(form.comfort).length === 0 ? undefined : form.comfort,
    firstImpression: before ? before.firstImpression : context.firstImpression || undefined,
    feet:
      form.feet === 'nothing'
        ? { answer: 'nothing' }
        : complaints.length > 0
          ? { answer: 'complaints', complaints }
          : undefined,
    pain: painOfForm(form, before?.pain, context.nowMs),
    wornDespiteStop: context.stopped ? form.wornDespiteStop.trim() : before?.wornDespiteStop,
    words: form.words.trim() === '' ? undefined : form.words.trim(),
    photos: form.photos.length === 0 ? undefined : form.photos,
  };
  return { ok: true, run: withoutUndefined(run) };
};

/** A typed distance that rounds the track's is the track's, metres: half of the last digit shown. */
const ROUNDING_M = 6;

const trackOfForm = (track: TrackForm, sent: string | null): NonNullable<Run['track']> => ({
  distanceM: metres(track.distanceM),
  fingerprint: track.fingerprint,
  distanceBy: track.distanceBy,
  ...(track.movingS !== null && { movingS: seconds(track.movingS) }),
  ...(track.climbM !== null && { climbM: metres(track.climbM) }),
  ...(track.stepsPerShoe !== null && { stepsPerShoe: track.stepsPerShoe }),
  ...(track.paceByKmS.length > 0 && { paceByKmS: track.paceByKmS }),
  ...(sent !== null && { attachment: sent }),
});

const keepsSurfaces = (form: RunForm, before: Run | undefined): boolean => {
  const had = Object.entries(before?.surfaces ?? {}).filter(([, share]) => share > 0);
  return (
    had.length > 0 &&
    had.length === form.surfaces.length &&
    had.every(([surface]) => form.surfaces.includes(surface as Surface))
  );
};

const withoutUndefined = (run: Run): Run =>
  Object.fromEntries(Object.entries(run).filter(([, value]) => value !== undefined)) as Run;

const complaintsOf = (
  form: RunForm,
  distanceM: number,
  units: FormUnits,
  errors: Set<RunFormError>,
): Complaint[] => {
  if (form.feet !== 'something') return [];
  return form.complaints.flatMap((one) => {
    if (one.kind === null) return [];
    const from = one.from.trim() === '' ? null : parseDecimal(one.from);
    const fromM = from === null ? null : Math.round(toMetres(from, units.distance));
    const wrong = fromM === null || fromM < 0 || fromM > distanceM;
    if (one.from.trim() !== '' && wrong) errors.add('from');
    return [
      {
        foot: one.foot,
        zone: one.zone,
        kind: one.kind,
        ...(one.severity !== null && { severity: one.severity }),
        ...(fromM !== null && !wrong && { fromM: metres(fromM) }),
        ...(one.skin !== null && { skin: one.skin }),
        ...(one.photos.length > 0 && { photos: one.photos }),
      },
    ];
  });
};

/** Scores by attribute with one of them changed; null takes the answer away. */
export const withScore = (
  comfort: RunForm['comfort'],
  attribute: ComfortAttributeId,
  value: number | null,
): RunForm['comfort'] => {
  const { [attribute]: _, ...rest } = comfort;
  return value === null ? rest : { ...rest, [attribute]: value };
};
