/** How a headline of changes names what moved: by the fewest words that tell it from the others. */
import type { WorseName } from '../../core/headlines/index.ts';
import type { ComplaintKind } from '../../core/foot/index.ts';
import { questionName } from './say-question.ts';
import type { Say } from './say-names.ts';
import type { Glossary } from './types.ts';

/**
 * A complaint by its kind alone where no other of the two rounds is of that kind: a headline has twelve words. A comfort
 * question by its name.
 */
export const movedOf =
  (
    felt: readonly { readonly kind: ComplaintKind }[],
    glossary: Pick<Glossary, 'attributes' | 'kinds' | 'twoSided'>,
    say: Pick<Say, 'felt'>,
  ) =>
  (one: WorseName): string => {
    if ('attribute' in one) return questionName(glossary, one.attribute);
    const { kind, zone } = one;
    return zone === null || felt.filter((other) => other.kind === kind).length === 1
      ? glossary.kinds[kind].name
      : say.felt({ kind, zone });
  };
