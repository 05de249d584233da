/** One tester: what they feel and whether others do, their feet in the last, their words, their pairs. */
import { useState } from 'preact/hooks';
import type { RecordId, RecordOf } from '../../../core/records/index.ts';
import type { TesterLook } from '../../../core/review/index.ts';
import { Button } from '../../parts/controls/controls.tsx';
import { showToast } from '../../parts/controls/toast.tsx';
import { formatDate } from '../../parts/format.ts';
import { session, store } from '../../parts/state.ts';
import { d, p, t } from '../../words/index.ts';
import { isOutNow } from '../../drafts/hand-out.ts';
import { namesIn, useWork, type TabProps } from '../desk-state.ts';
import { OpenForm } from '../parts/form-parts.tsx';
import { TalkSection } from '../ask/talk.tsx';
import { PlaceHead, type Crumb } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { roundDistance, sayOf } from '../frame/say.ts';
import { SureStamp } from '../frame/stamp.tsx';
import { InviteCard, type Invite } from '../parts/invite-card.tsx';
import { DamageItem, PainItem } from '../people/pain-answers.tsx';
import { TakeBackForm } from '../pairs/take-back.tsx';
import { HandOutList } from '../people/hand-out-list.tsx';
import { Notes } from '../people/notes.tsx';
import { wordsAddress } from '../words/words-address.ts';
import { AgainstOthers } from './against-others.tsx';
import { FeetDrawing } from './feet-drawing.tsx';
import { inviteTester, sendHandOutFile } from './invite.ts';
import { ScoreCourse } from './score-course.tsx';
import { codesBut, TesterFields } from './tester-forms.tsx';
import { WhereFelt } from './where-felt.tsx';

type Props = TabProps & { readonly look: TesterLook };

/** Nothing in the whole group's log names them. */
const isUnused = (records: TabProps['records'], look: TesterLook): boolean =>
  look.runs === 0 &&
  look.lastRunMs === null &&
  ![...records['hand-out'], ...records['damage-report'], ...records.acknowledgement].some(
    ({ body }) => body.tester === look.id,
  );

const removeTester = async (of: RecordOf<'tester'>): Promise<void> => {
  const words = p().testers.page;
  const { code } = of.body;
  if (!confirm(words.removeAsk(code))) return;
  const erased = await store.erase(of.revision.id);
  if (!erased.ok) return showToast({ text: d().trouble });
  const undo = () => void store.save('tester', of.body, of.revision.id);
  showToast({ text: words.removed(code), action: { label: p().pairs.undo, run: undo } });
};

type Act = 'edit' | 'take-back';

const Actions = (props: Props) => {
  const { look, records, review } = props;
  const words = p().testers.page;
  const [act, setAct] = useState<Act | null>(null);
  const [invite, setInvite] = useState<Invite | null>(null);
  const close = () => setAct(null);
  const of = records.tester.find(({ revision }) => revision.id === look.id);
  if (!of) return null;
  const held = records['hand-out'].filter(
    ({ body }) =>
      body.project === review.project.id && body.tester === look.id && isOutNow(body, review.nowMs),
  );
  if (act === 'take-back' && held.length > 0)
    return (
      <TakeBackForm
        {...props}
        rows={held.map(({ revision }) => ({ handOut: revision.id }))}
        done={close}
        cancel={close}
      />
    );
  if (act === 'edit')
    return (
      <OpenForm label={words.edit} close={close}>
        <TesterFields of={of} taken={codesBut(records, look.id)} close={close} />
      </OpenForm>
    );
  return (
    <>
      {invite && <InviteCard {...invite} />}
      <div class="row people-actions no-print">
        {session.value?.hub && (
          <Button onClick={() => void inviteTester(look.id, look.code).then(setInvite)}>
            {words.invite(look.code)}
          </Button>
        )}
        <Button onClick={() => void sendHandOutFile(look.id)}>{words.file}</Button>
        <Button onClick={() => setAct('edit')}>{words.edit}</Button>
        {held.length > 0 && (
          <Button onClick={() => setAct('take-back')}>{words.takeAll(held.length)}</Button>
        )}
        {isUnused(records, look) && (
          <Button kind="danger" onClick={() => void removeTester(of)}>
            {words.remove}
          </Button>
        )}
      </div>
    </>
  );
};

/** Pain and damage that they told of, to be answered from here too. */
const Told = (props: Props) => {
  const { pains, damages } = props.look;
  if (pains.length + damages.length === 0) return null;
  return (
    <section class="paper told" aria-label={p().testers.page.pains}>
      <h2>{p().testers.page.pains}</h2>
      <ul class="plain-list">
        {pains.map((one) => (
          <PainItem key={one.run} {...props} of={one} />
        ))}
        {damages.map((one) => (
          <DamageItem key={one.id} {...props} of={one} />
        ))}
      </ul>
    </section>
  );
};

const crumbsOf = ({ look, review, records }: Props): readonly Crumb[] => {
  const words = p().testers.page;
  const names = namesIn(review, records);
  const links = linksOf(review.project.id);
  const to = (id: RecordId | null, say: (code: string) => string): Crumb[] =>
    id === null ? [] : [{ words: say(names.tester(id)), href: links.tester(id) }];
  return [
    { words: p().frame.places.testers, href: links.place('testers') },
    { words: look.code },
    ...to(look.before, words.previous),
    ...to(look.after, words.next),
  ];
};

export const TesterPage = (props: TabProps & { readonly tester: RecordId }) => {
  const { records, review, tester } = props;
  const words = p().testers.page;
  const { id } = review.project;
  const answer = useWork((desk) => desk.testerPage(id, tester), records, [id, tester]);
  if (!answer) return <p class="soft">{t().loading}</p>;
  const { page } = answer;
  if (!page)
    return (
      <PlaceHead
        headline={words.notFound}
        crumbs={[{ words: p().frame.places.testers, href: linksOf(id).place('testers') }]}
      />
    );
  const { look, headline, stamp } = page;
  const names = namesIn(review, records);
  const say = sayOf(props);
  return (
    <>
      <PlaceHead
        crumbs={crumbsOf({ ...props, look })}
        headline={words.headline(headline, say)}
        sub={words.sub(
          look.runs,
          roundDistance(look.distanceM),
          say.list(look.pairs.map(names.code)),
          look.lastRunMs === null ? null : formatDate(look.lastRunMs),
        )}
        stamp={stamp && <SureStamp word={stamp} />}
      />
      <Actions {...props} look={look} />
      <div class="tester-columns">
        <div class="stack">
          <WhereFelt {...props} look={look} />
          <TalkSection
            records={records}
            review={review}
            subject={{ tester }}
            label={p().ask.button(look.code)}
            asking={{ testers: [tester], about: () => ({}), run: null }}
          />
        </div>
        <div class="stack">
          <AgainstOthers {...props} look={look} />
          <ScoreCourse {...props} look={look} />
          <HandOutList {...props} of={tester} side="tester" />
        </div>
        <div class="stack">
          <Told {...props} look={look} />
          <Notes
            {...props}
            title={words.words(look.code)}
            empty={words.noWords}
            notes={look.notes}
            by="pair"
            all={{
              href: wordsAddress(linksOf(id).place('words'), { tester }),
              words: p().words.allWords,
            }}
          />
          <section aria-label={words.feet}>
            <h2>{words.feet}</h2>
            <FeetDrawing look={look} pairName={names.code} />
          </section>
        </div>
      </div>
    </>
  );
};
