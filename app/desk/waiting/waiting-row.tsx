/** One run, reading or gauge that waits: what it is, what speaks against it, and what can be done. */
import { useState } from 'preact/hooks';
import type { RecordId, Ruling } from '../../../core/records/index.ts';
import type { DecidedItem, WaitingItem } from '../../../core/review/index.ts';
import { parseDecimal } from '../../../core/units/typed.ts';
import { Button, LinkButton } from '../../parts/controls/controls.tsx';
import { showToast } from '../../parts/controls/toast.tsx';
import { formatDate } from '../../parts/format.ts';
import { store } from '../../parts/state.ts';
import { d, t, terms } from '../../words/index.ts';
import { waitingInWords } from '../../words/say-waiting.ts';
import type { TabProps } from '../desk-state.ts';
import { linksOf } from '../frame/route.ts';
import { SmallForm, TextField } from '../parts/form-parts.tsx';
import { speakerOf } from '../parts/speaker.ts';
import { correctedCheck, decisionsOn, usualReason, type Decidable } from './decision.ts';
import { saveDecisions } from './save-decision.ts';

type RowProps = TabProps & { readonly item: WaitingItem };
type ReadingItem = Extract<WaitingItem, { about: 'reading' }>;

const countLabel = ({ about }: Pick<Decidable, 'about'>): string => {
  const words = d().waiting;
  return { run: words.countRun, reading: words.countReading, gauge: words.countReadings }[about];
};
const setAsideLabel = ({ about }: Pick<Decidable, 'about'>): string => {
  const words = d().waiting;
  return {
    run: words.setRunAside,
    reading: words.setReadingAside,
    gauge: words.setReadingsAside,
  }[about];
};

const decide = (item: Decidable, project: RecordId, ruling: Ruling, why: string) =>
  saveDecisions(
    decisionsOn(item, { project, ruling, why }, Date.now()),
    ruling === 'counted' ? d().waiting.countedNow : d().waiting.setAsideNow,
  );

export const WaitingRow = (props: RowProps) => {
  const { item, review } = props;
  const words = d().waiting;
  const project = review.project.id;
  const [open, setOpen] = useState<'aside' | 'correct' | null>(null);
  const { what, why } = waitingInWords(item, speakerOf(props), formatDate);
  const close = () => setOpen(null);
  return (
    <li class="waiting-row stack">
      <div>
        <strong>{what}</strong>
        {why.map((line) => (
          <p key={line} class="small">
            {line}
          </p>
        ))}
      </div>
      {open === 'aside' ? (
        <AsideForm item={item} project={project} close={close} />
      ) : open === 'correct' && item.about === 'reading' ? (
        <CorrectForm {...props} item={item} close={close} />
      ) : (
        <div class="row">
          <Button onClick={() => void decide(item, project, 'counted', words.checked)}>
            {countLabel(item)}
          </Button>
          {item.about === 'reading' && (
            <Button onClick={() => setOpen('correct')}>{words.correctReading}</Button>
          )}
          {item.about === 'run' && (
            <LinkButton href={linksOf(project).place('runs', item.subject.record, 'correct')}>
              {words.correctRun}
            </LinkButton>
          )}
          <Button onClick={() => setOpen('aside')}>{setAsideLabel(item)}</Button>
        </div>
      )}
    </li>
  );
};

const Cancel = ({ close }: { readonly close: () => void }) => (
  <Button kind="quiet" onClick={close}>
    {d().cancel}
  </Button>
);

const AsideForm = (props: {
  readonly item: WaitingItem;
  readonly project: RecordId;
  readonly close: () => void;
}) => {
  const words = d().waiting;
  const [why, setWhy] = useState(usualReason(props.item, words));
  const save = async () => {
    if (await decide(props.item, props.project, 'set-aside', why)) props.close();
    return null;
  };
  return (
    <SmallForm save={save} label={setAsideLabel(props.item)}>
      <TextField label={words.reason} value={why} onInput={setWhy} optional />
      <Cancel close={props.close} />
    </SmallForm>
  );
};

/** Saves the check anew with the right value; what was decided of it before says nothing of the new one. */
const CorrectForm = (
  props: TabProps & { readonly item: ReadingItem; readonly close: () => void },
) => {
  const { item, records, close } = props;
  const words = d().waiting;
  const { reading, doubt, subject } = item;
  const [typed, setTyped] = useState(String(doubt.instead ?? reading.value));
  const save = async () => {
    const right = parseDecimal(typed);
    const before = records['bench-check'].find(
      ({ revision }) => revision.id === subject.record,
    )?.body;
    const after = right === null || !before ? null : correctedCheck(before, reading, right);
    if (!before || !after) return d().wrongNumber;
    const saved = await store.save('bench-check', after, subject.record);
    if (!saved.ok) return d().trouble;
    showToast({
      text: words.corrected,
      action: {
        label: t().undo,
        run: () => void store.save('bench-check', before, subject.record),
      },
    });
    close();
    return null;
  };
  return (
    <SmallForm save={save} label={words.saveCorrection}>
      <TextField
        label={words.rightValue(terms().units[reading.unit])}
        value={typed}
        onInput={setTyped}
        numeric
      />
      <Cancel close={close} />
    </SmallForm>
  );
};

/** Turns a decision round by a new one. */
export const ReverseButton = (props: {
  readonly project: RecordId;
  readonly item: DecidedItem;
}) => {
  const { item, project } = props;
  const words = d().waiting;
  const isAside = item.ruling === 'set-aside';
  return (
    <Button
      kind="quiet"
      onClick={() =>
        void decide(
          item,
          project,
          isAside ? 'counted' : 'set-aside',
          isAside ? words.checked : usualReason(item, words),
        )
      }
    >
      {isAside ? countLabel(item) : setAsideLabel(item)}
    </Button>
  );
};
