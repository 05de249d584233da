/** What speaks against a check as wear while it is typed. */
import { celsius, type Metres } from '../../../core/units/index.ts';
import { parseDecimal } from '../../../core/units/typed.ts';
import { checkWarnings } from '../../../core/wear/index.ts';
import { Notice } from '../../parts/controls/controls.tsx';
import { warningInWords } from '../../words/say-wear.ts';
import type { TabProps } from '../desk-state.ts';
import { speakerOf } from '../parts/speaker.ts';
import type { ReadingForm } from '../../drafts/check-readings.ts';

/** What already speaks against the check while it is typed: too little rest, a room too warm or too cold. */
export const Careful = (
  props: TabProps & {
    readonly rested: number | null | undefined;
    readonly room: number | null | undefined;
    readonly distance: Metres;
    readonly hardness: readonly ReadingForm[];
  },
) => {
  const { rested, room } = props;
  const speaker = speakerOf(props);
  const warnings = checkWarnings(
    {
      distance: props.distance,
      readings: props.hardness.flatMap(({ measure, site, foot, unit, value }) => {
        const number = parseDecimal(value);
        return number === null ? [] : [{ measure, site, foot, unit, value: number }];
      }),
      ...(typeof rested === 'number' && { restedH: rested }),
      ...(typeof room === 'number' && { temperatureC: celsius(room) }),
    },
    [],
  ).filter(({ code }) => code === 'short-rest' || code === 'temperature');
  if (warnings.length === 0) return null;
  return (
    <Notice tone="plain" live>
      <ul>
        {warnings.map((warning) => (
          <li key={warning.code}>{warningInWords(warning, speaker)}</li>
        ))}
      </ul>
    </Notice>
  );
};
