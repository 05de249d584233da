/** Readings of a table that look wrong, each with its line and a tick for those that are right. */
import { Notice } from '../../parts/controls/controls.tsx';
import { d } from '../../words/index.ts';
import { apartInWords, askInWords } from '../../words/say-waiting.ts';
import type { TabProps } from '../desk-state.ts';
import { Some } from '../parts/some.tsx';
import { speakerOf } from '../parts/speaker.ts';
import type { Check, DoubtedReading, EntryDoubts } from './entry-doubts.ts';

export const TableDoubts = (
  props: TabProps & {
    readonly doubts: EntryDoubts;
    /** Line of each reading of each check. */
    readonly lines: ReadonlyMap<Check, readonly number[]>;
    readonly right: ReadonlySet<DoubtedReading>;
    readonly onChange: (right: ReadonlySet<DoubtedReading>) => void;
  },
) => {
  const words = d().waiting;
  const speaker = speakerOf(props);
  const { doubts, lines, right, onChange } = props;
  const { readings, gauges } = doubts;
  if (readings.length + gauges.length === 0) return null;
  const lineOf = ({ check, at }: DoubtedReading) => lines.get(check)?.[at] ?? 0;
  const toggle = (one: DoubtedReading) => {
    const next = new Set(right);
    if (!next.delete(one)) next.add(one);
    onChange(next);
  };
  return (
    <Notice tone="plain" live>
      {readings.length > 0 && <p>{words.tableAsks(readings.length)}</p>}
      <ul class="plain-list">
        <Some of={readings} step={20}>
          {(one) => (
            <li key={lineOf(one)}>
              <label class="row">
                <input
                  type="checkbox"
                  class="tick"
                  checked={right.has(one)}
                  onChange={() => toggle(one)}
                />
                <span>
                  {words.ofLine(lineOf(one), askInWords(one.reading, one.doubt, speaker).join(' '))}
                </span>
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
