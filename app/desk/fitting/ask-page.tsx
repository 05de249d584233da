/** What most want moved becomes a finding: the change in mm is filled in, what they said is frozen with it. */
import { useLocation } from 'preact-iso';
import { changeOf, wantedMoves, type WantedMove } from '../../../core/fitting/index.ts';
import type { StructuredChange } from '../../../core/records/index.ts';
import { draftOfChange } from '../../drafts/change.ts';
import { carriersOf, newFinding } from '../../drafts/finding.ts';
import { sayChange } from '../../parts/change-speaker.ts';
import { formatDate, formatNumber } from '../../parts/format.ts';
import { toInstant } from '../../parts/instant.ts';
import { settings } from '../../parts/settings.ts';
import { p } from '../../words/index.ts';
import { frozenEvidence } from '../../words/say-evidence.ts';
import type { PlaceProps } from '../desk-state.ts';
import { FindingFields } from '../findings/finding-form.tsx';
import { useFinding } from '../findings/use-finding.ts';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { SmallForm } from '../parts/form-parts.tsx';
import { speakerOf } from '../parts/speaker.ts';
import { factsOf } from './session-facts.ts';
import type { SessionProps } from './session-props.ts';
import { farInWords } from './wanted-part.tsx';

interface AskProps extends SessionProps {
  readonly move: WantedMove;
  readonly change: StructuredChange;
}

/** What the session says of it, in a sentence that stays with the finding. */
const sayAsked = ({ facts, move, change }: AskProps): string => {
  const words = p().fitting.finding;
  const { by, unit } = move;
  const agree = move.wishes.filter(({ agrees }) => agrees).length;
  const isSpread = by !== null && by.least < by.most;
  return words.line(
    facts.session.body.name,
    formatDate(facts.session.body.at),
    agree,
    facts.fitters.length,
    sayChange(change),
    isSpread ? words.spread(farInWords(by.least, unit), farInWords(by.most, unit)) : '',
  );
};

const Form = (props: AskProps) => {
  const { review, facts, change, move } = props;
  const words = p().fitting.finding;
  const { route } = useLocation();
  const { session } = facts;
  const mm = change.by?.unit === 'mm' ? change.by.amount : null;
  const { save, kept, ...form } = useFinding({
    key: `new finding ${session.revision.id} ${move.key}`,
    begin: () => ({
      ...newFinding(words.named(sayChange(change)), change.part, settings.value.language),
      wanted: sayChange(change),
      mm: mm === null ? '' : formatNumber(mm, 2),
      change: draftOfChange(change, (value) => formatNumber(value, 2)),
    }),
  });
  return (
    <SmallForm
      kept={kept}
      save={async () => {
        const evidence = frozenEvidence(
          {},
          [sayAsked(props)],
          toInstant(review.nowMs),
          settings.value.language,
          speakerOf(props),
        );
        const saved = await save({
          project: review.project.id,
          round: session.body.round,
          source: 'other',
          fitSession: session.revision.id,
          ...(evidence && { evidence }),
        });
        if (typeof saved === 'string') return saved;
        route(linksOf(review.project.id).finding(saved.revision.id), true);
        return null;
      }}
    >
      <FindingFields {...form} carriers={carriersOf(review.rounds, session.body.round)} photos />
    </SmallForm>
  );
};

export const AskPage = (
  props: PlaceProps & { readonly session: string; readonly moved: string },
) => {
  const { records, review, moved } = props;
  const words = p().fitting;
  const links = linksOf(review.project.id);
  const session = records['fit-session'].find(({ revision }) => revision.id === props.session);
  const facts = session && factsOf(session, records);
  const move = facts && wantedMoves(facts.fitters).find(({ key }) => key === moved);
  const change = move ? changeOf(move) : null;
  const crumbs = [
    { words: words.title, href: links.place('fitting') },
    ...(session
      ? [{ words: session.body.name, href: links.place('fitting', session.revision.id) }]
      : []),
    { words: words.finding.title },
  ];
  if (!facts || !move || !change)
    return <PlaceHead crumbs={crumbs} headline={words.finding.gone} />;
  const asked = { ...props, facts, move, change };
  return (
    <>
      <PlaceHead crumbs={crumbs} headline={sayChange(change)} sub={sayAsked(asked)} />
      <section class="paper" aria-label={words.finding.title}>
        <Form {...asked} />
      </section>
    </>
  );
};
