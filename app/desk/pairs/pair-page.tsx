/** One pair: its life by kilometre, whether it fits the foot that wears it, and what can be put right. */
import { useState } from 'preact/hooks';
import { mustNotRun, type PairLook } from '../../../core/review/index.ts';
import type { RecordId } from '../../../core/records/index.ts';
import { Button, LinkButton } from '../../parts/controls/controls.tsx';
import { formatDate, formatSize } from '../../parts/format.ts';
import { PhotoRow } from '../../parts/photos/photo-view.tsx';
import { p, t } from '../../words/index.ts';
import { namesIn, readInTolerance, useWork, type TabProps } from '../desk-state.ts';
import { OpenForm } from '../parts/form-parts.tsx';
import { HowSure } from '../frame/how-sure.tsx';
import { TalkSection } from '../ask/talk.tsx';
import { PlaceHead, type Crumb } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { roundDistance, sayOf } from '../frame/say.ts';
import { Mark } from '../frame/stamp.tsx';
import { HandOutList } from '../people/hand-out-list.tsx';
import { Notes } from '../people/notes.tsx';
import { EditPair } from './pair-forms.tsx';
import { wordsAddress } from '../words/words-address.ts';
import { NewHandOut } from './hand-out-new.tsx';
import { PairFacts } from './pair-facts.tsx';
import { PairLife } from './pair-life.tsx';
import { PairLoads } from './pair-loads.tsx';
import { Notices, StopUseForm } from './stop-use.tsx';

type Props = TabProps & { readonly look: PairLook };

const stateOf = ({ stops, damages }: PairLook) => ({
  stopped: stops.some(({ untilMs }) => untilMs === null),
  damage: damages.find(({ stands }) => stands)?.damage ?? null,
});

const PairStamp = ({ look }: { readonly look: PairLook }) => {
  const words = p();
  if (mustNotRun(stateOf(look))) return <Mark tone="danger">{words.frame.doNotRun}</Mark>;
  if (look.outOfTolerance) return <Mark tone="fails">{words.frame.outOfTolerance}</Mark>;
  return look.judged > 0 ? <Mark tone="holds">{words.pairs.page.inTolerance}</Mark> : null;
};

const Checks = ({ look, review }: Props) => {
  const words = p().pairs.page;
  const links = linksOf(review.project.id);
  return (
    <section aria-label={words.checks}>
      <h2>{words.checks}</h2>
      {look.checks.length === 0 ? (
        <p class="soft">{words.noChecks}</p>
      ) : (
        <ul class="plain-list">
          {look.checks.toReversed().map(({ check, atMs, m, readings, words: said, photos }) => (
            <li key={check}>
              <a href={links.check(check)}>
                {words.check(formatDate(atMs), roundDistance(m), readings)}
              </a>
              {said && <span>{` ${words.quoted(said)}`}</span>}
              <PhotoRow photos={photos} label={formatDate(atMs)} />
            </li>
          ))}
        </ul>
      )}
    </section>
  );
};

type Act = 'hand-out' | 'stop' | 'correct';

/** What can be done with this pair; a form takes the place of the buttons. */
const Actions = (props: Props) => {
  const { look, review } = props;
  const words = p().pairs;
  const [act, setAct] = useState<Act | null>(null);
  const close = () => setAct(null);
  const labels = {
    'hand-out': words.page.handOut,
    stop: words.stopThis,
    correct: words.page.correct,
  };
  if (act !== null)
    return (
      <OpenForm label={labels[act]} close={close}>
        {act === 'hand-out' ? (
          <NewHandOut {...props} of={look.id} close={close} />
        ) : act === 'stop' ? (
          <StopUseForm {...props} pairs={[look.id]} close={close} />
        ) : (
          <EditPair {...props} pair={look.id} close={close} />
        )}
      </OpenForm>
    );
  const free = look.holder === null && !mustNotRun(stateOf(look));
  return (
    <div class="row people-actions no-print">
      {free && <Button onClick={() => setAct('hand-out')}>{labels['hand-out']}</Button>}
      <LinkButton href={linksOf(review.project.id).place('wear')}>{words.page.addCheck}</LinkButton>
      <Button onClick={() => setAct('correct')}>{labels.correct}</Button>
      {!stateOf(look).stopped && <Button onClick={() => setAct('stop')}>{labels.stop}</Button>}
    </div>
  );
};

const crumbsOf = ({ look, review, records }: Props): readonly Crumb[] => {
  const words = p().pairs.page;
  const names = namesIn(review, records);
  const links = linksOf(review.project.id);
  const to = (id: RecordId | null, say: (code: string) => string): Crumb[] =>
    id === null ? [] : [{ words: say(names.code(id)), href: links.pair(id) }];
  return [
    { words: p().frame.places.pairs, href: links.place('pairs') },
    { words: names.round(look.round), href: links.round(look.round) },
    { words: look.code },
    ...to(look.before, words.previous),
    ...to(look.after, words.next),
  ];
};

/** Who can be asked about a pair: whoever has it first, then those who had it. */
const testersOf = (
  records: TabProps['records'],
  pair: RecordId,
  holder: RecordId | null,
): readonly RecordId[] => [
  ...new Set([
    ...(holder === null ? [] : [holder]),
    ...records['hand-out'].flatMap(({ body }) => (body.pair === pair ? [body.tester] : [])),
  ]),
];

export const PairPage = (props: TabProps & { readonly pair: RecordId }) => {
  const { records, review, pair } = props;
  const words = p().pairs.page;
  const { id } = review.project;
  const answer = useWork((desk) => desk.pairPage(id, pair), records, [id, pair]);
  if (!answer) return <p class="soft">{t().loading}</p>;
  const { page } = answer;
  const isLeftOut = review.without?.some((one) => one.id === pair) ?? false;
  if (!page)
    return (
      <PlaceHead
        headline={
          isLeftOut ? p().pairs.leftOutOne(namesIn(review, records).code(pair)) : words.notFound
        }
        actions={
          isLeftOut && (
            <Button onClick={() => (readInTolerance.value = null)}>{p().pairs.readAll}</Button>
          )
        }
        crumbs={[{ words: p().frame.places.pairs, href: linksOf(id).place('pairs') }]}
      />
    );
  const { look, headline } = page;
  const names = namesIn(review, records);
  return (
    <>
      <PlaceHead
        crumbs={crumbsOf({ ...props, look })}
        headline={words.headline(headline, sayOf(props))}
        sub={words.sub(
          formatSize(look.sizeMm),
          names.round(look.round),
          roundDistance(look.totalM),
          roundDistance(look.briefM),
          look.runs.length,
        )}
        stamp={<PairStamp look={look} />}
      />
      <Notices {...props} pair={pair} />
      <div class="page-columns">
        <PairLife {...props} look={look} />
        <PairFacts {...props} look={look} />
      </div>
      <Actions {...props} look={look} />
      <div class="page-thirds">
        <div class="stack">
          <HandOutList {...props} of={pair} side="pair" />
          <TalkSection
            records={records}
            review={review}
            subject={{ pair }}
            label={p().ask.askPair}
            asking={{
              testers: testersOf(records, pair, look.holder),
              about: () => ({ pair }),
              run: null,
            }}
          />
        </div>
        <Checks {...props} look={look} />
        <Notes
          {...props}
          title={words.notes}
          empty={words.noNotes}
          notes={look.notes}
          by="tester"
          all={{
            href: wordsAddress(linksOf(id).place('words'), { pair }),
            words: p().words.ofPair,
          }}
        />
      </div>
      <HowSure title={p().pairs.loadsOfOne}>
        <PairLoads {...props} pair={pair} />
      </HowSure>
    </>
  );
};
