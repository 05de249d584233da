/** Which gauge takes which kind of reading? A calliper reads no hardness, so each kind remembers its own. Pure. */
import type { BenchCheck, Reading, RecordId } from '../../core/records/index.ts';

/** A kind of reading: hardness in Asker C and in Shore A take two durometers. */
export type ReadingKind = Pick<Reading, 'measure' | 'unit'>;

/** Gauges by kind of reading; empty: none is noted, or the readings of that kind have several. */
export type Gauges = Readonly<Record<string, string>>;

export const kindKey = ({ measure, unit }: ReadingKind): string => `${measure} ${unit}`;

/** The kinds among the rows of a form, each once, in their order. */
export const kindsOf = (rows: readonly ReadingKind[]): readonly ReadingKind[] => [
  ...new Map(
    rows.map(({ measure, unit }) => [kindKey({ measure, unit }), { measure, unit }]),
  ).values(),
];

/** The gauge that all readings of a kind share; empty where they differ or name none. */
export const gaugesOf = (
  readings: readonly Pick<Reading, 'measure' | 'unit' | 'gauge'>[],
): Gauges => {
  const found = new Map<string, string>();
  for (const { gauge = '', ...kind } of readings) {
    const key = kindKey(kind);
    const known = found.get(key);
    found.set(key, known === undefined || known === gauge ? gauge : '');
  }
  return Object.fromEntries(found);
};

type Logged = Pick<BenchCheck, 'pair' | 'at' | 'readings'>;

/**
 * The gauge that each kind of reading was taken with last: in the pairs of the round first, else anywhere.
 * @param checks of one project
 * @param ofRound pairs of the round that is measured
 */
export const lastGauges = (checks: readonly Logged[], ofRound: ReadonlySet<RecordId>): Gauges => {
  const rank = ({ pair, at }: Logged) => [ofRound.has(pair) ? 1 : 0, Date.parse(at)] as const;
  const ordered = checks
    .map((check) => ({ check, rank: rank(check) }))
    .sort((a, b) => a.rank[0] - b.rank[0] || a.rank[1] - b.rank[1]);
  return Object.fromEntries(
    ordered.flatMap(({ check }) =>
      check.readings.flatMap(({ gauge, ...kind }) =>
        gauge === undefined ? [] : [[kindKey(kind), gauge] as const],
      ),
    ),
  );
};
