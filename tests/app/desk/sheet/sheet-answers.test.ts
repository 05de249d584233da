/** What the sheet points at in the demo. */
import { describe, expect, it } from 'vitest';
import { surenessOf } from '../../../../core/complaints/index.ts';
import { openedDemo } from '../demo.ts';

const NOW = Date.UTC(2026, 10, 30);

describe('the callouts of the demo', () => {
  it('leave out the reading whose finding is closed', async () => {
    const { work, project, records } = await openedDemo(NOW);
    const closed = records.finding.filter(({ body }) => body.state === 'closed');
    expect(closed.map(({ body }) => body.evidence?.reading?.pair)).toContain('229');
    const { callouts } = work.sheet(project);
    expect(callouts.filter(({ what }) => what === 'out-of-tolerance')).toEqual([]);
  });

  it('are as sure of a complaint as the page of the shoe', async () => {
    const { work, project } = await openedDemo(NOW);
    const { callouts } = work.sheet(project);
    const { look } = work.shoe(project);
    for (const one of callouts) {
      if (one.what !== 'complaint') continue;
      const felt = look.complaints
        .find(({ zone, kind }) => zone === one.zone && kind === one.kind)
        ?.rounds.find(({ round }) => round === one.round);
      expect(felt?.word && surenessOf(felt.word, felt.testers)).toBe(
        surenessOf(one.word, one.testers),
      );
    }
  });
});
