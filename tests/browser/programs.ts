/** Which programs did the set-up find, and how is a browser of this machine started? */
import { setUpSystem } from '../set-up.mjs';

type Programs = Partial<
  Record<'chromium' | 'firefox' | 'webkit' | 'postgres' | 'pdftotext' | 'chinese-font', string>
>;

export const programs: Programs = process.env['PAIRLOG_PROGRAMS']
  ? (JSON.parse(process.env['PAIRLOG_PROGRAMS']) as Programs)
  : setUpSystem();

/** Root may not use Chromium's sandbox; the rest keeps it from asking for hosts outside. */
export const launchOptions = {
  executablePath: programs.chromium as string,
  args: [
    '--no-sandbox',
    '--disable-gpu',
    '--disable-quic',
    '--no-first-run',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
  ],
};

/** Debian's Firefox, driven by WebDriver BiDi; the two prefs answer its question about persistent storage. */
export const firefoxOptions = {
  channel: 'moz-firefox',
  executablePath: programs.firefox as string,
  firefoxUserPrefs: {
    'dom.storageManager.prompt.testing': true,
    'dom.storageManager.prompt.testing.allow': true,
  },
};
