/**
 * Which half-filled forms of the desk can be taken up again? Drafts are kept on the device as they stand; one that another
 * version wrote differently is not taken up. Pure.
 */
import * as z from 'zod/mini';
import { comfortAttributeIds, complaintKinds, foamIds, partIds } from '../../core/foot/index.ts';
import {
  askIds,
  findingStates,
  hardnessUnits,
  measures,
  measureUnits,
  roundStages,
  surfaces,
} from '../../core/records/index.ts';
import { answerSets, type AnswerSet } from '../../core/talk/index.ts';
import type { CheckDraft } from './check.ts';
import type { GridDraft } from './check-grid.ts';
import type { FindingDraft, NewFindingDraft } from './finding.ts';
import type { GaugeDraft } from './gauge.ts';
import { keptChangeSchema } from './kept-change.ts';
import type { KeptSchema } from './kept-schema.ts';
import type { NewHandOutDraft } from './hand-out.ts';
import type { PairDraft } from './pair.ts';
import type { ProjectDraft } from './project.ts';
import { ASKS_OWN, type QuestionDraft } from './question.ts';
import type { RoundDraft } from './round.ts';
import type { TesterDraft } from './tester.ts';

const text = z.string();
/** A record as it was saved; its own schema judges it once the form is saved. */
const saved = z.optional(z.looseObject({}));
const foot = z.enum(['left', 'right']);
const feetOf = ['both', 'left', 'right'] as const;

export const pairSchema: KeptSchema<PairDraft> = z.object({
  code: text,
  size: text,
  carried: text,
});

export const testerSchema: KeptSchema<TesterDraft> = z.object({
  code: text,
  name: text,
  length: text,
  width: text,
  girth: text,
  mass: text,
  height: text,
});

export const handOutSchema: KeptSchema<NewHandOutDraft> = z.object({
  pair: text,
  tester: text,
  since: z.nullable(text),
  blind: z.boolean(),
});

export const questionSchema: KeptSchema<QuestionDraft> = z.object({
  tester: text,
  ask: z.enum([...askIds, '']),
  words: text,
  answers: z.enum([...(Object.keys(answerSets) as AnswerSet[]), ASKS_OWN]),
});

export const checkGridSchema: KeptSchema<GridDraft> = z.object({
  round: text,
  at: text,
  arrival: z.nullable(z.boolean()),
  operator: text,
  gauges: z.record(text, text),
  values: z.record(text, text),
});

export const gaugeSchema: KeptSchema<GaugeDraft> = z.object({
  gauge: text,
  measure: z.enum(measures),
  unit: z.enum(measureUnits),
  site: text,
  toleranceWidth: text,
  size: z.object({ parts: z.number(), operators: z.number(), trials: z.number() }),
  names: z.record(text, text),
  cells: z.record(text, text),
  table: z.array(z.object({ part: text, operator: text, value: z.number() })),
});

export const findingSchema: KeptSchema<FindingDraft> = z.object({
  title: text,
  part: z.enum(partIds),
  priority: z.enum(['high', 'medium', 'low']),
  state: z.enum(findingStates),
  wanted: text,
  mm: text,
  change: keptChangeSchema,
  due: text,
  carriedBy: text,
  other: z.object({ language: text, title: text, wanted: text }),
  photos: z.array(text),
});

export const newFindingSchema: KeptSchema<NewFindingDraft> = z.object({
  finding: findingSchema,
  round: text,
  source: z.enum(['wear', 'blueprint', 'comfort', 'other']),
  key: text,
  lines: text,
  typed: z.object({ title: z.boolean(), part: z.boolean() }),
});

const compound = z.object({ name: text, hardness: text, unit: z.enum(hardnessUnits) });

export const roundSchema: KeptSchema<RoundDraft> = z.object({
  name: text,
  stage: z.enum(roundStages),
  foam: z.enum([...foamIds, 'unsaid']),
  sole: z.object({ midsole: compound, outsole: compound }),
  changes: z.array(
    z.object({
      part: z.enum(partIds),
      what: text,
      mends: z.enum([...complaintKinds, '']),
      figures: keptChangeSchema,
      limit: text,
      kept: saved,
    }),
  ),
  dimensions: z.array(
    z.object({
      measure: z.enum([...measures, '']),
      site: text,
      foot: z.enum(feetOf),
      unit: z.enum([...measureUnits, '']),
      nominal: text,
      lower: text,
      upper: text,
      leftRight: text,
      notKnown: z.optional(z.record(text, text)),
      kept: saved,
    }),
  ),
  last: z.object({
    name: text,
    sizeMm: text,
    lengthMm: text,
    ballWidthMm: text,
    ballGirthMm: text,
    widthPerStepMm: text,
    girthPerStepMm: text,
  }),
  layers: z.record(text, text),
});

export const checkSchema: KeptSchema<CheckDraft> = z.object({
  pair: text,
  at: text,
  km: text,
  room: text,
  rested: text,
  operator: text,
  gauges: z.record(text, text),
  method: text,
  words: text,
  arrival: z.boolean(),
  readings: z.array(
    z.object({
      measure: z.enum(measures),
      site: text,
      foot,
      value: text,
      unit: z.enum(measureUnits),
      uncertainty: text,
      load: text,
      of: z.optional(z.number()),
    }),
  ),
  photos: z.array(text),
});

export const projectSchema: KeptSchema<ProjectDraft> = z.object({
  name: text,
  runner: z.enum(['neutral', 'stability']),
  use: text,
  on: z.set(z.enum(surfaces)),
  distance: text,
  allowed: text,
  allowedPain: text,
  asked: z.set(z.enum(comfortAttributeIds)),
  forTesters: text,
  tellTesters: z.boolean(),
  feet: z.record(text, text),
  limits: z.array(
    z.object({
      measure: z.enum(measures),
      site: text,
      isTyped: z.optional(z.boolean()),
      bound: z.enum(['at-least', 'at-most']),
      basis: z.enum(['reading', 'share-of-new']),
      value: text,
      old: saved,
    }),
  ),
});

/** A draft with what it was begun from: the state of the record, empty for a new one. */
const keptSchema = z.object({ of: text, draft: z.unknown() });

/**
 * The draft that was kept; null where there is none, where another version wrote it differently, or where the record that
 * it changes was saved since.
 * @param of stamp of the record that is changed; empty: a new one
 */
export const keptDraft = <T>(value: unknown, of: string, schema: KeptSchema<T>): T | null => {
  const kept = z.safeParse(keptSchema, value);
  if (!kept.success || kept.data.of !== of) return null;
  const draft = z.safeParse(schema, kept.data.draft);
  return draft.success ? (kept.data.draft as T) : null;
};
