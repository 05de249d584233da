/** What the makers record: bench checks, findings, reports, stop-use notices, attachments. */
import * as z from 'zod/mini';
import { complaintKinds, partIds, trades, zoneCodes } from '../../foot/index.ts';
import { correctedBySchema } from '../corrected-by.ts';
import {
  celsiusField,
  footField,
  idField,
  instantField,
  lineField,
  measureField,
  measureUnitField,
  metresField,
  figureOfBenchField,
  millimetresIn,
  numberIn,
  wholeIn,
  photosField,
  siteField,
  wordsField,
} from './common.ts';
import { evidenceSchema, languageField } from './evidence.ts';
import * as ranges from './field-ranges.ts';
import { structuredChangeSchema } from './structured-change.ts';

const readingSchema = z.looseObject({
  measure: measureField,
  site: siteField,
  foot: footField,
  value: figureOfBenchField,
  unit: measureUnitField,
  gauge: z.optional(lineField),
  /** Expanded uncertainty is twice this: the gauge's standard uncertainty, in the reading's unit. */
  uncertainty: z.optional(numberIn(ranges.benchWidth)),
  loadN: z.optional(numberIn(ranges.loadN)),
  method: z.optional(lineField),
});

/** A sample measured on the bench: on arrival against the blueprint, later against its own start. */
export const benchCheckSchema = z.looseObject({
  project: idField,
  pair: idField,
  at: instantField,
  /** Distance on the pair as the shop knows it; absent: taken from the logged runs. */
  distanceM: z.optional(metresField),
  restedH: z.optional(numberIn(ranges.restedH)),
  temperatureC: z.optional(celsiusField),
  operator: z.optional(lineField),
  readings: z.array(readingSchema).check(z.minLength(1), z.maxLength(200)),
  photos: z.optional(photosField),
  words: z.optional(wordsField),
  /** Who changed it after it was written down, and why; absent: nobody did. */
  correctedBy: z.optional(correctedBySchema),
});

export const findingSources = ['complaint', 'wear', 'blueprint', 'comfort', 'other'] as const;
export const findingStates = ['open', 'asked-for', 'carried-out', 'closed'] as const;

/** What a change did to what it was meant to mend. */
export const changeVerdicts = ['mended', 'better', 'no-different', 'worse', 'too-little'] as const;
export type ChangeVerdict = (typeof changeVerdicts)[number];

/** What the makers conclude, addressed to the part that causes it. */
export const findingSchema = z.looseObject({
  project: idField,
  /** The round that showed it. */
  round: idField,
  title: lineField,
  part: z.enum(partIds),
  kind: z.optional(z.enum(complaintKinds)),
  zone: z.optional(z.enum(zoneCodes)),
  priority: z.enum(['high', 'medium', 'low']),
  wanted: z.optional(wordsField),
  wantedMm: z.optional(millimetresIn(ranges.wantedMm)),
  /** What the lead asks for, as a specialist answers it. */
  change: z.optional(structuredChangeSchema),
  /** Since when the trade is asked; absent: since the finding was last saved. */
  asked: z.optional(instantField),
  /** Title and wish in another language, for who does not read the one of the evidence. */
  otherWords: z.optional(
    z.looseObject({
      language: languageField,
      title: z.optional(lineField),
      wanted: z.optional(wordsField),
    }),
  ),
  /** Until when the change is asked for; absent: nobody said. */
  due: z.optional(instantField),
  /** The round that shall carry the change. */
  carriedBy: z.optional(idField),
  /** The session of fit trials that showed it. */
  fitSession: z.optional(idField),
  /** The report of damage that it answers: beside the source, so that an older app reads the finding. */
  damage: z.optional(idField),
  /** What showed it; absent in findings of complaints from before this field was there. */
  source: z.optional(z.enum(findingSources)),
  /** What the data said, and until when, as frozen when the finding was written. */
  evidence: z.optional(evidenceSchema),
  state: z.enum(findingStates),
  /** What the round that carried the change showed, frozen when the lead wrote it down. */
  outcome: z.optional(
    z.looseObject({
      /** The round that was compared with the one of the finding. */
      round: idField,
      verdict: z.enum(changeVerdicts),
      until: instantField,
      lines: z.array(wordsField),
      /** Of the lines; absent in outcomes from before this field was there. */
      language: z.optional(languageField),
    }),
  ),
  photos: z.optional(photosField),
});

/** A report as it was sent to the specialists: a page that needs no network, kept as an attachment. */
export const reportSchema = z.looseObject({
  project: idField,
  round: idField,
  title: lineField,
  at: instantField,
  languages: z.array(lineField).check(z.minLength(1), z.maxLength(2)),
  /** The trade that the sheet is for; absent: the report of the whole round. */
  trade: z.optional(z.enum(trades)),
  sha256: z.string().check(z.regex(/^[0-9a-f]{64}$/)),
});

/** A lead takes a pair or a whole round out of use. */
export const stopUseSchema = z.looseObject({
  project: idField,
  pairs: z.array(idField).check(z.minLength(1)),
  reason: lineField,
  from: instantField,
  /** When it was lifted; absent while it stands. */
  until: z.optional(instantField),
});

/** A photo or a track, named by the SHA-256 of its bytes. */
export const attachmentSchema = z.looseObject({
  project: z.optional(idField),
  /** The record that shows it. */
  record: idField,
  sha256: z.string().check(z.regex(/^[0-9a-f]{64}$/)),
  mediaType: z.string().check(z.regex(/^[a-z]+\/[a-z0-9.+-]{1,60}$/)),
  bytes: wholeIn(ranges.attachmentBytes),
});

export type BenchCheck = z.infer<typeof benchCheckSchema>;
export type Reading = z.infer<typeof readingSchema>;
export type Finding = z.infer<typeof findingSchema>;
export type Report = z.infer<typeof reportSchema>;
export type StopUse = z.infer<typeof stopUseSchema>;
export type Attachment = z.infer<typeof attachmentSchema>;
