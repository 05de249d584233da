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

const changeInWords = ({ kind, effect, label, nameBefore }: FileChange): string => {
  const words = fileWords();
  const [one] = kindsInWords(kind);
  const name = nameInWords(kind, label.name);
  if (effect === 'renames') return words.renames(one, nameInWords(kind, nameBefore), name);
  const { at, pairs, tester, distanceM } = label;
  return words.effects[effect](
    words.record({
      kind: one,
      name,
      at: at === null ? '' : formatDate(at),
      pairs,
      tester: tester ?? '',
      distance: distanceM === null ? '' : formatDistance(distanceM as Metres),
    }),
  );
};

/** Photos are told by their number: one says nothing of itself. */
const isPhotoAdded = ({ kind, effect }: FileChange): boolean =>
  kind === 'attachment' && effect === 'adds';

const linesOf = (changes: readonly FileChange[]): readonly string[] => {
  const photos = changes.filter(isPhotoAdded).length;
  return [
    ...changes.filter((change) => !isPhotoAdded(change)).map(changeInWords),
    ...(photos > 0
      ? [fileWords().addsMany(photos, kindsInWords('attachment')[photos === 1 ? 0 : 1])]
      : []),
  ];
};

/** A person looks through so many lines; the others open below them. */
const SHOWN = 8;

const List = ({ lines }: { lines: readonly string[] }) => (
  <ul class="plain-list">
    {lines.map((line, at) => (
      <li key={at}>{line}</li>
    ))}
  </ul>
);

const Changes = ({ changes }: { changes: readonly FileChange[] }) => {
  const lines = linesOf(changes);
  const rest = lines.slice(SHOWN);
  return (
    <>
      <List lines={lines.slice(0, SHOWN)} />
      {rest.length > 0 && (
        <details>
          <summary class="button button-quiet">{fileWords().more(rest.length)}</summary>
          <List lines={rest} />
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
          {setsUp.role === 'lead'
            ? words.setsUp.lead(setsUp.groupName)
            : words.setsUp.tester(own?.label.name ?? '?', setsUp.groupName)}
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
