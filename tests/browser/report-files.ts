/**
 * Writes reports as files, for a browser to print: `report-files.ts FOLDER LOG/TRADE/LANGUAGES …`, with the number of a round
 * of the demo as the log, or `small` or `empty` (`small-log.ts`).
 */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { trades } from '../../core/foot/index.ts';
import { addRevisions, emptyLog, viewOfLog } from '../../core/records/index.ts';
import { reportText } from '../../app/terminal/write-report.ts';
import { readDemo, reportsOf } from '../app/report/demo-report.ts';
import { smallLog } from '../small-log.ts';

const NOW = Date.UTC(2026, 10, 18);

const [folder, ...wanted] = process.argv.slice(2) as [string, ...string[]];
const demo = readDemo();

const reportOf = (named: string) => {
  const { reports, log } =
    named === 'small' || named === 'empty'
      ? reportsOf(viewOfLog(addRevisions(emptyLog, smallLog(named, NOW))), NOW)
      : demo;
  const report = reports[Math.max(0, Number(named) - 1) || 0];
  if (!report) throw new Error(`no such report: ${named}`);
  return { report, records: log.records };
};

for (const one of wanted) {
  const [named, sheet, languages] = one.split('/') as [string, string, string];
  const { report, records } = reportOf(named);
  const trade = trades.find((id) => id === sheet) ?? null;
  writeFileSync(
    join(folder, `${one.replaceAll('/', '-')}.html`),
    reportText(report, languages.split('+'), trade, records, new Map()),
  );
}
