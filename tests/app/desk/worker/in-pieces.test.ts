import { beforeAll, describe, expect, it } from 'vitest';
import { deskWork, type DeskWork } from '../../../../app/desk/worker/desk-work.ts';
import {
  addPiece,
  cutAnswer,
  inPieces,
  MOST_IN_PIECE,
} from '../../../../app/desk/worker/in-pieces.ts';
import { largeGroup } from '../../../bench/large-group.ts';

/** More objects than this in one message stop the page for longer than it may: counted, so that no clock is needed. */
const MOST_OBJECTS = 12_000;

const objectsIn = (value: unknown): number =>
  typeof value !== 'object' || value === null
    ? 0
    : Object.values(value).reduce<number>((sum, one) => sum + objectsIn(one), 1);

const rows = (count: number) => Array.from({ length: count }, (_, at) => ({ at }));

describe('an answer in pieces', () => {
  const answer = {
    name: 'one',
    rows: rows(2 * MOST_IN_PIECE + 1),
    within: [{ points: rows(MOST_IN_PIECE + 1) }, { points: rows(3) }],
    none: null,
    figures: Array.from({ length: 1000 }, (_, at) => at),
  };

  it('cuts long lists of objects wherever they lie, and leaves the answer as it is', () => {
    const before = structuredClone(answer);
    const { rest, pieces } = cutAnswer(answer);
    expect(answer).toEqual(before);
    expect(pieces.map(({ items }) => items.length)).toEqual([
      MOST_IN_PIECE,
      MOST_IN_PIECE,
      1,
      MOST_IN_PIECE,
      1,
    ]);
    expect(rest).toMatchObject({ rows: [], within: [{ points: [] }, { points: rows(3) }] });
    for (const piece of pieces) addPiece(rest, piece);
    expect(rest).toEqual(answer);
  });

  it.each([answer, rows(1000), { small: 1 }, []])('arrives whole: %#', async (one) => {
    const [sent, ports] = inPieces(true).serialize(one);
    expect(ports).toHaveLength(cutAnswer(one).pieces.length > 0 ? 1 : 0);
    expect(await inPieces(false).deserialize(sent)).toEqual(one);
  });

  it('is for answers of the worker alone', () => {
    expect(inPieces(true).canHandle([])).toBe(true);
    expect(inPieces(true).canHandle('text')).toBe(false);
    expect(inPieces(false).canHandle([])).toBe(false);
  });
});

describe('a desk with 1,000 testers', () => {
  const { project, revisions } = largeGroup(1000, 4000, true);
  let work: DeskWork;
  let records: unknown;
  beforeAll(async () => {
    work = deskWork(
      () => Promise.resolve(revisions),
      () => Date.UTC(2026, 5, 1),
    );
    records = await work.read();
  }, 60_000);

  const answers: readonly (readonly [string, () => unknown])[] = [
    ['records', () => records],
    ['review', () => work.review(project)],
    ['sheet', () => work.sheet(project)],
    ['shoe', () => work.shoe(project)],
    ['comfort', () => work.comfort(project)],
    ['wearState', () => work.wearState(project)],
    ['verdictState', () => work.verdictState(project)],
    ['pairList', () => work.pairList(project)],
    ['testerList', () => work.testerList(project)],
    ['checkList', () => work.checkList(project)],
    ['calendar', () => work.calendar(project, null, null)],
  ];
  it.each(answers)(
    'sends no message of many thousand objects: %s',
    (_, ask) => {
      const { rest, pieces } = cutAnswer(ask());
      expect(objectsIn(rest)).toBeLessThan(MOST_OBJECTS);
      for (const piece of pieces) expect(objectsIn(piece)).toBeLessThan(MOST_OBJECTS);
    },
    60_000,
  );
});
