/** All shoes: which of them needs the lead today? Those that do come first. */
import type { RecordOf } from '../../../core/records/index.ts';
import type { ReviewSummary } from '../../../core/review/index.ts';
import { shoesHeadline, urgencyOf } from '../../../core/headlines/index.ts';
import { Button, LinkButton } from '../../parts/controls/controls.tsx';
import { formatDate } from '../../parts/format.ts';
import { d, locale, p, t } from '../../words/index.ts';
import { useWork } from '../desk-state.ts';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf, newShoe } from '../frame/route.ts';
import { bringBack } from '../rounds/archive.ts';
import { Begin } from '../start/begin.tsx';
import type { DeskRecords } from '../worker/desk-work.ts';
import type { ShoeCard as Card } from '../worker/sheet-answers.ts';
import { ShoeCard } from './shoe-card.tsx';
import './shoes.css';

interface Shoe {
  readonly project: RecordOf<'project'>;
  readonly card: Card;
  readonly review: ReviewSummary;
}

export const Shoes = ({ records }: { readonly records: DeskRecords }) => {
  const words = p().shoes;
  const open = records.project.filter(({ body }) => body.archived === undefined);
  const away = records.project.filter(({ body }) => body.archived !== undefined);
  const shoes = useWork(
    (desk) =>
      Promise.all(
        open.map(async (project): Promise<Shoe | null> => {
          const { id } = project.revision;
          const [card, review] = [await desk.shoeCard(id), await desk.review(id)];
          return review && { project, card, review };
        }),
      ),
    records,
    [],
  );
  if (!shoes) return <p class="soft">{t().loading}</p>;
  const sorted = shoes
    .flatMap((one) => (one ? [one] : []))
    .toSorted((a, b) => urgencyOf(a.card) - urgencyOf(b.card));
  const names = (some: readonly string[]) => new Intl.ListFormat(locale()).format(some);
  if (sorted.length === 0)
    return (
      <>
        <Begin records={records} />
        <Foot away={away} />
      </>
    );
  return (
    <>
      <PlaceHead
        headline={words.headline(
          shoesHeadline(sorted.map(({ card, project }) => ({ ...card, name: project.body.name }))),
          names,
        )}
        sub={words.sub(sorted.length)}
        actions={<LinkButton href={newShoe()}>{words.add}</LinkButton>}
      />
      <ul class="shoe-cards">
        {sorted.map((one) => (
          <ShoeCard key={one.project.revision.id} {...one} records={records} />
        ))}
      </ul>
      <Foot away={away} />
    </>
  );
};

const Foot = ({ away }: { readonly away: readonly RecordOf<'project'>[] }) => (
  <>
    {away.length > 0 && <Archived away={away} />}
    <p class="row">
      <a href="/desk/group">{d().groupTitle}</a>
      <a href="/settings">{t().settings.title}</a>
    </p>
  </>
);

/** Shoes that are put away: each can be opened as ever, and brought back. */
const Archived = ({ away }: { readonly away: readonly RecordOf<'project'>[] }) => {
  const words = p().shoes;
  return (
    <details class="how-sure">
      <summary>{words.archived(away.length)}</summary>
      <ul class="plain-list shoes-away">
        {away.map((project) => {
          const { name, archived } = project.body;
          return (
            <li key={project.revision.id}>
              <a href={linksOf(project.revision.id).place('sheet')}>{name}</a>{' '}
              <span class="soft">{words.since(formatDate(archived ?? ''))}</span>{' '}
              <Button
                kind="quiet"
                aria-label={words.bringBack(name)}
                onClick={() => void bringBack(project)}
              >
                {p().brief.bringBack}
              </Button>
            </li>
          );
        })}
      </ul>
    </details>
  );
};
