/** A word that judges, as a stamp: filled is against, a green frame is for, dashed is open. Never a link. */
import type { ComponentChildren } from 'preact';
import { sureness, type Sureness } from '../../../core/complaints/index.ts';
import type { Stamp as Word } from '../../../core/headlines/index.ts';
import { p, terms } from '../../words/index.ts';

export type Tone = 'fails' | 'holds' | 'open' | 'danger' | 'plain';

/** A stamp with words of its own. */
export const Mark = (props: {
  readonly tone: Tone;
  readonly title?: string;
  /** For a word that is mistaken where it stands alone; absent: the word itself. */
  readonly says?: string;
  readonly children: ComponentChildren;
}) => (
  <span class={`stamp stamp-${props.tone}`} title={props.title}>
    {props.says === undefined ? (
      props.children
    ) : (
      <>
        <span aria-hidden="true">{props.children}</span>
        <span class="hidden-words">{props.says}</span>
      </>
    )}
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
export const SureStamp = ({ word }: { readonly word: Sureness }) => {
  const { name, alone, meaning } = terms().sureness[word];
  return (
    <Mark
      tone={toneOfSureness[word]}
      title={`${alone}${p().frame.sureWord(meaning)}`}
      {...(alone !== name && { says: alone })}
    >
      {name}
    </Mark>
  );
};

/** For a reader who takes "clear" for "no complaint"; what the other words mean stands behind it. */
export const SureLegend = () => {
  const words = p().frame;
  const { name, alone } = terms().sureness.clear;
  return (
    <div class="sure-legend small soft">
      {words.sureLegend(name, alone)}
      <details class="how-sure">
        <summary>{words.sureWords}</summary>
        <dl>
          {sureness.map((one) => (
            <div key={one}>
              <dt>{terms().sureness[one].name}</dt>
              <dd>{`${terms().sureness[one].alone}${words.sureWord(terms().sureness[one].meaning)}`}</dd>
            </div>
          ))}
        </dl>
      </details>
    </div>
  );
};
