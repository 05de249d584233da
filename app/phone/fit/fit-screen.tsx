/**
 * A fit trial: who tries which pair on, how it fits standing, then walking. Kept as it is answered, so that a call or a
 * killed tab costs nothing; the phone is passed on from one person to the next.
 */
import { useEffect, useRef, useState } from 'preact/hooks';
import { nextFitterCode } from '../../../core/fitting/index.ts';
import type { RecordId } from '../../../core/records/index.ts';
import { Notice, Page } from '../../parts/controls/controls.tsx';
import { showToast } from '../../parts/controls/toast.tsx';
import { formatSize } from '../../parts/format.ts';
import { toInstant } from '../../parts/instant.ts';
import { session, store, useStored } from '../../parts/state.ts';
import {
  fitCaution,
  fitterCode,
  keptFitForm,
  newFitForm,
  readFitTrial,
  whoTroubles,
  type FitForm,
} from '../../drafts/fit-trial.ts';
import { fitWords, t } from '../../words/index.ts';
import { fitDraftKey, readSession, SESSION_KINDS, type SessionHere } from './fit-session.ts';
import { StandingStep } from './standing-step.tsx';
import { WalkingStep } from './walking-step.tsx';
import { WhoStep } from './who-step.tsx';
import './fit.css';

/** Begins the codes of people without a membership: the tester's own code, or a mark of the lead's own. */
const phoneMark = ({ testers }: SessionHere, member: RecordId, isLead: boolean): string => {
  const own = isLead
    ? undefined
    : testers.find(({ revision }) => revision.id === member)?.body.code;
  return own ?? `L${member.slice(-3).toUpperCase()}`;
};

/** The next person: on a tester's phone its owner first, then others by code. */
const nextForm = (here: SessionHere, member: RecordId, isLead: boolean, pair: string): FitForm => {
  const wasHere = here.trials.some(({ body }) => body.tester === member);
  const code = nextFitterCode(here.trials, phoneMark(here, member, isLead));
  return newFitForm(isLead || wasHere ? 'another' : 'me', code, pair);
};

/** Who stands in the shoe, in a word. */
const nameOf = (form: FitForm, { testers }: SessionHere, member: RecordId): string => {
  if (form.who === 'another') return fitterCode(form.code);
  const id = form.who === 'me' ? member : form.who;
  return testers.find(({ revision }) => revision.id === id)?.body.code ?? fitWords().who.me('');
};

const Trial = (props: {
  readonly here: SessionHere;
  readonly begin: FitForm;
  readonly member: RecordId;
}) => {
  const { here, begin, member } = props;
  const isLead = session.value?.role === 'lead';
  const words = fitWords();
  const [form, setForm] = useState(begin);
  const [tried, setTried] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  const [saving, setSaving] = useState(false);
  const touched = useRef(false);
  const { id } = here.session.revision;
  const key = fitDraftKey(id);
  const taken = new Set(here.testers.map(({ body }) => body.code));
  useEffect(() => {
    if (touched.current) store.saveDraft(key, form).catch(() => setTrouble(words.full));
  }, [form, key, words]);
  // Each step begins at its top.
  useEffect(() => scrollTo({ top: 0 }), [form.step]);
  const change = (next: (now: FitForm) => FitForm) => {
    touched.current = true;
    setForm(next);
  };
  const go = (step: FitForm['step']) => change((now) => ({ ...now, step }));
  const pair = here.pairs.find(({ revision }) => revision.id === form.pair);
  const who = nameOf(form, here, member);
  const toFirstTrouble = () =>
    requestAnimationFrame(() => document.querySelector<HTMLElement>('[aria-invalid]')?.focus());
  const stand = () => {
    setTried(true);
    if (whoTroubles(form, taken).length > 0) return toFirstTrouble();
    setTried(false);
    go('standing');
    return undefined;
  };
  const save = async () => {
    if (saving || fitCaution(form) === 'unread') return;
    const read = readFitTrial(
      form,
      { project: here.session.body.project, session: id, member, at: toInstant(Date.now()) },
      taken,
    );
    if (!read.ok) {
      setTried(true);
      toFirstTrouble();
      return;
    }
    setSaving(true);
    const saved = await store.save('fit-trial', read.body);
    setSaving(false);
    if (!saved.ok) return setTrouble(saved.why === 'storage-full' ? words.full : words.lost);
    touched.current = false;
    setTried(false);
    await store.dropDraft(key).catch(() => {});
    navigator.vibrate?.(12);
    showToast({ text: words.saved(who) });
    const trials = [...here.trials, saved.value];
    setForm(nextForm({ ...here, trials }, member, isLead, form.pair));
  };
  const step = {
    ...{ form, change },
    troubles: tried
      ? form.step === 'who'
        ? whoTroubles(form, taken)
        : (['nothing-said'] as const)
      : [],
  };
  const label = pair ? words.who.pairOf(pair.body.code, formatSize(pair.body.sizeMm)) : '';
  return (
    <>
      {trouble && (
        <Notice tone="danger" live>
          {trouble}
        </Notice>
      )}
      {form.step !== 'who' && <p class="soft fit-of">{words.standing.of(who, label)}</p>}
      {form.step === 'who' && (
        <WhoStep {...step} here={here} member={member} isLead={isLead} onNext={stand} />
      )}
      {form.step === 'standing' && <StandingStep {...step} onNext={() => go('walking')} />}
      {form.step === 'walking' && (
        <WalkingStep {...step} who={who} onBack={() => go('standing')} onSave={() => void save()} />
      )}
    </>
  );
};

export const FitScreen = ({ session: id }: { readonly session: string }) => {
  const words = fitWords();
  const member = session.value?.member;
  const isLead = session.value?.role === 'lead';
  const found = useStored(
    async (from) => {
      const here = member ? await readSession(from, id as RecordId, member) : null;
      return { here, kept: keptFitForm(await from.draft(fitDraftKey(id as RecordId))) };
    },
    SESSION_KINDS,
    [id, member],
  );
  const project = found?.here?.session.body.project;
  const back =
    isLead && project
      ? { href: `/desk/${project}/fitting/${id}`, label: t().back }
      : { href: '/', label: t().back };
  return (
    <Page
      title={words.title}
      back={back}
      aside={<span class="soft">{found?.here?.session.body.name ?? ''}</span>}
    >
      {found === null ? (
        <p class="soft">{t().loading}</p>
      ) : found.here === null || !member || found.here.session.body.closed !== undefined ? (
        <p>{words.notHere}</p>
      ) : (
        <Trial
          here={found.here}
          member={member}
          begin={
            found.kept ??
            nextForm(
              found.here,
              member,
              isLead,
              found.here.own ??
                (found.here.pairs.length === 1 ? (found.here.pairs[0]?.revision.id ?? '') : ''),
            )
          }
        />
      )}
    </Page>
  );
};
