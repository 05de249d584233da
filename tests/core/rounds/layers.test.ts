/** Layers of material against hot and wet complaints. */
import { describe, expect, it } from 'vitest';
import { layersAndHeat, type AskedRun } from '../../../core/rounds/index.ts';
import type { ZoneCode } from '../../../core/foot/index.ts';
import { idOf } from '../records/make.ts';

/** Runs of four testers; zone Un is hot in the first `hot[n]` of each tester's five. */
const runs = (hot: Readonly<Partial<Record<ZoneCode, number>>>): AskedRun[] =>
  [1, 2, 3, 4].flatMap((tester) =>
    [0, 1, 2, 3, 4].map((at) => ({
      tester: idOf(tester),
      complaints: Object.entries(hot)
        .filter(([, times]) => at < times)
        .map(([zone]) => ({ zone: zone as ZoneCode, kind: 'overheating' as const })),
    })),
  );

const layers = [
  { zone: 'U1', count: 4 },
  { zone: 'U2', count: 3 },
  { zone: 'U4', count: 2 },
  { zone: 'U5', count: 1 },
  { zone: 'U6', count: 0 },
] as const;

describe('layers and heat', () => {
  it('go together where every zone with more layers is hotter', () => {
    const { association, zones } = layersAndHeat(layers, runs({ U1: 4, U2: 3, U4: 2, U5: 1 }));
    // Kendall's S is 10 of 10 pairs, its variance 50/3; with continuity correction z = 2.2045.
    expect(association).toMatchObject({ ok: true, zones: 5, tau: 1 });
    expect(association.ok && association.p).toBeCloseTo(0.0275, 4);
    expect(zones[0]).toMatchObject({ zone: 'U1', layers: 4, runs: 16, testers: 4 });
    expect(zones[0]?.runShare).toMatchObject({ share: 0.8 });
    expect(zones[0]?.runShare?.lower).toBeLessThan(0.8);
    expect(zones.at(-1)).toMatchObject({
      runs: 0,
      testers: 0,
      testerShare: { share: 0, lower: 0 },
    });
  });

  it('have tau-b where zones are tied, by Kendall’s own formula', () => {
    const tied = layers.map((one, at) => ({ ...one, count: at < 2 ? 3 : 2 }));
    // All 6 pairs untied in layers are in order; 9 of 10 are untied in shares.
    const { association } = layersAndHeat(tied, runs({ U1: 4, U2: 3, U4: 2, U5: 2 }));
    expect(association.ok && association.tau).toBeCloseTo(6 / Math.sqrt(54), 12);
  });

  it('hears no other kind, and no other zone', () => {
    const other = runs({ U1: 3 }).map((run) => ({
      ...run,
      complaints: [
        ...run.complaints.map((one) => ({ ...one, kind: 'hot-spot' as const })),
        { zone: 'P4' as const, kind: 'overheating' as const },
      ],
    }));
    expect(layersAndHeat(layers, other).zones.every((zone) => zone.runs === 0)).toBe(true);
  });

  it('say why there is nothing to say', () => {
    const why = (counted: Parameters<typeof layersAndHeat>[0], asked: readonly AskedRun[]) => {
      const { association } = layersAndHeat(counted, asked);
      return association.ok ? null : association.why;
    };
    expect(why(layers, [])).toBe('nobody-asked');
    expect(why(layers.slice(0, 4), runs({ U1: 2 }))).toBe('too-few-zones');
    expect(
      why(
        layers.map((one) => ({ ...one, count: 2 })),
        runs({ U1: 2 }),
      ),
    ).toBe('same-layers');
    expect(why(layers, runs({}))).toBe('same-shares');
    expect(layersAndHeat(layers, []).zones[0]).toMatchObject({ runShare: null, testerShare: null });
  });
});
