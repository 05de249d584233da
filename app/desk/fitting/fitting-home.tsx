/** The sessions of fit trials, each with its answer, and a new one. */
import { agreementOf } from '../../../core/fitting/index.ts';
import { fitHeadline } from '../../../core/headlines/index.ts';
import { formatDate, formatNumber } from '../../parts/format.ts';
import { p } from '../../words/index.ts';
import { namesIn, type PlaceProps } from '../desk-state.ts';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { Unfold } from '../parts/form-parts.tsx';
import { factsOf, sessionsOf, type SessionRecord } from './session-facts.ts';
import { SessionForm } from './session-form.tsx';

export const FittingHome = (props: PlaceProps) => {
  const { review, records } = props;
  const words = p().fitting;
  const links = linksOf(review.project.id);
  const sessions = sessionsOf(records, review.project.id);
  const [latest] = sessions;
  return (
    <>
      <PlaceHead
        crumbs={[{ words: p().rounds.title, href: links.place('rounds') }, { words: words.title }]}
        headline={latest ? answerOf(latest, props) : words.nothingYet}
        sub={latest ? words.homeSub(sessions.length, latest.body.name) : words.how}
      />
      {review.rounds.length === 0 ? (
        <p>
          {words.noRound} <a href={links.place('rounds')}>{words.addRound}</a>
        </p>
      ) : (
        <div class="forms-row">
          <Unfold label={words.add} isOpen={sessions.length === 0}>
            {(close) => <SessionForm {...props} close={close} />}
          </Unfold>
        </div>
      )}
      <ul class="plain-list fit-sessions">
        {sessions.map((session) => (
          <li key={session.revision.id}>
            <SessionRow {...props} session={session} />
          </li>
        ))}
      </ul>
    </>
  );
};

/** The first line of a session. */
const answerOf = (session: SessionRecord, { records }: PlaceProps): string => {
  const { fitters } = factsOf(session, records);
  const said = fitHeadline(agreementOf(fitters, 'both'), fitters.length);
  return p().fitting.headline(said, (value) => formatNumber(value, 1));
};

const SessionRow = (props: PlaceProps & { readonly session: SessionRecord }) => {
  const { review, records, session } = props;
  const words = p().fitting;
  const { body, revision } = session;
  const { fitters } = factsOf(session, records);
  return (
    <section class="paper" aria-label={body.name}>
      <h2>
        <a href={linksOf(review.project.id).place('fitting', revision.id)}>{body.name}</a>
      </h2>
      <p>
        <b>{answerOf(session, props)}</b>
      </p>
      <p class="soft small">
        {words.sub(
          fitters.length,
          body.pairs.length,
          namesIn(review, records).round(body.round),
          formatDate(body.at),
        )}
      </p>
    </section>
  );
};
