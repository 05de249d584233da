/** Where each pair is and how far it has gone; what to ask about; hand out, take back, withdraw. */
import { useState } from 'preact/hooks';
import type { RecordId, RecordOf, Surface } from '../../core/records/index.ts';
import { isOutOfTolerance, type PairSummary } from '../../core/review/index.ts';
import { Bars } from '../parts/charts/bars.tsx';
import { Button } from '../parts/controls/controls.tsx';
import {
  formatDate,
  formatDistance,
  formatNumber,
  formatPercent,
  formatSize,
} from '../parts/format.ts';
import { toInstant } from '../parts/instant.ts';
import { d, terms } from '../words/index.ts';
import { toleranceInWords } from '../words/say-blueprint.ts';
import { namesIn, type TabProps } from './desk-state.ts';
import {
  saveFromForm,
  saveRecord,
  SelectField,
  SmallForm,
  TextField,
  Unfold,
} from './form-parts.tsx';
import { HandOuts } from './hand-outs.tsx';
import { OverTime } from './over-time.tsx';
import { Some } from './some.tsx';
import { ToAsk } from './to-ask.tsx';

/** Bars for more pairs than this are a wall; the latest rounds' are drawn. */
const MOST_BARS = 40;

const surfacesInWords = (pair: PairSummary): readonly string[] =>
  Object.entries(pair.bySurface)
    .sort(([, a], [, b]) => b - a)
    .map(([surface, distance]) => {
      const name =
        surface === 'unknown' ? d().pairs.unknownSurface : terms().surfaces[surface as Surface];
      return `${name} ${formatDistance(distance)}`;
    });

/** Below the pair's code, so that it is in view however narrow the screen. */
const PairNotes = ({ pair }: { readonly pair: PairSummary }) => {
  const notes = [
    ...(pair.stopUse ? [d().pairs.stopUse] : []),
    toleranceInWords(pair.outOfTolerance, d()),
  ].filter(Boolean);
  const isOut = pair.stopUse || isOutOfTolerance(pair.outOfTolerance);
  return notes.map((note) => (
    <div key={note} class={`pair-note small${isOut ? ' outside' : ''}`}>
      {note}
    </div>
  ));
};

export const Pairs = ({ records, review }: TabProps) => {
  const words = d().pairs;
  const names = namesIn(review, records);
  const { brief } = review.project;
  if (review.pairs.length === 0) return <p>{words.none}</p>;
  return (
    <>
      <ToAsk records={records} review={review} />
      <Bars
        title={words.title}
        full={{ value: brief.distanceM, label: words.full(formatDistance(brief.distanceM)) }}
        bars={review.pairs.slice(-MOST_BARS).map((pair) => ({
          key: pair.id,
          name: pair.code,
          value: pair.totalM,
          label: formatDistance(pair.totalM),
        }))}
      />
      {review.pairs.length > MOST_BARS && (
        <p class="soft small">{d().notPrinted(review.pairs.length - MOST_BARS)}</p>
      )}
      <div class="table-wrap" tabIndex={0} role="region" aria-label={words.title}>
        <table>
          <thead>
            <tr>
              <th scope="col">{words.pair}</th>
              <th scope="col">{words.round}</th>
              <th scope="col">{words.size}</th>
              <th scope="col" class="right">
                {words.distance}
              </th>
              <th scope="col" class="right">
                {words.ofBrief}
              </th>
              <th scope="col" class="right">
                {words.runs}
              </th>
              <th scope="col">{words.surfaces}</th>
              <th scope="col" class="right">
                {words.steps}
              </th>
              <th scope="col" class="right">
                {words.load}
              </th>
              <th scope="col">{words.holder}</th>
              <th scope="col">{words.lastRun}</th>
            </tr>
          </thead>
          <tbody>
            <Some of={review.pairs} columns={11}>
              {(pair) => (
                <tr key={pair.id}>
                  <th scope="row">
                    {pair.code}
                    <PairNotes pair={pair} />
                  </th>
                  <td>{names.round(pair.round)}</td>
                  <td>{formatSize(pair.sizeMm)}</td>
                  <td class="right">{formatDistance(pair.totalM)}</td>
                  <td class="right">{formatPercent(pair.shareOfBrief)}</td>
                  <td class="right">{pair.runs}</td>
                  <td class="one-line">
                    {surfacesInWords(pair).map((surface) => (
                      <div key={surface}>{surface}</div>
                    ))}
                  </td>
                  <td class="right">
                    {stepsInWords(pair)}
                    <div class="soft small">{stepsFrom(pair)}</div>
                  </td>
                  <td class="right">
                    {pair.load.loadKnownM > 0 ? formatNumber(pair.load.loadKN / 1000, 1) : d().none}
                  </td>
                  <td>
                    {names.tester(pair.holder)}
                    {pair.holderSilentDays !== null && (
                      <div class="outside small">{d().testers.silent(pair.holderSilentDays)}</div>
                    )}
                  </td>
                  <td class="one-line">
                    {pair.lastRunMs === null ? d().none : formatDate(pair.lastRunMs)}
                  </td>
                </tr>
              )}
            </Some>
          </tbody>
        </table>
      </div>
      <OverTime records={records} review={review} />
      <div class="two-columns">
        <HandOuts records={records} review={review} />
        <Withdraw records={records} review={review} />
      </div>
    </>
  );
};

const stepsInWords = ({ load }: PairSummary): string =>
  load.stepsPerShoe > 0 ? formatNumber(Math.round(load.stepsPerShoe / 100) * 100, 0) : d().none;

/** How the steps are known, in percent of the distance. */
const stepsFrom = ({ load }: PairSummary): string => {
  const { cadence, 'height-and-pace': regression, unknown } = load.stepsFrom;
  const whole = cadence + regression + unknown;
  if (load.stepsPerShoe === 0 || whole === 0) return '';
  const percent = (part: number) => Math.round((100 * part) / whole);
  return d().pairs.stepsFrom(percent(cadence), percent(regression), percent(unknown));
};

const pairOptions = (pairs: readonly PairSummary[]) =>
  pairs.map(({ id, code }) => ({ value: id, label: code }));

const Withdraw = ({ records, review }: TabProps) => {
  const words = d().pairs;
  const names = namesIn(review, records);
  const standing = records['stop-use'].filter(
    ({ body }) => body.project === review.project.id && body.until === undefined,
  );
  const [target, setTarget] = useState<RecordId | ''>('');
  const [reason, setReason] = useState('');
  const rounds = review.rounds.map(({ id, name }) => ({ value: id, label: name }));
  /** How many of those who hold a withdrawn pair now have said that they read it. */
  const readBy = (stop: RecordOf<'stop-use'>): string => {
    const holders = new Set(
      review.pairs.flatMap(({ id, holder }) =>
        holder !== null && stop.body.pairs.includes(id) ? [holder] : [],
      ),
    );
    const read = records.acknowledgement.filter(
      ({ body }) => body.stopUse === stop.revision.id && holders.has(body.tester),
    );
    return words.readBy(new Set(read.map(({ body }) => body.tester)).size, holders.size);
  };
  const lift = ({ body, revision }: RecordOf<'stop-use'>) =>
    saveRecord('stop-use', { ...body, until: toInstant(Date.now()) }, revision.id);
  return (
    <div class="stack">
      <Unfold label={words.stop}>
        {(close) => (
          <SmallForm
            save={async () => {
              if (target === '' || reason.trim() === '') return d().missing;
              const pairs = review.pairs
                .filter(({ id, round }) => id === target || round === target)
                .map(({ id }) => id);
              const saved = await saveFromForm('stop-use', {
                project: review.project.id,
                pairs,
                reason: reason.trim(),
                from: toInstant(Date.now()),
              });
              if (typeof saved === 'string') return saved;
              close();
              return null;
            }}
          >
            <SelectField
              label={`${words.pair} / ${words.round}`}
              value={target}
              options={[...rounds, ...pairOptions(review.pairs)]}
              onChange={setTarget}
            />
            <TextField label={words.stopReason} value={reason} onInput={setReason} />
          </SmallForm>
        )}
      </Unfold>
      <ul class="plain-list">
        {standing.map((stop) => (
          <li class="row row-apart" key={stop.revision.id}>
            <span class="grow">
              {`${stop.body.pairs.map(names.pair).join(', ')}: ${stop.body.reason}`}{' '}
              <span class="soft">{readBy(stop)}</span>
            </span>
            <Button kind="quiet" onClick={() => void lift(stop)}>
              {words.lift}
            </Button>
          </li>
        ))}
      </ul>
    </div>
  );
};
