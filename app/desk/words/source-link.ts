/** The page of the record that a remark is from. */
import type { Remark } from '../../../core/words/index.ts';
import type { Links } from '../frame/route.ts';

export const sourceLink = (
  { source, sourceKind }: Pick<Remark, 'source' | 'sourceKind'>,
  links: Links,
): string =>
  ({ run: links.run, 'damage-report': links.damage, 'bench-check': links.check })[sourceKind](
    source,
  );
