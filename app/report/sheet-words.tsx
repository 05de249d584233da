/** What testers wrote of what a trade answers for: by complaint, each sentence once, first those that the reader can read. */
import type { CellSummary, RoundReport, SaidOfRun } from '../../core/review/index.ts';
import { mentionsIn } from '../../core/words/index.ts';
import { isOtherScript } from './own-words.tsx';
import { Heading, type CellsProps } from './sheet-parts.tsx';
import { Say, type Languages } from './spoken.tsx';

/** Beyond these nobody reads on; the desk has them all. */
const MOST = 5;
/** Kept for the complaints after the first one. */
const KEPT = 2;

type Cell = Pick<CellSummary, 'zone' | 'kind'>;

const cellKey = ({ zone, kind }: Cell) => `${zone} ${kind}`;

/**
 * How well words suit a complaint that was tapped with them: 0 they name it, 1 they name its place or nothing that is known,
 * null they name something else, which was felt in the same run.
 */
export const suits = (
  { text, felt }: Pick<SaidOfRun, 'text' | 'felt'>,
  cell: Cell,
): 0 | 1 | null => {
  if (!felt.some((one) => cellKey(one) === cellKey(cell))) return null;
  if (felt.length === 1) return 0;
  const mentions = mentionsIn(text);
  if (
    mentions.some(
      ({ zone, kind }) => (zone ?? cell.zone) === cell.zone && (kind ?? cell.kind) === cell.kind,
    )
  )
    return 0;
  return mentions.length === 0 || mentions.some(({ zone }) => zone === cell.zone) ? 1 : null;
};

/** The words that are shown, by complaint in the order of the cells. */
const chosen = (
  said: RoundReport['said'],
  cells: readonly CellSummary[],
  languages: Languages,
): readonly { readonly cell: CellSummary; readonly shown: readonly SaidOfRun[] }[] => {
  const texts = new Set<string>();
  const isForeign = ({ text }: SaidOfRun) => languages.every((one) => isOtherScript(text, one));
  return cells.flatMap((cell, at) => {
    const most = MOST - texts.size - (at === 0 && cells.length > 1 ? KEPT : 0);
    const own = said.flatMap((one) => {
      const rank = texts.has(one.text) ? null : suits(one, cell);
      return rank === null ? [] : [{ one, rank: rank + (isForeign(one) ? 2 : 0) }];
    });
    const ranked = own.toSorted((a, b) => a.rank - b.rank).map(({ one }) => one);
    const shown = ranked
      .filter(({ text }, first) => ranked.findIndex((one) => one.text === text) === first)
      .slice(0, Math.max(0, most));
    for (const { text } of shown) texts.add(text);
    return shown.length > 0 ? [{ cell, shown }] : [];
  });
};

export const WordsOfTesters = ({ report, languages, cells }: CellsProps) => {
  const [{ paper, speaker, far }] = languages;
  const groups = chosen(report.said, cells, languages);
  if (groups.length === 0) return null;
  return (
    <section class="whole">
      <Heading languages={languages} of={({ paper }) => paper.sheet.words} />
      {groups.map(({ cell, shown }) => (
        <div class="said" key={cellKey(cell)}>
          <strong>
            <Say
              in={languages}
              of={({ paper, speaker }) =>
                paper.felt(speaker.glossary.kinds[cell.kind].name, paper.places[cell.zone])
              }
            />
          </strong>
          <ul>
            {shown.map(({ run, text, tester, pairM }) => (
              <li key={`${run} ${text}`}>
                <q>{text}</q>{' '}
                <span class="soft">{paper.sheet.source(speaker.tester(tester), far(pairM))}</span>
              </li>
            ))}
          </ul>
        </div>
      ))}
      <p class="key">
        <Say in={languages} of={({ paper }) => paper.sheet.wordsNote} />
      </p>
    </section>
  );
};
