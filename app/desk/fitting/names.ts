/** How a person of a fit trial is called: a member by their code, somebody else by the code of the session. */
import type { Fitter } from '../../../core/fitting/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';

export const fitterName = (
  { tester, code }: Pick<Fitter, 'tester' | 'code'>,
  { review, records }: TabProps,
): string => code ?? (tester === null ? '?' : namesIn(review, records).tester(tester));

/** The same by the key of a person. */
export const nameByKey = (
  fitters: readonly Fitter[],
  props: TabProps,
): ((key: string) => string) => {
  const names = new Map(fitters.map((one) => [one.key, fitterName(one, props)]));
  return (key) => names.get(key) ?? '?';
};
