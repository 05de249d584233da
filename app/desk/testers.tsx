/** The testers: who they are, how to get their phones in, and who has gone silent. */
import { useState } from 'preact/hooks';
import type { RecordId, RecordOf } from '../../core/records/index.ts';
import { byCode } from '../../core/review/index.ts';
import { kilograms, metres, millimetres, parseDecimal } from '../../core/units/index.ts';
import { Button } from '../parts/controls/controls.tsx';
import { formatDate, formatDistance } from '../parts/format.ts';
import { sendFile } from '../parts/send-file.ts';
import { session, store } from '../parts/state.ts';
import { showToast } from '../parts/controls/toast.tsx';
import type { TabProps } from './desk-state.ts';
import { Feet } from './feet.tsx';
import { saveRecord, SmallForm, TextField, Unfold } from './form-parts.tsx';
import { Some } from './some.tsx';
import { InviteCard, type Invite } from './invite-card.tsx';
import { d } from '../words/index.ts';

const DAY_MS = 86_400_000;
/** A tester who holds a pair and logged nothing for so long is worth a question. Judgement, no source. */
const SILENT_DAYS = 7;

const sendHandOutFile = async (tester: RecordId) => {
  const { name, bytes } = await store.exportFile({ tester });
  await sendFile(name, bytes);
};

export const Testers = ({ records, review }: TabProps) => {
  const words = d().testers;
  const [invite, setInvite] = useState<Invite | null>(null);
  const stats = new Map(review.testers.map((one) => [one.id, one]));
  const holders = new Set(review.pairs.map(({ holder }) => holder));
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
                <th scope="col">{words.invite}</th>
              </tr>
            </thead>
            <tbody>
              <Some of={testers} columns={5}>
                {(tester) => {
                  const { id } = tester.revision;
                  const own = stats.get(id);
                  const last = own?.lastRunMs ?? null;
                  const days = last === null ? null : Math.floor((Date.now() - last) / DAY_MS);
                  const silent = holders.has(id) && days !== null && days >= SILENT_DAYS;
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
                        {silent && days !== null && (
                          <span class="outside">{` ${words.silent(days)}`}</span>
                        )}
                      </td>
                      <td>
                        <span class="row">
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
      <TesterForm />
      <Feet records={records} review={review} />
    </>
  );
};

/** Left and right as typed, one figure for both where they are alike. Undefined: not said; null: no number. */
const bothFeet = (typed: string) => {
  if (typed.trim() === '') return undefined;
  const [left, right = left, ...more] = typed
    .trim()
    .split(/\s*\/\s*|\s+/)
    .map(parseDecimal);
  return left === null || left === undefined || right === null || right === undefined || more.length
    ? null
    : { left: millimetres(left), right: millimetres(right) };
};

const TesterForm = () => {
  const words = d().testers;
  const [code, setCode] = useState('');
  const [name, setName] = useState('');
  const [length, setLength] = useState('');
  const [width, setWidth] = useState('');
  const [girth, setGirth] = useState('');
  const [mass, setMass] = useState('');
  const [height, setHeight] = useState('');
  const save = async (close: () => void) => {
    if (code.trim() === '') return `${words.code}: ${d().missing}`;
    const [lengths, widths, girths] = [length, width, girth].map(bothFeet);
    const massKg = mass.trim() === '' ? undefined : parseDecimal(mass);
    const heightCm = height.trim() === '' ? undefined : parseDecimal(height);
    if (
      lengths === null ||
      widths === null ||
      girths === null ||
      massKg === null ||
      heightCm === null
    )
      return d().wrongNumber;
    const saved = await saveRecord('tester', {
      code: code.trim().toUpperCase(),
      ...(name.trim() !== '' && { name: name.trim() }),
      ...(lengths && { footLengthMm: lengths }),
      ...(widths && { footWidthMm: widths }),
      ...(girths && { ballGirthMm: girths }),
      ...(massKg !== undefined && { massKg: kilograms(massKg) }),
      ...(heightCm !== undefined && { heightM: metres(heightCm / 100) }),
    });
    if (!saved) return d().trouble;
    setCode('');
    setName('');
    close();
    return null;
  };
  return (
    <Unfold label={words.add}>
      {(close) => (
        <SmallForm save={() => save(close)}>
          <div class="field-row">
            <TextField label={words.code} value={code} onInput={setCode} />
            <TextField label={words.name} value={name} onInput={setName} />
            <TextField label={words.length} value={length} onInput={setLength} />
            <TextField label={d().blueprint.widthField} value={width} onInput={setWidth} />
            <TextField label={d().blueprint.girthField} value={girth} onInput={setGirth} />
            <TextField label={words.mass} value={mass} onInput={setMass} numeric />
            <TextField label={words.height} value={height} onInput={setHeight} numeric />
          </div>
        </SmallForm>
      )}
    </Unfold>
  );
};
