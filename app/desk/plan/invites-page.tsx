/** One sheet of invites for all testers who have not joined: each with a fresh code of the hub, to be cut apart. */
import { useEffect, useState } from 'preact/hooks';
import type { Devices, RecordId, RecordOf } from '../../../core/records/index.ts';
import { byCode } from '../../../core/review/index.ts';
import { Button, LinkButton, Notice } from '../../parts/controls/controls.tsx';
import { formatDateTime } from '../../parts/format.ts';
import { session, store } from '../../parts/state.ts';
import { d, listed, p, t } from '../../words/index.ts';
import type { TabProps } from '../desk-state.ts';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { inviteAddress, isThisMachineOnly } from '../parts/invite-card.tsx';
import { inviteOnly } from './invite-only.ts';
import { SquareCode } from '../parts/square-code.tsx';
import { crumbsOfPlan } from './slips-page.tsx';

interface Made {
  readonly tester: RecordId;
  readonly code: string;
  readonly expiresAt: number;
}

/** Who is in the group by a device that is not signed out; null: not known yet, `offline`: the hub does not answer. */
const useJoined = (): ReadonlySet<RecordId> | 'offline' | null => {
  const [joined, setJoined] = useState<ReadonlySet<RecordId> | 'offline' | null>(null);
  useEffect(() => {
    void store.hub().then(async (hub) => {
      const answer = await hub?.devices();
      const members = (devices: Devices) =>
        new Set(devices.flatMap(({ member, revoked }) => (revoked ? [] : [member])));
      setJoined(answer?.ok ? members(answer.value.devices) : 'offline');
    });
  }, []);
  return joined;
};

const InviteSlip = ({ of, made }: { of: RecordOf<'tester'>['body']; made: Made }) => {
  const words = p().plan.invites;
  return (
    <li class="slip">
      <div class="slip-says">
        <strong class="slip-code">{[of.code, of.name].filter(Boolean).join(' ')}</strong>
        <span>{words.joins(session.value?.groupName ?? '', of.code)}</span>
        <span class="small">{words.type(`${location.origin}/join`)}</span>
        <span class="code">{made.code}</span>
        <span class="slip-scan">{words.until(formatDateTime(made.expiresAt))}</span>
      </div>
      <SquareCode address={inviteAddress(made.code)} />
    </li>
  );
};

export const InvitesPage = (props: TabProps) => {
  const { records } = props;
  const words = p().plan.invites;
  const joined = useJoined();
  const [made, setMade] = useState<readonly Made[]>([]);
  const [busy, setBusy] = useState(false);
  const [failed, setFailed] = useState<string | null>(null);
  const crumbs = crumbsOfPlan(props, words.name);
  if (!session.value?.hub)
    return (
      <>
        <PlaceHead crumbs={crumbs} headline={words.noHub} sub={words.noHubHow} />
        <div class="row">
          <LinkButton kind="main" href={linksOf(props.review.project.id).place('testers')}>
            {words.toTesters}
          </LinkButton>
        </div>
      </>
    );
  if (records.tester.length === 0)
    return <PlaceHead crumbs={crumbs} headline={words.nobody} sub={words.nobodyHow} />;
  if (joined === 'offline') return <PlaceHead crumbs={crumbs} headline={words.offline} />;
  if (joined === null) return <p class="soft">{t().loading}</p>;
  const only = inviteOnly.value;
  const missing = records.tester
    .filter(({ revision }) => (only ? only.has(revision.id) : !joined.has(revision.id)))
    .toSorted((a, b) => byCode(a.body, b.body));
  const codes = new Map(made.map((one) => [one.tester, one]));
  const make = async () => {
    setBusy(true);
    setFailed(null);
    setMade([]);
    // The hub must know the testers before it can invite them.
    await store.sync();
    const hub = await store.hub();
    for (const { body, revision } of missing) {
      const answer = await hub?.invite('tester', revision.id);
      if (!answer?.ok) {
        setFailed(words.failed(body.code));
        break;
      }
      const { code, expiresAt } = answer.value;
      setMade((now) => [...now, { tester: revision.id, code, expiresAt }]);
    }
    setBusy(false);
  };
  return (
    <>
      <PlaceHead
        crumbs={crumbs}
        headline={only ? words.selected(missing.length) : words.title(missing.length)}
        sub={words.sub}
        actions={
          only && (
            <Button kind="quiet" onClick={() => (inviteOnly.value = null)}>
              {words.all}
            </Button>
          )
        }
      />
      {missing.length > 0 && (
        <div class="row no-print">
          <Button
            kind={made.length > 0 ? 'plain' : 'main'}
            disabled={busy}
            onClick={() => void make()}
          >
            {busy ? words.making(made.length, missing.length) : words.make(missing.length)}
          </Button>
          {made.length > 0 && !busy && (
            <Button kind="main" onClick={() => window.print()}>
              {words.print}
            </Button>
          )}
        </div>
      )}
      {isThisMachineOnly() && missing.length > 0 && (
        <div class="no-print">
          <Notice tone="warn">{d().testers.localOnly}</Notice>
        </div>
      )}
      {failed && (
        <Notice tone="danger" live>
          {failed}
        </Notice>
      )}
      {made.length === 0 && missing.length > 0 && (
        <p>{listed(missing.map(({ body }) => [body.code, body.name].filter(Boolean).join(' ')))}</p>
      )}
      <ul class="slips on-white" aria-label={words.name}>
        {missing.flatMap(({ body, revision }) => {
          const own = codes.get(revision.id);
          return own ? [<InviteSlip key={revision.id} of={body} made={own} />] : [];
        })}
      </ul>
    </>
  );
};
