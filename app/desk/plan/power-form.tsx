/** How likely is a test of this size to see a difference? Said in words while the numbers are typed. */
import { useState } from 'preact/hooks';
import {
  ALIKE,
  powerOfComfort,
  powerOfFall,
  powerOfSeeing,
  SD_OF_DIFFERENCES,
} from '../../../core/panel/index.ts';
import { typedWithin } from '../../drafts/typed.ts';
import { formatNumber, formatPercent, formatSetPercent } from '../../parts/format.ts';
import { d } from '../../words/index.ts';
import { TextField, Unfold } from '../parts/form-parts.tsx';

export const PowerForm = (props: { readonly testers: number }) => (
  <div class="no-print part">
    <Unfold label={d().panel.power.title}>{() => <Power testers={props.testers} />}</Unfold>
  </div>
);

const Power = (props: { readonly testers: number }) => {
  const words = d().panel.power;
  const [testers, setTesters] = useState(String(props.testers || 8));
  const [runs, setRuns] = useState('8');
  const [before, setBefore] = useState('40');
  const [after, setAfter] = useState('5');
  const [comfort, setComfort] = useState('10');
  const [t, r] = [typedWithin(testers, 1, 200), typedWithin(runs, 1, 100)];
  const [b, a] = [typedWithin(before, 0, 100), typedWithin(after, 0, 100)];
  const points = typedWithin(comfort, 0, 100);
  const lines: string[] = [];
  const isWhole = t !== null && r !== null && Number.isInteger(t) && Number.isInteger(r);
  if (isWhole && b !== null && a !== null && points !== null) {
    const fall = powerOfFall({ testers: t, runs: r, before: b / 100, after: a / 100 });
    const difference = powerOfComfort(t, points);
    const seeing = powerOfSeeing(t, b / 100);
    const chance = (share: number) =>
      share >= 0.995
        ? words.nearlyAll
        : share < 0.01
          ? words.hardlyAny
          : words.about(formatPercent(Math.round(share * 100) / 100));
    lines.push(
      a < b
        ? `${words.fall(t, r, formatSetPercent(b / 100), formatSetPercent(a / 100), chance(fall.power))} ${words.needed(fall.testersNeeded)}`
        : words.noFall,
      `${words.comfortLine(t, formatNumber(points, 1), chance(difference.power))} ${words.needed(difference.testersNeeded)}`,
      `${words.seen(t, chance(seeing.power), formatSetPercent(b / 100))} ${words.neededOnce(seeing.testersNeeded)}`,
    );
  }
  return (
    <div class="stack">
      <div class="field-row">
        <TextField label={words.testers} value={testers} onInput={setTesters} numeric />
        <TextField label={words.runs} value={runs} onInput={setRuns} numeric />
        <TextField label={words.before} value={before} onInput={setBefore} numeric />
        <TextField label={words.after} value={after} onInput={setAfter} numeric />
        <TextField label={words.comfort} value={comfort} onInput={setComfort} numeric />
      </div>
      <ul aria-live="polite">
        {lines.length === 0 ? (
          <li>{d().wrongNumber}</li>
        ) : (
          lines.map((line) => <li key={line}>{line}</li>)
        )}
      </ul>
      <p class="soft small">
        {words.how(formatNumber(ALIKE, 2), formatNumber(SD_OF_DIFFERENCES, 0))}
      </p>
    </div>
  );
};
