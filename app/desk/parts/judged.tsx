/** A word that judges: told by itself, its border and its colour. */
import type { ComponentChildren } from 'preact';
import './judged.css';

/** Every word that the log, a comparison, a verdict or a gauge study ends with. */
const tones = {
  mended: 'best',
  better: 'good',
  holds: 'good',
  good: 'good',
  'no-different': 'plain',
  worse: 'bad',
  proved: 'bad',
  'does-not-hold': 'bad',
  'not-good-enough': 'bad',
  'recurs-across-testers': 'bad',
  'recurs-for-one-tester': 'alone',
  'early-sign': 'open',
  'too-little': 'open',
  'not-known-yet': 'open',
  conditional: 'open',
  look: 'plain',
  'seen-once': 'plain',
  'not-seen': 'plain',
  'too-few-runs': 'plain',
} as const;

export const Judged = (props: {
  readonly word: keyof typeof tones;
  /** What it means, for who rests on it. */
  readonly title?: string;
  readonly children: ComponentChildren;
}) => (
  <span class={`judged judged-${tones[props.word]}`} title={props.title}>
    {props.children}
  </span>
);
