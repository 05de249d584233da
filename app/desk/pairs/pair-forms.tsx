/** New pairs of a round: one in its form, or a boxful as a list. */
import { useState } from 'preact/hooks';
import { drawCodes } from '../../../core/panel/index.ts';
import type { Pair, RecordId, RecordOf } from '../../../core/records/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { showToast } from '../../parts/controls/toast.tsx';
import { formatDistance, formatSize } from '../../parts/format.ts';
import { clauses, d } from '../../words/index.ts';
import type { TabProps } from '../desk-state.ts';
import { saveFromForm, SmallForm, TextField, Unfold } from '../parts/form-parts.tsx';
import { readLines } from '../../drafts/lines.ts';
import { sizesIn } from '../../drafts/sizes.ts';
import { typedWhole } from '../../drafts/typed.ts';
import { sayRange } from '../parts/in-range.ts';
import { pairSchema } from '../../drafts/kept.ts';
import { useKept } from '../../parts/kept.tsx';
import { ListDraw, ListForm } from '../parts/list-form.tsx';
import { useMoveOn } from '../start/guide.ts';
import {
  draftOfPair,
  fieldOfTrouble,
  isEuSize,
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
  <Unfold label={d().rounds.addPairs}>{(close) => <PairLines {...props} close={close} />}</Unfold>
);

const pairInWords = ({ code, sizeMm, carriedInM }: Pair): string =>
  clauses(
    code,
    formatSize(sizeMm),
    ...(carriedInM === undefined ? [] : [d().rounds.carried(formatDistance(carriedInM))]),
  );

/** The pairs of a box, a line each: pasted, typed, or with a code drawn for each size. */
export const PairLines = (props: Props & { readonly close: () => void }) => {
  const words = d().rounds;
  const [text, setText] = useState('');
  const [typed, setTyped] = useState('');
  const [each, setEach] = useState('');
  const [wrong, setWrong] = useState<{ readonly sizes?: string; readonly each?: string }>({});
  const moveOn = useMoveOn('pairs');
  const about = aboutOf(props);
  const sizes = sizesIn(typed, MOST_DRAWN);
  const usual = sizes?.length === 1 ? (sizes[0] ?? '') : '';
  const rows = readLines(text, (line) => readPairLine(line, usual, about));
  const draw = () => {
    const many = each.trim() === '' ? 1 : typedWhole(each, 1, MOST_DRAWN);
    const named = sizes?.every(isEuSize) ? sizes : null;
    setWrong({
      ...(named === null && { sizes: words.pairWrong['not-a-size'] }),
      ...(many === null && { each: sayRange({ least: 1, most: MOST_DRAWN, unit: null }) }),
    });
    if (named === null || many === null) return;
    // Without a size the code alone is drawn, and its size is put in behind it.
    const wanted = (named.length > 0 ? named : ['']).flatMap((size) =>
      Array.from({ length: many }, () => size),
    );
    const drawn =
      wanted.length > MOST_DRAWN ? null : withDrawn(text, wanted, usedIn(props), newSeed());
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
      close={() => {
        if (!moveOn()) props.close();
      }}
    >
      <ListDraw label={words.drawCodes} act={draw}>
        <TextField
          label={words.sizes}
          hint={words.sizesHint}
          value={typed}
          onInput={(value) => {
            setTyped(value);
            setWrong({});
          }}
          error={wrong.sizes}
          required={false}
        />
        <TextField
          label={words.ofEach}
          value={each}
          onInput={(value) => {
            setEach(value);
            setWrong({});
          }}
          error={wrong.each}
          numeric
          required={false}
        />
      </ListDraw>
    </ListForm>
  );
};
