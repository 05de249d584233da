/** The arrival check against the blueprint: what is in and out of tolerance, and what the gauge cannot decide. */
import { useState } from 'preact/hooks';
import type { ConformityWord } from '../../../core/rounds/index.ts';
import type { Deviation, SideDifference } from '../../../core/review/index.ts';
import { formatNumber } from '../../parts/format.ts';
import { TableHead } from './table-head.tsx';
import { chanceOf, signed } from '../../words/figures.ts';
import { d, t, terms } from '../../words/index.ts';
import { decisionInWords, summaryLine } from '../../words/say-blueprint.ts';
import { placeName } from '../../words/say-place.ts';
import { namesIn, type TabProps } from '../desk-state.ts';
import { Some } from '../parts/some.tsx';
import { speakerOf } from '../parts/speaker.ts';

/** What wants to be seen comes first. */
const order: readonly ConformityWord[] = [
  'not-conforming',
  'outside',
  'undecided',
  'inside',
  'conforming',
];
const wantsLook = (word: ConformityWord): boolean => order.indexOf(word) < 3;

/** The rows to show, the worst first. */
const rowsOf = <T extends { readonly word: ConformityWord }>(
  list: readonly T[],
  all: boolean,
): readonly T[] =>
  list
    .filter(({ word }) => all || wantsLook(word))
    .sort((a, b) => order.indexOf(a.word) - order.indexOf(b.word));

const write = (value: number): string => signed(value, (size) => formatNumber(size, 2, 2));

/** A decision carries its colour only where it is one against the pair. */
const classOf = (word: ConformityWord): string =>
  word === 'not-conforming' || word === 'outside' ? 'outside' : '';

export const Deviations = (props: TabProps) => {
  const words = d().blueprint;
  const [all, setAll] = useState(false);
  const { deviations, sides } = props.review;
  const speaker = speakerOf(props);
  return (
    <section class="stack">
      <h2>{d().bench.deviations}</h2>
      {deviations.length === 0 ? (
        <p>{d().bench.noBlueprint}</p>
      ) : (
        <>
          <p>{summaryLine(deviations, speaker)}</p>
          <label class="row no-print">
            <input
              type="checkbox"
              class="tick"
              checked={all}
              onChange={(event) => setAll(event.currentTarget.checked)}
            />
            {words.showAll}
          </label>
          <Readings {...props} rows={rowsOf(deviations, all)} />
          <h3>{words.sides}</h3>
          <Sides {...props} all={sides} rows={rowsOf(sides, all)} />
          <p class="soft small">{`${words.how} ${words.sidesHow}`}</p>
        </>
      )}
    </section>
  );
};

const Readings = ({ records, review, rows }: TabProps & { rows: readonly Deviation[] }) => {
  const words = d().blueprint;
  const names = namesIn(review, records);
  const speaker = speakerOf({ records, review });
  if (rows.length === 0) return <p>{words.nothingOut}</p>;
  return (
    <div class="table-wrap" tabIndex={0} role="region" aria-label={d().bench.deviations}>
      <table class="compact">
        <TableHead
          columns={[
            { title: d().bench.pair },
            { title: d().bench.choose },
            { title: d().bench.nominal, right: true },
            { title: words.reading, right: true },
            { title: d().bench.deviation, right: true },
            { title: words.uncertainty, right: true },
            { title: words.guard, right: true },
            { title: words.chance, right: true },
            { title: words.decision },
          ]}
        />
        <tbody>
          <Some of={rows} columns={9}>
            {(one) => (
              <tr key={`${one.pair} ${one.measure} ${one.site} ${one.foot} ${one.unit}`}>
                <th scope="row">{names.code(one.pair)}</th>
                <td>{d().joined.clauses([placeName(one, speaker), t().foot[one.foot]])}</td>
                <td class="right">
                  {`${formatNumber(one.nominal, 2)} ${terms().units[one.unit]} `}
                  <span class="soft small">{`(${write(one.lower)} … ${write(one.upper)})`}</span>
                </td>
                <td class="right">
                  {formatNumber(one.value, 2)}
                  {one.readings > 1 && (
                    <span class="soft small">{` ${words.readings(one.readings)}`}</span>
                  )}
                </td>
                <td class={`right ${one.inside ? '' : 'outside'}`}>{write(one.deviation)}</td>
                <td class="right">
                  {one.uncertainty === null ? (
                    words.notKnown
                  ) : (
                    <>
                      {formatNumber(one.uncertainty, 3)}
                      {one.from && <div class="soft small">{words.from[one.from]}</div>}
                    </>
                  )}
                </td>
                <td class="right">{one.guard === null ? d().none : formatNumber(one.guard, 2)}</td>
                <td class="right">
                  {one.chance === null ? d().none : chanceOf(one.chance, formatNumber)}
                </td>
                <td class={`decision ${classOf(one.word)}`}>{decisionInWords(one, speaker)}</td>
              </tr>
            )}
          </Some>
        </tbody>
      </table>
    </div>
  );
};

const Sides = (
  props: TabProps & { all: readonly SideDifference[]; rows: readonly SideDifference[] },
) => {
  const words = d().blueprint;
  const names = namesIn(props.review, props.records);
  const speaker = speakerOf(props);
  if (props.all.length === 0) return <p>{words.noSides}</p>;
  if (props.rows.length === 0) return <p>{words.sidesFine(props.all.length)}</p>;
  return (
    <div class="table-wrap" tabIndex={0} role="region" aria-label={words.sides}>
      <table class="compact">
        <TableHead
          columns={[
            { title: d().bench.pair },
            { title: d().bench.choose },
            { title: words.difference, right: true },
            { title: words.allowed, right: true },
            { title: words.uncertainty, right: true },
            { title: words.chance, right: true },
            { title: words.decision },
          ]}
        />
        <tbody>
          <Some of={props.rows} columns={7}>
            {(one) => (
              <tr key={`${one.pair} ${one.measure} ${one.site} ${one.unit}`}>
                <th scope="row">{names.code(one.pair)}</th>
                <td>{placeName(one, speaker)}</td>
                <td class="right">{`${write(one.difference)} ${terms().units[one.unit]}`}</td>
                <td class="right">
                  {`± ${formatNumber(one.allowed, 2)} `}
                  <span class="soft small">{words.allowedFrom[one.allowedFrom]}</span>
                </td>
                <td class="right">
                  {one.uncertainty === null ? words.notKnown : formatNumber(one.uncertainty, 3)}
                </td>
                <td class="right">
                  {one.chance === null ? d().none : chanceOf(one.chance, formatNumber)}
                </td>
                <td class={`decision ${classOf(one.word)}`}>{decisionInWords(one, speaker)}</td>
              </tr>
            )}
          </Some>
        </tbody>
      </table>
    </div>
  );
};
