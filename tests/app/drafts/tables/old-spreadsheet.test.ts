/** A lead's old spreadsheet of 300 runs comes in, each planted mistake told by its cell and the rest whole. */
import { describe, expect, it } from 'vitest';
import { columnsIn, kindOf, type TableKind } from '../../../../app/drafts/tables/columns.ts';
import { readSheet } from '../../../../app/drafts/tables/sheet.ts';
import {
  mendKey,
  mended,
  openQuestions,
  readTable,
  wantedRows,
  type Mends,
  type TableContext,
} from '../../../../app/drafts/tables/table.ts';
import { guessWays } from '../../../../app/drafts/tables/ways.ts';
import {
  readBody,
  sealRevision,
  type Kind,
  type RecordOf,
} from '../../../../core/records/index.ts';
import { idOf, stampAt } from '../../../core/records/make.ts';
import { oldSpreadsheet } from '../../../old-spreadsheet.ts';

const nowMs = new Date(2026, 6, 1, 12).getTime();
const PROJECT = idOf(1);
const ROUND = idOf(2);

const none: TableContext = {
  project: PROJECT,
  rounds: [],
  testers: [],
  pairs: [],
  handOuts: [],
  runs: [],
  by: idOf(3),
  nowMs,
};

let ids = 100;
/** A record as it is on record once it came in. */
const saved = <K extends Kind>(kind: K, body: unknown): RecordOf<K> => {
  const read = readBody(kind, body);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const id = idOf(++ids);
  return {
    kind,
    body: read.body,
    revision: sealRevision(
      { id, kind, author: idOf(3), sv: 1, body: read.body },
      stampAt(ids),
      null,
    ),
  };
};

const read = (text: string, context: TableContext, mends: Mends = new Map()) => {
  const sheet = readSheet(text);
  const kind = kindOf(sheet.head);
  if (kind === null || kind === 'bench') throw new Error(`not recognised: ${sheet.head.join()}`);
  const columns = columnsIn(sheet.head, kind);
  const ways = guessWays(sheet, columns, { distance: 'mi', round: ROUND });
  const choice = { kind, columns, ways };
  return {
    kind,
    columns,
    ways,
    questions: openQuestions(choice),
    rows: readTable(mended(sheet, mends), choice, context),
  };
};

const nothing = { out: new Set<number>(), right: new Set<number>(), changed: false };

const bodiesOf = (rows: ReturnType<typeof readTable>) =>
  wantedRows(rows, nothing).map(({ record }) => record.body);

const told = (rows: ReturnType<typeof readTable>) =>
  rows.flatMap(({ line, troubles }) => troubles.map(({ column, why }) => ({ line, column, why })));

describe('the old spreadsheet', () => {
  const { tables, planted } = oldSpreadsheet();
  const testers = read(tables.testers, none);
  const pairs = read(tables.pairs, none);
  const plantedIn = (table: TableKind) =>
    planted
      .filter((one) => one.table === table)
      .map(({ line, column, why }) => ({ line, column, why }));

  it('is recognised, with how it writes', () => {
    expect([testers.kind, pairs.kind]).toEqual(['testers', 'pairs']);
    expect(pairs.ways).toMatchObject({
      decimal: 'comma',
      size: 'eu',
      distance: 'km',
      round: ROUND,
    });
    for (const { questions } of [testers, pairs])
      expect(questions).toEqual({ columns: [], ways: [] });
  });

  it('has its mistake among the pairs told by cell', () => {
    expect(told(testers.rows)).toEqual([]);
    expect(told(pairs.rows)).toEqual(plantedIn('pairs'));
    expect(bodiesOf(testers.rows)).toHaveLength(12);
    expect(bodiesOf(pairs.rows)).toHaveLength(19);
    expect(bodiesOf(testers.rows)[0]).toMatchObject({ code: 'A01', massKg: 70.5, heightM: 1.78 });
    expect(bodiesOf(pairs.rows)[0]).toMatchObject({ code: 'W-01', sizeMm: 270, round: ROUND });
    expect(bodiesOf(pairs.rows)[4]).toMatchObject({ carriedInM: 3500 });
  });

  const size = planted[0];
  const pairsMended = read(tables.pairs, none, new Map([[mendKey(size?.line ?? 0, 1), '42,5']]));
  const context: TableContext = {
    ...none,
    testers: bodiesOf(testers.rows).map((body) => saved('tester', body)),
    pairs: bodiesOf(pairsMended.rows).map((body) => saved('pair', body)),
  };
  const handOuts = read(tables['hand-outs'], context);
  const worn: TableContext = {
    ...context,
    handOuts: bodiesOf(handOuts.rows).map((body) => saved('hand-out', body)),
  };
  const runs = read(tables.runs, worn);

  it('comes in with pairs mended and hand-outs', () => {
    expect(bodiesOf(pairsMended.rows)).toHaveLength(20);
    expect(told(handOuts.rows)).toEqual([]);
    expect(bodiesOf(handOuts.rows)).toHaveLength(20);
  });

  it('has each mistake among the runs told by cell, and the rest comes in whole', () => {
    expect(runs.ways).toMatchObject({ dates: 'dmy', distance: 'km', time: 'clock', comfort: 100 });
    expect(told(runs.rows)).toEqual(plantedIn('runs'));
    const bodies = bodiesOf(runs.rows);
    expect(bodies).toHaveLength(291);
    for (const body of bodies) {
      expect(readBody('run', body).ok).toBe(true);
      expect(body).toMatchObject({ broughtIn: { by: worn.by }, project: PROJECT });
    }
  });

  it('marks the first run of each tester in a pair, whose scores are kept apart', () => {
    const firsts = bodiesOf(runs.rows).filter(
      (body) => 'firstImpression' in body && body.firstImpression === true,
    );
    expect(firsts).toHaveLength(20);
    // With each of them on record no later run is a first one.
    const worn20 = firsts.map((body) => ({ ...saved('run', body).body, dayOnly: false }));
    const later = read(tables.runs, { ...worn, runs: worn20 }).rows;
    expect(bodiesOf(later).some((body) => 'firstImpression' in body)).toBe(false);
  });

  it('adds nothing when it is brought in a second time', () => {
    const here: TableContext = {
      ...worn,
      runs: bodiesOf(runs.rows).map((body) => {
        const run = saved('run', body).body;
        return { ...run, dayOnly: run.broughtIn?.dayOnly === true };
      }),
    };
    for (const table of Object.values(tables)) expect(bodiesOf(read(table, here).rows)).toEqual([]);
    const again = read(tables.runs, here).rows;
    expect(again.filter(({ fate }) => fate === 'same')).toHaveLength(292);
  });

  it('takes a run that is odd when the lead says that it is right', () => {
    const odd = runs.rows.filter(({ fate }) => fate === 'odd').map(({ line }) => line);
    expect(odd).toEqual([90, 187, 224]);
    expect(wantedRows(runs.rows, { ...nothing, right: new Set(odd) })).toHaveLength(294);
    expect(wantedRows(runs.rows, { ...nothing, out: new Set([2, 3]) })).toHaveLength(289);
  });
});
