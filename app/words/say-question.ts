/** How a comfort question is called, on whichever line it is asked. */
import type { ComfortAttributeId, TwoSidedId } from '../../core/foot/index.ts';
import type { Glossary } from './types.ts';

export const questionName = (
  { attributes, twoSided }: Pick<Glossary, 'attributes' | 'twoSided'>,
  question: ComfortAttributeId | TwoSidedId,
): string => (question === 'ball-width' ? twoSided[question] : attributes[question]).name;
