/**
 * Which limits of a brief make no sense as they are typed? A question to the lead, never an error: the shares and what
 * a worn pair can do are judgement, no source.
 */
import type { Dimension, Measure } from '../../core/records/index.ts';
import { parseDecimal } from '../../core/units/index.ts';
import { draftOfLimit, type LimitDraft } from './project.ts';

export type LimitDoubt =
  /** A new pair fails already: it is 100 % of itself. In percent. */
  | { readonly what: 'above-new' | 'below-new'; readonly typed: number }
  /** No pair gets there, so the limit fails nothing. In percent. */
  | { readonly what: 'never-reached'; readonly typed: number }
  /** 0.75 where 75 was meant. In percent. */
  | { readonly what: 'share-typed'; readonly typed: number; readonly meant: number }
  /** The blueprint asks for a new pair that fails. In the unit of the measure. */
  | {
      readonly what: 'above-drawn' | 'below-drawn';
      readonly typed: number;
      readonly drawn: number;
    };

/** A worn pair has less of it; a soaked one weighs a little more. */
const falls: ReadonlySet<Measure> = new Set(['stack-height', 'tread-depth', 'mass']);
/** Percent of new that a limit at most may allow where wear takes away, and elsewhere. */
const MOST_WHERE_IT_FALLS = 120;
const MOST_ELSEWHERE = 300;
/** At most so many percent look like a share that was typed as a fraction. */
const FRACTION = 1;

const doubtOfShare = ({ measure, bound }: LimitDraft, typed: number): LimitDoubt | null => {
  if (typed <= FRACTION) return { what: 'share-typed', typed, meant: 100 * typed };
  if (bound === 'at-least') return typed > 100 ? { what: 'above-new', typed } : null;
  if (typed < 100) return { what: 'below-new', typed };
  const most = falls.has(measure) ? MOST_WHERE_IT_FALLS : MOST_ELSEWHERE;
  return typed > most ? { what: 'never-reached', typed } : null;
};

const doubtOfReading = (
  { measure, site, bound }: LimitDraft,
  typed: number,
  blueprint: readonly Drawn[],
): LimitDoubt | null => {
  const drawn = blueprint
    .filter((one) => one.measure === measure && (site.trim() === '' || one.site === site.trim()))
    .map(({ nominal }) => nominal);
  if (drawn.length === 0) return null;
  const [least, most] = [Math.min(...drawn), Math.max(...drawn)];
  if (bound === 'at-least')
    return typed > least ? { what: 'above-drawn', typed, drawn: least } : null;
  return typed < most ? { what: 'below-drawn', typed, drawn: most } : null;
};

/** What a blueprint asks of a new pair. */
export type Drawn = Pick<Dimension, 'measure' | 'site' | 'nominal'>;

/**
 * What speaks against a limit as it is typed; null: nothing, or it cannot be read yet.
 * @param blueprint of the latest round
 */
export const limitDoubt = (limit: LimitDraft, blueprint: readonly Drawn[]): LimitDoubt | null => {
  const typed = parseDecimal(limit.value);
  if (typed === null || typed <= 0) return null;
  return limit.basis === 'share-of-new'
    ? doubtOfShare(limit, typed)
    : doubtOfReading(limit, typed, blueprint);
};

/** Whether a limit stands as it was saved: then nothing stops its form from being saved again. */
export const isAsSaved = (limit: LimitDraft): boolean => {
  if (!limit.old) return false;
  const saved = draftOfLimit(limit.old);
  return (['measure', 'site', 'bound', 'basis', 'value'] as const).every(
    (field) => saved[field] === limit[field],
  );
};
