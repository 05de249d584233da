/** Writes the fault screen into index.html: its words in every language, its styles and its script. */
import { readdir, readFile } from 'node:fs/promises';
import { build, runnerImport, type Plugin } from 'vite';
import type { LanguageFile } from './words/types.ts';

const here = (file: string): string => new URL(file, import.meta.url).pathname;

const LANGUAGES = here('words/languages/');

const KINDS = ['store', 'code', 'broken'] as const;

/** A paper with a stitch line that breaks off. */
const DRAWING =
  '<svg width="129" height="87" viewBox="10.5 20.5 129 87" fill="none" stroke="currentColor" stroke-width="3" aria-hidden="true">' +
  '<path d="M12 22H60L75 40L90 22H138V106H12Z"/><path d="M12 66H52M98 66H138" stroke-width="4" stroke-dasharray="9 6"/>' +
  '<path d="M60 70L70 56M76 76L86 62"/></svg>';

/** The screen in one language. Which parts are shown: `data-for` names the kinds of fault. */
const sectionOf = ({ about, fault }: Pick<LanguageFile, 'about' | 'fault'>): string => {
  const forKinds = (tag: string, text: (kind: (typeof KINDS)[number]) => string, more = '') =>
    KINDS.map((kind) => `<${tag} data-for="${kind}"${more}>${text(kind)}</${tag}>`).join('');
  const steps = [
    ...fault.storeSteps.map((step) => `<li data-for="store">${step}</li>`),
    ...fault.otherSteps.map((step) => `<li data-for="code broken">${step}</li>`),
    `<li>${fault.tell} <b>${forKinds('span', (kind) => fault.sign[kind])} <time></time></b></li>`,
  ];
  return (
    `<section role="main" lang="${about.locale}">${DRAWING}` +
    forKinds('h1', (kind) => fault.title[kind], ' tabindex="-1"') +
    `${forKinds('p', (kind) => fault.why[kind])}<p>${fault.kept}</p><ol>${steps.join('')}</ol>` +
    `<p data-send hidden>${fault.sendHint}</p><div><button class="go">${fault.reload}</button>` +
    `<button data-send hidden>${fault.send}</button></div></section>`
  );
};

/** Built for browsers that may be too old for the rest. */
const built = async (): Promise<{ script: string; styles: string }> => {
  const result = await build({
    configFile: false,
    logLevel: 'warn',
    publicDir: false,
    build: {
      write: false,
      target: 'es2019',
      rolldownOptions: {
        input: here('fault/fault.ts'),
        output: { format: 'iife', codeSplitting: false },
      },
    },
  });
  const outputs = [result].flat().flatMap((one) => ('output' in one ? one.output : []));
  const script = outputs.find((one) => one.type === 'chunk')?.code.trim() ?? '';
  const styles = (await readFile(here('fault/fault.css'), 'utf8')).replace(
    /\s*([{};:,])\s+/g,
    '$1',
  );
  return { script, styles };
};

export const faultScreen = (): Plugin => ({
  name: 'pairlog-fault-screen',
  transformIndexHtml: {
    order: 'post',
    async handler(html) {
      const { script, styles } = await built();
      const languages = (await readdir(LANGUAGES)).sort();
      const words = languages.map((language) =>
        runnerImport<LanguageFile>(`${LANGUAGES}${language}/index.ts`),
      );
      const sections = (await Promise.all(words)).map(({ module }) => sectionOf(module)).join('');
      return html
        .replace('<title>', () => `<style>${styles}</style><script>${script}</script><title>`)
        .replace('<div id="app">', () => `<div id="fault" hidden>${sections}</div><div id="app">`);
    },
  },
});
