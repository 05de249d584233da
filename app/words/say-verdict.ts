/** What is the verdict on a round, in sentences? The same on desk and terminal. */
import type { Verdict, VerdictItem } from '../../core/review/index.ts';
import type { Metres } from '../../core/units/index.ts';
import { chanceOf, percentOf, setPercentOf } from './figures.ts';
import { cellTitle, type Speaker } from './say-complaint.ts';
import { painClause } from './say-pain.ts';
import { growthLines, spreadLine } from './say-open.ts';
import { siteName } from './say-place.ts';
import { crossingLine, limitTitle, placeTitle } from './say-wear.ts';

export interface SaidItem {
  readonly title: string;
  readonly word: VerdictItem['word'];
  readonly lines: readonly string[];
  /** What would settle it. */
  readonly settle: readonly string[];
}

type Of<W extends VerdictItem['what']> = Extract<VerdictItem, { what: W }>;
type Said = Omit<SaidItem, 'word'>;

const wearSaid = (item: Of<'wear'>, briefM: Metres, speaker: Speaker): Said => {
  const { desk, glossary, number } = speaker;
  const { limit, hold, tooFar, distance, pairs, checks, next } = item;
  const place = placeTitle(item, speaker);
  const brief = speaker.distance(briefM);
  const holds = (): readonly string[] =>
    tooFar
      ? [desk.wear.tooFar(place, brief)]
      : hold
        ? [desk.wear.hold(place, brief, chanceOf(hold.chance, number), glossary.holds[hold.word])]
        : [];
  return {
    title: `${limitTitle(limit, item, speaker)}${limit.site === undefined ? ` (${siteName(item.site, speaker)})` : ''}`,
    lines: [
      desk.verdict.evidence(pairs, checks),
      ...(item.basis === 'prior-only' ? [desk.wear.priorOnly] : []),
      ...(item.spread ? [spreadLine(item.spread, speaker)] : []),
      ...holds(),
      ...crossingLine(distance, 'distance', speaker),
    ],
    settle: next.map(({ pair, distance: at, narrowing }) =>
      desk.wear.next(speaker.pair(pair), speaker.distance(at), percentOf(narrowing, number)),
    ),
  };
};

const structureSaid = (
  { word, held, failed, pairs, weibull, canHold }: Of<'structure'>,
  { desk: { verdict: words }, number }: Speaker,
): Said => {
  const percent = (share: number) => percentOf(share, number);
  return {
    title: words.items.structure,
    lines: [
      held && held.reached > 0
        ? words.structure(
            failed,
            pairs,
            percent(held.share),
            percent(held.lower),
            percent(held.upper),
          )
        : held
          ? words.structureShort(failed, pairs, percent(held.upper))
          : words.structureNone(pairs),
      ...(weibull
        ? [
            words.weibull(
              number(weibull.shape, 1),
              percent(weibull.held.share),
              percent(weibull.held.lower),
              percent(weibull.held.upper),
            ),
          ]
        : []),
      ...(word === 'not-known-yet' && !canHold ? [words.tooFewPairs(pairs)] : []),
    ],
    settle: [],
  };
};

const rateSaid = (item: Of<'allowed-rate'>, speaker: Speaker): Said => {
  const { cells, askedRuns, askedTesters, allowed, upTo } = item;
  const { verdict: words, joined } = speaker.desk;
  const pain = painClause(item.pain, speaker);
  const set = (share: number) => setPercentOf(share, speaker.number);
  const percent = (share: number) => percentOf(share, speaker.number);
  return {
    title: words.items['allowed-rate'](set(allowed.complaint), set(allowed.pain)),
    lines: [
      cells.length > 0
        ? words.recurs(joined.apart(cells.map((cell) => cellTitle(cell, speaker))))
        : askedRuns === 0
          ? words.nobodyAsked
          : words.noneRecurs(askedRuns, askedTesters, percent(upTo.complaint), percent(upTo.pain)),
      ...(pain === null ? [] : [pain]),
    ],
    settle: [],
  };
};

const saidOf = (item: VerdictItem, briefM: Metres, speaker: Speaker): Said => {
  const { verdict: words, joined } = speaker.desk;
  switch (item.what) {
    case 'wear':
      return wearSaid(item, briefM, speaker);
    case 'not-measured':
      return {
        title: limitTitle(item.limit, null, speaker),
        lines: [words.notMeasured],
        settle: [],
      };
    case 'structure':
      return structureSaid(item, speaker);
    case 'allowed-rate':
      return rateSaid(item, speaker);
    case 'complaints':
      return { title: words.items.complaints, lines: growthLines(item, speaker), settle: [] };
    case 'stop-use':
      return {
        title: words.items['stop-use'],
        lines: [
          item.pairs.length > 0
            ? words.stopped(joined.names(item.pairs.map(speaker.pair)))
            : words.notStopped,
        ],
        settle: [],
      };
  }
};

/** One item of a verdict, with its evidence. */
export const itemInWords = (item: VerdictItem, briefM: Metres, speaker: Speaker): SaidItem => ({
  word: item.word,
  ...saidOf(item, briefM, speaker),
});

/** The round with its verdict. */
export const verdictTitle = (
  { round, word }: Verdict,
  { desk, glossary, ...names }: Speaker,
): string => desk.verdict.of(names.round(round), glossary.holds[word]);
