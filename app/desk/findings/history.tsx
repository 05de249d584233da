/** All that was ever saved of a finding: who, when, and what changed; and what lost to a change it had not seen. */
import { unseenByHead, type Finding, type RecordId } from '../../../core/records/index.ts';
import { Notice } from '../../parts/controls/controls.tsx';
import { formatDate, formatDateTime, formatNumber } from '../../parts/format.ts';
import { session, useStored } from '../../parts/state.ts';
import { d, saidOf, terms } from '../../words/index.ts';
import { speakerOf } from '../parts/speaker.ts';
import type { FindingProps } from './finding-props.ts';
import { revisionsOf, type ToldField, type ToldRevision } from './revisions.ts';

const fieldName = (field: ToldField): string => {
  const { finding, report } = d();
  const { board } = report;
  return {
    title: board.titleField,
    part: finding.part,
    priority: finding.priority,
    state: board.state,
    wanted: finding.wanted,
    wantedMm: finding.wantedMm,
    carriedBy: finding.carriedBy,
    evidence: board.evidence,
    outcome: board.outcome,
    photos: board.photos,
  }[field];
};

const plain = (value: unknown): string =>
  typeof value === 'string' ? value : (JSON.stringify(value) ?? '');

/** A value of a field as a person reads it; what a newer app wrote there is shown as it is. */
const inWords = (field: ToldField, value: unknown, round: (id: RecordId) => string): string => {
  if (value === undefined || value === '') return d().report.board.nothing;
  const { finding } = d();
  const of = value as NonNullable<Finding[ToldField]>;
  switch (field) {
    case 'part':
      return terms().parts[of as Finding['part']]?.name ?? plain(value);
    case 'priority':
      return finding.priorities[of as Finding['priority']] ?? plain(value);
    case 'state':
      return finding.states[of as Finding['state']] ?? plain(value);
    case 'carriedBy':
      return round(of as RecordId);
    case 'wantedMm':
      return formatNumber(Number(value), 2);
    case 'photos':
      return String((value as readonly unknown[]).length);
    case 'evidence':
      return finding.frozen(formatDate((of as NonNullable<Finding['evidence']>).until));
    case 'outcome':
      return (
        terms().changeVerdicts[(of as NonNullable<Finding['outcome']>).verdict]?.name ??
        plain(value)
      );
    case 'title':
    case 'wanted':
      return plain(value);
  }
};

const Told = ({
  revision,
  round,
  who,
}: {
  revision: ToldRevision;
  round: (id: RecordId) => string;
  who: (author: RecordId) => string;
}) => {
  const { board } = d().report;
  const { what, changes } = revision;
  return (
    <li>
      <p class="soft small">{board.saved(formatDateTime(revision.atMs), who(revision.author))}</p>
      {what !== 'changed' && <p>{board[what]}</p>}
      {what === 'changed' && changes.length === 0 && <p>{board.same}</p>}
      {changes.length > 0 && (
        <ul>
          {changes.map(({ field, from, to }) => (
            <li key={field}>
              {board.change(
                fieldName(field),
                inWords(field, from, round),
                inWords(field, to, round),
              )}
            </li>
          ))}
        </ul>
      )}
    </li>
  );
};

export const FindingHistory = (props: FindingProps) => {
  const { finding } = props;
  const { board } = d().report;
  const { id } = finding.revision;
  const history = useStored((from) => from.history(id), ['finding'], [id]);
  if (!history) return null;
  const { round } = speakerOf(props);
  const who = (author: RecordId) =>
    author === session.value?.member ? board.you : board.otherLead;
  const unseen = new Set(unseenByHead(history).map(({ hash }) => hash as string));
  const all = revisionsOf(history);
  const beside = all.filter(({ hash }) => unseen.has(hash));
  return (
    <section class="stack" aria-label={saidOf(board.history, finding.body.title)}>
      {beside.length > 0 && (
        <Notice tone="warn">
          <p>{board.beside}</p>
          <ul class="plain-list">
            {beside.map((revision) => (
              <Told key={revision.hash} revision={revision} round={round} who={who} />
            ))}
          </ul>
        </Notice>
      )}
      <ol class="plain-list stack">
        {all.map((revision) => (
          <Told key={revision.hash} revision={revision} round={round} who={who} />
        ))}
      </ol>
    </section>
  );
};
