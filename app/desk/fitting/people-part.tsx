/** Who tried what, in their words; one person can be taken out, and brought back. */
import type { Fitter } from '../../../core/fitting/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { showToast } from '../../parts/controls/toast.tsx';
import { formatSize } from '../../parts/format.ts';
import { store } from '../../parts/state.ts';
import { d, p, t } from '../../words/index.ts';
import { fitterName } from './names.ts';
import type { SessionProps } from './session-props.ts';

/** All trials of a person in the session go, also those that a later one of the same pair stands for. */
const takeOut = async (who: string, { trials }: SessionProps['facts'], fitter: Fitter) => {
  const words = p().fitting;
  const own = trials.filter(({ body, revision }) =>
    fitter.code !== null
      ? body.fitter === fitter.code
      : body.fitter === undefined && (body.tester ?? revision.id) === fitter.key,
  );
  const ids = own.map(({ revision }) => revision.id);
  let isGone = true;
  for (const id of ids) isGone = (await store.erase(id)).ok && isGone;
  const undo = async () => {
    for (const id of ids) await store.restore(id);
  };
  showToast(
    isGone
      ? { text: words.takenBack(who), action: { label: t().undo, run: () => void undo() } }
      : { text: d().trouble },
  );
};

export const PeoplePart = (props: SessionProps) => {
  const { facts } = props;
  const words = p().fitting;
  return (
    <section class="paper fit-people" aria-label={words.people}>
      <h2>{words.people}</h2>
      <ul class="plain-list">
        {facts.fitters.map((one) => {
          const who = fitterName(one, props);
          return (
            <li key={one.key} class="row row-apart">
              <span>
                <b>{who}</b>
                {one.trials.map(({ body, revision }) => {
                  const pair = facts.pairs.get(body.pair)?.body;
                  const isBest = one.trials.length > 1 && revision.id === one.best.revision.id;
                  return (
                    <span key={revision.id} class="fit-under">
                      {pair ? words.said(pair.code, formatSize(pair.sizeMm)) : '?'}
                      {isBest && <span class="soft small"> ({words.latest})</span>}
                      {body.words && <q class="fit-words">{body.words}</q>}
                    </span>
                  );
                })}
              </span>
              <span class="no-print">
                <Button kind="quiet" onClick={() => void takeOut(who, facts, one)}>
                  {words.takeBack(who)}
                </Button>
              </span>
            </li>
          );
        })}
      </ul>
    </section>
  );
};
