/** Which run does the form make, new or changed, and what in it is missing or wrong? Pure: no screen, no store. */
import { sharesOf } from '../../core/track/painting.ts';
import {
  editBody,
  isIn,
  ranges,
  type Complaint,
  type CorrectedBy,
  type RecordId,
  type Run,
  type Surface,
} from '../../core/records/index.ts';
import {
  metres,
  parseDecimal,
  parseDuration,
  seconds,
  toCelsius,
  toMetres,
  type Celsius,
  type Seconds,
} from '../../core/units/index.ts';
import { toInstant, toLocalDay, toLocalMinute } from '../parts/instant.ts';
import {
  closeComplaint,
  type ComplaintForm,
  type FormUnits,
  type RunForm,
  type TrackForm,
} from './run-form.ts';
import { painOfForm } from './run-pain.ts';

export * from './run-form.ts';

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
type Errors = Set<RunFormError>;

/** As long as a run's record can be, ten days. */
const LONGEST_S = 864_000;

/** A phone's clock may be so far behind. Judgement, no source. */
const SLOW_CLOCK_MS = 5 * 60_000;

/** A typed distance that rounds the track's is the track's, metres: half of the last digit shown. */
const ROUNDING_M = 6;

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
  /** Set where a lead corrects the run; absent when its tester saves it, so that the mark goes. */
  readonly correctedBy?: CorrectedBy;
}

export type FormOutcome =
  | { readonly ok: true; readonly run: Run }
  | { readonly ok: false; readonly errors: ReadonlySet<RunFormError> };

/** No run began later. A clock that is thought to be fast is asked about, and does not bar a start. */
const latestMs = ({ nowMs, clockOffMs = 0 }: RunContext): number =>
  nowMs + Math.max(0, clockOffMs) + SLOW_CLOCK_MS;

const isEmpty = (typed: string): boolean => typed.trim() === '';

const distanceIn = (form: RunForm, { units }: RunContext, errors: Errors): number | null => {
  const typed = parseDecimal(form.distance);
  const distanceM =
    typed === null || typed <= 0 ? null : Math.round(toMetres(typed, units.distance));
  if (distanceM === null || !isIn(distanceM, ranges.distanceM)) errors.add('distance');
  return distanceM;
};

const durationIn = (form: RunForm, errors: Errors): Seconds | null => {
  if (isEmpty(form.time)) return null;
  const typed = parseDuration(form.time);
  if (typed === null || typed <= 0 || typed > LONGEST_S) errors.add('time');
  return typed;
};

/** The start is the one of the run that is changed, to the second. */
const keepsStart = ({ start }: RunForm, before: Run | undefined): before is Run =>
  before !== undefined && start === toLocalMinute(before.startedAt);

const startIn = (
  form: RunForm,
  durationS: Seconds | null,
  context: RunContext,
  errors: Errors,
): number => {
  const typed = form.start !== '';
  const startMs = typed
    ? new Date(form.start).getTime()
    : (form.startMs ?? context.nowMs - (durationS ?? 0) * 1000);
  if (!Number.isFinite(startMs)) errors.add('start');
  // What a track or the saved run says stands, whatever this phone's clock makes of it.
  else if (typed && !keepsStart(form, context.before) && startMs > latestMs(context))
    errors.add('ahead');
  return startMs;
};

const temperatureIn = (form: RunForm, { units }: RunContext, errors: Errors): Celsius | null => {
  if (isEmpty(form.temperature)) return null;
  const degrees = parseDecimal(form.temperature);
  const temperatureC = degrees === null ? null : toCelsius(degrees, units.temperature);
  if (temperatureC === null || !isIn(temperatureC, ranges.temperatureC)) errors.add('temperature');
  return temperatureC;
};

/** What the form asks for and was not said. */
const noteMissing = (form: RunForm, { stopped }: RunContext, errors: Errors): void => {
  if (stopped && isEmpty(form.wornDespiteStop)) errors.add('worn');
  if (form.pair === null) errors.add('pair');
  if (form.feet !== 'something') return;
  if (form.openComplaint || form.complaints.some(({ kind }) => kind === null)) errors.add('kind');
  else if (form.complaints.length === 0) errors.add('where');
};

const complaintsBefore = (before: Run | undefined): readonly Complaint[] =>
  before?.feet?.answer === 'complaints' ? before.feet.complaints : [];

/** A complaint of the form; fields of the same one before that the form does not show stay. */
const complaintOf = (
  one: ComplaintForm & { kind: Complaint['kind'] },
  fromM: number | null,
  before: Complaint | undefined,
): Complaint => {
  const { severity: _, fromM: __, skin: ___, photos: ____, ...kept } = before ?? {};
  return {
    ...kept,
    foot: one.foot,
    zone: one.zone,
    kind: one.kind,
    ...(one.severity !== null && { severity: one.severity }),
    ...(fromM !== null && { fromM: metres(fromM) }),
    ...(one.skin !== null && { skin: one.skin }),
    ...(one.photos.length > 0 && { photos: one.photos }),
  };
};

const complaintsIn = (
  form: RunForm,
  distanceM: number,
  { units, before }: RunContext,
  errors: Errors,
): Complaint[] => {
  if (form.feet !== 'something') return [];
  const known = [...complaintsBefore(before)];
  return form.complaints.flatMap((one) => {
    const { kind } = one;
    if (kind === null) return [];
    const from = isEmpty(one.from) ? null : parseDecimal(one.from);
    const fromM = from === null ? null : Math.round(toMetres(from, units.distance));
    const wrong = fromM === null || fromM < 0 || fromM > distanceM;
    if (!isEmpty(one.from) && wrong) errors.add('from');
    const at = known.findIndex(
      (was) => was.foot === one.foot && was.zone === one.zone && was.kind === kind,
    );
    const [was] = at < 0 ? [] : known.splice(at, 1);
    return [complaintOf({ ...one, kind }, wrong ? null : fromM, was)];
  });
};

const feetOf = (form: RunForm, complaints: Complaint[]): Run['feet'] =>
  form.feet === 'nothing'
    ? { answer: 'nothing' }
    : complaints.length > 0
      ? { answer: 'complaints', complaints }
      : undefined;

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

type Distances = Pick<Run, 'distanceM' | 'distanceFrom' | 'otherDistanceM' | 'track'>;

/** The distance that counts and where it comes from, and what the track says. */
const distancesOf = (
  { track }: RunForm,
  distanceM: number,
  { before, sentTrack = null }: RunContext,
): { readonly [Field in keyof Distances]: Distances[Field] | undefined } & Distances => {
  if (!track)
    return {
      distanceM: metres(distanceM),
      distanceFrom: before?.distanceM === distanceM ? before.distanceFrom : 'typed',
      otherDistanceM: before?.otherDistanceM,
      track: before?.track,
    };
  const isTracks = Math.abs(track.distanceM - distanceM) <= ROUNDING_M;
  return {
    distanceM: metres(isTracks ? track.distanceM : distanceM),
    distanceFrom: isTracks
      ? 'track'
      : before?.distanceM === distanceM
        ? before.distanceFrom
        : 'typed',
    otherDistanceM: isTracks ? before?.otherDistanceM : metres(track.distanceM),
    track: trackOfForm(track, sentTrack),
  };
};

/** A day was chosen and no hour was said. The hour made for today is right within minutes, and was seen. */
const saysDayOnly = ({ start, isHourMade }: RunForm, nowMs: number): boolean =>
  start !== '' && isHourMade && !start.startsWith(toLocalDay(nowMs));

const keepsSurfaces = (form: RunForm, before: Run | undefined): boolean => {
  const had = Object.entries(before?.surfaces ?? {}).filter(([, share]) => share > 0);
  return (
    had.length > 0 &&
    had.length === form.surfaces.length &&
    had.every(([surface]) => form.surfaces.includes(surface as Surface))
  );
};

const surfacesOf = (form: RunForm, before: Run | undefined): Run['surfaces'] => {
  const { track, surfaces } = form;
  const painted =
    track && track.stretches.length > 0
      ? sharesOf(track.stretches, surfaces[0] ?? null, track.distanceM)
      : null;
  if (painted) return painted;
  if (keepsSurfaces(form, before)) return before?.surfaces;
  if (surfaces.length === 0) return undefined;
  const share = 1 / surfaces.length;
  return Object.fromEntries(surfaces.map((surface) => [surface, share]));
};

/** Absent where nothing was answered. */
const answered = <Answers extends object>(answers: Answers): Answers | undefined =>
  Object.keys(answers).length === 0 ? undefined : answers;

/** The run that the form describes, or which of its fields are missing or wrong. */
export const runOfForm = (typed: RunForm, context: RunContext): FormOutcome => {
  const form = closeComplaint(typed);
  const errors: Errors = new Set();
  const { before } = context;
  const distanceM = distanceIn(form, context, errors);
  const durationS = durationIn(form, errors);
  const startMs = startIn(form, durationS, context, errors);
  const temperatureC = temperatureIn(form, context, errors);
  noteMissing(form, context, errors);
  const complaints = complaintsIn(form, distanceM ?? 0, context, errors);
  if (errors.size > 0 || distanceM === null || form.pair === null) return { ok: false, errors };
  const changes: { [Field in keyof Run]: Run[Field] | undefined } = {
    project: context.project,
    pair: form.pair,
    tester: context.tester,
    startedAt: keepsStart(form, before) ? before.startedAt : toInstant(startMs),
    dayOnly: saysDayOnly(form, context.nowMs) || undefined,
    ...distancesOf(form, distanceM, context),
    durationS: durationS ?? undefined,
    surfaces: surfacesOf(form, before),
    ground: form.ground ?? undefined,
    temperatureC: temperatureC ?? undefined,
    sock: form.sock ?? undefined,
    comfort: answered(form.comfort),
    comfort2: answered(form.comfort2),
    firstImpression: before ? before.firstImpression : context.firstImpression || undefined,
    feet: feetOf(form, complaints),
    pain: painOfForm(form, before?.pain, context.nowMs),
    wornDespiteStop: context.stopped ? form.wornDespiteStop.trim() : before?.wornDespiteStop,
    words: isEmpty(form.words) ? undefined : form.words.trim(),
    photos: form.photos.length === 0 ? undefined : form.photos,
    correctedBy: context.correctedBy,
    // What a tester saves is theirs; what a lead corrects still came from the table.
    broughtIn: context.correctedBy && before?.broughtIn,
  };
  return { ok: true, run: editBody<'run'>(before ?? ({} as Run), changes as Partial<Run>) };
};
