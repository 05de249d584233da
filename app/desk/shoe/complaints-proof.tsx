/** The figures behind the complaints of a round: who was asked, every count with its interval, pain, layers, method. */
import { useState } from 'preact/hooks';
import type { RecordId } from '../../../core/records/index.ts';
import { formatSetPercent } from '../../parts/format.ts';
import { d, terms } from '../../words/index.ts';
import { askedLines, evidenceName } from '../../words/say-complaint.ts';
import { painLines } from '../../words/say-pain.ts';
import type { TabProps } from '../desk-state.ts';
import { SelectField } from '../parts/form-parts.tsx';
import { Judged } from '../parts/judged.tsx';
import { speakerOf } from '../parts/speaker.ts';
import { CellTable } from './cell-table.tsx';
import { LayersAgainstHeat } from './layers.tsx';

export const ComplaintsProof = (props: TabProps) => {
  const words = d().complaints;
  const { review } = props;
  const [chosen, setChosen] = useState<RecordId | null>(null);
  const round =
    review.rounds.find(({ id }) => id === chosen) ??
    review.rounds.findLast(({ size }) => size.runs > 0) ??
    review.rounds.at(-1);
  if (!round) return <p>{d().rounds.none}</p>;
  const { asked, cells } = round.complaints;
  const { complaint, pain } = review.project.brief.allowedRate;
  const [painAsked, ...painSaid] = painLines(round.pain, speakerOf(props));
  return (
    <div class="stack">
      <SelectField
        label={words.round}
        value={round.id}
        options={review.rounds.map(({ id, name }) => ({ value: id, label: name }))}
        onChange={setChosen}
      />
      {askedLines(round, { desk: d() }).map((line) => (
        <p key={line}>{line}</p>
      ))}
      {asked.runs > 0 && cells.length === 0 && <p>{words.none}</p>}
      {cells.length > 0 && <CellTable {...props} round={round} key={round.id} />}
      <p>{words.how(formatSetPercent(complaint), formatSetPercent(pain))}</p>
      <h2>{d().pain.title}</h2>
      <p>
        {round.pain && (
          <Judged word={round.pain.word}>
            {evidenceName(round.pain, { desk: d(), glossary: terms() })}
          </Judged>
        )}{' '}
        {painAsked}
      </p>
      {painSaid.map((line) => (
        <p key={line}>{line}</p>
      ))}
      <LayersAgainstHeat {...props} round={round} />
    </div>
  );
};
