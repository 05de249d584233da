/** The testers: who they are, how to get their phones in, and who has gone silent. */
import { useEffect, useRef, useState } from 'preact/hooks';
import type { RecordId, RecordOf } from '../../core/records/index.ts';
import { byCode } from '../../core/review/index.ts';
import { metres } from '../../core/units/index.ts';
import { Button, LinkButton } from '../parts/controls/controls.tsx';
import { formatDate, formatDistance } from '../parts/format.ts';
import { sendFile } from '../parts/send-file.ts';
import { session, store } from '../parts/state.ts';
import { showToast } from '../parts/controls/toast.tsx';
import type { TabProps } from './desk-state.ts';
import { Feet } from './feet.tsx';
import { readLines } from './lines.ts';
import { ListForm } from './list-form.tsx';
import { OpenForm, saveFromForm, SmallForm, TextField, Unfold } from './form-parts.tsx';
import { sayRange } from './in-range.ts';
import { Some } from './some.tsx';
import { testerLabel } from './tester-label.ts';
import { PanelCheckPart } from './plan/panel-check.tsx';
import { PowerForm } from './plan/power-form.tsx';
import { InviteCard, type Invite } from './invite-card.tsx';
import { d } from '../words/index.ts';
import {
  draftOfTester,
  rangesOfTester,
  readTesterDraft,
  readTesterLine,
  type ReadTester,
  type TesterDraft,
} from './tester-draft.ts';

const sendHandOutFile = async (tester: RecordId) => {
  const { name, bytes } = await store.exportFile({ tester });
  await sendFile(name, bytes);
};

export const Testers = ({ records, review }: TabProps) => {
  const words = d().testers;
  const [invite, setInvite] = useState<Invite | null>(null);
  const [editing, setEditing] = useState<RecordId | null>(null);
  const edited = records.tester.find(({ revision }) => revision.id === editing);
  const stats = new Map(review.testers.map((one) => [one.id, one]));
  const ask = async ({ body, revision }: RecordOf<'tester'>) => {
    // The hub must know the tester before it can invite them.
    await store.sync();
    const hub = await store.hub();
    const made = await hub?.invite('tester', revision.id);
    if (made?.ok) setInvite({ ...made.value, who: body.code });
    else showToast({ text: hub ? d().trouble : words.needsHub });
  };
  const testers = [...records.tester].sort((a, b) => byCode(a.body, b.body));
  return (
    <>
      {invite && <InviteCard {...invite} />}
      {edited && (
        <EditTester
          key={edited.revision.id}
          tester={edited}
          taken={codesBut(records, editing)}
          close={() => setEditing(null)}
        />
      )}
      {testers.length === 0 ? (
        <p>{words.none}</p>
      ) : (
        <div class="table-wrap" tabIndex={0} role="region" aria-label={d().tabs.testers}>
          <table>
            <thead>
              <tr>
                <th scope="col">{words.code}</th>
                <th scope="col" class="right">
                  {words.runs}
                </th>
                <th scope="col" class="right">
                  {words.distance}
                </th>
                <th scope="col">{words.last}</th>
                <th scope="col">{words.actions}</th>
              </tr>
            </thead>
            <tbody>
              <Some of={testers} columns={5}>
                {(tester) => {
                  const { id } = tester.revision;
                  const own = stats.get(id);
                  const last = own?.lastRunMs ?? null;
                  const silent = own?.silentDays ?? null;
                  return (
                    <tr key={id}>
                      <th scope="row">
                        {tester.body.code}
                        {tester.body.name && <span class="soft">{` ${tester.body.name}`}</span>}
                      </th>
                      <td class="right">{own?.runs ?? 0}</td>
                      <td class="right">{formatDistance(own?.distanceM ?? metres(0))}</td>
                      <td>
                        {last === null ? d().none : formatDate(last)}
                        {silent !== null && (
                          <span class="outside">{` ${words.silent(silent)}`}</span>
                        )}
                      </td>
                      <td>
                        <span class="row">
                          <Button
                            kind="quiet"
                            aria-label={words.editOf(tester.body.code)}
                            onClick={() => setEditing(id)}
                          >
                            {words.edit}
                          </Button>
                          {session.value?.hub && (
                            <Button
                              aria-label={`${words.invite} ${tester.body.code}`}
                              onClick={() => void ask(tester)}
                            >
                              {words.invite}
                            </Button>
                          )}
                          <Button
                            kind="quiet"
                            aria-label={`${words.file} ${tester.body.code}`}
                            onClick={() => void sendHandOutFile(id)}
                          >
                            {words.file}
                          </Button>
                        </span>
                      </td>
                    </tr>
                  );
                }}
              </Some>
            </tbody>
          </table>
        </div>
      )}
      <div class="row no-print">
        <Unfold label={words.add}>
          {(close) => <TesterFields taken={codesBut(records, null)} close={close} />}
        </Unfold>
        <Unfold label={words.addSeveral}>
          {(close) => <TesterList taken={codesBut(records, null)} close={close} />}
        </Unfold>
      </div>
      <Feet records={records} review={review} />
      <LinkButton href={`/desk/${review.project.id}/plan`}>{d().panel.plan.go}</LinkButton>
      <PanelCheckPart records={records} review={review} />
      <PowerForm testers={review.testers.length} />
    </>
  );
};

/** The codes of all testers but one. */
const codesBut = (records: TabProps['records'], tester: RecordId | null): ReadonlySet<string> =>
  new Set(
    records.tester.flatMap(({ body, revision }) => (revision.id === tester ? [] : [body.code])),
  );

const TesterFields = ({
  of,
  taken,
  close,
}: {
  readonly of?: RecordOf<'tester'>;
  readonly taken: ReadonlySet<string>;
  readonly close: () => void;
}) => {
  const words = d().testers;
  const [draft, setDraft] = useState(() => draftOfTester(of?.body ?? null));
  const [wrong, setWrong] = useState<Exclude<ReadTester, { ok: true }> | null>(null);
  const whys = {
    missing: d().missing,
    'not-a-code': d().notACode,
    taken: words.taken,
    'wrong-number': d().wrongNumber,
    'wrong-length': words.wrongLength,
  };
  const troubleOf = ({ why, field }: Exclude<ReadTester, { ok: true }>): string => {
    const range = why === 'wrong-number' ? rangesOfTester[field] : undefined;
    return range ? sayRange(range) : whys[why];
  };
  const fieldProps = (field: keyof TesterDraft) => ({
    value: draft[field],
    onInput: (value: string) => {
      setDraft((now) => ({ ...now, [field]: value }));
      setWrong(null);
    },
    error: wrong?.field === field ? troubleOf(wrong) : undefined,
  });
  const save = async () => {
    const read = readTesterDraft(draft, of?.body ?? null, taken);
    setWrong(read.ok ? null : read);
    if (!read.ok) return '';
    const saved = await saveFromForm('tester', read.body, of?.revision.id);
    if (typeof saved === 'string') return saved;
    close();
    return null;
  };
  return (
    <SmallForm save={save}>
      <div class="field-row">
        <TextField label={words.code} hint={words.codeHint} {...fieldProps('code')} />
        <TextField label={words.name} {...fieldProps('name')} optional={words.nameStays} />
        <TextField label={words.length} {...fieldProps('length')} optional />
        <TextField label={d().blueprint.widthField} {...fieldProps('width')} optional />
        <TextField label={d().blueprint.girthField} {...fieldProps('girth')} optional />
        <TextField label={words.mass} {...fieldProps('mass')} numeric optional />
        <TextField label={words.height} {...fieldProps('height')} numeric optional />
      </div>
    </SmallForm>
  );
};

const TesterList = (props: { readonly taken: ReadonlySet<string>; readonly close: () => void }) => {
  const words = d().testers;
  const [text, setText] = useState('');
  return (
    <ListForm
      label={words.list}
      hint={words.listHint}
      text={text}
      onText={setText}
      rows={readLines(text, (line) => readTesterLine(line, props.taken))}
      count={words.testers}
      says={testerLabel}
      whys={{
        'not-a-code': d().notACode,
        taken: words.taken,
        'wrong-length': words.wrongLength,
        'too-many-cells': words.tooManyCells,
      }}
      save={async (body) => {
        const saved = await saveFromForm('tester', body);
        return typeof saved === 'string' ? saved : null;
      }}
      close={props.close}
    />
  );
};

/** A tester's form with their values, brought to the person: its button is far down a long table. */
const EditTester = ({
  tester,
  taken,
  close,
}: {
  readonly tester: RecordOf<'tester'>;
  readonly taken: ReadonlySet<string>;
  readonly close: () => void;
}) => {
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => place.current?.querySelector('input')?.focus(), []);
  return (
    <div ref={place}>
      <OpenForm label={d().testers.editOf(tester.body.code)} close={close}>
        <TesterFields of={tester} taken={taken} close={close} />
      </OpenForm>
    </div>
  );
};
