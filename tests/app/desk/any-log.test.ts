/**
 * Whatever the log, as long as the schemas take it: everything that a desk or a terminal computes of it ends without
 * an exception, and nowhere in it is a number that is none.
 *
 * `PAIRLOG_LOGS=5000` for the long run, `PAIRLOG_SEED=17` to begin elsewhere.
 */
import { describe, expect, it } from 'vitest';
import { deskWork } from '../../../app/desk/worker/desk-work.ts';
import { languages } from '../../../app/terminal/languages.ts';
import { printedIn } from '../terminal/printed.ts';
import { addRevisions, emptyLog, viewOfHeads } from '../../../core/records/index.ts';
import {
  doubtsOf,
  findingTurns,
  openProject,
  reviewProject,
  thanksDue,
  withoutPairsOutOfTolerance,
  type ProjectLog,
} from '../../../core/review/index.ts';
import { threadsOf } from '../../../core/talk/index.ts';
import { everyRemark } from '../../../core/words/index.ts';
import { randomLog, type RandomLog } from '../../random-logs.ts';

const LOGS = Number(process.env['PAIRLOG_LOGS'] ?? 150);
const SEED = Number(process.env['PAIRLOG_SEED'] ?? 1);
/** Logs of a long run that once had a number in them that is none. */
const FOUND = [1209, 1582, 2849];

/** Where a value holds NaN or an infinity; null: nowhere. */
const noNumberIn = (value: unknown, path = ''): string | null => {
  if (typeof value === 'number') return Number.isFinite(value) ? null : `${path} is ${value}`;
  if (typeof value === 'string')
    return /\b(NaN|Infinity|undefined)\b/.exec(value) ? `${path}: ${value}` : null;
  if (typeof value !== 'object' || value === null) return null;
  const entries =
    value instanceof Map || value instanceof Set ? [...value.entries()] : Object.entries(value);
  for (const [key, one] of entries) {
    const found = noNumberIn(one, `${path}.${String(key)}`);
    if (found) return found;
  }
  return null;
};

/** Everything that is computed of a log, by name; each is worked out when it is called. */
const answersTo = async ({ heads, nowMs, project }: RandomLog) => {
  const records = viewOfHeads([...addRevisions(emptyLog, heads).values()].map(({ head }) => head));
  expect(records.leftOut).toEqual([]);
  const work = deskWork(
    () => Promise.resolve(heads),
    () => nowMs,
  );
  await work.read();
  const rounds = records.round.map(({ revision }) => revision.id);
  const pairs = records.pair.map(({ revision }) => revision.id);
  const of = (desk: typeof work.inTolerance, name: string) => [
    [`${name} review`, () => desk.review(project)] as const,
    [`${name} verdicts`, () => desk.verdicts(project)] as const,
    [`${name} overview`, () => desk.overview(project)] as const,
    [
      `${name} wear`,
      () =>
        desk
          .wearPlaces(project)
          .flatMap((place) =>
            (['distance', 'steps', 'load'] as const).flatMap((dose) =>
              (dose === 'distance' ? [null, ...pairs.slice(0, 1)] : [null]).map((pair) =>
                desk.wear(project, place, dose, pair),
              ),
            ),
          ),
    ] as const,
    [`${name} felt`, () => rounds.map((round) => desk.felt(project, round))] as const,
    [
      `${name} comparisons`,
      () =>
        rounds.flatMap((a) =>
          rounds.flatMap((b) =>
            (['all', 'blind-only'] as const).map((hands) => desk.changes(project, a, b, hands)),
          ),
        ),
    ] as const,
    [
      `${name} outcomes`,
      () => records.finding.map(({ revision }) => desk.proposeOutcome(project, revision.id)),
    ] as const,
    [`${name} reports`, () => rounds.map((round) => desk.report(project, round))] as const,
    [`${name} figures`, () => desk.figures(project)] as const,
    [
      `${name} closer looks`,
      () =>
        desk
          .shoe(project)
          .look.complaints.flatMap((cell) =>
            rounds.map((round) => desk.zoneProof(project, round, cell)),
          ),
    ] as const,
    [
      `${name} zones`,
      () =>
        desk
          .shoe(project)
          .look.complaints.flatMap(({ zone, kind }) =>
            [kind, null].map((of) =>
              desk.zone(project, { foot: 'left', zone, kind: of, testers: 9, reports: 9 }),
            ),
          ),
    ] as const,
    [`${name} comfort`, () => desk.comfort(project)] as const,
    [`${name} layers`, () => rounds.map((round) => desk.layers(project, round))] as const,
    [`${name} courses`, () => rounds.map((round) => desk.courses(project, round, 4))] as const,
    [`${name} panel`, () => desk.panelCheck(project)] as const,
    [`${name} feet`, () => desk.feet(project)] as const,
    [
      `${name} words`,
      () => desk.words(project, { ...everyRemark, text: 'heel', most: 9, left: [] }),
    ] as const,
    [
      `${name} quotes`,
      () => records.finding.map(({ revision }) => desk.quotes(project, revision.id)),
    ] as const,
  ];
  const printed = (part: (log: ProjectLog) => ProjectLog) => () => {
    const whole = openProject(records, project, nowMs);
    if (!whole) throw new Error('no project');
    const log = part(whole);
    return languages.flatMap((one) => [printedIn(log, one, true), printedIn(log, one, false)]);
  };
  return [
    ...of(work, 'all:'),
    [
      'talk',
      () => {
        const log = openProject(records, project, nowMs);
        if (!log) throw new Error('no project');
        const turns = [...findingTurns(log)];
        return [doubtsOf(log, reviewProject(log)), turns, thanksDue(log), [...threadsOf(records)]];
      },
    ] as const,
    ['terminal', printed((log) => log)] as const,
    // Where no pair is out of tolerance the answers are the same.
    ...((work.inTolerance.review(project)?.without ?? []).length === 0
      ? []
      : [
          ...of(work.inTolerance, 'in tolerance:'),
          ['terminal, in tolerance', printed(withoutPairsOutOfTolerance)] as const,
        ]),
  ];
};

/** What goes wrong with a log, a line each. */
const faultsOf = async (seed: number): Promise<readonly string[]> =>
  (await answersTo(randomLog(seed))).flatMap(([name, answer]) => {
    try {
      const found = noNumberIn(answer());
      return found === null ? [] : [`${seed} ${name}${found.slice(0, 300)}`];
    } catch (error) {
      const at = error instanceof Error ? (error.stack ?? '').split('\n').slice(1, 4) : [];
      return [`${seed} ${name}: ${String(error)} ${at.map((line) => line.trim()).join(' ')}`];
    }
  });

describe('any log that the schemas take', () => {
  it(
    'is reviewed without an exception and without a number that is none',
    async () => {
      const faults: string[] = [];
      const seeds = [...FOUND, ...Array.from({ length: LOGS }, (_, at) => SEED + at)];
      for (const seed of seeds) if (faults.length < 40) faults.push(...(await faultsOf(seed)));
      expect(faults).toEqual([]);
    },
    Math.max(60_000, LOGS * 2000),
  );
});
