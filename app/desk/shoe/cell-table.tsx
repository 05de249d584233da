/** Every reported complaint of a round as a table: the same as the map, with intervals, in words. */
import type { Interval } from '../../../core/statistics/index.ts';
import { formatNumber, formatPercent } from '../../parts/format.ts';
import { chanceOf } from '../../words/figures.ts';
import { d, terms } from '../../words/index.ts';
import { Some } from '../parts/some.tsx';
import { evidenceName } from '../../words/say-complaint.ts';
import type { RoundProps } from './round-props.ts';
import { Judged } from '../parts/judged.tsx';

const between = ({ lower, upper }: Interval): string =>
  `${formatPercent(lower)}–${formatPercent(upper)}`;

export const CellTable = ({ round }: RoundProps) => {
  const words = d().complaints;
  const { asked, cells } = round.complaints;
  return (
    <section class="stack">
      <h2>{words.all}</h2>
      <div class="table-wrap" tabIndex={0} role="region" aria-label={words.all}>
        <table>
          <thead>
            <tr>
              <th scope="col">{words.zone}</th>
              <th scope="col">{words.kind}</th>
              <th scope="col">{words.proof}</th>
              <th scope="col" class="right">
                {words.testers}
              </th>
              <th scope="col" class="right">
                {words.twice}
              </th>
              <th scope="col" class="right">
                {words.runs}
              </th>
              <th scope="col" class="right">
                {words.feet}
              </th>
              <th scope="col" class="right">
                {words.severity}
              </th>
            </tr>
          </thead>
          <tbody>
            <Some of={cells} columns={8}>
              {(cell) => (
                <tr key={`${cell.zone} ${cell.kind}`}>
                  <th scope="row">{terms().zones[cell.zone].name}</th>
                  <td>{terms().kinds[cell.kind].name}</td>
                  <td>
                    <Judged word={cell.word} title={terms().evidence[cell.word].meaning}>
                      {evidenceName(cell, { desk: d(), glossary: terms() })}
                    </Judged>
                  </td>
                  <td class="right">{`${cell.testersOnce} / ${asked.testers}`}</td>
                  <td class="right">
                    {cell.testersTwice} <span class="soft small">{between(cell.shareTwice)}</span>
                  </td>
                  <td class="right">
                    {`${cell.runs} / ${asked.runs}`}{' '}
                    <span class="soft small">{between(cell.runShare)}</span>
                  </td>
                  <td class="right">{`${cell.byFoot.left} / ${cell.byFoot.right}`}</td>
                  <td class="right">
                    {cell.severity
                      ? `${formatNumber(cell.severity.mean, 1, 1)} / ${cell.severity.most}`
                      : d().none}
                  </td>
                </tr>
              )}
            </Some>
          </tbody>
        </table>
      </div>
      <ul class="small soft">
        {(['complaint', 'pain'] as const).map((allowed) => {
          const { word, testersUpTo, silenceChance } = round.complaints.unreported[allowed];
          return (
            <li key={allowed}>
              {words.unreported[allowed](
                terms().evidence[word].name,
                asked.runs,
                formatPercent(testersUpTo),
                chanceOf(silenceChance, formatNumber),
              )}
            </li>
          );
        })}
      </ul>
    </section>
  );
};
