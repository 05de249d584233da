/**
 * What testers wrote of what a trade answers for: by complaint, each sentence once, first those that the reader can read;
 * then words about a place of the trade's where the same run has no complaint.
 */
import type { CellSummary, RoundReport, SaidOfRun } from '../../core/review/index.ts';
import { isWordOfTrade, type Trade, type ZoneCode } from '../../core/foot/index.ts';
import { mentionsIn } from '../../core/words/index.ts';
import { languageIn } from '../words/figures.ts';
import { foreignOfAll, isOtherScript, Quote } from './own-words.tsx';
import { Heading, type CellsProps } from './sheet-parts.tsx';
import { Say, type Languages, type Spoken } from './spoken.tsx';

/** Beyond these nobody reads on; the desk has them all. */
const MOST = 5;
/** So many of them are kept for the complaints after the first one, one for each. */
const KEPT = 3;
/** So many places that nobody tapped, and so many sentences of each. */
const MOST_ZONES = 2;
const MOST_UNTAPPED = 2;

type Cell = Pick<CellSummary, 'zone' | 'kind'>;

const cellKey = ({ zone, kind }: Cell) => `${zone} ${kind}`;

/**
 * How well words suit a complaint that was tapped with them: 0 they name it, 1 they name its place or nothing that is known,
 * null they name another place, or something else that was felt in the same run.
 */
export const suits = (
  { text, felt }: Pick<SaidOfRun, 'text' | 'felt'>,
  cell: Cell,
): 0 | 1 | null => {
  if (!felt.some((one) => cellKey(one) === cellKey(cell))) return null;
  const mentions = mentionsIn(text);
  if (felt.length === 1)
    return mentions.length === 0 || mentions.some(({ zone }) => zone === null || zone === cell.zone)
      ? 0
      : null;
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
  const worded = cells.flatMap((cell) => {
    const own = said.flatMap((one) => {
      const rank = suits(one, cell);
      return rank === null ? [] : [{ one, rank: rank + (isForeign(one) ? 2 : 0) }];
    });
    return own.length > 0 ? [{ cell, own: own.toSorted((a, b) => a.rank - b.rank) }] : [];
  });
  return worded.flatMap(({ cell, own }, at) => {
    const kept = Math.min(worded.length - 1 - at, Math.max(0, KEPT - at));
    const most = MOST - texts.size - kept;
    const ranked = own.flatMap(({ one }) => (texts.has(one.text) ? [] : [one]));
    const shown = ranked
      .filter(({ text }, first) => ranked.findIndex((one) => one.text === text) === first)
      .slice(0, Math.max(0, most));
    for (const { text } of shown) texts.add(text);
    return shown.length > 0 ? [{ cell, shown }] : [];
  });
};

/**
 * Words about places of the trade's where the run has no complaint, by place; each sentence once, the latest first.
 * @param told sentences that stand under a complaint
 */
export const untapped = (
  said: RoundReport['said'],
  trade: Trade,
  told: ReadonlySet<string>,
): readonly { readonly zone: ZoneCode; readonly shown: readonly SaidOfRun[] }[] => {
  const byZone = new Map<ZoneCode, SaidOfRun[]>();
  const seen = new Set(told);
  for (const one of said) {
    const named = mentionsIn(one.text).flatMap(({ zone, kind }) =>
      zone !== null &&
      !one.felt.some((felt) => felt.zone === zone) &&
      isWordOfTrade({ zone, kind }, trade)
        ? [zone]
        : [],
    );
    const [zone] = named;
    if (zone === undefined || seen.has(one.text)) continue;
    seen.add(one.text);
    byZone.set(zone, [...(byZone.get(zone) ?? []), one]);
  }
  return [...byZone].map(([zone, shown]) => ({ zone, shown: shown.slice(0, MOST_UNTAPPED) }));
};

/** What is shown, by complaint, and by place where nothing was tapped. */
const wordsOf = ({ report, languages, cells, trade }: CellsProps) => {
  const groups = chosen(report.said, cells, languages);
  const told = new Set(groups.flatMap(({ shown }) => shown.map(({ text }) => text)));
  const tapped = new Set(groups.map(({ cell }) => cell.zone));
  const others = untapped(report.said, trade, told)
    .filter(({ zone }) => !tapped.has(zone))
    .slice(0, MOST_ZONES);
  return { groups, others };
};

/** How many sentences and heads of them a sheet shows: about how tall they are. */
export const linesOfWords = (props: CellsProps): number => {
  const { groups, others } = wordsOf(props);
  return [...groups, ...others].reduce((sum, { shown }) => sum + 1 + shown.length, 0);
};

export const WordsOfTesters = (props: CellsProps) => {
  const { languages } = props;
  const { groups, others } = wordsOf(props);
  if (groups.length + others.length === 0) return null;
  const foreign = foreignOfAll(
    [...groups, ...others].flatMap(({ shown }) => shown.map(({ text }) => text)),
    languages,
  );
  return (
    <section class="whole">
      <Heading languages={languages} of={({ paper }) => paper.sheet.words} />
      {foreign !== undefined && (
        <p class="key">
          <Say
            in={languages}
            of={({ paper, locale }) =>
              paper.sheet.wordsForeign(foreign === null ? null : languageIn(foreign, locale))
            }
          />
        </p>
      )}
      {groups.map(({ cell, shown }) => (
        <Said
          key={cellKey(cell)}
          languages={languages}
          title={({ paper, speaker }) =>
            paper.felt(speaker.glossary.kinds[cell.kind].name, paper.places[cell.zone])
          }
          shown={shown}
          marked={foreign === undefined}
        />
      ))}
      {others.map(({ zone, shown }) => (
        <Said
          key={zone}
          languages={languages}
          title={({ paper }) => paper.sheet.wordsOnly(paper.places[zone])}
          shown={shown}
          marked={foreign === undefined}
        />
      ))}
      {foreign === undefined && (
        <p class="key">
          <Say in={languages} of={({ paper }) => paper.sheet.wordsNote} />
        </p>
      )}
    </section>
  );
};

/** Sentences under what they are about, each with who wrote it and how far the pair had come. */
const Said = ({
  languages,
  title,
  shown,
  marked,
}: {
  readonly languages: Languages;
  readonly title: (spoken: Spoken) => string;
  readonly shown: readonly SaidOfRun[];
  /** Whether each says its language, where nobody reads it. */
  readonly marked: boolean;
}) => {
  const [{ paper, speaker, far }] = languages;
  return (
    <div class="said">
      <strong>
        <Say in={languages} of={title} />
      </strong>
      <ul>
        {shown.map(({ run, text, tester, pairM }) => (
          <li key={`${run} ${text}`}>
            <Quote in={languages} text={text} marked={marked} />{' '}
            <span class="soft">{paper.sheet.source(speaker.tester(tester), far(pairM))}</span>
          </li>
        ))}
      </ul>
    </div>
  );
};
