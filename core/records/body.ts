/** What does the body of a revision say, if this version can read it? */
import * as z from 'zod/mini';
import { fitSessionSchema, fitTrialSchema } from './bodies/fitting.ts';
import { decisionSchema, quoteSchema, replySchema } from './bodies/answering.ts';
import {
  attachmentSchema,
  benchCheckSchema,
  findingSchema,
  reportSchema,
  stopUseSchema,
} from './bodies/making.ts';
import { gaugeStudySchema, handOutPlanSchema } from './bodies/panel.ts';
import { pairSchema, projectSchema, roundSchema } from './bodies/project.ts';
import {
  acknowledgementSchema,
  damageReportSchema,
  handOutSchema,
  rankingSchema,
  runSchema,
  testerSchema,
} from './bodies/wearing.ts';
import {
  answerSchema,
  proposalReplySchema,
  proposalSchema,
  questionSchema,
  thanksSchema,
} from './bodies/talking.ts';
import { isKind, SCHEMA_VERSION, type Kind } from './kinds.ts';
import type { Revision } from './revision.ts';

export const bodySchemas = {
  project: projectSchema,
  round: roundSchema,
  pair: pairSchema,
  tester: testerSchema,
  'hand-out': handOutSchema,
  run: runSchema,
  ranking: rankingSchema,
  'damage-report': damageReportSchema,
  'bench-check': benchCheckSchema,
  'gauge-study': gaugeStudySchema,
  'hand-out-plan': handOutPlanSchema,
  finding: findingSchema,
  report: reportSchema,
  'stop-use': stopUseSchema,
  acknowledgement: acknowledgementSchema,
  reply: replySchema,
  decision: decisionSchema,
  quote: quoteSchema,
  question: questionSchema,
  answer: answerSchema,
  proposal: proposalSchema,
  'proposal-reply': proposalReplySchema,
  thanks: thanksSchema,
  'fit-session': fitSessionSchema,
  'fit-trial': fitTrialSchema,
  attachment: attachmentSchema,
} satisfies Record<Kind, z.ZodMiniType>;

export type BodyOf<K extends Kind> = z.infer<(typeof bodySchemas)[K]>;

/** One thing that is wrong with a body: the field, and what was expected there. */
export interface BodyProblem {
  /** Path of the field, e.g. `feet.complaints.0.severity`; empty for the body itself. */
  readonly field: string;
  /** What was expected, in one plain English phrase. */
  readonly expected: string;
}

export type ReadBody<K extends Kind> =
  | { readonly ok: true; readonly body: BodyOf<K> }
  | { readonly ok: false; readonly problems: readonly BodyProblem[] };

/** Checks a value as the body of one kind. Unknown fields stay in it. */
export const readBody = <K extends Kind>(kind: K, value: unknown): ReadBody<K> => {
  const schema = bodySchemas[kind] as unknown as z.ZodMiniType<BodyOf<K>>;
  const parsed = z.safeParse(schema, value);
  if (parsed.success) return { ok: true, body: parsed.data };
  return { ok: false, problems: parsed.error.issues.map(problemOf) };
};

const problemOf = (issue: z.core.$ZodIssue): BodyProblem => ({
  field: issue.path.map(String).join('.'),
  expected: expectation(issue),
});

const isNumber = (origin: string): boolean => origin === 'number' || origin === 'int';

const expectation = (issue: z.core.$ZodIssue): string => {
  // The rest of zod's codes do not occur in these schemas.
  // eslint-disable-next-line @typescript-eslint/switch-exhaustiveness-check
  switch (issue.code) {
    case 'invalid_type':
      return `a value of type ${issue.expected}`;
    case 'too_small':
      // A number says both of its ends by itself (`numberIn`).
      return isNumber(issue.origin)
        ? issue.message
        : `a length of at least ${String(issue.minimum)}`;
    case 'too_big':
      return isNumber(issue.origin)
        ? issue.message
        : `a length of at most ${String(issue.maximum)}`;
    case 'invalid_value':
      return `one of ${issue.values.map(String).join(', ')}`;
    case 'invalid_format':
      return issue.format === 'datetime'
        ? 'a date and time with offset, such as 2026-05-01T07:30:00+02:00'
        : 'text of the right form';
    case 'custom':
      return issue.message;
    default:
      return 'a valid value';
  }
};

/** The current state of a record whose body this version can read. */
export interface RecordOf<K extends Kind> {
  readonly kind: K;
  readonly body: BodyOf<K>;
  readonly revision: Revision;
}

export type ReadRecord =
  | { readonly ok: true; readonly record: { [K in Kind]: RecordOf<K> }[Kind] }
  | { readonly ok: false; readonly why: 'gone' | 'unknown-kind' | 'newer-schema' }
  | { readonly ok: false; readonly why: 'unreadable'; readonly problems: readonly BodyProblem[] };

/**
 * Reads a revision as a record. `gone`: deleted or erased. `unknown-kind` and `newer-schema`: kept
 * and passed on, but left out of every figure until the app is newer.
 */
export const readRecord = (revision: Revision): ReadRecord => {
  const { kind, body } = revision;
  if (body === null) return { ok: false, why: 'gone' };
  if (!isKind(kind)) return { ok: false, why: 'unknown-kind' };
  if (revision.sv > SCHEMA_VERSION) return { ok: false, why: 'newer-schema' };
  const read = readBody(kind, body);
  if (!read.ok) return { ok: false, why: 'unreadable', problems: read.problems };
  return { ok: true, record: { kind, body: read.body, revision } as RecordOf<Kind> as never };
};

/**
 * The body with known fields changed and every field that this version does not know left as it was.
 * A field set to undefined is removed.
 */
export const editBody = <K extends Kind>(body: BodyOf<K>, changes: Partial<BodyOf<K>>): BodyOf<K> =>
  Object.fromEntries(
    Object.entries({ ...body, ...changes }).filter(([, value]) => value !== undefined),
  ) as BodyOf<K>;
