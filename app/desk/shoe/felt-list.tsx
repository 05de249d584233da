/** Which complaint, who, since when, how sure: a line each that leads to the zone's page, the most pressing first. */
import { useState } from 'preact/hooks';
import { surenessOf } from '../../../core/complaints/index.ts';
import { sureIn } from '../../../core/headlines/index.ts';
import type { RoundFelt, ShoeComplaint } from '../../../core/review/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { IntervalLine } from '../../parts/charts/interval-line.tsx';
import { formatDate } from '../../parts/format.ts';
import { p, terms } from '../../words/index.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { linksOf } from '../frame/route.ts';
import { roundDistance } from '../frame/say.ts';
import { SureStamp } from '../frame/stamp.tsx';

/** So many lines at first. */
const FIRST = 8;
/** Rounds that have a column each; of more the latest. */
const MOST_ROUNDS = 3;
/** The lines end at a share that is rarely passed; one that is longer makes all lines longer. */
const LEAST_END = 0.4;

/** On fewer metres than this a pair is new. */
const NEW_M = 1000;

const countsOf = (felt: RoundFelt): string => {
  const words = p().shoe;
  return felt.askedRuns === 0
    ? words.nobodyAsked
    : felt.runs === 0
      ? words.nobody
      : words.counts(felt.testers, felt.askedTesters, felt.runs);
};

const Line = (
  props: TabProps & { readonly one: ShoeComplaint; readonly shown: number; readonly end: number },
) => {
  const { review, records, one, shown, end } = props;
  const words = p().shoe;
  const names = namesIn(review, records);
  const links = linksOf(review.project.id);
  const { zone, kind, side, rounds, surest, since, mostly, painLike } = one;
  const foot = side === 'right' ? 'right' : 'left';
  return (
    <li class={painLike ? 'felt felt-pain' : 'felt'}>
      <div class="felt-what">
        <a href={`${links.zone(foot, zone)}?kind=${kind}`}>
          {p().frame.feltTitle(terms().kinds[kind].name, terms().zones[zone].name)}
        </a>
        <span class="soft small">
          {mostly
            ? words.mostly(names.tester(mostly.tester), mostly.runs, mostly.of)
            : words.side[side]}
        </span>
      </div>
      {rounds.slice(-shown).map((felt) => (
        <div class="felt-round" key={felt.round}>
          <span class="felt-name small soft">{names.round(felt.round)}</span>
          <IntervalLine
            range={[0, end]}
            width={110}
            value={felt.share}
            interval={felt.interval}
            limit={felt.allowedRate}
            tone={sureIn(felt) === 'clear' ? 'against' : felt.runs === 0 ? 'soft' : 'plain'}
            says={words.intervalSays(names.round(felt.round), countsOf(felt))}
          />
          <span class="small" aria-hidden="true">
            {countsOf(felt)}
          </span>
        </div>
      ))}
      <div class="felt-since small">
        {since && (
          <>
            <a href={links.run(since.run)}>{formatDate(since.atMs)}</a>{' '}
            <span class="soft">
              {since.pairM < NEW_M ? words.sinceNew : words.sinceKm(roundDistance(since.pairM))}
            </span>
          </>
        )}
      </div>
      <div class="felt-sure">
        <SureStamp word={surenessOf(surest.word, surest.testers)} />{' '}
        <span class="soft small">{names.round(surest.round)}</span>
      </div>
    </li>
  );
};

export const FeltList = (props: TabProps & { readonly complaints: readonly ShoeComplaint[] }) => {
  const { review, complaints } = props;
  const words = p().shoe;
  const [all, setAll] = useState(false);
  if (complaints.length === 0) return <p>{words.none}</p>;
  const shown = Math.min(MOST_ROUNDS, review.rounds.length);
  const ends = complaints.flatMap(({ rounds }) => rounds.map(({ interval }) => interval?.[1] ?? 0));
  const end = Math.min(1, Math.max(LEAST_END, ...ends));
  return (
    <section class="felt-section" aria-label={words.complaints}>
      <ol class="felt-list" data-rounds={shown}>
        <li class="felt felt-head small soft" aria-hidden="true">
          <span>{words.complaint}</span>
          {review.rounds.slice(-shown).map(({ id, name }) => (
            <span key={id}>{name}</span>
          ))}
          <span>{words.since}</span>
          <span>{words.sure}</span>
        </li>
        {complaints.slice(0, all ? undefined : FIRST).map((one) => (
          <Line key={`${one.zone} ${one.kind}`} {...props} {...{ one, shown, end }} />
        ))}
      </ol>
      {!all && complaints.length > FIRST && (
        <Button kind="quiet" onClick={() => setAll(true)}>
          {words.all(complaints.length)}
        </Button>
      )}
    </section>
  );
};
