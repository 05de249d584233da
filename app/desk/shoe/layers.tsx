/** Layers of material of a round's upper against where it was hot and wet. */
import { formatNumber, formatPercent } from '../../parts/format.ts';
import { d, terms } from '../../words/index.ts';
import { layersLine } from '../../words/say-blueprint.ts';
import type { RoundProps } from './round-props.ts';
import { useWork } from '../desk-state.ts';
import { speakerOf } from '../parts/speaker.ts';

export const LayersAgainstHeat = (props: RoundProps) => {
  const words = d().blueprint;
  const { records, review, round } = props;
  const answer = useWork(
    async (desk) => ({ look: await desk.layers(review.project.id, round.id) }),
    records,
    [review.project.id, round.id],
  );
  if (!answer) return null;
  const { look } = answer;
  const interval = ({ lower, upper }: { readonly lower: number; readonly upper: number }) =>
    `(${formatPercent(lower)} … ${formatPercent(upper)})`;
  return (
    <section class="stack">
      <h2>{words.layersTitle}</h2>
      {!look ? (
        <p>{words.layersNone}</p>
      ) : (
        <>
          <p>
            {look.askedRuns === 0
              ? words.layersNobody
              : words.layersAsked(look.askedRuns, look.askedTesters)}
          </p>
          <p>{layersLine(look, speakerOf(props))}</p>
          <div class="table-wrap" tabIndex={0} role="region" aria-label={words.layersTitle}>
            <table>
              <thead>
                <tr>
                  <th scope="col">{words.layersZone}</th>
                  <th scope="col" class="right">
                    {words.layersCount}
                  </th>
                  <th scope="col" class="right">
                    {words.layersRuns}
                  </th>
                  <th scope="col" class="right">
                    {words.layersTesters}
                  </th>
                </tr>
              </thead>
              <tbody>
                {look.zones.map(({ zone, layers, runs, runShare, testers, testerShare }) => (
                  <tr key={zone}>
                    <th scope="row">{`${zone} ${terms().zones[zone].name}`}</th>
                    <td class="right">{formatNumber(layers, 0)}</td>
                    <td class="right">
                      {runShare
                        ? `${runs}/${look.askedRuns} ${interval(runShare)}`
                        : words.layersNobody}
                    </td>
                    <td class="right">
                      {testerShare
                        ? `${testers}/${look.askedTesters} ${interval(testerShare)}`
                        : words.layersNobody}
                    </td>
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
        </>
      )}
    </section>
  );
};
