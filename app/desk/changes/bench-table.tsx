/** Are the new pairs of a round taller, harder or heavier than those of another? As a table. */
import type { RoundComparison } from '../../../core/review/index.ts';
import { d } from '../../words/index.ts';
import { benchTexts } from '../../words/say-change.ts';
import type { TabProps } from '../desk-state.ts';
import { speakerOf } from '../parts/speaker.ts';

export const BenchTable = (props: TabProps & { readonly found: RoundComparison }) => {
  const { bench, measuredLate, earlier, later } = props.found;
  const words = d().changes;
  const speaker = speakerOf(props);
  return (
    <section class="stack">
      <h2>{words.bench}</h2>
      {bench.length === 0 ? (
        <p>{words.noBench}</p>
      ) : (
        <div class="table-wrap" tabIndex={0} role="region" aria-label={words.bench}>
          <table>
            <thead>
              <tr>
                <th scope="col">{d().bench.choose}</th>
                {[earlier, later].map((round) => (
                  <th scope="col" class="right" key={round}>
                    {words.meanOfPairs(speaker.round(round))}
                  </th>
                ))}
                <th scope="col" class="right">
                  {words.difference}
                </th>
                <th scope="col">{d().complaints.proof}</th>
              </tr>
            </thead>
            <tbody>
              {bench.map((change) => {
                const texts = benchTexts(change, speaker);
                return (
                  <tr key={`${change.measure} ${change.site} ${change.unit}`}>
                    <th scope="row">{texts.place}</th>
                    <td class="right">{texts.earlier}</td>
                    <td class="right">{texts.later}</td>
                    <td class="right">{texts.difference}</td>
                    <td>{texts.word}</td>
                  </tr>
                );
              })}
            </tbody>
          </table>
        </div>
      )}
      {measuredLate > 0 && <p class="soft small">{words.measuredLate(measuredLate)}</p>}
    </section>
  );
};
