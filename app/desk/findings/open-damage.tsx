/** What came apart and waits for a finding: one press writes it, prefilled, and opens it. */
import { useLocation } from 'preact-iso';
import type { DamageFinding } from '../../../core/review/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { showToast } from '../../parts/controls/toast.tsx';
import { formatDate } from '../../parts/format.ts';
import { toInstant } from '../../parts/instant.ts';
import { settings } from '../../parts/settings.ts';
import { store } from '../../parts/state.ts';
import { d, p, t, terms } from '../../words/index.ts';
import { frozenEvidence } from '../../words/say-evidence.ts';
import { useWork, type TabProps } from '../desk-state.ts';
import { linksOf } from '../frame/route.ts';
import { roundDistance } from '../frame/say.ts';
import { speakerOf } from '../parts/speaker.ts';

const upper = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/** The finding as it is written with one press; what is wanted is the lead's to say. */
const bodyOf = ({ pair: _pair, ...one }: DamageFinding, props: TabProps) => {
  const { review } = props;
  const words = p().changes.damage;
  const what = terms().damages[one.what];
  const [at, brief] = [roundDistance(one.pairM), roundDistance(review.project.brief.distanceM)];
  const evidence = frozenEvidence(
    {},
    [words.evidence(one.code, what, at, brief, formatDate(one.at))],
    toInstant(review.nowMs),
    settings.value.language,
    speakerOf(props),
  );
  return {
    project: review.project.id,
    round: one.round,
    title: words.finding(upper(what), one.code, at),
    part: one.part,
    priority: 'high' as const,
    state: 'open' as const,
    source: 'other' as const,
    damage: one.id,
    ...(evidence && { evidence }),
  };
};

export const OpenDamage = (props: TabProps) => {
  const { records, review } = props;
  const words = p().changes.damage;
  const { route } = useLocation();
  const open = useWork((desk) => desk.openDamages(review.project.id), records, [review.project.id]);
  if (!open || open.length === 0) return null;
  const links = linksOf(review.project.id);
  const write = async (one: DamageFinding) => {
    const saved = await store.save('finding', bodyOf(one, props));
    if (!saved.ok) {
      showToast({ text: d().trouble });
      return;
    }
    const { id } = saved.value.revision;
    showToast({
      text: words.made,
      action: { label: t().undo, run: () => void store.erase(id) },
    });
    route(links.finding(id));
  };
  const stopped = (pair: string) => review.pairs.some((one) => one.id === pair && one.stopUse);
  return (
    <section class="paper open-damage" aria-label={words.title}>
      <h2 class="hidden-words">{words.title}</h2>
      <ul class="plain-list">
        {open.map((one) => (
          <li key={one.id}>
            <p>
              <b>{words.line(one.code, terms().damages[one.what])}</b>{' '}
              <span class="soft small">
                {words.where(
                  roundDistance(one.pairM),
                  roundDistance(review.project.brief.distanceM),
                  one.foot ? p().pairs.damage.shoe[one.foot] : '',
                  formatDate(one.at),
                )}
              </span>
            </p>
            <p class="small">
              {words.caution}{' '}
              {stopped(one.pair) ? (
                words.stopped
              ) : (
                <b>
                  {words.still} <a href={links.pair(one.pair)}>{words.stop}</a>
                </b>
              )}
            </p>
            <div class="row no-print">
              <Button kind="quiet" onClick={() => void write(one)}>
                {words.make}
              </Button>
              <a href={links.damage(one.id)}>{words.report}</a>
            </div>
          </li>
        ))}
      </ul>
    </section>
  );
};
