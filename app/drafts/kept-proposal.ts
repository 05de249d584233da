/** Which half-written answer of a specialist can be taken up again? Pure. */
import * as z from 'zod/mini';
import { proposalAnswers } from '../../core/records/index.ts';
import { keptChangeSchema } from './kept-change.ts';
import type { KeptSchema } from './kept-schema.ts';
import type { ProposalDraft } from './proposal.ts';

const text = z.string();

export const keptProposalSchema: KeptSchema<ProposalDraft> = z.object({
  answer: z.enum([...proposalAnswers, '']),
  change: keptChangeSchema,
  sampleDay: text,
  words: text,
  photos: z.array(text),
});
