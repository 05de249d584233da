/** Which zone, foot and kind does an address name? Pure, so that every address can be tested and shared. */
import {
  complaintKinds,
  zoneCodes,
  type ComplaintKind,
  type ZoneCode,
} from '../../../core/foot/index.ts';
import type { EvidenceWord } from '../../../core/complaints/index.ts';
import type { Foot } from '../../../core/records/index.ts';

export interface ZoneAddress {
  readonly foot: Foot;
  readonly zone: ZoneCode;
}

/** @param rest such as `zones`, `left`, `U8`; null where that names no zone */
export const zoneAddress = ([, foot, zone]: readonly string[]): ZoneAddress | null => {
  const code = zoneCodes.find((one) => one === zone);
  return code && (foot === 'left' || foot === 'right') ? { foot, zone: code } : null;
};

interface Reported {
  readonly zone: ZoneCode;
  readonly kind: ComplaintKind;
  readonly word: EvidenceWord;
  readonly runs: number;
}

const rank = ({ word }: Reported): number =>
  word === 'recurs-across-testers' ? 2 : word === 'recurs-for-one-tester' ? 1 : 0;

/**
 * The kind to look at: the one that is asked for, else the one that is proved best or reported most.
 * @param asked what follows `?kind=`; `any` is all of them
 * @param cells of all rounds
 * @returns null: whatever was felt
 */
export const kindToShow = (
  asked: string | undefined,
  zone: ZoneCode,
  cells: readonly Reported[],
): ComplaintKind | null => {
  if (asked === 'any') return null;
  const named = complaintKinds.find((kind) => kind === asked);
  if (named) return named;
  const [first] = cells
    .filter((cell) => cell.zone === zone)
    .sort((a, b) => rank(b) - rank(a) || b.runs - a.runs);
  return first?.kind ?? null;
};
