/** Several pairs handed out at once: for each that nobody has a tester, or nobody; one time and one switch for all. */
import { useMemo, useState } from 'preact/hooks';
import type { RecordId } from '../../../core/records/index.ts';
import type { PairSummary } from '../../../core/review/index.ts';
import { Field } from '../../parts/controls/controls.tsx';
import { showToast } from '../../parts/controls/toast.tsx';
import { d, listed } from '../../words/index.ts';
import type { TabProps } from '../desk-state.ts';
import { saveFromForm, SmallForm } from '../parts/form-parts.tsx';
import {
  BlindField,
  freePairs,
  pairLabel,
  Promised,
  SinceField,
  sinceInWords,
} from './hand-out-fields.tsx';
import { readNewHandOut, sinceMs, sinceTrouble } from '../../drafts/hand-out.ts';
import { candidatesOf, offersFor, pairsInHands, type Candidate } from './hand-out-offers.ts';
import { Some } from '../parts/some.tsx';
import { testerLabel } from '../testers/tester-label.ts';

/** Each row offers every tester of the group: of a thousand a few rows at a time are enough. */
const ROWS_AT_A_TIME = 20;

const without = <T,>(map: ReadonlyMap<RecordId, T>, key: RecordId): ReadonlyMap<RecordId, T> =>
  new Map([...map].filter(([other]) => other !== key));

/** @param only of these pairs; absent: of all that nobody has */
export const SeveralHandOuts = (
  props: TabProps & { readonly only?: ReadonlySet<RecordId>; readonly close: () => void },
) => {
  const { records, review, only, close } = props;
  const words = d().pairs;
  const [chosen, setChosen] = useState<ReadonlyMap<RecordId, RecordId>>(new Map());
  const [troubles, setTroubles] = useState<ReadonlyMap<RecordId, string>>(new Map());
  /** Handed out from here: they leave the list at once, before the log is reviewed anew. */
  const [done, setDone] = useState<ReadonlySet<RecordId>>(new Set());
  const [since, setSince] = useState<string | null>(null);
  /** Saving was tried: from then on the time says what is wrong with it. */
  const [tried, setTried] = useState(false);
  const wrongTime = (pair: RecordId) =>
    sinceTrouble([], pair, sinceMs(since, Date.now()), Date.now());
  const [blind, setBlind] = useState(true);
  const candidates = useMemo(() => candidatesOf(records), [records]);
  const free = freePairs(review).filter(
    ({ id }) => !done.has(id) && (only === undefined || only.has(id)),
  );
  const rows = free.flatMap(({ id }) => {
    const tester = chosen.get(id);
    return tester === undefined ? [] : [{ pair: id, tester }];
  });
  const choose = (pair: RecordId, tester: RecordId | null) => {
    setChosen(tester === null ? without(chosen, pair) : new Map([...chosen, [pair, tester]]));
    setTroubles(without(troubles, pair));
  };
  const trouble = tried && rows[0] ? wrongTime(rows[0].pair) : null;
  const sinceError = trouble && sinceInWords(trouble);
  const save = async () => {
    const [first] = rows;
    if (!first) return words.nobodyChosen;
    // A time that is wrong whatever the pair's past is said once, at its field.
    setTried(true);
    if (wrongTime(first.pair)) return '';
    const nowMs = Date.now();
    const failed = new Map<RecordId, string>();
    for (const { pair, tester } of rows) {
      const read = readNewHandOut(
        { pair, tester, since, blind },
        review.project.id,
        records['hand-out'],
        nowMs,
      );
      const [trouble] = read.ok ? [] : read.troubles;
      const saved = read.ok
        ? await saveFromForm('hand-out', read.body)
        : trouble
          ? sinceInWords(trouble)
          : '';
      if (typeof saved === 'string') failed.set(pair, saved);
      else setDone((now) => new Set([...now, pair]));
    }
    setTroubles(failed);
    const handedOut = rows.length - failed.size;
    if (failed.size > 0) return words.someNot(handedOut, failed.size);
    showToast({ text: words.handedOut(handedOut) });
    close();
    return null;
  };
  if (free.length === 0) return <p>{words.noneFree}</p>;
  const hands = pairsInHands([
    ...review.pairs,
    ...free.map(({ id, code }) => ({ code, holder: chosen.get(id) ?? null })),
  ]);
  return (
    <SmallForm save={save}>
      <div class="field-row">
        <SinceField
          value={since}
          error={sinceError ?? undefined}
          onInput={(typed) => {
            setSince(typed);
            setTroubles(new Map());
          }}
        />
      </div>
      <BlindField value={blind} onChange={setBlind} />
      <p class="soft small">{words.severalHint}</p>
      <ul class="plain-list choices-by-pair">
        <Some of={free} step={ROWS_AT_A_TIME}>
          {(pair) => (
            <li key={pair.id}>
              <TesterChoice
                label={pairLabel(pair, review)}
                pair={pair}
                candidates={candidates}
                hands={hands}
                value={chosen.get(pair.id) ?? null}
                error={troubles.get(pair.id)}
                onChange={(tester) => choose(pair.id, tester)}
              />
              <Promised {...{ records, review }} pair={pair.id} />
            </li>
          )}
        </Some>
      </ul>
      <p role="status">{words.willBeHandedOut(rows.length)}</p>
    </SmallForm>
  );
};

/** A tester for one pair, or nobody. */
const TesterChoice = (props: {
  readonly label: string;
  readonly pair: PairSummary;
  readonly candidates: readonly Candidate[];
  readonly hands: ReadonlyMap<RecordId, readonly string[]>;
  readonly value: RecordId | null;
  readonly error: string | undefined;
  readonly onChange: (tester: RecordId | null) => void;
}) => {
  const words = d().pairs;
  const offers = offersFor(props.pair.sizeMm, props.candidates);
  const inWords = ({ body, revision }: Candidate['tester']): string => {
    const others = props.hands.get(revision.id)?.filter((code) => code !== props.pair.code) ?? [];
    return others.length === 0 ? testerLabel(body) : words.has(testerLabel(body), listed(others));
  };
  return (
    <Field label={props.label} error={props.error}>
      {(ids) => (
        <select
          class="input"
          {...ids}
          value={props.value ?? ''}
          onChange={({ currentTarget: { value } }) =>
            props.onChange(value === '' ? null : (value as RecordId))
          }
        >
          <option value="">{d().none}</option>
          {(['fits', 'other-size', 'size-unknown'] as const).map(
            (fit) =>
              offers[fit].length > 0 && (
                <optgroup key={fit} label={words.fit[fit]}>
                  {offers[fit].map(({ tester }) => (
                    <option key={tester.revision.id} value={tester.revision.id}>
                      {inWords(tester)}
                    </option>
                  ))}
                </optgroup>
              ),
          )}
        </select>
      )}
    </Field>
  );
};
