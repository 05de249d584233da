/**
 * Which programs of the system do the tests need, and are they here? The one place that lists them.
 * On Debian as root they are installed; elsewhere the message says what is missing.
 */
import { existsSync } from 'node:fs';
import { delimiter } from 'node:path';
import { aptInstall } from '../app/install.mjs';

const found = (names) =>
  names
    .flatMap((name) =>
      name.startsWith('/')
        ? [name]
        : (process.env.PATH ?? '').split(delimiter).map((folder) => `${folder}/${name}`),
    )
    .find((path) => existsSync(path));

const chromiumNames = [
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'microsoft-edge',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
];

/** Needed: without it the browser tests cannot run and the test command fails. */
const needed = [{ what: 'chromium', names: chromiumNames, debian: ['chromium'] }];

/** Wanted: what needs them is counted as skipped where they are missing. */
const wanted = [
  { what: 'firefox', names: ['firefox-esr', 'firefox'], debian: ['firefox-esr'] },
  {
    what: 'webkit',
    names: ['WebKitWebDriver'],
    debian: ['webkit2gtk-driver', 'xvfb'],
  },
  {
    what: 'postgres',
    names: [
      ...[18, 17, 16, 15, 14].map((version) => `/usr/lib/postgresql/${version}/bin/postgres`),
      'postgres',
    ],
    debian: ['postgresql'],
  },
  { what: 'pdftotext', names: ['pdftotext'], debian: ['poppler-utils'] },
  {
    what: 'chinese-font',
    names: ['/usr/share/fonts/opentype/noto/NotoSansCJK-Regular.ttc'],
    debian: ['fonts-noto-cjk', 'fonts-noto-core'],
  },
];

/** Finds or installs each program; answers the path of each one by name, undefined where missing. */
export function setUpSystem() {
  const missing = [...needed, ...wanted].filter(({ names }) => !found(names));
  if (missing.length > 0) {
    console.log(`Installing ${missing.map(({ what }) => what).join(', ')} …`);
    aptInstall(missing.flatMap(({ debian }) => debian));
  }
  const paths = Object.fromEntries(
    [...needed, ...wanted].map(({ what, names }) => [what, found(names)]),
  );
  for (const { what, debian } of needed) {
    if (paths[what]) continue;
    console.error(
      `The browser tests need Chrome, Chromium or Edge. Install one (on Debian: apt-get install ` +
        `${debian.join(' ')}) and run this command again.`,
    );
    process.exit(1);
  }
  return paths;
}
