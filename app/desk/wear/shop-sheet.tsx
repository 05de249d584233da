/** The table for the shop on paper: a line for each place, a column for each shoe, room to write in. */
import type { Foot, RecordId } from '../../../core/records/index.ts';
import { lastGauges, kindKey } from '../../drafts/check-gauges.ts';
import { inSheets, sheetLines, type SheetLine } from '../../drafts/shop-table.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { formatNumber, formatSize } from '../../parts/format.ts';
import { session } from '../../parts/state.ts';
import { d, listed, p, t, terms } from '../../words/index.ts';
import { placeName } from '../../words/say-place.ts';
import type { PlaceProps, TabProps } from '../desk-state.ts';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { speakerOf } from '../parts/speaker.ts';
import './shop-sheet.css';

const feet: readonly Foot[] = ['left', 'right'];

type Pairs = TabProps['review']['pairs'];

export const ShopSheet = (props: PlaceProps & { readonly round: RecordId }) => {
  const { review, records, round } = props;
  const words = p().wear.shop;
  const links = linksOf(review.project.id);
  const body = records.round.find(({ revision }) => revision.id === round)?.body;
  if (!body) return <PlaceHead headline={t().notFound} />;
  const pairs = review.pairs.filter((pair) => pair.round === round);
  const lines = sheetLines(body.blueprint, review.project.brief.limits);
  const isEmpty = pairs.length === 0 || lines.length === 0;
  return (
    <>
      <PlaceHead
        crumbs={[
          { words: p().frame.places.wear, href: links.place('wear') },
          { words: p().wear.checks.title, href: links.place('wear', 'checks') },
          { words: words.crumb },
        ]}
        headline={
          pairs.length === 0
            ? words.noPairs(body.name)
            : lines.length === 0
              ? words.noLines(body.name)
              : words.headline(body.name, lines.length, pairs.length)
        }
        sub={isEmpty ? <a href={links.round(round)}>{body.name}</a> : words.sub}
        actions={
          !isEmpty && (
            <Button kind="main" onClick={() => window.print()}>
              {words.print}
            </Button>
          )
        }
      />
      {!isEmpty &&
        inSheets(pairs).map((own) => (
          <Sheet key={own[0]?.id} {...props} name={body.name} lines={lines} pairs={own} />
        ))}
    </>
  );
};

const Sheet = (
  props: PlaceProps & {
    readonly round: RecordId;
    readonly name: string;
    readonly lines: readonly SheetLine[];
    readonly pairs: Pairs;
  },
) => {
  const { review, records, round, name, lines, pairs } = props;
  const words = p().wear.shop;
  const speaker = speakerOf(props);
  const gauges = lastGauges(
    records['bench-check'].filter(({ body }) => body.project === review.project.id),
    new Set(review.pairs.flatMap((pair) => (pair.round === round ? [pair.id] : []))),
    session.value?.member ?? null,
  );
  const title = words.title(review.project.name, name, listed(pairs.map(({ code }) => code)));
  return (
    <section class="shop-sheet on-white" aria-label={title}>
      <h2>{title}</h2>
      <p class="shop-lines">
        {[words.by, words.room, words.rested].map((one) => (
          <span key={one}>{one}</span>
        ))}
      </p>
      <div class="table-wrap" tabIndex={0} role="region" aria-label={title}>
        <table>
          <thead>
            <tr>
              <th scope="col" rowSpan={2}>
                {words.place}
              </th>
              <th scope="col" rowSpan={2}>
                {words.allowed}
              </th>
              <th scope="col" rowSpan={2}>
                {d().bench.gauge}
              </th>
              {pairs.map(({ id, code, sizeMm }) => (
                <th scope="colgroup" colSpan={2} class="shop-pair" key={id}>
                  {code} <small>{formatSize(sizeMm)}</small>
                </th>
              ))}
            </tr>
            <tr>
              {pairs.flatMap(({ id }) =>
                feet.map((foot) => (
                  <th scope="col" key={`${id} ${foot}`} class={`shop-${foot}`}>
                    {t()[foot]}
                  </th>
                )),
              )}
            </tr>
          </thead>
          <tbody>
            <tr>
              <th scope="row" colSpan={3}>
                {words.day}
              </th>
              {pairs.map(({ id }) => (
                <td colSpan={2} class="shop-left" key={id} />
              ))}
            </tr>
            {lines.map((line) => (
              <tr key={`${line.measure} ${line.site} ${line.unit} ${line.feet.join(' ')}`}>
                <th scope="row">{placeName(line, speaker)}</th>
                <td class="shop-allowed">
                  {line.allowed &&
                    `${formatNumber(line.allowed.least, 2)} … ${formatNumber(line.allowed.most, 2)} `}
                  {terms().units[line.unit]}
                </td>
                <td class="shop-gauge">{gauges[kindKey(line)] ?? ''}</td>
                {pairs.flatMap(({ id }) =>
                  feet.map((foot) => (
                    <td
                      key={`${id} ${foot}`}
                      class={`shop-${foot}${line.feet.includes(foot) ? '' : ' shop-none'}`}
                    />
                  )),
                )}
              </tr>
            ))}
            <tr>
              <th scope="row" colSpan={3}>
                {words.notes}
              </th>
              {pairs.map(({ id }) => (
                <td colSpan={2} class="shop-left" key={id} />
              ))}
            </tr>
          </tbody>
        </table>
      </div>
    </section>
  );
};
