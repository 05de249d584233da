/** Names of the columns of the two-sided questions, and what they mean. */
import { twoSidedIds, type TwoSidedId } from '../../../core/foot/index.ts';
import type { Glossary } from '../../words/types.ts';

/** `heel_cushioning_two_sided`: it says of itself that it is not the 0-100 line of before. */
export const markColumnOf = (question: TwoSidedId): string =>
  `${question.replaceAll('-', '_')}_two_sided`;

const questions = new Map(twoSidedIds.map((id) => [markColumnOf(id), id]));

/** The question of a column; null: it is another column. */
export const questionOf = (column: string): TwoSidedId | null => questions.get(column) ?? null;

/** "Heel cushioning: -100 too soft, 100 too firm". */
export const markMeaning = (question: TwoSidedId, { twoSided }: Pick<Glossary, 'twoSided'>) => {
  const { name, low, high } = twoSided[question];
  return `${name}: -100 ${low}, 100 ${high}`;
};
