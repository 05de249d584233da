/** What does a row of the report's first page say, in one language? */
import { allowedRateOf } from '../../core/complaints/index.ts';
import { tradesOfComplaint } from '../../core/foot/index.ts';
import type { DecisionRow } from '../../core/headlines/index.ts';
import { unitsOf } from '../../core/records/index.ts';
import type { Callout, Reported, RoundReport } from '../../core/review/index.ts';
import { metres } from '../../core/units/index.ts';
import { percentOf, setPercentOf, signed } from '../words/figures.ts';
import { siteName } from '../words/say-place.ts';
import type { Spoken } from './spoken.tsx';

/** What a row of the table of acts says, column by column. */
export type Column = 'so' | 'change' | 'amount' | 'who' | 'by' | 'sure';

type Of<W extends Callout['what']> = Extract<Callout, { what: W }>;

const upper = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** The part of the shoe that a row is about, as the headline names it. */
export const rowName = ({ callout, finding }: DecisionRow, spoken: Spoken): string => {
  const { paper, speaker } = spoken;
  if (callout?.what === 'wear')
    return paper.wearAt(
      speaker.glossary.measures[callout.limit.measure],
      siteName(callout.site, speaker),
    );
  if (callout) {
    const place = paper.places[callout.zone];
    return callout.side === 'both' ? place : paper.onFoot(callout.side, place);
  }
  const body = finding?.body;
  return body?.zone ? paper.places[body.zone] : body ? speaker.glossary.parts[body.part].name : '';
};

const share = ({ runs, askedRuns }: Reported, { paper }: Spoken) => paper.so.share(runs, askedRuns);

const limitValue = ({ limit }: Of<'wear'>, { speaker: { number, glossary } }: Spoken): string =>
  limit.basis === 'share-of-new'
    ? setPercentOf(limit.value, number)
    : `${number(limit.value, 2)}\u00a0${glossary.units[unitsOf[limit.measure][0]]}`;

/** A title of what is drawn, and the line below it. */
export const calloutWords = (
  one: Callout,
  spoken: Spoken,
): { readonly title: string; readonly note: string } => {
  const { paper, speaker } = spoken;
  const { glossary, desk } = speaker;
  switch (one.what) {
    case 'complaint': {
      const [alone] = one.proved;
      const note =
        one.word === 'recurs-for-one-tester' && alone !== undefined
          ? paper.so.oneTester(spoken.list(one.proved.map(speaker.tester)), one.runs, one.askedRuns)
          : paper.so.complaint(one.testers, one.askedTesters, one.runs, one.askedRuns);
      return {
        title: paper.felt(glossary.kinds[one.kind].name, paper.places[one.zone]),
        note: desk.joined.clauses([note, paper.so.side[one.side]]),
      };
    }
    case 'better':
      return {
        title: paper.so.betterTitle(
          paper.felt(glossary.kinds[one.kind].name, paper.places[one.zone]),
        ),
        note: paper.so.better(
          share(one.before, spoken),
          speaker.round(one.earlier),
          share(one.after, spoken),
          speaker.round(one.later),
        ),
      };
    case 'out-of-tolerance':
      return {
        title: paper.so.toleranceTitle,
        note: paper.so.tolerance(
          speaker.pair(one.pair),
          siteName(one.site, speaker),
          `${signed(one.deviation, (size) => speaker.number(size, 1))}\u00a0${glossary.units[one.unit]}`,
        ),
      };
    case 'damage':
      return {
        title: upper(glossary.damages[one.kind]),
        note: paper.so.damage(speaker.pair(one.pair), spoken.far(one.pairM)),
      };
    case 'wear':
      return {
        title: paper.so.wearTitle(glossary.measures[one.limit.measure]),
        note: paper.so.wear(
          siteName(one.site, speaker),
          limitValue(one, spoken),
          spoken.far(one.reachedM),
          spoken.far(one.briefM),
        ),
      };
  }
};

/** What is to be done where no finding asks for anything. */
export const actWords = ({ act, callout }: DecisionRow, spoken: Spoken): string => {
  const { acts } = spoken.paper;
  switch (callout?.what) {
    case 'damage':
      return acts.damage;
    case 'out-of-tolerance':
      return acts.tolerance;
    case 'wear':
      return act === 'change' ? acts.change : acts.wear;
    case 'complaint': {
      if (callout.word === 'recurs-for-one-tester') return acts.oneTester;
      const trades = tradesOfComplaint(callout.kind, callout.zone);
      return act === 'change' && trades.length > 0
        ? acts.first(spoken.list(trades.map((trade) => spoken.speaker.glossary.trades[trade])))
        : acts[act];
    }
    case 'better':
    case undefined:
      return acts[act];
  }
};

/**
 * Why a complaint is only watched although more than the brief's share of runs have it, and whether it went up against the
 * round before; null: neither, or something else is asked.
 */
export const reasonWords = (
  { act, callout }: Pick<DecisionRow, 'act' | 'callout'>,
  { project, story }: Pick<RoundReport, 'project' | 'story'>,
  { paper, speaker }: Spoken,
): string | null => {
  if (act !== 'watch' || callout?.what !== 'complaint' || callout.word === 'recurs-for-one-tester')
    return null;
  const { kind, zone, runs, askedRuns } = callout;
  const accepted = allowedRateOf(kind, project.brief.allowedRate);
  const now = runs / askedRuns;
  const move = story?.felt.find((one) => one.kind === kind && one.zone === zone);
  const before = move && move.earlier.runs > 0 ? move.earlier.reported / move.earlier.runs : null;
  const { above, up } = paper.sheet.reason;
  const said = [
    ...(now > accepted
      ? [above(percentOf(now, speaker.number), setPercentOf(accepted, speaker.number))]
      : []),
    ...(story && move && before !== null && now > before
      ? [
          up(
            speaker.round(story.comparison.earlier),
            percentOf(before, speaker.number),
            move.word === 'worse',
          ),
        ]
      : []),
  ];
  return said.length === 0 ? null : paper.sentences(said);
};

/** How much, with its unit; null where no number follows. */
export const amountWords = (
  { finding, amount }: DecisionRow,
  { speaker, far }: Spoken,
): string | null => {
  const mm = finding?.body.wantedMm;
  if (mm !== undefined) return `${speaker.number(mm, 1)}\u00a0mm`;
  if (amount === null) return null;
  return amount.unit === 'km'
    ? `+${far(metres(amount.value * 1000))}`
    : `${signed(amount.value, (size) => speaker.number(size, 1))}\u00a0mm`;
};

/** Who acts on it: the finding's part, else nobody yet. */
export const whoWords = (
  { finding, callout }: DecisionRow,
  { paper, speaker, list }: Spoken,
): string => {
  if (finding) return upper(speaker.glossary.parts[finding.body.part].role);
  if (callout?.what !== 'complaint') return paper.nobodyYet;
  const trades = tradesOfComplaint(callout.kind, callout.zone);
  return trades.length === 0
    ? paper.nobodyYet
    : upper(list(trades.map((trade) => speaker.glossary.trades[trade])));
};

/** By when; null where nothing is asked for. */
export const byWords = (
  { act, finding }: DecisionRow,
  { paper, speaker, date }: Spoken,
): string | null => {
  if (finding?.body.due !== undefined) return date(finding.body.due);
  if (finding?.body.carriedBy !== undefined)
    return paper.inRound(speaker.round(finding.body.carriedBy));
  return act === 'keep' || (act === 'watch' && !finding) ? null : paper.noDate;
};
