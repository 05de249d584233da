/** Every bench check with its readings, sorted and filtered, and the ways to add more. */
import { useState } from 'preact/hooks';
import { checksHeadline } from '../../../core/headlines/index.ts';
import { measures, type Measure, type RecordId } from '../../../core/records/index.ts';
import type { ListedCheck, ListedReading } from '../../../core/review/index.ts';
import { LinkButton } from '../../parts/controls/controls.tsx';
import { formatDate } from '../../parts/format.ts';
import { p, t, terms } from '../../words/index.ts';
import { BenchFile } from '../bench/bench-file.tsx';
import { ShopTables } from '../bench/shop-tables.tsx';
import { useWork, type PlaceProps, type TabProps } from '../desk-state.ts';
import { SelectField } from '../parts/form-parts.tsx';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { sayOf } from '../frame/say.ts';
import { Some } from '../parts/some.tsx';
import { speakerOf } from '../parts/speaker.ts';
import { measuredLines } from './check-lines.ts';

const sorts = ['date', 'pair', 'distance'] as const;
type Sort = (typeof sorts)[number];

/** Rows before the rest folds. */
const ROWS = 12;
/** Lines of readings in a row. */
const [FEW, MORE] = [1, 6];

interface Chosen {
  readonly pair: RecordId | 'all';
  readonly measure: Measure | 'all';
  readonly sort: Sort;
}

const isShown = ({ measure }: Pick<ListedReading, 'measure'>, chosen: Chosen): boolean =>
  chosen.measure === 'all' || measure === chosen.measure;

const chosenFrom = (
  checks: readonly ListedCheck[],
  chosen: Chosen,
  codeOf: (pair: RecordId) => string,
): readonly ListedCheck[] => {
  const kept = checks.filter(
    ({ pair, readings }) =>
      (chosen.pair === 'all' || pair === chosen.pair) &&
      readings.some((one) => isShown(one, chosen)),
  );
  if (chosen.sort === 'distance') return kept.toSorted((a, b) => b.distanceM - a.distanceM);
  return chosen.sort === 'pair'
    ? kept.toSorted((a, b) => codeOf(a.pair).localeCompare(codeOf(b.pair)))
    : kept;
};

const Row = (props: TabProps & { readonly check: ListedCheck; readonly chosen: Chosen }) => {
  const { check, chosen, review } = props;
  const words = p().wear.checks;
  const say = sayOf(props);
  const links = linksOf(review.project.id);
  const own = check.readings.filter((one) => isShown(one, chosen));
  const lines = measuredLines(own, speakerOf(props));
  const shown = lines.slice(0, chosen.measure === 'all' ? FEW : MORE);
  const gauges = [...new Set(shown.flatMap((line) => line.gauges))];
  return (
    <tr>
      <th scope="row">
        <a href={links.check(check.id)}>{formatDate(check.at)}</a>
      </th>
      <td>
        <a href={links.pair(check.pair)}>{say.pair(check.pair)}</a>
      </td>
      <td class="right">{check.distanceM === 0 ? words.arrival : say.distance(check.distanceM)}</td>
      <td class="checks-readings">
        {shown.map(({ name, unit, values }, line) => (
          <span key={name}>
            {name}{' '}
            {values.map(({ text, standing }, at) => (
              <span key={at}>
                {at > 0 && ' / '}
                {standing.state === 'set-aside' ? (
                  <s class="reading-aside" title={standing.why}>
                    {text}
                  </s>
                ) : (
                  text
                )}
              </span>
            ))}{' '}
            {unit}
            {line === shown.length - 1 && lines.length > shown.length && (
              <>
                {', '}
                <a href={links.check(check.id)}>{words.more(lines.length - shown.length)}</a>
              </>
            )}
          </span>
        ))}
      </td>
      <td class="checks-gauge">{gauges.join(', ')}</td>
      <td class="checks-by">{check.operator}</td>
    </tr>
  );
};

const Checks = (props: TabProps & { readonly checks: readonly ListedCheck[] }) => {
  const { checks, review, records } = props;
  const words = p().wear.checks;
  const say = sayOf(props);
  const [chosen, setChosen] = useState<Chosen>({ pair: 'all', measure: 'all', sort: 'date' });
  const choose = (part: Partial<Chosen>) => setChosen({ ...chosen, ...part });
  const rows = chosenFrom(checks, chosen, say.pair);
  const checked = new Set(checks.map(({ pair }) => pair));
  const pairs = review.pairs.filter(({ id }) => checked.has(id));
  const measured = measures.filter((measure) =>
    checks.some(({ readings }) => readings.some((one) => one.measure === measure)),
  );
  return (
    <>
      <div class="wear-narrow no-print">
        <SelectField<RecordId | 'all'>
          label={words.pair}
          value={chosen.pair}
          options={[
            { value: 'all', label: words.any },
            ...pairs.map(({ id, code }) => ({ value: id, label: code })),
          ]}
          onChange={(pair) => choose({ pair })}
        />
        <SelectField<Measure | 'all'>
          label={words.measure}
          value={chosen.measure}
          options={[
            { value: 'all', label: words.any },
            ...measured.map((value) => ({ value, label: terms().measures[value] })),
          ]}
          onChange={(measure) => choose({ measure })}
        />
        <SelectField<Sort>
          label={words.sort}
          value={chosen.sort}
          options={sorts.map((value) => ({ value, label: words.sorts[value] }))}
          onChange={(sort) => choose({ sort })}
        />
        <span class="soft" role="status">
          {words.shown(rows.length, checks.length)}
        </span>
      </div>
      {rows.length === 0 ? (
        <p>{words.none}</p>
      ) : (
        <div class="table-wrap" tabIndex={0} role="region" aria-label={words.title}>
          <table class="place-table checks-table">
            <thead>
              <tr>
                <th scope="col">{words.date}</th>
                <th scope="col">{words.pair}</th>
                <th scope="col" class="right">
                  {words.distance}
                </th>
                <th scope="col">{words.reading}</th>
                <th scope="col">{words.gauge}</th>
                <th scope="col">{words.by}</th>
              </tr>
            </thead>
            <tbody>
              <Some of={rows} step={ROWS} columns={6} key={JSON.stringify(chosen)}>
                {(check) => (
                  <Row
                    key={check.id}
                    records={records}
                    review={review}
                    check={check}
                    chosen={chosen}
                  />
                )}
              </Some>
            </tbody>
          </table>
        </div>
      )}
    </>
  );
};

export const ChecksPage = (props: PlaceProps) => {
  const { review, records } = props;
  const words = p().wear;
  const { id } = review.project;
  const links = linksOf(id);
  const checks = useWork((desk) => desk.checkList(id), records, [id]);
  if (!checks) return <p class="soft">{t().loading}</p>;
  const readings = checks.flatMap((one) => one.readings);
  const aside = readings.filter(({ standing }) => standing.state === 'set-aside').length;
  const headline = checksHeadline(checks);
  return (
    <>
      <PlaceHead
        crumbs={[
          { words: p().frame.places.wear, href: links.place('wear') },
          { words: words.checks.title },
        ]}
        headline={words.checks.headline(headline, sayOf(props))}
        sub={
          checks.length > 0 && (
            <>
              {words.checks.sub(readings.length, aside)}
              {headline.case === 'waiting' && (
                <>
                  {' '}
                  <a href={links.place('waiting')}>{words.checks.decide}</a>
                </>
              )}
            </>
          )
        }
        actions={<LinkButton href={links.place('wear', 'checks', 'new')}>{words.write}</LinkButton>}
      />
      {checks.length > 0 && <Checks records={records} review={review} checks={checks} />}
      <div class="forms-row no-print">
        <ShopTables records={records} review={review} />
        <BenchFile records={records} review={review} />
      </div>
    </>
  );
};
