import { describe, expect, it } from 'vitest';
import { inCardOrder } from '../../../app/phone/card-order.ts';
import type { HeldPair } from '../../../app/phone/own-mileage.ts';
import type { RecordId } from '../../../core/records/index.ts';
import { idOf } from '../../core/records/make.ts';

const held = (code: string, lastRunMs: number | null): HeldPair =>
  ({ pair: { body: { code }, revision: { id: idOf(Number(code)) } }, lastRunMs }) as HeldPair;

const order = (
  pairs: readonly HeldPair[],
  begun: readonly RecordId[] = [],
  stopped: readonly RecordId[] = [],
) =>
  inCardOrder(pairs, { begun: new Set(begun), stopped: new Set(stopped) }).map(
    ({ pair }) => pair.body.code,
  );

describe('the pairs on the first screen', () => {
  const worn = [held('30', 3000), held('20', 1000), held('40', null), held('10', null)];

  it('begin with the one worn last; those never worn come after', () => {
    expect(order(worn)).toEqual(['30', '20', '10', '40']);
  });

  it('let a run that is half filled in go first', () => {
    expect(order(worn, [idOf(20)])).toEqual(['20', '30', '10', '40']);
  });

  it('leave what must not be worn for the end, unless its run is half filled in', () => {
    expect(order(worn, [], [idOf(10), idOf(30)])).toEqual(['20', '40', '30', '10']);
    expect(order(worn, [idOf(20)], [idOf(20)])).toEqual(['20', '30', '10', '40']);
  });
});
