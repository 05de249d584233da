/** The sessions of fit trials that are on; their cards come in a file of their own, once there is one. */
import { latePart } from '../../parts/late.tsx';
import { useRecords } from '../../parts/state.ts';
import { need } from '../../words/index.ts';
import { isOffered } from './fit-session.ts';

const FitCard = latePart(async () => {
  const [{ FitCard }] = await Promise.all([import('./fit-card.tsx'), need('fit')]);
  return FitCard;
});

export const FitToday = () => {
  const sessions = useRecords('fit-session');
  const nowMs = Date.now();
  return (
    <>
      {sessions
        ?.filter((one) => isOffered(one, nowMs))
        .map((session) => (
          <FitCard key={session.revision.id} session={session} />
        ))}
    </>
  );
};
