/** How far a change came: from nothing to what was asked for, with the range that the readings leave. */
import type { PlaceArrival } from '../../../core/review/index.ts';
import { turned } from '../../../core/rounds/index.ts';
import { arrivalFigures } from '../../words/say-arrival.ts';
import type { Speaker } from '../../words/say-complaint.ts';

const [WIDTH, MID] = [240, 9];
const ROOM = 1.12;

/** Nothing is drawn without an amount or without an interval. */
export const ArrivalBar = ({
  place,
  words,
}: {
  readonly place: PlaceArrival;
  readonly words: Speaker;
}) => {
  const { measured, wanted } = place;
  const both = arrivalFigures(place, words);
  if (!measured?.interval || wanted === null || !both) return null;
  const sign = wanted < 0 ? -1 : 1;
  const { lower, upper } = turned(measured.interval, sign);
  const [amount, by] = [Math.abs(wanted), measured.difference * sign];
  const least = Math.min(0, lower) * ROOM;
  const most = Math.max(amount, upper) * ROOM;
  const x = (value: number) => 4 + ((value - least) / (most - least)) * (WIDTH - 8);
  return (
    <svg
      class={`arrival-bar arrival-${place.word}`}
      viewBox={`0 0 ${WIDTH} 30`}
      role="img"
      aria-label={words.desk.arrival.line(
        both.measured,
        both.wanted,
        words.desk.arrival.words[place.word],
      )}
    >
      <path class="axis" d={`M${x(least)},${MID}H${x(most)}`} />
      <path class="done" d={`M${x(0)},${MID}H${x(by)}`} />
      <path class="range" d={`M${x(lower)},${MID}H${x(upper)}`} />
      <path class="wanted" d={`M${x(amount)},1V17`} />
      <path class="nought" d={`M${x(0)},4V14`} />
      <circle cx={x(by)} cy={MID} r="4" />
      <text x={x(0)} y="27" text-anchor={least < 0 ? 'middle' : 'start'}>
        0
      </text>
      <text x={x(amount)} y="27" text-anchor={upper > amount ? 'middle' : 'end'}>
        {both.wanted}
      </text>
    </svg>
  );
};
