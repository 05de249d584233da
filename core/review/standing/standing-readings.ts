/** Which bench readings of a project count, which wait for a lead, and which did a lead decide about? */
import {
  type BenchCheck,
  type Reading,
  type RecordId,
  type RecordOf,
  type Round,
} from '../../records/index.ts';
import { groupBy } from '../../statistics/index.ts';
import {
  canBe,
  doubtInLog,
  gaugeName,
  gaugesApart,
  keepsReadingOut,
  knownReading,
  knownReadings,
  type GaugeApart,
  type KnownReading,
  type ReadingDoubt,
} from '../../wear/index.ts';
import {
  withReadings,
  type Decided,
  type ReadingPlace,
  type Rulings,
  type Subject,
} from './rulings.ts';

type Check = RecordOf<'bench-check'>;

interface Said extends Pick<BenchCheck, 'pair'> {
  readonly measuredAt: string;
  readonly reading: Pick<Reading, 'measure' | 'site' | 'foot' | 'unit' | 'value'>;
}

/** A reading that a lead is asked about. */
export interface WaitingReadingItem extends Said {
  readonly about: 'reading';
  readonly subject: Subject;
  /** False: it stays out of every figure until a lead decides. */
  readonly counts: boolean;
  readonly doubt: ReadingDoubt;
}

/** A second gauge that sits apart from the first; its readings count until a lead decides. */
export interface WaitingGaugeItem extends GaugeApart {
  readonly about: 'gauge';
  readonly round: RecordId;
  readonly counts: true;
  /** Its readings. */
  readonly subjects: readonly Subject[];
}

export interface DecidedReadingItem extends Said, Decided {
  readonly about: 'reading';
  readonly subject: Subject;
}

export interface StandingReadings {
  /** The checks with the readings that count; a check without one is left out. */
  readonly checks: readonly Check[];
  readonly waitingItems: readonly (WaitingReadingItem | WaitingGaugeItem)[];
  readonly decidedItems: readonly DecidedReadingItem[];
}

/** One reading of the log with where it stands. */
interface Read {
  readonly check: Check;
  readonly reading: Reading;
  readonly known: KnownReading;
  readonly ruling: Decided | null;
}

const placeOf = ({ measure, site, foot, unit }: Reading): ReadingPlace => ({
  measure,
  site,
  foot,
  unit,
});

const subjectOf = ({ check, reading }: Pick<Read, 'check' | 'reading'>): Subject => ({
  record: check.revision.id,
  recordKind: 'bench-check',
  judged: check.revision.stamp,
  reading: placeOf(reading),
});

const saidOf = ({ check: { body }, reading }: Read): Said => ({
  pair: body.pair,
  measuredAt: body.at,
  reading: { ...placeOf(reading), value: reading.value },
});

/**
 * The doubts about the readings of a round. What is left out tells nothing of the others, so they are judged anew
 * without it until nothing more is left out: the figures are those of a log in which it never was.
 */
const doubtsAbout = (
  read: readonly Read[],
  blueprint: Round['blueprint'],
): ReadonlyMap<Read, ReadingDoubt> => {
  const doubts = new Map<Read, ReadingDoubt>();
  for (let left = read; ;) {
    const known = knownReadings(left.map((one) => one.known).filter(canBe), blueprint);
    const found = left.flatMap((one) => {
      const doubt = one.ruling ? null : doubtInLog(one.known, known);
      return doubt ? [[one, doubt] as const] : [];
    });
    const out = found.filter(([, doubt]) => keepsReadingOut(doubt));
    for (const [one, doubt] of out.length > 0 ? out : found) doubts.set(one, doubt);
    if (out.length === 0) return doubts;
    left = left.filter((one) => !doubts.has(one));
  }
};

/** The readings of one round. */
const ofRound = (
  round: RecordId,
  read: readonly Read[],
  blueprint: Round['blueprint'],
): { readonly out: ReadonlySet<Reading>; readonly items: StandingReadings['waitingItems'] } => {
  const standing = read.filter(({ ruling }) => ruling?.ruling !== 'set-aside');
  const doubts = doubtsAbout(standing, blueprint);
  const items: StandingReadings['waitingItems'][number][] = [...doubts].map(([one, doubt]) => ({
    about: 'reading',
    subject: subjectOf(one),
    counts: !keepsReadingOut(doubt),
    ...saidOf(one),
    doubt,
  }));
  const out = new Set(
    [...doubts].flatMap(([one, doubt]) => (keepsReadingOut(doubt) ? [one.reading] : [])),
  );
  const left = standing.filter(({ reading }) => !out.has(reading));
  for (const apart of gaugesApart(left.map((one) => one.known))) {
    const own = left.filter(
      ({ reading: { measure, unit, gauge }, ruling }) =>
        !ruling &&
        measure === apart.measure &&
        unit === apart.unit &&
        gauge !== undefined &&
        gaugeName(gauge) === gaugeName(apart.gauge),
    );
    if (own.length > 0)
      items.push({ about: 'gauge', round, counts: true, ...apart, subjects: own.map(subjectOf) });
  }
  return { out, items };
};

/** Sorts out the bench readings of a project. */
export const standingReadings = (
  checks: readonly Check[],
  pairs: readonly RecordOf<'pair'>[],
  rounds: readonly RecordOf<'round'>[],
  rulings: Rulings,
): StandingReadings => {
  const roundOf = new Map(pairs.map(({ body, revision }) => [revision.id, body.round]));
  const read = checks.flatMap((check) =>
    check.body.readings.map((reading): Read => ({
      check,
      reading,
      known: knownReading(check.body, reading),
      ruling: rulings.ofReading(check, reading),
    })),
  );
  const byRound = groupBy(read, ({ check }) => roundOf.get(check.body.pair) ?? null);
  const out = new Set(
    read.flatMap(({ reading, ruling }) => (ruling?.ruling === 'set-aside' ? [reading] : [])),
  );
  const waitingItems = [...byRound].flatMap(([round, own]) => {
    // Of a pair that is not in the log nothing is shown, and nothing is asked.
    if (round === null) return [];
    const blueprint = rounds.find(({ revision }) => revision.id === round)?.body.blueprint ?? [];
    const found = ofRound(round, own, blueprint);
    for (const reading of found.out) out.add(reading);
    return found.items;
  });
  return {
    waitingItems,
    decidedItems: read.flatMap((one) =>
      one.ruling
        ? [{ about: 'reading', subject: subjectOf(one), ...saidOf(one), ...one.ruling } as const]
        : [],
    ),
    checks: checks.flatMap((check) => withReadings(check, (one) => !out.has(one)) ?? []),
  };
};
