/** The report of a round as a file, and the figures as tables: the same documents as the desk makes. */
import { readFileSync } from 'node:fs';
import type { Trade } from '../../core/foot/index.ts';
import type { Records, Sha256 } from '../../core/records/index.ts';
import type { RoundReport } from '../../core/review/index.ts';
import { reportFile } from '../report/file.tsx';
import { shownPhotos } from '../report/document.tsx';
import { spokenIn, type Languages } from '../report/spoken.tsx';
import { languageFile } from './languages.ts';

const STYLES = [
  '../parts/tokens.css',
  '../parts/foot-map/foot-map.css',
  '../parts/charts/charts.css',
  '../report/report.css',
];

const styles = (): string =>
  STYLES.map((file) => readFileSync(new URL(file, import.meta.url), 'utf8')).join('\n');

/** The photos that the document shows and the bundle holds, each as a data: address. */
const photosOf = (
  report: RoundReport,
  trade: Trade | null,
  records: Records,
  attachments: ReadonlyMap<Sha256, Uint8Array>,
): ReadonlyMap<string, string> => {
  const types = new Map(
    records.attachment.map(({ body }) => [body.sha256, body.mediaType] as const),
  );
  return new Map(
    shownPhotos(report, trade).flatMap((sha256) => {
      const bytes = attachments.get(sha256 as Sha256);
      return bytes
        ? [
            [
              sha256,
              `data:${types.get(sha256) ?? 'image/jpeg'};base64,${Buffer.from(bytes).toString('base64')}`,
            ] as const,
          ]
        : [];
    }),
  );
};

/**
 * The report as the text of one HTML file. Days are those of UTC, so that the same bundle gives the same
 * file everywhere.
 * @param named ids of one language or two; each must be there
 */
export const reportText = (
  report: RoundReport,
  named: readonly string[],
  trade: Trade | null,
  records: Records,
  attachments: ReadonlyMap<Sha256, Uint8Array>,
): string => {
  const [lead, ...others] = named.map((id) =>
    spokenIn(languageFile(id), report.names, 'km', 'UTC'),
  );
  if (!lead) throw new Error('a report is written in one language at least');
  const languages: Languages = [lead, ...others];
  return reportFile(
    { report, languages, trade, photos: photosOf(report, trade, records, attachments) },
    styles(),
  );
};
