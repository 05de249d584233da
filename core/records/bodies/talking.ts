/**
 * What testers, leads and specialists say to each other. Each is a record of its own that names what it is about, so
 * that a run or a finding is never rewritten to hold an answer.
 */
import * as z from 'zod/mini';
import { comfortAttributeIds, complaintKinds, zoneCodes } from '../../foot/index.ts';
import { stampSchema } from '../revision.ts';
import { footField, idField, instantField, photosField, wordsField } from './common.ts';
import { languageField } from './evidence.ts';
import * as ranges from './field-ranges.ts';
import { wholeIn } from './number-in.ts';
import { structuredChangeSchema } from './structured-change.ts';

/** Ready-made questions. They name no language and nothing of the build; `core/talk/asks.ts` says what each is for. */
export const askIds = [
  'sock-or-shoe',
  'looser-laces',
  'which-foot',
  'other-shoes',
  'when-in-run',
  'pain-now',
  'pain-next-day',
  'damage-now',
  'still-running',
  'really-distance',
  'really-pace',
  'really-day',
  'really-pair',
  'score-meant',
  'feet-unanswered',
  'comfort-unanswered',
] as const;
export type AskId = (typeof askIds)[number];

/** What one tap can answer. `dont-know` and `skipped` can answer every question. */
export const answerOptions = [
  'yes',
  'no',
  'partly',
  'shoe',
  'sock',
  'both',
  'left',
  'right',
  'this-pair-only',
  'others-too',
  'from-the-start',
  'later',
  'changes',
  'gone',
  'less',
  'same',
  'worse',
  'paused',
  'stopped',
  'not-logged-yet',
  'mistyped',
  'another-pair',
  'other-reason',
  'nothing',
  'something',
  'better',
  'not-tried',
  'dont-know',
  'skipped',
] as const;
export type AnswerOption = (typeof answerOptions)[number];

/** A single record that a question can be about. */
export const askableKinds = ['run', 'damage-report'] as const;
export type AskableKind = (typeof askableKinds)[number];

const askedAboutSchema = z.looseObject({
  record: z.optional(z.looseObject({ id: idField, kind: z.enum(askableKinds) })),
  pair: z.optional(idField),
  foot: z.optional(footField),
  zone: z.optional(z.enum(zoneCodes)),
  complaint: z.optional(z.enum(complaintKinds)),
  attribute: z.optional(z.enum(comfortAttributeIds)),
});

/** A lead asks a tester. It never tells what was changed. */
export const questionSchema = z.looseObject({
  project: idField,
  /** Who is asked. */
  tester: idField,
  at: instantField,
  /** The record, the pair or the zone of a pair; absent: in general. */
  about: z.optional(askedAboutSchema),
  /** Ready-made; absent: in the lead's words. With words beside it these are read in its place. */
  ask: z.optional(z.enum(askIds)),
  words: z.optional(wordsField),
  language: z.optional(languageField),
  /** What can be tapped; absent: what the ready-made question offers, or only words. */
  options: z.optional(z.array(z.enum(answerOptions)).check(z.maxLength(6))),
  /** Since when no answer is asked for any more; absent: it stands. */
  withdrawn: z.optional(instantField),
});

/** A tester answers a question, or writes to the lead about a pair without having been asked. */
export const answerSchema = z.looseObject({
  project: idField,
  tester: idField,
  at: instantField,
  /** Absent: a message. */
  question: z.optional(idField),
  /** What a message is about. */
  pair: z.optional(idField),
  option: z.optional(z.enum(answerOptions)),
  words: z.optional(wordsField),
  language: z.optional(languageField),
});

export const proposalAnswers = ['can', 'cannot', 'other'] as const;
export type ProposalAnswer = (typeof proposalAnswers)[number];

/** A specialist answers a finding. */
export const proposalSchema = z.looseObject({
  project: idField,
  finding: idField,
  at: instantField,
  answer: z.enum(proposalAnswers),
  /** What can be done; absent with `can`: what the finding asks for. */
  change: z.optional(structuredChangeSchema),
  /** When the next sample is there. */
  sampleAt: z.optional(instantField),
  /** Sketches and photos of the specialist's own. */
  photos: z.optional(photosField),
  words: z.optional(wordsField),
  language: z.optional(languageField),
});

export const proposalReplyAnswers = ['accepted', 'ask-again'] as const;
export type ProposalReplyAnswer = (typeof proposalReplyAnswers)[number];

/**
 * A lead takes a proposal, or asks again. It holds for the revision that was judged: a proposal that is changed
 * afterwards waits for the lead anew. The latest that holds stands.
 */
export const proposalReplySchema = z.looseObject({
  project: idField,
  finding: idField,
  proposal: idField,
  /** Stamp of the proposal's revision that was judged. */
  judged: stampSchema,
  at: instantField,
  answer: z.enum(proposalReplyAnswers),
  words: z.optional(wordsField),
  language: z.optional(languageField),
});

/** What came of a complaint, as a tester is told. `carried`: a round carries the change; the rest: how it ended. */
export const thanksResults = ['carried', 'mended', 'better', 'no-different', 'worse'] as const;
export type ThanksResult = (typeof thanksResults)[number];

/** A tester hears what came of their complaint. It names no other tester and no maker. */
export const thanksSchema = z.looseObject({
  project: idField,
  tester: idField,
  at: instantField,
  /** The tester does not receive it; it says what this is thanks for. */
  finding: idField,
  zone: z.optional(z.enum(zoneCodes)),
  kind: z.optional(z.enum(complaintKinds)),
  /** In how many runs the tester had told it by then. */
  runs: z.optional(wholeIn(ranges.count)),
  result: z.enum(thanksResults),
  /** What was done about it, where the lead says it. */
  change: z.optional(structuredChangeSchema),
  words: z.optional(wordsField),
  language: z.optional(languageField),
});

export type Question = z.infer<typeof questionSchema>;
export type AskedAbout = z.infer<typeof askedAboutSchema>;
export type Answer = z.infer<typeof answerSchema>;
export type Proposal = z.infer<typeof proposalSchema>;
export type ProposalReply = z.infer<typeof proposalReplySchema>;
export type Thanks = z.infer<typeof thanksSchema>;
