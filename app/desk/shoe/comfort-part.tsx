/** Comfort: each attribute by round with its interval and every tester, its course over the kilometres, preferences. */
import type { ComfortHeadline } from '../../../core/headlines/index.ts';
import { type AttributeLook, type ComfortRound } from '../../../core/review/index.ts';
import { IntervalLine, RoundMark } from '../../parts/charts/interval-line.tsx';
import { formatNumber } from '../../parts/format.ts';
import { signed } from '../../words/figures.ts';
import { d, p, saidOf, t, terms } from '../../words/index.ts';
import { questionName } from '../../words/say-question.ts';
import { namesIn, useWork, type TabProps } from '../desk-state.ts';
import { HowSure } from '../frame/how-sure.tsx';
import { Picture } from '../frame/picture.tsx';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { sayOf } from '../frame/say.ts';
import { Mark, SureStamp, type Tone } from '../frame/stamp.tsx';
import { ComfortCourse } from './comfort-course.tsx';
import { ComfortProof } from './comfort-proof.tsx';
import { ShoeParts } from './shoe-parts.tsx';
import { TooMuch } from './too-much.tsx';
import { TooMuchProof } from './too-much-proof.tsx';

const whole = (value: number): string => formatNumber(value, 0);
const tenths = (value: number): string => signed(value, (size) => formatNumber(size, 1));

/** The stamp of a headline that compares two rounds. */
const stampOf: Readonly<
  Partial<
    Record<
      ComfortHeadline['case'],
      { readonly tone: Tone; readonly word: 'better' | 'worse' | 'no-relevant' | 'open' }
    >
  >
> = {
  better: { tone: 'holds', word: 'better' },
  worse: { tone: 'fails', word: 'worse' },
  'attribute-worse': { tone: 'fails', word: 'worse' },
  same: { tone: 'plain', word: 'no-relevant' },
  open: { tone: 'open', word: 'open' },
  further: { tone: 'fails', word: 'worse' },
};

/** Of what is too little or too much: how sure. */
const StampOf = ({ headline }: { readonly headline: ComfortHeadline }) => {
  if (headline.case === 'too' && (headline.claims === 'clear' || headline.claims === 'likely'))
    return <SureStamp word={headline.claims} />;
  const stamp = stampOf[headline.case];
  return stamp ? <Mark tone={stamp.tone}>{p().shoe.comfort.changes[stamp.word]}</Mark> : null;
};

/** Whether the latest round's scores change with the kilometres, shown where the interval leaves zero out. */
const driftWords = ({ drift }: ComfortRound): string => {
  const words = p().shoe.comfort.drift;
  if (!drift) return '';
  const { per100Km, interval } = drift;
  if (interval.upper < 0) return words.fades(tenths(per100Km));
  if (interval.lower > 0) return words.rises(formatNumber(per100Km, 1));
  return words.steady;
};

/** Why the means of two rounds and their difference do not go together: who is compared. */
const sameTesters = ({ change }: ComfortRound): readonly string[] => {
  if (!change) return [];
  const words = p().shoe.comfort;
  const by = tenths(change.difference);
  return [change.by === 'same-testers' ? words.same(by, change.testers) : words.different(by)];
};

const Attribute = (props: TabProps & { readonly look: AttributeLook }) => {
  const { review, records, look } = props;
  const words = p().shoe.comfort;
  const names = namesIn(review, records);
  const { attribute, rounds } = look;
  const { name, low, high } = terms().attributes[attribute];
  const placeOf = (round: ComfortRound): number =>
    review.rounds.findIndex(({ id }) => id === round.round);
  const last = rounds.at(-1);
  return (
    <li class="comfort">
      <h2>{name}</h2>
      <span class="comfort-low small soft">{low}</span>
      <div class="comfort-lines">
        {rounds.map((one) => (
          <IntervalLine
            key={one.round}
            range={[0, 100]}
            width={420}
            value={one.wear?.mean ?? null}
            interval={
              one.wear?.interval ? [one.wear.interval.lower, one.wear.interval.upper] : null
            }
            singles={one.testers.map(({ mean }) => mean)}
            round={placeOf(one)}
            says={words.says(
              name,
              names.round(one.round),
              whole(one.wear?.mean ?? 0),
              one.wear?.n ?? 0,
            )}
          />
        ))}
      </div>
      <span class="comfort-high small soft">{high}</span>
      <div class="comfort-scores">
        {rounds.map((one, at) => (
          <span key={one.round}>
            {at === rounds.length - 1 ? (
              <b>{whole(one.wear?.mean ?? 0)}</b>
            ) : (
              whole(one.wear?.mean ?? 0)
            )}
          </span>
        ))}
      </div>
      <ComfortCourse {...props} look={look} />
      <span class="comfort-drift small">{last && driftWords(last)}</span>
      <span class="comfort-change small">
        {last?.change && (
          <>
            <b>{signed(last.change.difference, whole)}</b> {words.changes[last.change.word]}
          </>
        )}
      </span>
    </li>
  );
};

const Key = ({ review, look }: TabProps & { readonly look: readonly AttributeLook[] }) => {
  const words = p().shoe.comfort;
  const scored = new Set(look.flatMap(({ rounds }) => rounds.map(({ round }) => round)));
  const links = linksOf(review.project.id);
  return (
    <p class="comfort-key small">
      {review.rounds.map(
        ({ id, name }, at) =>
          scored.has(id) && (
            <span key={id}>
              <svg class="key-mark" viewBox="0 0 16 16" aria-hidden="true">
                <RoundMark round={at} x={8} y={8} />
              </svg>{' '}
              <a href={links.round(id)}>{name}</a>
            </span>
          ),
      )}
      <span class="soft">
        <svg class="key-mark" viewBox="0 0 16 16" aria-hidden="true">
          <circle class="interval-single" cx="8" cy="8" r="2.5" />
        </svg>{' '}
        {words.tester}
      </span>
    </p>
  );
};

const Preferences = ({ review, records }: TabProps) => {
  const words = p().shoe.comfort;
  const names = namesIn(review, records);
  return (
    <section class="comfort-prefer">
      <h2>{words.prefer}</h2>
      {review.preferences.length === 0 ? (
        <p class="soft">{d().comfort.noOrder}</p>
      ) : (
        <ul class="plain-list">
          {review.preferences.map((one) => (
            <li key={`${one.first} ${one.second}`}>
              {words.preferLine(
                names.round(one.first),
                one.preferFirst,
                names.round(one.second),
                one.preferSecond,
                one.equal,
              )}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
};

/** Each tester's mean, by name and round: what the small dots are. */
const tableOf = (props: TabProps, look: readonly AttributeLook[]) => {
  const { review, records } = props;
  const words = p().shoe.comfort;
  const names = namesIn(review, records);
  const links = linksOf(review.project.id);
  return {
    head: [words.attribute, ...review.rounds.map(({ name }) => name)],
    rows: look.map(({ attribute, rounds }) => [
      terms().attributes[attribute].name,
      ...review.rounds.map(({ id }) => {
        const own = rounds.find(({ round }) => round === id);
        return own?.wear ? (
          <>
            {saidOf(whole(own.wear.mean), '')}
            {own.testers.map(({ tester, mean }) => (
              <span key={tester}>
                <a href={links.tester(tester)}>{names.tester(tester)}</a> {whole(mean)}{' '}
              </span>
            ))}
          </>
        ) : (
          ''
        );
      }),
    ]),
  };
};

export const ComfortPart = (props: TabProps) => {
  const { review, records } = props;
  const words = p().shoe.comfort;
  const { id } = review.project;
  const answer = useWork((desk) => desk.comfort(id), records, [id]);
  if (!answer) return <p class="soft">{t().loading}</p>;
  const { headline, look, twoSided } = answer;
  const main = look.find(({ attribute }) => attribute === 'overall') ?? look[0];
  const last = main?.rounds.at(-1);
  return (
    <>
      <PlaceHead
        headline={words.headline(
          headline,
          sayOf(props),
          (question) => questionName(terms(), question),
          (question, side) => terms().twoSided[question][side],
        )}
        {...(last?.wear && {
          sub: [
            words.sub(
              review.rounds.find((one) => one.id === last.round)?.name ?? '',
              last.wear.runs,
              last.wear.n,
            ),
            ...sameTesters(last),
          ].join(p().shoe.between),
        })}
        stamp={<StampOf headline={headline} />}
      />
      <ShoeParts project={id} at="comfort" />
      {twoSided.length > 0 && <TooMuch {...props} look={twoSided} />}
      {twoSided.length > 0 && look.length > 0 && <h2>{p().tooMuch.scores}</h2>}
      {look.length > 0 && (
        <Picture says={words.pictureSays} table={() => tableOf(props, look)}>
          <Key {...props} look={look} />
          <ul class="comforts plain-list">
            <li class="comfort comfort-head small soft" aria-hidden="true">
              <span>{words.attribute}</span>
              <span class="comfort-score-head">{words.score}</span>
              <span class="comfort-course-head">{words.course}</span>
              <span class="comfort-change">{words.change}</span>
            </li>
            {look.map((one) => (
              <Attribute key={one.attribute} {...props} look={one} />
            ))}
          </ul>
        </Picture>
      )}
      <Preferences {...props} />
      <HowSure>
        <ComfortProof {...props} />
        <TooMuchProof {...props} />
      </HowSure>
    </>
  );
};
