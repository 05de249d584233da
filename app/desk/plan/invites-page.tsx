/**
 * Invites: who was invited, has joined and logs, and a sheet of codes for those who have not joined, to be cut apart.
 */
import { useEffect, useState } from 'preact/hooks';
import type { RecordId, RecordOf } from '../../../core/records/index.ts';
import { byCode } from '../../../core/review/index.ts';
import { Button, LinkButton, Notice } from '../../parts/controls/controls.tsx';
import { formatDateTime } from '../../parts/format.ts';
import { session, store } from '../../parts/state.ts';
import { d, p, t } from '../../words/index.ts';
import type { TabProps } from '../desk-state.ts';
import { PlaceHead } from '../frame/place.tsx';
import { linksOf } from '../frame/route.ts';
import { inviteAddress, isThisMachineOnly } from '../parts/invite-card.tsx';
import { inviteOnly } from './invite-only.ts';
import { openUntil, type InviteKnowledge, type MadeInvite } from './invite-states.ts';
import { keepInvite, keptInvites } from './kept-invites.ts';
import { WhoIsIn } from './who-is-in.tsx';
import { SquareCode } from '../parts/square-code.tsx';
import { crumbsOfPlan } from './slips-page.tsx';

/** How often the hub is asked who has come in while the page is looked at. */
const ASK_MS = 15_000;

/** What the hub and this device know of the invites; null: not known yet, `offline`: the hub does not answer. */
const useInvites = () => {
  const [made, setMade] = useState<readonly MadeInvite[]>([]);
  const [joined, setJoined] = useState<ReadonlySet<RecordId> | 'offline' | null>(null);
  const [deeds, setDeeds] = useState<Parameters<typeof openUntil>[0]>([]);
  const [trust, setTrust] = useState<string | null>(null);
  useEffect(() => {
    let isOpen = true;
    const ask = async () => {
      if (document.hidden) return;
      const hub = await store.hub();
      const [devices, audit] = [await hub?.devices(), await hub?.audit()];
      if (!isOpen) return;
      if (devices?.ok)
        setJoined(
          new Set(
            devices.value.devices.flatMap(({ member, revoked }) => (revoked ? [] : [member])),
          ),
        );
      // Who was in stays in while the hub cannot be reached.
      else setJoined((now) => now ?? 'offline');
      if (audit?.ok) setDeeds(audit.value.entries);
    };
    keptInvites(Date.now()).then(
      (kept) => isOpen && setMade(kept),
      () => {},
    );
    const askNow = () => void ask();
    askNow();
    void store
      .hub()
      .then((hub) => hub?.hello())
      .then((hello) => isOpen && hello?.ok && setTrust(hello.value.trust ?? null));
    const timer = setInterval(askNow, ASK_MS);
    document.addEventListener('visibilitychange', askNow);
    return () => {
      isOpen = false;
      clearInterval(timer);
      document.removeEventListener('visibilitychange', askNow);
    };
  }, []);
  /** Puts a code in the place of an older one of the same tester. */
  const put = async (one: MadeInvite) => {
    setMade((now) => [...now.filter(({ tester }) => tester !== one.tester), one]);
    await keepInvite(one, Date.now()).catch(() => {});
  };
  return { made, joined, deeds, trust, put };
};

/** What a phone shows that does not trust the hub yet, and what to press: once, before the invite. */
const TrustFirst = ({ address }: { readonly address: string }) => {
  const words = p().plan.invites.trust;
  return (
    <section class="trust-first on-white" aria-label={words.title}>
      <div class="slip-says">
        <strong>{words.title}</strong>
        <span>{words.shows}</span>
        <span>{words.how(address)}</span>
        <span class="small">{words.without}</span>
      </div>
      <SquareCode address={address} />
    </section>
  );
};

const InviteSlip = (props: {
  readonly of: RecordOf<'tester'>['body'];
  readonly made: MadeInvite;
  readonly trust: string | null;
}) => {
  const { of, made, trust } = props;
  const words = p().plan.invites;
  return (
    <li class="slip">
      <div class="slip-says">
        <strong class="slip-code">{[of.code, of.name].filter(Boolean).join(' ')}</strong>
        {trust !== null && <span class="small">{words.trust.onSlip(trust)}</span>}
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
  const { records, review } = props;
  const words = p().plan.invites;
  const found = useInvites();
  const crumbs = crumbsOfPlan(props, words.name);
  if (!session.value?.hub)
    return (
      <>
        <PlaceHead crumbs={crumbs} headline={words.noHub} sub={words.noHubHow} />
        <div class="row">
          <LinkButton kind="main" href={linksOf(review.project.id).place('testers')}>
            {words.toTesters}
          </LinkButton>
        </div>
      </>
    );
  if (records.tester.length === 0)
    return <PlaceHead crumbs={crumbs} headline={words.nobody} sub={words.nobodyHow} />;
  if (found.joined === 'offline') return <PlaceHead crumbs={crumbs} headline={words.offline} />;
  if (found.joined === null) return <p class="soft">{t().loading}</p>;
  return <InviteSheet {...props} {...found} joined={found.joined} />;
};

/** Whom the sheet is for, their codes, and who is in. */
const InviteSheet = (
  props: TabProps &
    Omit<ReturnType<typeof useInvites>, 'joined'> & { readonly joined: ReadonlySet<RecordId> },
) => {
  const { records, review, made, joined, deeds, trust, put } = props;
  const words = p().plan.invites;
  /** How many codes were made of how many; null: none is being made. */
  const [busy, setBusy] = useState<readonly [number, number] | null>(null);
  const [failed, setFailed] = useState<string | null>(null);
  const [fresh, setFresh] = useState<ReadonlySet<RecordId>>(new Set());
  const only = inviteOnly.value;
  const testers = records.tester.toSorted((a, b) => byCode(a.body, b.body));
  const missing = testers.filter(({ revision }) =>
    only ? only.has(revision.id) : !joined.has(revision.id),
  );
  const known: InviteKnowledge = {
    joined,
    runs: new Map(review.testers.map(({ id, runs }) => [id, runs])),
    until: openUntil(deeds, made),
    nowMs: Date.now(),
  };
  const here = new Map(
    made
      // The code of whoever has joined is used up, unless it was made just now, for a further phone.
      .filter(({ tester }) => only?.has(tester) || fresh.has(tester) || !joined.has(tester))
      .map((one) => [one.tester, one]),
  );
  const make = async (wanted: typeof testers) => {
    setFailed(null);
    setBusy([0, wanted.length]);
    // The hub must know the testers before it can invite them.
    await store.sync();
    const hub = await store.hub();
    for (const [at, { body, revision }] of wanted.entries()) {
      const answer = await hub?.invite('tester', revision.id);
      if (!answer?.ok) {
        setFailed(words.failed(body.code));
        break;
      }
      const { code, expiresAt } = answer.value;
      await put({ tester: revision.id, code, expiresAt });
      setFresh((now) => new Set([...now, revision.id]));
      setBusy([at + 1, wanted.length]);
    }
    setBusy(null);
  };
  const slips = testers.filter(({ revision }) => here.has(revision.id));
  const without = missing.filter(({ revision }) => !here.has(revision.id));
  /** All of them anew where each has one already. */
  const wanted = without.length > 0 ? without : missing;
  const isIn = testers.filter(({ revision }) => joined.has(revision.id)).length;
  const log = testers.filter(({ revision }) => (known.runs.get(revision.id) ?? 0) > 0).length;
  return (
    <>
      <PlaceHead
        crumbs={crumbsOfPlan(props, words.name)}
        headline={only ? words.selected(missing.length) : words.title(missing.length)}
        sub={words.sub(isIn, log, testers.length)}
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
            kind={slips.length > 0 ? 'plain' : 'main'}
            disabled={busy !== null}
            onClick={() => void make(wanted)}
          >
            {busy
              ? words.making(...busy)
              : without.length > 0
                ? words.make(wanted.length)
                : words.makeAnew(wanted.length)}
          </Button>
          {slips.length > 0 && !busy && (
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
      {trust !== null && missing.length > 0 && <TrustFirst address={trust} />}
      <ul class="slips on-white" aria-label={words.name}>
        {slips.map(({ body, revision }) => {
          const own = here.get(revision.id);
          return own && <InviteSlip key={revision.id} of={body} made={own} trust={trust} />;
        })}
      </ul>
      <WhoIsIn
        testers={only ? missing : testers}
        known={known}
        here={new Set(here.keys())}
        busy={busy !== null}
        make={(one) => void make([one])}
      />
    </>
  );
};
