/** Writes reports of the demo as files, for a browser to print: `report-files.ts FOLDER ROUND/TRADE/LANGUAGES …`. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { trades } from '../../core/foot/index.ts';
import type { RoundReport } from '../../core/review/index.ts';
import { reportText } from '../../app/terminal/write-report.ts';
import { readDemo } from '../app/report/demo-report.ts';

const [folder, ...wanted] = process.argv.slice(2) as [string, ...string[]];
const { reports, log } = readDemo();
for (const one of wanted) {
  const [round, named, languages] = one.split('/') as [string, string, string];
  const report = reports[Number(round) - 1] as RoundReport;
  const trade = trades.find((id) => id === named) ?? null;
  writeFileSync(
    join(folder, `${one.replaceAll('/', '-')}.html`),
    reportText(report, languages.split('+'), trade, log.records, new Map()),
  );
}
