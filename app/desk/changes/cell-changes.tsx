/** What came with a round, and every complaint of two rounds beside each other. */
import type { RoundComparison } from '../../../core/review/index.ts';
import type { RoundCount } from '../../../core/rounds/index.ts';
import { formatPercent } from '../../parts/format.ts';
import { d, terms } from '../../words/index.ts';
import { pointsInWords, riseLine } from '../../words/say-change.ts';
import type { TabProps } from '../desk-state.ts';
import { Some } from '../parts/some.tsx';
import { speakerOf } from '../parts/speaker.ts';
import { Judged } from '../parts/judged.tsx';

type Props = TabProps & { readonly found: RoundComparison };

export const NewComplaints = (props: Props) => {
  const words = d().changes;
  const speaker = speakerOf(props);
  const named = props.found.cells.filter(({ word }) => word !== null);
  return (
    <section class="stack">
      <h2>{words.newTitle}</h2>
      {named.length === 0 ? (
        <p>{words.nothingNew}</p>
      ) : (
        <ul class="plain-list stack">
          <Some of={named} step={12}>
            {(cell) => (
              <li key={`${cell.zone} ${cell.kind}`}>
                <Judged word={cell.word ?? 'look'}>{words.newWords[cell.word ?? 'look']}</Judged>{' '}
                {riseLine(cell, speaker)}
              </li>
            )}
          </Some>
        </ul>
      )}
      <p class="soft small">{words.newHow}</p>
    </section>
  );
};

const share = ({ runs, reported }: RoundCount): string =>
  runs === 0 ? d().complaints.unasked : `${reported} / ${runs} (${formatPercent(reported / runs)})`;

export const CellChanges = (props: Props) => {
  const { found } = props;
  const words = d().changes;
  const speaker = speakerOf(props);
  if (found.cells.length === 0) return <p>{words.noCells}</p>;
  const rounds = [found.earlier, found.later].map(speaker.round);
  return (
    <section class="stack">
      <h2>{words.allCells}</h2>
      <div class="table-wrap" tabIndex={0} role="region" aria-label={words.allCells}>
        <table>
          <thead>
            <tr>
              <th scope="col">{d().complaints.zone}</th>
              <th scope="col">{d().complaints.kind}</th>
              {rounds.flatMap((round) =>
                [words.testersOf(round), words.runsOf(round)].map((title) => (
                  <th scope="col" class="right" key={title}>
                    {title}
                  </th>
                )),
              )}
              <th scope="col" class="right">
                {words.rise}
              </th>
            </tr>
          </thead>
          <tbody>
            <Some of={found.cells} columns={7}>
              {(cell) => (
                <tr key={`${cell.zone} ${cell.kind}`}>
                  <th scope="row">{terms().zones[cell.zone].name}</th>
                  <td>{terms().kinds[cell.kind].name}</td>
                  {[cell.earlier, cell.later].map((count, at) => [
                    <td class="right" key={`${at} testers`}>
                      {`${count.reporters} / ${count.testers}`}
                    </td>,
                    <td class="right" key={`${at} runs`}>
                      {share(count)}
                    </td>,
                  ])}
                  <td class="right">
                    {cell.change ? pointsInWords(cell.change, speaker) : d().none}
                  </td>
                </tr>
              )}
            </Some>
          </tbody>
        </table>
      </div>
    </section>
  );
};
