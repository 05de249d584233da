/** Who did what in the group: who came in, who was signed out, who invited whom. */
import { useState } from 'preact/hooks';
import { Button } from '../../parts/controls/controls.tsx';
import { formatDateTime } from '../../parts/format.ts';
import { store } from '../../parts/state.ts';
import { d, terms } from '../../words/index.ts';
import type { HubClient } from '../../store/index.ts';
import type { DeskRecords } from '../worker/desk-work.ts';

type Entry = Extract<
  Awaited<ReturnType<HubClient['audit']>>,
  { ok: true }
>['value']['entries'][number];

export const Audit = ({ records }: { records: DeskRecords }) => {
  const words = d().audit;
  const [entries, setEntries] = useState<readonly Entry[] | null>(null);
  const read = async () => {
    const answer = await (await store.hub())?.audit();
    if (answer?.ok) setEntries(answer.value.entries);
  };
  const codes = new Map<string, string>(
    records.tester.map(({ body, revision }) => [revision.id, body.code]),
  );
  const said = ({ what, subject }: Entry) => {
    const [verb = '', role] = what.split(' ');
    const deed = words.deeds[verb as keyof typeof words.deeds] ?? what;
    const whom = [
      role === undefined ? null : (terms().roles as Readonly<Record<string, string>>)[role],
      subject === null ? null : (codes.get(subject) ?? subject.slice(0, 8)),
    ].filter((part) => part !== null && part !== undefined);
    return [deed, ...whom].join(' ');
  };
  return (
    <>
      <h2>{words.title}</h2>
      <p class="soft">{words.hint}</p>
      {entries === null ? (
        <Button onClick={() => void read()}>{words.show}</Button>
      ) : (
        <div class="table-wrap" tabIndex={0} role="region" aria-label={words.title}>
          <table>
            <thead>
              <tr>
                <th scope="col">{words.when}</th>
                <th scope="col">{words.who}</th>
                <th scope="col">{words.what}</th>
              </tr>
            </thead>
            <tbody>
              {entries.map((entry) => (
                <tr key={entry.entry}>
                  <td>{formatDateTime(entry.atMs)}</td>
                  <td>{codes.get(entry.member ?? '') ?? words.lead}</td>
                  <td>{said(entry)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
    </>
  );
};
