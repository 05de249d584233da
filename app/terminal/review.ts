/**
 * `npm run review -- FILE`: reads a bundle and prints its review, or writes it as a report and as data.
 * Exit code 0: printed or written; 1: wrong use; 2: something in the file is bad (each said by line and field).
 * A record that cannot be read is left out of every figure and said on standard error.
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { trades } from '../../core/foot/index.ts';
import {
  addRevisions,
  bundleJsonSchema,
  emptyLog,
  readBundle,
  unpackBundle,
  viewOfLog,
  type ReadBundle,
  type Records,
} from '../../core/records/index.ts';
import {
  checkPanel,
  lookAtFeet,
  findingsOf,
  openProject,
  lookAtRounds,
  reportRounds,
  reviewProject,
  type RoundReport,
  withoutPairsOutOfTolerance,
} from '../../core/review/index.ts';
import { isTrade } from '../report/document.tsx';
import { csvOf } from '../report/tables/csv.ts';
import { dictionaryJson, dictionaryOf, dictionaryTable } from '../report/tables/dictionary.ts';
import { jsonOf, tablesOf, type Written } from '../report/tables/index.ts';
import { headlinesOf } from './headlines.ts';
import { printReview } from './print-review.ts';
import { reportText } from './write-report.ts';
import { languages, languageFile } from './languages.ts';
import { problemsInWords, recordInWords } from '../words/say-left-out.ts';
import type { LanguageFile, TerminalWords } from '../words/types.ts';
import { plainNumber } from './print/printed.ts';

class Stop extends Error {
  readonly code: 1 | 2;
  constructor(code: 1 | 2, message: string) {
    super(message);
    this.code = code;
  }
}

const options = {
  json: { type: 'string' },
  csv: { type: 'string' },
  report: { type: 'string' },
  round: { type: 'string' },
  trade: { type: 'string' },
  schema: { type: 'boolean' },
  project: { type: 'string' },
  lang: { type: 'string' },
  'without-out-of-tolerance': { type: 'boolean' },
  language: { type: 'string' },
  'how-sure': { type: 'boolean' },
} as const;

/** Where JSON goes that no file is named for. */
const STANDARD_OUTPUT = '-';

/** `--json` without a file prints; the parser knows no option whose value may be left out. */
const withJsonTarget = (args: readonly string[]): string[] =>
  args.flatMap((arg, at) => {
    const next = args[at + 1];
    return arg === '--json' && (next === undefined || next.startsWith('--'))
      ? ['--json', STANDARD_OUTPUT]
      : [arg];
  });

const usage = (words: TerminalWords): string => words.usage(languages.join('|'), trades.join('|'));

const parse = (args: readonly string[]) => {
  try {
    return parseArgs({ args: withJsonTarget(args), options, allowPositionals: true });
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

/** Tries the file system; what it refuses ends the command with its own words. */
const trying = (path: string, words: TerminalWords, work: () => void): void => {
  try {
    work();
  } catch (error) {
    throw new Stop(1, words.cannotRead(path, (error as Error).message));
  }
};

const makeFolder = (folder: string, words: TerminalWords): void =>
  trying(folder, words, () => mkdirSync(folder, { recursive: true }));

/** Writes a file and says so. */
const write = (file: string, text: string, words: TerminalWords): string => {
  trying(file, words, () => writeFileSync(file, text));
  return words.wrote(file);
};

/** What cannot be read of the records as they stand now, a line a field; what was corrected since is no trouble. */
const unreadIn = (bundle: ReadBundle, records: Records, spoken: LanguageFile): string[] => {
  const { desk, glossary, terminal } = spoken;
  const words = { desk, glossary, number: plainNumber };
  const lineOf = new Map(bundle.revisions.map(({ line, revision }) => [revision.id, line]));
  return records.leftOut
    .filter(({ why }) => why === 'unreadable')
    .flatMap((one) =>
      problemsInWords(one, words).map((problem) =>
        terminal.unreadable(lineOf.get(one.id) ?? 0, recordInWords(one, words), problem),
      ),
    );
};

/** What was asked for, checked. */
const readOptions = (args: readonly string[]) => {
  const { values, positionals } = parse(args);
  const named = (values.language ?? values.lang ?? 'en').split('+');
  const [language = ''] = named;
  const trade = values.trade ?? null;
  const two = named.length === 2 && named[0] !== named[1] && values.report !== undefined;
  if (
    (named.length !== 1 && !two) ||
    !named.every((one) => languages.includes(one)) ||
    (trade !== null && !isTrade(trade))
  )
    throw new Stop(1, usage(languageFile('en').terminal));
  return { values, positionals, named, trade, spoken: languageFile(language) };
};

type Options = ReturnType<typeof readOptions>;

/** The project's log as of the file's own date, so that the same file gives the same review on any day. */
const open = (file: string, { values, spoken }: Options) => {
  const words = spoken.terminal;
  const unpacked = unpackBundle(readFile(file, words));
  if (!unpacked.ok) throw new Stop(2, words.cannotRead(file, words.unpack[unpacked.why]));
  const bundle = readBundle(unpacked.text);
  const bad = bundle.problems.map(words.problem);
  if (bad.length > 0) throw new Stop(2, bad.map((line) => `${file}: ${line}`).join('\n'));

  const revisions = bundle.revisions.map(({ revision }) => revision);
  const records = viewOfLog(addRevisions(emptyLog, revisions));
  const unread = unreadIn(bundle, records, spoken).map((line) => `${file}: ${line}`);
  const named = records.project.filter(
    ({ body }) => values.project === undefined || body.name === values.project,
  );
  const [project] = named;
  if (!project || named.length > 1) {
    const names = records.project.map(({ body }) => body.name);
    throw new Stop(
      unread.length > 0 ? 2 : 1,
      [...unread, words.noProject(values.project, names)].join('\n'),
    );
  }
  const asOf = Date.parse(bundle.header?.madeAt ?? '');
  const whole = openProject(records, project.revision.id, asOf);
  if (!whole) throw new Error('the project was just found in the records');
  const log = values['without-out-of-tolerance'] ? withoutPairsOutOfTolerance(whole) : whole;
  return { log, unread, attachments: unpacked.attachments };
};

/** The round that is asked for by its number, else the last that was worn. */
const chosenRound = (
  reports: readonly RoundReport[],
  { values, spoken: { terminal: words } }: Options,
): RoundReport => {
  const report =
    values.round === undefined
      ? (reports.findLast(({ round }) => round.size.runs > 0) ?? reports.at(-1))
      : reports.find(({ round }) => String(round.order) === values.round);
  if (report) return report;
  const all = reports.map(({ round }) => `${round.order} ${round.name}`);
  throw new Stop(1, words.noRound(values.round, all));
};

/** Writes what was asked for as files, and says which. */
const writeFiles = (
  written: Written,
  { log, attachments }: ReturnType<typeof open>,
  chosen: Options,
): string[] => {
  const { values, named, trade, spoken } = chosen;
  const words = spoken.terminal;
  const done: string[] = [];
  if (values.report !== undefined) {
    const report = chosenRound(written.reports, chosen);
    const text = reportText(report, named, trade, log.records, attachments);
    done.push(write(values.report, text, words));
  }
  if (values.csv !== undefined) {
    makeFolder(values.csv, words);
    const tables = tablesOf(written);
    const dictionary = dictionaryOf(tables, { en: languageFile('en'), zh: languageFile('zh') });
    for (const table of [...tables, dictionaryTable(dictionary)])
      done.push(write(join(values.csv, `${table.name}.csv`), csvOf(table), words));
    done.push(write(join(values.csv, 'dictionary.json'), `${dictionaryJson(dictionary)}\n`, words));
  }
  if (values.json !== undefined && values.json !== STANDARD_OUTPUT)
    done.push(write(values.json, `${jsonOf(written)}\n`, words));
  return done;
};

/** The text to print for these arguments. Throws {@link Stop}. */
const review = (args: readonly string[]): string => {
  const chosen = readOptions(args);
  const { values, positionals, spoken } = chosen;
  if (values.schema) return JSON.stringify(bundleJsonSchema(), null, 2);
  const [file] = positionals;
  if (file === undefined || positionals.length > 1) throw new Stop(1, usage(spoken.terminal));
  const opened = open(file, chosen);
  const { log, unread } = opened;
  if (unread.length > 0) process.stderr.write(`${unread.join('\n')}\n`);
  const answer = reviewProject(log);
  const feet = lookAtFeet(log);
  const panel = checkPanel(log);
  if ([values.report, values.csv, values.json].every((one) => one === undefined)) {
    const looks = lookAtRounds(log, answer);
    const verdicts = looks.map(({ verdict }) => verdict);
    const headlines = headlinesOf(log, answer, verdicts, spoken);
    const printed = { review: answer, looks, feet, panel, headlines };
    return printReview(printed, spoken, values['how-sure'] ?? false);
  }
  const reports = reportRounds(log, answer);
  const written = { log, review: answer, reports, findings: findingsOf(log), feet, panel };
  const done = writeFiles(written, opened, chosen);
  return values.json === STANDARD_OUTPUT ? jsonOf(written) : done.join('\n');
};

try {
  process.stdout.write(`${review(process.argv.slice(2))}\n`);
} catch (error) {
  if (!(error instanceof Stop)) throw error;
  process.stderr.write(`${error.message}\n`);
  process.exitCode = error.code;
}
