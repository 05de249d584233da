/** The testers' feet against the lasts they wear, their sizes, and whether they stand for the brief's feet. */
import type { FeetInPair, FeetLook, TesterFeet } from '../../../core/review/index.ts';
import type { FootFit, MondopointSize } from '../../../core/rounds/index.ts';
import { sizeOf, type Millimetres } from '../../../core/units/index.ts';
import { formatNumber, formatSize, SIZE_NAMES } from '../../parts/format.ts';
import { signed } from '../../words/figures.ts';
import { clauses, d, t } from '../../words/index.ts';
import { feetLines } from '../../words/say-blueprint.ts';
import { namesIn, useWork, type TabProps } from '../desk-state.ts';
import { Some } from '../parts/some.tsx';
import { speakerOf } from '../parts/speaker.ts';

const figure = (value: number | undefined): string =>
  value === undefined ? d().none : formatNumber(value, 1);
const write = (value: number | null): string =>
  value === null ? d().none : signed(value, (size) => formatNumber(size, 1));

const bothFeet = (both: { readonly left: number; readonly right: number } | undefined): string =>
  both === undefined ? d().blueprint.notMeasured : `${figure(both.left)} / ${figure(both.right)}`;

export const Feet = (props: TabProps) => {
  const words = d().blueprint;
  const { review, records } = props;
  const look = useWork((desk) => desk.feet(review.project.id), records, [review.project.id]);
  if (!look) return <p class="soft">{t().loading}</p>;
  return (
    <section class="stack">
      <h2>{words.feet}</h2>
      {look.testers.length === 0 ? (
        <p>{words.feetNone}</p>
      ) : (
        <>
          <ul>
            {feetLines(look, speakerOf(props)).map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
          <FeetTable look={look} />
          <h3>{words.inLast}</h3>
          <LastTable {...props} look={look} />
          <p class="soft small">{words.feetHow}</p>
        </>
      )}
    </section>
  );
};

const sizeInWords = (longest: Millimetres, { by5, by7half }: NonNullable<TesterFeet['size']>) => {
  const words = d().blueprint;
  const of = ({ sizeMm }: MondopointSize, step: number) =>
    words.nearest(formatNumber(sizeMm, 1), formatNumber(step, 1));
  return clauses(
    of(by5, 5),
    of(by7half, 7.5),
    ...(['eu', 'uk', 'us', 'us-women'] as const).map(
      (system) => `${SIZE_NAMES[system]} ${formatNumber(sizeOf(longest, system), 1)}`,
    ),
  );
};

const FeetTable = ({ look }: { readonly look: FeetLook }) => {
  const words = d().blueprint;
  return (
    <div class="table-wrap" tabIndex={0} role="region" aria-label={words.feet}>
      <table>
        <thead>
          <tr>
            <th scope="col">{d().testers.code}</th>
            {[words.foot, words.footWidth, words.footGirth].map((name) => (
              <th scope="col" class="right" key={name}>
                {name} <span class="soft small">{words.leftThenRight}</span>
              </th>
            ))}
            <th scope="col" class="right">
              {words.asymmetry}
            </th>
            <th scope="col">{words.size}</th>
          </tr>
        </thead>
        <tbody>
          <Some of={look.testers} columns={6}>
            {(one) => (
              <tr key={one.tester}>
                <th scope="row">{one.code}</th>
                <td class="right">{bothFeet(one.footLengthMm)}</td>
                <td class="right">{bothFeet(one.footWidthMm)}</td>
                <td class="right">{bothFeet(one.ballGirthMm)}</td>
                <td class="right">{write(one.asymmetry.lengthMm)}</td>
                <td>
                  <Size of={one} />
                </td>
              </tr>
            )}
          </Some>
        </tbody>
      </table>
    </div>
  );
};

/** Each tester in each pair that they wore, against the last at the pair's size. */
const LastTable = ({ look, review, records }: TabProps & { readonly look: FeetLook }) => {
  const words = d().blueprint;
  const names = namesIn(review, records);
  const worn = look.testers.flatMap(({ code, tester, pairs }) =>
    pairs.map((pair) => ({ code, tester, pair })),
  );
  if (worn.length === 0) return null;
  return (
    <div class="table-wrap" tabIndex={0} role="region" aria-label={words.inLast}>
      <table>
        <thead>
          <tr>
            <th scope="col">{d().testers.code}</th>
            <th scope="col">{words.pair}</th>
            <th scope="col">{d().pairs.round}</th>
            <th scope="col">{d().pairs.size}</th>
            {[words.toe, words.widthOver, words.girthOver].map((name) => (
              <th scope="col" class="right" key={name}>
                {name} <span class="soft small">{words.leftThenRight}</span>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          <Some of={worn} columns={7}>
            {({ code, tester, pair }) => (
              <tr key={`${tester} ${pair.pair}`}>
                <th scope="row">{code}</th>
                <td>{names.pair(pair.pair)}</td>
                <td>{names.round(pair.round)}</td>
                <td>{formatSize(pair.sizeMm)}</td>
                <td class="right">{sides(pair, toeInWords)}</td>
                <td class="right">{sides(pair, ({ widthMm }) => write(widthMm))}</td>
                <td class="right">{sides(pair, ({ girthMm }) => write(girthMm))}</td>
              </tr>
            )}
          </Some>
        </tbody>
      </table>
    </div>
  );
};

const Size = ({ of }: { readonly of: TesterFeet }) => {
  const words = d().blueprint;
  const { size, footLengthMm } = of;
  if (!size || !footLengthMm) return <>{words.notMeasured}</>;
  const longest = footLengthMm.left > footLengthMm.right ? footLengthMm.left : footLengthMm.right;
  const between = [
    ...(size.by5.between ? ['5'] : []),
    ...(size.by7half.between ? [formatNumber(7.5, 1)] : []),
  ];
  return (
    <>
      {sizeInWords(longest, size)}
      {between.map((step) => (
        <div class="soft small" key={step}>
          {words.between(step)}
        </div>
      ))}
    </>
  );
};

const toeInWords = ({ toeMm, toe }: FootFit): string =>
  toeMm === null || toe === null
    ? d().none
    : `${formatNumber(toeMm, 1)} ${toe === 'usual' ? '' : d().blueprint.toes[toe]}`.trim();

const sides = ({ left, right }: FeetInPair, say: (fit: FootFit) => string): string =>
  left === null || right === null ? d().blueprint.noLast : `${say(left)} / ${say(right)}`;
