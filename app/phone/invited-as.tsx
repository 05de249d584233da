/** Whose phone joins which group as what, told before the code is used. Nothing where nobody can say. */
import { useEffect, useState } from 'preact/hooks';
import { store } from '../parts/state.ts';
import { joinWords } from '../words/index.ts';
import type { Invited } from '../store/index.ts';

interface Found {
  readonly code: string;
  readonly as: Invited | null;
}

/** @param code whole, as the hub takes it */
export const InvitedAs = ({ code }: { readonly code: string }) => {
  const [found, setFound] = useState<Found | null>(null);
  useEffect(() => {
    void store.invited(location.origin, code).then((as) => setFound({ code, as }));
  }, [code]);
  if (found?.code !== code || found.as === null) return null;
  const { role, groupName, tester } = found.as;
  return (
    <div role="status">
      <p>
        <strong>{joinWords().invited[role](groupName, tester)}</strong>
      </p>
      <p>{joinWords().willSee[role]}</p>
    </div>
  );
};
