/** What is recorded of testers, of the pairs in their hands, and of their runs. */
import * as z from 'zod/mini';
import { complaintKinds, zoneCodes } from '../../foot/index.ts';
import { broughtInSchema } from '../brought-in.ts';
import { correctedBySchema } from '../corrected-by.ts';
import {
  celsiusField,
  footField,
  idField,
  instantField,
  kilogramsField,
  lineField,
  metresField,
  millimetresIn,
  numberIn,
  photosField,
  secondsField,
  shareField,
  surfaceField,
  tenField,
  wordsField,
} from './common.ts';
import { comfortSchema, twoSidedSchema } from './project.ts';
import * as ranges from './field-ranges.ts';
import type { Range } from './field-ranges.ts';

const bothFeet = (range: Range) =>
  z.looseObject({ left: millimetresIn(range), right: millimetresIn(range) });

export const testerSchema = z.looseObject({
  /** What the group calls the tester, e.g. `T07`. */
  code: z.string().check(z.regex(/^[A-Z0-9][A-Z0-9-]{0,11}$/)),
  /** Optional, and never leaves the group. */
  name: z.optional(lineField),
  footLengthMm: z.optional(bothFeet(ranges.footLengthMm)),
  footWidthMm: z.optional(bothFeet(ranges.footWidthMm)),
  ballGirthMm: z.optional(bothFeet(ranges.ballGirthMm)),
  massKg: z.optional(kilogramsField),
  heightM: z.optional(numberIn(ranges.heightM).brand<'Metres'>()),
  footStrike: z.optional(z.enum(['rearfoot', 'midfoot', 'forefoot'])),
});

/** A pair in the hands of a tester, from the hand-out to the return. */
export const handOutSchema = z.looseObject({
  project: idField,
  pair: idField,
  tester: idField,
  from: instantField,
  /** When it came back; absent while it is out. */
  until: z.optional(instantField),
  /** False where the tester knows what was changed. */
  blind: z.boolean(),
});

const complaintSchema = z.looseObject({
  foot: footField,
  zone: z.enum(zoneCodes),
  kind: z.enum(complaintKinds),
  /** 0 not worth a word … 10 had to stop. */
  severity: z.optional(tenField),
  /** Distance into the run at which it began; absent: not answered. */
  fromM: z.optional(metresField),
  skin: z.optional(z.enum(['blister', 'broken'])),
  words: z.optional(wordsField),
  photos: z.optional(photosField),
});

/** What the tester said about their feet: "nothing bothered me" is an answer of its own. */
const feetAnswerSchema = z.discriminatedUnion('answer', [
  z.looseObject({ answer: z.literal('nothing') }),
  z.looseObject({
    answer: z.literal('complaints'),
    complaints: z.array(complaintSchema).check(z.minLength(1), z.maxLength(60)),
  }),
]);

export const painSigns = [
  'swelling',
  'limp',
  'numbness',
  'night-pain',
  'cannot-bear-weight',
] as const;
export type PainSign = (typeof painSigns)[number];

export const grounds = ['dry', 'damp', 'wet', 'mud', 'snow-ice'] as const;

export const runSchema = z.looseObject({
  project: idField,
  pair: idField,
  tester: idField,
  startedAt: instantField,
  /** The distance that counts, whatever it came from. */
  distanceM: metresField,
  distanceFrom: z.enum(['typed', 'track']),
  /** The other figure, where the tester typed one and a track said another. */
  otherDistanceM: z.optional(metresField),
  durationS: z.optional(secondsField),
  /** Share of the distance on each surface; absent: not answered. They sum to 1. */
  surfaces: z.optional(
    z
      .partialRecord(surfaceField, shareField)
      .check(
        z.refine(
          (shares) => Math.abs(Object.values(shares).reduce((a, b) => a + b, 0) - 1) < 1e-6,
          'the shares of the surfaces must sum to 1',
        ),
      ),
  ),
  ground: z.optional(z.enum(grounds)),
  temperatureC: z.optional(celsiusField),
  sock: z.optional(z.enum(['none', 'thin', 'medium', 'thick'])),
  /** Absent: not answered. */
  comfort: z.optional(comfortSchema),
  /** The comfort questions whose good point is in the middle; absent: not answered, or asked on 0-100 lines. */
  comfort2: z.optional(twoSidedSchema),
  /** True for the first wearing: its scores are kept apart from wear scores. */
  firstImpression: z.optional(z.boolean()),
  /** Absent: not asked or not answered. */
  feet: z.optional(feetAnswerSchema),
  pain: z.optional(
    z.looseObject({
      score: tenField,
      isNew: z.optional(z.boolean()),
      signs: z.optional(z.array(z.enum(painSigns))),
      where: z.optional(lineField),
      /** When the tester said that it is over; absent: it is not, or was not said. */
      over: z.optional(instantField),
      /** When a correction told it anew; absent: with the run. What a lead answered before is no answer to it. */
      toldAt: z.optional(instantField),
    }),
  ),
  /** What the track says, worked out on the phone before its ends were cut off. */
  track: z.optional(
    z.looseObject({
      distanceM: metresField,
      movingS: z.optional(secondsField),
      climbM: z.optional(metresField),
      stepsPerShoe: z.optional(numberIn(ranges.steps)),
      /** Moving seconds of each kilometre; the rest of 100 m or more scaled to one. */
      paceByKmS: z.optional(z.array(numberIn(ranges.durationS)).check(z.maxLength(1000))),
      /** Whether noise of the fixes was taken out before it was measured. */
      distanceBy: z.optional(z.enum(['smoothed', 'as-recorded'])),
      /** Recognises the same track when it comes again. */
      fingerprint: z.string().check(z.maxLength(4000)),
      /** The attachment with the cut track, where the tester sent it. */
      attachment: z.optional(z.string().check(z.regex(/^[0-9a-f]{64}$/))),
    }),
  ),
  /** Why the pair was worn although a stop-use notice stood. */
  wornDespiteStop: z.optional(lineField),
  words: z.optional(wordsField),
  photos: z.optional(photosField),
  /** The day was said and no hour: the hour of the start is made up. */
  dayOnly: z.optional(z.literal(true)),
  /** Set where a lead corrected it on the tester's behalf; absent again once the tester saves it anew. */
  correctedBy: z.optional(correctedBySchema),
  /** Set where a lead brought it in from a table; absent again once the tester saves it anew. */
  broughtIn: z.optional(broughtInSchema),
});

/** Pairs in the order of preference, best first; equal pairs share a place. */
export const rankingSchema = z.looseObject({
  project: idField,
  tester: idField,
  at: instantField,
  question: z.enum(['comfort']),
  order: z.array(z.array(idField).check(z.minLength(1))).check(z.minLength(1)),
  /** Why, as the tester says it. */
  words: z.optional(wordsField),
});

export const damages = [
  'sole-peeling',
  'plate-cracked',
  'heel-counter-broken',
  'upper-torn',
  'eyelet-torn',
  'tread-torn',
  'other',
] as const;

/** A sample that comes apart: the pair is to be taken off now. */
export const damageReportSchema = z.looseObject({
  project: idField,
  pair: idField,
  tester: idField,
  at: instantField,
  what: z.enum(damages),
  foot: z.optional(footField),
  words: z.optional(wordsField),
  photos: z.optional(photosField),
});

/** The tester has read a stop-use notice. */
export const acknowledgementSchema = z.looseObject({
  project: idField,
  tester: idField,
  stopUse: idField,
  at: instantField,
});

export type Tester = z.infer<typeof testerSchema>;
export type HandOut = z.infer<typeof handOutSchema>;
export type Run = z.infer<typeof runSchema>;
export type Complaint = z.infer<typeof complaintSchema>;
export type Ranking = z.infer<typeof rankingSchema>;
export type DamageReport = z.infer<typeof damageReportSchema>;
export type Acknowledgement = z.infer<typeof acknowledgementSchema>;
