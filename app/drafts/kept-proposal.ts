/** Which half-written answer of a specialist can be taken up again? Pure. */
import * as z from 'zod/mini';
import { partIds } from '../../core/foot/index.ts';
import {
  changeDirections,
  changeUnits,
  proposalAnswers,
  shoeSides,
} from '../../core/records/index.ts';
import type { ChangeFormDraft } from './change.ts';
import type { KeptSchema } from './kept.ts';
import type { ProposalDraft } from './proposal.ts';

const text = z.string();

const change: KeptSchema<ChangeFormDraft> = z.object({
  part: z.enum(partIds),
  what: text,
  side: z.enum([...shoeSides, '']),
  foot: z.enum(['both', 'left', 'right']),
  direction: z.enum([...changeDirections, '']),
  amount: text,
  unit: z.enum(changeUnits),
});

export const keptProposalSchema: KeptSchema<ProposalDraft> = z.object({
  answer: z.enum([...proposalAnswers, '']),
  change,
  sampleDay: text,
  words: text,
  photos: z.array(text),
});
