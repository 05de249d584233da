/** What a round's blueprint asks for: every dimension with what is allowed, the last, and the layers. */
import type { Dimension, RecordId } from '../../../core/records/index.ts';
import { formatNumber } from '../../parts/format.ts';
import { signed } from '../../words/figures.ts';
import { clauses, listed, p, t, terms } from '../../words/index.ts';
import { lastLine } from '../../words/say-blueprint.ts';
import { midsoleLine, outsoleLine } from '../../words/say-sole.ts';
import { placeName } from '../../words/say-place.ts';
import type { TabProps } from '../desk-state.ts';
import { Some } from '../parts/some.tsx';
import { speakerOf } from '../parts/speaker.ts';

const MOST_ROWS = 12;

export const RoundBlueprint = (props: TabProps & { readonly round: RecordId }) => {
  const { records, round } = props;
  const words = p().rounds;
  const speaker = speakerOf(props);
  const body = records.round.find(({ revision }) => revision.id === round)?.body;
  if (!body) return null;
  const figure = (value: number, { unit }: Dimension) =>
    `${formatNumber(value, 2)} ${terms().units[unit]}`;
  const from = (value: number) => signed(value, (size) => formatNumber(size, 2));
  return (
    <section class="stack" aria-label={words.blueprint}>
      <h2>{words.blueprint}</h2>
      {body.blueprint.length === 0 ? (
        <p class="soft">{words.noBlueprint}</p>
      ) : (
        <div class="table-wrap" tabIndex={0} role="region" aria-label={words.blueprint}>
          <table class="place-table">
            <thead>
              <tr>
                <th scope="col">{words.place}</th>
                <th scope="col" class="right">
                  {words.nominal}
                </th>
                <th scope="col" class="right">
                  {words.allowed}
                </th>
                <th scope="col" class="right">
                  {words.leftRight}
                </th>
              </tr>
            </thead>
            <tbody>
              <Some of={body.blueprint} columns={4} step={MOST_ROWS}>
                {(one) => (
                  <tr key={`${one.measure} ${one.site} ${one.unit} ${one.foot ?? ''}`}>
                    <th scope="row">
                      {clauses(placeName(one, speaker), ...(one.foot ? [t().foot[one.foot]] : []))}
                    </th>
                    <td class="right">{figure(one.nominal, one)}</td>
                    <td class="right">{`${from(one.lower)} … ${from(one.upper)}`}</td>
                    <td class="right">
                      {one.leftRight === undefined ? '' : figure(one.leftRight, one)}
                    </td>
                  </tr>
                )}
              </Some>
            </tbody>
          </table>
        </div>
      )}
      {[midsoleLine(body, speaker), outsoleLine(body, speaker)].map(
        (line) => line !== null && <p key={line}>{line}</p>,
      )}
      {body.last && <p>{lastLine(body.last, speaker)}</p>}
      {body.layers && body.layers.length > 0 && (
        <p>
          {listed(
            body.layers.map(({ zone, count }) => `${zone} ${terms().zones[zone].name} ${count}`),
          )}
        </p>
      )}
      {body.words && <p>{body.words}</p>}
    </section>
  );
};
