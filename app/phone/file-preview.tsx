/** What taking a file in would change, record by record, and what of it a person has to agree to first. */
import { isKind, type FileChange } from '../../core/records/index.ts';
import type { Metres } from '../../core/units/index.ts';
import { Notice } from '../parts/controls/controls.tsx';
import { formatDate, formatDateTime, formatDistance } from '../parts/format.ts';
import type { FilePart, FilePreview, Person } from '../store/index.ts';
import { fileWords } from '../words/index.ts';

const personInWords = ({ is, code, name }: Person): string => {
  const { people } = fileWords();
  return is === 'tester' ? people.tester(code ?? '?', name ?? '') : people[is];
};

const kindsInWords = (kind: string): readonly [string, string] =>
  isKind(kind) ? fileWords().kinds[kind] : fileWords().unknownKind;

/** Codes stand as they are; what somebody typed stands in quotation marks. */
const nameInWords = (kind: string, name: string | null): string =>
  name === null ? '' : kind === 'pair' || kind === 'tester' ? name : fileWords().quoted(name);

/** A distance that is changed is said as it was and as it would be. */
const distanceInWords = ({ label, before }: FileChange): string => {
  const said = [before?.distanceM ?? null, label.distanceM].flatMap((metres) =>
    metres === null ? [] : [formatDistance(metres as Metres)],
  );
  return [...new Set(said)].join(' → ');
};

const changeInWords = (change: FileChange): string => {
  const { kind, effect, label, before } = change;
  const words = fileWords();
  const [one] = kindsInWords(kind);
  const name = nameInWords(kind, label.name);
  if (effect === 'renames')
    return words.renames(one, nameInWords(kind, before?.name ?? null), name);
  const { at, pairs, tester } = label;
  return words.effects[effect](
    words.record({
      kind: one,
      name,
      at: at === null ? '' : formatDate(at),
      pairs,
      tester: tester ?? '',
      distance: distanceInWords(change),
    }),
  );
};

/** So many new records of one kind are named one by one; more are counted. */
const NAMED = 3;
/** A person looks through so many lines; the others open below them. */
const SHOWN = 8;
/** A page with more lines than this is slow to open; the gravest come first. */
const MOST_LISTED = 1000;

/** The lines that tell some changes, and those that open below them. */
const linesOf = (
  changes: readonly FileChange[],
): { readonly shown: readonly string[]; readonly more: readonly string[] } => {
  const added = new Map<string, FileChange[]>();
  for (const change of changes) {
    if (change.effect !== 'adds') continue;
    const ofKind = added.get(change.kind);
    if (ofKind) ofKind.push(change);
    else added.set(change.kind, [change]);
  }
  // A photo says nothing of itself.
  const isCounted = (kind: string) =>
    kind === 'attachment' || (added.get(kind)?.length ?? 0) > NAMED;
  const named = changes.filter(({ effect, kind }) => effect !== 'adds' || !isCounted(kind));
  const counted = [...added].filter(([kind]) => isCounted(kind));
  const counts = counted.map(([kind, { length }]) =>
    fileWords().addsMany(length, kindsInWords(kind)[length === 1 ? 0 : 1]),
  );
  const shown = [...named.map(changeInWords), ...counts];
  const single = counted.flatMap(([kind, ones]) => (kind === 'attachment' ? [] : ones));
  return {
    shown: shown.slice(0, SHOWN),
    more: [...shown.slice(SHOWN), ...single.map(changeInWords)],
  };
};

const List = ({ lines }: { lines: readonly string[] }) => (
  <ul class="plain-list">
    {lines.map((line, at) => (
      <li key={at}>{line}</li>
    ))}
  </ul>
);

const Changes = ({ changes }: { changes: readonly FileChange[] }) => {
  const { shown, more } = linesOf(changes);
  return (
    <>
      <List lines={shown} />
      {more.length > 0 && (
        <details>
          <summary class="button button-quiet">{fileWords().more(more.length)}</summary>
          <List lines={more.slice(0, MOST_LISTED)} />
          {more.length > MOST_LISTED && <p>{fileWords().notListed(more.length - MOST_LISTED)}</p>}
        </details>
      )}
    </>
  );
};

const erases = ({ effect }: FileChange): boolean =>
  effect === 'erases' || effect === 'erases-for-good';

/** What is taken in without a choice; what it erases stands apart. */
const Taken = ({ changes }: FilePart) => {
  const words = fileWords();
  const erased = changes.filter(erases);
  const others = changes.filter((change) => !erases(change));
  return (
    <>
      {erased.length > 0 && (
        <Notice tone="danger">
          <h3>{words.erases}</h3>
          <Changes changes={erased} />
        </Notice>
      )}
      {others.length > 0 && (
        <section class="stack">
          <h3>{words.takes}</h3>
          <Changes changes={others} />
        </section>
      )}
    </>
  );
};

const Agreement = (props: {
  readonly part: FilePreview['asked'][number];
  readonly label: string;
  readonly checked: boolean;
  readonly onToggle: () => void;
}) => (
  <Notice tone={props.part.erases ? 'danger' : 'warn'}>
    <label class="row">
      <input
        type="checkbox"
        class="tick"
        checked={props.checked}
        onChange={() => props.onToggle()}
      />
      <strong>{props.label}</strong>
    </label>
    <Changes changes={props.part.changes} />
  </Notice>
);

/** Who made the file, when, and whose device it would make of this one. */
const Origin = ({ preview }: { preview: FilePreview }) => {
  const words = fileWords();
  const { header, maker, setsUp, taken } = preview;
  const when = formatDateTime(header.madeAt);
  const own = taken.changes.find(({ id }) => id === setsUp?.member);
  return (
    <>
      <h2>{header.groupName ?? ''}</h2>
      {setsUp && (
        <p>
          {setsUp.role === 'tester'
            ? words.setsUp.tester(own?.label.name ?? '?', setsUp.groupName)
            : words.setsUp[setsUp.role](setsUp.groupName)}
        </p>
      )}
      <p class="soft">
        {maker ? words.madeBy(personInWords(maker), when) : words.madeByNobody(when)}
      </p>
    </>
  );
};

export interface PreviewProps {
  readonly preview: FilePreview;
  /** Keys of the parts that the person agreed to. */
  readonly chosen: ReadonlySet<string>;
  readonly onToggle: (key: string) => void;
}

export const Preview = ({ preview, chosen, onToggle }: PreviewProps) => {
  const words = fileWords();
  const { maker, setsUp, taken, asked, known, away, attachments, problems } = preview;
  const fresh = asked.reduce((sum, { entries }) => sum + entries, taken.entries);
  const isBackup = setsUp?.role === 'lead';
  const hint = isBackup
    ? words.backupHint
    : maker?.is === 'tester'
      ? words.asksHint.tester(personInWords(maker))
      : words.asksHint.nobody;
  return (
    <>
      <Origin preview={preview} />
      <p>
        {[
          fresh === 0 ? words.nothingNew : words.contains(fresh, known),
          ...(attachments > 0 ? [words.attachments(attachments)] : []),
        ].join(' · ')}
      </p>
      {away > 0 && <p>{words.away(away)}</p>}
      {problems.length > 0 && <p>{words.problems(problems.length)}</p>}
      <Taken {...taken} />
      {asked.length > 0 && (
        <section class="stack">
          {!isBackup && <h3>{words.asks}</h3>}
          <p>{hint}</p>
          {asked.map((part) => {
            const who = personInWords(part.author);
            const agree = part.erases ? words.agreeErase : words.agree;
            return (
              <Agreement
                key={part.key}
                part={part}
                label={isBackup ? words.backup : agree(who, part.entries)}
                checked={chosen.has(part.key)}
                onToggle={() => onToggle(part.key)}
              />
            );
          })}
          {!isBackup && <p class="soft small">{words.later}</p>}
        </section>
      )}
    </>
  );
};
