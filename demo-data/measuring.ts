/** What the invented wear test measures with and on: a gauge study, lasts, and layers of every zone. Its own dice. */
import { newRecordId, type RecordId, type Round } from '../core/records/index.ts';
import { millimetres } from '../core/units/index.ts';
import { seededDice } from './random.ts';
import type { Writer } from './writer.ts';

const MEASURING_SEED = 20261126;
const MINUTE = 60_000;

/** Layers of the zones that no round changes; those of U3 and U4 stand in the rounds already. */
const layers = { U1: 3, U2: 3, U5: 2, U6: 2, U7: 2, U8: 3, U9: 2, U10: 4 } as const;

/**
 * Writes it down at an instant.
 * @param instant an instant as text of the invented place
 */
export const writeMeasuring = (
  lead: Writer,
  project: RecordId,
  rounds: readonly { readonly id: RecordId; readonly body: Round }[],
  atMs: number,
  instant: (ms: number) => string,
): void => {
  const dice = seededDice(MEASURING_SEED);
  const round2 = (value: number) => Math.round(value * 100) / 100;
  const study = (
    gauge: string,
    measure: 'dimension' | 'stack-height',
    site: string | null,
    nominal: number,
    toleranceWidth: number,
    spread: { readonly parts: number; readonly operators: number; readonly repeats: number },
  ) => {
    const parts = Array.from({ length: 10 }, () => dice.normal(nominal, spread.parts));
    const operators = ['Shop A', 'Shop B', 'Lab C'].map((operator) => ({
      operator,
      bias: dice.normal(0, spread.operators),
    }));
    const readings = [1, 2, 3].flatMap(() =>
      operators.flatMap(({ operator, bias }) =>
        parts.map((value, at) => ({
          part: `Sample ${at + 1}`,
          operator,
          value: round2(value + bias + dice.normal(0, spread.repeats)),
        })),
      ),
    );
    const at = instant(atMs);
    const body = {
      project,
      at,
      gauge,
      measure,
      ...(site !== null && { site }),
      unit: 'mm',
      toleranceWidth,
      readings,
    };
    lead.write('gauge-study', body, atMs, newRecordId(atMs, dice.bytes(16)));
  };
  study('calliper C2', 'dimension', 'heel-cup-width', 58, 2, {
    parts: 0.5,
    operators: 0.04,
    repeats: 0.07,
  });
  study('calliper C2', 'stack-height', null, 36, 2, {
    parts: 0.4,
    operators: 0.07,
    repeats: 0.09,
  });
  for (const [at, { id, body }] of rounds.entries()) {
    const last = {
      name: at === 0 ? 'L07' : 'L08',
      sizeMm: millimetres(270),
      lengthMm: millimetres(283),
      ballWidthMm: millimetres(at === 0 ? 97 : 98),
      ballGirthMm: millimetres(at === 0 ? 246 : 248),
      widthPerStepMm: millimetres(1.5),
      girthPerStepMm: millimetres(3.5),
    };
    const more = Object.entries(layers).map(([zone, count]) => ({ zone, count }));
    lead.change(
      id,
      { ...body, last, layers: [...(body.layers ?? []), ...more] },
      atMs + (at + 1) * MINUTE,
    );
  }
};
