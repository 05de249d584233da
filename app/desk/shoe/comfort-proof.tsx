/** The figures behind the comfort: wear scores and first impressions with intervals, changes, preferences, the panel. */
import { comfortAttributeIds } from '../../../core/foot/index.ts';
import type { ComfortDrift, ComfortScore } from '../../../core/complaints/index.ts';
import type { RoundSummary } from '../../../core/review/index.ts';
import type { Interval } from '../../../core/statistics/index.ts';
import { formatNumber } from '../../parts/format.ts';
import { signed } from '../../words/figures.ts';
import { d, halves, p, saidOf, terms } from '../../words/index.ts';
import { panelInWords } from '../../words/say-panel.ts';
import { ComfortChanges } from './comfort.tsx';
import { namesIn, useWork, type TabProps } from '../desk-state.ts';
import { speakerOf } from '../parts/speaker.ts';

const between = (interval: Interval | null, write: (value: number) => string): string =>
  interval === null ? '' : ` (${write(interval.lower)} … ${write(interval.upper)})`;

const whole = (value: number): string => formatNumber(value, 0);

const scoreInWords = (score: ComfortScore | null | undefined): string =>
  score
    ? halves([
        `${whole(score.mean)}${between(score.interval, whole)}`,
        d().comfort.of(score.n, score.runs),
      ])
    : d().none;

const signedTenths = (value: number): string => signed(value, (size) => formatNumber(size, 1));

const driftInWords = ({ per100Km, interval }: ComfortDrift): string =>
  `${signedTenths(per100Km)}${between(interval, signedTenths)}`;

const Scores = (props: { rounds: readonly RoundSummary[]; part: 'wear' | 'firstImpression' }) => {
  const { rounds, part } = props;
  const words = d().comfort;
  const title = part === 'wear' ? words.wear : words.firstImpressions;
  const rows = comfortAttributeIds.flatMap((attribute) => {
    const cells = rounds.map(({ id, comfort }) => ({
      id,
      own: comfort.find((one) => one.attribute === attribute),
    }));
    return cells.some(({ own }) => own?.[part]) ? [{ attribute, cells }] : [];
  });
  if (rows.length === 0) return null;
  return (
    <section class="stack">
      <h2>{title}</h2>
      <div class="table-wrap" tabIndex={0} role="region" aria-label={title}>
        <table>
          <thead>
            <tr>
              <th scope="col">{words.attribute}</th>
              {rounds.map(({ id, name }) => (
                <th scope="col" class="right" key={id}>
                  {name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map(({ attribute, cells }) => (
              <tr key={attribute}>
                <th scope="row">{terms().attributes[attribute].name}</th>
                {cells.map(({ id, own }) => (
                  <td class="right" key={id}>
                    {scoreInWords(own?.[part])}
                    {part === 'wear' && own?.drift && (
                      <>
                        <br />
                        <span class="soft small">
                          {saidOf(words.drift, driftInWords(own.drift))}
                        </span>
                      </>
                    )}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
};

/** Whether testers who wore the same rounds agree on them, and how far one score moves from day to day. */
const Agreement = (props: TabProps) => {
  const project = props.review.project.id;
  const check = useWork((desk) => desk.panelCheck(project), props.records, [project]);
  const said = check && panelInWords(check, speakerOf(props));
  if (!said) return null;
  return (
    <section class="stack">
      <h2>{p().shoe.comfort.agreement}</h2>
      <p>{said.agreement}</p>
      {said.correlations.map((line) => (
        <p key={line}>{line}</p>
      ))}
      <p>{said.error}</p>
      <p>{d().panel.check.how}</p>
    </section>
  );
};

export const ComfortProof = (props: TabProps) => {
  const { records, review } = props;
  const words = d().comfort;
  const names = namesIn(review, records);
  const rounds = review.rounds.filter(({ comfort }) => comfort.length > 0);
  return (
    <div class="stack">
      {rounds.length === 0 && <p>{words.nobody}</p>}
      <Scores rounds={rounds} part="wear" />
      {review.rounds.map(({ id, name, comfortChanges }, at) =>
        comfortChanges.length === 0 ? null : (
          <ComfortChanges
            key={id}
            title={words.changes(review.rounds[at - 1]?.name ?? '', name)}
            changes={comfortChanges}
          />
        ),
      )}
      <Scores rounds={rounds} part="firstImpression" />
      <p class="soft small">{words.how}</p>
      <section class="stack">
        <h2>{words.preferred}</h2>
        {review.preferences.length === 0 ? (
          <p>{words.noOrder}</p>
        ) : (
          <ul class="plain-list">
            {review.preferences.map((one) => (
              <li key={`${one.first} ${one.second}`}>
                {words.prefer(
                  { name: names.round(one.first), testers: one.preferFirst },
                  { name: names.round(one.second), testers: one.preferSecond },
                  one.equal,
                )}
                {one.unblinded > 0 && (
                  <span class="outside">{` ${words.unblinded(one.unblinded)}`}</span>
                )}
              </li>
            ))}
          </ul>
        )}
      </section>
      <Agreement {...props} />
    </div>
  );
};
