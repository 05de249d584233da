/** A text with what was looked for marked in it. */
import type { Hit } from '../../../core/words/index.ts';

export const MarkedText = (props: { readonly text: string; readonly hits: readonly Hit[] }) => {
  const { text, hits } = props;
  return (
    <q>
      {hits.map(([from, to], at) => (
        <>
          {text.slice(hits[at - 1]?.[1] ?? 0, from)}
          <mark>{text.slice(from, to)}</mark>
        </>
      ))}
      {text.slice(hits.at(-1)?.[1] ?? 0)}
    </q>
  );
};
