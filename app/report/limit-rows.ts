/**
 * What does the brief limit of a trade's wear, how far has it come, and what is asked for it? The rows of its sheet's first
 * table, and what the sheet's first line asks. One visit to the bench that answers several limits is one row.
 */
import { stampOf, type DecisionRow, type Stamp } from '../../core/headlines/index.ts';
import type { Expected, Settle, WearLook } from '../../core/review/index.ts';
import type { Metres } from '../../core/units/index.ts';
import { setPercentOf, signed } from '../words/figures.ts';
import { valueOf } from '../words/say-wear.ts';
import type { SheetProps } from './document-props.ts';
import type { Spoken } from './spoken.tsx';
import { scaleOf } from '../../core/wear/index.ts';
import { changedBy, curvesOf, itemsOf, reachedWords, type WearItem } from './wear-words.ts';

export interface LimitRow {
  readonly limits: readonly { readonly look: WearLook; readonly item: WearItem }[];
  readonly settle: Settle | null;
  readonly stamp: Stamp;
}

type Visit = Extract<Settle, { by: 'measure' }>;

/** What one row has in common: the same pairs at the same distance, else the same thing to do. */
const keyOf = (settle: Settle | null, stamp: Stamp): string => {
  switch (settle?.by) {
    case 'measure':
      return `${settle.by} ${settle.atM} ${[settle.pair, ...settle.also].toSorted().join(' ')}`;
    case 'look-at-pair':
      return `${settle.by} ${settle.pair}`;
    case 'look-at-reading':
      return `${settle.by} ${settle.pair} ${settle.atM}`;
    case 'pairs-differ':
    case 'change':
    case 'measure-first':
    case 'run-pairs':
    case 'ask-testers':
    case 'decide-by-reports':
    case 'ask-at':
    case 'lift-or-keep':
    case undefined:
      return `${settle?.by ?? 'nothing'} ${stamp}`;
  }
};

/** One row for each thing to do; a limit whose wear is a row already stands here only where a check is due. */
export const limitRows = (props: Pick<SheetProps, 'report' | 'trade'>): readonly LimitRow[] => {
  const { report } = props;
  const isDrawn = ({ limit, site }: WearItem) =>
    report.callouts.some((one) => one.what === 'wear' && one.limit === limit && one.site === site);
  const rows = new Map<string, LimitRow>();
  for (const look of curvesOf(props))
    for (const { item, settle } of itemsOf(report, look)) {
      if (settle?.by !== 'measure' && isDrawn(item)) continue;
      const stamp = stampOf(item.word);
      const key = keyOf(settle, stamp);
      const limits = [...(rows.get(key)?.limits ?? []), { look, item }];
      rows.set(key, { settle: rows.get(key)?.settle ?? settle, stamp, limits });
    }
  return [...rows.values()];
};

/** The other rows: wear that is only watched is none beside the row that says what is measured of it. */
export const besideLimits = (
  rows: readonly DecisionRow[],
  limits: readonly LimitRow[],
): readonly DecisionRow[] => {
  const told = limits.flatMap((row) => row.limits.map(({ item }) => item));
  return rows.filter(
    ({ act, callout, finding }) =>
      !(
        act === 'watch' &&
        finding === null &&
        callout?.what === 'wear' &&
        told.some(({ limit, site }) => limit === callout.limit && site === callout.site)
      ),
  );
};

const limitWords = ({ limit: { basis, value } }: WearItem, look: WearLook, { speaker }: Spoken) =>
  basis === 'share-of-new'
    ? signed(value - 1, (share) => setPercentOf(share, speaker.number))
    : valueOf(value, look, speaker);

/** By how much it has changed at the farthest check, how sure that is, and whether its limit is reached. */
export const soFar = ({ look, item }: LimitRow['limits'][number], spoken: Spoken): string => {
  const { paper, speaker, far } = spoken;
  const start = look.curve?.[0]?.median;
  const now = look.atGreatest?.median;
  const { sentence } = speaker.desk.joined;
  return paper.sentences([
    ...(start === undefined || now === undefined || look.greatest === 0
      ? []
      : [
          sentence(paper.sheet.changedAt(changedBy(start, now, look, spoken), far(look.greatest))),
          ...sureSoFar(start, look, spoken),
        ]),
    sentence(paper.sheet.limitIs(limitWords(item, look, spoken), reachedWords(item, look, spoken))),
  ]);
};

/** Whether a new pair changes at all by the farthest check: both ends of the interval on one side of none. */
const sureSoFar = (
  start: number,
  look: LimitRow['limits'][number]['look'],
  spoken: Spoken,
): readonly string[] => {
  const isRatio = scaleOf(look.kind) === 'ratio';
  const { lower, upper } = look.changeSoFar;
  const none = isRatio ? 1 : 0;
  const by = (change: number) =>
    changedBy(start, isRatio ? start * change : start + change, look, spoken);
  const ends = [by(lower), by(upper)] as const;
  const { clear, tooEarly } = spoken.paper.sheet.changeSure;
  return [lower > none || upper < none ? clear(...ends) : tooEarly(...ends)];
};

/** The pairs of a visit by code, each with when it is expected there. */
const visitors = (
  { pair, expected, also, expectedOfAlso }: Visit,
  { speaker }: Spoken,
): readonly { readonly code: string; readonly expected: Expected }[] =>
  [pair, ...also]
    .map((id, at) => ({
      code: speaker.pair(id),
      expected: (at === 0 ? expected : expectedOfAlso[at - 1]) ?? { when: 'not-known' as const },
    }))
    .toSorted((a, b) => (a.code < b.code ? -1 : 1));

/** What is to be done for a row's limits; one that holds needs nothing. */
export const limitAct = ({ settle, stamp }: LimitRow, spoken: Spoken): string => {
  const { paper, speaker, far } = spoken;
  const { settles } = paper.sheet;
  switch (settle?.by) {
    case 'measure':
      return settles.measure(
        visitors(settle, spoken).map(({ code }) => code),
        far(settle.atM),
        spoken.list,
      );
    case 'look-at-pair':
      return settles.lookAtPair(speaker.pair(settle.pair));
    case 'look-at-reading':
      return settles.lookAtReading(speaker.pair(settle.pair), far(settle.atM));
    case 'pairs-differ':
      return settles.pairsDiffer;
    case 'change':
      return settles.change;
    // None of these is about wear.
    case 'measure-first':
    case 'run-pairs':
    case 'ask-testers':
    case 'decide-by-reports':
    case 'ask-at':
    case 'lift-or-keep':
    case undefined:
      return stamp === 'holds' ? paper.acts.keep : paper.acts.watch;
  }
};

/** Why the check is there: of half-way to the brief's distance and the distance itself, the first that tells enough. */
export const whyThere = (
  { settle }: LimitRow,
  briefM: Metres,
  { paper, far }: Spoken,
): string | null =>
  settle?.by !== 'measure'
    ? null
    : settle.atM < briefM
      ? paper.sheet.settles.halfWay(far(briefM))
      : paper.sheet.settles.atBrief(far(briefM));

/** When a visit is due, pairs of the same day in one line; empty where nothing is measured. */
export const limitBy = ({ settle }: LimitRow, spoken: Spoken): readonly string[] => {
  if (settle?.by !== 'measure') return [];
  const { paper, date, list, speaker } = spoken;
  const { settles } = paper.sheet;
  const when = (expected: Expected): string =>
    expected.when === 'later' || expected.when === 'if-resumed'
      ? settles.about(date(expected.atMs), expected.when === 'if-resumed')
      : expected.when === 'comes-back-first'
        ? settles.comesBack(date(expected.atMs))
        : settles.when[expected.when];
  const codes = new Map<string, string[]>();
  for (const { code, expected } of visitors(settle, spoken))
    codes.set(when(expected), [...(codes.get(when(expected)) ?? []), code]);
  return settle.also.length === 0
    ? [...codes.keys()]
    : [...codes].map(([day, own]) => speaker.desk.joined.of(list(own), day));
};

/** What the first line of a sheet asks for: its soonest check; null where none is due. */
export const measureAsked = (rows: readonly LimitRow[], spoken: Spoken): string | null => {
  const [soonest] = rows
    .flatMap(({ settle }) => (settle?.by === 'measure' ? [settle] : []))
    .toSorted((a, b) => a.atM - b.atM);
  if (!soonest) return null;
  const { paper, far, date } = spoken;
  const { measure } = paper.sheet.headline;
  const own = visitors(soonest, spoken);
  const days = own.flatMap(({ expected }) =>
    expected.when === 'later' || expected.when === 'if-resumed' ? [expected.atMs] : [],
  );
  const when = own.some(({ expected }) => expected.when === 'now')
    ? measure.now
    : days.length === 0
      ? null
      : measure.from(date(Math.min(...days)), own.length === 1);
  return measure.what(
    own.map(({ code }) => code),
    far(soonest.atM),
    when,
  );
};
