/** A sample measured on the bench, typed anew or corrected: readings by measure, site and foot, with their circumstances. */
import { useRef, useState } from 'preact/hooks';
import { type BenchCheck, type RecordId, type RecordOf } from '../../../core/records/index.ts';
import { metres } from '../../../core/units/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { showToast } from '../../parts/controls/toast.tsx';
import { formatDistance } from '../../parts/format.ts';
import { toInstant } from '../../parts/instant.ts';
import { PhotoPicker } from '../../parts/photos/photo-picker.tsx';
import { session } from '../../parts/state.ts';
import { d, p, saidOf, t } from '../../words/index.ts';
import type { TabProps } from '../desk-state.ts';
import {
  DateTimeField,
  saveFromForm,
  SelectField,
  SmallForm,
  TextField,
} from '../parts/form-parts.tsx';
import { useKept } from '../../parts/kept.tsx';
import { saveDecisions } from '../waiting/save-decision.ts';
import { lastGauges } from '../../drafts/check-gauges.ts';
import {
  emptyReading,
  placesOfLimits,
  withAsked,
  type ReadingForm,
} from '../../drafts/check-readings.ts';
import { checkErrors } from './check-errors.ts';
import { Careful } from './careful.tsx';
import { checkDraftOf, newCheckDraft, typedCheck, type CheckDraft } from '../../drafts/check.ts';
import { correctionOf } from '../../drafts/check-correction.ts';
import { checkSchema } from '../../drafts/kept.ts';
import { typedNumber } from '../../drafts/typed.ts';
import { restoreCheck, saveCorrection } from './check-writes.ts';
import { confirmedReadings, entryDoubts, type EntryDoubts } from './entry-doubts.ts';
import { EntryQuestion } from './entry-question.tsx';
import { GaugeFields } from './gauge-fields.tsx';
import { ReadingRow } from './reading-row.tsx';

/** As many letters as a reason may have. */
const MOST_WHY = 500;

type FormProps = TabProps & {
  /** The check that is corrected; absent: a new one. */
  readonly before?: RecordOf<'bench-check'>;
  /** @param saved the check as it was saved */
  readonly close: (saved: RecordId) => void;
};

/** Doubts about what was typed just now, not about readings that stood there before. */
const doubtsOf = (props: FormProps, check: BenchCheck): EntryDoubts => {
  const { before, records, review } = props;
  const others = records['bench-check'].filter(
    ({ revision }) => revision.id !== before?.revision.id,
  );
  const found = entryDoubts(
    { records: { ...records, 'bench-check': others }, review },
    [check],
    'typed',
  );
  const stood = ({ reading }: EntryDoubts['readings'][number]) =>
    before?.body.readings.some(
      (one) =>
        one.measure === reading.measure &&
        one.site === reading.site &&
        one.foot === reading.foot &&
        one.unit === reading.unit &&
        one.value === reading.value,
    ) ?? false;
  return { ...found, readings: found.readings.filter((one) => !stood(one)) };
};

export const CheckForm = (props: FormProps) => {
  const { review, records, before, close } = props;
  const words = d().bench;
  const kept = useKept<CheckDraft>({
    key: before ? `bench-check ${before.revision.id}` : `new bench-check ${review.project.id}`,
    of: before?.revision.stamp,
    schema: checkSchema,
    begin: () => (before ? checkDraftOf(before.body) : newCheckDraft(Date.now())),
  });
  const { draft, setDraft } = kept;
  const [why, setWhy] = useState('');
  /** Saving was tried: from then on each field says what is wrong with it. */
  const [tried, setTried] = useState(false);
  const [doubts, setDoubts] = useState<EntryDoubts | null>(null);
  /** Pressed "it is right": the next save asks nothing. */
  const sure = useRef(false);
  const chosen = records.pair.find(({ revision }) => revision.id === draft.pair)?.body;
  const blueprint =
    records.round.find(({ revision }) => revision.id === chosen?.round)?.body.blueprint ?? [];
  /** Before the first run a pair has come as far as it was carried before the test. */
  const carried = chosen?.carriedInM ?? metres(0);
  const put = (part: Partial<CheckDraft>) => {
    setDoubts(null);
    setDraft((now) => ({ ...now, ...part }));
  };
  const ofRound = new Set(
    records.pair.flatMap(({ body, revision }) =>
      body.round === chosen?.round ? [revision.id] : [],
    ),
  );
  const checks = records['bench-check'].filter(({ body }) => body.project === review.project.id);
  const bodies = checks.map(({ body }) => body);
  const gauges = {
    ...lastGauges(checks, ofRound, session.value?.member ?? null),
    ...draft.gauges,
  };
  const asked = [
    ...blueprint,
    ...placesOfLimits(review.project.brief.limits, [
      ...blueprint,
      ...bodies.flatMap(({ readings }) => readings),
    ]),
  ];
  const typed = typedCheck({ ...draft, gauges }, review.project.id, carried, before?.body ?? null);
  const errors = checkErrors(tried && 'troubles' in typed ? typed.troubles : []);
  const whyMissing = before !== undefined && why.trim() === '';
  const type = (field: 'km' | 'room' | 'rested' | 'operator' | 'method' | 'words') => ({
    value: draft[field],
    onInput: (value: string) => put({ [field]: value }),
  });
  const putReading = (index: number, part: Partial<ReadingForm>) =>
    put({
      readings: draft.readings.map((one, at) => (at === index ? { ...one, ...part } : one)),
    });

  const write = async (check: BenchCheck): Promise<RecordOf<'bench-check'> | string> => {
    if (!before) return saveFromForm('bench-check', check);
    const by = session.value?.member;
    if (!by) return d().trouble;
    const corrected = correctionOf(before.body, check, {
      by,
      at: toInstant(Date.now()),
      why: why.trim(),
    });
    if (!corrected) return p().wear.check.same;
    const saved = await saveCorrection(records.decision, before, corrected);
    if (!saved) return d().trouble;
    showToast({
      text: p().wear.check.corrected,
      action: {
        label: t().undo,
        run: () => void restoreCheck(records.decision, before),
      },
    });
    return saved;
  };

  const save = async () => {
    setTried(true);
    if ('troubles' in typed || whyMissing) return '';
    const isSure = sure.current;
    sure.current = false;
    const found = doubtsOf(props, typed.check);
    if (!isSure && found.readings.length + found.gauges.length > 0) {
      setDoubts(found);
      return null;
    }
    const saved = await write(typed.check);
    if (typeof saved === 'string') return saved;
    await kept.done();
    const { id: record, stamp: judged } = saved.revision;
    await saveDecisions(
      confirmedReadings(
        found.readings,
        { project: review.project.id, record, judged },
        d().waiting.confirmed,
        Date.now(),
      ),
      null,
    );
    close(record);
    return null;
  };

  return (
    <SmallForm
      save={save}
      kept={kept}
      {...(before && { label: p().wear.check.save })}
      {...(doubts && {
        ask: (
          <EntryQuestion
            {...props}
            doubts={doubts}
            onSure={() => (sure.current = true)}
            onCorrect={() => setDoubts(null)}
          />
        ),
      })}
    >
      <div class="field-row">
        <SelectField<RecordId>
          label={words.pair}
          value={draft.pair}
          options={review.pairs.map(({ id, code }) => ({ value: id, label: code }))}
          onChange={(pair) => put({ pair })}
          error={errors.fields.pair}
        />
        <DateTimeField
          label={words.at}
          value={draft.at}
          onInput={(at) => put({ at })}
          error={errors.fields.at}
        />
        <TextField
          label={words.rested}
          {...type('rested')}
          error={errors.fields.rested}
          numeric
          optional
        />
        <TextField
          label={words.temperature}
          {...type('room')}
          error={errors.fields.room}
          numeric
          optional
        />
      </div>
      {!before && (
        <label class="row">
          <input
            type="checkbox"
            class="tick"
            checked={draft.arrival}
            onChange={(event) => put({ arrival: event.currentTarget.checked })}
          />
          {carried > 0 ? words.arrivalCarried(formatDistance(carried)) : words.arrival}
        </label>
      )}
      <Careful
        {...props}
        room={typedNumber(draft.room)}
        rested={typedNumber(draft.rested)}
        // Any distance above 0: a new pair needs no rest, and one that was worn does.
        distance={draft.arrival ? carried : metres(1)}
        hardness={draft.readings}
      />
      {draft.pair !== '' && asked.length > 0 && (
        <div class="row">
          <Button onClick={() => put({ readings: withAsked(draft.readings, asked) })}>
            {words.addAsked}
          </Button>
          <span class="soft small">{words.emptyRows}</span>
        </div>
      )}
      <p class="soft small">{saidOf(words.site, words.siteHint)}</p>
      {draft.readings.map((reading, at) => (
        <ReadingRow
          key={at}
          reading={reading}
          at={at}
          only={draft.readings.length === 1}
          errors={errors.row(at)}
          onChange={(part) => putReading(at, part)}
          onRemove={() => put({ readings: draft.readings.filter((_, other) => other !== at) })}
        />
      ))}
      <Button
        kind="quiet"
        onClick={() => {
          const { of: _of, ...last } = draft.readings.at(-1) ?? emptyReading;
          put({ readings: [...draft.readings, { ...last, value: '' }] });
        }}
      >
        {words.addReading}
      </Button>
      <GaugeFields
        rows={draft.readings}
        gauges={gauges}
        onChange={(part) => put({ gauges: { ...draft.gauges, ...part } })}
      />
      <div class="field-row">
        <TextField label={words.operator} {...type('operator')} optional />
        <TextField label={words.method} {...type('method')} optional />
        {!draft.arrival && (
          <TextField
            label={words.distance}
            {...type('km')}
            error={errors.fields.km}
            numeric
            optional
          />
        )}
      </div>
      <TextField label={p().wear.check.notes} {...type('words')} optional most={4000} />
      <PhotoPicker
        label={words.photos}
        photos={draft.photos}
        onChange={(photos) => put({ photos })}
      />
      {before && (
        <TextField
          label={p().wear.check.reason}
          hint={p().wear.check.reasonHint}
          value={why}
          onInput={setWhy}
          error={tried && whyMissing ? p().wear.check.reasonMissing : undefined}
          most={MOST_WHY}
        />
      )}
    </SmallForm>
  );
};
