/** A field of a run in words, as the page of the run and its earlier versions say it. */
import type { ComfortAttributeId, TwoSidedId } from '../../core/foot/index.ts';
import type { Complaint, Run, Surface } from '../../core/records/index.ts';
import type { RunField } from '../../core/review/index.ts';
import { formatDuration, fromCelsius } from '../../core/units/index.ts';
import { formatDateTime, formatDistance, formatNumber, formatPercent } from './format.ts';
import { settings } from './settings.ts';
import { d, entryWords, p, t, terms } from '../words/index.ts';
import { markInWords } from '../words/say-mark.ts';

const joined = (parts: readonly (string | null | undefined | false)[]): string =>
  d().joined.clauses(parts.flatMap((part) => (part ? [part] : [])));

/** How strongly a complaint's zone is drawn: 0-10 as one of four levels; one that was not answered as a slight one. */
export const complaintLevel = ({ severity = 3 }: Complaint): 1 | 2 | 3 | 4 =>
  Math.min(4, Math.max(1, Math.ceil(severity / 2.5))) as 1 | 2 | 3 | 4;

/** What a field of a run is called. */
export const runFieldName = (field: RunField): string => p().runs.labels[field];

/** "left, heel cup: rubbing, 4 of 10, from 6.0 km on, blister". */
export const complaintInWords = (one: Complaint): string => {
  const words = p().runs;
  const zone = terms().zones[one.zone].name;
  const kind = terms().kinds[one.kind].name;
  return joined([
    t().complaint.says(t().foot[one.foot], zone, kind),
    one.severity !== undefined && words.severity(one.severity),
    one.fromM !== undefined && words.from(formatDistance(one.fromM)),
    one.skin && words.skin[one.skin],
    one.words,
  ]);
};

const surfacesInWords = (shares: Run['surfaces']): string => {
  const parts = Object.entries(shares ?? {})
    .filter(([, share]) => share > 0)
    .sort(([, a], [, b]) => b - a);
  return joined(
    parts.map(([surface, share]) => {
      const name = terms().surfaces[surface as Surface];
      return parts.length === 1 ? name : `${name} ${formatPercent(share)}`;
    }),
  );
};

const painInWords = (pain: Run['pain']): string =>
  pain === undefined
    ? ''
    : joined([
        p().runs.painOf(pain.score),
        pain.isNew === true && p().runs.painIsNew,
        ...(pain.signs ?? []).map((sign) => terms().painSigns[sign]),
        pain.where,
      ]);

const feetInWords = ({ feet }: Run): string =>
  feet === undefined
    ? ''
    : feet.answer === 'nothing'
      ? p().runs.nothingBothered
      : d().joined.apart(feet.complaints.map(complaintInWords));

const comfortInWords = ({ comfort }: Run): string =>
  joined(
    Object.entries(comfort ?? {}).map(
      ([attribute, score]) =>
        `${terms().attributes[attribute as ComfortAttributeId].name} ${formatNumber(score, 0)}`,
    ),
  );

/** "Heel cushioning a little too soft". */
const marksInWords = ({ comfort2 }: Run): string =>
  joined(
    Object.entries(comfort2 ?? {}).map(([question, mark]) => {
      const { name, low, high } = terms().twoSided[question as TwoSidedId];
      return d().joined.of(
        name,
        markInWords({ value: mark, low, high, words: entryWords().twoSided }) ?? '',
      );
    }),
  );

const distanceInWords = ({ distanceM, distanceFrom, otherDistanceM }: Run): string =>
  joined([
    formatDistance(distanceM),
    distanceFrom === 'track' && p().runs.byTrack,
    otherDistanceM !== undefined &&
      distanceFrom !== 'track' &&
      p().runs.otherFigure(formatDistance(otherDistanceM)),
  ]);

const fields: Readonly<Record<RunField, (run: Run, pair: (id: string) => string) => string>> = {
  pair: (run, pair) => pair(run.pair),
  startedAt: ({ startedAt }) => formatDateTime(startedAt),
  distanceM: distanceInWords,
  durationS: ({ durationS }) => (durationS === undefined ? '' : formatDuration(durationS)),
  surfaces: ({ surfaces }) => surfacesInWords(surfaces),
  ground: ({ ground }) => (ground ? terms().grounds[ground] : ''),
  temperatureC: ({ temperatureC }) =>
    temperatureC === undefined
      ? ''
      : `${formatNumber(fromCelsius(temperatureC, settings.value.temperature), 0)} °${settings.value.temperature}`,
  sock: ({ sock }) => (sock ? terms().socks[sock] : ''),
  comfort: comfortInWords,
  comfort2: marksInWords,
  feet: feetInWords,
  pain: ({ pain }) => painInWords(pain),
  words: ({ words }) => words ?? '',
  photos: ({ photos }) => (photos ? p().runs.photoCount(photos.length) : ''),
  track: ({ track }) => (track ? formatDistance(track.distanceM) : ''),
  wornDespiteStop: ({ wornDespiteStop }) => wornDespiteStop ?? '',
};

/** What a run says in one field; empty where that was not answered. @param pair names a pair */
export const fieldInWords = (field: RunField, run: Run, pair: (id: string) => string): string =>
  fields[field](run, pair);
