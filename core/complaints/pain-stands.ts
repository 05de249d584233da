/** Does the pain of a run still keep its tester out of the pair? One rule for the phone, the desk and its next steps. */
import type { Reply, Run } from '../records/index.ts';
import { isCautionDue } from './caution.ts';

type Pain = NonNullable<Run['pain']>;

/** True where the answers of a run call for the caution notice. */
export const callsForCaution = (pain: Pain | undefined): pain is Pain =>
  pain !== undefined && isCautionDue(pain.score, pain.isNew ?? null, pain.signs ?? []);

/**
 * The lead's answer to this pain; undefined: none yet. One from before the tester told it anew was an answer to
 * something else.
 * @param reply the one that stands about the run
 */
export const answerToPain = (pain: Pain, reply: Reply | undefined): Reply | undefined =>
  reply && (pain.toldAt === undefined || Date.parse(pain.toldAt) <= Date.parse(reply.at))
    ? reply
    : undefined;

/**
 * True from a run whose pain calls for the caution until a lead says go on, or the tester says that it is over. A
 * lead's later "stay out" makes it stand again. False never means that it is safe to run.
 * @param reply the one that stands about the run
 */
export const painStands = (pain: Pain | undefined, reply: Reply | undefined): boolean => {
  if (!callsForCaution(pain)) return false;
  const answer = answerToPain(pain, reply);
  if (answer?.advice === 'go-on') return false;
  if (pain.over === undefined) return true;
  return answer !== undefined && Date.parse(pain.over) < Date.parse(answer.at);
};
