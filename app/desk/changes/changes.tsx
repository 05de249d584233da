/** What did the changes between two rounds do? Each with its verdict, its figures and its testers. */
import { useState } from 'preact/hooks';
import type { RecordId } from '../../../core/records/index.ts';
import type { Hands, RoundComparison } from '../../../core/review/index.ts';
import { Button, Choice, Notice } from '../../parts/controls/controls.tsx';
import { d, t } from '../../words/index.ts';
import { knewLine, orderLine } from '../../words/say-change.ts';
import { ComfortChanges } from '../comfort.tsx';
import { useWork, type TabProps } from '../desk-state.ts';
import { SelectField } from '../form-parts.tsx';
import { speakerOf } from '../speaker.ts';
import { BenchTable } from './bench-table.tsx';
import { CellChanges, NewComplaints } from './cell-changes.tsx';
import { ChangeSheet } from './change-sheet.tsx';

export const Changes = (props: TabProps) => {
  const { review, records } = props;
  const words = d().changes;
  const [chosen, setChosen] = useState<{ earlier?: RecordId; later?: RecordId }>({});
  const [hands, setHands] = useState<Hands>('all');
  const { rounds } = review;
  const worn = rounds.filter(({ size }) => size.runs > 0);
  // The last two with runs; a round that was chosen and has gone is no choice any more.
  const later =
    rounds.find(({ id, order }) => id === chosen.later && order > (rounds[0]?.order ?? 0)) ??
    (worn.length > 1 ? worn.at(-1) : rounds.at(-1));
  const before = rounds.filter(({ order }) => later && order < later.order);
  const earlier =
    before.find(({ id }) => id === chosen.earlier) ??
    before.filter(({ size }) => size.runs > 0).at(-1) ??
    before.at(-1);
  const found = useWork(
    async (desk) =>
      earlier && later ? desk.compareRounds(review.project.id, earlier.id, later.id, hands) : null,
    records,
    [review.project.id, earlier?.id, later?.id, hands],
  );
  if (!earlier || !later) return <p>{words.oneRound}</p>;
  return (
    <>
      <div class="options no-print">
        <SelectField
          label={words.later}
          value={later.id}
          options={rounds.slice(1).map(({ id, name }) => ({ value: id, label: name }))}
          onChange={(id) => setChosen({ later: id })}
        />
        <SelectField
          label={words.earlier}
          value={earlier.id}
          options={before.map(({ id, name }) => ({ value: id, label: name }))}
          onChange={(id) => setChosen({ later: later.id, earlier: id })}
        />
        <Button kind="quiet" onClick={() => window.print()}>
          {d().complaints.print}
        </Button>
      </div>
      <h2>{words.against(later.name, earlier.name)}</h2>
      {found ? (
        <Comparison {...props} found={found} onHands={setHands} />
      ) : (
        <p class="soft">{t().loading}</p>
      )}
    </>
  );
};

const Comparison = (
  props: TabProps & { found: RoundComparison; onHands: (hands: Hands) => void },
) => {
  const { found, onHands } = props;
  const words = d().changes;
  const speaker = speakerOf(props);
  const { both, onlyEarlier, onlyLater } = found.testers;
  const [earlier, later] = [speaker.round(found.earlier), speaker.round(found.later)];
  const knew = knewLine(found, speaker);
  const order = orderLine(found, speaker);
  return (
    <>
      <p>{words.worn(both, earlier, onlyEarlier, later, onlyLater)}</p>
      {order && <p>{order}</p>}
      {knew && (
        <Notice tone="danger">
          <p>{knew}</p>
          {found.hands === 'blind-only' && <p>{words.blindRead}</p>}
          <span class="no-print">
            <Choice<Hands>
              label={words.hands}
              options={[
                { value: 'all', label: words.allHands },
                { value: 'blind-only', label: words.blindHands },
              ]}
              value={found.hands}
              onChange={onHands}
            />
          </span>
        </Notice>
      )}
      <section class="stack">
        <h2>{words.list}</h2>
        {found.changes.length === 0 ? (
          <p>{words.noChanges}</p>
        ) : (
          <ul class="plain-list stack">
            {found.changes.map((change, at) => (
              <li key={`${change.round} ${at}`}>
                <ChangeSheet {...props} change={change} rounds={found} />
              </li>
            ))}
          </ul>
        )}
      </section>
      <NewComplaints {...props} found={found} />
      {found.comfort.same.length + found.comfort.onlyOne.length === 0 ? (
        <p>{words.noComfort}</p>
      ) : (
        (
          [
            ['same', words.comfortSame],
            ['onlyOne', words.comfortOne],
          ] as const
        ).map(
          ([who, title]) =>
            found.comfort[who].length > 0 && (
              <ComfortChanges key={who} title={title} changes={found.comfort[who]} />
            ),
        )
      )}
      <BenchTable {...props} found={found} />
      <CellChanges {...props} found={found} />
      <p class="soft small">{words.how}</p>
    </>
  );
};
