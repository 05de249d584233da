/** Who holds which pair since when: hand out, put "since" right, take back. */
import { useState } from 'preact/hooks';
import type { RecordId, RecordOf } from '../../core/records/index.ts';
import { byCode } from '../../core/review/index.ts';
import { Button } from '../parts/controls/controls.tsx';
import { formatDate } from '../parts/format.ts';
import { toInstant, toLocalMinute } from '../parts/instant.ts';
import { d } from '../words/index.ts';
import { namesIn, type TabProps } from './desk-state.ts';
import {
  OpenForm,
  saveFromForm,
  saveRecord,
  SelectField,
  SmallForm,
  Unfold,
} from './form-parts.tsx';
import {
  BlindField,
  freePairs,
  pairLabel,
  SinceField,
  sinceMs,
  troubleInWords,
} from './hand-out-fields.tsx';
import { SeveralHandOuts } from './hand-out-several.tsx';
import { sinceInstant } from './hand-out-since.ts';
import { Some } from './some.tsx';
import { testerLabel } from './tester-label.ts';

export const HandOuts = ({ records, review }: TabProps) => {
  const words = d().pairs;
  const names = namesIn(review, records);
  const out = records['hand-out']
    .filter(({ body }) => body.project === review.project.id && body.until === undefined)
    .sort((a, b) => byCode({ code: names.pair(a.body.pair) }, { code: names.pair(b.body.pair) }));
  return (
    <div class="stack">
      <Unfold label={words.handOut}>
        {(close) => <NewHandOut records={records} review={review} close={close} />}
      </Unfold>
      <Unfold label={words.handOutSeveral}>
        {(close) => <SeveralHandOuts records={records} review={review} close={close} />}
      </Unfold>
      <ul class="plain-list">
        <Some of={out}>
          {(handOut) => (
            <Row
              key={handOut.revision.id}
              records={records}
              review={review}
              handOut={handOut}
              pair={names.pair(handOut.body.pair)}
              tester={names.tester(handOut.body.tester)}
            />
          )}
        </Some>
      </ul>
    </div>
  );
};

const NewHandOut = ({ records, review, close }: TabProps & { readonly close: () => void }) => {
  const words = d().pairs;
  const free = freePairs(review);
  const [pair, setPair] = useState<RecordId | ''>('');
  const [tester, setTester] = useState<RecordId | ''>('');
  const [blind, setBlind] = useState(true);
  /** Null: now. */
  const [since, setSince] = useState<string | null>(null);
  const save = async () => {
    if (pair === '' || tester === '') return d().missing;
    const project = review.project.id;
    const fromMs = sinceMs(since);
    const trouble = troubleInWords(records['hand-out'], pair, fromMs);
    if (trouble !== null) return trouble;
    const from = toInstant(fromMs);
    const saved = await saveFromForm('hand-out', { project, pair, tester, from, blind });
    if (typeof saved === 'string') return saved;
    close();
    return null;
  };
  return (
    <SmallForm save={save}>
      <SelectField
        label={words.pair}
        value={pair}
        options={free.map((one) => ({ value: one.id, label: pairLabel(one, review) }))}
        onChange={setPair}
      />
      <SelectField
        label={words.handOutTo}
        value={tester}
        options={records.tester.map(({ body, revision }) => ({
          value: revision.id,
          label: testerLabel(body),
        }))}
        onChange={setTester}
      />
      <SinceField value={since} onInput={setSince} />
      <BlindField value={blind} onChange={setBlind} />
    </SmallForm>
  );
};

const Row = (
  props: TabProps & {
    readonly handOut: RecordOf<'hand-out'>;
    readonly pair: string;
    readonly tester: string;
  },
) => {
  const words = d().pairs;
  const { handOut, pair, tester } = props;
  const { body, revision } = handOut;
  const [changing, setChanging] = useState(false);
  const since = words.sinceWhen(formatDate(body.from));
  const takeBack = () =>
    saveRecord('hand-out', { ...body, until: toInstant(Date.now()) }, revision.id);
  return (
    <li>
      <div class="row row-apart">
        <span>{`${pair} → ${tester}`}</span>
        <span class="row">
          <Button
            kind="quiet"
            aria-label={`${pair}, ${since}: ${words.changeSince}`}
            onClick={() => setChanging(true)}
          >
            {since}
          </Button>
          <Button
            kind="quiet"
            aria-label={`${words.takeBack}: ${pair}`}
            onClick={() => void takeBack()}
          >
            {words.takeBack}
          </Button>
        </span>
      </div>
      {changing && (
        <OpenForm label={`${words.changeSince}: ${pair}`} close={() => setChanging(false)}>
          <SinceFields {...props} close={() => setChanging(false)} />
        </OpenForm>
      )}
    </li>
  );
};

/** A hand-out that was noted late would leave the runs before it out of the tester's hands. */
const SinceFields = (
  props: TabProps & { readonly handOut: RecordOf<'hand-out'>; readonly close: () => void },
) => {
  const { body, revision } = props.handOut;
  const [since, setSince] = useState(toLocalMinute(body.from));
  const save = async () => {
    const from = sinceInstant(since, body.from);
    const fromMs = from === null ? Number.NaN : Date.parse(from);
    const trouble = troubleInWords(props.records['hand-out'], body.pair, fromMs);
    if (trouble !== null || from === null) return trouble;
    const saved = await saveFromForm('hand-out', { ...body, from }, revision.id);
    if (typeof saved === 'string') return saved;
    props.close();
    return null;
  };
  return (
    <SmallForm save={save}>
      <SinceField value={since} onInput={setSince} />
    </SmallForm>
  );
};
