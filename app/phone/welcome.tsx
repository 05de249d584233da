/** The first screen of a device that belongs to nobody yet: join by code, by file, or lead. */
import { useEffect, useState } from 'preact/hooks';
import { useLocation } from 'preact-iso';
import { inviteCodeSchema } from '../../core/records/index.ts';
import * as z from 'zod/mini';
import { Button, Field, Notice, Page } from '../parts/controls/controls.tsx';
import { showToast } from '../parts/controls/toast.tsx';
import { store, useStored } from '../parts/state.ts';
import { need, t } from '../words/index.ts';
import type { JoinProblem } from '../store/index.ts';
import type { InvitedAs } from './invited-as.tsx';

/** Letters that people take for digits, as Crockford's base 32 reads them. */
const readCode = (text: string): string =>
  text.toUpperCase().replace(/[\s-]/g, '').replace(/O/g, '0').replace(/[IL]/g, '1');

const deviceName = (): string => {
  const { userAgent } = navigator;
  return (
    ['iPhone', 'iPad', 'Android', 'Windows', 'Mac', 'Linux'].find((name) =>
      userAgent.includes(name),
    ) ?? 'device'
  );
};

const problemInWords = (problem: JoinProblem): string => {
  const words = t().welcome;
  if (problem.why === 'refused')
    return problem.code === 'too-many-requests' ? words.tooMany : words.refused;
  return problem.why === 'offline' ? words.offline : words.notAHub;
};

const isCode = (plain: string): boolean => z.safeParse(inviteCodeSchema, plain).success;

/** What the code makes of this device. It asks the hub, so it comes when there is a whole code, and else not at all. */
const InvitedPart = ({ code }: { readonly code: string }) => {
  const [part, setPart] = useState<{ readonly InvitedAs: typeof InvitedAs } | null>(null);
  useEffect(() => {
    Promise.all([import('./invited-as.tsx'), need('join')]).then(
      ([loaded]) => setPart(loaded),
      () => undefined,
    );
  }, []);
  return part && <part.InvitedAs code={code} />;
};

/** The code of a link stands after the #, which no browser sends to a server. */
const codeOfLink = (): string => decodeURIComponent(location.hash.slice(1));

export const Welcome = () => {
  const words = t();
  const { route } = useLocation();
  const [code, setCode] = useState(codeOfLink);
  useEffect(() => {
    // Another link opened in the same tab changes what is behind the # alone.
    const again = () => {
      setCode(codeOfLink());
      setError(null);
    };
    window.addEventListener('hashchange', again);
    return () => window.removeEventListener('hashchange', again);
  }, []);
  const [groupName, setGroupName] = useState('');
  const [error, setError] = useState<string | null>(null);
  const [joining, setJoining] = useState(false);
  const evicted = useStored((from) => from.wasEvicted(), []);
  const [comingBack, setComingBack] = useState(false);

  // The browser cleared this phone: the hub may know it still, and then no code is needed.
  useEffect(() => {
    if (!evicted || code !== '') return;
    setComingBack(true);
    void store.comeBack(location.origin, deviceName()).then(async (back) => {
      if (back.ok) {
        await store.sync();
        showToast({
          text: words.evictedBack,
          stays: true,
          action: { label: words.close, run: () => undefined },
        });
        route(back.value.role === 'lead' ? '/desk' : '/', true);
      }
      setComingBack(false);
    });
    // Once, when it is known that the phone was cleared.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [evicted]);

  const join = async () => {
    const plain = readCode(code);
    if (!isCode(plain)) {
      setError(words.welcome.codeWrong);
      return;
    }
    setError(null);
    setJoining(true);
    const joined = await store.join(location.origin, plain, deviceName());
    setJoining(false);
    if (!joined.ok) {
      setError(problemInWords(joined));
      return;
    }
    void store.sync();
    route(joined.value.role === 'lead' ? '/desk' : '/', true);
  };

  return (
    <Page title={words.welcome.title}>
      {evicted && (
        <Notice tone="warn" live>
          {comingBack ? words.evictedWait : words.evicted}
        </Notice>
      )}
      <p>{words.welcome.intro}</p>
      <form
        class="sheet"
        onSubmit={(event) => {
          event.preventDefault();
          void join();
        }}
      >
        <Field label={words.welcome.code} hint={words.welcome.codeHint} error={error}>
          {(ids) => (
            <input
              class="input input-figure"
              autocapitalize="characters"
              autocomplete="off"
              spellcheck={false}
              {...ids}
              value={code}
              onInput={(event) => setCode(event.currentTarget.value)}
            />
          )}
        </Field>
        <Button kind="main" submit disabled={joining}>
          {joining ? words.welcome.joining : words.welcome.join}
        </Button>
        {/* Below the button: it comes late, and would push the button away from under a thumb. */}
        {isCode(readCode(code)) && <InvitedPart code={readCode(code)} />}
      </form>
      <section class="stack">
        <p class="soft">{words.welcome.fileHint}</p>
        <a class="button" href="/file">
          {words.welcome.file}
        </a>
      </section>
      <details>
        <summary class="button button-quiet">{words.welcome.lead}</summary>
        <form
          class="stack"
          onSubmit={(event) => {
            event.preventDefault();
            if (groupName.trim() === '') return;
            void store.startGroup(groupName.trim()).then(() => route('/desk', true));
          }}
        >
          <Field label={words.welcome.groupName}>
            {(ids) => (
              <input
                class="input"
                {...ids}
                value={groupName}
                onInput={(event) => setGroupName(event.currentTarget.value)}
              />
            )}
          </Field>
          <Button submit>{words.welcome.start}</Button>
        </form>
      </details>
    </Page>
  );
};
