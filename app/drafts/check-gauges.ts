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

/** A check with who wrote it down. */
interface Logged {
  readonly body: Pick<BenchCheck, 'pair' | 'at' | 'readings'>;
  readonly revision: { readonly author: RecordId };
}

/**
 * The gauge that each kind of reading was taken with last: by the one who asks first, then in the pairs of the round, else
 * anywhere. A shop has more than one calliper, and people keep to theirs.
 * @param checks of one project
 * @param ofRound pairs of the round that is measured
 * @param me the member who asks; null: nobody in particular
 */
export const lastGauges = (
  checks: readonly Logged[],
  ofRound: ReadonlySet<RecordId>,
  me: RecordId | null = null,
): Gauges => {
  const rank = ({ body, revision }: Logged) =>
    [revision.author === me ? 1 : 0, ofRound.has(body.pair) ? 1 : 0, Date.parse(body.at)] as const;
  const ordered = checks
    .map((check) => ({ check, rank: rank(check) }))
    .sort((a, b) => a.rank[0] - b.rank[0] || a.rank[1] - b.rank[1] || a.rank[2] - b.rank[2]);
  return Object.fromEntries(
    ordered.flatMap(({ check }) =>
      check.body.readings.flatMap(({ gauge, ...kind }) =>
        gauge === undefined ? [] : [[kindKey(kind), gauge] as const],
      ),
    ),
  );
};
