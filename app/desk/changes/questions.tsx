/** Three questions to a pair of rounds, each with its answer: did it arrive, did it mend, did anything else move? */
import type { TwoSidedChange } from '../../../core/complaints/index.ts';
import { isAbsent, type ChangesLook, type FeltMove } from '../../../core/review/index.ts';
import type { RoundCount } from '../../../core/rounds/index.ts';
import { formatNumber } from '../../parts/format.ts';
import { p, terms } from '../../words/index.ts';
import { absentLine } from '../../words/say-arrival.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { VerdictStamp } from '../findings/verdict-stamp.tsx';
import { linksOf } from '../frame/route.ts';
import { speakerOf } from '../parts/speaker.ts';
import { Arrived } from './arrived.tsx';

type Props = TabProps & { readonly look: ChangesLook };

/** Of more lines only the first stand here; How sure? has all. */
const MOST_LINES = 5;

export const Questions = (props: Props) => (
  <div class="questions paper">
    <Arrived {...props} />
    <Mended {...props} />
    <Else {...props} />
  </div>
);

const Mended = (props: Props) => {
  const { look, review, records } = props;
  const words = p().changes;
  const speaker = speakerOf(props);
  const links = linksOf(review.project.id);
  const names = namesIn(review, records);
  const covered = new Set(
    records.finding
      .filter(({ revision }) => look.findings.some(({ id }) => id === revision.id))
      .map(({ body }) => `${body.zone} ${body.kind}`),
  );
  const others = look.comparison.changes.filter(
    ({ mends, found }) => mends && found && !covered.has(`${mends.zone} ${mends.kind}`),
  );
  return (
    <section aria-label={words.mend}>
      <h2>{words.mend}</h2>
      {look.findings.length + others.length === 0 && <p>{words.mendNothing}</p>}
      <ul class="plain-list">
        {look.findings.map(({ id, title, carriedBy, written, found, arrival }) => (
          <li key={id} class="asked">
            <span>
              <a href={links.finding(id)}>{title}</a>
              <span class="soft small">{` ${names.round(carriedBy)}`}</span>
            </span>
            {written === null && isAbsent(arrival) ? (
              <span class="soft">{speaker.desk.arrival.absent}</span>
            ) : (
              <VerdictStamp word={written ?? found ?? 'too-little'} />
            )}
            {written === null && (
              <a class="small" href={links.finding(id)}>
                {words.judge}
              </a>
            )}
          </li>
        ))}
        {others.map(
          ({ mends, found, arrival }) =>
            mends &&
            found && (
              <li key={`${mends.zone} ${mends.kind}`} class="asked">
                <span>
                  {mends.zone === null ? (
                    speaker.desk.changes.anywhere(terms().kinds[mends.kind].name)
                  ) : (
                    <a href={links.zone('left', mends.zone)}>
                      {feltName({ ...mends, zone: mends.zone })}
                    </a>
                  )}
                </span>
                {isAbsent(arrival) ? (
                  <span class="soft">{absentLine({ arrival, found }, speaker)}</span>
                ) : (
                  <VerdictStamp word={found.verdict} />
                )}
              </li>
            ),
        )}
      </ul>
    </section>
  );
};

const feltName = ({ zone, kind }: Pick<FeltMove, 'zone' | 'kind'>): string =>
  p().frame.feltTitle(terms().kinds[kind].name, terms().zones[zone].name);

const Else = ({ look, review }: Props) => {
  const words = p().changes;
  const links = linksOf(review.project.id);
  const rest = look.felt.filter(({ asked }) => !asked);
  const worse = rest.filter(({ word }) => word === 'worse');
  const lookAt = rest.filter(({ word }) => word === 'look');
  const comfort = (word: 'better' | 'worse') => look.comfort.filter((one) => one.word === word);
  const count = ({ reported, runs }: RoundCount) => words.of(reported, runs);
  const feltLine = (one: FeltMove) => (
    <li key={`${one.zone} ${one.kind}`}>
      <a href={links.zone('left', one.zone)}>{feltName(one)}</a>{' '}
      <span class="soft">{words.twoCounts(count(one.earlier), count(one.later))}</span>
    </li>
  );
  const comfortLine = ({ attribute, earlier, later }: (typeof look.comfort)[number]) => (
    <li key={attribute}>
      <a href={links.place('shoe', 'comfort')}>{terms().attributes[attribute].name}</a>{' '}
      <span class="soft">{words.fromTo(formatNumber(earlier, 0), formatNumber(later, 0))}</span>
    </li>
  );
  const moved = (word: 'better' | 'worse') =>
    look.comparison.twoSided.filter((one) => one.word === word);
  const movedLine = ({ attribute, earlier, later, testers }: TwoSidedChange) => (
    <li key={`${attribute} two-sided`}>
      <a href={links.place('shoe', 'comfort')}>{terms().twoSided[attribute].name}</a>{' '}
      <span class="soft">
        {words.rightFor(words.of(earlier.right, testers), words.of(later.right, testers))}
      </span>
    </li>
  );
  const groups = [
    [
      words.clearlyWorse,
      [
        ...worse.map(feltLine),
        ...comfort('worse').map(comfortLine),
        ...moved('worse').map(movedLine),
      ],
    ],
    [
      words.comfortBetter,
      [...comfort('better').map(comfortLine), ...moved('better').map(movedLine)],
    ],
    [words.lookAt, lookAt.map(feltLine)],
  ] as const;
  return (
    <section aria-label={words.else}>
      <h2>{words.else}</h2>
      {groups[0][1].length === 0 && (
        <p>
          <b>{words.nothingWorse}</b>
        </p>
      )}
      {groups.map(
        ([title, lines]) =>
          lines.length > 0 && (
            <div key={title}>
              <p class="soft small">{title}</p>
              <ul class="plain-list">{lines.slice(0, MOST_LINES)}</ul>
            </div>
          ),
      )}
    </section>
  );
};
