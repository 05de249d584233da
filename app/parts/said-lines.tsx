/** Evidence as a screen shows it: what is said in the reader's language, then what stays as it was written. */
import { isForeign } from '../words/figures.ts';
import type { SaidEvidence } from '../words/say-evidence.ts';

const Bullets = ({ lines, lang }: { lines: readonly string[]; lang?: string | undefined }) => (
  <ul lang={lang}>
    {lines.map((line, at) => (
      <li key={at}>{line}</li>
    ))}
  </ul>
);

export const SaidLines = ({ said, written }: SaidEvidence) => (
  <>
    {said.length > 0 && <Bullets lines={said} />}
    {written.lines.length > 0 && (
      <>
        {isForeign(written.tag, [document.documentElement.lang]) && (
          <p class="soft small">{written.title}</p>
        )}
        <Bullets lines={written.lines} lang={written.tag ?? undefined} />
      </>
    )}
  </>
);
