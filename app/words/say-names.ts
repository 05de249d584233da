/** How a sentence names what it is about: rounds, pairs, testers, complaints, distances. Screens and terminal fill it in. */
import type { ComplaintKind, ZoneCode } from '../../core/foot/index.ts';
import type { RecordId } from '../../core/records/index.ts';
import type { Metres } from '../../core/units/index.ts';

export interface Say {
  readonly round: (id: RecordId) => string;
  readonly pair: (id: RecordId) => string;
  readonly tester: (id: RecordId) => string;
  /** Several codes, the first of a long list. */
  readonly testers: (ids: readonly RecordId[]) => string;
  /** A complaint within a sentence, such as "heel slip at the heel cup". */
  readonly felt: (one: { readonly zone: ZoneCode; readonly kind: ComplaintKind }) => string;
  readonly distance: (distance: Metres) => string;
  readonly number: (value: number, digits?: number) => string;
  readonly date: (at: number | string) => string;
  /** Names joined as the language joins them: "a, b and c". */
  readonly list: (names: readonly string[]) => string;
  /** With a capital letter, where the language has them. */
  readonly upper: (text: string) => string;
}
