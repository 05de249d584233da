/** What is to be asked and what was said, each with its run; and what no question may give away. */
import { describe, expect, it } from 'vitest';
import { viewOfHeads, type Revision } from '../../../core/records/index.ts';
import {
  changesToHide,
  openProject,
  reviewProject,
  talkOf,
  toAskOf,
} from '../../../core/review/index.ts';
import { idOf } from '../records/make.ts';
import * as make from './log-for-tests.ts';
import { own, PROJECT, record } from './log-for-tests.ts';

const NOW = Date.UTC(2026, 5, 30);
const daysAgo = (days: number) => new Date(NOW - days * 86_400_000).toISOString();
const worn = { pair: idOf(101), tester: idOf(201) };
const RUN = idOf(1000);
const base = [
  make.project(),
  make.round(idOf(2), 1),
  make.pair(worn.pair, idOf(2), '637'),
  record(worn.tester, 'tester', { code: 'T01' }),
  make.handOut(idOf(301), worn, daysAgo(60)),
  // 50 km in an hour and a half.
  make.run(RUN, worn, daysAgo(1), { distanceM: 50_000, durationS: 5400 }),
];
const ask = own(idOf(500), 'question', {
  ...{ tester: worn.tester, at: daysAgo(0), ask: 'really-pace' },
  about: { record: { id: RUN, kind: 'run' }, pair: worn.pair },
});
const open = (...revisions: readonly Revision[]) => {
  const log = openProject(viewOfHeads([...base, ...revisions]), PROJECT, NOW);
  if (!log) throw new Error('no project');
  return { log, toAsk: toAskOf(log, reviewProject(log)) };
};
const run = { id: RUN, pair: worn.pair, distanceM: 50_000, durationS: 5400 };

describe('talk about a project', () => {
  it('says what is to be asked with the run that it is about, whether or not that counts', () => {
    const odd = open().toAsk.find(({ kind }) => kind === 'odd-run');
    expect(odd).toMatchObject({ tester: worn.tester, run });
  });

  it('asks nothing twice, and shows the question where it hangs', () => {
    const { log, toAsk } = open(ask);
    expect(toAsk.filter(({ kind }) => kind === 'odd-run')).toEqual([]);
    expect(talkOf(log, { record: RUN })).toMatchObject([{ kind: 'question', open: true, run }]);
    expect(talkOf(log, { pair: worn.pair })).toHaveLength(1);
    expect(talkOf(log, { tester: idOf(202) })).toEqual([]);
  });

  it('knows of no run that was taken back', () => {
    const without = openProject(viewOfHeads([...base.slice(0, -1), ask]), PROJECT, NOW);
    expect(without && talkOf(without, {})).toMatchObject([{ run: null }]);
  });
});

describe('what no question may give away', () => {
  it('is what any round of the project changed', () => {
    const change = (what: string) => ({ changes: [{ part: 'upper-pattern', what }] });
    const { round } = viewOfHeads([
      make.round(idOf(2), 1, change('Collar 3 mm higher')),
      make.round(idOf(3), 2, change('Film cut back')),
      record(idOf(4), 'round', {
        ...make.round(idOf(4), 1).body,
        project: idOf(77),
        ...change('Another shoe'),
      }),
    ]);
    expect(changesToHide(round, PROJECT).map(({ what }) => what)).toEqual([
      'Collar 3 mm higher',
      'Film cut back',
    ]);
  });
});
