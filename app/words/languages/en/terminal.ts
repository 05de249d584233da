import type { RunOddity } from '../../../../core/mileage/index.ts';
import type { BundleProblem, LeftOut, UnpackProblem } from '../../../../core/records/index.ts';
import { countPairs, countPanel, countRuns } from './count.ts';

export const terminal = {
  usage: (
    languages: string,
    trades: string,
  ) => `Usage: npm run review -- FILE [--json] [--project NAME] [--language ${languages}] [--how-sure] [--without-out-of-tolerance]
       npm run review -- FILE --report OUT.html [--round N] [--trade ${trades}] [--language en+zh]
       npm run review -- FILE [--csv FOLDER] [--json OUT.json]
       npm run review -- --schema
Reads a bundle (.pairlog) and prints the review of its project, or writes it as a report or as data.`,
  cannotRead: (file: string, why: string) => `${file}: ${why}`,
  unpack: {
    damaged: 'The file is damaged and cannot be unpacked. Ask for it again.',
    'too-large': 'The file unpacks to more than a bundle may hold.',
    'no-log': 'This zip holds no log (log.ndjson), so it is no bundle.',
    'attachment-differs': 'A photo or track in the file was changed on the way. Ask for it again.',
  } satisfies Readonly<Record<UnpackProblem, string>>,
  problem: (problem: BundleProblem) => {
    const at = `line ${problem.line}: `;
    switch (problem.why) {
      case 'not-a-bundle':
        return `${at}format: this is no bundle of Pairlog.`;
      case 'newer-bundle':
        return `${at}v: the bundle has version ${problem.v}; this program reads version 1. Use a newer one.`;
      case 'not-json':
        return `${at}this is no JSON; the line was damaged on the way.`;
      case 'cut-off':
        return `${at}the file ends early: its closing line is missing. Ask for it again.`;
      case 'digest-differs':
        return `${at}digest: the closing line does not fit the lines before it; some were changed, lost or added.`;
      case 'not-a-revision':
        return `${at}${problem.field || 'revision'}: missing or of the wrong form.`;
      case 'newer-envelope':
        return `${at}v: the record has version ${problem.v}; use a newer program.`;
      case 'too-large':
        return `${at}body: ${problem.characters} characters, at most ${problem.most} are allowed.`;
      case 'hash-differs':
        return `${at}hash: the record was changed after it was saved.`;
    }
  },
  unreadable: (line: number, record: string, problem: string) =>
    `line ${line}: ${record}: ${problem} It is left out.`,
  noProject: (name: string | undefined, names: readonly string[]) =>
    name === undefined
      ? names.length === 0
        ? 'The bundle holds no project.'
        : `The bundle holds several projects; choose one with --project: ${names.join(', ')}`
      : `There is no project "${name}". There are: ${names.join(', ') || 'none'}`,
  wrote: (file: string) => `Written: ${file}`,
  /** `order`: the number that was asked for; absent: the project has no round at all. */
  noRound: (order: string | undefined, rounds: readonly string[]) =>
    order === undefined
      ? 'The project has no round yet.'
      : `There is no round ${order}. There are: ${rounds.join(', ')}.`,
  evidence: (p: number, t: number, haveRun: number, r: number, km: string) =>
    `${countPairs(p)}, ${countPanel(t, haveRun)}, ${countRuns(r)}, ${km} km`,
  brief: (km: string) => `The brief asks ${km} km of a pair.`,
  pairs: 'Pairs',
  silent: (days: number) => `silent for ${days} days`,
  pair: 'Pair',
  round: 'Round',
  size: 'Size mm',
  distance: 'km',
  ofBrief: 'of brief',
  runs: 'Runs',
  surfaces: 'Surfaces',
  holder: 'Held by',
  note: 'Note',
  stopUse: 'STOP USE',
  complaints: (round: string) => `Complaints, ${round}`,
  noComplaint: 'Nobody named a zone that bothered.',
  zone: 'Zone',
  complaint: 'Complaint',
  testersOnce: 'Testers',
  testersTwice: 'twice+',
  reportedRuns: 'Runs',
  leftRight: 'left/right',
  severity: 'Severity mean/most',
  proof: 'Says the log',
  bench: 'Bench checks over distance',
  noBench: 'No pair was measured.',
  measure: 'Measure, site, foot',
  readings: 'Reading at km',
  deviations: 'Arrival against the blueprint',
  deviation: 'Deviation',
  nominal: 'Nominal',
  reading: 'Reading',
  damages: 'Samples that came apart',
  oddities: 'Runs to ask about',
  oddity: {
    'logged-twice': 'logged twice, counted once',
    'tester-overlap': 'overlaps with another run of the same tester',
    'pair-overlap': 'two testers in one pair at the same time',
    pace: 'implausible pace',
    distance: 'implausible distance',
    'not-handed-out': 'the pair was not handed out to this tester then',
    'in-the-future': 'lies in the future',
    'unknown-pair': 'the pair is not in the log',
  } satisfies Readonly<Record<RunOddity['why'], string>>,
  leftOut: {
    'unknown-kind': (count: number) => `${count} of a kind that needs a newer program`,
    'newer-schema': (count: number) => `${count} written by a newer program`,
  } satisfies Readonly<Record<Exclude<LeftOut['why'], 'unreadable'>, unknown>>,
  changes: 'Changes',
  /** What becomes of records that cannot be read, and what to do about them. */
  unread: 'They count in no figure. Look up the right numbers and correct them on the desk.',
};
