/** Readings of a table that look wrong, each with its place and a tick for those that are right. */
import { Notice } from '../../parts/controls/controls.tsx';
import { d } from '../../words/index.ts';
import { apartInWords, askInWords } from '../../words/say-waiting.ts';
import type { TabProps } from '../desk-state.ts';
import { Some } from '../parts/some.tsx';
import { speakerOf } from '../parts/speaker.ts';
import type { DoubtedReading, EntryDoubts } from './entry-doubts.ts';

export const TableDoubts = (
  props: TabProps & {
    readonly doubts: EntryDoubts;
    /** Where a reading stands, such as its line. */
    readonly placed: (one: DoubtedReading, said: string) => string;
    /** What can be done where so many look wrong. */
    readonly asks: (count: number) => string;
    readonly right: ReadonlySet<DoubtedReading>;
    readonly onChange: (right: ReadonlySet<DoubtedReading>) => void;
  },
) => {
  const words = d().waiting;
  const speaker = speakerOf(props);
  const { doubts, placed, asks, right, onChange } = props;
  const { readings, gauges } = doubts;
  if (readings.length + gauges.length === 0) return null;
  const toggle = (one: DoubtedReading) => {
    const next = new Set(right);
    if (!next.delete(one)) next.add(one);
    onChange(next);
  };
  return (
    <Notice tone="plain" live>
      {readings.length > 0 && <p>{asks(readings.length)}</p>}
      <ul class="plain-list">
        <Some of={readings} step={20}>
          {(one) => (
            <li key={`${one.check.pair} ${one.check.at} ${one.at}`}>
              <label class="row">
                <input
                  type="checkbox"
                  class="tick"
                  checked={right.has(one)}
                  onChange={() => toggle(one)}
                />
                <span>{placed(one, askInWords(one.reading, one.doubt, speaker).join(' '))}</span>
              </label>
            </li>
          )}
        </Some>
      </ul>
      {gauges.map((apart) => (
        <p key={`${apart.measure} ${apart.unit} ${apart.gauge}`}>
          {words.newGauge(apart.gauge, apart.than, apartInWords(apart, speaker))}
        </p>
      ))}
      {readings.length > right.size && <p>{words.unticked(readings.length - right.size)}</p>}
    </Notice>
  );
};
