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

/** One item of a verdict, with its evidence. */
export const itemInWords = (item: VerdictItem, briefM: Metres, speaker: Speaker): SaidItem => {
  const { desk, glossary, number } = speaker;
  const percent = (share: number) => percentOf(share, number);
  const { verdict: words, joined } = desk;
  const { word } = item;
  switch (item.what) {
    case 'wear': {
      const { limit, hold, tooFar, distance, pairs, checks, next } = item;
      const place = placeTitle(item, speaker);
      const brief = speaker.distance(briefM);
      return {
        title: `${limitTitle(limit, item, speaker)}${limit.site === undefined ? ` (${siteName(item.site, speaker)})` : ''}`,
        word,
        lines: [
          words.evidence(pairs, checks),
          ...(item.basis === 'prior-only' ? [desk.wear.priorOnly] : []),
          ...(item.spread ? [spreadLine(item.spread, speaker)] : []),
          ...(tooFar
            ? [desk.wear.tooFar(place, brief)]
            : hold
              ? [
                  desk.wear.hold(
                    place,
                    brief,
                    chanceOf(hold.chance, number),
                    glossary.holds[hold.word],
                  ),
                ]
              : []),
          ...crossingLine(distance, 'distance', speaker),
        ],
        settle: next.map(({ pair, distance: at, narrowing }) =>
          desk.wear.next(speaker.pair(pair), speaker.distance(at), percent(narrowing)),
        ),
      };
    }
    case 'not-measured':
      return {
        title: limitTitle(item.limit, null, speaker),
        word,
        lines: [words.notMeasured],
        settle: [],
      };
    case 'structure': {
      const { held, failed, pairs, weibull, canHold } = item;
      return {
        title: words.items.structure,
        word,
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
    }
    case 'allowed-rate': {
      const { cells, askedRuns, askedTesters, allowed, upTo } = item;
      const pain = painClause(item.pain, speaker);
      const set = (share: number) => setPercentOf(share, number);
      return {
        title: words.items['allowed-rate'](set(allowed.complaint), set(allowed.pain)),
        word,
        lines: [
          cells.length > 0
            ? words.recurs(joined.apart(cells.map((cell) => cellTitle(cell, speaker))))
            : askedRuns === 0
              ? words.nobodyAsked
              : words.noneRecurs(
                  askedRuns,
                  askedTesters,
                  percent(upTo.complaint),
                  percent(upTo.pain),
                ),
          ...(pain === null ? [] : [pain]),
        ],
        settle: [],
      };
    }
    case 'complaints':
      return {
        title: words.items.complaints,
        word,
        lines: growthLines(item, speaker),
        settle: [],
      };
    case 'stop-use':
      return {
        title: words.items['stop-use'],
        word,
        lines: [
          item.pairs.length > 0
            ? words.stopped(joined.names(item.pairs.map(speaker.pair)))
            : words.notStopped,
        ],
        settle: [],
      };
  }
};

/** The round with its verdict. */
export const verdictTitle = (
  { round, word }: Verdict,
  { desk, glossary, ...names }: Speaker,
): string => desk.verdict.of(names.round(round), glossary.holds[word]);
