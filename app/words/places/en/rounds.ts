/** The rounds, the brief, and the first line of the reports. */
import type {
  BriefHeadline,
  ReportHeadline,
  RoundsHeadline,
} from '../../../../core/headlines/index.ts';
import type { PartId } from '../../../../core/foot/index.ts';
import type { Say } from '../../say-names.ts';

const count = (n: number, one: string, many: string) => `${n} ${n === 1 ? one : many}`;

export const rounds = {
  headline: (h: RoundsHeadline, say: Say, part: (id: PartId) => string): string => {
    switch (h.case) {
      case 'none':
        return 'No round yet. Add the first one.';
      case 'no-pairs':
        return `${say.round(h.round)} has no pairs yet.`;
      case 'nothing-noted':
        return `Nothing is noted as changed in ${say.round(h.round)}.`;
      case 'first':
        return `${say.round(h.round)} is the first: ${count(h.pairs, 'pair', 'pairs')}.`;
      case 'changes':
        return `${say.round(h.round)} changes the ${say.list([...h.parts.map(part), ...(h.more > 0 ? [`${h.more} more`] : [])])}.`;
    }
  },
  sub: (rounds: number, pairs: number) =>
    `${count(rounds, 'round', 'rounds')}, ${count(pairs, 'pair', 'pairs')}.`,
  /** Of a shoe without a round. */
  enough: 'A name is enough to go on. Blueprint, last and layers can follow.',
  title: 'Rounds',
  add: 'Add a round',
  duplicate: (round: string) => `As ${round}, but …`,
  duplicateHint: (round: string) =>
    `Stage, foam, rubber, blueprint, last and layers are those of ${round}. Say what is different.`,
  edit: 'Edit this round',
  more: (pairs: number) => `and ${pairs} more`,
  nothingChanged: 'Nothing is noted as changed.',
  mends: (what: string) => `meant to mend ${what}`,
  dimensions: (n: number) =>
    n === 0
      ? 'No dimension in the blueprint'
      : `${count(n, 'dimension', 'dimensions')} in the blueprint`,
  foam: (foam: string) => `${foam} foam`,
  last: (name: string) => `last ${name}`,
  layers: (zones: number) => `layers counted in ${count(zones, 'zone', 'zones')}`,
  samples: (n: number) => (n === 0 ? 'No pair yet' : `${count(n, 'pair', 'pairs')}:`),
  blueprint: 'Blueprint',
  place: 'Measure and site',
  nominal: 'Nominal',
  allowed: 'Allowed',
  leftRight: 'Left to right',
  noBlueprint: 'The blueprint names no dimension.',
  compare: 'What the changes did',
  brief: 'The brief',
};

export const brief = {
  headline: (h: BriefHeadline, say: Say): string =>
    h.case === 'no-limits'
      ? `Each pair must carry ${say.distance(h.distanceM)}. No limit of wear is set.`
      : `Each pair must carry ${say.distance(h.distanceM)} and keep ${count(h.limits, 'limit', 'limits')}.`,
  title: 'The brief',
  archivedSince: (date: string) => `archived on ${date}`,
  edit: 'Edit the brief',
  runner: 'For which runner',
  use: 'For what',
  surfaces: 'On which surfaces',
  distance: 'Distance a pair must carry',
  allowed: 'Allowed complaints',
  allowedPain: 'Allowed pain',
  ofRuns: (percent: string) => `${percent} of runs`,
  feet: 'Made for feet',
  lengths: (from: string, to: string) => `${from} to ${to} mm long`,
  widths: (from: string, to: string) => `${from} to ${to} mm wide`,
  anyFeet: 'not said',
  limits: 'What a pair must keep',
  noLimits: 'no limit is set',
  forTesters: 'For the testers',
  tellTesters: 'What came of their reports',
  tells: { yes: 'testers are told, where you send it', no: 'testers are not told' },
  everySite: 'every site',
  bounds: { 'at-least': 'at least', 'at-most': 'at most' },
  ofNew: (percent: string) => `${percent} of the same pair when new`,
  questions: 'Comfort questions',
  words: 'In other words',
  putAway: 'Archive this shoe',
  putAwayHint:
    'It moves to “Archived” at the foot of all shoes. Nothing is lost: testers who still have a pair of it can go on logging runs.',
  bringBack: 'Bring this shoe back',
  isPutAway: 'Archived. It is under “Archived” at the foot of all shoes.',
  isBack: 'Back among the open shoes.',
};

export const report = {
  headline: (h: ReportHeadline, say: Say): string => {
    switch (h.case) {
      case 'nothing-to-report':
        return 'Nobody has run yet: nothing to report.';
      case 'none-sent':
        return 'No report has been sent yet.';
      case 'sent':
        return `The report of ${say.round(h.round)} went out on ${say.date(h.at)}.`;
      case 'not-sent':
        return `The report of ${say.round(h.round)} has not been sent yet.`;
    }
  },
  sub: 'Print it, save it as one file, or send it to the specialists.',
};
