/** What do the bench checks say of wear, and what is the verdict, in sentences? The same on desk and terminal. */
import type { Limit, Reading } from '../../core/records/index.ts';
import type { Dose, WearLook, WearPlace } from '../../core/review/index.ts';
import { PER_METRE } from '../../core/review/index.ts';
import type { Metres } from '../../core/units/index.ts';
import {
  forms,
  scaleOf,
  type CheckWarning,
  type Crossing,
  type WearKind,
} from '../../core/wear/index.ts';
import { chanceOf, inColumn, percentOf, setPercentOf, signed, written } from './figures.ts';
import { pOf, type Speaker } from './say-complaint.ts';
import { placeName, siteName } from './say-place.ts';

const DECIMALS: Readonly<Record<WearKind, number>> = {
  'stack-height mm': 2,
  'tread-depth mm': 2,
  'hardness asker-c': 1,
  'hardness shore-a': 1,
  'mass g': 1,
  'impact-peak N': 0,
  'energy-absorbed J': 2,
  'energy-absorbed %': 1,
  'energy-returned J': 2,
  'energy-returned %': 1,
};

type Kind = Pick<WearPlace, 'kind'>;

const partsOf = (kind: WearKind) => {
  const [measure, unit] = kind.split(' ') as [
    keyof Speaker['glossary']['measures'],
    keyof Speaker['glossary']['units'],
  ];
  return { measure, unit };
};

export const measureOf = (kind: WearKind) => partsOf(kind).measure;

export const unitName = ({ kind }: Kind, { glossary }: Speaker): string =>
  glossary.units[partsOf(kind).unit];

export const placeTitle = (
  { kind, site }: Pick<WearPlace, 'kind' | 'site'>,
  speaker: Pick<Speaker, 'desk' | 'glossary'>,
): string => placeName({ measure: partsOf(kind).measure, site }, speaker);

/** A value where its unit stands elsewhere, as in a column: always as many decimals. */
export const bareOf = (
  value: number,
  { kind }: Kind,
  { number }: Pick<Speaker, 'number'>,
): string => number(value, DECIMALS[kind], DECIMALS[kind]);

/**
 * A reading in a column, with as many decimals as its wear is told in; of what does not wear with as many as the column.
 * @param column all values of the column
 */
export const bareReading = (
  value: number,
  { measure, unit }: Pick<Reading, 'measure' | 'unit'>,
  column: readonly number[],
  speaker: Pick<Speaker, 'number'>,
): string => {
  const kind = `${measure} ${unit}`;
  return isWearKind(kind)
    ? bareOf(value, { kind }, speaker)
    : inColumn(column)(value, speaker.number);
};

const isWearKind = (kind: string): kind is WearKind => kind in DECIMALS;

/** A value as it is written: what is told of two of them on paper is told of these, so that a reader gets the same. */
export const asWritten = (value: number, { kind }: Kind): number => written(value, DECIMALS[kind]);

/** A value with its unit. */
export const valueOf = (value: number, { kind }: Kind, speaker: Speaker): string =>
  `${speaker.number(value, DECIMALS[kind])} ${unitName({ kind }, speaker)}`;

/** A change: percent on a ratio scale, else in the unit. */
const changeOf = (change: number, { kind }: Kind, speaker: Speaker): string =>
  scaleOf(kind) === 'ratio'
    ? signed(change - 1, (share) => percentOf(share, speaker.number))
    : signed(change, (value) => valueOf(value, { kind }, speaker));

/** A distance of the dose's reference runner as its reader counts it. */
export const doseInWords = (x: Metres, dose: Dose, speaker: Speaker): string =>
  dose === 'distance'
    ? speaker.distance(x)
    : speaker.desk.wear.amounts[dose](speaker.number((x * PER_METRE[dose]) / 1000, 0));

/** A limit of the brief, such as "Stack height, heel-centre must stay at least 34 mm". */
export const limitTitle = (
  { measure, site, bound, value, basis }: Limit,
  place: Kind | null,
  speaker: Speaker,
): string => {
  const { desk, glossary } = speaker;
  const what =
    site === undefined ? glossary.measures[measure] : placeName({ measure, site }, speaker);
  return desk.wear.limit(
    what,
    desk.brief.bounds[bound],
    basis === 'share-of-new'
      ? desk.wear.ofNew(setPercentOf(value, speaker.number))
      : place
        ? valueOf(value, place, speaker)
        : speaker.number(value, 2),
  );
};

const crossing = (at: Crossing, dose: Dose, speaker: Speaker): string =>
  at === 'beyond-checks' ? speaker.desk.wear.beyondChecks : doseInWords(at, dose, speaker);

export const crossingLine = (
  distance: { lower: Crossing; median: Crossing; upper: Crossing } | null,
  dose: Dose,
  speaker: Speaker,
): string[] => {
  if (distance === null) return [];
  if (distance.lower === 'beyond-checks') return [speaker.desk.wear.notCrossed];
  if (distance.median === 'beyond-checks')
    return [speaker.desk.wear.crossedAfter(doseInWords(distance.lower, dose, speaker))];
  return [
    speaker.desk.wear.crossing(
      crossing(distance.lower, dose, speaker),
      crossing(distance.median, dose, speaker),
      crossing(distance.upper, dose, speaker),
    ),
  ];
};

/** What is said of a new pair at the brief's distance. */
export interface WearFigures extends Pick<
  WearLook,
  'kind' | 'site' | 'dose' | 'basis' | 'direction' | 'atBrief' | 'limits'
> {
  readonly foamKnown: boolean;
}

/** What a finding rests on: how it changes by the brief's distance, and whether each limit holds. */
export const wearOutlook = (look: WearFigures, briefM: Metres, speaker: Speaker): string[] => {
  const { wear: words, joined } = speaker.desk;
  const { glossary, number } = speaker;
  const { dose } = look;
  const brief = doseInWords(briefM, dose, speaker);
  const lines: string[] = [];
  if (look.basis === 'prior-only') lines.push(words.priorOnly);
  if (!look.foamKnown) lines.push(words.foamUnknown);
  const { atBrief } = look;
  if (atBrief && look.basis === 'checks') {
    const { change, value } = atBrief;
    const [median, lower, upper] = [change.median, change.lower, change.upper].map((one) =>
      changeOf(one, look, speaker),
    ) as [string, string, string];
    lines.push(
      words.change(
        joined.of(placeTitle(look, speaker), glossary.directions[look.direction]),
        brief,
        median,
        lower,
        upper,
      ),
    );
    if (value)
      lines.push(
        words.value(
          brief,
          ...([value.median, value.lower, value.upper].map((one) =>
            valueOf(one, look, speaker),
          ) as [string, string, string]),
        ),
      );
  } else if (look.basis === 'checks')
    lines.push(
      joined.sentence(joined.of(placeTitle(look, speaker), glossary.directions[look.direction])),
    );
  for (const { limit, hold, distance, tooFar } of look.limits) {
    const title = limitTitle(limit, look, speaker);
    if (tooFar) lines.push(words.tooFar(title, brief));
    else if (hold)
      lines.push(
        words.hold(title, brief, chanceOf(hold.chance, number), glossary.holds[hold.word]),
      );
    lines.push(...crossingLine(distance, dose, speaker));
  }
  return lines;
};

/** All that one look says of wear, most wanted first. */
export const wearLines = (look: WearLook, briefM: Metres, speaker: Speaker): string[] => {
  const { wear: words, joined } = speaker.desk;
  const { glossary, number } = speaker;
  const percent = (share: number) => percentOf(share, number);
  const { dose } = look;
  const lines = wearOutlook({ ...look, foamKnown: look.foam !== null }, briefM, speaker);
  if (look.basis === 'checks')
    lines.push(
      look.toldApart
        ? words.toldApart(
            glossary.forms[look.toldApart],
            joined.names(
              forms
                .filter(({ name }) => name !== look.toldApart)
                .map(({ name }) => glossary.forms[name]),
            ),
          )
        : words.notToldApart(
            joined.apart(
              forms.map(({ name }) => `${glossary.forms[name]} ${percent(look.forms[name])}`),
            ),
          ),
    );
  for (const { pair, change, p } of look.outlying)
    lines.push(words.outlying(speaker.pair(pair), words.outlier[change], pOf(p, speaker)));
  const { leftAgainstRight: sides } = look;
  if (sides?.interval) {
    const write = (value: number) => signed(value, (one) => valueOf(one, look, speaker));
    lines.push(
      words.leftRight(
        write(sides.mean),
        write(sides.interval.lower),
        write(sides.interval.upper),
        sides.n,
      ),
    );
  }
  for (const { round, at, difference } of look.against)
    lines.push(
      words.againstRound(
        speaker.round(round),
        doseInWords(at, dose, speaker),
        ...([difference.median, difference.lower, difference.upper].map((one) =>
          changeOf(one, look, speaker),
        ) as [string, string, string]),
      ),
    );
  for (const { pair, distance, narrowing } of look.next)
    lines.push(
      words.next(speaker.pair(pair), doseInWords(distance, dose, speaker), percent(narrowing)),
    );
  if (look.leftOut > 0) lines.push(words.leftOut(look.leftOut));
  const { basis, source } = look.prior.change;
  lines.push(words.basis[basis](words.sources[source]));
  return lines;
};

/** Where wear goes first: the sites of the same kind, the greatest change first. */
export const siteLines = ({ kind, dose, sites }: WearLook, speaker: Speaker): string[] =>
  sites.length === 0
    ? []
    : [
        speaker.desk.joined.of(
          speaker.desk.wear.sites,
          speaker.desk.joined.apart(
            sites.map(
              ({ site, at, change }) =>
                `${siteName(site, speaker)} ${changeOf(change.median, { kind }, speaker)} (${changeOf(change.lower, { kind }, speaker)} … ${changeOf(change.upper, { kind }, speaker)}) @ ${doseInWords(at, dose, speaker)}`,
            ),
          ),
        ),
      ];

/** What speaks against reading a check as wear. */
export const warningInWords = (warning: CheckWarning, { desk, number }: Speaker): string => {
  const words = desk.wear.warning;
  switch (warning.code) {
    case 'short-rest':
      return words[warning.code](number(warning.restedH, 0), percentOf(warning.left.long, number));
    case 'temperature':
      return words[warning.code](
        `${number(warning.celsius, 0)} °C`,
        warning.askerC === null ? null : signed(warning.askerC, (value) => number(value, 1)),
      );
    case 'measured-otherwise':
      return words[warning.code](
        desk.joined.names(warning.differs.map((way) => desk.wear.ways[way])),
      );
    case 'temperature-missing':
    case 'no-start':
    case 'impossible-value':
      return words[warning.code];
  }
};
