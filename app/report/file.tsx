/** The report as one file that stands alone: no network, no script, styles and drawings and photos inside. */
import { renderToStaticMarkup } from 'preact-render-to-string';
import type { DocumentProps } from './document-props.ts';
import { printedTitle, ReportDocument } from './document.tsx';

/** Without its comments, and so that nothing in it ends the element that it stands in. */
const plain = (styles: string): string =>
  styles.replace(/\/\*[^]*?\*\//g, '').replace(/<\/?style/gi, '');

/** The only outside thing that the page may show is what it carries itself. */
const POLICY = "default-src 'none'; style-src 'unsafe-inline'; img-src data:";

/**
 * The text of the HTML file. The same input gives the same text.
 * @param styles of the drawings and of the document, as CSS
 */
export const reportFile = (props: DocumentProps, styles: string): string =>
  `<!doctype html>\n${renderToStaticMarkup(
    <html lang={props.languages[0].locale}>
      <head>
        <meta charset="utf-8" />
        <meta http-equiv="Content-Security-Policy" content={POLICY} />
        <meta name="viewport" content="width=device-width" />
        <title>{printedTitle(props)}</title>
        <style dangerouslySetInnerHTML={{ __html: plain(styles) }} />
      </head>
      <body>
        <ReportDocument {...props} />
      </body>
    </html>,
  )}\n`;

/** A name for the file: letters and digits of the project and the round, the trade, the languages. */
export const fileName = (
  { report, trade }: Pick<DocumentProps, 'report' | 'trade'>,
  languages: readonly string[],
  ending: string,
): string =>
  [
    report.project.name,
    report.round.name,
    ...(trade === null ? [] : [trade]),
    ...(languages.length > 0 ? [languages.join('+')] : []),
  ]
    .map((part) => part.replace(/[^\p{L}\p{N}+]+/gu, '-').replace(/^-+|-+$/g, ''))
    .filter((part) => part !== '')
    .join('_')
    .concat('.', ending);
