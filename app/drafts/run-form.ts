/** What stands in the half-filled form of a run? Pure: no screen, no words, no store. */
import * as z from 'zod/mini';
import {
  comfortAttributeIds,
  complaintKinds,
  twoSidedIds,
  zoneCodes,
  type ZoneCode,
} from '../../core/foot/index.ts';
import {
  feet,
  grounds,
  painSigns,
  recordIdSchema,
  surfaces,
  type Foot,
  type RecordId,
  type Run,
  type Surface,
} from '../../core/records/index.ts';
import {
  formatDuration,
  fromCelsius,
  fromMetres,
  type DistanceUnit,
  type TemperatureUnit,
} from '../../core/units/index.ts';
import { callsForCaution } from '../../core/complaints/pain-stands.ts';
import { toLocalMinute } from '../parts/instant.ts';

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
  comfort2: z._default(z.partialRecord(z.enum(twoSidedIds), z.number()), {}),
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
  comfort2: {},
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
  isHourMade: run.dayOnly === true,
  surfaces: Object.entries(run.surfaces ?? {})
    .filter(([, share]) => share > 0)
    .map(([surface]) => surface as Surface),
  comfort: run.comfort ?? {},
  comfort2: run.comfort2 ?? {},
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

/** Answers by question with one of them changed; null takes the answer away. */
export const withAnswer = <Id extends string>(
  answers: Readonly<Partial<Record<Id, number>>>,
  question: Id,
  value: number | null,
): Partial<Record<Id, number>> => {
  const { [question]: _, ...rest } = answers;
  return (value === null ? rest : { ...rest, [question]: value }) as Partial<Record<Id, number>>;
};
