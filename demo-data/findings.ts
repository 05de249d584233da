/**
 * What the makers of the demo wrote down of it: one finding of each source, with the figures that the log held
 * on that day, one of them carried out and looked at again. All invented. It draws from dice of its own, so that
 * nothing else of the demo changes.
 */
import {
  newRecordId,
  type Body,
  type EvidenceFigures,
  type RecordId,
  type Records,
} from '../core/records/index.ts';
import {
  freezeComfort,
  freezeComplaint,
  freezeReading,
  freezeWear,
  lookAtWear,
  lookCloser,
  openProject,
  reviewProject,
  summarise,
} from '../core/review/index.ts';
import { isOut } from '../core/rounds/index.ts';
import { millimetres } from '../core/units/index.ts';
import { spokenIn } from '../app/report/spoken.tsx';
import { languageFile } from '../app/terminal/languages.ts';
import { frozenEvidence } from '../app/words/say-evidence.ts';
import { seededDice } from './random.ts';
import { DAY_MS, FIRST_DAY } from './scenario.ts';
import type { Writer } from './writer.ts';

const SEED = 88;
const HOUR_MS = 3_600_000;

/** What the log says, for the findings to freeze. Throws where the demo no longer shows it. */
const figuresFrom = (
  records: Records,
  project: RecordId,
  nowMs: number,
  [first, second]: readonly RecordId[],
) => {
  const there = <T>(value: T | null | undefined): T => {
    if (value === null || value === undefined)
      throw new Error('the demo lacks what a finding shows');
    return value;
  };
  const log = there(openProject(records, project, nowMs));
  const { rounds, deviations, pairs } = summarise(reviewProject(log));
  const [own, next] = [there(rounds[0]), there(rounds[1])];
  const codeOf = new Map(pairs.map(({ id, code }) => [id, code]));
  const testers = new Map(
    records.tester.map(({ body, revision }) => [revision.id, body.code] as const),
  );
  const toe = { zone: 'U3', kind: 'pressure' } as const;
  const heel = { kind: 'energy-absorbed J', site: 'heel-centre', round: there(first) } as const;
  const hold = there(own.comfort.find(({ attribute }) => attribute === 'heel-hold'));
  const wide = there(deviations.find(({ word }) => isOut(word)));
  return {
    toe: freezeComplaint(
      there(next.complaints.cells.find(({ zone, kind }) => zone === toe.zone && kind === toe.kind)),
      next.complaints,
      there(lookCloser(log, there(second), [toe])[0]),
      (tester) => testers.get(tester) ?? '?',
    ),
    wide: freezeReading(wide, there(codeOf.get(wide.pair))),
    energy: freezeWear(there(lookAtWear(log, heel, 'distance', null)), log.project.brief.distanceM),
    hold: there(freezeComfort(hold, undefined, { earlier: '', later: own.name })),
  };
};

/**
 * Writes the findings, in the order of their days.
 * @param records the log so far
 * @param rounds ids of the three rounds
 */
export const writeFindings = (
  lead: Writer,
  records: Records,
  project: RecordId,
  rounds: readonly RecordId[],
  instant: (ms: number) => string,
): void => {
  const dice = seededDice(SEED);
  const day = (n: number) => FIRST_DAY + n * DAY_MS + 9 * HOUR_MS;
  const [first, second, third] = rounds as [RecordId, RecordId, RecordId];
  const figures = figuresFrom(records, project, day(69), rounds);
  const { pair: wide } = figures.wide.reading;
  const { speaker } = spokenIn(
    languageFile('en'),
    { rounds: {}, pairs: {}, testers: {} },
    'km',
    'UTC',
  );
  const frozen = (own: readonly string[], what: EvidenceFigures) =>
    frozenEvidence(what, own, instant(day(69)), 'en', speaker);
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
    evidence: frozen(['It began with the firmer film of this round.'], figures.toe),
    state: 'open',
  };
  add(
    {
      round: second,
      title: `Heel cup of pair ${wide} is too wide`,
      part: 'tooling',
      source: 'blueprint',
      priority: 'low',
      evidence: frozen(
        ['The other pairs are within tolerance: the pair, not the design.'],
        figures.wide,
      ),
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
      evidence: frozen([], figures.energy),
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
      evidence: frozen(['The lowest of all attributes in this round.'], figures.hold),
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
        language: 'en',
      },
    },
    day(69) + 6 * HOUR_MS,
  );
};
