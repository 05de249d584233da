/** All shoes: which of them needs the lead today? */
import { LinkButton } from '../../parts/controls/controls.tsx';
import { d, p, t } from '../../words/index.ts';
import type { DeskRecords } from '../worker/desk-work.ts';
import { PlaceHead } from '../frame/place.tsx';

export const Shoes = ({ records }: { readonly records: DeskRecords }) => (
  <>
    <PlaceHead headline={p().frame.allShoes} />
    {records.project.length === 0 ? (
      <p>{d().noProjects}</p>
    ) : (
      <ul class="plain-list stack">
        {records.project.map(({ body, revision }) => (
          <li key={revision.id}>
            <a class="button button-big" href={`/desk/${revision.id}`}>
              {body.name}
            </a>
          </li>
        ))}
      </ul>
    )}
    <div class="row">
      <LinkButton href="/desk/new" kind={records.project.length === 0 ? 'main' : 'plain'}>
        {d().newProject}
      </LinkButton>
      <LinkButton href="/desk/group">{d().groupTitle}</LinkButton>
      <LinkButton href="/settings" kind="quiet">
        {t().settings.title}
      </LinkButton>
    </div>
  </>
);
