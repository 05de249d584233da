/** What of a report's file may be shown inside the app: its document and its styles, and nothing that acts. */

/** Elements that a report never has, and that would load, run or lead somewhere. */
const ACTIVE =
  'script, style, link, meta, base, iframe, frame, object, embed, form, input, button, a[href], use[href], image[href]';

const isActive = ({ name, value }: Attr): boolean =>
  /^on/i.test(name) ||
  name === 'style' ||
  (/^(src|href|xlink:href|srcset|formaction|action|ping)$/i.test(name) &&
    !/^(data:image\/|#)/.test(value));

export interface ReadReport {
  readonly article: Element;
  /** CSS, as text. */
  readonly styles: string;
}

const STYLES = /<style[^>]*>([^]*?)<\/style>/gi;

/** @returns null where the file holds no report */
export const readReport = (html: string): ReadReport | null => {
  // The styles go aside first: even a page that is never shown may not hold any under the app's own rules.
  const styles = [...html.matchAll(STYLES)].map(([, css = '']) => css).join('\n');
  // A parsed document is not shown: nothing in it is loaded or run.
  const page = new DOMParser().parseFromString(html.replace(STYLES, ''), 'text/html');
  const article = page.querySelector('article.report');
  if (!article) return null;
  for (const element of article.querySelectorAll(ACTIVE)) element.remove();
  for (const element of [article, ...article.querySelectorAll('*')])
    for (const attribute of [...element.attributes])
      if (isActive(attribute)) element.removeAttribute(attribute.name);
  return { article, styles };
};
