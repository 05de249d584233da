/** New pairs of a round: one in its form, or a boxful as a list. */
import { useState } from 'preact/hooks';
import { drawCodes } from '../../../core/panel/index.ts';
import type { Pair, RecordId, RecordOf } from '../../../core/records/index.ts';
import { parseDecimal } from '../../../core/units/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { showToast } from '../../parts/controls/toast.tsx';
import { formatDistance, formatSize } from '../../parts/format.ts';
import { d } from '../../words/index.ts';
import type { TabProps } from '../desk-state.ts';
import { saveFromForm, SmallForm, TextField, Unfold } from '../parts/form-parts.tsx';
import { readLines } from '../../drafts/lines.ts';
import { pairSchema } from '../../drafts/kept.ts';
import { useKept } from '../parts/kept.tsx';
import { ListForm } from '../parts/list-form.tsx';
import {
  draftOfPair,
  fieldOfTrouble,
  readPairDraft,
  readPairLine,
  withDrawn,
  type AboutPair,
  type PairDraft,
} from '../../drafts/pair.ts';

type Props = TabProps & { readonly round: RecordId };

/** @param but the pair whose own code is free to it */
const aboutOf = ({ records, review, round }: Props, but?: RecordId): AboutPair => ({
  project: review.project.id,
  round,
  taken: new Set(
    records.pair.flatMap(({ body, revision }) =>
      body.project === review.project.id && revision.id !== but ? [body.code] : [],
    ),
  ),
});

/** Codes are drawn anew for the whole group: a tester may hold pairs of two projects. */
const usedIn = ({ records }: Props): ReadonlySet<string> =>
  new Set(records.pair.map(({ body }) => body.code));

const newSeed = (): number => crypto.getRandomValues(new Uint32Array(1))[0] ?? 0;

/** A box of more is two boxes; it keeps a slip of the finger from drawing every code there is. */
const MOST_DRAWN = 200;

export const PairForm = (props: Props) => (
  <Unfold label={d().rounds.addPair}>{(close) => <Fields {...props} close={close} />}</Unfold>
);

/** The form of a pair that is on record, to put its own data right. */
export const EditPair = (
  props: TabProps & { readonly pair: RecordId; readonly close: () => void },
) => {
  const of = props.records.pair.find(({ revision }) => revision.id === props.pair);
  return of ? <Fields {...props} round={of.body.round} of={of} /> : null;
};

const Fields = (props: Props & { readonly of?: RecordOf<'pair'>; readonly close: () => void }) => {
  const words = d().rounds;
  const { of } = props;
  const kept = useKept<PairDraft>({
    key: of ? `pair ${of.revision.id}` : `new pair ${props.round}`,
    of: of?.revision.stamp,
    schema: pairSchema,
    begin: () => (of ? draftOfPair(of.body) : { code: '', size: '42', carried: '' }),
  });
  const { draft, setDraft } = kept;
  /** Saving was tried: from then on each field says what is wrong with it. */
  const [tried, setTried] = useState(false);
  const change = (part: Partial<PairDraft>) => setDraft((now) => ({ ...now, ...part }));
  const read = readPairDraft(draft, aboutOf(props, of?.revision.id), of?.body ?? null);
  const troubles = tried && !read.ok ? read.troubles : [];
  const draw = () => {
    const [code] = drawCodes(1, usedIn(props), newSeed()) ?? [];
    if (code === undefined) showToast({ text: d().panel.plan.noCode });
    else change({ code });
  };
  const save = async () => {
    setTried(true);
    if (!read.ok) return '';
    const saved = await saveFromForm('pair', read.body, of?.revision.id);
    if (typeof saved === 'string') return saved;
    await kept.done();
    props.close();
    return null;
  };
  const fieldProps = (field: keyof PairDraft) => {
    const why = troubles.find((one) => fieldOfTrouble[one] === field);
    return {
      value: draft[field],
      onInput: (value: string) => change({ [field]: value }),
      error: why && words.pairWrong[why],
    };
  };
  return (
    <SmallForm save={save} kept={kept}>
      <div class="field-row">
        <TextField label={words.code} hint={words.codeHint} {...fieldProps('code')} />
        <TextField label={words.size} {...fieldProps('size')} numeric />
        <TextField label={words.carriedIn} {...fieldProps('carried')} numeric optional />
      </div>
      {!of && (
        <div class="row">
          <Button kind="quiet" onClick={draw}>
            {d().panel.plan.drawCode}
          </Button>
        </div>
      )}
    </SmallForm>
  );
};

export const PairsForm = (props: Props) => (
  <Unfold label={d().rounds.addPairs}>{(close) => <List {...props} close={close} />}</Unfold>
);

const pairInWords = ({ code, sizeMm, carriedInM }: Pair): string =>
  [
    code,
    formatSize(sizeMm),
    ...(carriedInM === undefined ? [] : [d().rounds.carried(formatDistance(carriedInM))]),
  ].join(', ');

const List = (props: Props & { readonly close: () => void }) => {
  const words = d().rounds;
  const [text, setText] = useState('');
  const [size, setSize] = useState('');
  const [count, setCount] = useState('');
  const about = aboutOf(props);
  const rows = readLines(text, (line) => readPairLine(line, size, about));
  const draw = () => {
    const many = parseDecimal(count);
    if (many === null || !Number.isInteger(many) || many < 1 || many > MOST_DRAWN)
      return showToast({ text: `${words.howMany}: ${d().wrongNumber}` });
    const drawn = withDrawn(text, many, size, usedIn(props), newSeed());
    if (drawn === null) showToast({ text: d().panel.plan.noCode });
    else setText(drawn);
  };
  return (
    <ListForm
      label={words.list}
      hint={words.listHint}
      text={text}
      onText={setText}
      rows={rows}
      count={words.pairs}
      says={pairInWords}
      whys={words.pairWrong}
      save={async (body) => {
        const saved = await saveFromForm('pair', body);
        return typeof saved === 'string' ? saved : null;
      }}
      close={props.close}
    >
      <div class="field-row">
        <TextField
          label={words.size}
          hint={words.usualSizeHint}
          value={size}
          onInput={setSize}
          numeric
          optional
        />
        <TextField label={words.howMany} value={count} onInput={setCount} numeric optional />
      </div>
      <div class="row">
        <Button onClick={draw}>{words.drawCodes}</Button>
      </div>
    </ListForm>
  );
};
