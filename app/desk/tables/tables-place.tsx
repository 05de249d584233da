/** A table from a spreadsheet: taken, recognised, looked through, and brought in. */
import { useMemo, useState } from 'preact/hooks';
import { columnsIn, kindOf, type TableKind } from '../../drafts/tables/columns.ts';
import type { ReadRow } from '../../drafts/tables/row.ts';
import { MOST_ROWS, readSheet, type Sheet } from '../../drafts/tables/sheet.ts';
import {
  mended,
  openQuestions,
  readTable,
  wantedRows,
  type Choice,
  type TableContext,
} from '../../drafts/tables/table.ts';
import { guessWays } from '../../drafts/tables/ways.ts';
import { Button, LinkButton, Notice } from '../../parts/controls/controls.tsx';
import { settings } from '../../parts/settings.ts';
import { session } from '../../parts/state.ts';
import { p, t } from '../../words/index.ts';
import { namesIn, useWork, type PlaceProps } from '../desk-state.ts';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { bringIn, lastBroughtIn, takeOut } from './bring-in.ts';
import { HowRead, KindSelect } from './how-read.tsx';
import { Preview } from './preview.tsx';
import { TakeTable } from './take-table.tsx';
import './tables.css';

export const TablesPlace = (props: PlaceProps) => {
  const [text, setText] = useState('');
  const sheet = useMemo(() => readSheet(text), [text]);
  const found = useMemo(() => kindOf(sheet.head), [sheet]);
  const [chosen, setChosen] = useState<TableKind | null>(null);
  const take = (next: string) => {
    setText(next);
    setChosen(null);
  };
  const kind = chosen ?? found;
  if (sheet.rows.length > 0 && kind !== null && kind !== 'bench')
    return (
      // Another kind, or another table, is read anew.
      <Reading
        key={`${kind} ${text.length} ${text.slice(0, 200)}`}
        {...props}
        sheet={sheet}
        kind={kind}
        onKind={setChosen}
        done={() => take('')}
      />
    );
  return (
    <Taking
      {...props}
      kind={sheet.rows.length === 0 ? 'empty' : (kind ?? 'unknown')}
      onText={take}
      onKind={setChosen}
    />
  );
};

const Crumbed = (props: PlaceProps & { readonly headline: string; readonly sub?: string }) => (
  <PlaceHead
    crumbs={[
      { words: p().frame.places.sheet, href: linksOf(props.review.project.id).place('sheet') },
      { words: p().tables.title },
    ]}
    headline={props.headline}
    {...(props.sub !== undefined && { sub: props.sub })}
  />
);

const Taking = (
  props: PlaceProps & {
    readonly kind: 'empty' | 'unknown' | 'bench' | TableKind;
    readonly onText: (text: string) => void;
    readonly onKind: (kind: TableKind) => void;
  },
) => {
  const words = p().tables;
  const { kind } = props;
  const said = kind === 'unknown' || kind === 'bench' ? kind : 'empty';
  return (
    <>
      <Crumbed {...props} headline={words.headline[said]} sub={words.sub} />
      <BroughtIn {...props} />
      {said === 'bench' && (
        <Notice tone="plain" live>
          <p>{words.bench}</p>
          <LinkButton href={linksOf(props.review.project.id).place('wear', 'checks')}>
            {words.toBench}
          </LinkButton>
        </Notice>
      )}
      {said === 'unknown' && <KindSelect kind={null} onKind={props.onKind} />}
      <TakeTable onText={props.onText} />
    </>
  );
};

/** What came in last, with the way back. */
const BroughtIn = ({ review }: PlaceProps) => {
  const words = p().tables;
  const last = lastBroughtIn.value;
  if (!last || last.project !== review.project.id) return null;
  const { kind, count } = last;
  const place = kind === 'runs' ? 'runs' : kind === 'testers' ? 'testers' : 'pairs';
  return (
    <Notice tone="plain" live>
      <p>{words.broughtIn(kind, count)}</p>
      <div class="row">
        <LinkButton href={linksOf(review.project.id).place(place)}>{words.see[kind]}</LinkButton>
        <Button onClick={() => void takeOut(last)}>{words.undo}</Button>
      </div>
    </Notice>
  );
};

const toggled = (set: ReadonlySet<number>, line: number): ReadonlySet<number> => {
  const next = new Set(set);
  if (!next.delete(line)) next.add(line);
  return next;
};

type ReadingProps = PlaceProps & {
  readonly sheet: Sheet;
  readonly kind: TableKind;
  readonly onKind: (kind: TableKind) => void;
  readonly done: () => void;
};

/** What the table is compared with; null until the runs are there. */
const useContext = ({ records, review, kind }: ReadingProps): TableContext | null => {
  const { id } = review.project;
  const [nowMs] = useState(() => Date.now());
  const runs = useWork(async (desk) => (kind === 'runs' ? await desk.knownRuns(id) : []), records, [
    id,
    kind,
  ]);
  const by = session.value?.member;
  return useMemo(() => {
    if (!runs || !by) return null;
    const ofProject = <T extends { body: { project: unknown } }>(list: readonly T[]) =>
      list.filter(({ body }) => body.project === id);
    return {
      project: id,
      rounds: ofProject(records.round),
      testers: records.tester,
      pairs: ofProject(records.pair),
      handOuts: ofProject(records['hand-out']),
      runs,
      by,
      nowMs,
    };
  }, [records, runs, by, id, nowMs]);
};

const Reading = (props: ReadingProps) => {
  const { sheet, kind, review, records } = props;
  const words = p().tables;
  const context = useContext(props);
  const [choice, setChoice] = useState<Choice>(() => {
    const columns = columnsIn(sheet.head, kind);
    const round = review.rounds.at(-1)?.id ?? null;
    const usual = { distance: settings.value.distance, round };
    return { kind, columns, ways: guessWays(sheet, columns, usual) };
  });
  const [mends, setMends] = useState<ReadonlyMap<string, string>>(new Map());
  const [out, setOut] = useState<ReadonlySet<number>>(new Set());
  const [right, setRight] = useState<ReadonlySet<number>>(new Set());
  const [changed, setChanged] = useState(false);
  const [busy, setBusy] = useState(false);
  const typed = useMemo(() => mended(sheet, mends), [sheet, mends]);
  const open = openQuestions(choice);
  const isOpen = open.columns.length + open.ways.length > 0;
  const rows = useMemo(
    () => (isOpen || !context ? null : readTable(typed, choice, context)),
    [isOpen, typed, choice, context],
  );
  const wanted = rows ? wantedRows(rows, { out, right, changed }) : [];
  const toLookAt = (rows ?? []).filter(
    ({ fate, line }) => fate === 'wrong' || (fate === 'odd' && !right.has(line)),
  ).length;
  const save = async () => {
    if (busy) return;
    setBusy(true);
    const ok = await bringIn(wanted, kind, review.project.id);
    setBusy(false);
    if (ok) props.done();
  };
  const headline = isOpen
    ? words.headline.open
    : toLookAt > 0
      ? words.headline.look(kind, wanted.length, toLookAt)
      : words.headline.clean(kind, wanted.length);
  return (
    <>
      <Crumbed {...props} headline={headline} />
      <div class="table-kind">
        <KindSelect kind={kind} onKind={props.onKind} />
        <Button kind="quiet" onClick={props.done}>
          {words.clear}
        </Button>
      </div>
      {kind === 'pairs' && review.rounds.length === 0 && (
        <Notice tone="plain">
          <p>{words.noRound}</p>
          <LinkButton href={linksOf(review.project.id).place('rounds')}>
            {words.toRounds}
          </LinkButton>
        </Notice>
      )}
      <HowRead
        head={sheet.head}
        choice={choice}
        review={review}
        onColumns={(columns) => setChoice((now) => ({ ...now, columns }))}
        onWays={(ways) => setChoice((now) => ({ ...now, ways: { ...now.ways, ...ways } }))}
      />
      {sheet.rows.length >= MOST_ROWS && <p>{words.tooLong(MOST_ROWS)}</p>}
      {rows ? (
        <>
          <BringInBar
            kind={kind}
            rows={rows}
            count={wanted.length}
            busy={busy}
            changed={changed}
            onChanged={setChanged}
            save={() => void save()}
          />
          <Preview
            sheet={typed.rows}
            columns={choice.columns}
            rows={rows}
            mends={mends}
            out={out}
            right={right}
            tester={namesIn(review, records).tester}
            onMend={(key, text) => setMends((now) => new Map([...now, [key, text]]))}
            onOut={(line) => setOut((now) => toggled(now, line))}
            onRight={(line) => setRight((now) => toggled(now, line))}
          />
        </>
      ) : (
        !isOpen && <p class="soft">{t().loading}</p>
      )}
    </>
  );
};

const BringInBar = (props: {
  readonly kind: TableKind;
  readonly rows: readonly ReadRow[];
  readonly count: number;
  readonly busy: boolean;
  readonly changed: boolean;
  readonly onChanged: (changed: boolean) => void;
  readonly save: () => void;
}) => {
  const words = p().tables;
  const { kind, rows, count } = props;
  const differing = rows.filter(({ fate }) => fate === 'changed').length;
  return (
    <div class="table-bar">
      {differing > 0 && (
        <label class="row">
          <input
            type="checkbox"
            class="tick"
            checked={props.changed}
            onChange={(event) => props.onChanged(event.currentTarget.checked)}
          />
          <span>{words.changed(differing)}</span>
        </label>
      )}
      {count > 0 && (
        <Button kind="main" disabled={props.busy} onClick={props.save}>
          {words.bringIn(kind, count)}
        </Button>
      )}
      {rows.length > count && <span role="status">{words.willStay(rows.length - count)}</span>}
    </div>
  );
};
