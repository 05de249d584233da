/** The board of findings: by part or by trade, as far as round, trade, state and priority are chosen. */
import { useState } from 'preact/hooks';
import { partIds, tradeOf, trades, type Trade } from '../../../core/foot/index.ts';
import { findingStates, type Finding, type RecordId } from '../../../core/records/index.ts';
import { byUrgency } from '../../../core/review/index.ts';
import { Choice, LinkButton } from '../../parts/controls/controls.tsx';
import { d, terms } from '../../words/index.ts';
import type { TabProps } from '../desk-state.ts';
import { SelectField } from '../form-parts.tsx';
import { Some } from '../some.tsx';
import { FindingCard } from './finding-card.tsx';
import { NewFinding } from './new-finding.tsx';

const priorities = ['high', 'medium', 'low'] as const;

export const FindingsBoard = (props: TabProps) => {
  const { records, review } = props;
  const words = d().report.board;
  const [groupBy, setGroupBy] = useState<'part' | 'trade'>('trade');
  const [round, setRound] = useState<RecordId | 'any'>('any');
  const [trade, setTrade] = useState<Trade | 'any'>('any');
  const [state, setState] = useState<Finding['state'] | 'any'>('any');
  const [priority, setPriority] = useState<Finding['priority'] | 'any'>('any');
  const all = records.finding.filter(({ body }) => body.project === review.project.id);
  const fits = (wanted: string, has: string) => wanted === 'any' || wanted === has;
  const shown = all
    .filter(
      ({ body }) =>
        fits(round, body.round) &&
        fits(trade, tradeOf[body.part]) &&
        fits(state, body.state) &&
        fits(priority, body.priority),
    )
    .sort((a, b) =>
      byUrgency({ id: a.revision.id, body: a.body }, { id: b.revision.id, body: b.body }),
    );
  const groups =
    groupBy === 'part'
      ? partIds.map((part) => ({
          id: part,
          title: `${terms().parts[part].name} (${terms().parts[part].role})`,
          own: shown.filter(({ body }) => body.part === part),
        }))
      : trades.map((one) => ({
          id: one,
          title: terms().trades[one],
          own: shown.filter(({ body }) => tradeOf[body.part] === one),
        }));
  const any = { value: 'any' as const, label: words.any };
  return (
    <>
      <div class="options no-print">
        <Choice
          label={words.groupBy}
          options={[
            { value: 'trade', label: words.byTrade },
            { value: 'part', label: words.byPart },
          ]}
          value={groupBy}
          onChange={setGroupBy}
        />
        <SelectField<RecordId | 'any'>
          label={d().complaints.round}
          value={round}
          options={[any, ...review.rounds.map(({ id, name }) => ({ value: id, label: name }))]}
          onChange={setRound}
        />
        <SelectField<Trade | 'any'>
          label={words.trade}
          value={trade}
          options={[any, ...trades.map((value) => ({ value, label: terms().trades[value] }))]}
          onChange={setTrade}
        />
        <SelectField<Finding['state'] | 'any'>
          label={words.state}
          value={state}
          options={[
            any,
            ...findingStates.map((value) => ({ value, label: d().finding.states[value] })),
          ]}
          onChange={setState}
        />
        <SelectField<Finding['priority'] | 'any'>
          label={d().finding.priority}
          value={priority}
          options={[
            any,
            ...priorities.map((value) => ({ value, label: d().finding.priorities[value] })),
          ]}
          onChange={setPriority}
        />
      </div>
      <p class="soft" role="status">
        {all.length === 0
          ? words.none
          : shown.length === 0
            ? words.noneShown
            : words.shown(shown.length, all.length)}
      </p>
      <div class="row no-print">
        {review.rounds.length > 0 && <NewFinding {...props} />}
        <LinkButton href={`/desk/${review.project.id}/report`}>{d().tabs.report}</LinkButton>
      </div>
      {groups.map(({ id, title, own }) =>
        own.length === 0 ? null : (
          <section class="stack" key={id}>
            <h2>{title}</h2>
            <ul class="plain-list stack">
              <Some of={own} step={20}>
                {(finding) => (
                  <li key={finding.revision.id}>
                    <FindingCard {...props} finding={finding} />
                  </li>
                )}
              </Some>
            </ul>
          </section>
        ),
      )}
    </>
  );
};
