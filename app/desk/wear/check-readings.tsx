/** The readings of one check, each beside those before it, with the one press that sets a reading aside. */
import { useState } from 'preact/hooks';
import type { RecordOf } from '../../../core/records/index.ts';
import { decisionOn, type CheckLook, type ComparedReading } from '../../../core/review/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { linear } from '../../parts/charts/ticks.ts';
import { formatNumber } from '../../parts/format.ts';
import { toInstant } from '../../parts/instant.ts';
import { clauses, d, p, saidOf, terms } from '../../words/index.ts';
import { signed } from '../../words/figures.ts';
import { placeInWords } from '../../words/say-waiting.ts';
import { takeDecisionBack } from '../bench/check-writes.ts';
import type { TabProps } from '../desk-state.ts';
import { SmallForm, TextField } from '../parts/form-parts.tsx';
import { linksOf } from '../frame/route.ts';
import { sayOf } from '../frame/say.ts';
import { Mark } from '../frame/stamp.tsx';
import { Some } from '../parts/some.tsx';
import { speakerOf } from '../parts/speaker.ts';
import { saveDecisions } from '../waiting/save-decision.ts';
import { readingValue } from './check-lines.ts';

type Props = TabProps & {
  readonly look: CheckLook;
  readonly record: RecordOf<'bench-check'>;
};

/** Rows before the rest folds. */
const ROWS = 14;

const standing = ({ earlier }: ComparedReading) =>
  earlier.filter((one) => one.standing.state === 'counts');

/** Small: where this reading lies in the pair's own course. */
const Course = (props: { readonly reading: ComparedReading; readonly look: CheckLook }) => {
  const { reading, look } = props;
  const points = [
    ...standing(reading).map(({ distanceM, value }) => ({ distanceM, value })),
    { distanceM: look.distanceM, value: reading.value },
  ];
  if (points.length < 2) return null;
  const values = points.map(({ value }) => value);
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const x = linear([0, Math.max(...points.map(({ distanceM }) => distanceM), 1)], [6, 114]);
  const y = linear(least === most ? [least - 1, most + 1] : [least, most], [22, 6]);
  const at = points.map(({ distanceM, value }) => [x(distanceM), y(value)] as const);
  const last = at.at(-1);
  return (
    <svg class="check-course" viewBox="0 0 120 28" preserveAspectRatio="none" aria-hidden="true">
      <path d={at.map(([px, py], i) => `${i === 0 ? 'M' : 'L'}${px},${py}`).join('')} />
      <path class="check-dots" d={at.map(([px, py]) => `M${px},${py}h0.01`).join('')} />
      {last && <path class="check-dots check-here" d={`M${last[0]},${last[1]}h0.01`} />}
    </svg>
  );
};

const AsideForm = (
  props: Props & { readonly reading: ComparedReading; readonly close: () => void },
) => {
  const { reading, record, review, close } = props;
  const words = p().wear.check;
  const [why, setWhy] = useState(words.usualReason);
  const [missing, setMissing] = useState(false);
  const save = async () => {
    setMissing(why.trim() === '');
    if (why.trim() === '') return '';
    const { measure, site, foot, unit } = reading;
    const decision = decisionOn(
      {
        record: record.revision.id,
        recordKind: 'bench-check',
        judged: record.revision.stamp,
        reading: { measure, site, foot, unit },
      },
      {
        project: review.project.id,
        ruling: 'set-aside',
        why: why.trim(),
        at: toInstant(Date.now()),
      },
    );
    if (await saveDecisions([decision], words.setAsideNow)) close();
    return null;
  };
  return (
    <SmallForm save={save} label={words.setAside}>
      <TextField
        label={words.reason}
        hint={words.reasonHint}
        value={why}
        onInput={setWhy}
        error={missing ? words.reasonMissing : undefined}
        most={500}
      />
      <Button kind="quiet" onClick={close}>
        {d().cancel}
      </Button>
    </SmallForm>
  );
};

/** By how much it changed since the first reading of the place. */
const sinceNew = (reading: ComparedReading): string => {
  const [first] = standing(reading);
  return first
    ? `${signed(reading.value - first.value, (size) => formatNumber(size, 2))} ${terms().units[reading.unit]}`
    : '';
};

/** What was measured there before, by how much it changed since new, and its course. */
const Before = (props: Props & { readonly reading: ComparedReading }) => {
  const { reading, look, review } = props;
  const words = p().wear.check;
  const before = standing(reading).at(-1);
  const isAside = reading.standing.state === 'set-aside';
  return (
    <>
      <td class="check-before">
        {before ? (
          <a href={linksOf(review.project.id).check(before.check)}>
            {clauses(
              readingValue({ ...reading, value: before.value }, speakerOf(props)),
              sayOf(props).distance(before.distanceM),
            )}
          </a>
        ) : (
          <span class="soft">{words.firstTime}</span>
        )}
      </td>
      <td class="right">{isAside ? '' : sinceNew(reading)}</td>
      <td class="check-course-cell">{!isAside && <Course reading={reading} look={look} />}</td>
    </>
  );
};

const ReadingLine = (
  props: Props & {
    readonly reading: ComparedReading;
    /** Whether any reading of the check has an earlier one. */
    readonly compares: boolean;
    readonly open: boolean;
    readonly onOpen: (open: boolean) => void;
  },
) => {
  const { reading, review, compares, open, onOpen } = props;
  const words = p().wear.check;
  const speaker = speakerOf(props);
  const links = linksOf(review.project.id);
  const name = placeInWords(reading, speaker);
  const value = readingValue(reading, speaker);
  const aside = reading.standing.state === 'set-aside' ? reading.standing : null;
  return (
    <>
      <tr>
        <th scope="row">{name}</th>
        <td class="right">
          {aside ? <s class="reading-aside">{value}</s> : value}
          {reading.standing.state === 'waits' && (
            <>
              {' '}
              <Mark tone="open">{words.standing.waits}</Mark>
            </>
          )}
        </td>
        {compares && <Before {...props} />}
        <td
          class="check-gauge"
          title={
            reading.uncertainty === null
              ? undefined
              : words.uncertainty(readingValue({ ...reading, value: reading.uncertainty }, speaker))
          }
        >
          {reading.gauge && <a href={links.place('wear', 'gauges')}>{reading.gauge}</a>}
        </td>
        <td class="check-act no-print">
          {aside ? (
            <Button
              kind="quiet"
              aria-label={words.countAgainNamed(name)}
              onClick={() => void takeDecisionBack(aside.decision)}
            >
              {words.countAgain}
            </Button>
          ) : (
            !open && (
              <Button
                kind="quiet"
                aria-label={words.setAsideNamed(name)}
                onClick={() => onOpen(true)}
              >
                {words.setAside}
              </Button>
            )
          )}
        </td>
      </tr>
      {(aside ?? open) && (
        <tr class="check-why">
          <td colSpan={7}>
            {aside ? (
              <span class="soft">{saidOf(words.standing['set-aside'], aside.why)}</span>
            ) : (
              <AsideForm {...props} close={() => onOpen(false)} />
            )}
          </td>
        </tr>
      )}
    </>
  );
};

export const CheckReadings = (props: Props) => {
  const { look } = props;
  const words = p().wear.check;
  const [open, setOpen] = useState<number | null>(null);
  const compares = look.readings.some(({ earlier }) => earlier.length > 0);
  const rows = look.readings.map((reading, at) => ({ reading, at }));
  return (
    <div class="table-wrap" tabIndex={0} role="region" aria-label={words.reading}>
      <table class="place-table check-table">
        <thead>
          <tr>
            <th scope="col">{words.reading}</th>
            <th scope="col" class="right">
              {words.value}
            </th>
            {compares && (
              <>
                <th scope="col">{words.before}</th>
                <th scope="col" class="right">
                  {words.change}
                </th>
                <th scope="col">{words.course}</th>
              </>
            )}
            <th scope="col">{words.gauge}</th>
            <td class="no-print" />
          </tr>
        </thead>
        <tbody>
          <Some of={rows} step={ROWS} columns={7}>
            {({ reading, at }) => (
              <ReadingLine
                {...props}
                key={at}
                reading={reading}
                compares={compares}
                open={open === at}
                onOpen={(now) => setOpen(now ? at : null)}
              />
            )}
          </Some>
        </tbody>
      </table>
    </div>
  );
};
