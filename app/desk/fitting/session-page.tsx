/** One session of fit trials: the answer, who agrees where, what they want moved, who fits which size. */
import { useState } from 'preact/hooks';
import { agreementOf, type FeetLooked, type Fitter } from '../../../core/fitting/index.ts';
import { fitHeadline } from '../../../core/headlines/index.ts';
import { editBody } from '../../../core/records/index.ts';
import { Button, Choice, LinkButton, Notice } from '../../parts/controls/controls.tsx';
import { showToast } from '../../parts/controls/toast.tsx';
import { formatDate, formatNumber } from '../../parts/format.ts';
import { toInstant } from '../../parts/instant.ts';
import { store } from '../../parts/state.ts';
import { d, listed, p, t, terms } from '../../words/index.ts';
import { namesIn, type PlaceProps } from '../desk-state.ts';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { OpenForm } from '../parts/form-parts.tsx';
import { FitTable } from './fit-table.tsx';
import { fitterName } from './names.ts';
import { PeoplePart } from './people-part.tsx';
import { factsOf, type SessionRecord } from './session-facts.ts';
import type { SessionProps } from './session-props.ts';
import { SessionForm } from './session-form.tsx';
import { SizesPart } from './sizes-part.tsx';
import { WalkingPart } from './walking-part.tsx';
import { WantedPart } from './wanted-part.tsx';

const feet: readonly FeetLooked[] = ['both', 'left', 'right'];

export const SessionPage = (props: PlaceProps & { readonly session: string }) => {
  const session = props.records['fit-session'].find(
    ({ revision }) => revision.id === props.session,
  );
  if (!session) return <PlaceHead headline={t().notFound} />;
  return <Page {...props} facts={factsOf(session, props.records)} />;
};

/** Phones offer it until it is ended; ending can be taken back. */
const setClosed = async ({ body, revision }: SessionRecord, closed: string | undefined) => {
  const words = p().fitting;
  const saved = await store.save(
    'fit-session',
    editBody<'fit-session'>(body, { closed }),
    revision.id,
  );
  showToast({
    text: saved.ok ? (closed === undefined ? words.reopened : words.endedNow) : d().trouble,
  });
};

/** Whom it hurt, or went numb: said above everything else. */
const Pains = (props: SessionProps) => {
  const { trials } = props.facts;
  const words = p().fitting;
  const hurt = trials.filter(({ body }) => (body.pain?.length ?? 0) > 0);
  if (hurt.length === 0) return null;
  return (
    <Notice tone="danger">
      {hurt.map(({ body, revision }) => (
        <p key={revision.id}>
          {words.pain(
            fitterName({ tester: body.tester ?? null, code: body.fitter ?? null }, props),
            listed((body.pain ?? []).map((one) => terms().fitPains[one])),
          )}
        </p>
      ))}
      <p class="small">{words.disclaimer}</p>
    </Notice>
  );
};

const Actions = ({ facts, onEdit }: SessionProps & { readonly onEdit: () => void }) => {
  const words = p().fitting;
  const { session } = facts;
  const isOpen = session.body.closed === undefined;
  return (
    <span class="place-acts no-print">
      {isOpen && (
        <LinkButton kind="main" href={`/fit/${session.revision.id}`}>
          {words.addPerson}
        </LinkButton>
      )}
      <Button onClick={() => window.print()}>{words.print}</Button>
      <Button onClick={onEdit}>{words.edit}</Button>
      <Button onClick={() => void setClosed(session, isOpen ? toInstant(Date.now()) : undefined)}>
        {isOpen ? words.end : words.reopen}
      </Button>
    </span>
  );
};

const Page = (props: SessionProps) => {
  const { review, records, facts } = props;
  const words = p().fitting;
  const links = linksOf(review.project.id);
  const { body } = facts.session;
  const fitters: readonly Fitter[] = facts.fitters;
  const [foot, setFoot] = useState<FeetLooked>('both');
  const [isEditing, setEditing] = useState(false);
  // The first line is of both feet, whichever the table shows.
  const said = fitHeadline(agreementOf(fitters, 'both'), fitters.length);
  return (
    <div class="fit-session">
      <PlaceHead
        crumbs={[
          { words: p().rounds.title, href: links.place('rounds') },
          { words: words.title, href: links.place('fitting') },
          { words: body.name },
        ]}
        headline={words.headline(said, (value) => formatNumber(value, 1))}
        sub={
          <>
            {body.name}
            {' · '}
            {words.sub(
              fitters.length,
              body.pairs.length,
              namesIn(review, records).round(body.round),
              formatDate(body.at),
            )}
            {said.case === 'off' && said.more > 0 && ` ${words.also(said.more)}`}
          </>
        }
        actions={<Actions {...props} onEdit={() => setEditing(true)} />}
      />
      {isEditing && (
        <OpenForm label={words.edit} close={() => setEditing(false)}>
          <SessionForm {...props} of={facts.session} close={() => setEditing(false)} />
        </OpenForm>
      )}
      <Pains {...props} />
      {fitters.length === 0 ? (
        <p class="soft">{words.onPhones}</p>
      ) : (
        <>
          <div class="fit-foot no-print">
            <Choice
              hideLabel
              label={words.feet}
              options={feet.map((value) => ({ value, label: words.foot[value] }))}
              value={foot}
              onChange={setFoot}
            />
            {foot === 'both' && <span class="soft small">{words.bothMeans}</span>}
          </div>
          <FitTable {...props} foot={foot} />
          <div class="fit-below">
            <div class="fit-stack">
              <WantedPart {...props} />
              <PeoplePart {...props} />
            </div>
            <div class="fit-stack">
              <SizesPart {...props} />
              <WalkingPart {...props} foot={foot} />
            </div>
          </div>
        </>
      )}
    </div>
  );
};
