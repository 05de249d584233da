/**
 * `npm run review -- FILE`: reads a bundle and prints its review.
 * Exit code 0: printed; 1: wrong use; 2: something in the file is bad (each said by line and field).
 */
import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import {
  addRevisions,
  bundleJsonSchema,
  emptyLog,
  readBundle,
  readRecord,
  unpackBundle,
  viewOfLog,
  type ReadBundle,
} from '../../core/records/index.ts';
import {
  checkPanel,
  compareRounds,
  lookAtFeet,
  lookAtLayers,
  lookCloser,
  openProject,
  recurring,
  reviewProject,
  verdictOf,
  withoutPairsOutOfTolerance,
} from '../../core/review/index.ts';
import { printReview } from './print-review.ts';
import { languages, languageFile } from './languages.ts';
import type { TerminalWords } from '../words/types.ts';

class Stop extends Error {
  readonly code: 1 | 2;
  constructor(code: 1 | 2, message: string) {
    super(message);
    this.code = code;
  }
}

const options = {
  json: { type: 'boolean' },
  schema: { type: 'boolean' },
  project: { type: 'string' },
  lang: { type: 'string' },
  'without-out-of-tolerance': { type: 'boolean' },
} as const;

const usage = (words: TerminalWords): string => words.usage(languages.join('|'));

const parse = (args: readonly string[]) => {
  try {
    return parseArgs({ args: [...args], options, allowPositionals: true });
  } catch {
    throw new Stop(1, usage(languageFile('en').terminal));
  }
};

const readFile = (file: string, words: TerminalWords): Uint8Array => {
  try {
    return readFileSync(file);
  } catch (error) {
    throw new Stop(2, words.cannotRead(file, (error as Error).message));
  }
};

/** Everything that is wrong with the bundle, a line each. */
const complaintsAbout = (bundle: ReadBundle, words: TerminalWords): string[] => [
  ...bundle.problems.map(words.problem),
  ...bundle.revisions.flatMap(({ line, revision }) => {
    const read = readRecord(revision);
    if (read.ok || read.why !== 'unreadable') return [];
    return read.problems.map(({ field, expected }) =>
      words.unreadable(line, revision.kind, field, expected),
    );
  }),
];

/** The text to print for these arguments. Throws {@link Stop}. */
const review = (args: readonly string[]): string => {
  const { values, positionals } = parse(args);
  if (values.schema) return JSON.stringify(bundleJsonSchema(), null, 2);
  const language = values.lang ?? 'en';
  if (!languages.includes(language)) throw new Stop(1, usage(languageFile('en').terminal));
  const spoken = languageFile(language);
  const words = spoken.terminal;
  const [file] = positionals;
  if (file === undefined || positionals.length > 1) throw new Stop(1, usage(words));

  const unpacked = unpackBundle(readFile(file, words));
  if (!unpacked.ok) throw new Stop(2, words.cannotRead(file, words.unpack[unpacked.why]));
  const bundle = readBundle(unpacked.text);
  const bad = complaintsAbout(bundle, words);
  if (bad.length > 0) throw new Stop(2, bad.map((line) => `${file}: ${line}`).join('\n'));

  const revisions = bundle.revisions.map(({ revision }) => revision);
  const records = viewOfLog(addRevisions(emptyLog, revisions));
  const named = records.project.filter(
    ({ body }) => values.project === undefined || body.name === values.project,
  );
  const [project] = named;
  if (!project || named.length > 1)
    throw new Stop(
      1,
      words.noProject(
        values.project,
        records.project.map(({ body }) => body.name),
      ),
    );
  // The file's own date, so that the same file gives the same review on any day.
  const asOf = Date.parse(bundle.header?.madeAt ?? '');
  const whole = openProject(records, project.revision.id, asOf);
  if (!whole) throw new Error('the project was just found in the records');
  const log = values['without-out-of-tolerance'] ? withoutPairsOutOfTolerance(whole) : whole;
  const answer = reviewProject(log);
  const looks = answer.rounds.map((round, at) => {
    const before = answer.rounds[at - 1];
    return {
      cells: lookCloser(log, round.id, recurring(round)),
      verdict: verdictOf(log, round),
      against: before ? compareRounds(log, before, round) : null,
      layers: lookAtLayers(log, round.id),
    };
  });
  const feet = lookAtFeet(log);
  const panel = checkPanel(log);
  if (!values.json) return printReview(answer, looks, feet, panel, spoken);
  const rounds = answer.rounds.map((round, at) => ({ ...round, ...looks[at] }));
  return JSON.stringify({ ...answer, rounds, feet, panel }, null, 2);
};

try {
  process.stdout.write(`${review(process.argv.slice(2))}\n`);
} catch (error) {
  if (!(error instanceof Stop)) throw error;
  process.stderr.write(`${error.message}\n`);
  process.exitCode = error.code;
}
