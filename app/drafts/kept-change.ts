/** Which half-written change in figures can be taken up again? Pure. */
import * as z from 'zod/mini';
import { partIds } from '../../core/foot/index.ts';
import { changeDirections, changeUnits, shoeSides } from '../../core/records/index.ts';
import type { ChangeFormDraft } from './change.ts';
import type { KeptSchema } from './kept-schema.ts';

const text = z.string();

export const keptChangeSchema: KeptSchema<ChangeFormDraft> = z.object({
  part: z.enum(partIds),
  what: text,
  side: z.enum([...shoeSides, '']),
  foot: z.enum(['both', 'left', 'right']),
  direction: z.enum([...changeDirections, '']),
  amount: text,
  unit: z.enum(changeUnits),
});
