/** The shoe with its places, and beside it what each person says of each: tight to the left, loose to the right. */
import { viewBox, type FitPlace } from '../../../core/foot/index.ts';
import {
  agreementOf,
  answerOf,
  type Answer,
  type FeetLooked,
  type Fitter,
  type PlaceAgreement,
} from '../../../core/fitting/index.ts';
import { ShoeDrawing } from '../../parts/foot-map/shoe-drawing.tsx';
import { formatNumber, formatSize } from '../../parts/format.ts';
import { p, terms } from '../../words/index.ts';
import { fitterName } from './names.ts';
import type { SessionProps } from './session-props.ts';

/** Where each place lies on a left shoe as it is drawn, in the units of the drawing. Judgement. */
const spots: Readonly<Record<FitPlace, readonly [x: number, y: number]>> = {
  length: [112, 34],
  'toe-height': [100, 84],
  'toe-width': [42, 112],
  ball: [34, 172],
  instep: [100, 236],
  heel: [103, 436],
  collar: [140, 346],
};

const MM_WIDE = 4;
/** Further off is drawn as far as this; the figure beside it says how far. */
const MOST_MM = 9;
/** Off without an estimate. */
const UNSAID_MM = 2;
const CELL = { width: 108, height: 24, middle: 54 } as const;

const Cell = ({ answer, place }: { readonly answer: Answer | null; readonly place: FitPlace }) => {
  const words = p().fitting;
  const said = terms().fitPlaces[place];
  if (answer === null) return <span class="soft small">{words.says.none}</span>;
  const { fit, mm } = answer;
  const label = words.cell(
    fit === 'right' ? words.legend.right : said[fit],
    mm === null ? null : formatNumber(mm, 1),
  );
  const long = MM_WIDE * Math.min(MOST_MM, mm ?? UNSAID_MM);
  const { width, height, middle } = CELL;
  const isLittle = fit === 'little';
  return (
    <svg class="fit-cell" viewBox={`0 0 ${width} ${height}`} role="img" aria-label={label}>
      <line class="fit-axis" x1={middle} x2={middle} y1={2} y2={height - 2} />
      {fit === 'right' ? (
        <circle class="fit-right" cx={middle} cy={height / 2} r={4.5} />
      ) : (
        <>
          <rect
            class={`fit-bar fit-${fit}${mm === null ? ' fit-unsaid' : ''}`}
            x={isLittle ? middle - long : middle}
            y={5}
            width={long}
            height={height - 10}
          />
          {mm !== null && (
            <text
              x={isLittle ? middle - long - 4 : middle + long + 4}
              y={height / 2 + 4}
              text-anchor={isLittle ? 'end' : 'start'}
            >
              {formatNumber(mm, 1)}
            </text>
          )}
        </>
      )}
    </svg>
  );
};

const mostSay = ({ place, word, said, answered }: PlaceAgreement): string => {
  const { says } = p().fitting;
  switch (word) {
    case 'too-few':
      return answered === 0 ? says.none : says.few(answered);
    case 'divided':
      return says.divided(answered);
    case 'right':
      return says.right(said.right.length, answered);
    case 'little':
    case 'much':
      return says.side(terms().fitPlaces[place][word], said[word].length, answered);
  }
};

/** Whether most are bothered there, in a word of the drawing. */
const toneOf = ({ word }: PlaceAgreement): string =>
  word === 'little' || word === 'much' ? 'off' : word === 'right' ? 'fine' : 'open';

const Picture = ({ places }: { readonly places: readonly PlaceAgreement[] }) => (
  <div class="fit-picture">
    <ShoeDrawing view="upper" foot="left" zones={new Map()} label={p().fitting.picture} />
    <svg class="fit-spots" viewBox={`0 0 ${viewBox.width} ${viewBox.height}`} aria-hidden="true">
      {places.map((one, at) => {
        const [x, y] = spots[one.place];
        return (
          <g key={one.place} class={`fit-spot fit-spot-${toneOf(one)}`}>
            <circle cx={x} cy={y} r={13} />
            <text x={x} y={y + 5.5} text-anchor="middle">
              {at + 1}
            </text>
          </g>
        );
      })}
    </svg>
  </div>
);

const Legend = () => {
  const { legend } = p().fitting;
  return (
    <p class="fit-legend small" aria-hidden="true">
      <span class="fit-key fit-little" /> {legend.little} <span class="fit-key fit-key-right" />{' '}
      {legend.right} <span class="fit-key fit-much" /> {legend.much}
    </p>
  );
};

export const FitTable = (props: SessionProps & { readonly foot: FeetLooked }) => {
  const { facts, records, foot } = props;
  const words = p().fitting;
  const places = agreementOf(facts.fitters, foot);
  const head = (one: Fitter) => {
    const pair = facts.pairs.get(one.best.body.pair)?.body;
    const feet = records.tester.find(({ revision }) => revision.id === one.tester)?.body
      .footLengthMm;
    return (
      <th key={one.key} scope="col">
        {fitterName(one, props)}
        <span class="soft small fit-under">{pair ? words.size(formatSize(pair.sizeMm)) : ''}</span>
        <span class="soft small fit-under">
          {feet ? words.footLength(formatNumber(Math.max(feet.left, feet.right), 0)) : '\u00a0'}
        </span>
      </th>
    );
  };
  return (
    <section class="fit-agree" aria-label={words.tableTitle}>
      <Picture places={places} />
      <div>
        <Legend />
        <div class="table-wrap">
          <table class="fit-table">
            <caption class="hidden-words">{words.tableTitle}</caption>
            <thead>
              <tr>
                <th scope="col">{words.place}</th>
                <th scope="col">{words.most}</th>
                {facts.fitters.map(head)}
              </tr>
            </thead>
            <tbody>
              {places.map((one, at) => (
                <tr key={one.place}>
                  <th scope="row">
                    <span class={`fit-number fit-number-${toneOf(one)}`} aria-hidden="true">
                      {at + 1}
                    </span>{' '}
                    {terms().fitPlaces[one.place].name}
                  </th>
                  <td class={toneOf(one) === 'off' ? 'fit-off' : ''}>{mostSay(one)}</td>
                  {facts.fitters.map(({ key, best }) => (
                    <td key={key}>
                      <Cell answer={answerOf(best.body, one.place, foot)} place={one.place} />
                    </td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      </div>
    </section>
  );
};
