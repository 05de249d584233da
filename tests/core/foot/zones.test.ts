import { describe, expect, it } from 'vitest';
import {
  rollUpIds,
  rollUps,
  soleCuts,
  zoneCodes,
  zones,
  zonesOfView,
} from '../../../core/foot/index.ts';

describe('zones', () => {
  it('are nine on the sole and ten on the upper', () => {
    expect(zonesOfView('sole')).toEqual(['P1', 'P2', 'P3', 'P4', 'P5', 'P6', 'P7', 'P8', 'P9']);
    expect(zonesOfView('upper')).toHaveLength(10);
    expect(new Set(zoneCodes).size).toBe(19);
  });

  it('carry their own code', () => {
    for (const code of zoneCodes) expect(zones[code].code).toBe(code);
  });

  it('are each in exactly one group', () => {
    expect(rollUpIds.flatMap((id) => rollUps[id].zones)).toEqual(zoneCodes);
    for (const id of rollUpIds) {
      for (const code of rollUps[id].zones) expect(zones[code].rollUp).toBe(id);
    }
  });

  it('put the traditional forefoot mask, 51-81 % of length (Forghany 2018), into ball and midfoot', () => {
    for (const cut of [soleCuts.ballRear, soleCuts.ballFront]) {
      expect(cut[0]?.[0]).toBe(0);
      expect(cut.at(-1)?.[0]).toBe(1);
      for (const [, length] of cut) {
        expect(length).toBeGreaterThan(0.51);
        expect(length).toBeLessThanOrEqual(0.81);
      }
    }
  });
});
