/** What bothered whom where, and what of it is proven: foot maps, what recurs, and the same as a table. */
import { useState } from 'preact/hooks';
import type { ComplaintKind, ZoneCode } from '../../../core/foot/index.ts';
import type { Foot, RecordId } from '../../../core/records/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { formatSetPercent } from '../../parts/format.ts';
import { d } from '../../words/index.ts';
import { askedLines } from '../../words/say-complaint.ts';
import type { TabProps } from '../desk-state.ts';
import { SelectField } from '../form-parts.tsx';
import { CellTable } from './cell-table.tsx';
import { Findings } from './findings.tsx';
import { LayersAgainstHeat } from './layers.tsx';
import { ComplaintMaps } from './maps.tsx';
import { PainPart } from './pain-part.tsx';
import { Recurring } from './recurring.tsx';
import { RunsBehind } from './runs-behind.tsx';
import './complaints.css';

export const Complaints = (props: TabProps) => {
  const words = d().complaints;
  const { review } = props;
  const [chosen, setChosen] = useState<RecordId | null>(null);
  const [besideId, setBeside] = useState<RecordId | 'none'>('none');
  const [open, setOpen] = useState<{ foot: Foot; zone: ZoneCode } | null>(null);
  const [kind, setKind] = useState<ComplaintKind | 'any'>('any');
  const withRuns = review.rounds.filter(({ size }) => size.runs > 0);
  const round =
    review.rounds.find(({ id }) => id === chosen) ?? withRuns.at(-1) ?? review.rounds.at(-1);
  if (!round) return <p>{d().rounds.none}</p>;
  const others = review.rounds.filter(({ id }) => id !== round.id);
  const beside = others.find(({ id }) => id === besideId) ?? null;
  const { asked, cells } = round.complaints;
  const { complaint, pain } = review.project.brief.allowedRate;
  return (
    <>
      <div class="options no-print">
        <SelectField
          label={words.round}
          value={round.id}
          options={review.rounds.map(({ id, name }) => ({ value: id, label: name }))}
          onChange={(id) => {
            setChosen(id);
            setOpen(null);
          }}
        />
        {others.length > 0 && (
          <SelectField<RecordId | 'none'>
            label={words.beside}
            value={beside?.id ?? 'none'}
            options={[
              { value: 'none', label: words.noOther },
              ...others.map(({ id, name }) => ({ value: id, label: name })),
            ]}
            onChange={setBeside}
          />
        )}
        <Button kind="quiet" onClick={() => window.print()}>
          {words.print}
        </Button>
      </div>
      <h2>{round.name}</h2>
      {askedLines(round, { desk: d() }).map((line) => (
        <p key={line}>{line}</p>
      ))}
      <div class={beside ? 'stack' : 'two-columns'}>
        <ComplaintMaps
          {...props}
          rounds={beside ? [round, beside] : [round]}
          open={open}
          onPick={(foot, zone) => setOpen({ foot, zone })}
          kind={kind}
          onKind={setKind}
        />
        <section class="stack">
          {open ? (
            <RunsBehind {...props} round={round} kind={kind === 'any' ? null : kind} {...open} />
          ) : (
            <p class="soft no-print">{words.pick}</p>
          )}
        </section>
      </div>
      {(asked.runs > 0 || round.pain) && <PainPart {...props} round={round} />}
      {asked.runs > 0 && (
        <>
          <Recurring {...props} round={round} key={round.id} />
          {cells.length === 0 ? <p>{words.none}</p> : <CellTable {...props} round={round} />}
          <p class="soft small">{words.how(formatSetPercent(complaint), formatSetPercent(pain))}</p>
        </>
      )}
      <LayersAgainstHeat {...props} round={round} />
      <Findings {...props} round={round} />
    </>
  );
};
