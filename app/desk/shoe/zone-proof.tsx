/** The figures behind a complaint, round by round: how sure, when, with whom, and when testers first had it twice. */
import { useState } from 'preact/hooks';
import type { CellName } from '../../../core/complaints/index.ts';
import type { RecordId } from '../../../core/records/index.ts';
import type { CellSummary, CloserLook, RoundSummary } from '../../../core/review/index.ts';
import { SurvivalChart } from '../../parts/charts/survival-chart.tsx';
import { formatSetPercent } from '../../parts/format.ts';
import { settings } from '../../parts/settings.ts';
import { d, p, t, terms } from '../../words/index.ts';
import {
  askedLines,
  cellLines,
  evidenceName,
  lookLines,
  suspectLine,
} from '../../words/say-complaint.ts';
import { useWork, type TabProps } from '../desk-state.ts';
import { SelectField } from '../parts/form-parts.tsx';
import { Judged } from '../parts/judged.tsx';
import { speakerOf } from '../parts/speaker.ts';

/** A round in which the complaint was reported, with its counts. */
export interface RoundCell {
  readonly round: RoundSummary;
  readonly cell: CellSummary;
}

/** By order. */
export const roundsWith = (
  rounds: readonly RoundSummary[],
  { zone, kind }: CellName,
): readonly RoundCell[] =>
  rounds.flatMap((round) => {
    const cell = round.complaints.cells.find((one) => one.zone === zone && one.kind === kind);
    return cell ? [{ round, cell }] : [];
  });

const Look = (props: TabProps & RoundCell & { readonly look: CloserLook }) => {
  const { look } = props;
  const words = d().complaints;
  return (
    <>
      {lookLines(look, speakerOf(props)).map((line) => (
        <p key={line}>{line}</p>
      ))}
      {look.firstRepeat.repeated > 0 && (
        <SurvivalChart
          title={words.firstRepeat}
          xTitle={d().bench.xTitle(settings.value.distance)}
          yTitle={words.withoutIt}
          eventName={words.withItTwice}
          steps={look.firstRepeat.steps}
        />
      )}
    </>
  );
};

export const ZoneProof = (
  props: TabProps & {
    readonly cells: readonly RoundCell[];
    /** The round that is shown first. */
    readonly first: RecordId;
  },
) => {
  const { review, records, cells, first } = props;
  const words = d().complaints;
  const [chosen, setChosen] = useState(first);
  const shown = cells.find(({ round }) => round.id === chosen) ?? cells[0];
  const cell = shown?.cell ?? null;
  const round = shown?.round.id ?? null;
  const look = useWork(
    async (desk) =>
      cell && round
        ? desk.zoneProof(review.project.id, round, { zone: cell.zone, kind: cell.kind })
        : null,
    records,
    [round, cell?.zone, cell?.kind],
  );
  if (!shown) return null;
  const speaker = speakerOf(props);
  const { complaint, pain } = review.project.brief.allowedRate;
  return (
    <div class="stack">
      <SelectField
        label={p().shoe.zone.round}
        value={shown.round.id}
        options={cells.map(({ round: { id, name } }) => ({ value: id, label: name }))}
        onChange={setChosen}
      />
      <p>
        <Judged word={shown.cell.word}>{evidenceName(shown.cell, speaker)}</Judged>{' '}
        {terms().evidence[shown.cell.word].meaning}
      </p>
      {askedLines(shown.round, { desk: d() }).map((line) => (
        <p key={line}>{line}</p>
      ))}
      {cellLines(shown.cell, shown.round.complaints, speaker).map((line) => (
        <p key={line}>{line}</p>
      ))}
      <h2>{words.look}</h2>
      {look ? <Look {...props} {...shown} look={look} /> : <p>{t().loading}</p>}
      <p>{suspectLine(shown.cell, speaker)}</p>
      <p>{words.how(formatSetPercent(complaint), formatSetPercent(pain))}</p>
    </div>
  );
};
