/** How does the project stand, at a glance: what to do next, each round, each pair, who is silent. */
import type { RecordId } from '../../core/records/index.ts';
import type { NextStep, Overview as State } from '../../core/review/index.ts';
import { formatDistance } from '../parts/format.ts';
import { d, t, terms } from '../words/index.ts';
import { cellTitle } from '../words/say-complaint.ts';
import { namesIn, useWork, type TabProps } from './desk-state.ts';
import { speakerOf } from './speaker.ts';
import { Judged } from './judged.tsx';

/** More names than this in one line are counted, not read. */
const MOST_NAMES = 6;

/** The screen on which each step is done. */
const placeOf: Readonly<Record<NextStep['step'], string>> = {
  'ask-about-pain': 'pairs',
  'look-at-damage': 'pairs',
  'reach-about-stop-use': 'pairs',
  'decide-what-counts': 'waiting',
  'add-round': 'rounds',
  'add-pairs': 'rounds',
  'add-testers': 'testers',
  'measure-on-arrival': 'bench',
  'hand-out': 'pairs',
  'set-up-phones': 'testers',
  'ask-the-silent': 'testers',
  'write-findings': 'complaints',
  'assign-findings': 'findings',
  'judge-findings': 'findings',
  'set-limits': 'brief',
  'settle-verdict': 'verdict',
  'ask-about-odd-runs': 'pairs',
};

export const Overview = (props: TabProps) => {
  const { review, records } = props;
  const project = review.project.id;
  const state = useWork((desk) => desk.overview(project), records, [project]);
  if (!state) return <p class="soft">{t().loading}</p>;
  return (
    <>
      <Next {...props} state={state} />
      <Rounds {...props} state={state} />
      <div class="two-columns">
        <Hands {...props} />
        <Silent {...props} state={state} />
      </div>
    </>
  );
};

type Props = TabProps & { state: State };

const some = (names: readonly string[]): string =>
  names.length <= MOST_NAMES
    ? names.join(', ')
    : `${names.slice(0, MOST_NAMES).join(', ')} ${d().overview.more(names.length - MOST_NAMES)}`;

const Next = (props: Props) => {
  const { review, records, state } = props;
  const words = d().overview;
  const names = namesIn(review, records);
  const speaker = speakerOf(props);
  const about = (step: NextStep): string => {
    if ('testers' in step) return some(step.testers.map(names.tester));
    if ('pairs' in step) return some(step.pairs.map(names.pair));
    if ('cells' in step) return some(step.cells.map((cell) => cellTitle(cell, speaker)));
    return '';
  };
  return (
    <section class="sheet">
      <h2>{words.next}</h2>
      {state.next.length === 0 ? (
        <p>{words.nothing}</p>
      ) : (
        <ol class="next-steps">
          {state.next.map((step) => (
            <li key={step.step} class={`next-${step.step}`}>
              <a href={`/desk/${review.project.id}/${placeOf[step.step]}`}>
                {words.steps[step.step](step.count)}
              </a>
              {about(step) && <span class="soft small"> {about(step)}</span>}
            </li>
          ))}
        </ol>
      )}
    </section>
  );
};

const Rounds = (props: Props) => {
  const { review, state } = props;
  const words = d().overview;
  const speaker = speakerOf(props);
  if (state.rounds.length === 0) return null;
  return (
    <section>
      <h2>{words.rounds}</h2>
      <div class="table-wrap" tabIndex={0} role="region" aria-label={words.rounds}>
        <table>
          <thead>
            <tr>
              <th scope="col">{words.round}</th>
              <th scope="col">{words.verdict}</th>
              <th scope="col">{words.recurs}</th>
              <th scope="col" class="right">
                {words.pairs}
              </th>
              <th scope="col" class="right">
                {words.out}
              </th>
              <th scope="col" class="right">
                {words.runs}
              </th>
              <th scope="col" class="right">
                {words.distance}
              </th>
              <th scope="col" class="right">
                {words.farthest}
              </th>
            </tr>
          </thead>
          <tbody>
            {state.rounds.map((round) => (
              <tr key={round.id}>
                <th scope="row">
                  {round.name}
                  <br />
                  <span class="soft small">{terms().stages[round.stage]}</span>
                </th>
                <td>
                  <a href={`/desk/${review.project.id}/verdict`}>
                    <Judged word={round.word}>{terms().holds[round.word]}</Judged>
                  </a>
                </td>
                <td>
                  {round.runs === 0
                    ? words.nobodyRan
                    : round.recurs.length === 0 && !round.painRecurs
                      ? words.nothingProven
                      : some([
                          ...(round.painRecurs ? [d().pain.title] : []),
                          ...round.recurs.map((cell) => cellTitle(cell, speaker)),
                        ])}
                </td>
                <td class="right">{round.pairs}</td>
                <td class="right">{round.out}</td>
                <td class="right">{round.runs}</td>
                <td class="right">{formatDistance(round.distanceM)}</td>
                <td class="right">{formatDistance(round.farthestM)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
};

/** Pairs that are out, most worn first: where each is and how far it has come. */
const Hands = ({ review, records }: TabProps) => {
  const words = d().overview;
  const names = namesIn(review, records);
  const out = review.pairs
    .filter(({ holder }) => holder !== null)
    .sort((a, b) => b.totalM - a.totalM);
  return (
    <section>
      <h2>{words.inHands}</h2>
      {out.length === 0 ? (
        <p>{words.nobodyHolds}</p>
      ) : (
        <ul class="plain-list">
          {out.slice(0, 2 * MOST_NAMES).map(({ id, holder, totalM, round, stopUse }) => (
            <li key={id} class="row row-apart">
              <span>
                <strong>{names.pair(id)}</strong> {names.tester(holder as RecordId)}{' '}
                <span class="soft small">{names.round(round)}</span>
                {stopUse && <span class="outside"> {d().pairs.stopUse}</span>}
              </span>
              <span>{formatDistance(totalM)}</span>
            </li>
          ))}
        </ul>
      )}
      {out.length > 2 * MOST_NAMES && (
        <p class="soft small">
          <a href={`/desk/${review.project.id}/pairs`}>{words.more(out.length - 2 * MOST_NAMES)}</a>
        </p>
      )}
    </section>
  );
};

const Silent = ({ review, records, state }: Props) => {
  const words = d().overview;
  const names = namesIn(review, records);
  return (
    <section>
      <h2>{words.silent}</h2>
      {state.silent.length === 0 ? (
        <p>{words.nobodySilent}</p>
      ) : (
        <ul class="plain-list">
          {state.silent.slice(0, 2 * MOST_NAMES).map(({ tester, pairs, days }) => (
            <li key={tester} class="row row-apart">
              <span>
                <strong>{names.tester(tester)}</strong>{' '}
                <span class="soft small">{pairs.map(names.pair).join(', ')}</span>
              </span>
              <span>{words.days(days)}</span>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
};
