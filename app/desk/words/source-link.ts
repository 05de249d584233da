/** The page of the record that a remark is from; an order of pairs stands on its tester's page. */
import type { QuotableKind, RecordId } from '../../../core/records/index.ts';
import type { Links } from '../frame/route.ts';

export const sourceLink = (
  of: {
    readonly source: RecordId;
    readonly sourceKind: QuotableKind;
    readonly tester?: RecordId | null | undefined;
  },
  links: Links,
): string => {
  const page = {
    run: links.run,
    'damage-report': links.damage,
    'bench-check': links.check,
    ranking: () => (of.tester ? links.tester(of.tester) : links.place('testers')),
  }[of.sourceKind];
  return page(of.source);
};
