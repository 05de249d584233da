/** Who fits which size: for whom the length of each size is too short, right, too long. */
import { sizesTried } from '../../../core/fitting/index.ts';
import { formatSize } from '../../parts/format.ts';
import { listed, p } from '../../words/index.ts';
import { nameByKey } from './names.ts';
import type { SessionProps } from './session-props.ts';

export const SizesPart = (props: SessionProps) => {
  const { facts } = props;
  const words = p().fitting;
  const name = nameByKey(facts.fitters, props);
  const sizes = sizesTried(facts.fitters, [...facts.pairs.values()]);
  const who = (keys: readonly string[]) =>
    keys.length === 0 ? <span class="soft">{words.nobody}</span> : listed(keys.map(name));
  return (
    <section class="paper" aria-label={words.sizes}>
      <h2>{words.sizes}</h2>
      {sizes.length === 0 ? (
        <p class="soft">{words.noSizes}</p>
      ) : (
        <>
          <table>
            <thead>
              <tr>
                <th scope="col">{words.size('')}</th>
                <th scope="col">{words.short}</th>
                <th scope="col">{words.fitsThem}</th>
                <th scope="col">{words.long}</th>
              </tr>
            </thead>
            <tbody>
              {sizes.map(({ sizeMm, short, right, long }) => (
                <tr key={sizeMm}>
                  <th scope="row">{formatSize(sizeMm)}</th>
                  <td>{who(short)}</td>
                  <td>
                    <b>{who(right)}</b>
                  </td>
                  <td>{who(long)}</td>
                </tr>
              ))}
            </tbody>
          </table>
          <p class="soft small">{words.sizesHint}</p>
        </>
      )}
    </section>
  );
};
