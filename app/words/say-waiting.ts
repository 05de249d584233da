/** What waits for a lead, what was decided, and who alone decides a verdict, in sentences: desk, terminal and report. */
import { rangeOf } from '../../core/records/index.ts';
import type { DecidedItem, RoundInfluence, WaitingItem } from '../../core/review/index.ts';
import { formatDuration, type Seconds } from '../../core/units/index.ts';
import type { Expected, GaugeApart, KnownReading, ReadingDoubt } from '../../core/wear/index.ts';
import { percentOf } from './figures.ts';
import type { Speaker } from './say-complaint.ts';
import { placeName } from './say-place.ts';

/** A reading's place and value. */
type Placed = Pick<KnownReading, 'measure' | 'site' | 'foot' | 'unit'>;

const valueOf = (value: number, { unit }: Pick<Placed, 'unit'>, speaker: Speaker): string =>
  `${speaker.number(value, 2)} ${speaker.glossary.units[unit]}`;

export const placeInWords = (place: Placed, speaker: Speaker): string =>
  speaker.desk.joined.clauses([placeName(place, speaker), speaker.foot(place.foot)]);

const expectedInWords = (
  { from, least, most }: Expected,
  place: Placed,
  speaker: Speaker,
): string => {
  const { expected, range } = speaker.desk.waiting;
  const write = (value: number) => speaker.number(value, 2);
  return expected[from](
    least === most
      ? valueOf(least, place, speaker)
      : range(write(least), valueOf(most, place, speaker)),
  );
};

/** What speaks against a reading, and what it may be instead. */
export const doubtInWords = (doubt: ReadingDoubt, place: Placed, speaker: Speaker): string[] => {
  const words = speaker.desk.waiting;
  const { least, most } = rangeOf(place.measure, place.unit);
  return [
    ...(doubt.why === 'impossible'
      ? [
          words.canBe(
            speaker.glossary.measures[place.measure],
            speaker.number(least, 2),
            valueOf(most, place, speaker),
          ),
        ]
      : []),
    ...(doubt.expected ? [expectedInWords(doubt.expected, place, speaker)] : []),
    ...(doubt.instead === null ? [] : [words.isIt(valueOf(doubt.instead, place, speaker))]),
  ];
};

/** A question about a reading as it is typed. */
export const askInWords = (
  reading: Placed & Pick<KnownReading, 'value'>,
  doubt: ReadingDoubt,
  speaker: Speaker,
): string[] => [
  speaker.desk.waiting.typed(
    valueOf(reading.value, reading, speaker),
    placeInWords(reading, speaker),
  ),
  ...doubtInWords(doubt, reading, speaker),
];

/** By how much a second gauge reads higher or lower. */
export const apartInWords = ({ share }: Pick<GaugeApart, 'share'>, speaker: Speaker): string => {
  const { higher, lower } = speaker.desk.waiting;
  return (share > 0 ? higher : lower)(percentOf(Math.abs(share), speaker.number));
};

/** What waits, as a title, and what speaks against it. */
export const waitingInWords = (
  item: WaitingItem,
  speaker: Speaker,
  date: (at: string) => string,
): { readonly what: string; readonly why: readonly string[] } => {
  const { waiting: words, ask } = speaker.desk;
  switch (item.about) {
    case 'run': {
      const why = item.whys.map((one) =>
        one.why === 'pace'
          ? words.pace(formatDuration(one.secondsPerKm as Seconds))
          : ask.oddity[one.why],
      );
      const isElsewhere = item.whys.some(({ why: one }) => one === 'not-handed-out');
      return {
        what: ask.run(
          speaker.tester(item.tester),
          speaker.pair(item.pair),
          speaker.distance(item.distanceM),
          date(item.startedAt),
        ),
        why: [
          ...why,
          ...(isElsewhere && item.heldThen.length > 0
            ? [
                words.heldThen(
                  speaker.tester(item.tester),
                  speaker.desk.joined.names(item.heldThen.map(speaker.pair)),
                ),
              ]
            : []),
        ],
      };
    }
    case 'reading':
      return {
        what: readingTitle(item, speaker, date),
        why: doubtInWords(item.doubt, item.reading, speaker),
      };
    case 'gauge':
      return {
        what: words.gauge(
          speaker.round(item.round),
          speaker.glossary.measures[item.measure],
          item.gauge,
          item.than,
          apartInWords(item, speaker),
        ),
        why: [words.gaugePlaces(item.places)],
      };
  }
};

const readingTitle = (
  item: Extract<WaitingItem | DecidedItem, { readonly about: 'reading' }>,
  speaker: Speaker,
  date: (at: string) => string,
): string =>
  speaker.desk.waiting.reading(
    speaker.pair(item.pair),
    placeInWords(item.reading, speaker),
    valueOf(item.reading.value, item.reading, speaker),
    date(item.measuredAt),
  );

/** What was decided about, with the reason. */
export const decidedInWords = (
  item: DecidedItem,
  speaker: Speaker,
  date: (at: string) => string,
): string => {
  const { joined, ask } = speaker.desk;
  const what =
    item.about === 'run'
      ? ask.run(
          speaker.tester(item.tester),
          speaker.pair(item.pair),
          speaker.distance(item.distanceM),
          date(item.startedAt),
        )
      : readingTitle(item, speaker, date);
  return item.why === '' ? what : joined.of(what, item.why);
};

/** Which tester or pair alone decides a round's verdict; nothing where none does. */
export const influenceLines = ({ decisive }: RoundInfluence, speaker: Speaker): string[] => {
  const words = speaker.desk.verdict;
  if (decisive === null) return [words.aloneNotTried];
  return decisive.map(({ who, id, word }) =>
    words.alone[who][word](who === 'tester' ? speaker.tester(id) : speaker.pair(id)),
  );
};
