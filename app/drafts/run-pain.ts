/** What do the pain answers of the form say, and must the caution be read before they are saved? Pure. */
import { isCautionDue } from '../../core/complaints/caution.ts';
import type { PainSign, Run } from '../../core/records/index.ts';
import { toInstant } from '../parts/instant.ts';

/** What the form knows of pain. */
interface PainForm {
  readonly pain: number | null;
  readonly painIsNew: boolean | null;
  readonly painSigns: PainSign[];
  readonly cautionRead: boolean;
}

const isDue = ({ pain, painIsNew, painSigns }: Omit<PainForm, 'cautionRead'>): boolean =>
  isCautionDue(pain, painIsNew, painSigns);

/** Whether the caution is not due, or due and not read yet, or read. */
export const cautionIn = (form: PainForm): 'none' | 'unread' | 'read' =>
  !isDue(form) ? 'none' : form.cautionRead ? 'read' : 'unread';

/** Answers that no longer call for the caution forget that it was read: where it applies anew, it is read anew. */
export const withCaution = <Form extends PainForm>(form: Form): Form =>
  form.cautionRead && !isDue(form) ? { ...form, cautionRead: false } : form;

const answersIn = (pain: Run['pain']): string =>
  JSON.stringify([pain?.score, pain?.isNew, [...(pain?.signs ?? [])].sort()]);

/**
 * The pain of the run. Told anew in a correction it is over no longer, and a lead's answer from before is no answer
 * to it; fields that the form does not show stay.
 */
export const painOfForm = (
  form: Omit<PainForm, 'cautionRead'>,
  before: Run['pain'],
  nowMs: number,
): Run['pain'] => {
  if (form.pain === null) return undefined;
  const { isNew: _, signs: __, ...kept } = before ?? {};
  const pain = {
    ...kept,
    score: form.pain,
    ...(form.painIsNew !== null && form.pain > 0 && { isNew: form.painIsNew }),
    ...(form.painSigns.length > 0 && form.pain > 0 && { signs: form.painSigns }),
  };
  if (!before || answersIn(before) === answersIn(pain)) return pain;
  const { over: ___, ...again } = pain;
  return { ...again, toldAt: toInstant(nowMs) };
};
