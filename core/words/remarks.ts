/** What did people write, each remark once, with what was tapped beside it? Nothing that was set aside or erased is in it. */
import type { ComplaintKind, ZoneCode } from '../foot/index.ts';
import { mileageAt, mileageBefore } from '../mileage/index.ts';
import type {
  BenchCheck,
  Complaint,
  DamageReport,
  Foot,
  QuotableKind,
  Ranking,
  RecordId,
  RecordOf,
  Run,
} from '../records/index.ts';
import { ownRecords, type LoggedPair, type ProjectLog } from '../review/project-log.ts';
import type { Metres } from '../units/index.ts';
import type { Mention } from './dictionary-types.ts';
import { mentionsIn } from './dictionary.ts';

/**
 * What a remark is on. `stop`: why a pair was worn against a notice. `check`: the shop's, on a bench check. `ranking`:
 * why pairs stand in an order.
 */
export const remarkPlaces = [
  'run',
  'complaint',
  'pain',
  'stop',
  'damage',
  'check',
  'ranking',
] as const;
export type RemarkPlace = (typeof remarkPlaces)[number];

export interface Tapped {
  readonly foot: Foot;
  readonly zone: ZoneCode;
  readonly kind: ComplaintKind;
}

export interface Remark {
  /** The source and the field: tells it from all others, and stays as long as the record does. */
  readonly id: string;
  readonly source: RecordId;
  readonly sourceKind: QuotableKind;
  /** Path in the body, e.g. `feet.complaints.0.words`. */
  readonly field: string;
  readonly on: RemarkPlace;
  readonly text: string;
  /** Null: the shop. */
  readonly tester: RecordId | null;
  /** What it is about: one pair, or all that were put in order. */
  readonly pairs: readonly RecordId[];
  /** Null: the pair is not in the log, or the pairs are of several rounds. */
  readonly round: RecordId | null;
  /** On the pair as the run began; of a damage or a check: when it was found. Null: of several pairs. */
  readonly pairM: Metres | null;
  readonly atMs: number;
  /** Of the complaint or the damage; null: not said. */
  readonly foot: Foot | null;
  /** On the same run, each once. */
  readonly tapped: readonly Tapped[];
  /** SHA-256 of each photo that was taken with it. */
  readonly photos: readonly string[];
  /** What the dictionary finds that was not tapped on the run: to be asked about, never counted. */
  readonly untapped: readonly Mention[];
}

type Words = Pick<Remark, 'field' | 'on' | 'text' | 'foot' | 'photos'>;

const complaintsOf = ({ feet }: Run): readonly Complaint[] =>
  feet?.answer === 'complaints' ? feet.complaints : [];

const wordsOfRun = (run: Run): readonly Words[] => {
  const words = (
    field: string,
    on: RemarkPlace,
    text: string | undefined,
    of: { readonly foot?: Foot; readonly photos?: readonly string[] | undefined } = {},
  ): Words[] =>
    text === undefined || text.trim() === ''
      ? []
      : [{ field, on, text: text.trim(), foot: of.foot ?? null, photos: of.photos ?? [] }];
  return [
    ...words('words', 'run', run.words, { photos: run.photos }),
    ...complaintsOf(run).flatMap((one, at) =>
      words(`feet.complaints.${at}.words`, 'complaint', one.words, one),
    ),
    ...words('pain.where', 'pain', run.pain?.where),
    ...words('wornDespiteStop', 'stop', run.wornDespiteStop),
  ];
};

const wordsOf = (
  on: 'damage' | 'check' | 'ranking',
  body: Pick<DamageReport | BenchCheck | Ranking, 'words'> & Partial<DamageReport>,
): readonly Words[] => {
  const text = body.words?.trim() ?? '';
  const foot = body.foot === 'left' || body.foot === 'right' ? body.foot : null;
  return text === '' ? [] : [{ field: 'words', on, text, foot, photos: body.photos ?? [] }];
};

/** Neither the zone nor the kind was tapped on the run. */
const isUntapped = ({ zone, kind }: Mention, tapped: readonly Tapped[]): boolean =>
  !tapped.some(
    (one) => (zone !== null && one.zone === zone) || (kind !== null && one.kind === kind),
  );

const tappedIn = (run: Run): readonly Tapped[] => [
  ...new Map(
    complaintsOf(run).map(({ foot, zone, kind }) => [
      `${foot} ${zone} ${kind}`,
      { foot, zone, kind },
    ]),
  ).values(),
];

/** @param distanceM of a check: the shop's own figure */
const onPair = (
  { curve }: Pick<LoggedPair, 'curve'>,
  kind: QuotableKind,
  atMs: number,
  distanceM: Metres | undefined,
): Metres => (kind === 'run' ? mileageBefore(curve, atMs) : (distanceM ?? mileageAt(curve, atMs)));

/** All remarks of a project, the latest first. */
export const remarksOf = (log: ProjectLog): readonly Remark[] => {
  const pairs = new Map(log.pairs.map((pair) => [pair.id, pair]));
  const remarks = (
    { kind: sourceKind, revision }: RecordOf<QuotableKind>,
    about: Pick<Remark, 'tester' | 'pairs' | 'tapped' | 'atMs'>,
    words: readonly Words[],
    distanceM?: Metres,
  ): Remark[] => {
    const own = about.pairs.map((id) => pairs.get(id));
    const rounds = new Set(own.map((one) => one?.round ?? null));
    const [pair] = own;
    return words.map((one) => ({
      ...about,
      ...one,
      id: `${revision.id}.${one.field}`,
      source: revision.id,
      sourceKind,
      round: rounds.size === 1 ? (pair?.round ?? null) : null,
      pairM:
        sourceKind === 'ranking'
          ? null
          : pair
            ? onPair(pair, sourceKind, about.atMs, distanceM)
            : (0 as Metres),
      untapped:
        one.on === 'run' || one.on === 'complaint'
          ? mentionsIn(one.text).filter((mention) => isUntapped(mention, about.tapped))
          : [],
    }));
  };
  const { records, id } = log;
  return [
    ...ownRecords(records.run, id).flatMap((record) => {
      const { tester, pair, startedAt } = record.body;
      const about = {
        ...{ tester, pairs: [pair] },
        ...{ atMs: Date.parse(startedAt), tapped: tappedIn(record.body) },
      };
      return remarks(record, about, wordsOfRun(record.body));
    }),
    ...ownRecords(records['damage-report'], id).flatMap((record) => {
      const { tester, pair, at } = record.body;
      const about = { tester, pairs: [pair], atMs: Date.parse(at), tapped: [] };
      return remarks(record, about, wordsOf('damage', record.body));
    }),
    ...ownRecords(records['bench-check'], id).flatMap((record) => {
      const about = {
        ...{ tester: null, pairs: [record.body.pair] },
        ...{ atMs: Date.parse(record.body.at), tapped: [] },
      };
      return remarks(record, about, wordsOf('check', record.body), record.body.distanceM);
    }),
    ...ownRecords(records.ranking, id).flatMap((record) => {
      const { tester, at, order } = record.body;
      const about = { tester, pairs: order.flat(), atMs: Date.parse(at), tapped: [] };
      return remarks(record, about, wordsOf('ranking', record.body));
    }),
  ].sort((a, b) => b.atMs - a.atMs || (a.id < b.id ? -1 : 1));
};
