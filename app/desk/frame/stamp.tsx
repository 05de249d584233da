/** A word that judges, as a stamp: filled is against, a green frame is for, dashed is open. Never a link. */
import type { ComponentChildren } from 'preact';
import type { Stamp as Word, Sureness } from '../../../core/headlines/index.ts';
import { p } from '../../words/index.ts';

export type Tone = 'fails' | 'holds' | 'open' | 'danger' | 'plain';

/** A stamp with words of its own. */
export const Mark = (props: {
  readonly tone: Tone;
  readonly title?: string;
  readonly children: ComponentChildren;
}) => (
  <span class={`stamp stamp-${props.tone}`} title={props.title}>
    {props.children}
  </span>
);

/** What is decided: fails, open, holds. */
export const Stamp = ({ word }: { readonly word: Word }) => (
  <Mark tone={word} title={p().frame.stampMeaning[word]}>
    {p().frame.stamps[word]}
  </Mark>
);

const toneOfSureness: Readonly<Record<Sureness, Tone>> = {
  clear: 'fails',
  'one-tester': 'plain',
  likely: 'open',
  'too-early': 'open',
};

/** How sure a complaint is. */
export const SureStamp = ({ word }: { readonly word: Sureness }) => (
  <Mark tone={toneOfSureness[word]} title={p().frame.surenessMeaning[word]}>
    {p().frame.sureness[word]}
  </Mark>
);
