/**
 * What the makers of the demo wrote down of it: one finding of each source, one of them carried out and looked
 * at again. All invented. It draws from dice of its own, so that nothing else of the demo changes.
 */
import { newRecordId, type Body, type RecordId } from '../core/records/index.ts';
import { millimetres } from '../core/units/index.ts';
import { seededDice } from './random.ts';
import { DAY_MS, FIRST_DAY } from './scenario.ts';
import type { Writer } from './writer.ts';

const SEED = 88;
const HOUR_MS = 3_600_000;

/**
 * Writes the findings, in the order of their days.
 * @param rounds ids of the three rounds
 * @param outOfTolerance code of the pair with the wide heel cup
 */
export const writeFindings = (
  lead: Writer,
  project: RecordId,
  rounds: readonly RecordId[],
  outOfTolerance: string,
  instant: (ms: number) => string,
): void => {
  const dice = seededDice(SEED);
  const day = (n: number) => FIRST_DAY + n * DAY_MS + 9 * HOUR_MS;
  const [first, second, third] = rounds as [RecordId, RecordId, RecordId];
  const add = (body: Body, atMs: number): RecordId => {
    const id = newRecordId(atMs, dice.bytes(16));
    lead.write('finding', { project, ...body }, atMs, id);
    return id;
  };

  const toe: Body = {
    round: second,
    title: 'The film presses on the right little toe',
    part: 'upper-material',
    kind: 'pressure',
    zone: 'U3',
    source: 'complaint',
    priority: 'high',
    wanted: 'Take the firm film away from the little toe',
    wantedMm: millimetres(6),
    evidence: {
      until: instant(day(69)),
      lines: ['Every report is of the right foot.', 'It began with the firmer film of this round.'],
      complaint: {
        word: 'recurs-across-testers',
        askedRuns: 183,
        askedTesters: 8,
        runs: 50,
        testersOnce: 6,
        testersTwice: 4,
        left: 0,
        right: 50,
        eValue: 5.9e18,
      },
    },
    state: 'open',
  };
  add(
    {
      round: second,
      title: `Heel cup of pair ${outOfTolerance} is too wide`,
      part: 'tooling',
      source: 'blueprint',
      priority: 'low',
      evidence: {
        until: instant(day(69)),
        lines: [
          `Pair ${outOfTolerance}, heel cup width, left: 60.53 mm, that is +2.53 from nominal (allowed −1 … +1).`,
          'The other pairs are within tolerance: the pair, not the design.',
        ],
        place: { measure: 'dimension', site: 'heel-cup-width', unit: 'mm' },
      },
      state: 'closed',
    },
    day(69) + HOUR_MS,
  );
  add(
    {
      round: first,
      title: 'The heel loses energy too soon',
      part: 'midsole-foam',
      source: 'wear',
      priority: 'medium',
      wanted: 'A foam that keeps 75 % at 600 km, same softness when new',
      evidence: {
        until: instant(day(69)),
        lines: ['Energy absorbed at the heel falls; the limit of the brief is not safe yet.'],
        place: { measure: 'energy-absorbed', site: 'heel-centre', unit: 'J' },
      },
      state: 'open',
    },
    day(69) + 2 * HOUR_MS,
  );
  add(
    {
      round: first,
      title: 'The heel does not hold as well as the rest is liked',
      part: 'lacing',
      source: 'comfort',
      priority: 'low',
      evidence: {
        until: instant(day(69)),
        lines: ['Heel hold scores lowest of all attributes in this round.'],
      },
      state: 'open',
    },
    day(69) + 3 * HOUR_MS,
  );
  const id = add(toe, day(69) + 4 * HOUR_MS);
  const asked: Body = { project, ...toe, carriedBy: third, state: 'asked-for' };
  lead.change(id, asked, day(69) + 5 * HOUR_MS);
  lead.change(
    id,
    {
      ...asked,
      state: 'carried-out',
      outcome: {
        round: third,
        verdict: 'better',
        until: instant(day(69)),
        lines: ['Nobody of 8 testers reported it in 131 asked runs of round 3.'],
      },
    },
    day(69) + 6 * HOUR_MS,
  );
};
