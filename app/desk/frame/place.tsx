/** One place of the desk: where it lies, its answer in the first line, its stamp and what can be done, then the proof. */
import type { ComponentChildren } from 'preact';

export interface Crumb {
  readonly words: string;
  /** Absent: where one is. */
  readonly href?: string;
}

export const PlaceHead = (props: {
  /** The answer, at most twelve words. */
  readonly headline: string;
  readonly crumbs?: readonly Crumb[];
  /** One line of counts beneath the answer. */
  readonly sub?: ComponentChildren;
  readonly stamp?: ComponentChildren;
  readonly actions?: ComponentChildren;
}) => {
  const { headline, crumbs, sub, stamp, actions } = props;
  return (
    <header class="place-head">
      <div class="place-answer">
        {crumbs && crumbs.length > 0 && (
          <nav class="crumbs">
            {crumbs.map(({ words, href }, at) => (
              <span key={`${at}${words}`}>{href ? <a href={href}>{words}</a> : words}</span>
            ))}
          </nav>
        )}
        <h1>{headline}</h1>
        {sub !== undefined && <p class="place-sub">{sub}</p>}
      </div>
      {(stamp || actions) && (
        <div class="place-acts">
          {stamp}
          {actions}
        </div>
      )}
    </header>
  );
};
