/** Checks of many pairs of a round as one table that is typed or pasted: the quickest way from the bench into the log. */
import { useState } from 'preact/hooks';
import { useLocation } from 'preact-iso';
import type { BenchCheck, RecordId, RecordOf } from '../../../core/records/index.ts';
import { lastGauges } from '../../drafts/check-gauges.ts';
import { gridRows, PAIRS_AT_ONCE, readGrid, type GridDraft } from '../../drafts/check-grid.ts';
import { checkGridSchema } from '../../drafts/kept.ts';
import { askedOf } from '../../drafts/shop-table.ts';
import { LinkButton } from '../../parts/controls/controls.tsx';
import { toLocalMinute } from '../../parts/instant.ts';
import { useKept } from '../../parts/kept.tsx';
import { session } from '../../parts/state.ts';
import { d, p } from '../../words/index.ts';
import { CheckGrid } from '../bench/check-grid.tsx';
import { entryDoubts, type DoubtedReading, type EntryDoubts } from '../bench/entry-doubts.ts';
import { GaugeFields } from '../bench/gauge-fields.tsx';
import { saveChecks } from '../bench/save-checks.ts';
import { roundsOf } from '../bench/save-shop-table.ts';
import { TableDoubts } from '../bench/table-doubts.tsx';
import type { PlaceProps, TabProps } from '../desk-state.ts';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { DateTimeField, SelectField, SmallForm, TextField } from '../parts/form-parts.tsx';
import { NEW } from '../start/guide.ts';

interface Looked {
  readonly checks: readonly BenchCheck[];
  readonly doubts: EntryDoubts;
}

/** The pairs of a round, with what was on them before the test. */
const pairsOf = ({ review, records }: TabProps, round: RecordId) => {
  const bodies = new Map(records.pair.map(({ body, revision }) => [revision.id, body]));
  return review.pairs
    .filter((pair) => pair.round === round)
    .map(({ id, code }) => ({ id, code, carriedInM: bodies.get(id)?.carriedInM }));
};

const Table = (props: TabProps & { readonly rounds: readonly RecordOf<'round'>[] }) => {
  const { review, records, rounds } = props;
  const words = p().wear.checkTable;
  const { id: project } = review.project;
  const { route } = useLocation();
  const kept = useKept<GridDraft>({
    key: `check table ${project}`,
    schema: checkGridSchema,
    begin: () => ({
      round: '',
      at: toLocalMinute(Date.now()),
      arrival: null,
      operator: '',
      gauges: {},
      values: {},
    }),
  });
  const { draft, setDraft } = kept;
  const [tried, setTried] = useState(false);
  const [block, setBlock] = useState(0);
  /** The checks as they were looked at, with what looks wrong; gone once something is typed. */
  const [looked, setLooked] = useState<Looked | null>(null);
  const [right, setRight] = useState<ReadonlySet<DoubtedReading>>(new Set());
  const round = rounds.find(({ revision }) => revision.id === draft.round) ?? rounds[0];
  if (!round) return null;
  const pairs = pairsOf(props, round.revision.id);
  const ids = new Set(pairs.map(({ id }) => id));
  const checks = records['bench-check'].filter(({ body }) => body.project === project);
  const rows = gridRows(askedOf(round.body.blueprint, review.project.brief.limits));
  const gauges = {
    ...lastGauges(checks, ids, session.value?.member ?? null),
    ...draft.gauges,
  };
  const arrival = draft.arrival ?? !checks.some(({ body }) => ids.has(body.pair));
  const read = readGrid({ ...draft, gauges, arrival }, rows, pairs, project);
  const blocks = Array.from({ length: Math.ceil(pairs.length / PAIRS_AT_ONCE) }, (_, at) =>
    pairs.slice(at * PAIRS_AT_ONCE, (at + 1) * PAIRS_AT_ONCE),
  );
  const first = Math.min(block, blocks.length - 1) * PAIRS_AT_ONCE;
  const put = (part: Partial<GridDraft>) => {
    setLooked(null);
    setDraft((now) => ({ ...now, ...part }));
  };
  const save = async () => {
    setTried(true);
    if (read.wrong.length > 0 || read.noDay) {
      // What is wrong in columns that are not shown is brought to the person.
      const [at] = read.wrong;
      if (at) setBlock(Math.floor(at.column / PAIRS_AT_ONCE));
      return '';
    }
    if (read.checks.length === 0) return words.empty;
    const { checks: asTyped, doubts } = looked ?? {
      checks: read.checks,
      doubts: entryDoubts({ records, review }, read.checks, 'table'),
    };
    if (!looked && doubts.readings.length + doubts.gauges.length > 0) {
      setLooked({ checks: asTyped, doubts });
      setRight(new Set());
      return '';
    }
    await saveChecks(project, asTyped, right, ({ pair }) =>
      setDraft((now) => ({
        ...now,
        values: Object.fromEntries(
          Object.entries(now.values).filter(([key]) => !key.startsWith(pair)),
        ),
      })),
    );
    await kept.done();
    route(linksOf(project).place('wear', 'checks'));
    return null;
  };
  const code = (id: RecordId) => pairs.find((pair) => pair.id === id)?.code ?? '';
  return (
    <SmallForm save={save} kept={kept} label={words.save(read.checks.length)}>
      <div class="field-row">
        {rounds.length > 1 && (
          <SelectField<RecordId>
            label={words.round}
            value={round.revision.id}
            options={rounds.map(({ body, revision }) => ({
              value: revision.id,
              label: body.name,
            }))}
            onChange={(chosen) => put({ round: chosen, arrival: null })}
          />
        )}
        {blocks.length > 1 && (
          <SelectField
            label={words.pairs}
            value={String(first / PAIRS_AT_ONCE)}
            options={blocks.map((some, at) => ({
              value: String(at),
              label: words.span(some[0]?.code ?? '', some.at(-1)?.code ?? ''),
            }))}
            onChange={(at) => setBlock(Number(at))}
          />
        )}
        <DateTimeField
          label={d().bench.at}
          value={draft.at}
          onInput={(at) => put({ at })}
          error={tried && read.noDay ? d().missing : undefined}
        />
        <TextField
          label={d().bench.operator}
          value={draft.operator}
          onInput={(operator) => put({ operator })}
          optional
        />
      </div>
      <label class="row">
        <input
          type="checkbox"
          class="tick"
          checked={arrival}
          onChange={(event) => put({ arrival: event.currentTarget.checked })}
        />
        {words.arrival}
      </label>
      <CheckGrid
        {...props}
        name={words.name(round.body.name)}
        rows={rows}
        pairs={pairs.slice(first, first + PAIRS_AT_ONCE)}
        values={draft.values}
        wrong={read.wrong
          .filter(({ column }) => column >= first && column < first + PAIRS_AT_ONCE)
          .map((one) => ({ ...one, column: one.column - first }))}
        tried={tried}
        onChange={(values) => put({ values })}
      />
      {looked && (
        <div role="group" tabIndex={-1} data-ask>
          <TableDoubts
            {...props}
            doubts={looked.doubts}
            placed={({ check }, said) => words.ofPair(code(check.pair), said)}
            asks={words.asks}
            right={right}
            onChange={setRight}
          />
        </div>
      )}
      <GaugeFields
        rows={rows}
        gauges={gauges}
        onChange={(part) => put({ gauges: { ...draft.gauges, ...part } })}
      />
    </SmallForm>
  );
};

export const CheckTablePage = (props: PlaceProps) => {
  const { review } = props;
  const words = p().wear;
  const links = linksOf(review.project.id);
  const rounds = roundsOf(props).filter(({ body, revision }) => {
    const asked = askedOf(body.blueprint, review.project.brief.limits);
    return asked.length > 0 && review.pairs.some(({ round }) => round === revision.id);
  });
  const [latest] = rounds;
  return (
    <>
      <PlaceHead
        crumbs={[
          { words: p().frame.places.wear, href: links.place('wear') },
          { words: words.checks.title, href: links.place('wear', 'checks') },
          { words: words.checkTable.crumb },
        ]}
        headline={
          latest
            ? words.checkTable.headline
            : review.pairs.length === 0
              ? words.newCheck.noPair
              : words.checkTable.nothing
        }
        sub={latest && words.checkTable.sub}
      />
      {latest ? (
        <Table records={props.records} review={review} rounds={rounds} />
      ) : (
        <div class="row">
          {review.pairs.length === 0 ? (
            <LinkButton href={links.place('pairs', NEW)}>{p().pairs.add}</LinkButton>
          ) : (
            <LinkButton href={links.place('wear', 'checks', 'new')}>{words.write}</LinkButton>
          )}
        </div>
      )}
    </>
  );
};
